// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/calculator_model.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include "core/workflow/remarks.h"
#include "qml/viewmodels/calculator_lines.h"
#include "qml/viewmodels/derivation_item.h"

namespace lapwing {
namespace {

using calculators::Calculator;

const findings::Derivation* derivation_of(const calculators::Line& line) {
    if (const auto* derived = std::get_if<findings::Derived>(&line.value)) return &derived->from;
    if (const auto* range = std::get_if<findings::DerivedRange>(&line.value)) return &range->from;
    return nullptr;
}

/// Where the danger of what is being worked out stands in assets/reference.
std::string_view place_of(Calculator calculator) {
    switch (calculator) {
        case Calculator::torque:
        case Calculator::restrictor:
            return "leak-down";
        case Calculator::oil:
            return "wet";
        default:
            return {};
    }
}

QString to_text(const FormEntry& entry) {
    return QString::fromUtf8(
        QJsonDocument(QJsonObject{{QStringLiteral("text"), entry.text},
                                  {QStringLiteral("unit"), entry.unit},
                                  {QStringLiteral("chosen"), QJsonArray::fromStringList(entry.chosen)}})
            .toJson(QJsonDocument::Compact));
}

FormEntry from_text(const QString& text) {
    const QJsonObject kept = QJsonDocument::fromJson(text.toUtf8()).object();
    FormEntry entry;
    entry.text = kept.value(QStringLiteral("text")).toString();
    entry.unit = kept.value(QStringLiteral("unit")).toString();
    for (const auto& word : kept.value(QStringLiteral("chosen")).toArray())
        entry.chosen << word.toString();
    return entry;
}

}  // namespace

QVariantList CalculatorList::calculators() const {
    QVariantList list;
    for (std::size_t i = 0; i < Words<Calculator>::list.size(); ++i) {
        const auto calculator = static_cast<Calculator>(i);
        list << QVariantMap{{"calculator", QString::fromUtf8(word(calculator).data())},
                            {"title", calculator_title(calculator)},
                            {"text", calculator_purpose(calculator)}};
    }
    return list;
}

void CalculatorModel::setSessionId(const QString& id) {
    if (session_id_ == id) return;
    session_id_ = id;
    emit sessionIdChanged();
    reload();
}

void CalculatorModel::setEngineId(const QString& id) {
    if (engine_id_ == id) return;
    engine_id_ = id;
    emit sessionIdChanged();
    reload();
}

QString CalculatorModel::draftRoom() const {
    return QStringLiteral("calculator/") + (session_id_.isEmpty() ? engine_id_ : session_id_) +
           QLatin1Char('/') + recordId();
}

bool CalculatorModel::read() {
    const auto wanted = from_word<Calculator>(recordId().toStdString());
    if (!wanted) return false;
    calculator_ = *wanted;
    const auto unit = Unit<PressureTag>::find(app()->settings()->pressureUnit().toStdString());
    const TypedPressure set = calculators::usual_set(unit.value_or(units::bar));
    sheet_ = calculators::empty_worksheet(set);
    if (!session_id_.isEmpty()) {
        const auto id = SessionId::parse(session_id_.toStdString());
        const auto visit = id ? app()->desk().visit(*id) : std::nullopt;
        const auto engine = visit ? app()->desk().engine(visit->session.engine) : std::nullopt;
        if (!engine) return false;
        sheet_ = calculators::worksheet_of({*engine, app()->desk().testers(), {}, {}}, *visit, set);
        // What a cylinder held says nothing of the drilled hole.
        if (calculator_ == Calculator::restrictor) sheet_.held.reset();
    } else if (!engine_id_.isEmpty()) {
        const auto id = EngineId::parse(engine_id_.toStdString());
        const auto engine = id ? app()->desk().engine(*id) : std::nullopt;
        if (!engine) return false;
        sheet_ = calculators::worksheet_of({*engine, {}, {}, {}}, Visit{}, set);
    }
    layKeptOver();
    return true;
}

void CalculatorModel::layKeptOver() {
    // A choice can bring new lines with it (a two-stroke's port): the second round finds those.
    for (int round = 0; round < 2; ++round) {
        const auto lines = calculator_lines(calculator_, sheet_, format());
        for (const FormField& field : lines.fields())
            if (const QString kept = draft(keptKey(field.key)); !kept.isEmpty())
                (void)lines.take(field.key, sheet_, from_text(kept));
    }
}

void CalculatorModel::refresh() {
    answer_ = calculators::work_out(calculator_, sheet_, app()->reference());
    show(calculator_lines(calculator_, sheet_, format()).fields());
}

Status CalculatorModel::take(const QString& key, const FormEntry& entry) {
    calculators::Worksheet changed = sheet_;
    if (auto taken = calculator_lines(calculator_, sheet_, format()).take(key, changed, entry); !taken)
        return taken;
    sheet_ = std::move(changed);
    keepDraft(keptKey(key), to_text(entry));
    refresh();
    return {};
}

QString CalculatorModel::title() const {
    return found() ? calculator_title(calculator_) : QString();
}

QString CalculatorModel::purpose() const {
    return found() ? calculator_purpose(calculator_) : QString();
}

QString CalculatorModel::valueOf(const calculators::Line& line) const {
    if (const auto* derived = std::get_if<findings::Derived>(&line.value))
        return format().valueText(derived->figure);
    if (const auto* range = std::get_if<findings::DerivedRange>(&line.value))
        return tr("%1 to %2").arg(format().valueText(range->low), format().valueText(range->high));
    const auto& written = std::get<calculators::Written>(line.value);
    return forms::digits(written.digits, format()) + QLatin1Char(' ') + QString::fromStdString(written.unit);
}

QVariantList CalculatorModel::results() const {
    QVariantList list;
    if (!found() || !answer_) return list;
    int from = 0;
    for (const calculators::Line& line : answer_->lines) {
        const auto* derived = std::get_if<findings::Derived>(&line.value);
        list << QVariantMap{{"name", format().headed(format().text(line.name))},
                            {"value", valueOf(line)},
                            {"doubt", derived ? format().uncertainty(derived->figure) : QString()},
                            {"from", derivation_of(line) ? from : -1}};
        ++from;
    }
    return list;
}

QString CalculatorModel::problem() const {
    return found() && !answer_ ? format().text(answer_.error()) : QString();
}

QStringList CalculatorModel::cautions() const {
    QStringList texts;
    if (!found() || place_of(calculator_).empty()) return texts;
    for (const auto* caution : app()->reference().cautions_at(place_of(calculator_)))
        texts << format().reference(caution->text);
    return texts;
}

QVariantList CalculatorModel::derivation(int from) const {
    if (!answer_ || from < 0 || from >= static_cast<int>(answer_->lines.size())) return {};
    const auto* derivation = derivation_of(answer_->lines[static_cast<std::size_t>(from)]);
    return derivation ? derivation_items({*derivation}, format()) : QVariantList();
}

QString CalculatorModel::remark() const {
    QStringList out;
    for (const calculators::Line& line : answer_->lines) {
        const auto* derived = std::get_if<findings::Derived>(&line.value);
        const QString doubt = derived ? format().uncertainty(derived->figure) : QString();
        out << format().text(line.name) + QStringLiteral(": ") + valueOf(line) +
                   (doubt.isEmpty() ? QString() : QLatin1Char(' ') + doubt);
    }
    QStringList in;
    const auto lines = calculator_lines(calculator_, sheet_, format());
    for (const FormField& field : lines.fields())
        if (!field.shown.isEmpty()) in << field.label + QLatin1Char(' ') + field.shown;
    return tr("%1. %2. From: %3.")
        .arg(title(), out.join(QStringLiteral("; ")), in.join(QStringLiteral(", ")));
}

void CalculatorModel::attach() {
    const auto id = SessionId::parse(session_id_.toStdString());
    if (!attachable() || !id) return;
    Note note;
    note.session = *id;
    note.text = remark().toStdString();
    app()->run(workflow::save_note(std::move(note)), this, [this](const Result<workflow::Step>& step) {
        if (step) emit attached();
    });
}

void CalculatorModel::startAgain() {
    const auto lines = calculator_lines(calculator_, sheet_, format());
    for (const FormField& field : lines.fields()) {
        keepDraft(keptKey(field.key), {});
        keepDraft(field.key, {});
    }
    reload();
}

}  // namespace lapwing

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/my_call_model.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <algorithm>

#include "core/workflow/remarks.h"
#include "qml/format/record_words.h"
#include "qml/viewmodels/opinion_words.h"

namespace lapwing {

namespace {

QString key_of(const Session& session) {
    return QStringLiteral("my call/") + QString::fromStdString(session.id.text());
}

std::vector<int> measured_in(const Visit& visit) {
    std::vector<int> numbers;
    for (const auto& reading : visit.readings)
        if (reading.cylinder > 0) numbers.push_back(reading.cylinder);
    std::ranges::sort(numbers);
    numbers.erase(std::unique(numbers.begin(), numbers.end()), numbers.end());
    return numbers;
}

const QString reported_key = QStringLiteral("reported");

QString text_of(const QJsonObject& kept) {
    return QString::fromUtf8(QJsonDocument(kept).toJson(QJsonDocument::Compact));
}

QJsonObject kept_call(const AppContext& app, const Session& session) {
    return QJsonDocument::fromJson(app.draft(key_of(session)).toUtf8()).object();
}

}  // namespace

bool verdicts_wait(const AppContext& app, const Visit& visit) {
    if (!app.settings()->callFirst()) return false;
    const std::string me = app.settings()->author().toStdString();
    const bool called = std::ranges::any_of(
        visit.notes, [&](const Note& note) { return note.kind == NoteKind::my_call && note.author == me; });
    return !called && !kept_call(app, visit.session)[QStringLiteral("skipped")].toBool();
}

bool call_wanted(const AppContext& app, const Visit& visit) {
    return !measured_in(visit).empty() && verdicts_wait(app, visit);
}

void note_report_before_call(AppContext& app, const Session& session) {
    auto kept = kept_call(app, session);
    kept[reported_key] = true;
    app.keepDraft(key_of(session), text_of(kept));
}

std::vector<int> MyCallModel::measured() const {
    return measured_in(visit());
}

bool MyCallModel::wanted() const {
    return app() && found() && call_wanted(*app(), visit());
}

bool MyCallModel::complete() const {
    return std::ranges::all_of(measured(),
                               [&](int number) { return !calls_.value(number).causes.isEmpty(); });
}

bool MyCallModel::reported() const {
    return app() && found() && kept_call(*app(), session())[reported_key].toBool();
}

QVariantList MyCallModel::cylinders() const {
    QVariantList list;
    for (const int number : measured())
        list << QVariantMap{{"number", number},
                            {"measured", measuredAt(number)},
                            {"causes", calls_.value(number).causes},
                            {"text", calls_.value(number).text}};
    return list;
}

QString MyCallModel::measuredAt(int cylinder) const {
    QStringList parts;
    for (const TestKind test : {TestKind::dry, TestKind::wet, TestKind::leak_down}) {
        const auto readings = standing(visit().readings, test, cylinder);
        if (readings.empty()) continue;
        const Reading& newest = *readings.back();
        if (newest.final) parts << format().heading(test) + QLatin1Char(' ') + format().typed(*newest.final);
        if (newest.held && newest.set)
            parts << format().heading(test) + QLatin1Char(' ') + format::shown_of_set(format(), newest);
    }
    for (const ExitNote* exit : standing(visit().exits, cylinder))
        if (exit->loudness != Loudness::nothing)
            parts << format().heading(exit->exit) + QStringLiteral(": ") + format().name(exit->loudness);
    return parts.join(QStringLiteral(" · "));
}

QVariantList MyCallModel::causes() const {
    return cause_choices(engine(), format());
}

void MyCallModel::refresh() {
    if (read_ || !found()) return;
    read_ = true;
    const auto kept = kept_call(*app(), session());
    skipped_ = kept[QStringLiteral("skipped")].toBool();
    const auto calls = kept[QStringLiteral("calls")].toArray();
    for (const auto& one : calls) {
        const auto call = one.toObject();
        QStringList causes;
        const auto kept_causes = call[QStringLiteral("causes")].toArray();
        for (const auto& cause : kept_causes)
            causes << cause.toString();
        calls_[call[QStringLiteral("cylinder")].toInt()] = {causes, call[QStringLiteral("text")].toString()};
    }
}

void MyCallModel::keep() {
    QJsonArray calls;
    for (auto call = calls_.cbegin(); call != calls_.cend(); ++call)
        calls << QJsonObject{{QStringLiteral("cylinder"), call.key()},
                             {QStringLiteral("causes"), QJsonArray::fromStringList(call->causes)},
                             {QStringLiteral("text"), call->text}};
    const QJsonObject kept{
        {QStringLiteral("skipped"), skipped_}, {QStringLiteral("calls"), calls}, {reported_key, reported()}};
    app()->keepDraft(key_of(session()), text_of(kept));
}

void MyCallModel::choose(int cylinder, const QString& cause) {
    auto& causes = calls_[cylinder].causes;
    const QString sound = QString::fromUtf8(word(Cause::seals_well).data());
    if (!causes.removeOne(cause)) {
        if (cause == sound) causes.clear();
        causes.removeAll(sound);
        causes << cause;
    }
    keep();
    emit refreshed();
}

void MyCallModel::write(int cylinder, const QString& text) {
    calls_[cylinder].text = text;
    keep();
}

void MyCallModel::commit() {
    if (!complete() || committing_) return;
    std::vector<Note> notes;
    const bool late = reported();
    for (const int number : measured()) {
        QStringList text{calls_[number].text.trimmed()};
        if (late) text << tr("(Called after a report with the findings was written.)");
        text.removeAll(QString());
        for (const auto& cause : std::as_const(calls_[number].causes)) {
            Note note;
            note.session = session().id;
            note.tie.to = TiedTo::cylinder;
            note.tie.cylinder = number;
            note.author = app()->settings()->author().toStdString();
            note.cause = from_word<Cause>(cause.toStdString());
            // Why, once.
            note.text = text.join(QLatin1Char(' ')).toStdString();
            text.clear();
            notes.push_back(std::move(note));
        }
    }
    committing_ = true;
    app()->runForGood(workflow::commit_calls(std::move(notes)), this,
                      [this](const Result<workflow::Step>& done) {
                          committing_ = false;
                          if (done) app()->keepDraft(key_of(session()), {});
                      });
}

void MyCallModel::skip() {
    skipped_ = true;
    keep();
    emit refreshed();
}

}  // namespace lapwing

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/pad_model.h"

#include <algorithm>

#include "core/workflow/readings.h"
#include "qml/viewmodels/bores.h"
#include "qml/viewmodels/derivation_item.h"

namespace lapwing {
namespace {

const QString first_field = QStringLiteral("first");
const QString final_field = QStringLiteral("final");
const QString pulls_field = QStringLiteral("pulls");
const QString oil_field = QStringLiteral("oil");
const QString set_field = QStringLiteral("set");
const QString held_field = QStringLiteral("held");
const QString hold_field = QStringLiteral("hold");

bool is_pressure(const QString& field) {
    return field == first_field || field == final_field || field == set_field || field == held_field;
}

constexpr int most_digits = 7;

}  // namespace

QString PadModel::test() const {
    return QString::fromUtf8(word(test_).data());
}

void PadModel::setTest(const QString& text) {
    test_ = from_word<TestKind>(text.toStdString()).value_or(TestKind::dry);
    emit testChanged();
}

QString PadModel::title() const {
    return format().heading(test_);
}

QString PadModel::subtitle() const {
    QStringList parts{engineName()};
    const auto& conditions = session().conditions;
    if (conditions.heat != EngineHeat::unknown) parts << format().name(conditions.heat);
    if (test_ == TestKind::leak_down && step_state(session(), PrepareStep::breather_open) == StepState::done)
        parts << format().name(PrepareStep::breather_open);
    if (const auto* used = tester()) parts << QString::fromStdString(used->name);
    return parts.join(QStringLiteral(" · "));
}

// ---- Which cylinder

std::vector<int> PadModel::order() const {
    // Leak-down follows the crank from one compression TDC to the next; cranking tests go by number.
    if (test_ == TestKind::crankcase) return {0};
    if (test_ == TestKind::leak_down && engine().firing_order.size() == engine().cylinders.size())
        return engine().firing_order;
    return numbers_in_order(engine());
}

bool PadModel::measured(int cylinder) const {
    return latest(visit().readings, test_, cylinder) != nullptr || pending_.contains(cylinder);
}

/// The next one that has no reading yet, going round; 0 when all have one.
int PadModel::nextOf(int cylinder) const {
    auto numbers = order();
    const auto here = std::find(numbers.begin(), numbers.end(), cylinder);
    if (here != numbers.end()) std::rotate(numbers.begin(), here + 1, numbers.end());
    const auto next = std::find_if(numbers.begin(), numbers.end(),
                                   [&](int number) { return number != cylinder && !measured(number); });
    return next == numbers.end() ? 0 : *next;
}

int PadModel::currentIndex() const {
    const auto& all = engine().cylinders;
    const auto at =
        std::find_if(all.begin(), all.end(), [&](const Cylinder& c) { return c.number == current_; });
    return at == all.end() ? -1 : static_cast<int>(at - all.begin());
}

void PadModel::choose(int index) {
    if (index >= 0 && index < static_cast<int>(engine().cylinders.size()))
        moveTo(engine().cylinders[static_cast<std::size_t>(index)].number);
}

void PadModel::chooseCylinder(int number) {
    if (number == 0 || find_cylinder(engine(), number)) moveTo(number);
}

void PadModel::moveTo(int cylinder) {
    current_ = cylinder;
    field_ = mainField();
    buildRail();
    edited();
}

// ---- What is typed

QString PadModel::mainField() const {
    return cranking() ? final_field : held_field;
}

const PadModel::Entry& PadModel::entry() const {
    static const Entry nothing;
    const auto at = entries_.find(current_);
    return at == entries_.end() ? nothing : at->second;
}

PadModel::Entry& PadModel::entry() {
    auto& entry = entries_[current_];
    if (entry.id.is_nil()) entry.id = app()->desk().make_id<ReadingId>();
    return entry;
}

const Tester* PadModel::tester() const {
    const auto& used = session();
    switch (test_) {
        case TestKind::dry:
        case TestKind::wet:
            return find_tester(dossier(), used.compression_gauge);
        case TestKind::leak_down:
            return find_tester(dossier(), used.leak_down_tester);
        case TestKind::crankcase:
            return find_tester(dossier(), used.crankcase_tester);
    }
    return nullptr;
}

Unit<PressureTag> PadModel::pressureUnit() const {
    if (chosen_unit_) return *chosen_unit_;
    if (const auto* used = tester()) return used->gauge.full_scale.unit();
    return format().choice().pressure;
}

QString PadModel::pressureUnitSymbol() const {
    return QString::fromUtf8(pressureUnit().symbol().data());
}

void PadModel::setPressureUnit(const QString& symbol) {
    chosen_unit_ = Unit<PressureTag>::find(symbol.toStdString());
    edited();
}

QStringList PadModel::pressureUnits() const {
    return {QStringLiteral("bar"), QStringLiteral("psi"), QStringLiteral("kPa"), QStringLiteral("kgf/cm2"),
            QStringLiteral("inHg")};
}

double PadModel::fullScale() const {
    // Without a tester a common gauge of the kind stands in: 16 bar for cranking, 10 bar for leak-down
    // (common practice); it only decides where the decimal point of an all-digit entry goes.
    if (const auto* used = tester()) return pressureUnit().number(used->gauge.full_scale.value());
    return pressureUnit().number(units::bar.quantity(cranking() ? 16.0 : 10.0));
}

format::Entry PadModel::placed(const QString& field) const {
    const QString raw = entry().text.value(field);
    if (!is_pressure(field) || entry().plain) return {raw, false};
    const auto* used = tester();
    std::optional<double> division;
    if (used && used->gauge.division) division = pressureUnit().number(used->gauge.division->value());
    return format::placePoint(raw, fullScale(), format::decimalsOfGauge(fullScale(), division));
}

/// What stands in a field that was not typed: carried over from the last reading of this session or the
/// tester.
QString PadModel::carried(const QString& field) const {
    const Reading* last = nullptr;
    for (const auto& reading : visit().readings)
        if (reading.test == test_) last = &reading;
    if (field == set_field) {
        if (last && last->set && last->set->unit() == pressureUnit())
            return QString::fromStdString(last->set->digits());
        const auto* used = tester();
        if (used && used->set_pressure && used->set_pressure->unit() == pressureUnit())
            return QString::fromStdString(used->set_pressure->digits());
    }
    if (field == pulls_field && last && last->pulls) return QString::number(*last->pulls);
    if (field == oil_field && last && last->oil_volume)
        return QString::fromStdString(last->oil_volume->digits());
    if (field == hold_field && last && last->hold) return QString::fromStdString(last->hold->digits());
    return {};
}

std::optional<TypedPressure> PadModel::pressure(const QString& field) const {
    QString digits = placed(field).digits;
    if (digits.isEmpty()) digits = carried(field);
    if (digits.isEmpty()) return std::nullopt;
    auto typed = TypedPressure::make(digits.toStdString(), pressureUnit());
    return typed ? std::optional(*typed) : std::nullopt;
}

QString PadModel::typed() const {
    QString shown = placed(field_).digits;
    if (shown.isEmpty()) shown = entry().text.value(field_);
    return shown.replace(QLatin1Char('.'), format().locale().decimalPoint());
}

QString PadModel::placeholder() const {
    const QString before = carried(field_);
    return before.isEmpty() ? QStringLiteral("–")
                            : QString(before).replace(QLatin1Char('.'), format().locale().decimalPoint());
}

bool PadModel::pointPlaced() const {
    return placed(field_).pointPlaced;
}

QString PadModel::unit() const {
    if (is_pressure(field_)) return QString::fromUtf8(pressureUnit().display().data());
    if (field_ == oil_field) return QString::fromUtf8(units::ml.display().data());
    if (field_ == hold_field) return QString::fromUtf8(units::minute.display().data());
    return {};
}

bool PadModel::decimals() const {
    return field_ != pulls_field;
}

bool PadModel::empty() const {
    return !entry().text.contains(mainField()) || entry().text.value(mainField()).isEmpty();
}

bool PadModel::redoing() const {
    return entry().redo.has_value();
}

QVariantList PadModel::fields() const {
    const auto item = [&](const QString& key, const QString& label, bool stepper = false) {
        QString shown = placed(key).digits;
        if (shown.isEmpty()) shown = carried(key);
        return QVariantMap{{"key", key},
                           {"label", label},
                           {"value", shown.replace(QLatin1Char('.'), format().locale().decimalPoint())},
                           {"stepper", stepper}};
    };
    switch (test_) {
        case TestKind::dry:
            return {item(first_field, tr("First")), item(final_field, tr("Final")),
                    item(pulls_field, tr("Pulls"), true)};
        case TestKind::wet:
            return {item(first_field, tr("First")), item(final_field, tr("Final")),
                    item(oil_field, tr("Oil")), item(pulls_field, tr("Pulls"), true)};
        case TestKind::leak_down:
            return {item(set_field, tr("Set")), item(held_field, tr("Held"))};
        case TestKind::crankcase:
            return {item(set_field, tr("Set")), item(held_field, tr("End")), item(hold_field, tr("Minutes"))};
    }
    return {};
}

QString PadModel::caption() const {
    if (!pointPlaced()) return fieldCaption();
    // The placed point is said, and the point key takes it away again.
    return tr("%1 (point placed; “%2” for %3)")
        .arg(fieldCaption(), QString(format().locale().decimalPoint()), entry().text.value(field_));
}

QString PadModel::fieldCaption() const {
    const QString who = test_ == TestKind::crankcase ? tr("Crankcase") : tr("Cylinder %1").arg(current_);
    if (field_ == first_field) return tr("%1, first puff").arg(who);
    if (field_ == final_field)
        return redoing() ? tr("%1, final reading, again").arg(who) : tr("%1, final reading").arg(who);
    if (field_ == pulls_field) return tr("%1, pulls").arg(who);
    if (field_ == oil_field) return tr("%1, oil put in").arg(who);
    if (field_ == set_field) return tr("%1, set pressure").arg(who);
    if (field_ == hold_field) return tr("%1, how long").arg(who);
    const auto set = pressure(set_field);
    if (!set) return test_ == TestKind::crankcase ? tr("%1, end pressure").arg(who) : tr("%1 held").arg(who);
    return test_ == TestKind::crankcase ? tr("%1, end pressure, of %2 set").arg(who, format().typed(*set))
                                        : tr("%1 held, of %2 set").arg(who, format().typed(*set));
}

void PadModel::press(const QString& character) {
    QString& text = entry().text[field_];
    const bool mark = character == QLatin1String(".") || character == QLatin1String(",");
    if (mark && (text.contains(QLatin1Char('.')) || !decimals())) return;
    if (!mark && text.size() >= most_digits) return;
    text += mark ? QStringLiteral(".") : character;
    edited();
    saveDraft();
}

void PadModel::backspace() {
    QString& text = entry().text[field_];
    text.chop(1);
    if (text.isEmpty()) entry().plain = false;
    edited();
    saveDraft();
}

void PadModel::clear() {
    entry().text.remove(field_);
    entry().plain = false;
    edited();
    saveDraft();
}

void PadModel::dropPoint() {
    entry().plain = true;
    edited();
    saveDraft();
}

void PadModel::focusField(const QString& key) {
    field_ = key;
    edited();
    saveDraft();
}

void PadModel::step(const QString& key, int by) {
    const QString before = entry().text.value(key);
    const int now = (before.isEmpty() ? carried(key) : before).toInt();
    entry().text[key] = QString::number(std::clamp(now + by, 1, 99));
    edited();
    saveDraft();
}

QString PadModel::tag() const {
    return QString::fromUtf8(word(tag_).data());
}

void PadModel::setTag(const QString& text) {
    tag_ = from_word<Tag>(text.toStdString()).value_or(Tag::as_found);
    edited();
    saveDraft();
}

// ---- What it would mean

findings::PadEntry PadModel::padEntry() const {
    findings::PadEntry pad;
    pad.test = test_;
    pad.cylinder = current_;
    pad.tag = tag_;
    pad.first = entry().text.value(first_field).isEmpty() ? std::nullopt : pressure(first_field);
    pad.final = entry().text.value(final_field).isEmpty() ? std::nullopt : pressure(final_field);
    pad.set = pressure(set_field);
    pad.held = entry().text.value(held_field).isEmpty() ? std::nullopt : pressure(held_field);
    if (const QString hold = placed(hold_field).digits; !hold.isEmpty())
        if (auto typed = TypedTime::make(hold.toStdString(), units::minute)) pad.hold = *typed;
    if (const auto* used = tester()) pad.tester = used->id;
    return pad;
}

void PadModel::judge() {
    lines_.clear();
    derivations_.clear();
    questioned_ = false;
    if (empty()) return;
    const auto judged = findings::judge_entry(dossier(), visit(), reference(), padEntry());
    const auto line = [&](const QString& mark, const QString& symbol, const QString& figure,
                          const QString& text, std::vector<findings::Derivation> from) {
        lines_ << QVariantMap{{"mark", mark}, {"symbol", symbol}, {"figure", figure}, {"text", text}};
        derivations_.push_back(std::move(from));
    };
    for (const auto& question : judged.questions)
        line({}, QStringLiteral("question"), {}, format().text(question.message), question.from);
    questioned_ = !judged.questions.empty();
    if (judged.leakage)
        line(state_key(judged.state), {}, format().text(judged.leakage->figure), tr("leakage on this tester"),
             {judged.leakage->from});
    if (judged.converted) {
        const auto& other = *judged.converted;
        const double low = std::min(other.orifice.figure.si, other.laminar.figure.si);
        const double high = std::max(other.orifice.figure.si, other.laminar.figure.si);
        auto from = other.orifice.figure, to = other.orifice.figure;
        from.si = low;
        to.si = high;
        const QString least = format().valueText(from), most = format().valueText(to);
        line({}, QStringLiteral("swap"), least == most ? least : tr("%1 to %2").arg(least, most),
             tr("on a tester of %1 behind %2")
                 .arg(format().valueText({findings::Dimension::gauge_pressure, other.set.si(), {}, {}, {}}),
                      format().valueText({findings::Dimension::length, other.restrictor.si(), {}, {}, {}})),
             {other.orifice.from, other.laminar.from});
    }
    if (judged.value && !judged.leakage)
        line(state_key(judged.state), {}, format().text(judged.value->figure),
             judged.state == findings::State::none ? tr("give or take the gauge")
                                                   : format().name(judged.state),
             {judged.value->from});
    if (judged.rise)
        line({}, QStringLiteral("swap"), format().text(judged.rise->figure), tr("over the dry reading"),
             {judged.rise->from});
}

QVariantList PadModel::derivation(int line) const {
    QVariantList list;
    if (line < 0 || line >= static_cast<int>(derivations_.size())) return list;
    for (const auto& from : derivations_[static_cast<std::size_t>(line)])
        list << derivation_item(from, format());
    return list;
}

void PadModel::edited() {
    judge();
    emit entryChanged();
}

// ---- Keep

std::optional<Reading> PadModel::reading() const {
    Reading reading;
    reading.id = entry().id;
    reading.session = session().id;
    reading.test = test_;
    reading.cylinder = current_;
    reading.tag = tag_;
    if (cranking()) reading.cranked_by = session().conditions.cranked_by;
    const auto pad = padEntry();
    reading.first = pad.first;
    reading.final = pad.final;
    if (!cranking()) reading.set = pad.set;
    reading.held = pad.held;
    reading.hold = pad.hold;
    reading.tester = pad.tester;
    if (cranking()) {
        const QString typed_pulls = entry().text.value(pulls_field);
        const QString pulls = typed_pulls.isEmpty() ? carried(pulls_field) : typed_pulls;
        if (!pulls.isEmpty()) reading.pulls = pulls.toInt();
    }
    if (test_ == TestKind::wet) {
        const QString typed_oil = placed(oil_field).digits;
        const QString oil = typed_oil.isEmpty() ? carried(oil_field) : typed_oil;
        if (auto volume = TypedVolume::make(oil.toStdString(), units::ml); !oil.isEmpty() && volume)
            reading.oil_volume = *volume;
    }
    if (test_ == TestKind::crankcase && !reading.hold) {
        if (auto hold = TypedTime::make(carried(hold_field).toStdString(), units::minute))
            reading.hold = *hold;
    }
    return reading;
}

QString PadModel::keepText() const {
    const int next = nextOf(current_);
    if (empty()) return next == 0 ? tr("Done") : tr("Next %1").arg(next);
    if (questioned_) return tr("Keep all the same");
    if (redoing()) return tr("Keep instead");
    if (test_ == TestKind::leak_down) return tr("Keep, listen");
    return next == 0 ? tr("Keep") : tr("Keep, next %1").arg(next);
}

void PadModel::keep() {
    const int here = current_;
    if (empty()) {
        const int next = nextOf(here);
        if (next == 0)
            emit finished();
        else
            moveTo(next);
        return;
    }
    if (!cranking() && !pressure(set_field)) {
        focusField(set_field);
        emit app()->told(tr("Type the set pressure first: leakage is counted from it."));
        return;
    }
    if (test_ == TestKind::crankcase && placed(hold_field).digits.isEmpty() &&
        carried(hold_field).isEmpty()) {
        focusField(hold_field);
        emit app()->told(tr("Type how many minutes it stood: without them the end pressure says little."));
        return;
    }
    const auto made = reading();
    const auto kept_entry = entry();
    const QString shown = typed() + QLatin1Char(' ') + unit();
    ++pending_[here];

    // The pad moves on at once; the tick comes with the commit. If the commit fails, what was typed comes
    // back.
    entries_.erase(here);
    const bool redo = kept_entry.redo.has_value();
    const int next = redo ? here : nextOf(here);
    if (test_ == TestKind::leak_down || next == 0 || redo)
        moveTo(here);
    else
        moveTo(next);

    auto intent = redo ? workflow::redo_reading(*kept_entry.redo, *made) : workflow::keep_reading(*made);
    app()->run(std::move(intent), this,
               [this, here, kept_entry, shown](const Result<workflow::Step>& result) {
                   if (--pending_[here] == 0) pending_.erase(here);
                   if (!result) {
                       entries_[here] = kept_entry;
                       moveTo(here);
                       return;
                   }
                   saveDraft();
                   last_kept_ =
                       here == 0 ? tr("%1 kept").arg(shown) : tr("Cylinder %1: %2 kept").arg(here).arg(shown);
                   buildRail();
                   emit kept(here);
                   if (test_ == TestKind::leak_down && !kept_entry.redo) emit listenTo(here);
               });
}

void PadModel::startRedo(const QString& readingId) {
    const auto id = ReadingId::parse(readingId.toStdString());
    if (!id) return;
    entries_.erase(current_);
    entry().redo = *id;
    field_ = mainField();
    edited();
    saveDraft();
}

void PadModel::cancelRedo() {
    entries_.erase(current_);
    edited();
    saveDraft();
}

void PadModel::remove(const QString& readingId) {
    if (const auto id = ReadingId::parse(readingId.toStdString()))
        app()->run(workflow::remove_reading(*id), this);
}

}  // namespace lapwing

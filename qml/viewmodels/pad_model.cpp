// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/pad_model.h"

#include <algorithm>
#include <cmath>

#include "core/findings/crank_way.h"
#include "qml/viewmodels/cylinder_order.h"
#include "qml/viewmodels/my_call_model.h"
#include "qml/viewmodels/tag_of.h"

namespace lapwing {

QString PadModel::test() const {
    return QString::fromUtf8(word(test_).data());
}

void PadModel::setTest(const QString& text) {
    test_ = from_word<TestKind>(text.toStdString()).value_or(TestKind::dry);
    history_.reset();
    emit testChanged();
}

// ---- Which cylinder

bool PadModel::takes(int cylinder) const {
    if (test_ != TestKind::crankcase) return KeyedModel::takes(cylinder);
    const auto chambers = order_of(engine(), test_);
    return std::ranges::find(chambers, cylinder) != chambers.end();
}

bool PadModel::measured(int cylinder) const {
    return latest(visit().readings, test_, cylinder) != nullptr || onItsWay(cylinder);
}

int PadModel::nextOf(int cylinder) const {
    return next_without_reading(engine(), visit(), test_, cylinder,
                                [this](int number) { return onItsWay(number); });
}

// ---- What is typed

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

/// Once for a session: they are not written to while its pad is open.
void PadModel::readOthers() {
    if (others_of_ == session().id) return;
    others_of_ = session().id;
    others_.clear();
    const auto& desk = app()->desk();
    for (const auto& other : desk.sessions(engine().id)) {
        if (other.id == session().id) continue;
        if (!others_.empty() && !workflow::of_the_same_work(other, desk.clock().now())) continue;
        if (auto visit = desk.visit(other.id)) others_.push_back(std::move(*visit));
    }
}

const Reading* PadModel::lastWithTester() const {
    const auto* used = tester();
    const auto in = [&](const Visit& visit) {
        const Reading* last = nullptr;
        for (const auto& reading : visit.readings)
            // What was taken off a photo stands in the photo's unit.
            if (reading.test == test_ && reading.from == ReadingFrom::typed &&
                (used ? reading.tester == used->id : !reading.tester))
                last = &reading;
        return last;
    };
    if (const auto* last = in(visit())) return last;
    // Without a tester's name another session's may be any.
    if (!used) return nullptr;
    const Reading* last = nullptr;
    for (const auto& other : others_)
        if (const auto* reading = in(other); reading && (!last || last->taken_at < reading->taken_at))
            last = reading;
    return last;
}

bool PadModel::dialInPercent() const {
    if (test_ != TestKind::leak_down) return false;
    if (chosen_percent_) return *chosen_percent_;
    const auto* last = lastWithTester();
    return last && last->dial_loss;
}

Unit<PressureTag> PadModel::pressureUnit() const {
    if (chosen_unit_) return *chosen_unit_;
    if (const auto* last = lastWithTester()) {
        if (const auto& shown = last->set ? last->set : last->final) return shown->unit();
    }
    if (const auto* used = tester()) return used->gauge.full_scale.unit();
    return format().choice().pressure;
}

QString PadModel::pressureUnitSymbol() const {
    if (dialInPercent()) return QString::fromUtf8(units::percent.symbol().data());
    return QString::fromUtf8(pressureUnit().symbol().data());
}

void PadModel::setPressureUnit(const QString& symbol) {
    // The set pressure keeps its unit beside a dial in %.
    chosen_percent_ = symbol == QLatin1String(units::percent.symbol().data());
    if (!*chosen_percent_) chosen_unit_ = Unit<PressureTag>::find(symbol.toStdString());
    changed();
}

QStringList PadModel::pressureUnits() const {
    QStringList all{QStringLiteral("bar"), QStringLiteral("psi"), QStringLiteral("kPa"),
                    QStringLiteral("kgf/cm2"), QStringLiteral("inHg")};
    if (test_ == TestKind::leak_down) all << QStringLiteral("%");
    return all;
}

PadFields PadModel::typedFields() const {
    return {test_, engine().fuel, visit(), tester(), pressureUnit(), dialInPercent(), entry()};
}

QString PadModel::typed() const {
    const QString placed = typedFields().placed(field_).digits;
    return localized(placed.isEmpty() ? entry().typed(field_) : placed);
}

QString PadModel::placeholder() const {
    const QString before = typedFields().carried(field_);
    return before.isEmpty() ? QStringLiteral("–") : localized(before);
}

bool PadModel::pointPlaced() const {
    return typedFields().placed(field_).pointPlaced;
}

QString PadModel::unit() const {
    if (typesPercent()) return QString::fromUtf8(units::percent.display().data());
    if (pad_field::is_pressure(field_)) return QString::fromUtf8(pressureUnit().display().data());
    if (field_ == pad_field::oil) return QString::fromUtf8(units::ml.display().data());
    if (field_ == pad_field::hold) return QString::fromUtf8(units::minute.display().data());
    return {};
}

void PadModel::dropPoint() {
    entry().plain = true;
    changed();
}

void PadModel::step(const QString& key, int by) {
    const int now = typedFields().digits(key).toInt();
    entry().text[key] = QString::number(std::clamp(now + by, 1, 99));
    changed();
}

QString PadModel::tag() const {
    return QString::fromUtf8(word(tag_).data());
}

void PadModel::setTag(const QString& text) {
    tag_ = from_word<Tag>(text.toStdString()).value_or(Tag::as_found);
    changed();
}

// ---- What it would mean

void PadModel::judge() {
    lines_ = {};
    questioned_ = false;
    const auto entry = typedFields().pad_entry(cylinder_, tag_);
    const auto judged = findings::judge_entry(dossier(), visit(), reference(), entry, modelFacts(entry));
    questioned_ = !empty() && !judged.questions.empty();
    lines_ = PadLines(judged, inGaugeUnit(), !verdicts_wait(*app(), visit()));
    other_unit_ = unit_settled_ == asStruck() ? std::nullopt : judged.other_unit;
    oil_between_ = oilCameBetween();
    odd_repeat_ = apartFromStanding(judged);
    if (oil_between_ && !empty())
        lines_.tell(tr("After oil"), tr("kept, and not counted with what was read before the oil"));
    if (const QString wet = earlierOil(); !wet.isEmpty())
        lines_.ask(tr("%1: is its oil still on the rings?").arg(wet), QStringLiteral("oil"));
    else if (!empty() && oilOfOtherSession() && oilGone() == false)
        lines_.tell(tr("After oil"), tr("read over the oil of another session's wet test"));
    if (!odd_repeat_.isEmpty()) lines_.ask(odd_repeat_, QStringLiteral("repeat"));
    if (other_unit_) lines_.ask(unitQuestion(), QStringLiteral("unit"));
    if (const QString reads = photoReads(); !reads.isEmpty()) lines_.ask(reads, QStringLiteral("photo"));
    // Nobody keeps a wet reading without having seen how much oil it takes.
    if (test_ == TestKind::wet && typedFields().digits(pad_field::oil).isEmpty()) {
        const auto [figure, text] = oilToPutIn();
        lines_.tell(figure, text);
    }
    tellKept();
    tellLacking();
}

/// What stands of this cylinder, while nothing else is typed.
void PadModel::tellKept() {
    const auto* kept = empty() && found() ? latest(visit().readings, test_, cylinder_) : nullptr;
    if (!kept) return;
    if (kept->dial_loss && kept->set)
        lines_.tell(tr("Kept: %1").arg(format().typed(*kept->dial_loss)),
                    tr("at %1").arg(format().typed(*kept->set)));
    else if (kept->held && kept->set)
        lines_.tell(tr("Kept: %1").arg(format().typed(*kept->held)),
                    tr("of %1").arg(format().typed(*kept->set)));
    else if (kept->final)
        lines_.tell(tr("Kept: %1").arg(format().typed(*kept->final)), {});
}

/// Readings of before the oil stand, and a wet test of this cylinder was kept since.
bool PadModel::oilCameBetween() const {
    if (test_ != TestKind::dry && test_ != TestKind::leak_down) return false;
    if (redoing() || !latest(visit().readings, TestKind::wet, cylinder_)) return false;
    return std::ranges::any_of(standing(visit().readings, test_, cylinder_), [this](const Reading* reading) {
        return is_of(tag_, reading->tag) &&
               findings::oil_on_rings(visit(), *reading) != findings::OnRings::oiled;
    });
}

/// How far what is typed lies from the reading of this cylinder that stands, where gauges and the usual
/// scatter don't explain it: a changed throttle, another gauge, the wrong cylinder.
QString PadModel::apartFromStanding(const findings::PadJudgement& judged) const {
    const auto* cylinder = findings() && !redoing() ? findings()->cylinder(cylinder_) : nullptr;
    const auto* standing = latest(visit().readings, test_, cylinder_);
    // After staking or adjusting it is meant to differ.
    if (!cylinder || !standing || !is_of(tag_, standing->tag)) return {};
    // It was asked when the first reading after the oil was kept.
    if (oil_between_ && findings::oil_on_rings(visit(), *standing) == findings::OnRings::oiled) return {};
    const findings::Derived* before = nullptr;
    if (test_ == TestKind::dry && cylinder->dry) before = &cylinder->dry->final;
    if (test_ == TestKind::wet && cylinder->wet) before = &cylinder->wet->reading.final;
    if (test_ == TestKind::leak_down && cylinder->leak_down) before = &cylinder->leak_down->leakage;
    const auto& now = test_ == TestKind::leak_down ? judged.leakage : judged.value;
    if (!before || !now) return {};
    // Twice that: a repeat that is only a little off is what repeats are for. What one leak-down tester has
    // wrong at both readings doesn't set them apart, and what is left is reckoned widely.
    const double times = test_ == TestKind::leak_down ? 1.0 : 2.0;
    const double doubt = test_ == TestKind::leak_down
                             ? std::sqrt(2.0) * judged.leakage_own_u95
                             : std::hypot(before->figure.u95.value_or(0.0), now->figure.u95.value_or(0.0));
    if (std::abs(now->figure.si - before->figure.si) <= times * doubt) return {};
    return tr("%1 after %2: further apart than gauge and scatter explain.")
        .arg(format().valueText(now->figure), format().valueText(before->figure));
}

/// What the cranking model expects; null until it is there. It is worked out on a thread of its own and the
/// lines are judged again then: the screen never waits for it.
const findings::ModelFacts* PadModel::modelFacts(const findings::PadEntry& entry) {
    if (!is_cranking(test_)) return nullptr;
    auto inputs = findings::model_inputs(dossier(), visit(), reference(), entry);
    if (expected_ && expected_->inputs == inputs) return &*expected_;
    if (auto known = models().known(inputs)) {
        expected_ = std::move(known);
        return &*expected_;
    }
    if (asked_ == inputs) return nullptr;
    asked_ = inputs;
    if (!modeller_) modeller_ = std::make_unique<workflow::Background>();
    modeller_->ask<findings::ModelFacts>([&cache = models(), inputs = std::move(inputs)](
                                             const std::stop_token&) { return cache.facts(inputs); },
                                         [this](findings::ModelFacts facts) {
                                             QMetaObject::invokeMethod(
                                                 this,
                                                 [this, facts = std::move(facts)]() mutable {
                                                     expected_ = std::move(facts);
                                                     asked_.reset();
                                                     edited();
                                                 },
                                                 Qt::QueuedConnection);
                                         });
    return nullptr;
}

/// What is typed and what it is held against stand in one unit: the one that the gauge shows.
format::Formatter PadModel::inGaugeUnit() const {
    auto choice = format().choice();
    choice.pressure = pressureUnit();
    return format::Formatter(choice, format().locale());
}

QVariantList PadModel::derivation(int line) const {
    return lines_.derivation(line, inGaugeUnit());
}

// ---- The draft that outlives the process

QString PadModel::draftKey() const {
    return QStringLiteral("pad/%1/%2").arg(sessionId(), test());
}

bool PadModel::recorded(const Uuid& id) const {
    return std::ranges::any_of(visit().readings, [&](const Reading& kept) { return kept.id.uuid == id; });
}

void PadModel::writeDraft(QJsonObject& draft) const {
    KeyedModel::writeDraft(draft);
    draft["tag"] = tag();
    draft["taken off"] = photo_taken_;
    // What the digits are in; without digits what was chosen for this tester.
    if (!chosen_unit_ && !chosen_percent_ && entries_.json().isEmpty()) return;
    draft["unit"] = QString::fromUtf8(pressureUnit().symbol().data());
    draft["percent"] = dialInPercent();
    if (const auto* used = tester()) draft["tester"] = QString::fromStdString(used->id.text());
}

void PadModel::readDraft(const QJsonObject& draft) {
    KeyedModel::readDraft(draft);
    tag_ = from_word<Tag>(draft["tag"].toString().toStdString()).value_or(Tag::as_found);
    photo_taken_ = draft["taken off"].toString();
    const QString now = tester() ? QString::fromStdString(tester()->id.text()) : QString();
    if (!entries_.json().isEmpty() || draft["tester"].toString() == now) {
        chosen_unit_ = Unit<PressureTag>::find(draft["unit"].toString().toStdString());
        if (const auto percent = draft["percent"]; percent.isBool()) chosen_percent_ = percent.toBool();
    }
    if (test_ == TestKind::crankcase) field_.clear();
    if (!takes(cylinder_)) {
        field_.clear();
        const auto numbers = order_of(engine(), test_);
        const auto first = std::ranges::find_if(numbers, [&](int number) { return !measured(number); });
        cylinder_ = first == numbers.end() ? numbers.front() : *first;
    } else if (!entries_.has(place()) && measured(cylinder_)) {
        if (const int next = nextOf(cylinder_)) cylinder_ = next;
    }
    // What the others are counted from comes first.
    if (test_ == TestKind::crankcase && setLacks()) field_ = pad_field::set;
}

void PadModel::enterHold(int seconds) {
    if (test_ != TestKind::crankcase) return;
    const QString before = field_;
    focusField(pad_field::hold);
    clear();
    const QString minutes = QString::number(std::max(0.1, seconds / 60.0), 'f', 1);
    for (const QChar one : minutes)
        press(one == QLatin1Char('.') ? QStringLiteral(".") : QString(one));
    focusField(before);
}

}  // namespace lapwing

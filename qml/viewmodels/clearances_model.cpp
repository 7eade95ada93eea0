// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/clearances_model.h"

#include <algorithm>

#include "core/base/apart.h"
#include "core/findings/clearance_fit.h"
#include "core/workflow/clearances.h"
#include "qml/viewmodels/bores.h"
#include "qml/viewmodels/cylinder_order.h"

namespace lapwing {
namespace {

const QString found_field = QStringLiteral("found");
const QString left_field = QStringLiteral("left");

}  // namespace

std::vector<ClearancesModel::Valve> ClearancesModel::valvesOfCylinder() const {
    std::vector<Valve> valves;
    for (int i = 1; i <= engine().valves.intake_valves; ++i)
        valves.push_back({ValveSide::intake, i});
    for (int i = 1; i <= engine().valves.exhaust_valves; ++i)
        valves.push_back({ValveSide::exhaust, i});
    return valves;
}

ClearancesModel::Valve ClearancesModel::valve() const {
    const auto valves = valvesOfCylinder();
    return valves.empty() ? Valve{ValveSide::intake, 1}
                          : valves[static_cast<std::size_t>(
                                std::clamp<int>(valve_, 0, static_cast<int>(valves.size()) - 1))];
}

const Clearance* ClearancesModel::recordedAt(int cylinder, Valve which) const {
    const Clearance* newest = nullptr;
    for (const auto* clearance : standing(visit().clearances, cylinder))
        if (clearance->side == which.side && clearance->valve == which.number) newest = clearance;
    return newest;
}

std::optional<ClearanceRange> ClearancesModel::wanted(ValveSide side) const {
    const auto& range = findings::wanted_clearance(engine(), side);
    return range ? std::optional(range->value) : std::nullopt;
}

/// The unit chosen here, else the one that the engine's manual uses, else the one of Settings.
Unit<LengthTag> ClearancesModel::lengthUnit() const {
    if (chosen_unit_) return *chosen_unit_;
    if (const auto range = wanted(valve().side)) return range->low.unit();
    return Unit<LengthTag>::find(
               (app() ? app()->settings()->clearanceUnit() : QStringLiteral("mm")).toStdString())
        .value_or(units::mm);
}

findings::State ClearancesModel::stateOf(const Clearance& clearance) const {
    return findings::state_of(findings::fit_of(engine(), clearance));
}

QVariantList ClearancesModel::rail() const {
    QVariantList list;
    for (const auto& cylinder : engine().cylinders) {
        auto worst = findings::State::none;
        int count = 0;
        const auto valves = valvesOfCylinder();
        for (const auto which : valves)
            if (const auto* clearance = recordedAt(cylinder.number, which)) {
                worst = findings::worse(worst, stateOf(*clearance));
                ++count;
            }
        // The dashed ring would say that nothing was measured, a good mark that all of its valves are.
        const bool in_part = worst == findings::State::good && count < static_cast<int>(valves.size());
        const bool unjudged = count > 0 && (worst == findings::State::none || in_part);
        list << QVariantMap{{"number", cylinder.number},
                            {"name", tr("%1 of %2").arg(count).arg(valves.size())},
                            {"state", unjudged ? measured_only : state_key(worst)},
                            {"measured", false},
                            {"row", cylinder.row},
                            {"column", cylinder.column}};
    }
    return list;
}

QVariantList ClearancesModel::valves() const {
    QVariantList list;
    for (const auto which : valvesOfCylinder()) {
        const bool several = (which.side == ValveSide::intake ? engine().valves.intake_valves
                                                              : engine().valves.exhaust_valves) > 1;
        const QString side = format().heading(which.side == ValveSide::intake ? Exit::intake : Exit::exhaust);
        const auto* clearance = recordedAt(cylinder_, which);
        QString value;
        if (clearance && clearance->found) value = format().typed(*clearance->found);
        if (clearance && clearance->left)
            value = tr("%1 → %2").arg(value.isEmpty() ? QStringLiteral("?") : value,
                                      format().typed(*clearance->left));
        list << QVariantMap{
            {"key", QStringLiteral("%1%2").arg(QString::fromUtf8(word(which.side).data())).arg(which.number)},
            {"label", several ? tr("%1 %2").arg(side).arg(which.number) : side},
            {"value", value},
            {"state", state_key(clearance ? stateOf(*clearance) : findings::State::none)}};
    }
    return list;
}

QVariantList ClearancesModel::fields() const {
    // What was kept stands in its field until something else is typed.
    const auto* kept = recordedAt(cylinder_, valve());
    const auto item = [&](const QString& key, const QString& label) {
        const auto* before = !kept ? nullptr : key == found_field ? &kept->found : &kept->left;
        QString value = placed(key).digits;
        if (value.isEmpty() && before && *before) value = QString::fromStdString((*before)->digits());
        return QVariantMap{{"key", key}, {"label", label}, {"value", localized(value)}};
    };
    return {item(found_field, tr("Found")), item(left_field, tr("Left"))};
}

QString ClearancesModel::caption() const {
    const QString side = format().name(valve().side);
    const QString what = field_ == found_field ? tr("as found") : tr("as left");
    QString where = tr("Cylinder %1, %2 %3, %4").arg(cylinder_).arg(side).arg(valve().number).arg(what);
    if (!placed(field_).pointPlaced) return where;
    return tr("%1 (point placed; “%2” for %3)")
        .arg(where, QString(format().locale().decimalPoint()), entry().typed(field_));
}

format::Entry ClearancesModel::placed(const QString& field) const {
    const QString raw = entry().typed(field);
    if (lengthUnit() != units::mm) return {raw, false};
    // Whole millimetres are no clearance (common practice, no source): 15 is 0.15, and 005 is 0.05; what is
    // longer may be over a millimetre: 105 is 1.05.
    const bool own_point = raw.contains(QLatin1Char('.'));
    if (raw.size() == 2 && !own_point) return {QStringLiteral("0.") + raw, true};
    if (raw.size() > 2 && raw.startsWith(QLatin1Char('0')) && !own_point)
        return {QStringLiteral("0.") + raw.mid(1), true};
    const double most_mm = units::mm.number(Length::from_si(reference().assumed("clearance-very-wide")));
    return raw.size() < 3 ? format::Entry{raw, false} : format::placePoint(raw, most_mm, 2);
}

QString ClearancesModel::typed() const {
    return localized(placed(field_).digits);
}

QString ClearancesModel::placeholder() const {
    const auto* clearance = recordedAt(cylinder_, valve());
    const auto* value = !clearance ? nullptr : field_ == found_field ? &clearance->found : &clearance->left;
    return value && *value ? localized(QString::fromStdString((*value)->digits())) : QStringLiteral("–");
}

std::optional<TypedLength> ClearancesModel::length(const QString& field) const {
    const QString digits = placed(field).digits;
    if (digits.isEmpty()) return std::nullopt;
    auto typed = TypedLength::make(digits.toStdString(), lengthUnit());
    return typed ? std::optional(*typed) : std::nullopt;
}

QString ClearancesModel::unit() const {
    return QString::fromUtf8(lengthUnit().display().data());
}

QVariantMap ClearancesModel::wayToCard() const {
    return {{"engineId", QString::fromStdString(engine().id.text())},
            {"line", valve().side == ValveSide::intake ? QStringLiteral("intake_clearance")
                                                       : QStringLiteral("exhaust_clearance")}};
}

QVariantList ClearancesModel::lines() const {
    QVariantList list;
    if (const auto range = wanted(valve().side)) {
        // The unit once, where it is the same.
        const QString low = range->low.unit() == range->high.unit()
                                ? localized(QString::fromStdString(range->low.digits()))
                                : format().typed(range->low);
        const bool one = range->low == range->high;
        list << QVariantMap{{"mark", ""},
                            {"figure", one ? format().typed(range->high)
                                           : tr("%1 to %2").arg(low, format().typed(range->high))},
                            {"text", tr("wanted, cold")},
                            {"way", "EngineCard"},
                            {"args", wayToCard()}};
    } else if (found()) {
        list << QVariantMap{{"symbol", "question"},
                            {"figure", tr("Wanted?")},
                            {"text", tr("It is not on the engine card. Touch here to type it there.")},
                            {"way", "EngineCard"},
                            {"args", wayToCard()}};
    }
    if (const auto value = length(field_)) {
        Clearance now;
        now.side = valve().side;
        now.found = *value;
        const auto fit = findings::fit_of(engine(), now);
        if (const auto state = findings::state_of(fit); state != findings::State::none)
            // First: it is what was asked, and a small screen shows no second line.
            list.prepend(QVariantMap{
                {"mark", state_key(state)},
                {"figure", format().name(state)},
                {"text",
                 findings::too_small(fit) ? tr("adjust it, then test again, before any verdict on the valve")
                 : fit == findings::Fit::large ? tr("it opens late and is noisy, but it seats: adjust it")
                                               : QString()}});
        if (const QString question = doubtful(); !question.isEmpty())
            list.prepend(QVariantMap{{"symbol", "question"}, {"figure", ""}, {"text", question}});
        else if (is_above(value->si(), reference().assumed("clearance-very-wide")))
            list << QVariantMap{{"symbol", "question"},
                                {"figure", ""},
                                {"text", tr("That is a very wide clearance. Is the unit right?")}};
    }
    return list;
}

QString ClearancesModel::doubtful() const {
    // Nobody leaves a valve far off what the manual wants; found, a worn one may be far off (common practice,
    // no source).
    constexpr double left_far_off = 2.0;
    constexpr double found_far_off = 5.0;
    const auto range = wanted(valve().side);
    if (!range) return {};
    const auto far = [&](const std::optional<TypedLength>& typed, double most) {
        return typed && is_above(typed->si(), most * range->high.si());
    };
    const auto left = length(left_field);
    const bool too_tight = left && is_below(left->si(), range->low.si() / left_far_off);
    const auto found = length(found_field);
    if (!too_tight && !far(left, left_far_off) && !far(found, found_far_off)) return {};
    const auto& odd = too_tight || far(left, left_far_off) ? left : found;
    return tr("%1, where %2 to %3 is wanted: is the point right?")
        .arg(format().typed(*odd), format().typed(range->low), format().typed(range->high));
}

QString ClearancesModel::typedAsOne() const {
    return QStringLiteral("%1 %2 %3 %4 %5")
        .arg(cylinder_)
        .arg(valve_)
        .arg(placed(found_field).digits, placed(left_field).digits, unit());
}

void ClearancesModel::chooseCylinder(int number) {
    if (takes(number)) valve_ = 0;
    KeyedModel::chooseCylinder(number);
}

void ClearancesModel::chooseValve(int index) {
    const bool other = valve_ != index || field_ != found_field;
    valve_ = index;
    field_ = found_field;
    if (other) comeBack();
    changed();
}

void ClearancesModel::chooseSide(const QString& text) {
    const auto side = from_word<ValveSide>(text.toStdString());
    const auto valves = valvesOfCylinder();
    const auto first = std::ranges::find_if(valves, [&](const Valve& one) { return one.side == side; });
    if (first != valves.end()) chooseValve(static_cast<int>(first - valves.begin()));
}

void ClearancesModel::switchUnit() {
    chosen_unit_ = lengthUnit() == units::mm ? units::thou : units::mm;
    edited();
}

/// The one behind it that was not kept while this page stood open: who began with another valve does not come
/// round to that one again.
std::optional<int> ClearancesModel::nextValve() const {
    const auto valves = valvesOfCylinder();
    for (int i = valve_ + 1; i < static_cast<int>(valves.size()); ++i)
        if (!kept_.contains(placeOf(cylinder_, valves[static_cast<std::size_t>(i)]))) return i;
    return std::nullopt;
}

bool ClearancesModel::lastValve() const {
    return !nextValve();
}

/// A valve of this cylinder that has no figure yet, though this one is the cylinder's last.
std::optional<int> ClearancesModel::leftOut() const {
    const auto valves = valvesOfCylinder();
    for (int i = 0; i < static_cast<int>(valves.size()); ++i) {
        const Valve which = valves[static_cast<std::size_t>(i)];
        if (i != valve_ && !recordedAt(cylinder_, which) && !kept_.contains(placeOf(cylinder_, which)))
            return i;
    }
    return std::nullopt;
}

/// To the next valve, then to the next cylinder; false after the last. Once a figure was kept, first back to
/// what the cylinder still lacks.
bool ClearancesModel::advance(bool kept) {
    field_ = found_field;
    const auto open = kept && lastValve() ? leftOut() : std::nullopt;
    if (open || !lastValve()) {
        valve_ = open ? *open : *nextValve();
        comeBack();
        edited();
        return true;
    }
    const auto numbers = numbers_in_order(engine());
    const auto here = std::ranges::find(numbers, cylinder_);
    if (here == numbers.end() || here + 1 == numbers.end()) return false;
    valve_ = 0;
    moveTo(*(here + 1));
    return true;
}

QString ClearancesModel::keepText() const {
    const auto numbers = numbers_in_order(engine());
    const bool last = lastValve() && (numbers.empty() || cylinder_ == numbers.back());
    if (entry().blank()) return last ? tr("Done") : tr("Next valve");
    if (asked_ == typedAsOne()) return tr("Keep all the same");
    return last && !leftOut() ? tr("Keep") : tr("Keep, next valve");
}

void ClearancesModel::keep() {
    if (entry().blank()) {
        if (!advance(false)) emit finished();
        saveDraft();
        return;
    }
    if (!doubtful().isEmpty() && asked_ != typedAsOne()) {
        asked_ = typedAsOne();
        edited();
        return;
    }
    asked_.clear();
    const Valve here = valve();
    Clearance clearance;
    clearance.id = ClearanceId{entry().id};
    clearance.session = session().id;
    clearance.cylinder = cylinder_;
    clearance.side = here.side;
    clearance.valve = here.number;
    clearance.found = length(found_field);
    clearance.left = length(left_field);
    // Typing only "left" for a valve that was measured keeps what was found.
    if (const auto* before = recordedAt(cylinder_, here); before && !clearance.found)
        clearance.found = before->found;
    // The value first: a narrow head cuts the end off.
    kept_.insert(place());
    const auto& newest = clearance.left ? clearance.left : clearance.found;
    store(workflow::keep_clearance(clearance), tr("%1 kept: cylinder %2, %3 %4")
                                                   .arg(newest ? format().typed(*newest) : QString())
                                                   .arg(cylinder_)
                                                   .arg(format().name(here.side))
                                                   .arg(here.number));
    if (!advance(true)) edited();
}

void ClearancesModel::remove() {
    const auto* clearance = recordedAt(cylinder_, valve());
    if (!clearance) return;
    if (clearance->id.uuid == lastKeptId()) forgetKept();
    app()->run(workflow::remove_clearance(clearance->id), this);
}

// ---- Places and the draft: "1/0/2" is cylinder 1, intake, valve 2

QString ClearancesModel::mainField() const {
    return found_field;
}

QString ClearancesModel::placeOf(int cylinder, Valve which) {
    return QStringLiteral("%1/%2/%3").arg(cylinder).arg(static_cast<int>(which.side)).arg(which.number);
}

QString ClearancesModel::place() const {
    return placeOf(cylinder_, valve());
}

void ClearancesModel::goTo(const QString& place) {
    const auto parts = place.split(QLatin1Char('/'));
    const Valve which{static_cast<ValveSide>(parts[1].toInt()), parts[2].toInt()};
    const auto valves = valvesOfCylinder();
    valve_ = static_cast<int>(std::ranges::find(valves, which) - valves.begin());
    moveTo(parts[0].toInt());
}

QString ClearancesModel::draftKey() const {
    return QStringLiteral("clearances/") + sessionId();
}

bool ClearancesModel::recorded(const Uuid& id) const {
    return std::ranges::any_of(visit().clearances, [&](const Clearance& kept) { return kept.id.uuid == id; });
}

void ClearancesModel::writeDraft(QJsonObject& draft) const {
    KeyedModel::writeDraft(draft);
    draft["valve"] = valve_;
}

void ClearancesModel::readDraft(const QJsonObject& draft) {
    KeyedModel::readDraft(draft);
    const auto valves = static_cast<int>(valvesOfCylinder().size());
    valve_ = std::clamp(draft["valve"].toInt(), 0, std::max(0, valves - 1));
}

}  // namespace lapwing

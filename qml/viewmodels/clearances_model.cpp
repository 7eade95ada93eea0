// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/clearances_model.h"

#include <QJsonDocument>
#include <QJsonObject>
#include <algorithm>

#include "core/workflow/clearances.h"
#include "qml/viewmodels/bores.h"

namespace lapwing {
namespace {

const QString found_field = QStringLiteral("found");
const QString left_field = QStringLiteral("left");
constexpr int most_digits = 6;

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

const Clearance* ClearancesModel::recorded(int cylinder, Valve which) const {
    const Clearance* newest = nullptr;
    for (const auto* clearance : standing(visit().clearances, cylinder))
        if (clearance->side == which.side && clearance->valve == which.number) newest = clearance;
    return newest;
}

std::optional<ClearanceRange> ClearancesModel::wanted(ValveSide side) const {
    const auto& range =
        side == ValveSide::intake ? engine().valves.intake_clearance : engine().valves.exhaust_clearance;
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
    const auto range = wanted(clearance.side);
    const auto& now = clearance.left ? clearance.left : clearance.found;
    if (!range || !now) return findings::State::none;
    return now->si() < range->low.si() || now->si() > range->high.si() ? findings::State::fault
                                                                       : findings::State::good;
}

QString ClearancesModel::shown(QString digits) const {
    return digits.replace(QLatin1Char('.'), format().locale().decimalPoint());
}

QVariantList ClearancesModel::cylinders() const {
    QVariantList list;
    for (const auto& cylinder : engine().cylinders) {
        auto worst = findings::State::none;
        int count = 0;
        for (const auto which : valvesOfCylinder())
            if (const auto* clearance = recorded(cylinder.number, which)) {
                worst = findings::worse(worst, stateOf(*clearance));
                ++count;
            }
        list << QVariantMap{
            {"number", cylinder.number}, {"name", tr("%1 of %2").arg(count).arg(valvesOfCylinder().size())},
            {"state", state_key(worst)}, {"measured", false},
            {"row", cylinder.row},       {"column", cylinder.column}};
    }
    return list;
}

int ClearancesModel::currentIndex() const {
    const auto& all = engine().cylinders;
    const auto at =
        std::find_if(all.begin(), all.end(), [&](const Cylinder& c) { return c.number == cylinder_; });
    return at == all.end() ? -1 : static_cast<int>(at - all.begin());
}

QVariantList ClearancesModel::valves() const {
    QVariantList list;
    for (const auto which : valvesOfCylinder()) {
        const bool several = (which.side == ValveSide::intake ? engine().valves.intake_valves
                                                              : engine().valves.exhaust_valves) > 1;
        const QString side = format().heading(which.side == ValveSide::intake ? Exit::intake : Exit::exhaust);
        const auto* clearance = recorded(cylinder_, which);
        QString value;
        if (clearance && clearance->found) value = format().typed(*clearance->found);
        if (clearance && clearance->left)
            value = tr("%1 → %2").arg(value.isEmpty() ? tr("?") : value, format().typed(*clearance->left));
        list << QVariantMap{
            {"key", QStringLiteral("%1%2").arg(QString::fromUtf8(word(which.side).data())).arg(which.number)},
            {"label", several ? tr("%1 %2").arg(side).arg(which.number) : side},
            {"value", value},
            {"state", state_key(clearance ? stateOf(*clearance) : findings::State::none)}};
    }
    return list;
}

QVariantList ClearancesModel::fields() const {
    const auto at = entries_.find({cylinder_, valve()});
    const auto item = [&](const QString& key, const QString& label, const QString& text) {
        return QVariantMap{{"key", key}, {"label", label}, {"value", shown(text)}};
    };
    return {item(found_field, tr("Found"), at == entries_.end() ? QString() : at->second.found),
            item(left_field, tr("Left"), at == entries_.end() ? QString() : at->second.left)};
}

QString ClearancesModel::caption() const {
    const QString side = format().name(valve().side);
    const QString what = field_ == found_field ? tr("as found") : tr("as left");
    return tr("Cylinder %1, %2 %3, %4").arg(cylinder_).arg(side).arg(valve().number).arg(what);
}

QString ClearancesModel::typed() const {
    const auto at = entries_.find({cylinder_, valve()});
    if (at == entries_.end()) return {};
    return shown(field_ == found_field ? at->second.found : at->second.left);
}

QString ClearancesModel::placeholder() const {
    const auto* clearance = recorded(cylinder_, valve());
    const auto* value = !clearance ? nullptr : field_ == found_field ? &clearance->found : &clearance->left;
    return value && *value ? shown(QString::fromStdString((*value)->digits())) : QStringLiteral("–");
}

QString ClearancesModel::unit() const {
    return QString::fromUtf8(lengthUnit().display().data());
}

QVariantList ClearancesModel::lines() const {
    QVariantList list;
    if (const auto range = wanted(valve().side))
        list << QVariantMap{
            {"mark", ""},
            {"figure", tr("%1 to %2").arg(format().typed(range->low), format().typed(range->high))},
            {"text", tr("wanted, cold")}};
    const QString digits = typed();
    if (!digits.isEmpty()) {
        Clearance now;
        now.side = valve().side;
        const auto at = entries_.find({cylinder_, valve()});
        const QString& text = field_ == found_field ? at->second.found : at->second.left;
        if (auto value = TypedLength::make(text.toStdString(), lengthUnit())) {
            now.found = *value;
            if (const auto state = stateOf(now); state != findings::State::none)
                list << QVariantMap{
                    {"mark", state_key(state)},
                    {"figure", format().name(state)},
                    {"text", state == findings::State::good
                                 ? QString()
                                 : tr("adjust it, then test again, before any verdict on the valve")}};
            // 2 mm is far beyond any rocker clearance (common practice): a slip of the finger or of the unit.
            if (value->si() > 0.002)
                list << QVariantMap{{"symbol", "question"},
                                    {"figure", ""},
                                    {"text", tr("That is a very wide clearance. Is the unit right?")}};
        }
    }
    return list;
}

QString& ClearancesModel::text() {
    auto& entry = entries_[{cylinder_, valve()}];
    if (entry.id.is_nil()) entry.id = app()->desk().make_id<ClearanceId>();
    return field_ == found_field ? entry.found : entry.left;
}

void ClearancesModel::press(const QString& character) {
    QString& now = text();
    const bool mark = character == QLatin1String(".") || character == QLatin1String(",");
    if ((mark && now.contains(QLatin1Char('.'))) || now.size() >= most_digits) return;
    now += mark ? QStringLiteral(".") : character;
    saveDraft();
    emit entryChanged();
}

void ClearancesModel::backspace() {
    text().chop(1);
    saveDraft();
    emit entryChanged();
}

void ClearancesModel::clear() {
    text().clear();
    saveDraft();
    emit entryChanged();
}

void ClearancesModel::focusField(const QString& key) {
    field_ = key;
    emit entryChanged();
}

void ClearancesModel::choose(int index) {
    if (index < 0 || index >= static_cast<int>(engine().cylinders.size())) return;
    cylinder_ = engine().cylinders[static_cast<std::size_t>(index)].number;
    valve_ = 0;
    field_ = found_field;
    saveDraft();
    emit entryChanged();
}

void ClearancesModel::chooseValve(int index) {
    valve_ = index;
    field_ = found_field;
    saveDraft();
    emit entryChanged();
}

void ClearancesModel::switchUnit() {
    chosen_unit_ = lengthUnit() == units::mm ? units::thou : units::mm;
    emit entryChanged();
}

/// To the next valve, then to the next cylinder; false after the last.
bool ClearancesModel::advance() {
    field_ = found_field;
    if (valve_ + 1 < static_cast<int>(valvesOfCylinder().size())) {
        ++valve_;
        return true;
    }
    const auto numbers = numbers_in_order(engine());
    const auto here = std::find(numbers.begin(), numbers.end(), cylinder_);
    if (here == numbers.end() || here + 1 == numbers.end()) return false;
    cylinder_ = *(here + 1);
    valve_ = 0;
    return true;
}

QString ClearancesModel::keepText() const {
    const auto at = entries_.find({cylinder_, valve()});
    const bool empty = at == entries_.end() || (at->second.found.isEmpty() && at->second.left.isEmpty());
    const auto numbers = numbers_in_order(engine());
    const bool last = valve_ + 1 >= static_cast<int>(valvesOfCylinder().size()) &&
                      (numbers.empty() || cylinder_ == numbers.back());
    if (empty) return last ? tr("Done") : tr("Next valve");
    return last ? tr("Keep") : tr("Keep, next valve");
}

void ClearancesModel::keep() {
    const Place here{cylinder_, valve()};
    const auto at = entries_.find(here);
    if (at == entries_.end() || (at->second.found.isEmpty() && at->second.left.isEmpty())) {
        if (!advance()) emit finished();
        saveDraft();
        emit entryChanged();
        return;
    }
    const Entry entry = at->second;
    Clearance clearance;
    clearance.id = entry.id;
    clearance.session = session().id;
    clearance.cylinder = here.first;
    clearance.side = here.second.side;
    clearance.valve = here.second.number;
    if (auto found = TypedLength::make(entry.found.toStdString(), lengthUnit());
        found && !entry.found.isEmpty())
        clearance.found = *found;
    if (auto left = TypedLength::make(entry.left.toStdString(), lengthUnit()); left && !entry.left.isEmpty())
        clearance.left = *left;
    // Typing only "left" for a valve that was measured keeps what was found.
    if (const auto* before = recorded(here.first, here.second); before && !clearance.found)
        clearance.found = before->found;
    entries_.erase(at);
    advance();
    emit entryChanged();
    app()->run(
        workflow::keep_clearance(clearance), this, [this, here, entry](const Result<workflow::Step>& result) {
            if (!result) {
                entries_[here] = entry;
                cylinder_ = here.first;
                const auto valves = valvesOfCylinder();
                valve_ =
                    static_cast<int>(std::find(valves.begin(), valves.end(), here.second) - valves.begin());
            } else {
                last_kept_ = tr("Cylinder %1, %2 %3 kept")
                                 .arg(here.first)
                                 .arg(format().name(here.second.side))
                                 .arg(here.second.number);
                saveDraft();
                emit kept();
            }
            emit entryChanged();
        });
}

void ClearancesModel::refresh() {
    if (!found()) return;
    if (!draft_loaded_) {
        draft_loaded_ = true;
        loadDraft();
    }
    if (!find_cylinder(engine(), cylinder_)) cylinder_ = numbers_in_order(engine()).front();
    emit entryChanged();
}

void ClearancesModel::saveDraft() {
    QJsonObject entries;
    for (const auto& [place, entry] : entries_) {
        if (entry.found.isEmpty() && entry.left.isEmpty()) continue;
        const QString key = QStringLiteral("%1/%2/%3")
                                .arg(place.first)
                                .arg(static_cast<int>(place.second.side))
                                .arg(place.second.number);
        entries[key] = QJsonObject{
            {"id", QString::fromStdString(entry.id.text())}, {"found", entry.found}, {"left", entry.left}};
    }
    const QJsonObject draft{{"cylinder", cylinder_}, {"valve", valve_}, {"entries", entries}};
    app()->keepDraft(QStringLiteral("clearances/") + sessionId(),
                     QString::fromUtf8(QJsonDocument(draft).toJson(QJsonDocument::Compact)));
}

void ClearancesModel::loadDraft() {
    const auto draft =
        QJsonDocument::fromJson(app()->draft(QStringLiteral("clearances/") + sessionId()).toUtf8()).object();
    cylinder_ = draft["cylinder"].toInt();
    valve_ = draft["valve"].toInt();
    const auto entries = draft["entries"].toObject();
    for (auto it = entries.begin(); it != entries.end(); ++it) {
        const auto parts = it.key().split(QLatin1Char('/'));
        const auto object = it.value().toObject();
        const auto id = ClearanceId::parse(object["id"].toString().toStdString());
        const bool spent = id && std::any_of(visit().clearances.begin(), visit().clearances.end(),
                                             [&](const Clearance& clearance) { return clearance.id == *id; });
        if (parts.size() != 3 || !id || spent) continue;
        const Valve which{static_cast<ValveSide>(std::clamp(parts[1].toInt(), 0, 1)), parts[2].toInt()};
        entries_[{parts[0].toInt(), which}] = {object["found"].toString(), object["left"].toString(), *id};
    }
    valve_ = std::clamp<int>(valve_, 0, std::max<int>(0, static_cast<int>(valvesOfCylinder().size()) - 1));
}

}  // namespace lapwing

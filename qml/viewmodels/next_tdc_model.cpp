// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/next_tdc_model.h"

#include <algorithm>
#include <array>

#include "core/findings/cautions.h"
#include "core/findings/firing.h"
#include "core/physics/holding_torque.h"
#include "qml/viewmodels/derivation_item.h"

namespace lapwing {
namespace {

/// How far a crank stands from TDC where it is not quite there, degrees as a person would read them.
constexpr std::array angles{"2", "5", "10"};

Engine with_even_intervals(Engine engine) {
    if (findings::fires_evenly_as_assumed(engine)) engine.firing_intervals = even_intervals(engine);
    return engine;
}

std::vector<const Reading*> readings_with_air(const Visit& visit) {
    std::vector<const Reading*> list;
    for (const auto& reading : visit.readings)
        if (reading.test == TestKind::leak_down) list.push_back(&reading);
    return list;
}

}  // namespace

Result<double> turn_between(const Engine& engine, int from, int to) {
    // One cylinder has no order to type: it comes back to where it stands after a whole cycle.
    if (engine.cylinders.size() == 1) return engine.cycle == StrokeCycle::two ? 360.0 : 720.0;
    if (engine.firing_order.empty())
        return fail("firing.order",
                    "The firing order is not on the engine card. Type it there, and the angles appear here.");
    if (engine.firing_intervals.size() != engine.firing_order.size())
        return fail(
            "firing.intervals",
            "The firing intervals are not on the engine card. Type them there, and the angles appear here.");
    std::vector<double> intervals;
    for (const auto& interval : engine.firing_intervals)
        intervals.push_back(units::deg.number(interval.value()));
    return physics::turn_to_compression_tdc_deg(engine.firing_order, intervals, from, to);
}

int next_in_firing_order(const Engine& engine, int cylinder) {
    // Without a firing order nobody knows the turn, but there is a next cylinder all the same.
    const auto order = engine.firing_order.empty() ? numbers_in_order(engine) : engine.firing_order;
    const auto at = std::find(order.begin(), order.end(), cylinder);
    if (at == order.end()) return 0;
    return at + 1 == order.end() ? order.front() : *(at + 1);
}

QString NextTdcModel::draftKey() const {
    return QStringLiteral("standing/") + sessionId();
}

void NextTdcModel::turned() {
    // Who turned it so far, and how many readings with air there were then: the next one tells anew.
    app()->keepDraft(draftKey(),
                     QStringLiteral("%1;%2").arg(target()).arg(readings_with_air(visit()).size()));
}

std::optional<int> NextTdcModel::lastKnown() const {
    if (from_ != 0) return from_;
    const auto with_air = readings_with_air(visit());
    const QStringList standing = app() ? app()->draft(draftKey()).split(QLatin1Char(';')) : QStringList();
    if (standing.size() == 2 && standing[1].toULongLong() == with_air.size() &&
        find_cylinder(engine(), standing[0].toInt()))
        return standing[0].toInt();
    if (!with_air.empty()) return with_air.back()->cylinder;
    return std::nullopt;
}

int NextTdcModel::from() const {
    if (const auto known = lastKnown()) return *known;
    if (!engine().firing_order.empty()) return engine().firing_order.front();
    return engine().cylinders.empty() ? 0 : engine().cylinders.front().number;
}

void NextTdcModel::setFrom(int cylinder) {
    from_ = cylinder;
    target_ = 0;
    emit refreshed();
}

int NextTdcModel::target() const {
    return target_ != 0 ? target_ : next_in_firing_order(engine(), from());
}

void NextTdcModel::setTarget(int cylinder) {
    target_ = cylinder;
    emit refreshed();
}

QVariantList NextTdcModel::choices() const {
    QVariantList list;
    auto order = engine().firing_order.empty() ? numbers_in_order(engine()) : engine().firing_order;
    const auto here = std::find(order.begin(), order.end(), from());
    if (here != order.end()) std::rotate(order.begin(), here, order.end());
    const Engine even = with_even_intervals(engine());
    const bool about = findings::fires_evenly_as_assumed(engine());
    for (const int number : order) {
        const auto* cylinder = find_cylinder(engine(), number);
        const auto turn = turn_between(even, from(), number);
        const QString degrees = turn ? format().locale().toString(*turn, 'f', 0) : QString();
        const QString text = number != from() ? !turn   ? QString()
                                                : about ? tr("turn about %1°").arg(degrees)
                                                        : tr("turn %1°").arg(degrees)
                             : lastKnown() ? tr("stands at TDC now")
                                              : tr("if it stands at TDC");
        list << QVariantMap{{"number", number},
                            {"name", cylinder ? QString::fromStdString(cylinder->name) : QString()},
                            {"turn", text},
                            {"chosen", number == target()},
                            {"here", number == from()}};
    }
    return list;
}

QString NextTdcModel::turnText() const {
    const auto turn = turn_between(with_even_intervals(engine()), from(), target());
    if (!turn) return QStringLiteral("–");
    const QString degrees = format().locale().toString(*turn, 'f', 0);
    return findings::fires_evenly_as_assumed(engine()) ? tr("about %1°").arg(degrees)
                                                       : tr("%1°").arg(degrees);
}

QString NextTdcModel::problem() const {
    if (!found()) return {};
    if (findings::fires_evenly_as_assumed(engine()))
        return tr(
            "The firing intervals are not on the engine card: taken as even. Make sure of the TDC at the "
            "plug hole.");
    const auto turn = turn_between(engine(), from(), target());
    return turn ? QString() : format().text(turn.error());
}

QString NextTdcModel::missingLine() const {
    return engine().firing_order.empty() ? QStringLiteral("order") : QStringLiteral("intervals");
}

QVariantList NextTdcModel::torqueLines() const {
    QVariantList list;
    const auto* tester = find_tester(dossier(), session().leak_down_tester);
    if (!tester || !tester->set_pressure) return list;
    if (!engine().bore || !engine().stroke || !engine().rod) {
        list << QVariantMap{{"figure", ""},
                            {"from", -1},
                            {"text", tr("With bore, stroke and rod on the engine card the app can say how "
                                        "hard %1 pushes on the crank.")
                                         .arg(format().typed(*tester->set_pressure))}};
        return list;
    }
    for (const char* degrees : angles) {
        const auto held = holding(degrees);
        if (!held) continue;
        const auto& torque = std::get<findings::Derived>(held->lines[0].value).figure;
        const auto& force = std::get<findings::Derived>(held->lines[1].value).figure;
        list << QVariantMap{{"figure", format().text(torque)},
                            {"text", tr("at %1° from TDC: %2 at the end of a 30 cm bar")
                                         .arg(QString::fromLatin1(degrees), format().text(force))},
                            {"from", static_cast<int>(list.size())}};
    }
    return list;
}

Result<calculators::Answer> NextTdcModel::holding(const std::string& degrees) const {
    calculators::Worksheet sheet = calculators::empty_worksheet();
    sheet.engine = engine();
    const auto* tester = find_tester(dossier(), session().leak_down_tester);
    if (tester) {
        sheet.tester = *tester;
        sheet.held = tester->set_pressure;
    }
    sheet.off_tdc = *TypedAngle::make(degrees, units::deg);
    sheet.bar = *TypedLength::make("300", units::mm);
    return calculators::work_out(calculators::Calculator::torque, sheet, reference());
}

QVariantList NextTdcModel::derivation(int from) const {
    if (from < 0 || from >= static_cast<int>(angles.size())) return {};
    const auto held = holding(angles[static_cast<std::size_t>(from)]);
    if (!held) return {};
    std::vector<findings::Derivation> all;
    for (const auto& line : held->lines)
        all.push_back(std::get<findings::Derived>(line.value).from);
    return derivation_items(all, format());
}

QStringList NextTdcModel::whichTdc() const {
    // A two-stroke compresses each time that its piston comes up.
    if (engine().cycle == StrokeCycle::two)
        return {tr("Where is TDC?"),
                tr("Turn by hand with a thumb or a whistle at the plug hole: in a two-stroke every way up "
                   "compresses. Stop at the top, where both ports are shut.")};
    return {
        tr("Compression or overlap?"),
        tr("Turn by hand with a thumb or a whistle at the plug hole: air that pushes out on the way up "
           "means compression. If nothing pushes, the valves overlap: turn once more, all the way round.")};
}

QStringList NextTdcModel::cautions() const {
    QStringList texts;
    for (const auto* caution : findings::cautions_for(reference(), "leak-down", engine()))
        texts << format().reference(caution->text);
    return texts;
}

}  // namespace lapwing

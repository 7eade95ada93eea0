// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/next_tdc_model.h"

#include <algorithm>
#include <numbers>

#include "core/physics/holding_torque.h"

namespace lapwing {

Result<double> turn_between(const Engine& engine, int from, int to) {
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

int NextTdcModel::from() const {
    if (from_ != 0) return from_;
    const Reading* last = nullptr;
    for (const auto& reading : visit().readings)
        if (reading.test == TestKind::leak_down) last = &reading;
    if (last) return last->cylinder;
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
    for (const int number : order) {
        const auto* cylinder = find_cylinder(engine(), number);
        const auto turn = turn_between(engine(), from(), number);
        const QString text = number == from() ? tr("stands at TDC now")
                             : turn           ? tr("turn %1°").arg(format().locale().toString(*turn, 'f', 0))
                                              : QString();
        list << QVariantMap{{"number", number},
                            {"name", cylinder ? QString::fromStdString(cylinder->name) : QString()},
                            {"turn", text},
                            {"chosen", number == target()},
                            {"here", number == from()}};
    }
    return list;
}

QString NextTdcModel::turnText() const {
    const auto turn = turn_between(engine(), from(), target());
    return turn ? tr("%1°").arg(format().locale().toString(*turn, 'f', 0)) : QStringLiteral("–");
}

QString NextTdcModel::problem() const {
    if (!found()) return {};
    const auto turn = turn_between(engine(), from(), target());
    return turn ? QString() : format().text(turn.error());
}

QVariantList NextTdcModel::torqueLines() const {
    QVariantList list;
    const auto* tester = find_tester(dossier(), session().leak_down_tester);
    if (!tester || !tester->set_pressure) return list;
    const auto set = tester->set_pressure->value();
    if (!engine().bore || !engine().stroke || !engine().rod) {
        list << QVariantMap{{"figure", ""},
                            {"text", tr("With bore, stroke and rod on the engine card the app can say how "
                                        "hard %1 pushes on the crank.")
                                         .arg(format().typed(*tester->set_pressure))}};
        return list;
    }
    const physics::SliderCrank crank{engine().bore->value.si(), engine().stroke->value.si(),
                                     engine().rod->value.si()};
    constexpr double bar_m = 0.3;
    for (const double degrees : {2.0, 5.0, 10.0}) {
        const double torque = physics::holding_torque_nm(crank, set.si(), degrees * std::numbers::pi / 180.0);
        const auto force = physics::force_at_bar_n(torque, bar_m);
        list << QVariantMap{
            {"figure", tr("%1 N m").arg(format().locale().toString(torque, 'f', torque < 10 ? 1 : 0))},
            {"text", force ? tr("at %1° from TDC: %2 N at the end of a 30 cm bar")
                                 .arg(degrees)
                                 .arg(format().locale().toString(*force, 'f', 0))
                           : QString()}};
    }
    return list;
}

QStringList NextTdcModel::cautions() const {
    QStringList texts;
    for (const auto* caution : reference().cautions_at("leak-down"))
        texts << format().reference(caution->text);
    return texts;
}

}  // namespace lapwing

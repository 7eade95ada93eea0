// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/model/engine.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numbers>
#include <set>

#include "core/model/check.h"

namespace lapwing {
namespace {

using model::Check;

constexpr double degree = std::numbers::pi / 180.0;
constexpr std::size_t most_cylinders = 16;

int cycle_degrees(const Engine& engine) {
    return engine.cycle == StrokeCycle::four ? 720 : 360;
}

void check_cylinders(Check& check, const Engine& engine) {
    const std::size_t count = engine.cylinders.size();
    check.that(count > 0, "engine.no_cylinders", "The engine has no cylinder: add at least one.");
    check.that(count <= most_cylinders, "engine.too_many_cylinders",
               "The engine has {} cylinders: at most {} are supported.", count, most_cylinders);
    std::set<int> numbers;
    for (const auto& cylinder : engine.cylinders) {
        check.within(cylinder.number, 1, 99, "Cylinder number");
        check.that(numbers.insert(cylinder.number).second, "engine.number_twice",
                   "Two cylinders have the number {}: give one of them another.", cylinder.number);
        check.text(cylinder.name, "Cylinder name", 200);
        check.within(cylinder.bank, 0, 15, "Bank");
        check.within(cylinder.row, 0, 99, "Row on the layout picture");
        check.within(cylinder.column, 0, 99, "Column on the layout picture");
    }
}

void check_firing(Check& check, const Engine& engine) {
    const auto& order = engine.firing_order;
    std::set<int> fired;
    for (const int number : order) {
        check.that(find_cylinder(engine, number) != nullptr, "engine.order_unknown_cylinder",
                   "The firing order names cylinder {}, which the engine does not have: correct the order.",
                   number);
        check.that(fired.insert(number).second, "engine.order_twice",
                   "The firing order names cylinder {} twice: name each cylinder once.", number);
    }
    check.that(order.empty() || order.size() == engine.cylinders.size(), "engine.order_incomplete",
               "The firing order names {} of {} cylinders: name each once, or leave the order empty.",
               order.size(), engine.cylinders.size());

    const auto& intervals = engine.firing_intervals;
    if (intervals.empty()) return;
    check.that(intervals.size() == order.size(), "engine.interval_count",
               "There are {} firing intervals for {} cylinders in the firing order: give one for each.",
               intervals.size(), order.size());
    double sum = 0.0;
    for (const auto& interval : intervals) {
        check.within(interval, 0.0, cycle_degrees(engine) * degree, "Firing interval");
        sum += interval.si() / degree;
    }
    check.that(std::abs(sum - cycle_degrees(engine)) <= 0.5, "engine.interval_sum",
               "The firing intervals add up to {:.6g} degrees: {} are needed.", sum, cycle_degrees(engine));
}

void check_joined(Check& check, const Engine& engine, const std::vector<std::vector<int>>& groups,
                  std::string_view what) {
    std::set<int> seen;
    for (const auto& group : groups) {
        check.that(group.size() >= 2, "engine.joined_alone",
                   "A joined {} needs at least two cylinders: add another or remove the group.", what);
        for (const int number : group) {
            check.that(find_cylinder(engine, number) != nullptr, "engine.joined_unknown_cylinder",
                       "A joined {} names cylinder {}, which the engine does not have: correct it.", what,
                       number);
            check.that(seen.insert(number).second, "engine.joined_twice",
                       "Cylinder {} is in joined {}s twice: name it once.", number, what);
        }
    }
}

void check_clearance(Check& check, const std::optional<Sourced<ClearanceRange>>& range, std::string_view low,
                     std::string_view high) {
    if (!range) return;
    check.within(range->value.low, 0.0, 0.01, low);
    check.within(range->value.high, 0.0, 0.01, high);
    check.ordered(std::optional(range->value.low), std::optional(range->value.high), low, high);
    check.text(range->note, low);
}

void check_valves(Check& check, const Engine& engine) {
    const auto& valves = engine.valves;
    const int least = engine.cycle == StrokeCycle::four ? 1 : 0;
    check.within(valves.intake_valves, least, 4, "Intake valves per cylinder");
    check.within(valves.exhaust_valves, least, 4, "Exhaust valves per cylinder");
    check_clearance(check, valves.intake_clearance, "Smallest intake clearance", "Largest intake clearance");
    check_clearance(check, valves.exhaust_clearance, "Smallest exhaust clearance",
                    "Largest exhaust clearance");
    check.within(valves.intake_closing, -90 * degree, 180 * degree, "Intake closing");
    check.within(valves.exhaust_opening, -90 * degree, 180 * degree, "Exhaust opening");
}

void check_dimensions(Check& check, const Engine& engine) {
    check.positive(engine.bore, 2.0, "Bore");
    check.positive(engine.stroke, 5.0, "Stroke");
    check.positive(engine.rod, 10.0, "Rod length");
    if (engine.rod && engine.stroke)
        check.that(engine.rod->value.si() > engine.stroke->value.si() / 2.0, "engine.rod_too_short",
                   "The rod ({}) is not longer than half the stroke ({}): the crank could not turn. Check "
                   "both, from centre to centre.",
                   engine.rod->value.text(), engine.stroke->value.text());
    if (engine.compression_ratio)
        check.that(engine.compression_ratio->value.si() > 1.0, "engine.ratio_too_low",
                   "The compression ratio is {}: it must be over 1.", engine.compression_ratio->value.text());
    check.within(engine.compression_ratio, 1.0, 60.0, "Compression ratio");
    check.within(engine.exhaust_port_closing, 0.0, 180 * degree, "Exhaust port closing");
    check.within(engine.bank_angle, 0.0, 180 * degree, "Angle between the banks");
    check.within(engine.plug_reach, 0.0, 0.2, "Plug reach");
    check.within(engine.shop_altitude, -500.0, 9000.0, "Shop altitude");
}

void check_limits(Check& check, const FactoryLimits& limits, const CrankcaseLimits& crankcase) {
    using model::highest_gauge_pa;
    check.positive(limits.low, highest_gauge_pa, "Lower end of the normal range");
    check.positive(limits.high, highest_gauge_pa, "Upper end of the normal range");
    check.positive(limits.lowest, highest_gauge_pa, "Lowest limit");
    check.within(limits.difference, 0.0, highest_gauge_pa, "Difference allowed between cylinders");
    check.within(limits.least_ratio, 0.0, 1.0, "Lowest against highest cylinder");
    check.within(limits.most_leakage, 0.0, 1.0, "Most leakage");
    check.positive(limits.leakage_set, highest_gauge_pa, "Set pressure of the maker's leak-down test");
    check.positive(limits.leakage_restrictor, 0.02, "Restrictor of the maker's leak-down test");
    check.ordered(limits.low, limits.high, "Lower end of the normal range", "the upper end");
    check.ordered(limits.lowest, limits.low, "Lowest limit", "the lower end of the normal range");
    check.ordered(limits.lowest, limits.high, "Lowest limit", "the upper end of the normal range");
    check.text(limits.note, "Source of the limits");
    check.gauge_pressure(crankcase.set, "Set pressure of the crankcase test");
    check.positive(crankcase.hold, 86'400.0, "Minutes of the crankcase test");
    check.gauge_pressure(crankcase.end_at_least, "End pressure of the crankcase test");
    check.text(crankcase.note, "Source of the crankcase limits");
}

}  // namespace

Result<Engine> checked(Engine engine) {
    Check check("engine card");
    check.id(engine.id.uuid, "id");
    check.time(engine.made_at, "Time");
    check.needed(engine.name, "name");
    check.text(engine.name, "Name", 500);
    check.text(engine.description, "Description");
    check.that(engine.tags.size() <= 100, "engine.too_many_tags",
               "The engine card has {} tags: at most 100 are kept. Remove some.", engine.tags.size());
    for (const auto& tag : engine.tags)
        check.text(tag, "Tag", 200);
    check.text(engine.history, "History", 200'000);
    check.text(engine.owner.name, "Owner's name", 500);
    check.text(engine.owner.contact, "Owner's contact", 2'000);
    check.text(engine.plug_thread, "Plug thread", 200);
    check_cylinders(check, engine);
    check_firing(check, engine);
    check_joined(check, engine, engine.joined_intakes, "intake");
    check_joined(check, engine, engine.joined_exhausts, "exhaust");
    check_valves(check, engine);
    check_dimensions(check, engine);
    check_limits(check, engine.limits, engine.crankcase);
    model::check_lineage(check, engine.lineage);
    return check.done(std::move(engine));
}

const Cylinder* find_cylinder(const Engine& engine, int number) {
    const auto found = std::ranges::find(engine.cylinders, number, &Cylinder::number);
    return found == engine.cylinders.end() ? nullptr : &*found;
}

std::vector<int> numbers_in_order(const Engine& engine) {
    std::vector<int> numbers;
    for (const auto& cylinder : engine.cylinders)
        numbers.push_back(cylinder.number);
    std::ranges::sort(numbers);
    return numbers;
}

std::vector<int> crankcase_chambers(const Engine& engine) {
    const bool apart = engine.cycle == StrokeCycle::two && engine.cylinders.size() > 1;
    return apart ? numbers_in_order(engine) : std::vector<int>{0};
}

void lay_out(Engine& engine) {
    // A twin stands side by side whatever its arrangement: two rows of one would only waste height.
    const bool banks = engine.cylinders.size() > 2 &&
                       (engine.arrangement == Arrangement::vee || engine.arrangement == Arrangement::flat);
    std::map<int, int> next_column;
    for (const int number : numbers_in_order(engine)) {
        const auto cylinder = std::ranges::find(engine.cylinders, number, &Cylinder::number);
        cylinder->row = banks ? cylinder->bank : 0;
        cylinder->column = next_column[cylinder->row]++;
    }
}

std::vector<TypedAngle> even_intervals(const Engine& engine) {
    const auto count = static_cast<int>(engine.firing_order.size());
    if (count == 0) return {};
    const int cycle = cycle_degrees(engine);
    const int decimals = cycle % count == 0 ? 0 : 3;
    const double share = static_cast<double>(cycle) / count;
    return std::vector(static_cast<std::size_t>(count),
                       TypedAngle::from(units::deg.quantity(share), units::deg, decimals));
}

}  // namespace lapwing

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/report/changes.h"

#include <algorithm>
#include <map>

#include "core/report/pieces.h"

namespace lapwing::report {
namespace {

using findings::Findings;
using findings::State;

std::string name_of(const Engine& engine, int number) {
    const Cylinder* cylinder = find_cylinder(engine, number);
    return cylinder ? cylinder->name : std::string();
}

Label name_of(TestKind test) {
    return test == TestKind::dry         ? Label::dry_test
           : test == TestKind::leak_down ? Label::leak_down
           : test == TestKind::wet       ? Label::wet_test
                                         : Label::crankcase;
}

State state_of(const Findings& found, int number, TestKind test) {
    const auto* cylinder = found.cylinder(number);
    if (!cylinder) return State::none;
    if (test == TestKind::leak_down) return cylinder->leak_down ? cylinder->leak_down->state : State::none;
    if (test == TestKind::wet) return State::none;  // a rise has a state, a wet reading has none
    if (test == TestKind::crankcase) {
        const auto* chamber = found.crankcase(found.cylinders.size() > 1 ? number : 0);
        return chamber ? chamber->state : State::none;
    }
    return cylinder->dry ? cylinder->dry->state : State::none;
}

/// A tenth over the highest mark of both visits. Above 0.
double top_pa(const compare::Comparison& changes, TestKind test, const Findings& after) {
    double top = 1.0;
    for (const auto& cylinder : changes.cylinders)
        if (const auto* change = cylinder.of(test))
            for (const auto* measure : {&change->before, &change->after})
                if (*measure)
                    top = std::max(top, (*measure)->compared.si + (*measure)->compared.u95.value_or(0.0));
    const bool limits = test == TestKind::dry || test == TestKind::wet;
    for (const auto* limit : {&after.limits.high, &after.limits.lowest})
        if (limits && *limit) top = std::max(top, (*limit)->figure.si);
    return top * 1.1;
}

Bore bore_of(const Engine& engine, int number, const std::optional<compare::Measure>& measure, TestKind test,
             double top, State state) {
    Bore out;
    out.number = number;
    out.name = name_of(engine, number);
    out.state = State::none;
    if (!measure) return out;
    const findings::Figure& shown = measure->compared;
    const double share = shown.si / top;
    out.state = judged(state);
    out.shown = shown;
    out.piston = std::clamp(test == TestKind::leak_down ? 1.0 - share : share, 0.0, 1.0);
    out.whisker = shown.u95.value_or(0.0) / top;
    return out;
}

}  // namespace

ChangeBores bores_of(const Engine& engine, const compare::Comparison& changes, TestKind test,
                     const Findings& before, const Findings& after) {
    const bool leak = test == TestKind::leak_down;
    const double top = leak ? 1.0 : top_pa(changes, test, after);
    const Label what = name_of(test);
    ChangeBores out{{what, {}, Label::before}, {what, {}, Label::after}};
    for (const auto& cylinder : changes.cylinders) {
        const compare::Change* change = cylinder.of(test);
        const compare::Change none;
        const compare::Change& shown = change ? *change : none;
        out.before.bores.push_back(bore_of(engine, cylinder.number, shown.before, test, top,
                                           state_of(before, cylinder.number, test)));
        out.after.bores.push_back(
            bore_of(engine, cylinder.number, shown.after, test, top, state_of(after, cylinder.number, test)));
    }
    if (leak || test == TestKind::crankcase) return out;  // the limits are those of cranking
    const auto height = [&](const std::optional<findings::Derived>& limit) {
        return limit ? std::optional(limit->figure.si / top) : std::nullopt;
    };
    for (Bores* strip : {&out.before, &out.after}) {
        for (Bore& bore : strip->bores) {
            bore.notch = height(after.limits.lowest);
            bore.band_low = height(after.limits.low);
            bore.band_high = height(after.limits.high);
        }
    }
    return out;
}

Chart chart_of(const Engine& engine, const compare::History& history, TestKind test) {
    Chart out;
    out.what = name_of(test);
    out.dimension =
        test == TestKind::leak_down ? findings::Dimension::share : findings::Dimension::gauge_pressure;
    std::map<std::size_t, std::size_t> places;  // of the history's visits among those drawn
    for (const auto& cylinder : history.cylinders)
        if (const auto* series = cylinder.of(test))
            for (const auto& point : series->points)
                places.emplace(point.visit, 0);
    for (auto& [visit, place] : places) {
        place = out.visits.size();
        const Session& session = history.visits[visit]->session;
        out.visits.push_back({session.opened_at, session.title, session.usage});
    }
    for (const auto& cylinder : history.cylinders) {
        const auto* series = cylinder.of(test);
        if (!series) continue;
        Chart::Line line{cylinder.number, name_of(engine, cylinder.number), {}};
        for (const auto& point : series->points)
            line.points.push_back(
                {places[point.visit], point.measure.compared, point.comparable, point.after_repair});
        out.lines.push_back(std::move(line));
    }
    return out;
}

}  // namespace lapwing::report

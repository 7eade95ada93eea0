// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <algorithm>
#include <set>

#include "core/compare/history.h"
#include "core/findings/left_open.h"
#include "core/findings/released.h"
#include "core/report/pieces.h"
#include "core/report/sections.h"

namespace lapwing::report {

using findings::CylinderFindings;
using findings::Figure;
using findings::Findings;
using findings::State;
using findings::word_of;

namespace {

std::string name_of(const Engine& engine, int number) {
    const Cylinder* cylinder = find_cylinder(engine, number);
    return cylinder ? cylinder->name : std::string();
}

Cell cylinder_cell(const Engine& engine, int number) {
    Line line{number};
    if (const std::string name = name_of(engine, number); !name.empty()) line.emplace_back(OwnWords{name});
    return cell(std::move(line));
}

const findings::Cranking* dry(const CylinderFindings& cylinder) {
    return cylinder.dry ? &*cylinder.dry : nullptr;
}
const findings::Cranking* wet(const CylinderFindings& cylinder) {
    return cylinder.wet ? &cylinder.wet->reading : nullptr;
}
bool measured(const CylinderFindings& cylinder) {
    return cylinder.dry || cylinder.leak_down || cylinder.wet;
}
std::optional<State> state_of(const CylinderFindings& cylinder) {
    return measured(cylinder) ? judged(cylinder.state) : State::none;
}

using CrankingOf = const findings::Cranking* (*)(const CylinderFindings&);

bool any(const Findings& found, auto has) {
    return std::ranges::any_of(found.cylinders, has);
}

/// A tenth over the highest mark, the same for dry and wet so that they can be compared by eye. Above 0.
double cranking_top_pa(const Findings& found) {
    double top = 1.0;
    for (const CylinderFindings& cylinder : found.cylinders)
        for (const auto* cranking : {dry(cylinder), wet(cylinder)})
            if (cranking)
                top = std::max(top, cranking->final.figure.si + cranking->final.figure.u95.value_or(0));
    for (const auto* limit : {&found.limits.high, &found.limits.lowest})
        if (*limit && !findings::held_against_no_limit(found)) top = std::max(top, (*limit)->figure.si);
    return top * 1.1;
}

Bores cranking_bores(Label test, const Engine& engine, const Findings& found, CrankingOf of,
                     State (*state_of_test)(const CylinderFindings&)) {
    const double top = cranking_top_pa(found);
    const bool judged_by_limits = !findings::held_against_no_limit(found);
    const auto height = [&](const std::optional<findings::Derived>& limit) {
        return limit && judged_by_limits ? std::optional(limit->figure.si / top) : std::nullopt;
    };
    Bores bores{test, {}};
    for (const CylinderFindings& cylinder : found.cylinders) {
        Bore bore;
        bore.number = cylinder.number;
        bore.name = name_of(engine, cylinder.number);
        bore.state = State::none;
        bore.notch = height(found.limits.lowest);
        bore.band_low = height(found.limits.low);
        bore.band_high = height(found.limits.high);
        if (const findings::Cranking* cranking = of(cylinder)) {
            bore.state = judged(state_of_test(cylinder));
            bore.shown = cranking->final.figure;
            bore.piston = std::clamp(cranking->final.figure.si / top, 0.0, 1.0);
            bore.whisker = cranking->final.figure.u95.value_or(0.0) / top;
        }
        bores.bores.push_back(std::move(bore));
    }
    return bores;
}

Bores leak_down_bores(const Engine& engine, const Findings& found) {
    Bores bores{Label::leak_down, {}};
    for (const CylinderFindings& cylinder : found.cylinders) {
        Bore bore;
        bore.number = cylinder.number;
        bore.name = name_of(engine, cylinder.number);
        bore.state = State::none;
        if (cylinder.leak_down) {
            const Figure& leakage = cylinder.leak_down->leakage.figure;
            bore.state = judged(cylinder.leak_down->state);
            bore.shown = leakage;
            bore.piston = std::clamp(1.0 - leakage.si, 0.0, 1.0);
            bore.whisker = leakage.u95.value_or(0.0);
        }
        bores.bores.push_back(std::move(bore));
    }
    return bores;
}

/// What the reading came after, where that isn't plain.
void add_circumstances(Cell& cell, Tag tag, Oiled oiled, int repeats) {
    if (repeats > 1) cell.lines.push_back({Label::repeats, repeats});
    if (tag != Tag::as_found) cell.lines.push_back({word_of(tag)});
    if (oiled == Oiled::before) cell.lines.push_back({word_of(oiled)});
}

/// A fault that the limits alone don't give, with why: the figure beside it may well be near its limit.
bool too_far_below(const findings::Cranking& dry) {
    const auto says = [&](std::string_view code) {
        return std::ranges::any_of(dry.why, [&](const auto& why) { return why.message.code == code; });
    };
    return dry.state == State::fault && !says("why.below_lowest") && !says("why.far_below_typical");
}

Cell dry_cell(const findings::Cranking& dry) {
    Cell cell{{{dry.final.figure}}, judged(dry.state)};
    if (too_far_below(dry)) cell.lines.push_back({Label::too_far_below});
    if (dry.first) cell.lines.push_back({Label::first_puff, dry.first->figure});
    if (dry.without_hose) cell.lines.push_back({Label::without_hose, dry.without_hose->figure});
    add_circumstances(cell, dry.tag, dry.oiled, dry.repeats);
    return cell;
}

Cell leak_down_cell(const findings::LeakDown& test) {
    Cell cell{{{test.leakage.figure}, {Label::held, test.held.figure}, {Label::set, test.set.figure}},
              judged(test.state)};
    add_circumstances(cell, test.tag, test.oiled, test.repeats);
    return cell;
}

Cell wet_cell(const findings::Wet& test) {
    Cell cell{{{test.reading.final.figure}}, std::nullopt};
    if (test.rise) cell.lines.push_back({Label::rise, test.rise->figure});
    if (test.volume_rise)
        cell.lines.push_back(
            {Label::oil_volume_explains, Range{test.volume_rise->low, test.volume_rise->high}});
    add_circumstances(cell, test.reading.tag, Oiled::unknown, test.reading.repeats);
    return cell;
}

/// The other testers that any cylinder's leak was converted to, at most two: more columns than a page takes
/// would have to shrink.
std::vector<std::pair<Figure, std::size_t>> other_testers(const Findings& found) {
    std::vector<std::pair<Figure, std::size_t>> testers;
    for (const CylinderFindings& cylinder : found.cylinders) {
        if (!cylinder.leak_down || !testers.empty()) continue;
        const auto& on = cylinder.leak_down->on_testers;
        for (std::size_t i = 0; i < std::min<std::size_t>(on.size(), 2); ++i)
            testers.emplace_back(
                Figure{findings::Dimension::gauge_pressure, on[i].set.si(), std::nullopt, {}, {}}, i);
    }
    return testers;
}

Cell same_leak_cell(const CylinderFindings& cylinder, std::size_t tester) {
    if (!cylinder.leak_down || tester >= cylinder.leak_down->on_testers.size()) return {};
    const findings::OnTester& on = cylinder.leak_down->on_testers[tester];
    const auto [low, high] = on.range();
    return cell({Range{low, high}});
}

/// What was heard, though it tells of an earlier state only.
const std::vector<findings::Heard>& heard_at(const CylinderFindings& cylinder) {
    return cylinder.exits.empty() ? cylinder.heard_earlier : cylinder.exits;
}

std::vector<Exit> exits_listened_at(const Findings& found) {
    std::vector<Exit> exits;
    for (const CylinderFindings& cylinder : found.cylinders)
        for (const findings::Heard& heard : heard_at(cylinder))
            if (!std::ranges::count(exits, heard.exit)) exits.push_back(heard.exit);
    std::ranges::sort(exits);
    return exits;
}

Cell exit_cell(const CylinderFindings& cylinder, Exit exit) {
    Cell cell;
    cell.peers = true;
    for (const findings::Heard& heard : heard_at(cylinder)) {
        if (heard.exit != exit) continue;
        Line line{word_of(heard.loudness)};
        if (heard.neighbour) line.emplace_back(*heard.neighbour);
        line.emplace_back(word_of(heard.by));
        cell.lines.push_back(std::move(line));
    }
    return cell;
}

/// "nothing, soapy water": such words take more room.
bool listened_by_liquid(Exit exit) {
    return exit == Exit::joint || exit == Exit::coolant || exit == Exit::next_plug_hole;
}

/// One valve's place in the head: the same in every cylinder.
using ValveAt = std::pair<ValveSide, int>;

Cell wanted_cell(const Engine& engine, ValveSide side) {
    const auto& range =
        side == ValveSide::intake ? engine.valves.intake_clearance : engine.valves.exhaust_clearance;
    if (!range) return {};
    return cell({Range{findings::figure_of(range->value.low), findings::figure_of(range->value.high)}});
}

Cell clearance_cell(const Visit& visit, int cylinder, const ValveAt& at) {
    Cell cell;
    for (const Clearance* valve : standing(visit.clearances, cylinder)) {
        if (ValveAt{valve->side, valve->valve} != at) continue;
        if (valve->found) cell.lines.push_back({findings::figure_of(*valve->found)});
        if (valve->left) cell.lines.push_back({Label::left, findings::figure_of(*valve->left)});
    }
    return cell;
}

}  // namespace

Section in_short(const Dossier& dossier, const Visit& visit, const Findings& found,
                 const findings::Reference& reference) {
    const Engine& engine = dossier.engine;
    Section section{Label::in_short,
                    {Sentences{{{found.headline, any(found, measured) ? judged(found.state) : State::none,
                                 std::nullopt}}}}};
    add_block(section,
              cranking_bores(Label::dry_test, engine, found, dry,
                             [](const auto& cylinder) { return cylinder.dry->state; }),
              any(found, [](const auto& cylinder) { return cylinder.dry.has_value(); }));
    add_block(section, leak_down_bores(engine, found),
              any(found, [](const auto& cylinder) { return cylinder.leak_down.has_value(); }));
    add_block(section,
              cranking_bores(Label::wet_test, engine, found, wet, [](const auto&) { return State::none; }),
              any(found, [](const auto& cylinder) { return cylinder.wet.has_value(); }));
    Verdicts verdicts;
    // A leak of an earlier visit that no air was put on since hangs over what reads well now.
    const auto open = findings::faults_left_open(found);
    for (const CylinderFindings& cylinder : found.cylinders) {
        const bool hangs =
            cylinder.state == State::good && std::ranges::find(open, cylinder.number) != open.end();
        verdicts.verdicts.push_back({cylinder.number, name_of(engine, cylinder.number),
                                     hangs ? judged(State::none) : state_of(cylinder), cylinder.headline});
    }
    add_block(section, verdicts, !verdicts.verdicts.empty());
    // Why it is believed stands with the earlier visits.
    Sentences since;
    for (const auto& cylinder : compare::since_repair_at(dossier, visit, reference))
        since.sentences.push_back({cylinder.since.message, State::borderline, cylinder.cylinder});
    add_block(section, since, !since.sentences.empty());
    return section;
}

Section readings(const Engine& engine, const Findings& found) {
    const bool has_dry = any(found, [](const auto& cylinder) { return cylinder.dry.has_value(); });
    const bool has_leak = any(found, [](const auto& cylinder) { return cylinder.leak_down.has_value(); });
    const bool has_wet = any(found, [](const auto& cylinder) { return cylinder.wet.has_value(); });
    const auto testers = other_testers(found);

    Table table{{{{Label::cylinder}, 1.1}}, {}};
    if (has_dry) table.columns.push_back({{Label::dry_test}, 4.0});
    if (has_leak) table.columns.push_back({{Label::leak_down}, 3.4});
    for (const auto& tester : testers)
        table.columns.push_back({{Label::same_leak, tester.first}, 1.3});
    if (has_wet) table.columns.push_back({{Label::wet_test}, 2.4});
    for (const CylinderFindings& cylinder : found.cylinders) {
        std::vector<Cell> row{cylinder_cell(engine, cylinder.number)};
        const Cell missing{{}, State::none};
        if (has_dry) row.push_back(cylinder.dry ? dry_cell(*cylinder.dry) : missing);
        if (has_leak) row.push_back(cylinder.leak_down ? leak_down_cell(*cylinder.leak_down) : missing);
        for (const auto& tester : testers)
            row.push_back(same_leak_cell(cylinder, tester.second));
        if (has_wet) row.push_back(cylinder.wet ? wet_cell(*cylinder.wet) : missing);
        table.rows.push_back(std::move(row));
    }
    Section section{Label::readings, {}};
    add_block(section, table, has_dry || has_leak || has_wet);
    add_block(section, Sentences{{{Label::how_same_leak, std::nullopt, std::nullopt}}}, !testers.empty());
    const auto oil_explains = [](const CylinderFindings& cylinder) {
        return cylinder.wet && cylinder.wet->volume_rise;
    };
    add_block(section, Sentences{{{Label::how_oil_range, std::nullopt, std::nullopt}}},
              std::ranges::any_of(found.cylinders, oil_explains));
    add_block(section, Sentences{{{Label::no_readings, std::nullopt, std::nullopt}}}, section.blocks.empty());
    return section;
}

/// A row for each cylinder, or for each valve where that makes fewer columns.
Section clearances(const Engine& engine, const Visit& visit) {
    std::set<ValveAt> valves;
    std::vector<int> cylinders;
    for (int number : numbers_in_order(engine))
        for (const Clearance* valve : standing(visit.clearances, number)) {
            valves.emplace(valve->side, valve->valve);
            if (cylinders.empty() || cylinders.back() != number) cylinders.push_back(number);
        }
    const auto head_of = [](const ValveAt& at) { return Line{word_of(at.first), at.second}; };
    Table table{{{{Label::cylinder}, 1.4}}, {}};
    if (cylinders.size() < valves.size()) {
        table.columns = {{{Label::valve}, 1.4}, {{Label::wanted}, 1.6}};
        for (int number : cylinders)
            table.columns.push_back({cylinder_cell(engine, number).lines.front(), 1.0});
        for (const ValveAt& at : valves) {
            std::vector<Cell> row{cell(head_of(at)), wanted_cell(engine, at.first)};
            for (int number : cylinders)
                row.push_back(clearance_cell(visit, number, at));
            table.rows.push_back(std::move(row));
        }
    } else {
        std::vector<Cell> wanted{cell({Label::wanted})};
        for (const ValveAt& at : valves) {
            table.columns.push_back({head_of(at), 1.0});
            wanted.push_back(wanted_cell(engine, at.first));
        }
        if (!cylinders.empty()) table.rows.push_back(std::move(wanted));
        for (int number : cylinders) {
            std::vector<Cell> row{cylinder_cell(engine, number)};
            for (const ValveAt& at : valves)
                row.push_back(clearance_cell(visit, number, at));
            table.rows.push_back(std::move(row));
        }
    }
    Section section{Label::clearances, {}};
    add_block(section, table, !table.rows.empty());
    return section;
}

Section exits(const Engine& engine, const Findings& found) {
    const std::vector<Exit> listened_at = exits_listened_at(found);
    Table table{{{{Label::cylinder}, 1.2}}, {}};
    for (Exit exit : listened_at)
        table.columns.push_back({{word_of(exit)}, listened_by_liquid(exit) ? 2.3 : 1.7});
    table.columns.push_back({{Label::points_at}, 2.2});
    for (const CylinderFindings& cylinder : found.cylinders) {
        if (heard_at(cylinder).empty()) continue;
        std::vector<Cell> row{cylinder_cell(engine, cylinder.number)};
        for (Exit exit : listened_at)
            row.push_back(exit_cell(cylinder, exit));
        Cell points_at;
        points_at.peers = true;
        if (cylinder.points_at)
            points_at.lines.push_back({word_of(*cylinder.points_at)});
        else if (cylinder.exits.empty())
            points_at.lines.push_back({word_of(cylinder.heard_earlier_tag)});
        row.push_back(std::move(points_at));
        table.rows.push_back(std::move(row));
    }
    Section section{Label::exits, {}};
    add_block(section, table, !table.rows.empty());
    return section;
}

/// A row for each chamber where there are several.
Section crankcase(const Engine& engine, const Findings& found) {
    Section section{Label::crankcase, {}};
    if (found.crankcases.empty()) return section;
    if (found.crankcases.size() == 1 && found.crankcases.front().cylinder == 0) {
        const findings::Crankcase& test = found.crankcases.front();
        Facts facts;
        add(facts, Label::set_pressure, {test.set.figure});
        add(facts, Label::end_pressure, {test.end.figure});
        if (test.hold) add(facts, Label::hold_time, {test.hold->figure});
        section.blocks.emplace_back(std::move(facts));
    } else {
        Table table{{{{Label::cylinder}, 1.2},
                     {{Label::set_pressure}, 1.0},
                     {{Label::end_pressure}, 1.0},
                     {{Label::hold_time}, 1.0}},
                    {}};
        for (const findings::Crankcase& test : found.crankcases)
            table.rows.push_back(
                {test.cylinder > 0 ? cylinder_cell(engine, test.cylinder) : cell({Label::engine}),
                 cell({test.set.figure}), cell({test.end.figure}),
                 cell(test.hold ? Line{test.hold->figure} : Line{})});
        section.blocks.emplace_back(std::move(table));
    }
    Sentences said;
    for (const findings::Crankcase& test : found.crankcases)
        said.sentences.push_back({test.remark.message, judged(test.state), std::nullopt});
    section.blocks.emplace_back(std::move(said));
    return section;
}

}  // namespace lapwing::report

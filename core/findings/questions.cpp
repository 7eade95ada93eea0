// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <algorithm>

#include "core/base/apart.h"
#include "core/findings/case.h"
#include "core/findings/firing.h"
#include "core/findings/misfits.h"
#include "core/findings/touched.h"

namespace lapwing::findings {
namespace {

void ask_decompressor(const Case& at, CylinderFindings& cylinder) {
    const double final = cylinder.dry->final.figure.si;
    const double low = at.reference.assumed("decompressor-low");
    const double high = at.reference.assumed("decompressor-high");
    const bool typical = final >= low && final <= high;
    // With a decompressor at work nothing was put right: the reading itself is held against the limits.
    const bool under = (at.limits.lowest && is_below(final, at.limits.lowest->figure.si)) ||
                       (at.limits.low && is_below(final, at.limits.low->figure.si));
    // With air on it no decompressor lowers anything: a leak-down has answered that.
    if (cylinder.leak_down) return;
    if (at.decompressor_works()) {
        if (typical || under || final < low)
            cylinder.questions.push_back(remark("question.decompressor", cylinder.number));
    } else if (at.engine.decompressor == Decompressor::unknown && typical &&
               at.engine.cylinders.size() == 1) {
        cylinder.questions.push_back(remark("question.decompressor_unknown", cylinder.number,
                                            figure(Dimension::gauge_pressure, low),
                                            figure(Dimension::gauge_pressure, high)));
    }
}

bool oiled_before_leak_down(const Case& at, const CylinderFindings& cylinder) {
    if (!cylinder.leak_down) return false;
    if (cylinder.leak_down->oiled == Oiled::before || cylinder.leak_down->oiled == Oiled::fresh) return true;
    for (const Reading& leak : at.visit.readings) {
        if (std::ranges::find(cylinder.leak_down->readings, leak.id) == cylinder.leak_down->readings.end())
            continue;
        if (leak.tag == Tag::after_running) continue;
        for (const Reading& wet : at.visit.readings)
            if (wet.test == TestKind::wet && wet.cylinder == cylinder.number &&
                wet.taken_at.unix_ms < leak.taken_at.unix_ms)
                return true;
    }
    return false;
}

void ask_siblings(const Case& at, CylinderFindings& cylinder) {
    for (const ValveSide side : {ValveSide::intake, ValveSide::exhaust})
        if (const auto low = far_below_siblings(at.engine, at.visit, at.reference, cylinder.number, side))
            cylinder.questions.push_back(remark("question.clearance_siblings", cylinder.number, word_of(side),
                                                low->valve->valve, figure_of(low->now()),
                                                figure(Dimension::length, low->siblings)));
}

/// Air in the plug hole of a neighbour whose valves are not shut for sure.
void ask_neighbours(const Case& at, CylinderFindings& cylinder) {
    const int number = cylinder.number;
    for (const Heard& heard : cylinder.exits) {
        if (heard.exit != Exit::next_plug_hole || !heard.neighbour || heard.loudness == Loudness::nothing)
            continue;
        const Neighbour there = neighbour_while_tested(at.engine, at.reference, number, *heard.neighbour);
        if (there.proves_joint()) continue;
        if (companions(at.engine, at.reference, number, *heard.neighbour)) {
            cylinder.questions.push_back(remark("question.companion", number, *heard.neighbour));
            continue;
        }
        if (heard.path) continue;
        cylinder.questions.push_back(
            remark(there.valves == NeighbourValves::open ? "question.neighbour_open"
                                                         : "question.neighbour_may_be_open",
                   number, *heard.neighbour, word_of(there.by_intake ? Path::intake : Path::exhaust)));
    }
}

/// Lowest and highest of a test's repeats, at least one of which is the visit's.
std::pair<Figure, Figure> span(const Case& at, const std::vector<ReadingId>& readings,
                               std::optional<TypedPressure> Reading::*field) {
    const Reading *low = nullptr, *high = nullptr;
    for (const Reading& reading : at.visit.readings) {
        if (std::ranges::find(readings, reading.id) == readings.end()) continue;
        if (!low || (reading.*field)->si() < (low->*field)->si()) low = &reading;
        if (!high || (reading.*field)->si() > (high->*field)->si()) high = &reading;
    }
    return low ? std::pair{figure_of(*(low->*field)), figure_of(*(high->*field))}
               : std::pair<Figure, Figure>{};
}

}  // namespace

void add_questions(const Case& at, CylinderFindings& cylinder) {
    const int number = cylinder.number;
    if (tdc_in_question(at, cylinder)) {
        const bool both = hears(cylinder, Exit::intake) && hears(cylinder, Exit::exhaust);
        cylinder.questions.push_back(both ? remark("question.tdc", number)
                                          : remark("question.tdc_held", number,
                                                   cylinder.leak_down->held.figure,
                                                   cylinder.leak_down->set.figure));
        // At the wrong TDC nothing was measured of how the cylinder seals.
        cylinder.leak_down->state = State::none;
    }
    for (const Reading* reading : over_set(at, number))
        cylinder.questions.push_back(
            remark("question.over_set", number, figure_of(*reading->held), figure_of(*reading->set)));
    for (const TestKind test : {TestKind::dry, TestKind::leak_down})
        for (const Reading* reading : after_oil(at, test, number))
            cylinder.questions.push_back(
                remark("question.after_oil", number, word_of(test),
                       figure_of(test == TestKind::dry ? *reading->final : *reading->held)));
    for (const TestKind test : {TestKind::dry, TestKind::leak_down})
        for (const Reading* reading : odd_ones(at, test, number))
            cylinder.questions.push_back(
                remark("question.odd_one", number, word_of(test),
                       figure_of(test == TestKind::dry ? *reading->final : *reading->held)));
    if (const VeryLow low = very_low_beside(at, number); !low.readings.empty()) {
        const Reading& last = *low.readings.back();
        const bool came_first = last.taken_at.unix_ms < low.against->taken_at.unix_ms;
        cylinder.questions.push_back(remark(came_first ? "question.very_low_first" : "question.very_low_last",
                                            number, figure_of(*last.held), figure_of(*low.against->held)));
    }
    if (cylinder.dry) {
        ask_decompressor(at, cylinder);
        if (at.limits.high && is_above(cylinder.dry->final.figure.si, at.limits.high->figure.si))
            cylinder.questions.push_back(remark("question.above_high", number, cylinder.dry->final.figure));
    }
    ask_siblings(at, cylinder);
    if (oiled_before_leak_down(at, cylinder))
        cylinder.questions.push_back(remark("question.oil_before_leak_down", number));
    if (cylinder.wet && !cylinder.dry)
        cylinder.questions.push_back(remark("question.wet_without_dry", number));
    if (cylinder.wet && cylinder.dry && cylinder.wet->reading.tag != cylinder.dry->tag)
        cylinder.questions.push_back(remark("question.wet_other_state", number, word_of(cylinder.dry->tag),
                                            word_of(cylinder.wet->reading.tag)));
    ask_neighbours(at, cylinder);
}

void add_misfits(const Case& at, CylinderFindings& cylinder) {
    if (asks_tdc(cylinder)) return;  // comes first, and answers most of them
    const int number = cylinder.number;
    for (const Misfit misfit : misfits_of(at, cylinder)) {
        cylinder.again.push_back(again(misfit));
        const auto name = [&](std::string_view code, const auto&... args) {
            cylinder.contradictions.push_back(remark(code, number, args...));
        };
        switch (misfit) {
            case Misfit::held_nothing:
                name("misfit.held_nothing", cylinder.leak_down->set.figure);
                break;
            case Misfit::built_nothing:
                name("misfit.built_nothing", cylinder.dry->final.figure, cylinder.leak_down->leakage.figure);
                break;
            case Misfit::wet_below_dry:
                name("misfit.wet_below_dry", cylinder.dry->final.figure, cylinder.wet->reading.final.figure);
                break;
            case Misfit::wet_far_above:
                name("misfit.wet_far_above", cylinder.dry->final.figure, cylinder.wet->reading.final.figure);
                break;
            case Misfit::loud_but_tight:
                name("misfit.loud_but_tight", cylinder.leak_down->leakage.figure);
                break;
            case Misfit::silent_but_leaks:
                name("misfit.silent_but_leaks", cylinder.leak_down->leakage.figure);
                break;
            case Misfit::dry_apart: {
                const auto [low, high] = span(at, cylinder.dry->readings, &Reading::final);
                name("misfit.dry_apart", low, high);
                break;
            }
            case Misfit::held_apart: {
                const auto [low, high] = span(at, cylinder.leak_down->readings, &Reading::held);
                name("misfit.held_apart", low, high);
                break;
            }
        }
        // No verdict rests on what is to be done again.
        if (again(misfit) == TestKind::leak_down) cylinder.leak_down->state = State::none;
        if (again(misfit) == TestKind::dry) cylinder.dry->state = State::none;
        if (misfit == Misfit::built_nothing && cylinder.leak_down->state != State::good)
            cylinder.leak_down->state = State::none;
    }
}

bool does_again(const CylinderFindings& cylinder, TestKind test) {
    return std::ranges::find(cylinder.again, test) != cylinder.again.end();
}

State dry_state(const CylinderFindings& cylinder) {
    if (!dry_counts(cylinder)) return State::none;
    return does_again(cylinder, TestKind::wet) ? std::min(cylinder.dry->state, State::borderline)
                                               : cylinder.dry->state;
}

std::optional<TestKind> stands_in_the_way(const CylinderFindings& cylinder) {
    const bool air = cylinder.leak_down && cylinder.leak_down->state != State::none;
    for (const TestKind test : cylinder.again)
        if (test != TestKind::wet || !air) return test;
    return std::nullopt;
}

bool asks_tdc(const CylinderFindings& cylinder) {
    return asks(cylinder, "question.tdc") || asks(cylinder, "question.tdc_held");
}

void add_contradictions(const Case& at, CylinderFindings& cylinder) {
    if (!cylinder.heard_earlier.empty() && cylinder.state >= State::borderline)
        cylinder.questions.push_back(
            remark("question.heard_earlier", cylinder.number, word_of(cylinder.heard_earlier_tag)));
    if (const Heard* heard = loudest(cylinder);
        heard && cylinder.state >= State::borderline && !asks_tdc(cylinder)) {
        const ClearanceNeed need = clearance_need(at, cylinder, *heard->path);
        if (need == ClearanceNeed::record)
            cylinder.questions.push_back(
                remark("question.clearance", cylinder.number, word_of(*heard->path)));
        if (need == ClearanceNeed::wanted)
            cylinder.questions.push_back(
                remark("question.clearance_wanted", cylinder.number, word_of(*heard->path),
                       *(heard->path == Path::intake ? cylinder.clearances.unjudged_intake
                                                     : cylinder.clearances.unjudged_exhaust)));
    }
    if (const auto& leak = cylinder.leak_down; leak && leak->does_not_fit) {
        const auto& [set, leakage] = *leak->does_not_fit;
        Remark said = remark("contra.set_pressures", leak->set.figure, leak->leakage.figure, set.figure,
                             leakage.figure);
        said.from = {leak->leakage.from, leakage.from};
        cylinder.contradictions.push_back(std::move(said));
    }
    // What was read in another state contradicts nothing.
    if (!cylinder.dry || !cylinder.leak_down || cylinder.dry->superseded != cylinder.leak_down->superseded)
        return;
    const auto contradict = [&](std::string_view code) {
        Remark said = remark(code, cylinder.dry->final.figure, cylinder.leak_down->leakage.figure);
        said.from = {cylinder.dry->final.from, cylinder.leak_down->leakage.from};
        cylinder.contradictions.push_back(std::move(said));
    };
    const State dry = cylinder.dry->state;
    const State leak = cylinder.leak_down->state;
    if (dry == State::fault && leak == State::good && !builds_nothing(at, *cylinder.dry) &&
        !asks(cylinder, "question.decompressor") && !asks(cylinder, "question.oil_before_leak_down"))
        contradict("contra.low_but_seals");
    if (dry == State::good && leak == State::fault) contradict("contra.leaks_but_reads_well");
}

}  // namespace lapwing::findings

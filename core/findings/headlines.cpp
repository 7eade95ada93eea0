// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <algorithm>

#include "core/findings/case.h"
#include "core/findings/misfits.h"
#include "core/findings/touched.h"

namespace lapwing::findings {
namespace {

/// What is said of a leak, from its number and the loudest exit. No strip-down verdict on a valve before its
/// clearance is recorded.
Message leak_headline(const Case& at, const CylinderFindings& cylinder) {
    const Figure& leakage = cylinder.leak_down->leakage.figure;
    const int number = cylinder.number;
    if (const auto valve = retest_of(at, cylinder))
        return say("cylinder.retest_leak", number, leakage, word_of(*valve));
    const Heard* heard = loudest(cylinder);
    if (!heard) {
        if (const auto other = doubted_joint(cylinder))
            return say("cylinder.leaks_joint_or_valve", number, leakage, *other);
        if (const auto tie = equally_loud(cylinder))
            return say("cylinder.leaks_tie", number, leakage, word_of(tie->first->exit),
                       word_of(tie->second->exit));
        if (!cylinder.exits.empty())
            return cylinder.exits.front().loudness == Loudness::nothing
                       ? say("cylinder.leaks_silent", number, leakage)
                       : say("cylinder.leaks_no_path", number, leakage, word_of(cylinder.exits.front().exit));
        if (dry_counts(cylinder) && cylinder.dry->state == State::good)
            return say("cylinder.leaks_but_reads_well", number, cylinder.dry->final.figure, leakage);
        return say("cylinder.leaks_unheard", number, leakage);
    }
    switch (clearance_need(at, cylinder, *heard->path)) {
        case ClearanceNeed::record:
        case ClearanceNeed::wanted:
        case ClearanceNeed::siblings:
            return say("cylinder.leaks_clearance_first", number, leakage, word_of(*heard->path));
        case ClearanceNeed::adjust:
            return say("cylinder.leaks_adjust_first", number, leakage, word_of(*heard->path));
        case ClearanceNeed::retest:
        case ClearanceNeed::none:
            break;
    }
    if (heard->path == Path::next_cylinder)
        if (const auto other = heard_neighbour(cylinder))
            return say("cylinder.leaks_at_joint", number, leakage, *other);
    return say("cylinder.leaks_at", number, leakage, word_of(*heard->path));
}

bool says(const std::vector<Remark>& remarks, std::string_view code) {
    return std::ranges::any_of(remarks, [&](const Remark& said) { return said.message.code == code; });
}

/// The neighbour on the other side of a leaking joint, when the rule of thumb named one.
std::optional<int> joint_neighbour(const CylinderFindings& cylinder) {
    if (cylinder.points_at != Path::next_cylinder) return std::nullopt;
    for (const Remark& rule : cylinder.rules_of_thumb)
        if (rule.message.code == "thumb.joint") {
            const int a = std::get<int>(rule.message.args[0]);
            const int b = std::get<int>(rule.message.args[1]);
            return a == cylinder.number ? b : a;
        }
    return heard_neighbour(cylinder);
}

/// Nothing but the other cylinders says what this one should read.
bool only_alike(const Case& at, const CylinderFindings& cylinder) {
    return cylinder.dry && !cylinder.dry->expected && !at.limits.low && !at.limits.lowest &&
           !at.limits.difference && !at.engine.limits.least_ratio &&
           !says(cylinder.dry->why, "why.within_typical") && !says(cylinder.dry->why, "why.below_typical") &&
           !says(cylinder.dry->why, "why.far_below_typical");
}

/// Every rule for the difference holds; it is the level that is low.
bool only_under_floor(const CylinderFindings& cylinder) {
    const auto& why = cylinder.dry->why;
    return says(why, "spread.ratio_under") && std::ranges::none_of(why, [](const Remark& remark) {
               return remark.message.code.starts_with("spread.") &&
                      remark.message.code != "spread.ratio_under";
           });
}

/// However little is lost: some of it comes out where none may.
std::optional<Message> gasket_headline(const CylinderFindings& cylinder) {
    const Heard* air = gasket_air(cylinder);
    if (!air) return std::nullopt;
    const bool trace = gasket_state(cylinder) != State::fault;
    if (!cylinder.leak_down)
        return say(trace ? "cylinder.trace_at" : "cylinder.air_at", cylinder.number, word_of(*air->path));
    return say(trace ? "cylinder.little_and_trace_at" : "cylinder.little_but_at", cylinder.number,
               cylinder.leak_down->leakage.figure, word_of(*air->path));
}

/// Air stays in, and what the dry test read is not as it should be.
Message seals_headline(const Case& at, const CylinderFindings& cylinder) {
    const int number = cylinder.number;
    if (dry_counts(cylinder) && !does_again(cylinder, TestKind::dry)) {
        const Figure& read = cylinder.dry->final.figure;
        const Figure& leakage = cylinder.leak_down->leakage.figure;
        if (cylinder.dry->state == State::fault && !asks(cylinder, "question.decompressor"))
            return builds_nothing(at, *cylinder.dry)
                       ? say("cylinder.seals_but_builds_nothing", number, read, leakage)
                       : say("cylinder.seals_but_reads_low", number, read, leakage);
        if (cylinder.dry->state == State::borderline)
            return reads_above(cylinder) ? say("cylinder.seals_reads_above", number, read, leakage)
                                         : say("cylinder.seals_reads_borderline", number, read, leakage);
    }
    return say("cylinder.seals_well", number);
}

Message dry_headline(const Case& at, const CylinderFindings& cylinder) {
    const Figure& final = cylinder.dry->final.figure;
    const int number = cylinder.number;
    const auto& expected = cylinder.dry->expected;
    if (!at.decompressor_works() && throttle_closed(at.visit.session, at.engine)) {
        const State state = cylinder.dry->state;
        return say(state == State::good    ? "cylinder.shut_in_range"
                   : state == State::fault ? "cylinder.shut_low"
                                           : "cylinder.shut_no_verdict",
                   number, final);
    }
    switch (cylinder.dry->state) {
        case State::good:
            return say(expected                   ? "cylinder.reads_as_expected"
                       : only_alike(at, cylinder) ? "cylinder.reads_alike"
                                                  : "cylinder.reads_in_range",
                       number, final);
        case State::borderline:
            if (reads_above(cylinder))
                return say("cylinder.reads_above", number, final, at.limits.high->figure);
            if (only_alike(at, cylinder) && only_under_floor(cylinder))
                return say("cylinder.alike_but_low", number, final);
            return say(expected && final.si < expected->low.si ? "cylinder.reads_below_expected"
                                                               : "cylinder.reads_borderline",
                       number, final);
        case State::none:
            return say(at.decompressor_works() ? "cylinder.reads_decompressor" : "cylinder.reads_no_limit",
                       number, final);
        case State::fault:
            break;
    }
    if (const auto valve = retest_of(at, cylinder))
        return say("cylinder.retest_dry", number, final, word_of(*valve));
    if (const auto other = joint_neighbour(cylinder)) return say("cylinder.joint_with", number, *other);
    for (const Path valve : {Path::intake, Path::exhaust})
        if (clearance_need(at, cylinder, valve) == ClearanceNeed::adjust)
            return say("cylinder.low_adjust_first", number, final, word_of(valve));
    for (const Path valve : {Path::intake, Path::exhaust})
        if (clearance_need(at, cylinder, valve) == ClearanceNeed::siblings)
            return say("cylinder.low_clearance_first", number, final, word_of(valve));
    const auto& lowest = at.limits.lowest;
    const bool below = lowest && says(cylinder.dry->why, "why.below_lowest");
    if (cylinder.points_at) {
        const Word path = word_of(*cylinder.points_at);
        return below ? say("cylinder.below_limit_points_at", number, final, lowest->figure, path)
                     : say("cylinder.low_points_at", number, final, path);
    }
    if (below) return say("cylinder.below_limit", number, final, lowest->figure);
    return say(
        says(cylinder.dry->why, "why.far_below_typical") ? "cylinder.far_below_usual" : "cylinder.reads_low",
        number, final);
}

CylinderList in_state(const Findings& findings, State state) {
    CylinderList out;
    for (const CylinderFindings& cylinder : findings.cylinders)
        if (cylinder.state == state) out.push_back(cylinder.number);
    return out;
}

/// Whose chambers lose more than the maker allows; 0 in front where the engine was held as one.
CylinderList crankcase_faults(const Findings& findings) {
    CylinderList out;
    for (const Crankcase& one : findings.crankcases)
        if (one.state == State::fault) out.push_back(one.cylinder);
    return out;
}

template <class Is>
bool each(const Findings& findings, Is is) {
    return std::ranges::all_of(findings.cylinders, is);
}

}  // namespace

Message headline_of(const Case& at, const CylinderFindings& cylinder) {
    const int number = cylinder.number;
    if (asks_tdc(cylinder)) return say("cylinder.ask_tdc", number);
    if (const auto test = stands_in_the_way(cylinder)) {
        // What cranking alone showed stands; only where it leaks is open.
        const bool low = *test == TestKind::leak_down && dry_state(cylinder) == State::fault;
        return low ? say("cylinder.low_but_unfit", number, cylinder.dry->final.figure, word_of(*test))
                   : say("cylinder.does_not_fit", number, word_of(*test));
    }
    if (held_over_set_alone(cylinder) && !cylinder.dry)
        return say("cylinder.does_not_fit", number, word_of(TestKind::leak_down));
    const auto gasket = gasket_headline(cylinder);
    if (cylinder.leak_down) {
        const Figure& leakage = cylinder.leak_down->leakage.figure;
        switch (cylinder.leak_down->state) {
            case State::fault:
                return leak_headline(at, cylinder);
            case State::borderline:
                if (gasket && gasket_state(cylinder) == State::fault) return *gasket;
                // A leak that may be none must not talk over a reading that is low for sure.
                if (dry_state(cylinder) == State::fault && !asks(cylinder, "question.decompressor") &&
                    !asks(cylinder, "question.decompressor_unknown"))
                    return dry_headline(at, cylinder);
                return say(says(cylinder.leak_down->why, "why.leak_tester_unknown")
                               ? "cylinder.leaks_tester_first"
                               : "cylinder.wear",
                           number, leakage);
            case State::good:
                if (gasket) return *gasket;
                // Oil on the rings closes for a while what the dry test showed.
                if (dry_counts(cylinder) && cylinder.dry->state != State::good &&
                    asks(cylinder, "question.oil_before_leak_down"))
                    return dry_headline(at, cylinder);
                return seals_headline(at, cylinder);
            case State::none:
                break;
        }
    }
    if (gasket && !(cylinder.dry && cylinder.dry->state == State::fault)) return *gasket;
    if (cylinder.dry) {
        if (asks(cylinder, "question.decompressor") || asks(cylinder, "question.decompressor_unknown"))
            return say("cylinder.ask_decompressor", number, cylinder.dry->final.figure);
        return dry_headline(at, cylinder);
    }
    return say(cylinder.wet ? "cylinder.wet_only" : "cylinder.not_measured", number);
}

Message headline_of(const Case& at, const Findings& findings) {
    const auto measured = [](const CylinderFindings& cylinder) { return cylinder.dry || cylinder.leak_down; };
    const auto count = std::ranges::count_if(findings.cylinders, measured);
    const bool wet = std::ranges::any_of(
        findings.cylinders, [](const CylinderFindings& cylinder) { return cylinder.wet.has_value(); });
    if (count == 0 && findings.crankcases.empty())
        return say(wet ? "engine.wet_only" : "engine.not_measured");
    CylinderList asked;
    for (const CylinderFindings& cylinder : findings.cylinders)
        if (asks_tdc(cylinder) || stands_in_the_way(cylinder) ||
            cylinder.headline.code == "cylinder.ask_decompressor")
            asked.push_back(cylinder.number);
    if (!asked.empty()) return say("engine.questions_first", asked);
    const bool diesel = at.engine.fuel == Fuel::diesel;  // has no throttle to hold open
    if (count > 0 && each(findings, [](const CylinderFindings& cylinder) {
            return cylinder.headline.code == "cylinder.seals_but_reads_low";
        }))
        return say(diesel ? "engine.low_but_seals_diesel" : "engine.low_but_seals");
    const bool air = std::ranges::any_of(
        findings.cylinders, [](const CylinderFindings& cylinder) { return cylinder.leak_down.has_value(); });
    if (count > 0 && !air && !at.decompressor_works() && throttle_closed(at.visit.session, at.engine))
        return say("engine.throttle_shut");
    const bool by_limit = at.limits.lowest && count > 1;
    // As each was judged: what stood in a reading's way was allowed for there.
    if (by_limit && each(findings, [](const CylinderFindings& cylinder) {
            return cylinder.dry && !cylinder.leak_down && cylinder.dry->state == State::fault;
        }))
        return say(diesel ? "engine.low_everywhere_diesel" : "engine.low_everywhere");
    const CylinderList faults = in_state(findings, State::fault);
    if (faults.size() == 2) {
        const CylinderFindings* first = findings.cylinder(faults[0]);
        const CylinderFindings* second = findings.cylinder(faults[1]);
        if (joint_neighbour(*first) == faults[1] && joint_neighbour(*second) == faults[0])
            return say("engine.joint", faults[0], faults[1]);
    }
    if (!faults.empty()) return say("engine.fault", faults);
    if (const auto lets_go = crankcase_faults(findings); !lets_go.empty())
        return lets_go.front() == 0 ? say("engine.crankcase") : say("engine.crankcase_of", lets_go);
    if (std::cmp_less(count, findings.cylinders.size()))
        return say("engine.not_all_measured", static_cast<int>(count),
                   static_cast<int>(findings.cylinders.size()));
    if (const CylinderList borderline = in_state(findings, State::borderline); !borderline.empty()) {
        const bool by_tester = std::ranges::any_of(findings.cylinders, [](const CylinderFindings& cylinder) {
            return cylinder.headline.code == "cylinder.leaks_tester_first";
        });
        if (each(findings, [](const CylinderFindings& cylinder) {
                return cylinder.headline.code == "cylinder.alike_but_low";
            }))
            return say("engine.alike_but_low");
        return say(by_tester ? "engine.borderline_tester_first" : "engine.borderline", borderline);
    }
    if (each(findings, [](const CylinderFindings& cylinder) {
            return cylinder.leak_down && cylinder.leak_down->state == State::good;
        }))
        return say("engine.seals_well");
    if (each(findings, [](const CylinderFindings& cylinder) {
            return cylinder.headline.code == "cylinder.reads_alike";
        }))
        return say("engine.alike");
    if (each(findings, [](const CylinderFindings& cylinder) { return cylinder.state == State::good; }))
        return say("engine.in_range");
    if (at.decompressor_works()) return say("engine.decompressor");
    return say("engine.no_limit");
}

}  // namespace lapwing::findings

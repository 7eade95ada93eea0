// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/workflow/proposals.h"

#include <algorithm>

#include "core/findings/case.h"
#include "core/odds/derivations.h"
#include "core/odds/verdict.h"

namespace lapwing::workflow {
namespace {

using findings::ClearanceNeed;
using findings::CylinderFindings;
using findings::Message;
using findings::Path;
using findings::say;

/// A part of one cylinder that may be at fault, and why we think so.
struct Suspect {
    Path path = Path::rings;
    Message reason;
    double chance = 0.0;  ///< of a fault; zero where the odds are not known
    const odds::AfterRepair* after = nullptr;
};

std::optional<Proposal::Expected> expected(int cylinder, const odds::AfterRepair* after) {
    if (!after) return std::nullopt;
    return Proposal::Expected{
        after->lo_pa, after->hi_pa, after->comparable_at_once, {odds::after_repair_from(cylinder, *after)}};
}

bool is_joint(Path path) {
    return path == Path::gasket || path == Path::next_cylinder || path == Path::coolant;
}

/// Whether it asks about that valve's clearance beside its siblings.
bool names_side(const Message& question, Path valve) {
    return question.code == "question.clearance_siblings" &&
           std::get<findings::Word>(question.args[1]) ==
               findings::word_of(valve == Path::intake ? ValveSide::intake : ValveSide::exhaust);
}

bool is_repeat(const findings::NextStep& step) {
    return step.reason.code == "next.repeat_open" || step.reason.code == "next.repeat_open_warm";
}

class Proposals {
public:
    Proposals(const findings::Case& at, const findings::Findings& found, const odds::WhereItLeaks* leaks)
        : at_(at),
          found_(found),
          leaks_(leaks),
          throttle_shut_(findings::throttle_closed(at.visit.session, at.engine)),
          repeats_warm_(std::ranges::any_of(found.next, is_repeat)) {}

    std::vector<Proposal> take() {
        if (found_.headline.code.starts_with("engine.low_but_seals"))
            quick(std::nullopt,
                  say(at_.engine.fuel == Fuel::diesel ? "propose.low_but_seals_diesel"
                                                      : "propose.low_but_seals"),
                  found_.headline, {});
        for (const CylinderFindings& cylinder : found_.cylinders)
            add(cylinder);
        add_joints();
        for (const findings::Crankcase& one : found_.crankcases)
            add(one);
        for (const CylinderFindings& cylinder : found_.cylinders)
            if (cylinder.headline.code == "cylinder.wear")
                out_.push_back({PlanOption::leave, cylinder.number, say("propose.watch"), cylinder.headline,
                                say("left.wear"), std::nullopt});
        // Before anything is done, or run, on the strength of readings that were lowered.
        for (const findings::NextStep& step : found_.next)
            if (is_repeat(step))
                out_.insert(out_.begin(), {PlanOption::quick_fix, std::nullopt, say("propose.repeat_open"),
                                           step.reason, std::nullopt, std::nullopt});
        const auto rank = [](const Proposal& one) {
            return one.option == PlanOption::quick_fix ? 0 : one.option == PlanOption::strip ? 1 : 2;
        };
        std::ranges::stable_sort(out_, {}, rank);
        return std::move(out_);
    }

private:
    void quick(std::optional<int> cylinder, Message work, Message reason, std::optional<Message> if_left,
               const odds::AfterRepair* after = nullptr) {
        out_.push_back({PlanOption::quick_fix, cylinder, std::move(work), std::move(reason),
                        std::move(if_left), expected(cylinder.value_or(1), after)});
    }
    void strip(std::optional<int> cylinder, Message work, Message reason, std::optional<Message> if_left,
               const odds::AfterRepair* after) {
        out_.push_back({PlanOption::strip, cylinder, std::move(work), std::move(reason), std::move(if_left),
                        expected(cylinder.value_or(1), after)});
    }

    void add(const findings::Crankcase& one) {
        const std::optional<int> cylinder = one.cylinder > 0 ? std::optional(one.cylinder) : std::nullopt;
        if (one.state == findings::State::fault)
            strip(cylinder, say("propose.crankcase"), one.remark.message, say("left.crankcase"), nullptr);
        // Without a limit nobody knows whether it holds well enough, but where it doesn't is easily seen.
        if (!at_.engine.crankcase.end_at_least)
            quick(cylinder, say("propose.crankcase_soap"), one.remark.message, {});
    }

    /// Whether a reading of this visit was taken after it was tried.
    [[nodiscard]] bool tried(int cylinder, Tag tag) const {
        return std::ranges::any_of(at_.visit.readings, [&](const Reading& reading) {
            return reading.cylinder == cylinder && reading.tag == tag;
        });
    }

    /// The parts of a cylinder that may well be at fault; none while something stands before a verdict.
    [[nodiscard]] std::vector<Suspect> suspects(const CylinderFindings& cylinder) const {
        if (findings::asks_tdc(cylinder) || findings::asks(cylinder, "question.very_low_last") ||
            findings::stands_in_the_way(cylinder))
            return {};
        // Parts are not taken out by readings that a shut throttle lowered.
        if (throttle_shut_ && !cylinder.leak_down) return {};
        const auto* odds = leaks_ ? leaks_->cylinder(cylinder.number) : nullptr;
        std::vector<Suspect> out;
        if (odds && odds::has_verdict(*odds)) {
            for (const auto* path : odds::by_share(*odds))
                if (odds::worth_repairing(*path, at_.reference))
                    out.push_back(
                        {path->path,
                         say("because.odds", cylinder.number, findings::word_of(path->path),
                             odds::likelihood_word(odds::shown_chance(path->fault).si, at_.reference)),
                         path->fault, odds::expected_after(*odds, *path, at_.reference)});
        } else if ((!odds || odds->contradictions.empty()) && cylinder.points_at) {
            out.push_back({*cylinder.points_at,
                           say("because.rules", cylinder.number, findings::word_of(*cylinder.points_at)), 0.0,
                           nullptr});
        }
        return out;
    }

    void add(const CylinderFindings& cylinder) {
        // Nothing comes off for a leak that a tester nobody knows may have made.
        if (cylinder.headline.code == "cylinder.leaks_tester_first") {
            quick(cylinder.number, say("propose.name_tester"), cylinder.headline, {});
            return;
        }
        // One look with a feeler gauge, before anything else is made of this cylinder.
        bool asked = false;
        for (const Path valve : {Path::intake, Path::exhaust})
            if (findings::clearance_need(at_, cylinder, valve) == ClearanceNeed::siblings) {
                asked = true;
                for (const findings::Remark& question : cylinder.questions)
                    if (names_side(question.message, valve))
                        quick(cylinder.number, say("propose.check_clearance", findings::word_of(valve)),
                              question.message, {});
            }
        if (asked) return;
        // What was put right may have been all there was.
        if (const auto valve = findings::retest_of(at_, cylinder);
            valve && cylinder.state >= findings::State::borderline) {
            quick(cylinder.number, say("propose.test_adjusted", findings::word_of(*valve)), cylinder.headline,
                  {});
            return;
        }
        const auto parts = suspects(cylinder);
        // Where the air comes out costs nothing to hear: parts only come off for what was heard.
        const bool unheard = cylinder.leak_down && cylinder.exits.empty();
        if (unheard && !parts.empty())
            quick(cylinder.number, say("propose.listen"), parts.front().reason, {});
        bool run_it = false;
        for (const Suspect& suspect : parts) {
            if (unheard) {
                if (findings::is_valve(suspect.path)) (void)add_clearance_work(cylinder, suspect);
                continue;
            }
            if (findings::is_valve(suspect.path)) {
                if (!add_clearance_work(cylinder, suspect)) {
                    run_it = true;
                    add_valve(cylinder.number, suspect);
                }
            } else if (suspect.path == Path::rings) {
                run_it = true;
                add_rings(cylinder.number, suspect);
            } else if (suspect.path == Path::decompressor) {
                quick(cylinder.number, say("propose.decompressor"), suspect.reason, say("left.decompressor"),
                      suspect.after);
            } else if (is_joint(suspect.path)) {
                joints_.emplace_back(cylinder.number, suspect);
            }
            if (run_it && !proposed_run_ && !repeats_warm_ && !tried(cylinder.number, Tag::after_running)) {
                // One run does for all cylinders, and comes before everything else.
                proposed_run_ = true;
                out_.insert(out_.begin(), {PlanOption::quick_fix, std::nullopt, say("propose.run_it"),
                                           suspect.reason, std::nullopt, std::nullopt});
            }
        }
    }

    /// True when clearance work stands before any verdict on this valve.
    bool add_clearance_work(const CylinderFindings& cylinder, const Suspect& suspect) {
        const auto word = findings::word_of(suspect.path);
        switch (findings::clearance_need(at_, cylinder, suspect.path)) {
            case ClearanceNeed::record:
            case ClearanceNeed::wanted:
            case ClearanceNeed::siblings:
                quick(cylinder.number, say("propose.check_clearance", word), suspect.reason, {});
                return true;
            case ClearanceNeed::adjust:
                quick(cylinder.number, say("propose.adjust_clearance", word), suspect.reason,
                      left(suspect.path), suspect.after);
                return true;
            case ClearanceNeed::retest:  // said before any suspect was looked at
            case ClearanceNeed::none:
                break;
        }
        return false;
    }

    void add_valve(int cylinder, const Suspect& suspect) {
        const auto word = findings::word_of(suspect.path);
        if (!tried(cylinder, Tag::after_staking))
            quick(cylinder, say("propose.stake", word), suspect.reason, {});
        strip(cylinder, say("propose.valve", word), suspect.reason, left(suspect.path), suspect.after);
    }

    void add_rings(int cylinder, const Suspect& suspect) {
        const auto& symptoms = at_.visit.session.complaint.symptoms;
        const bool stood = std::ranges::find(symptoms, Symptom::stood_long) != symptoms.end();
        // Oil in a diesel's small chamber can lock it or fire.
        const bool may_soak = stood && at_.engine.fuel != Fuel::diesel;
        if (may_soak && !tried(cylinder, Tag::after_oil_soak))
            quick(cylinder, say("propose.soak"), suspect.reason, {});
        strip(cylinder, say(at_.two_stroke() ? "propose.rings_two_stroke" : "propose.rings"), suspect.reason,
              left(Path::rings), suspect.after);
    }

    /// The head comes off once for all cylinders whose joint leaks.
    void add_joints() {
        if (joints_.empty()) return;
        findings::CylinderList cylinders;
        std::optional<Proposal::Expected> range;
        std::optional<int> last;
        double chance = 0.0;
        bool coolant = false;
        for (const auto& [number, suspect] : joints_) {
            if (std::ranges::find(cylinders, number) == cylinders.end()) cylinders.push_back(number);
            coolant = coolant || suspect.path == Path::coolant;
            chance = std::max(chance, suspect.chance);
            const auto one = expected(number, suspect.after);
            if (!one) continue;
            if (!range) {
                range = one;
                last = number;
                continue;
            }
            range->low_pa = std::min(range->low_pa, one->low_pa);
            range->high_pa = std::max(range->high_pa, one->high_pa);
            // Gasket and neighbour of one cylinder are one repair.
            if (number != last) range->from.push_back(one->from.front());
            last = number;
        }
        const auto only = cylinders.size() == 1 ? std::optional(cylinders.front()) : std::nullopt;
        const Message reason = only || chance == 0.0
                                   ? joints_.front().second.reason
                                   : say("because.joint", cylinders,
                                         odds::likelihood_word(odds::shown_chance(chance).si, at_.reference));
        const Message if_left = say(coolant ? "left.coolant" : "left.gasket");
        quick(only, say("propose.head_bolts"), reason, if_left);
        strip(only, say("propose.gasket"), reason, if_left, nullptr);
        out_.back().expected = range;
    }

    [[nodiscard]] Message left(Path path) const {
        switch (path) {
            case Path::exhaust:
                return say("left.exhaust_valve");
            case Path::intake:
                return say("left.valve");
            default:
                return say(at_.engine.fuel == Fuel::diesel ? "left.rings_diesel" : "left.rings");
        }
    }

    const findings::Case& at_;
    const findings::Findings& found_;
    const odds::WhereItLeaks* leaks_;
    bool throttle_shut_;
    bool repeats_warm_;  ///< which has it run until it is warm already
    bool proposed_run_ = false;
    std::vector<std::pair<int, Suspect>> joints_;
    std::vector<Proposal> out_;
};

}  // namespace

std::vector<Proposal> propose(const Dossier& dossier, const Visit& visit, const findings::Findings& found,
                              const odds::WhereItLeaks* leaks, const findings::Reference& reference) {
    const findings::Case at = findings::case_of(dossier, visit, reference, {});
    return Proposals(at, found, leaks).take();
}

}  // namespace lapwing::workflow

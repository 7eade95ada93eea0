// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <algorithm>
#include <array>
#include <string_view>

#include "core/findings/asked.h"
#include "core/findings/case.h"
#include "core/odds/verdict.h"

/// What is worth doing next once the odds are known: the rules' steps, and what the odds add to them.
namespace lapwing::odds {

using findings::Message;
using findings::say;

std::optional<Message> worth_of(const NextTest& test, const findings::Reference& reference) {
    for (const auto& [least, code] :
         {std::pair{"tells-much", "odds.tells_much"}, std::pair{"tells-some", "odds.tells_some"},
          std::pair{"tells-little", "odds.tells_little"}})
        if (test.gain_bits >= reference.assumed(least)) return say(code);
    return std::nullopt;
}

namespace {

/// That it would, with the test's name: for who reads nothing else about it.
std::optional<Message> would_tell(const NextTest& test, const findings::Reference& reference) {
    using findings::Action;
    const auto worth = worth_of(test, reference);
    const char* code = test.test == Action::leak_down ? "odds.leak_down_tells"
                       : test.test == Action::listen  ? "odds.listening_tells"
                       : test.test == Action::dry     ? "odds.dry_tells"
                                                      : "odds.wet_tells";
    if (!worth) return std::nullopt;
    const char* much = worth->code == "odds.tells_much"   ? "tells:much"
                       : worth->code == "odds.tells_some" ? "tells:some"
                                                          : "tells:little";
    return say(code, test.cylinder, findings::Word{much});
}

/// Nothing is outstanding only where no test would tell something of a cylinder.
void add_what_settles(std::vector<findings::NextStep>& steps, const WhereItLeaks& leaks,
                      const findings::Reference& reference) {
    if (steps.size() != 1 || steps.front().reason.code != "next.nothing") return;
    const auto tests = settling_tests(leaks, reference);
    if (tests.empty() || tests.front().gain_bits < reference.assumed("tells-some")) return;
    if (auto told = would_tell(tests.front(), reference))
        steps = {{tests.front().test, tests.front().cylinder, std::move(*told)}};
}

/// Who listened had the air on: what its gauge held is wanted before anything else.
void add_what_to_read(std::vector<findings::NextStep>& steps, const WhereItLeaks& leaks) {
    using findings::Action;
    auto at = std::ranges::find_if(
        steps, [](const findings::NextStep& step) { return step.action != Action::tester_check; });
    for (const CylinderOdds& cylinder : leaks.cylinders) {
        const bool heard = says(cylinder.reasons, "odds.heard_points") ||
                           says(cylinder.reasons, "odds.heard_fault") ||
                           says(cylinder.reasons, "odds.heard_only");
        const bool listed = std::ranges::any_of(steps, [&](const findings::NextStep& step) {
            return step.action == Action::leak_down && (!step.cylinder || step.cylinder == cylinder.number);
        });
        if (heard && !listed)
            at = steps.insert(
                     at, {Action::leak_down, cylinder.number, say("odds.read_as_well", cylinder.number)}) +
                 1;
    }
}

/// Of the readings that only the odds find not to fit the one that fits worst; null where there is none, or
/// where the right TDC is to be settled first.
const Message* worst_misfit(const CylinderOdds& cylinder) {
    const auto worst = std::ranges::find(cylinder.contradictions, "odds.does_not_fit", &Message::code);
    return worst == cylinder.contradictions.end() || says(cylinder.reasons, "odds.tdc_first") ? nullptr
                                                                                              : &*worst;
}

/// It is taken again before anything else is made of this engine, once its testers are known to be right.
void add_what_does_not_fit(std::vector<findings::NextStep>& steps, const WhereItLeaks& leaks) {
    using findings::Action;
    const auto found = [](const CylinderOdds& cylinder) { return worst_misfit(cylinder) != nullptr; };
    if (std::ranges::none_of(leaks.cylinders, found)) return;
    // They say that no test is outstanding.
    std::erase_if(steps, [](const findings::NextStep& step) {
        constexpr std::array<std::string_view, 4> done{"next.nothing", "next.plan", "next.planned",
                                                       "next.watch"};
        return std::ranges::find(done, step.reason.code) != done.end();
    });
    auto at = std::ranges::find_if(
        steps, [](const findings::NextStep& step) { return step.action != Action::tester_check; });
    for (const CylinderOdds& cylinder : leaks.cylinders) {
        const Message* worst = worst_misfit(cylinder);
        if (!worst) continue;
        const findings::Arg& named = worst->args.at(1);
        for (const TestKind test : {TestKind::dry, TestKind::leak_down, TestKind::wet}) {
            if (named != findings::Arg(findings::word_of(test))) continue;
            const Action action = findings::action_of(test);
            const auto listed = std::find_if(at, steps.end(), [&](const findings::NextStep& step) {
                return step.action == action && step.cylinder == cylinder.number;
            });
            if (listed == steps.end())
                at = steps.insert(at, {action, cylinder.number, {"next.again", worst->args}});
            else
                std::rotate(at, listed, listed + 1);
            ++at;
        }
    }
}

/// Where the steps begin with a test of one cylinder, another one that tells more comes before it; what is to
/// be done again stays in front.
void put_most_telling_first(std::vector<findings::NextStep>& steps, const findings::Findings& rules,
                            const WhereItLeaks& leaks, const findings::Reference& reference) {
    using findings::Action;
    const auto state = [&](const findings::NextStep& step) -> std::optional<findings::State> {
        const bool test = step.action == Action::dry || step.action == Action::leak_down ||
                          step.action == Action::listen || step.action == Action::wet;
        const auto* of = test && step.cylinder ? rules.cylinder(*step.cylinder) : nullptr;
        return of ? std::optional(of->state) : std::nullopt;
    };
    if (steps.empty() || !state(steps.front())) return;
    const auto worst = state(steps.front());
    // What is to be done again is no choice: no verdict comes before it.
    const auto open = std::ranges::find_if(
        steps, [](const findings::NextStep& step) { return step.reason.code != "next.again"; });
    // The first of those that tell something, the most telling, that is open to choice.
    for (const NextTest& test : leaks.next_tests) {
        const auto worth = worth_of(test, reference);
        if (!worth) break;
        const auto listed = std::find_if(open, steps.end(), [&](const findings::NextStep& step) {
            return step.action == test.test && step.cylinder == test.cylinder && state(step) == worst;
        });
        if (listed != steps.end()) {
            std::rotate(open, listed, listed + 1);
            break;
        }
        const bool spares_oil = std::ranges::any_of(steps, [&](const findings::NextStep& step) {
            return step.action == Action::wet && step.cylinder == test.cylinder && state(step) == worst;
        });
        if (!spares_oil || test.test == Action::wet) continue;
        steps.insert(open, {test.test, test.cylinder, *would_tell(test, reference)});
        break;
    }
}

}  // namespace

std::vector<NextTest> settling_tests(const WhereItLeaks& leaks, const findings::Reference& reference) {
    const auto healthy = [](const CylinderOdds& cylinder) {
        return cylinder.measured && !cylinder.unsure && !cylinder.main;
    };
    const bool any_suspected = std::ranges::any_of(leaks.cylinders, [&](const CylinderOdds& cylinder) {
        return cylinder.measured && !healthy(cylinder);
    });
    const double likely = reference.assumed("likely");
    std::vector<NextTest> out = leaks.next_tests;
    std::erase_if(out, [&](const NextTest& test) {
        const CylinderOdds* of = leaks.cylinder(test.cylinder);
        return of && healthy(*of) && (any_suspected || of->seals_well >= likely);
    });
    return out;
}

std::vector<findings::NextStep> steps_by_worth(const findings::Findings& rules, const WhereItLeaks& leaks,
                                               const findings::Reference& reference) {
    auto steps = rules.next;
    add_what_settles(steps, leaks, reference);
    add_what_to_read(steps, leaks);
    put_most_telling_first(steps, rules, leaks, reference);
    add_what_does_not_fit(steps, leaks);
    return steps;
}

}  // namespace lapwing::odds

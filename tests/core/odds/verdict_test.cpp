// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/odds/verdict.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "core/findings/case.h"

namespace lapwing::odds {
namespace {

using findings::Path;
using findings::say;

/// Rings against exhaust valve; what is left of one seals well.
CylinderOdds odds_of(double rings, double exhaust) {
    CylinderOdds out;
    out.number = 2;
    out.measured = true;
    out.paths = {{Path::rings, {0.4, 0.2, 0.6}, rings, 0.5}, {Path::exhaust, {0.6, 0.4, 0.8}, exhaust, 0.5}};
    out.seals_well = 1.0 - rings - exhaust;
    out.main = rings > exhaust ? Path::rings : Path::exhaust;
    out.main_chance = std::max(rings, exhaust);
    if (out.seals_well > out.main_chance) {
        out.main.reset();
        out.main_chance = out.seals_well;
    }
    return out;
}

const findings::Reference& reference() {
    static const auto read = *findings::built_in_reference();
    return read;
}

double shown(const findings::Message& message, std::size_t at) {
    return std::get<findings::Figure>(message.args.at(at)).si;
}

std::string word_at(const findings::Message& message, std::size_t at) {
    return std::get<findings::Word>(message.args.at(at)).code;
}

// However little is lost, air in the coolant is a fault: common practice, no source.
TEST(Verdict, AFaultWhereNoneMayLeakComesBeforeSealsWell) {
    auto cylinder = odds_of(0.05, 0.03);
    cylinder.paths.push_back({Path::coolant, {0.1, 0.0, 0.2}, 0.02, 0.85});
    const auto said = headline_of(cylinder, reference());
    EXPECT_EQ(said.code, "odds.seals_but");
    EXPECT_EQ(word_at(said, 1), "path:coolant");
    EXPECT_DOUBLE_EQ(shown(said, 2), 0.85);
    EXPECT_EQ(in_words(cylinder, reference()).code, "odds.likely_seals_but");
    cylinder.paths.back().fault = 0.4;
    EXPECT_EQ(headline_of(cylinder, reference()).code, "odds.seals");
}

// Rounded to 5 % and never above 95 %: the project's own promise of honesty.
TEST(Verdict, NamesTheLikeliestPathAndNeverMoreThan95Percent) {
    const auto said = headline_of(odds_of(0.003, 0.996), reference());
    EXPECT_EQ(said.code, "odds.main");
    EXPECT_EQ(word_at(said, 1), "path:exhaust");
    EXPECT_DOUBLE_EQ(shown(said, 2), 0.95);
    EXPECT_DOUBLE_EQ(shown(headline_of(odds_of(0.72, 0.1), reference()), 2), 0.70);
}

TEST(Verdict, SaysThatACylinderSealsWell) {
    const auto said = headline_of(odds_of(0.05, 0.03), reference());
    EXPECT_EQ(said.code, "odds.seals");
    EXPECT_DOUBLE_EQ(shown(said, 1), 0.90);
}

// A good leak-down may lower the odds that it seals well: nobody may have to guess what that is.
TEST(Verdict, SaysWhatSealingWellMeans) {
    auto assumptions = *built_in_assumptions();
    assumptions.set("seals-well", 0.07);
    assumptions.set("listen-set", 5e5);
    const auto said = seals_means(assumptions);
    EXPECT_EQ(said.code, "odds.seals_means");
    EXPECT_DOUBLE_EQ(shown(said, 0), 0.07);
    EXPECT_DOUBLE_EQ(shown(said, 1), 5e5);
    EXPECT_NEAR(shown(said, 2), 1.016e-3, 1e-6);  // 0.040 in, FAA AC 43.13-1B par. 8-14
}

TEST(Verdict, NamesTwoWhereNoneReachesOneHalf) {
    const auto said = headline_of(odds_of(0.45, 0.40), reference());
    EXPECT_EQ(said.code, "odds.open");
    EXPECT_EQ(word_at(said, 1), "path:rings");
    EXPECT_EQ(word_at(said, 3), "path:exhaust");
    EXPECT_DOUBLE_EQ(shown(said, 4), 0.40);
    const auto sealing = headline_of(odds_of(0.20, 0.38), reference());
    EXPECT_EQ(word_at(sealing, 1), "outcome:seals_well");
    EXPECT_EQ(word_at(sealing, 3), "path:exhaust");
}

TEST(Verdict, GoesByTheWorkingAssumptions) {
    auto other = reference();
    const auto named_from = std::ranges::find(other.assumptions, "named-from", &findings::Assumption::id);
    ASSERT_NE(named_from, other.assumptions.end());
    named_from->value = 40.0;
    EXPECT_EQ(headline_of(odds_of(0.45, 0.40), other).code, "odds.main");
}

TEST(Verdict, AsksForTheClearanceOfAValveThatItNames) {
    auto cylinder = odds_of(0.1, 0.85);
    cylinder.reasons.push_back(say("odds.clearance_first", 2, findings::word_of(Path::exhaust)));
    EXPECT_EQ(headline_of(cylinder, reference()).code, "odds.main_clearance");
    EXPECT_TRUE(said_beside(cylinder, reference()).empty());  // it is said already
    // The other valve's clearance is no reason to hold back a verdict on this path.
    cylinder.reasons.back() = say("odds.clearance_first", 2, findings::word_of(Path::intake));
    EXPECT_EQ(headline_of(cylinder, reference()).code, "odds.main");
    EXPECT_EQ(said_beside(cylinder, reference()).size(), 1u);
}

/// Numbers alone say little about where it leaks: that comes first, and no odds in the plain sentence.
TEST(Verdict, NamesNoPathInThePlainSentenceWhereNobodyListened) {
    for (const char* why : {"odds.not_listened", "odds.no_air"}) {
        auto cylinder = odds_of(0.9, 0.05);
        cylinder.reasons = {say(why, 2), say("odds.fresh_hone", 2)};
        EXPECT_EQ(headline_of(cylinder, reference()).code, why);
        const auto beside = said_beside(cylinder, reference());
        ASSERT_EQ(beside.size(), 2u) << why;
        EXPECT_EQ(beside[0].code, "odds.main_unheard");
        EXPECT_EQ(word_at(beside[0], 1), "path:rings");
        EXPECT_DOUBLE_EQ(shown(beside[0], 2), 0.90);
        EXPECT_EQ(beside[1].code, "odds.fresh_hone");
        // The valve's clearance is asked for all the same.
        cylinder.main = Path::exhaust;
        cylinder.reasons.back() = say("odds.clearance_first", 2, findings::word_of(Path::exhaust));
        EXPECT_EQ(said_beside(cylinder, reference()).back().code, "odds.clearance_first");

        auto open = odds_of(0.45, 0.40);
        open.reasons = {say(why, 2)};
        EXPECT_EQ(headline_of(open, reference()).code, why);
        EXPECT_EQ(said_beside(open, reference()).front().code, "odds.open");

        auto sealing = odds_of(0.2, 0.15);
        sealing.reasons = {say(why, 2)};
        EXPECT_EQ(headline_of(sealing, reference()).code, "odds.seals");
        EXPECT_EQ(said_beside(sealing, reference()).front().code, why);
    }
}

/// An owner reads a first answer even there, with what may turn it round in one sentence.
TEST(Verdict, HasAFirstAnswerInWordsAndOneSentenceThatMayTurnIt) {
    auto cylinder = odds_of(0.8, 0.1);
    EXPECT_EQ(in_words(cylinder, reference()).code, "odds.likely_main");
    EXPECT_EQ(word_at(in_words(cylinder, reference()), 1), "path:rings");
    EXPECT_FALSE(turned_by(cylinder, {}, reference()));
    EXPECT_FALSE(turned_by(cylinder, Path::rings, reference()));  // the same answer
    EXPECT_EQ(turned_by(cylinder, Path::exhaust, reference())->code, "odds.turned_by_rule");

    cylinder.reasons = {say("odds.depends_on_assumptions", 2, findings::word_of(Path::rings),
                            findings::word_of(Path::exhaust))};
    EXPECT_EQ(*turned_by(cylinder, {}, reference()),
              say("odds.turned_by_assumptions", findings::word_of(Path::exhaust)));
    // What a rule of thumb names stands in the headline: that is explained first.
    EXPECT_EQ(*turned_by(cylinder, Path::next_cylinder, reference()),
              say("odds.turned_by_rule", findings::word_of(Path::next_cylinder)));

    for (const auto& [why, alone, with_other] :
         {std::tuple{"odds.not_listened", "odds.turned_by_listening", "odds.turned_by_listening_or"},
          std::tuple{"odds.no_air", "odds.turned_by_air", "odds.turned_by_air_or"}}) {
        auto unheard = odds_of(0.8, 0.1);
        unheard.reasons = {say(why, 2)};
        EXPECT_EQ(in_words(unheard, reference()).code, "odds.likely_main");
        EXPECT_EQ(*turned_by(unheard, {}, reference()), say(alone));
        EXPECT_EQ(*turned_by(unheard, Path::gasket, reference()),
                  say(with_other, findings::word_of(Path::gasket)));
        auto sealing = odds_of(0.1, 0.05);
        sealing.reasons = {say(why, 2)};
        EXPECT_FALSE(turned_by(sealing, {}, reference()));
    }
    // Both answers are named already: nothing turns to a third one.
    auto open = odds_of(0.45, 0.40);
    open.reasons = {say("odds.depends_on_assumptions", 2, findings::word_of(Path::rings),
                        findings::word_of(Path::exhaust))};
    EXPECT_EQ(in_words(open, reference()).code, "odds.likely_open");
    EXPECT_FALSE(turned_by(open, {}, reference()));
    // A question stands before any answer.
    open.reasons.push_back(say("odds.tdc_first", 2));
    EXPECT_FALSE(turned_by(open, Path::gasket, reference()));
}

TEST(Verdict, DrawsOfAShareWhatIsSureOfIt) {
    EXPECT_DOUBLE_EQ(drawn_share({0.92, 0.21, 1.0}), 0.21);
    EXPECT_DOUBLE_EQ(drawn_share({0.8, 0.78, 0.82}), 0.78);
    EXPECT_DOUBLE_EQ(drawn_share({0.06, 0.08, 0.7}),
                     0.06);  // a rare large fault draws the mean out of the range
}

TEST(Verdict, HoldsBackWhileSomethingStandsBeforeIt) {
    auto cylinder = odds_of(0.05, 0.9);
    EXPECT_TRUE(has_verdict(cylinder));
    cylinder.unsure = true;
    EXPECT_FALSE(has_verdict(cylinder));
    EXPECT_EQ(headline_of(cylinder, reference()).code, "odds.unsure_numbers");
    cylinder.contradictions.push_back(say("odds.does_not_fit", 2, findings::word_of(TestKind::wet)));
    EXPECT_EQ(headline_of(cylinder, reference()).code, "odds.no_verdict");
    cylinder.reasons.push_back(say("odds.tdc_first", 2));
    EXPECT_EQ(headline_of(cylinder, reference()).code, "odds.tdc_first");
    cylinder.measured = false;
    EXPECT_EQ(headline_of(cylinder, reference()).code, "odds.nothing_measured");
}

/// Rules see two cylinders alike: the odds know which test tells more. What comes before all tests stays
/// first.
TEST(Verdict, TheMostTellingOfSeveralTestsComesFirst) {
    using findings::Action;
    const auto reference = *findings::built_in_reference();
    findings::Findings rules;
    rules.cylinders.resize(3);
    for (int number = 1; number <= 3; ++number) {
        rules.cylinders[static_cast<std::size_t>(number - 1)].number = number;
        rules.cylinders[static_cast<std::size_t>(number - 1)].state =
            number < 3 ? findings::State::fault : findings::State::borderline;
    }
    rules.next = {{Action::leak_down, 1, say("next.leak_down_low", 1)},
                  {Action::leak_down, 2, say("next.leak_down_low", 2)},
                  {Action::leak_down, 3, say("next.leak_down_low", 3)}};
    WhereItLeaks leaks;
    const double much = reference.assumed("tells-much") + 0.1;
    leaks.next_tests = {
        {Action::leak_down, 3, much + 0.2}, {Action::leak_down, 2, much + 0.1}, {Action::leak_down, 1, much}};
    const auto cylinders = [&] {
        std::vector<int> out;
        for (const auto& step : steps_by_worth(rules, leaks, reference))
            out.push_back(step.cylinder.value_or(0));
        return out;
    };
    EXPECT_EQ(cylinders(), (std::vector<int>{2, 1, 3}));  // 3 is not as bad
    rules.next.insert(rules.next.begin(), {Action::tester_check, {}, say("next.tester_check")});
    EXPECT_EQ(cylinders(), (std::vector<int>{0, 1, 2, 3}));

    // Ears before oil, where they tell more.
    rules.next = {{Action::wet, 1, say("next.wet", 1)}};
    leaks.next_tests = {{Action::listen, 1, much}, {Action::wet, 1, 0.5 * much}};
    const auto steps = steps_by_worth(rules, leaks, reference);
    ASSERT_EQ(steps.size(), 2U);
    EXPECT_EQ(steps.front().action, Action::listen);
    // By its name: it stands alone where nothing else says which test is meant.
    EXPECT_EQ(steps.front().reason, say("odds.listening_tells", 1, findings::Word{"tells:much"}));
    std::swap(leaks.next_tests.front().gain_bits, leaks.next_tests.back().gain_bits);
    std::swap(leaks.next_tests.front(), leaks.next_tests.back());
    EXPECT_EQ(steps_by_worth(rules, leaks, reference).front().action, Action::wet);
}

// The sentence says that no verdict comes before it: then no other test does either.
TEST(Verdict, WhatIsToBeDoneAgainStaysInFrontOfWhatTellsMore) {
    using findings::Action;
    const auto reference = *findings::built_in_reference();
    findings::Findings rules;
    rules.cylinders.resize(2);
    for (int i = 0; i < 2; ++i) {
        rules.cylinders[static_cast<std::size_t>(i)].number = i + 1;
        rules.cylinders[static_cast<std::size_t>(i)].state = findings::State::borderline;
    }
    WhereItLeaks leaks;
    const double much = reference.assumed("tells-much") + 0.1;
    leaks.next_tests = {{Action::leak_down, 1, much + 0.1}, {Action::leak_down, 2, much}};
    const auto again = say("next.again", 1, findings::word_of(TestKind::wet));
    rules.next = {{Action::wet, 1, again}};
    auto steps = steps_by_worth(rules, leaks, reference);
    ASSERT_EQ(steps.size(), 2U);
    EXPECT_EQ(steps[0].reason, again);
    EXPECT_EQ(steps[1].action, Action::leak_down);
    // Those behind it are in the order of what they tell.
    leaks.next_tests = {{Action::leak_down, 2, much}, {Action::dry, 2, 0.5 * much}};
    rules.next = {{Action::wet, 1, again},
                  {Action::dry, 2, say("next.dry", 2)},
                  {Action::leak_down, 2, say("next.leak_down_low", 2)}};
    steps = steps_by_worth(rules, leaks, reference);
    ASSERT_EQ(steps.size(), 3U);
    EXPECT_EQ(steps[0].reason, again);
    EXPECT_EQ(steps[1].action, Action::leak_down);
}

TEST(Verdict, NothingIsOutstandingOnlyWhereNoTestWouldTellSomething) {
    using findings::Action;
    const auto reference = *findings::built_in_reference();
    findings::Findings rules;
    rules.cylinders.resize(1);
    rules.next = {{Action::plan, {}, say("next.nothing")}};
    WhereItLeaks leaks;
    leaks.cylinders.resize(1);
    leaks.next_tests = {{Action::leak_down, 1, reference.assumed("tells-some")}};
    auto steps = steps_by_worth(rules, leaks, reference);
    ASSERT_EQ(steps.size(), 1U);
    EXPECT_EQ(steps.front().action, Action::leak_down);
    EXPECT_EQ(steps.front().reason, say("odds.leak_down_tells", 1, findings::Word{"tells:some"}));
    leaks.next_tests.front().gain_bits *= 0.9;
    EXPECT_EQ(steps_by_worth(rules, leaks, reference).front().reason.code, "next.nothing");
    // What to do is planned already: that stays.
    leaks.next_tests.front().gain_bits = 1.0;
    rules.next = {{Action::plan, {}, say("next.planned")}};
    EXPECT_EQ(steps_by_worth(rules, leaks, reference).front().reason.code, "next.planned");
}

/// Checks of testers first; then the reading that fits worst, before advice on any repair.
TEST(Verdict, WhatOnlyTheOddsFindNotToFitIsReadAgain) {
    using findings::Action;
    const auto reference = *findings::built_in_reference();
    findings::Findings rules;
    rules.cylinders.resize(2);
    rules.next = {{Action::tester_check, {}, say("next.tester_check")},
                  {Action::adjust, 1, say("next.adjust", 1)},
                  {Action::leak_down, 2, say("next.leak_down_low", 2)}};
    WhereItLeaks leaks;
    leaks.cylinders.resize(2);
    leaks.cylinders[1].number = 2;
    leaks.cylinders[1].contradictions = {say("odds.does_not_fit", 2, findings::word_of(TestKind::wet)),
                                         say("odds.does_not_fit", 2, findings::word_of(TestKind::dry))};
    auto steps = steps_by_worth(rules, leaks, reference);
    ASSERT_EQ(steps.size(), 4U);
    EXPECT_EQ(steps[0].action, Action::tester_check);
    EXPECT_EQ(steps[1].action, Action::wet);
    EXPECT_EQ(steps[1].cylinder, 2);
    EXPECT_EQ(steps[1].reason, say("next.again", 2, findings::word_of(TestKind::wet)));
    EXPECT_EQ(steps[2].action, Action::adjust);
    // Listed already: it comes forward, once.
    leaks.cylinders[1].contradictions = {say("odds.does_not_fit", 2, findings::word_of(TestKind::leak_down))};
    steps = steps_by_worth(rules, leaks, reference);
    ASSERT_EQ(steps.size(), 3U);
    EXPECT_EQ(steps[1].action, Action::leak_down);
    EXPECT_EQ(steps[2].action, Action::adjust);
    // No test is outstanding, says the rules' one step: this one is.
    for (const char* done : {"next.nothing", "next.plan", "next.planned", "next.watch"}) {
        rules.next = {{Action::plan, {}, say(done)}};
        steps = steps_by_worth(rules, leaks, reference);
        ASSERT_EQ(steps.size(), 1U) << done;
        EXPECT_EQ(steps.front().action, Action::leak_down);
    }
    // The right TDC is settled first.
    leaks.cylinders[1].reasons = {say("odds.tdc_first", 2)};
    EXPECT_EQ(steps_by_worth(rules, leaks, reference).front().reason.code, "next.watch");
}

/// Whoever listened had the air on and could have read the gauge.
TEST(Verdict, WhatWasListenedToIsReadAsWell) {
    using findings::Action;
    const auto reference = *findings::built_in_reference();
    findings::Findings rules;
    rules.cylinders.resize(2);
    rules.next = {{Action::tester_check, {}, say("next.tester_check")},
                  {Action::dry, {}, say("next.dry_all")}};
    WhereItLeaks leaks;
    leaks.cylinders.resize(2);
    leaks.cylinders[1].number = 2;
    leaks.cylinders[1].reasons = {say("odds.heard_only", 2)};
    const auto steps = steps_by_worth(rules, leaks, reference);
    ASSERT_EQ(steps.size(), 3U);
    EXPECT_EQ(steps[1].action, Action::leak_down);
    EXPECT_EQ(steps[1].reason, say("odds.read_as_well", 2));
    rules.next = {{Action::leak_down, 2, say("next.leak_down_low", 2)}};
    EXPECT_EQ(steps_by_worth(rules, leaks, reference).size(), 1U);
}

TEST(Verdict, WhatWouldSettleItIsAskedOfTheSuspectedNotOfTheHealthy) {
    using findings::Action;
    WhereItLeaks leaks;
    leaks.cylinders.resize(3);
    for (int i = 0; i < 3; ++i) {
        leaks.cylinders[static_cast<std::size_t>(i)].number = i + 1;
        leaks.cylinders[static_cast<std::size_t>(i)].measured = i < 2;
    }
    const auto reference = *findings::built_in_reference();
    leaks.next_tests = {{Action::leak_down, 1, 0.9}, {Action::listen, 2, 0.6}, {Action::leak_down, 3, 0.3}};
    const auto cylinders = [&] {
        std::vector<int> out;
        for (const NextTest& test : settling_tests(leaks, reference))
            out.push_back(test.cylinder);
        return out;
    };
    // Nobody is suspected: as telling as they are.
    EXPECT_EQ(cylinders(), (std::vector<int>{1, 2, 3}));
    // What is likely sound needs no settling.
    leaks.cylinders[0].seals_well = reference.assumed("likely");
    EXPECT_EQ(cylinders(), (std::vector<int>{2, 3}));
    leaks.cylinders[1].main = Path::exhaust;
    EXPECT_EQ(cylinders(), (std::vector<int>{2, 3}));
    // A cylinder whose numbers did not settle is not healthy either.
    leaks.cylinders[1].main.reset();
    leaks.cylinders[1].unsure = true;
    EXPECT_EQ(cylinders(), (std::vector<int>{2, 3}));
}

TEST(Verdict, SaysWhyTheRulesOfThumbDiffer) {
    const auto cylinder = odds_of(0.05, 0.9);
    findings::CylinderFindings rules;
    EXPECT_FALSE(beside_rules(rules, cylinder));
    rules.points_at = Path::exhaust;
    EXPECT_FALSE(beside_rules(rules, cylinder));
    rules.points_at = Path::rings;
    const auto why = beside_rules(rules, cylinder);
    ASSERT_TRUE(why);
    EXPECT_EQ(why->code, "odds.thumb_differs");
    EXPECT_EQ(word_at(*why, 1), "path:rings");
    EXPECT_EQ(word_at(*why, 2), "path:exhaust");
    rules.points_at.reset();
    rules.contradictions.push_back(findings::remark("contra.rules_disagree"));
    EXPECT_EQ(beside_rules(rules, cylinder)->code, "odds.thumbs_disagree");
    auto unsure = cylinder;
    unsure.unsure = true;
    EXPECT_FALSE(beside_rules(rules, unsure));
}

TEST(Verdict, TellsWhatATestIsWorthInWords) {
    const auto reference = findings::built_in_reference().value();
    const auto worth = [&](double bits) { return worth_of({findings::Action::listen, 1, bits}, reference); };
    EXPECT_FALSE(worth(0.0));
    EXPECT_FALSE(worth(0.999 * reference.assumed("tells-little")));
    EXPECT_EQ(worth(reference.assumed("tells-little"))->code, "odds.tells_little");
    EXPECT_EQ(worth(reference.assumed("tells-some"))->code, "odds.tells_some");
    EXPECT_EQ(worth(1.5)->code, "odds.tells_much");
}

TEST(Verdict, ShowsAnIntervalThatHoldsTheMean) {
    // One case in thirty with nearly all of the leak: the mean lies above 95 % of the chances.
    const Interval rare = shown_interval({0.03, 0.0, 0.002});
    EXPECT_DOUBLE_EQ(rare.hi, 0.03);
    const Interval usual = shown_interval({0.5, 0.4, 0.7});
    EXPECT_DOUBLE_EQ(usual.lo, 0.4);
    EXPECT_DOUBLE_EQ(usual.hi, 0.7);
}

TEST(Verdict, PromisesARepairOnlyForAPartThatMayWellBeAtFault) {
    const auto reference = findings::built_in_reference().value();
    auto cylinder = odds_of(0.1, 0.8);
    cylinder.paths.push_back({Path::coolant, {0.1, 0.0, 0.2}, 0.0, 0.9});
    cylinder.expected_after = {{Path::rings, 8e5, 7e5, 9e5, false}, {Path::gasket, 9e5, 8e5, 10e5, true}};
    cylinder.paths[0].fault = 0.1;
    EXPECT_EQ(expected_after(cylinder, cylinder.paths[0], reference), nullptr);
    cylinder.paths[0].fault = 0.9;
    EXPECT_EQ(expected_after(cylinder, cylinder.paths[0], reference), &cylinder.expected_after[0]);
    // Without a prediction for its own repair there is none, and the coolant side comes with the gasket.
    EXPECT_EQ(expected_after(cylinder, cylinder.paths[1], reference), nullptr);
    EXPECT_EQ(expected_after(cylinder, cylinder.paths[2], reference), &cylinder.expected_after[1]);
    EXPECT_EQ(by_share(cylinder).front()->path, Path::exhaust);
}

}  // namespace
}  // namespace lapwing::odds

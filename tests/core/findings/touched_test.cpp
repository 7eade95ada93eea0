// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/findings/touched.h"

#include "tests/core/findings/bench.h"

/// "As found" is kept apart from what was read and heard after something was done to the cylinder. Expected
/// advice: common practice, no source.
namespace lapwing::findings {
namespace {

/// An exhaust valve without clearance, low and heard; then it was put right.
Bench adjusted() {
    Bench bench(1);
    bench.tester(TesterKind::leak_down, "100", "psi", "0.6").restrictor = Bench::mm("1.016");
    bench.wanted_clearances();
    bench.engine().limits.lowest = Bench::pressure("120", "psi");
    bench.dry(1, "90");
    bench.leak(1, "80", "40");
    bench.hear(1, Exit::exhaust, Loudness::strong);
    bench.hear(1, Exit::breather, Loudness::faint);
    bench.clearance(1, ValveSide::exhaust, "0.02").left = Bench::mm("0.15");
    return bench;
}

const Message& first_step(const Findings& found) {
    return found.next.front().reason;
}

TEST(Adjusted, WhatWasHeardBeforeNamesNoPartAndCallsForATest) {
    Bench bench = adjusted();
    const Findings found = bench.find();
    const CylinderFindings& cylinder = *found.cylinder(1);
    EXPECT_EQ(cylinder.headline.code, "cylinder.retest_leak");
    EXPECT_EQ(std::get<Word>(cylinder.headline.args.at(2)), word_of(Path::exhaust));
    EXPECT_TRUE(cylinder.exits.empty());
    ASSERT_EQ(cylinder.heard_earlier.size(), 2U);
    EXPECT_EQ(cylinder.heard_earlier_tag, Tag::as_found);
    EXPECT_FALSE(cylinder.points_at);
    EXPECT_FALSE(says(cylinder.rules_of_thumb, "thumb.loudest_exit"));
    EXPECT_TRUE(says(cylinder.questions, "question.heard_earlier"));
    EXPECT_EQ(first_step(found).code, "next.retest_adjusted");
    EXPECT_EQ(found.next.front().action, Action::leak_down);
}

TEST(Adjusted, ALeakThatStaysIsListenedToAgain) {
    Bench bench = adjusted();
    bench.leak(1, "80", "60").tag = Tag::after_adjustment;
    const Findings found = bench.find();
    const CylinderFindings& cylinder = *found.cylinder(1);
    EXPECT_EQ(cylinder.headline.code, "cylinder.leaks_unheard");
    EXPECT_FALSE(cylinder.points_at);
    EXPECT_TRUE(says(cylinder.questions, "question.heard_earlier"));
    EXPECT_EQ(first_step(found).code, "next.listen_again");
    EXPECT_EQ(std::get<Word>(first_step(found).args.at(1)), word_of(Tag::as_found));
    bench.hear(1, Exit::breather, Loudness::strong);
    bench.visit().exits.back().tag = Tag::after_adjustment;
    bench.visit().exits.back().at = bench.visit().readings.back().taken_at;
    const Findings heard = bench.find();
    EXPECT_EQ(heard.cylinder(1)->points_at, Path::rings);
    EXPECT_TRUE(heard.cylinder(1)->heard_earlier.empty());
    EXPECT_FALSE(says(heard.cylinder(1)->questions, "question.heard_earlier"));
}

TEST(Adjusted, ADryReadingFromBeforeContradictsNoLeakDownAfter) {
    Bench bench = adjusted();
    bench.leak(1, "80", "77").tag = Tag::after_adjustment;
    const Findings found = bench.find();
    const CylinderFindings& cylinder = *found.cylinder(1);
    EXPECT_TRUE(cylinder.dry->superseded);
    EXPECT_FALSE(cylinder.leak_down->superseded);
    EXPECT_EQ(cylinder.dry->state, State::fault);
    EXPECT_EQ(cylinder.state, State::good);
    EXPECT_EQ(cylinder.headline.code, "cylinder.seals_well");
    EXPECT_FALSE(says(cylinder.contradictions, "contra.low_but_seals"));
    EXPECT_FALSE(says(cylinder.questions, "question.heard_earlier"));
    EXPECT_EQ(first_step(found).code, "next.dry_before");
    EXPECT_TRUE(next_is(found, Action::dry, 1));
    // Still low afterwards: now the two belong together.
    bench.dry(1, "91").tag = Tag::after_adjustment;
    EXPECT_TRUE(says(bench.find().cylinder(1)->contradictions, "contra.low_but_seals"));
}

TEST(Adjusted, OilAfterItIsNoRiseOverADryTestBeforeIt) {
    Bench bench = adjusted();
    bench.wet(1, "101").tag = Tag::after_adjustment;
    const CylinderFindings after = *bench.find().cylinder(1);
    ASSERT_TRUE(after.wet);
    EXPECT_FALSE(after.wet->rise);
    EXPECT_TRUE(says(after.questions, "question.wet_other_state"));
    EXPECT_FALSE(says(after.rules_of_thumb, "thumb.wet_rings"));
    // Both as found: the rise stands, and names nothing before the cylinder is tested again.
    bench.visit().readings.back().tag = Tag::as_found;
    const CylinderFindings both = *bench.find().cylinder(1);
    EXPECT_TRUE(both.wet->rise);
    EXPECT_TRUE(says(both.rules_of_thumb, "thumb.wet_rings"));
    EXPECT_FALSE(both.points_at);
}

TEST(Adjusted, OnlyADryTestAsksForAnother) {
    Bench bench(2);
    bench.wanted_clearances();
    bench.engine().limits.lowest = Bench::pressure("120", "psi");
    bench.dry_all({"90", "150"});
    bench.clearance(1, ValveSide::intake, "0.00").left = Bench::mm("0.10");
    const Findings found = bench.find();
    EXPECT_EQ(found.cylinder(1)->headline.code, "cylinder.retest_dry");
    EXPECT_EQ(first_step(found).code, "next.retest_adjusted");
    EXPECT_EQ(found.next.front().action, Action::dry);
}

TEST(Adjusted, AValveThatHadEnoughTouchesNothing) {
    Bench bench(1);
    bench.wanted_clearances();
    bench.leak(1, "80", "40");
    bench.hear(1, Exit::exhaust, Loudness::strong);
    bench.clearance(1, ValveSide::exhaust, "0.30").left = Bench::mm("0.15");
    const CylinderFindings cylinder = *bench.find().cylinder(1);
    EXPECT_EQ(cylinder.points_at, Path::exhaust);
    EXPECT_EQ(cylinder.headline.code, "cylinder.leaks_at");
}

TEST(Adjusted, OtherTagsAreBeforeItByTheClock) {
    Bench bench = adjusted();
    Reading& staked = bench.leak(1, "80", "45");
    staked.tag = Tag::after_staking;
    const Timestamp when = staked.taken_at;
    bench.visit().clearances.front().at = Timestamp{when.unix_ms + 1000, 60};
    EXPECT_EQ(first_step(bench.find()).code, "next.retest_adjusted");
    bench.visit().clearances.front().at = Timestamp{when.unix_ms - 1000, 60};
    EXPECT_NE(first_step(bench.find()).code, "next.retest_adjusted");
    // What was left is kept again with a remark later: it was done when it was first kept.
    Clearance again = bench.visit().clearances.front();
    again.replaces = again.id;
    again.id = ClearanceId{};
    again.id.uuid = *Uuid::parse("00000000-0000-7000-8000-000000000009");
    again.at = Timestamp{when.unix_ms + 5000, 60};
    bench.visit().clearances.push_back(again);
    EXPECT_NE(first_step(bench.find()).code, "next.retest_adjusted");
}

TEST(Staked, ALoudestExitThatWasTouchedMasksTheRest) {
    Bench bench(1);
    bench.tester(TesterKind::leak_down, "100", "psi", "0.6").restrictor = Bench::mm("1.016");
    bench.leak(1, "80", "40");
    bench.hear(1, Exit::exhaust, Loudness::strong);
    bench.hear(1, Exit::breather, Loudness::faint);
    bench.leak(1, "80", "55").tag = Tag::after_staking;
    const Findings found = bench.find();
    EXPECT_TRUE(found.cylinder(1)->exits.empty());
    EXPECT_EQ(first_step(found).code, "next.listen_again");
    // Rings are the same rings: what was heard of them stands.
    Bench rings(1);
    rings.leak(1, "80", "40");
    rings.hear(1, Exit::exhaust, Loudness::faint);
    rings.hear(1, Exit::breather, Loudness::strong);
    rings.leak(1, "80", "41").tag = Tag::after_staking;
    const CylinderFindings same = *rings.find().cylinder(1);
    ASSERT_EQ(same.exits.size(), 1U);
    EXPECT_EQ(same.exits.front().exit, Exit::breather);
    EXPECT_EQ(same.points_at, Path::rings);
    // Of one tag alone all of it counts.
    FindingsOptions as_found;
    as_found.tag = Tag::as_found;
    const Findings then = find(bench.dossier, bench.visit(), Bench::reference(), as_found);
    EXPECT_EQ(then.cylinder(1)->exits.size(), 2U);
}

TEST(Staked, AirFromBeforeIsPutOnAgain) {
    Bench bench(1);
    bench.dry(1, "90");
    bench.leak(1, "80", "40");
    bench.dry(1, "95").tag = Tag::after_staking;
    const Findings found = bench.find();
    EXPECT_EQ(found.cylinder(1)->state, State::fault);
    EXPECT_EQ(first_step(found).code, "next.leak_down_before");
}

TEST(Tag, AfterAClearanceWasChangedNothingIsAsFound) {
    Bench bench(2);
    EXPECT_EQ(tag_now(bench.visit(), 1), Tag::as_found);
    bench.clearance(1, ValveSide::exhaust, "0.02").left = Bench::mm("0.02");
    EXPECT_EQ(tag_now(bench.visit(), 1), Tag::as_found);
    bench.visit().clearances.back().left = Bench::mm("0.15");
    EXPECT_EQ(tag_now(bench.visit(), 1), Tag::after_adjustment);
    EXPECT_EQ(tag_now(bench.visit(), 2), Tag::as_found);
}

}  // namespace
}  // namespace lapwing::findings

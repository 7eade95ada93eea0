// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/findings/firing.h"

#include "tests/core/findings/bench.h"

/// Worked by hand from valve timings. A usual road engine's, from memory: intake opens 10 degrees before TDC
/// and closes 50 after BDC, exhaust opens 50 before BDC and closes 10 after TDC. Firing orders and intervals:
/// common practice, no source.
namespace lapwing::findings {
namespace {

using enum NeighbourValves;

Sourced<TypedAngle> closing(const std::string& degrees) {
    return {*TypedAngle::make(degrees, units::deg), Origin::manual, {}};
}

Neighbour beside(Bench& bench, int tested, int neighbour) {
    return neighbour_while_tested(bench.engine(), Bench::reference(), tested, neighbour);
}

void fires(Bench& bench, std::vector<int> order, const std::vector<std::string>& intervals) {
    bench.engine().firing_order = std::move(order);
    for (const std::string& interval : intervals)
        bench.engine().firing_intervals.push_back(*TypedAngle::make(interval, units::deg));
}

TEST(Neighbour, OfAFourHasAValveOpen) {
    // 1 on compression: 3 has drawn in and stands at BDC, its intake closes 50 degrees on; 2 stands at BDC
    // after its power stroke, its exhaust opened 50 degrees ago; 4 is on overlap.
    Bench bench(4);
    fires(bench, {1, 3, 4, 2}, {"180", "180", "180", "180"});
    const Neighbour two = beside(bench, 1, 2);
    EXPECT_EQ(two.valves, open);
    EXPECT_DOUBLE_EQ(two.past_tdc_deg, 180.0);
    EXPECT_TRUE(two.by_exhaust);
    EXPECT_FALSE(two.by_intake);
    const Neighbour three = beside(bench, 1, 3);
    EXPECT_EQ(three.valves, open);
    EXPECT_DOUBLE_EQ(three.past_tdc_deg, -180.0);
    EXPECT_TRUE(three.by_intake);
    EXPECT_FALSE(three.by_exhaust);
    const Neighbour four = beside(bench, 1, 4);
    EXPECT_EQ(four.valves, overlap);
    EXPECT_TRUE(four.by_intake && four.by_exhaust);
    EXPECT_FALSE(four.proves_joint());
}

TEST(Neighbour, OfASixAndAThreeHasAValveOpen) {
    Bench six(6);
    fires(six, {1, 5, 3, 6, 2, 4}, {"120", "120", "120", "120", "120", "120"});
    // 2 fires 480 after 1: it stands 240 after its own, exhaust stroke. 1 seen from 2: 240 before, intake
    // stroke.
    EXPECT_EQ(beside(six, 1, 2).valves, open);
    EXPECT_TRUE(beside(six, 1, 2).by_exhaust);
    EXPECT_EQ(beside(six, 2, 1).valves, open);
    EXPECT_TRUE(beside(six, 2, 1).by_intake);
    EXPECT_EQ(beside(six, 3, 4).valves, overlap);
    // 5 fires 120 after 1: 60 degrees after BDC on compression. Closing at 50 it would be shut, at 75 not.
    EXPECT_EQ(beside(six, 1, 5).valves, either);
    Bench three(3);
    fires(three, {1, 2, 3}, {"240", "240", "240"});
    EXPECT_EQ(beside(three, 1, 2).valves, open);
    EXPECT_EQ(beside(three, 2, 1).valves, open);
}

TEST(Neighbour, ThatFiresAQuarterTurnApartIsShut) {
    // Half way up on compression, half way down on its power stroke: 40 degrees past closing, 40 before
    // opening.
    Bench eight(8);
    fires(eight, {1, 8, 4, 3, 6, 5, 7, 2}, std::vector<std::string>(8, "90"));
    EXPECT_EQ(beside(eight, 5, 7).valves, shut);
    EXPECT_DOUBLE_EQ(beside(eight, 5, 7).past_tdc_deg, -90.0);
    EXPECT_EQ(beside(eight, 7, 5).valves, shut);
    EXPECT_TRUE(beside(eight, 7, 5).proves_joint());
    // With a phaser that may hold the exhaust back or bring it forward nobody knows.
    eight.engine().valves.timing = ValveTiming::variable;
    EXPECT_EQ(beside(eight, 5, 7).valves, either);
}

TEST(Neighbour, OfAFiveHangsOnTheTiming) {
    // 2 fires 144 degrees after 1: it stands 36 after BDC.
    Bench five(5);
    fires(five, {1, 2, 4, 5, 3}, {"144", "144", "144", "144", "144"});
    EXPECT_EQ(beside(five, 1, 2).valves, either);
    EXPECT_EQ(beside(five, 2, 1).valves, either);
    five.engine().valves.intake_closing_at = TimingAt::seat;
    five.engine().valves.intake_closing = closing("50");
    EXPECT_EQ(beside(five, 1, 2).valves, open);
    five.engine().valves.intake_closing = closing("25");
    EXPECT_EQ(beside(five, 1, 2).valves, shut);
    five.engine().valves.intake_closing = closing("36");
    EXPECT_EQ(beside(five, 1, 2).valves, either);
    // Quoted at 1 mm it touches its seat 15 to 25 degrees later (from memory).
    five.engine().valves.intake_closing = closing("25");
    five.engine().valves.intake_closing_at = TimingAt::lift_1_mm;
    EXPECT_EQ(beside(five, 1, 2).valves, either);
}

TEST(Neighbour, OfATwin) {
    Bench together(2);
    fires(together, {1, 2}, {"360", "360"});
    EXPECT_EQ(beside(together, 1, 2).valves, overlap);
    Bench apart(2);
    fires(apart, {1, 2}, {"180", "540"});
    EXPECT_DOUBLE_EQ(beside(apart, 1, 2).past_tdc_deg, -180.0);
    EXPECT_DOUBLE_EQ(beside(apart, 2, 1).past_tdc_deg, 180.0);
    EXPECT_EQ(beside(apart, 2, 1).valves, open);
}

TEST(Neighbour, OnAManifoldOfItsOwnLetsNothingThrough) {
    Bench bench(4);
    fires(bench, {1, 3, 4, 2}, {"180", "180", "180", "180"});
    bench.engine().joined_exhausts = {{1, 4}, {2, 3}};
    EXPECT_EQ(beside(bench, 1, 2).valves, open);
    EXPECT_TRUE(beside(bench, 1, 2).proves_joint());
    bench.engine().joined_exhausts = {{1, 2, 3, 4}};
    EXPECT_FALSE(beside(bench, 1, 2).proves_joint());
}

TEST(Neighbour, IsNotKnownWithoutTheIntervals) {
    Bench none(4);
    EXPECT_EQ(beside(none, 1, 2).valves, not_known);
    EXPECT_FALSE(beside(none, 1, 2).proves_joint());
    // In-line with its order alone: taken as even. The order alone does not do for a V.
    none.engine().firing_order = {1, 3, 4, 2};
    EXPECT_EQ(beside(none, 1, 2).valves, open);
    none.engine().arrangement = Arrangement::vee;
    EXPECT_EQ(beside(none, 1, 2).valves, not_known);
    Bench two_stroke(2, StrokeCycle::two);
    fires(two_stroke, {1, 2}, {"180", "180"});
    EXPECT_EQ(beside(two_stroke, 1, 2).valves, not_known);
}

TEST(Exits, ANeighboursPlugHoleProvesTheJointOnceTheValvesAreHeard) {
    Bench bench(4);
    bench.engine().firing_order = {1, 3, 4, 2};
    bench.leak(1, "80", "30");
    bench.hear(1, Exit::next_plug_hole, Loudness::strong, 2);
    const Findings before = bench.find();
    EXPECT_EQ(before.cylinder(1)->headline.code, "cylinder.leaks_joint_or_valve");
    EXPECT_TRUE(says(before.cylinder(1)->questions, "question.neighbour_open"));
    EXPECT_FALSE(before.cylinder(1)->points_at.has_value());
    EXPECT_TRUE(std::ranges::any_of(
        before.next, [](const NextStep& step) { return step.reason.code == "next.listen_valves"; }));
    // 2 has its exhaust open: silence at the intake says nothing of that.
    bench.hear(1, Exit::intake, Loudness::nothing);
    EXPECT_TRUE(says(bench.find().cylinder(1)->questions, "question.neighbour_open"));
    bench.hear(1, Exit::exhaust, Loudness::nothing);
    const Findings after = bench.find();
    EXPECT_EQ(after.cylinder(1)->headline.code, "cylinder.leaks_at_joint");
    EXPECT_FALSE(says(after.cylinder(1)->questions, "question.neighbour_open"));
    EXPECT_EQ(after.cylinder(1)->points_at, Path::next_cylinder);
}

TEST(Exits, ALouderValveIsTheValve) {
    Bench bench(4);
    bench.engine().firing_order = {1, 3, 4, 2};
    bench.leak(1, "80", "30");
    bench.hear(1, Exit::next_plug_hole, Loudness::clear, 2);
    bench.hear(1, Exit::exhaust, Loudness::strong);
    EXPECT_EQ(bench.find().cylinder(1)->points_at, Path::exhaust);
}

TEST(Exits, AShutNeighboursPlugHoleProvesTheJointAtOnce) {
    Bench bench(8);
    fires(bench, {1, 8, 4, 3, 6, 5, 7, 2}, std::vector<std::string>(8, "90"));
    bench.leak(5, "80", "30");
    bench.hear(5, Exit::next_plug_hole, Loudness::strong, 7);
    EXPECT_EQ(bench.find().cylinder(5)->headline.code, "cylinder.leaks_at_joint");
}

}  // namespace
}  // namespace lapwing::findings

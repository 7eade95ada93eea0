// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// Two-strokes. Expected verdicts: the trade's common practice, no source.

#include "tests/core/findings/bench.h"

namespace lapwing::findings {
namespace {

TEST(TwoStroke, RingAirAtExhaustAndCarburettorMeansRings) {
    Bench bench(1, StrokeCycle::two);
    bench.leak(1, "80", "8");
    bench.hear(1, Exit::intake, Loudness::strong);
    bench.hear(1, Exit::exhaust, Loudness::strong);
    const Findings found = bench.find();
    EXPECT_EQ(found.cylinder(1)->points_at, Path::rings);
    EXPECT_TRUE(found.cylinder(1)->questions.empty()) << "no valves: neither overlap nor clearance";
    EXPECT_EQ(found.cylinder(1)->headline.code, "cylinder.leaks_at");
}

TEST(TwoStroke, NoValveWordsAnywhere) {
    Bench bench(2, StrokeCycle::two);
    bench.dry(1, "60").first = Bench::pressure("30", "psi");
    bench.dry(2, "120");
    bench.wet(1, "61");
    for (const CylinderFindings& cylinder : bench.find().cylinders)
        for (const Remark& rule : cylinder.rules_of_thumb) {
            EXPECT_NE(rule.message.code, "thumb.wet_no_rise");
            EXPECT_NE(rule.message.code, "thumb.first_puff_valves");
        }
}

TEST(TwoStroke, CrankcaseHoldTestAgainstItsLimits) {
    Bench bench(1, StrokeCycle::two);
    bench.engine().crankcase.set = Bench::pressure("0.6", "bar");
    bench.engine().crankcase.end_at_least = Bench::pressure("0.5", "bar");
    bench.engine().crankcase.hold = *TypedTime::make("6", units::minute);
    EXPECT_TRUE(next_is(bench.find(), Action::crankcase, {}));
    const auto test = [&](const char* end, const char* minutes) {
        bench.visit().readings.clear();
        Reading& reading = bench.add(TestKind::crankcase, 0);
        reading.set = Bench::pressure("0.6", "bar");
        reading.held = Bench::pressure(end, "bar");
        reading.hold = *TypedTime::make(minutes, units::minute);
        return bench.find().crankcases.front();
    };
    EXPECT_EQ(test("0.58", "6").state, State::good);
    EXPECT_EQ(test("0.30", "6").state, State::fault);
    EXPECT_EQ(test("0.58", "2").remark.message.code, "crankcase.too_short");
}

Reading& hold(Bench& bench, int cylinder, const char* end, const char* minutes = "6") {
    Reading& reading = bench.add(TestKind::crankcase, cylinder);
    reading.set = Bench::pressure("0.6", "bar");
    reading.held = Bench::pressure(end, "bar");
    reading.hold = *TypedTime::make(minutes, units::minute);
    return reading;
}

Bench twin_with_crankcase_limits() {
    Bench bench(2, StrokeCycle::two);
    bench.engine().crankcase.set = Bench::pressure("0.6", "bar");
    bench.engine().crankcase.end_at_least = Bench::pressure("0.5", "bar");
    bench.engine().crankcase.hold = *TypedTime::make("6", units::minute);
    return bench;
}

// Each cylinder of a two-stroke pumps its charge with a crankcase chamber of its own (common practice, no
// source).
TEST(TwoStroke, EachChamberOfATwinIsHeldByItself) {
    Bench bench = twin_with_crankcase_limits();
    EXPECT_TRUE(next_is(bench.find(), Action::crankcase, {}));
    hold(bench, 1, "0.58");
    EXPECT_TRUE(next_is(bench.find(), Action::crankcase, 2));
    EXPECT_FALSE(next_is(bench.find(), Action::crankcase, 1));
    hold(bench, 2, "0.30");
    const Findings found = bench.find();
    EXPECT_FALSE(next_is(found, Action::crankcase, 2));
    ASSERT_EQ(found.crankcases.size(), 2U);
    EXPECT_EQ(found.crankcase(1)->state, State::good);
    EXPECT_EQ(found.crankcase(1)->remark.message.code, "chamber.holds");
    EXPECT_EQ(found.crankcase(2)->state, State::fault);
    const Message& blamed = found.crankcase(2)->remark.message;
    EXPECT_EQ(blamed.code, "chamber.loses");
    EXPECT_EQ(std::get<int>(blamed.args.at(0)), 2);
    EXPECT_EQ(found.state, State::fault);
    EXPECT_EQ(found.headline.code, "engine.crankcase_of");
    EXPECT_EQ(std::get<CylinderList>(found.headline.args.at(0)), CylinderList{2});
    // How its cylinder seals is another matter.
    EXPECT_EQ(found.cylinder(2)->state, State::none);
    EXPECT_EQ(found.crankcase(0), nullptr);
}

TEST(TwoStroke, EverySentenceOfAChamberIsListed) {
    const auto said = [](const char* end, const char* minutes, bool limit) {
        Bench bench = twin_with_crankcase_limits();
        if (!limit) bench.engine().crankcase.end_at_least.reset();
        Reading& reading = hold(bench, 2, end, minutes ? minutes : "6");
        if (!minutes) reading.hold.reset();
        return bench.find().crankcases.front().remark.message.code;
    };
    EXPECT_EQ(said("0.58", nullptr, true), "chamber.holds_no_time");
    EXPECT_EQ(said("0.58", "2", true), "chamber.too_short");
    EXPECT_EQ(said("0.505", "6", true), "chamber.close");
    EXPECT_EQ(said("0.4", "6", false), "chamber.no_limit_timed");
    EXPECT_EQ(said("0.4", nullptr, false), "chamber.no_limit");
}

// Sessions of before each chamber had its place.
TEST(TwoStroke, ACrankcaseThatWasHeldAsOneIsStillShown) {
    Bench bench = twin_with_crankcase_limits();
    hold(bench, 0, "0.30");
    const Findings found = bench.find();
    ASSERT_EQ(found.crankcases.size(), 1U);
    EXPECT_EQ(found.crankcase(0)->remark.message.code, "crankcase.loses");
    EXPECT_EQ(found.headline.code, "engine.crankcase");
    for (const NextStep& step : found.next)
        EXPECT_NE(step.action, Action::crankcase);
}

TEST(TwoStroke, ASingleHasOneCrankcase) {
    EXPECT_EQ(crankcase_chambers(Bench(1, StrokeCycle::two).engine()), std::vector<int>{0});
    EXPECT_EQ(crankcase_chambers(Bench(2, StrokeCycle::two).engine()), (std::vector<int>{1, 2}));
    EXPECT_EQ(crankcase_chambers(Bench(2, StrokeCycle::four).engine()), std::vector<int>{0});
}

}  // namespace
}  // namespace lapwing::findings

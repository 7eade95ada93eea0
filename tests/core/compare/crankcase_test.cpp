// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <cmath>

#include "tests/core/compare/years.h"

// The crankcase of a two-stroke, held at two visits and more.
namespace lapwing::compare {
namespace {

/// Pumped up to 0.5 bar each time, read on one gauge of 0 to 1 bar.
class Crankcase : public testing::Test {
protected:
    explicit Crankcase(int cylinders = 1) : years(cylinders) {
        years.dossier.engine.cycle = StrokeCycle::two;
        gauge = years.add_tester(TesterKind::crankcase, "1bar").id;
    }
    Visit& open() {
        Visit& out = years.open();
        out.session.crankcase_tester = gauge;
        return out;
    }
    Reading& hold(Visit& visit, const std::string& end, const std::string& time, int chamber = 0,
                  const std::string& set = "0.50bar") {
        Reading& out = years.add(visit, TestKind::crankcase, chamber, Tag::as_found);
        out.set = Years::of<PressureTag>(set);
        out.held = Years::of<PressureTag>(end);
        if (!time.empty()) out.hold = Years::of<TimeTag>(time);
        return out;
    }
    const Change& change(const Comparison& found, std::size_t cylinder = 0) {
        return found.cylinders[cylinder].crankcase.value();
    }

    Years years;
    TesterId gauge;
};
class Crankcases : public Crankcase {
protected:
    Crankcases() : Crankcase(2) {}
};

TEST_F(Crankcase, LosingLessIsBetter) {
    hold(open(), "0.10bar", "300s");
    hold(open(), "0.48bar", "300s");
    const Comparison found = years.compare();
    EXPECT_TRUE(found.reasons.empty());
    const Change& held = change(found);
    EXPECT_NEAR(held.difference->figure.si, 0.38 * bar, 1e-6);
    EXPECT_EQ(held.verdict, Verdict::better_beyond_doubt);
    EXPECT_FALSE(held.before->converted);
    // Read the other way round it has got worse.
    std::swap(years.dossier.visits[0].readings, years.dossier.visits[1].readings);
    EXPECT_EQ(change(years.compare()).verdict, Verdict::worse);
}

TEST_F(Crankcase, TheSharedGaugeCancelsAndAnotherDoesNot) {
    hold(open(), "0.40bar", "300s");
    hold(open(), "0.42bar", "300s");
    const double one_gauge = change(years.compare()).u;
    years.dossier.visits[1].session.crankcase_tester = years.add_tester(TesterKind::crankcase, "1bar").id;
    const Comparison found = years.compare();
    EXPECT_EQ(reason(found.reasons, "compare.crankcase_tester")->treatment, Treatment::allowed);
    EXPECT_GT(change(found).u, one_gauge);
}

TEST_F(Crankcase, AShortHoldIsShownAsALongOne) {
    hold(open(), "0.40bar", "120s");
    hold(open(), "0.40bar", "600s");
    const Comparison found = years.compare();
    EXPECT_EQ(reason(found.reasons, "compare.hold")->treatment, Treatment::corrected);
    const Change& held = change(found);
    EXPECT_TRUE(held.before->converted);
    EXPECT_DOUBLE_EQ(held.before->as_measured.si, 0.40 * bar);
    // Through a hole the root of a small gauge pressure falls evenly with time (mdot ~ sqrt(dp), the
    // textbook's incompressible limit); air's own compressibility moves that by some percent.
    const double root = std::sqrt(0.5) - 5 * (std::sqrt(0.5) - std::sqrt(0.4));
    EXPECT_NEAR(held.before->compared.si, root * root * bar, 0.03 * bar);
    // What it lost in two minutes then it loses in ten now.
    EXPECT_EQ(held.verdict, Verdict::better_beyond_doubt);
}

TEST_F(Crankcase, AnotherSetPressureAndOtherAirAreConverted) {
    hold(open(), "0.30bar", "300s", 0, "0.60bar");
    hold(open(), "0.25bar", "300s");
    EXPECT_EQ(reason(years.compare().reasons, "compare.set_pressure")->treatment, Treatment::corrected);
    years.dossier.visits[1].session.conditions.station_pressure = Years::of<PressureTag>("900hPa");
    EXPECT_EQ(reason(years.compare().reasons, "compare.air_pressure")->treatment, Treatment::corrected);
}

TEST_F(Crankcase, ATimeThatIsNotNotedIsTakenAsTheSame) {
    hold(open(), "0.40bar", "300s");
    hold(open(), "0.20bar", "");
    const Comparison found = years.compare();
    EXPECT_EQ(reason(found.reasons, "compare.hold_unknown")->treatment, Treatment::not_noted);
    EXPECT_FALSE(change(found).before->converted);
    EXPECT_EQ(change(found).verdict, Verdict::worse);
}

TEST_F(Crankcase, AnEmptyOneTellsNothingOfAnotherTime) {
    hold(open(), "0.00bar", "300s");
    hold(open(), "0.40bar", "120s");
    const Comparison found = years.compare();
    EXPECT_EQ(reason(found.reasons, "compare.emptied")->treatment, Treatment::prevents);
    EXPECT_EQ(change(found).verdict, Verdict::not_comparable);
    // Of the same time it tells enough.
    years.dossier.visits[0].readings[0].hold = Years::of<TimeTag>("120s");
    EXPECT_EQ(change(years.compare()).verdict, Verdict::better_beyond_doubt);
}

TEST_F(Crankcase, WarmAgainstColdWidensIt) {
    hold(open(), "0.40bar", "300s");
    hold(open(), "0.40bar", "300s");
    const double alike = change(years.compare()).u;
    years.dossier.visits[1].session.conditions.heat = EngineHeat::cold;
    const Comparison found = years.compare();
    EXPECT_NE(reason(found.reasons, "compare.heat_leak"), nullptr);
    // 20 % of the 0.1 bar that is lost (assets/reference)
    EXPECT_NEAR(change(found).u, std::hypot(alike, 0.2 * 0.1 * bar), 1.0);
}

TEST_F(Crankcases, EachChamberIsComparedWithItself) {
    Visit& before = open();
    hold(before, "0.10bar", "300s", 1);
    hold(before, "0.45bar", "300s", 2);
    hold(before, "0.30bar", "300s", 0);  // both as one, as older files have it
    Visit& after = open();
    hold(after, "0.47bar", "300s", 1);
    hold(after, "0.45bar", "300s", 2);
    const Comparison found = years.compare();
    EXPECT_EQ(change(found, 0).verdict, Verdict::better_beyond_doubt);
    EXPECT_EQ(change(found, 1).verdict, Verdict::no_real_change);
}

TEST_F(Crankcases, AFourStrokeHasNone) {
    years.dossier.engine.cycle = StrokeCycle::four;
    hold(open(), "0.10bar", "300s", 0);
    hold(open(), "0.45bar", "300s", 0);
    EXPECT_FALSE(years.compare().cylinders.front().crankcase);
}

TEST_F(Crankcase, StandsInTheHistoryInTermsOfTheNewest) {
    for (const char* end : {"0.48bar", "0.43bar", "0.38bar", "0.33bar"})
        hold(open(), end, "300s");
    hold(open(), "0.40bar", "120s");
    const History found = history_of(years.dossier, Years::reference());
    const Series* series = found.cylinder(1)->of(TestKind::crankcase);
    ASSERT_NE(series, nullptr);
    ASSERT_EQ(series->points.size(), 5U);
    EXPECT_TRUE(series->points[0].measure.converted);
    EXPECT_GT(series->points[0].measure.compared.si, 0.48 * bar);  // after two minutes, not five
    EXPECT_DOUBLE_EQ(series->points.back().measure.compared.si, 0.40 * bar);
    ASSERT_TRUE(series->trend);
    EXPECT_EQ(series->trend->direction, Direction::worse);
}

TEST_F(Crankcase, SaysNothingOfARepairOfTheCylinder) {
    Visit& first = open();
    years.leak(first, "80psi", "60psi");
    years.done(first, 1);
    years.leak(open(), "80psi", "76psi");
    years.leak(open(), "80psi", "60psi");
    ASSERT_TRUE(history_of(years.dossier, Years::reference()).cylinder(1)->since_repair);
    hold(open(), "0.45bar", "300s");
    EXPECT_TRUE(history_of(years.dossier, Years::reference()).cylinder(1)->since_repair);
}

}  // namespace
}  // namespace lapwing::compare

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/compare/history.h"

#include <cmath>
#include <filesystem>

#include "core/compare/trend.h"
#include "core/exchange/session_file.h"
#include "core/uncertainty/monte_carlo.h"
#include "tests/core/compare/years.h"

namespace lapwing::compare {
namespace {

using findings::Path;
using uncertainty::Doubtful;

Doubtful plain(double value, double u) {
    Doubtful out;
    out.value = value;
    out.by_itself(u);
    return out;
}

TEST(Line, StraightLineByHand) {
    // Textbook weighted fit: values 1, 3, 5, 7 at 0, 1, 2, 3, each +-0.5: slope 2, and by hand
    // u(slope) = 0.5 / sqrt(sum (x - 1.5)^2) = 0.5 / sqrt(5).
    const std::vector<double> at{0, 1, 2, 3};
    const std::vector<Doubtful> values{plain(1, 0.5), plain(3, 0.5), plain(5, 0.5), plain(7, 0.5)};
    const Line line = line_through(at, values);
    EXPECT_NEAR(line.per_unit, 2.0, 1e-12);
    EXPECT_NEAR(line.u, 0.5 / std::sqrt(5.0), 1e-12);
    EXPECT_NEAR(line.misfit, 0.0, 1e-12);
}

TEST(Line, WhatAllShareCancelsInTheSlope) {
    std::vector<Doubtful> values{plain(1, 0.5), plain(3, 0.5), plain(5, 0.5)};
    const std::vector<double> at{0, 1, 2};
    const double alone = line_through(at, values).u;
    for (Doubtful& value : values)
        value.by_source("gauge zero", 4.0);
    EXPECT_NEAR(line_through(at, values).u, alone, 1e-9);
}

TEST(Line, AgreesWithTrialsWhereAGaugeChanged) {
    // JCGM 101: two gauges, two readings each; each gauge out by its own offset.
    const std::vector<double> at{0, 1, 2, 3};
    const std::vector<double> truth{10.0, 9.5, 9.0, 8.5};
    std::vector<Doubtful> values;
    for (std::size_t i = 0; i < 4; ++i) {
        values.push_back(plain(truth[i], 0.2));
        values.back().by_source(i < 2 ? "one" : "other", 0.3);
    }
    const auto trials = uncertainty::monte_carlo(
        [&](uncertainty::Draws& draws) {
            const double one = draws.normal(0.0, 0.3);
            const double other = draws.normal(0.0, 0.3);
            auto moved = values;
            for (std::size_t i = 0; i < 4; ++i)
                moved[i].value = truth[i] + draws.normal(0.0, 0.2) + (i < 2 ? one : other);
            return line_through(at, moved).per_unit;
        },
        3, 20'000);
    const Line line = line_through(at, values);
    EXPECT_NEAR(line.per_unit, -0.5, 1e-9);
    EXPECT_NEAR(line.u / trials->u, 1.0, 0.02);
}

TEST(Line, ScatterBeyondTheDoubtWidensIt) {
    // Values 0, 3, 0, 3 at 0..3: slope 0.6 by hand, rests -0.6, 1.8, -1.8, 0.6, chi square 7.2 over 2 degrees
    // of freedom at u = 1; Birge's ratio sqrt(3.6), Student's t for 95.45 % at 2 is 4.53 (JCGM 100, table
    // G.2).
    const std::vector<double> at{0, 1, 2, 3};
    const Line line =
        line_through(at, std::vector<Doubtful>{plain(0, 1), plain(3, 1), plain(0, 1), plain(3, 1)});
    EXPECT_NEAR(line.per_unit, 0.6, 1e-12);
    EXPECT_NEAR(line.misfit, 3.6, 1e-12);
    EXPECT_NEAR(line.u, std::sqrt(3.6) / std::sqrt(5.0) * 4.53 / 2.0, 0.002);
}

/// As found, repaired, and once a year from then on.
struct Told {
    Years years;
    explicit Told(const std::vector<std::string>& held_later) {
        Visit& found = years.open();
        years.leak(found, "5.5bar", "4.1bar");
        years.hear(found, Exit::breather, Loudness::strong);
        years.done(found, 1, 10);
        Visit& repaired = years.open(30);
        years.leak(repaired, "5.5bar", "5.3bar", 1, Tag::after_repair);
        years.hear(repaired, Exit::breather, Loudness::faint, 1, Tag::after_repair);
        years.hear(repaired, Exit::exhaust, Loudness::nothing, 1, Tag::after_repair);
        for (const std::string& held : held_later)
            years.leak(years.open(), "5.5bar", held);
    }
    [[nodiscard]] CylinderHistory history() const {
        return history_of(years.dossier, Years::reference()).cylinders.front();
    }
};

TEST(History, ARepairBreaksTheLine) {
    const auto cylinder = Told({"5.25bar"}).history();
    const Series& leak = *cylinder.of(TestKind::leak_down);
    ASSERT_EQ(leak.points.size(), 3U);
    EXPECT_FALSE(leak.points[0].after_repair);
    EXPECT_TRUE(leak.points[1].after_repair);
    EXPECT_FALSE(leak.points[2].after_repair);
    EXPECT_EQ(leak.trend->points, 2);
    EXPECT_EQ(leak.trend->direction, Direction::undecided);
    EXPECT_FALSE(cylinder.since_repair.has_value());
}

TEST(History, TheRingLeakIsComingBack) {
    Told told({"4.6bar"});
    told.years.hear(told.years.dossier.visits[2], Exit::breather, Loudness::clear);
    const auto since = told.history().since_repair;
    ASSERT_TRUE(since.has_value());
    EXPECT_EQ(since->message.code, "history.coming_back");
    EXPECT_EQ(since->path, Path::rings);
    const auto says = [&](std::string_view code) {
        return std::ranges::any_of(since->evidence, [&](const auto& one) { return one.code == code; });
    };
    EXPECT_TRUE(says("history.leakage_worse"));
    EXPECT_TRUE(says("history.louder"));
    EXPECT_TRUE(says("history.same_as_before"));
}

TEST(History, AVisitSaysWhatItsOwnReadingsSayOfTheRepair) {
    Told told({"4.6bar"});
    Years& years = told.years;
    years.hear(years.dossier.visits[2], Exit::breather, Loudness::clear);
    const auto at = [&](std::size_t visit) {
        return since_repair_at(years.dossier, years.dossier.visits[visit], Years::reference());
    };
    EXPECT_TRUE(at(0).empty());
    EXPECT_TRUE(at(1).empty());
    ASSERT_EQ(at(2).size(), 1U);
    EXPECT_EQ(at(2).front().cylinder, 1);
    EXPECT_EQ(at(2).front().since.message.code, "history.coming_back");

    // Nothing measured at the next one: it has nothing to say. Another repair after that changes nothing
    // here.
    years.open();
    EXPECT_TRUE(at(3).empty());
    years.done(years.dossier.visits[3], 1, 10);
    years.leak(years.open(30), "5.5bar", "5.3bar", 1, Tag::after_repair);
    EXPECT_TRUE(at(4).empty());
    ASSERT_EQ(at(2).size(), 1U);
    EXPECT_EQ(at(2).front().since.message.code, "history.coming_back");
}

TEST(History, TwoTestsTogetherSayWhatNeitherSaysAlone) {
    Told told({"5.0bar"});
    Years& years = told.years;
    years.dry(years.dossier.visits[1], "10.0bar", 1, Tag::after_repair);
    EXPECT_FALSE(told.history().since_repair.has_value());
    years.dry(years.dossier.visits[2], "9.0bar");
    const auto changes = years.compare(1, 2).cylinders.front();
    EXPECT_FALSE(changes.dry->beyond_doubt);
    EXPECT_FALSE(changes.leak_down->beyond_doubt);
    // Stouffer's sum by hand: 2.7 and 1.9 standard uncertainties would make 3.3; what they really are:
    const double sum = -changes.dry->difference->figure.si / changes.dry->u +
                       changes.leak_down->difference->figure.si / changes.leak_down->u;
    EXPECT_EQ(told.history().since_repair.has_value(), sum / std::sqrt(2.0) > 3.0);
    years.dossier.visits[2].readings.back().final = Years::of<PressureTag>("8.9bar");
    years.dossier.visits[2].readings.front().held = Years::of<PressureTag>("4.85bar");
    EXPECT_FALSE(years.compare(1, 2).cylinders.front().dry->beyond_doubt);
    EXPECT_FALSE(years.compare(1, 2).cylinders.front().leak_down->beyond_doubt);
    EXPECT_TRUE(told.history().since_repair.has_value());
}

TEST(History, WithoutARepairNothingComesBack) {
    Told told({"4.6bar"});
    told.years.dossier.visits[0].plan.clear();
    for (Reading& reading : told.years.dossier.visits[1].readings)
        reading.tag = Tag::as_found;
    EXPECT_FALSE(told.history().since_repair.has_value());
}

TEST(History, AWorkDoneOnAnotherCylinderIsNoRepairOfThisOne) {
    Years years(2);
    Visit& found = years.open();
    years.leak(found, "5.5bar", "5.3bar", 1);
    years.leak(found, "5.5bar", "4.0bar", 2);
    years.done(found, 2);
    Visit& later = years.open();
    years.leak(later, "5.5bar", "4.0bar", 1);
    EXPECT_FALSE(repaired_between(years.dossier, found, later, 1));
    EXPECT_TRUE(repaired_between(years.dossier, found, later, 2));
    years.dossier.visits[0].plan.front().cylinder.reset();  // the whole engine
    EXPECT_TRUE(repaired_between(years.dossier, found, later, 1));
    years.dossier.visits[0].plan.front().option = PlanOption::leave;
    EXPECT_FALSE(repaired_between(years.dossier, found, later, 1));
}

TEST(History, AnotherPathIsANewLeak) {
    Told told({"4.6bar"});
    told.years.hear(told.years.dossier.visits[2], Exit::exhaust, Loudness::clear);
    told.years.hear(told.years.dossier.visits[2], Exit::breather, Loudness::faint);
    const auto since = told.history().since_repair;
    ASSERT_TRUE(since.has_value());
    EXPECT_EQ(since->message.code, "history.new_leak");
    EXPECT_EQ(since->path, Path::exhaust);
}

TEST(History, WithoutASignOfWhereItIsOnlyWorse) {
    const auto since = Told({"4.6bar"}).history().since_repair;
    ASSERT_TRUE(since.has_value());
    EXPECT_EQ(since->message.code, "history.worse_since_repair");
    EXPECT_FALSE(since->path.has_value());
}

TEST(History, SignsThatDisagreeNameNoPath) {
    Told told({"4.6bar"});
    told.years.hear(told.years.dossier.visits[2], Exit::exhaust, Loudness::clear);
    told.years.hear(told.years.dossier.visits[2], Exit::breather, Loudness::clear);
    EXPECT_EQ(told.history().since_repair->message.code, "history.worse_since_repair");
}

TEST(History, ATestThatSaysTheOppositeKeepsItQuiet) {
    Told told({"4.6bar"});
    Years& years = told.years;
    years.dry(years.dossier.visits[1], "7.0bar", 1, Tag::after_repair);
    years.dry(years.dossier.visits[2], "10.0bar");
    EXPECT_FALSE(told.history().since_repair.has_value());
}

TEST(History, SmallStepsMakeATrendThatNoPairWould) {
    // Each year a little more; from one year to the next nothing beyond doubt.
    Told told({"5.2bar", "5.1bar", "5.0bar", "4.9bar", "4.8bar", "4.7bar"});
    const auto cylinder = told.history();
    EXPECT_EQ(told.years.compare(6, 7).cylinders.front().leak_down->verdict, Verdict::no_real_change);
    const Trend& trend = *cylinder.of(TestKind::leak_down)->trend;
    EXPECT_EQ(trend.points, 7);
    EXPECT_EQ(trend.direction, Direction::worse);
    // 0.1 bar of 5.5 a year
    EXPECT_NEAR(trend.per_year.si, 0.1 / 5.5, 0.002);
    EXPECT_EQ(trend.says.code, "history.trend_worse_leakage");
}

TEST(History, AFewDaysMakeNoTrend) {
    Years years;
    years.leak(years.open(), "5.5bar", "5.4bar");
    years.leak(years.open(3), "5.5bar", "4.0bar");
    const auto history = history_of(years.dossier, Years::reference());
    EXPECT_EQ(history.cylinders.front().of(TestKind::leak_down)->trend->direction, Direction::undecided);
}

TEST(History, EarlierTestersAreShownAsTheNewest) {
    // One leak on two testers: 36.34/50 is 60/80 (isentropic nozzle flow, computed apart from this code).
    Years years;
    years.leak(years.open(), "50psi", "36.34psi");
    years.leak(years.open(), "80psi", "60psi");
    const History history = history_of(years.dossier, Years::reference());
    const auto& points = history.cylinders.front().of(TestKind::leak_down)->points;
    EXPECT_NEAR(points[0].measure.compared.si, 0.25, 2e-4);
    EXPECT_NEAR(points[1].measure.compared.si, 0.25, 1e-12);
    EXPECT_NE(reason(history.reasons, "compare.set_pressure"), nullptr);
}

TEST(History, WhatCannotBeComparedIsShownButNotCounted) {
    Years years;
    for (const char* reading : {"9.0bar", "9.0bar", "9.0bar"})
        years.dry(years.open(), reading);
    years.dossier.visits[1].readings[0].oiled = Oiled::before;
    const auto history = history_of(years.dossier, Years::reference());
    const Series& dry = *history.cylinders.front().of(TestKind::dry);
    EXPECT_EQ(dry.points.size(), 3U);
    EXPECT_FALSE(dry.points[1].comparable);
    EXPECT_EQ(dry.trend->points, 2);
}

TEST(History, TheDemosRingLeakIsComingBackAndTheOtherCylinderIsWell) {
    // The story was written so: rings of cylinder 2 new in April, leaking again a year later; cylinder 1's
    // exhaust valve stayed tight.
    const auto file = std::filesystem::path(LAPWING_SOURCE_DIR) / "assets/demo/orchard-v-twin.lapwing";
    const auto read = exchange::read_session_file(file, std::filesystem::temp_directory_path());
    ASSERT_TRUE(read.has_value());
    const History history = history_of(read->dossier, Years::reference());
    ASSERT_EQ(history.visits.size(), 3U);
    EXPECT_FALSE(history.cylinder(1)->since_repair.has_value());
    const auto& rear = history.cylinder(2)->since_repair;
    ASSERT_TRUE(rear.has_value());
    EXPECT_EQ(rear->message.code, "history.coming_back");
    EXPECT_EQ(rear->path, Path::rings);
    EXPECT_GE(rear->evidence.size(), 3U);
}

}  // namespace
}  // namespace lapwing::compare

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/compare/proof.h"

#include "tests/core/compare/years.h"

namespace lapwing::compare {
namespace {

struct Foretold {
    Years years;
    Foretold() {
        Visit& found = years.open();
        years.dry(found, "6.8bar");
        PlanLine& line = years.done(found, 1, 10);
        line.predicted_low = Years::of<PressureTag>("9.5bar");
        line.predicted_high = Years::of<PressureTag>("11.0bar");
    }
    PlanLine& line() { return years.dossier.visits[0].plan[0]; }
    [[nodiscard]] Proof proof() const { return proofs_of(years.dossier, Years::reference()).at(0); }
};

TEST(Proof, AReadingWithinWhatWasForetoldHolds) {
    for (const auto& [reading, outcome] :
         {std::pair{"9.4bar", Outcome::below}, std::pair{"9.5bar", Outcome::held},
          std::pair{"10.2bar", Outcome::held}, std::pair{"11.0bar", Outcome::held},
          std::pair{"11.1bar", Outcome::above}}) {
        Foretold told;
        told.years.dry(told.years.open(30), reading, 1, Tag::after_repair);
        EXPECT_EQ(told.proof().outcome, outcome) << reading;
    }
}

TEST(Proof, WithoutAReadingSinceNothingIsProved) {
    Foretold told;
    EXPECT_EQ(told.proof().outcome, Outcome::not_measured);
    // The reading of the same visit was taken before the work.
    EXPECT_EQ(told.proof().says.code, "proof.not_measured");
}

TEST(Proof, TheFirstReadingSinceCounts) {
    Foretold told;
    told.years.dry(told.years.open(30), "10.0bar", 1, Tag::after_repair);
    told.years.dry(told.years.open(365), "8.0bar");
    EXPECT_EQ(told.proof().outcome, Outcome::held);
}

TEST(Proof, ItIsHeldAgainstTheForetellingVisitsTerms) {
    // ISO 2533: 850 hPa at 1457 m. 10.0 bar at sea level is 8.39 bar there, below 9.5 as it stands.
    Foretold told;
    Visit& after = told.years.open(30);
    after.session.conditions.station_pressure = Years::of<PressureTag>("850hPa");
    told.years.dry(after, "8.39bar", 1, Tag::after_repair);
    EXPECT_EQ(told.proof().outcome, Outcome::held);
    EXPECT_NEAR(told.proof().reading->si, 10.0 * bar, 0.01 * bar);
}

TEST(Proof, AFigureThatWasConvertedIsSaidAsItWasRead) {
    Foretold told;
    Visit& after = told.years.open(30);
    after.session.conditions.station_pressure = Years::of<PressureTag>("850hPa");
    told.years.dry(after, "8.39bar", 1, Tag::after_repair);
    const Proof proof = told.proof();
    ASSERT_TRUE(proof.converted);
    EXPECT_EQ(proof.converted->code, "proof.converted");
    EXPECT_NEAR(std::get<findings::Figure>(proof.converted->args.front()).si, 8.39 * bar, 1.0);
    EXPECT_EQ(said_of(proof).size(), 2U);
    Foretold alike;
    alike.years.dry(alike.years.open(30), "10.0bar", 1, Tag::after_repair);
    EXPECT_EQ(said_of(alike.proof()).size(), 1U);
}

TEST(Proof, StandsBesideTheVisitsThatItIsOf) {
    Foretold told;
    Years& years = told.years;
    years.dry(years.open(30), "10.0bar", 1, Tag::after_repair);
    years.dry(years.open(365), "8.0bar");
    const auto& visits = years.dossier.visits;
    const auto proofs = proofs_of(years.dossier, Years::reference());
    ASSERT_EQ(proofs.size(), 1U);
    EXPECT_EQ(proofs[0].foretold_in, visits[0].session.id);
    EXPECT_EQ(proofs[0].read_in, visits[1].session.id);
    EXPECT_EQ(proofs_between(proofs, visits[0], visits[1]).size(), 1U);
    // A year later the reading speaks of the year, not of the repair alone.
    EXPECT_EQ(proofs_between(proofs, visits[0], visits[2]).size(), 0U);
    EXPECT_EQ(proofs_between(proofs, visits[1], visits[2]).size(), 0U);
}

TEST(Proof, WhatNobodyTestedYetStandsBesideAVisitAfterTheWork) {
    Foretold told;
    Years& years = told.years;
    years.leak(years.open(30), "5.5bar", "5.0bar");
    const auto& visits = years.dossier.visits;
    const auto between = proofs_between(proofs_of(years.dossier, Years::reference()), visits[0], visits[1]);
    ASSERT_EQ(between.size(), 1U);
    EXPECT_FALSE(between[0].read_in);
    EXPECT_EQ(between[0].outcome, Outcome::not_measured);
    // Done after that visit: it can't have shown it.
    told.line().done_at->unix_ms += static_cast<std::int64_t>(100 * day_ms);
    EXPECT_TRUE(proofs_between(proofs_of(years.dossier, Years::reference()), visits[0], visits[1]).empty());
}

TEST(Proof, OilOfTheAssemblyProvesNothing) {
    Foretold told;
    told.years.dry(told.years.open(30), "10.0bar", 1, Tag::after_repair).oiled = Oiled::before;
    EXPECT_EQ(told.proof().outcome, Outcome::not_comparable);
}

TEST(Proof, TwoRepairsAtOnceProveNeither) {
    Foretold told;
    PlanLine other = told.line();
    other.id = PlanLineId{*Uuid::parse("01959398-8080-7001-a9c9-1155ffeb6ea6")};
    told.years.dossier.visits[0].plan.push_back(other);
    told.years.dry(told.years.open(30), "10.0bar", 1, Tag::after_repair);
    EXPECT_EQ(told.proof().outcome, Outcome::several);
}

TEST(Proof, OnlyDoneWorkWithAPredictionIsAsked) {
    const auto count = [](auto change) {
        Foretold told;
        change(told.line());
        return proofs_of(told.years.dossier, Years::reference()).size();
    };
    EXPECT_EQ(count([](PlanLine&) {}), 1U);
    EXPECT_EQ(count([](PlanLine& line) { line.done_at.reset(); }), 0U);
    EXPECT_EQ(count([](PlanLine& line) { line.predicted_low.reset(); }), 0U);
    EXPECT_EQ(count([](PlanLine& line) { line.cylinder.reset(); }), 0U);
    EXPECT_EQ(count([](PlanLine& line) { line.option = PlanOption::leave; }), 0U);
}

// By meaning: a range that holds the reading before the work holds for an engine that nobody touched.
TEST(Proof, WhatWouldHaveHeldWithoutARepairIsHeldApart) {
    for (const auto& [before, after, apart] :
         {std::tuple{"9.4bar", "10.0bar", false}, std::tuple{"9.5bar", "10.0bar", true},
          std::tuple{"11.0bar", "10.0bar", true}, std::tuple{"11.1bar", "10.0bar", false},
          std::tuple{"9.8bar", "8.0bar", true}}) {
        Years years;
        Visit& found = years.open();
        years.dry(found, before);
        PlanLine& line = years.done(found, 1, 10);
        line.predicted_low = Years::of<PressureTag>("9.5bar");
        line.predicted_high = Years::of<PressureTag>("11.0bar");
        years.dry(years.open(30), after, 1, Tag::after_repair);
        const auto proofs = proofs_of(years.dossier, Years::reference());
        ASSERT_EQ(proofs.size(), 1U);
        EXPECT_EQ(proofs[0].held_anyway, apart) << before;
        EXPECT_EQ(proofs[0].why_apart.has_value(), apart) << before;
        if (apart) EXPECT_EQ(proofs[0].why_apart->code, "proof.held_anyway");
        const HitRate rate = hit_rate(proofs, Years::reference());
        EXPECT_EQ(rate.counted, apart ? 0 : 1) << before;
        EXPECT_EQ(rate.apart, apart ? 1 : 0) << before;
        EXPECT_EQ(rate.says_apart.has_value(), apart) << before;
    }
}

std::vector<Proof> so_many(int held, int below, int others) {
    std::vector<Proof> out(static_cast<std::size_t>(held + below + others));
    for (int i = 0; i < held + below; ++i)
        out[static_cast<std::size_t>(i)].outcome = i < held ? Outcome::held : Outcome::below;
    return out;
}

TEST(HitRate, IsSaidFromTenRepairsOn) {
    EXPECT_FALSE(hit_rate(so_many(9, 0, 5), Years::reference()).enough);
    EXPECT_EQ(hit_rate(so_many(9, 0, 5), Years::reference()).says.code, "proof.too_few");
    const HitRate ten = hit_rate(so_many(8, 2, 5), Years::reference());
    EXPECT_TRUE(ten.enough);
    EXPECT_EQ(ten.counted, 10);
    EXPECT_EQ(ten.held, 8);
    // Wilson's interval by hand, z = 2, 8 of 10: (0.8 + 4/20) / 1.4 = 0.7143, half width
    // 2 / 1.4 x sqrt(0.16/10 + 4/400) = 0.2303.
    EXPECT_NEAR(ten.low, 0.7143 - 0.2303, 1e-4);
    EXPECT_NEAR(ten.high, 0.7143 + 0.2303, 1e-4);
    // Those held apart move neither the count nor the share.
    auto with_more = so_many(8, 2, 5);
    for (int i = 0; i < 20; ++i) {
        with_more.push_back(with_more.front());
        with_more.back().held_anyway = true;
    }
    const HitRate same = hit_rate(with_more, Years::reference());
    EXPECT_EQ(same.counted, 10);
    EXPECT_EQ(same.held, 8);
    EXPECT_EQ(same.apart, 20);
    EXPECT_EQ(same.says_apart->code, "proof.apart");
    const HitRate all = hit_rate(so_many(10, 0, 0), Years::reference());
    EXPECT_DOUBLE_EQ(all.high, 1.0);
    EXPECT_LT(all.low, 0.9);
}

}  // namespace
}  // namespace lapwing::compare

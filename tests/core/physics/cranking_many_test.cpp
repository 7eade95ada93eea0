// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/physics/cranking_many.h"

#include <gtest/gtest.h>

#include <atomic>
#include <cstdlib>
#include <limits>
#include <new>

#include "tests/core/physics/drawn_cases.h"

// Every allocation of this test program, counted.
namespace {
std::atomic<long> allocations{0};
}
void* operator new(std::size_t size) {
    ++allocations;
    if (void* const memory = std::malloc(size)) return memory;
    throw std::bad_alloc();
}
void operator delete(void* memory) noexcept {
    std::free(memory);
}
void operator delete(void* memory, std::size_t) noexcept {
    std::free(memory);
}

namespace lapwing::physics {
namespace {

std::vector<CrankingCase> drawn(std::size_t count) {
    DrawnCases cases(11);
    std::vector<CrankingCase> out;
    while (out.size() < count)
        out.push_back(cases.next());
    return out;
}

TEST(CrankMany, SameBitsAsOneByOneWhateverTheWidth) {
    const auto cases = drawn(43);  // no multiple of 2 or 4: the last group has empty lanes
    for (Lanes lanes : {Lanes::widest, Lanes::one, Lanes::two, Lanes::four}) {
        if (!available(lanes)) continue;
        const auto many = crank_many(cases, {}, lanes).value();
        ASSERT_EQ(many.strokes, 8U);
        ASSERT_EQ(many.puffs_gauge_pa.size(), cases.size() * 8);
        for (std::size_t i = 0; i < cases.size(); ++i) {
            const auto alone = crank(cases[i]).value();
            for (std::size_t stroke = 0; stroke < 8; ++stroke) {
                EXPECT_EQ(many.puff_gauge_pa(i, stroke), alone.puffs_gauge_pa[stroke])
                    << "case " << i << " stroke " << stroke << " lanes " << static_cast<int>(lanes);
            }
            EXPECT_EQ(many.last_gauge_pa(i), alone.last_gauge_pa);
        }
    }
}

TEST(CrankMany, NeighboursInTheRegisterDoNotMatter) {
    auto cases = drawn(8);
    const auto together = crank_many(cases).value();
    std::swap(cases[0], cases[5]);
    const auto swapped = crank_many(cases).value();
    EXPECT_EQ(together.last_gauge_pa(0), swapped.last_gauge_pa(5));
    EXPECT_EQ(together.last_gauge_pa(5), swapped.last_gauge_pa(0));
    EXPECT_EQ(together.last_gauge_pa(3), swapped.last_gauge_pa(3));
}

TEST(CrankMany, AllocatesNothing) {
    const auto cases = drawn(40);
    std::vector<double> puffs(40 * 8);
    for (Lanes lanes : {Lanes::one, Lanes::two, Lanes::four}) {
        if (!available(lanes)) continue;
        const long before = allocations;
        const auto done = crank_many_into(cases, puffs, {}, lanes);
        EXPECT_EQ(allocations, before) << static_cast<int>(lanes);
        EXPECT_TRUE(done);
    }
    const long before = allocations;
    const std::vector<double> one(1);
    EXPECT_EQ(allocations, before + 1);  // the count does count
}

TEST(CrankMany, EveryProcessorHasTwo) {
    EXPECT_TRUE(available(Lanes::widest));
    EXPECT_TRUE(available(Lanes::one));
    EXPECT_TRUE(available(Lanes::two));
}

TEST(CrankMany, NothingToDo) {
    const auto none = crank_many({}).value();
    EXPECT_TRUE(none.puffs_gauge_pa.empty());
}

TEST(CrankMany, SaysWhichCaseIsImpossible) {
    auto cases = drawn(6);
    cases[4].compression_ratio = std::numeric_limits<double>::quiet_NaN();
    const auto refused = crank_many(cases);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, "cranking.ratio");
    EXPECT_EQ(refused.error().english.substr(0, 7), "Case 5:");
    cases = drawn(3);
    cases[2].strokes = 5;
    EXPECT_EQ(crank_many(cases).error().code, "cranking.many");
    cases = drawn(3);
    std::vector<double> small(23);
    EXPECT_EQ(crank_many_into(cases, small).error().code, "cranking.many");
    EXPECT_EQ(crank_many(cases, {5.0}).error().code, "cranking.accuracy");
}

TEST(CrankMany, ACaseThatDoesNotEndIsNamed) {
    auto cases = drawn(5);
    cases[1].leak_m2 = 200e-6;  // a hole like an open door at ten turns a minute
    cases[1].speed_rad_s = 10 * per_minute;
    cases[1].crank = {0.005, 0.005, 0.010};
    cases[1].tester = {};
    cases[1].oil_m3 = 0.0;
    const auto alone = crank(cases[1]);
    const auto many = crank_many(cases);
    ASSERT_EQ(alone.has_value(), many.has_value());
    if (!many) EXPECT_EQ(many.error().english.substr(0, 7), "Case 2:");
}

}  // namespace
}  // namespace lapwing::physics

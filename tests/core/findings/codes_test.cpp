// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/findings/codes.h"

#include <rapidcheck.h>

#include "tests/core/findings/bench.h"
#include "tests/core/findings/letters.h"

namespace lapwing::findings {
namespace {

void expect_listed(const Message& message) {
    expect_listed_in(codes::all, message);
}

void expect_listed(const Derivation& from) {
    expect_listed(from.source);
    for (const Message& note : from.notes)
        expect_listed(note);
}

void expect_listed(const std::vector<Remark>& remarks) {
    for (const Remark& remark : remarks) {
        expect_listed(remark.message);
        for (const Derivation& from : remark.from)
            expect_listed(from);
    }
}

void expect_listed(const Findings& found) {
    expect_listed(found.headline);
    expect_listed(found.limits.basis.message);
    for (const auto& verdict : found.spread)
        expect_listed(std::vector{verdict.remark});
    expect_listed(found.questions);
    expect_listed(found.contradictions);
    expect_listed(found.weakened_by);
    for (const Crankcase& one : found.crankcases)
        expect_listed(std::vector{one.remark});
    for (const NextStep& step : found.next)
        expect_listed(step.reason);
    for (const CylinderFindings& cylinder : found.cylinders) {
        expect_listed(cylinder.headline);
        expect_listed(cylinder.rules_of_thumb);
        expect_listed(cylinder.contradictions);
        expect_listed(cylinder.questions);
        expect_listed(cylinder.clearances.remarks);
        if (cylinder.dry) expect_listed(cylinder.dry->why);
        if (cylinder.leak_down) {
            expect_listed(cylinder.leak_down->why);
            expect_listed(cylinder.leak_down->leakage.from);
            for (const OnTester& tester : cylinder.leak_down->on_testers)
                expect_listed(tester.orifice.from);
        }
    }
}

template <class Enum>
Enum any_of() {
    return static_cast<Enum>(*rc::gen::inRange<int>(0, static_cast<int>(Words<Enum>::list.size())));
}

std::string digits(int low, int high) {
    return std::to_string(*rc::gen::inRange(low, high));
}

Bench any_bench() {
    const int cylinders = *rc::gen::inRange(1, 7);
    Bench bench(cylinders, any_of<StrokeCycle>());
    bench.engine().fuel = any_of<Fuel>();
    bench.engine().decompressor = any_of<Decompressor>();
    bench.engine().valves.adjuster = any_of<Adjuster>();
    if (*rc::gen::arbitrary<bool>()) bench.wanted_clearances();
    if (*rc::gen::arbitrary<bool>()) bench.engine().limits.lowest = Bench::pressure(digits(1, 200), "psi");
    if (*rc::gen::arbitrary<bool>()) bench.engine().limits.high = Bench::pressure(digits(1, 200), "psi");
    if (*rc::gen::arbitrary<bool>()) bench.engine().limits.difference = Bench::pressure(digits(1, 40), "psi");
    if (*rc::gen::arbitrary<bool>()) bench.session().conditions.station_pressure.reset();
    if (*rc::gen::arbitrary<bool>())
        bench.tester(TesterKind::leak_down, "100", "psi", *rc::gen::arbitrary<bool>() ? "1.6" : "");
    const int entries = *rc::gen::inRange(0, 24);
    for (int i = 0; i < entries; ++i) {
        const int cylinder = *rc::gen::inRange(1, cylinders + 1);
        switch (*rc::gen::inRange(0, 5)) {
            case 0: {
                Reading& reading = bench.dry(cylinder, digits(0, 250));
                if (*rc::gen::arbitrary<bool>()) reading.first = Bench::pressure(digits(0, 250), "psi");
                break;
            }
            case 1:
                bench.wet(cylinder, digits(0, 250));
                break;
            case 2:
                bench.leak(cylinder, digits(0, 110), digits(0, 110)).tag = any_of<Tag>();
                break;
            case 3:
                bench.hear(cylinder, any_of<Exit>(), any_of<Loudness>(), 1);
                break;
            default:
                bench.clearance(cylinder, any_of<ValveSide>(), "0." + digits(0, 30));
        }
    }
    return bench;
}

TEST(Codes, EverythingSaidOfAnyVisitIsListedWithItsArguments) {
    EXPECT_TRUE(rc::check([] {
        Bench bench = any_bench();
        const Findings found = bench.find();
        expect_listed(found);
        RC_ASSERT(!found.next.empty());
        RC_ASSERT(found.cylinders.size() == bench.engine().cylinders.size());
    }));
}

TEST(Codes, TheSameVisitIsFoundTheSameTwice) {
    EXPECT_TRUE(rc::check([] {
        Bench bench = any_bench();
        const Findings one = bench.find();
        const Findings two = bench.find();
        RC_ASSERT(one.headline == two.headline);
        RC_ASSERT(one.state == two.state);
        RC_ASSERT(one.next.size() == two.next.size());
        for (std::size_t i = 0; i < one.cylinders.size(); ++i)
            RC_ASSERT(one.cylinders[i].headline == two.cylinders[i].headline);
    }));
}

TEST(Codes, WhateverIsTypedIsJudgedAndListed) {
    EXPECT_TRUE(rc::check([] {
        Bench bench = any_bench();
        PadEntry entry;
        entry.test = any_of<TestKind>();
        entry.cylinder = 1;
        for (auto* field : {&entry.first, &entry.final, &entry.set, &entry.held})
            if (*rc::gen::arbitrary<bool>()) *field = Bench::pressure(digits(-5, 300), "psi");
        expect_listed(bench.judge(entry).questions);
    }));
}

}  // namespace
}  // namespace lapwing::findings

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// A limit that a reading can't be told from: because it lies close, or because the doubt is wide.

#include "tests/core/findings/bench.h"

namespace lapwing::findings {
namespace {

const Message* said(const std::vector<Remark>& remarks, std::string_view code) {
    const auto at = std::ranges::find(remarks, code, [](const Remark& one) { return one.message.code; });
    return at == remarks.end() ? nullptr : &at->message;
}

std::string word_at(const Message* message, std::size_t at) {
    return message ? std::get<Word>(message->args.at(at)).code : std::string();
}

/// A cylinder that must read 8 bar, on a gauge of that class.
Bench limited(const std::string& digits, const std::string& en_class) {
    Bench bench(1);
    bench.tester(TesterKind::compression_gauge, "16", "bar", en_class);
    bench.engine().limits.lowest = Bench::pressure("8.0", "bar");
    bench.dry(1, digits, "bar");
    return bench;
}

TEST(ToldApart, CloseToTheLimitIsBorderlineAndSaid) {
    Bench bench = limited("8.1", "2.5");
    const Findings found = bench.find();
    EXPECT_EQ(found.cylinder(1)->dry->state, State::borderline);
    EXPECT_TRUE(said(found.cylinder(1)->dry->why, "why.close_to_lowest"));
    bench.dry(1, "11.0", "bar").tag = Tag::after_running;
    EXPECT_EQ(bench.find().cylinder(1)->dry->state, State::good);
}

// EN 837-1: class 4 of 16 bar is out by up to 0.64 bar, and nobody would call 0.4 bar close that a class 1
// gauge, 0.16 bar, tells apart.
TEST(ToldApart, AWideDoubtIsNotCalledCloseAndSaysWhatMakesItSmaller) {
    const Findings coarse = limited("8.4", "4").find();
    const auto& why = coarse.cylinder(1)->dry->why;
    EXPECT_EQ(coarse.cylinder(1)->dry->state, State::borderline);
    EXPECT_FALSE(said(why, "why.close_to_lowest"));
    const auto* unsure = said(why, "why.unsure_of_lowest");
    ASSERT_TRUE(unsure);
    EXPECT_EQ(word_at(unsure, 3), "narrow:gauge");
    EXPECT_GT(std::get<Figure>(unsure->args.at(2)).si, 0.4e5);
}

TEST(ToldApart, WhereRepeatsScatterTheyAreAskedFor) {
    Bench bench(1);
    bench.tester(TesterKind::compression_gauge, "10", "bar", "0.25");
    bench.engine().limits.lowest = Bench::pressure("8.0", "bar");
    for (const char* digits : {"7.2", "9.4", "8.8"})
        bench.dry(1, digits, "bar");
    const Findings found = bench.find();
    EXPECT_EQ(word_at(said(found.cylinder(1)->dry->why, "why.unsure_of_lowest"), 3), "narrow:repeat");
}

TEST(ToldApart, LeakagesLikewise) {
    const auto why = [](const char* held, const char* en_class, const char* scale) {
        Bench bench(1);
        Tester& tester = bench.tester(TesterKind::leak_down, scale, "psi", en_class);
        tester.restrictor = Bench::mm("1.016");
        bench.engine().limits.most_leakage = *TypedRatio::make("10", units::percent);
        bench.leak(1, "80", held);
        return bench.find().cylinder(1)->leak_down->why;
    };
    // 72 of 80 psi are 10 %.
    EXPECT_TRUE(said(why("71.5", "1.6", "100"), "why.leak_close"));
    const auto wide = why("68", "4", "200");
    EXPECT_FALSE(said(wide, "why.leak_close"));
    EXPECT_EQ(word_at(said(wide, "why.leak_unsure"), 3), "narrow:gauge");
}

TEST(ToldApart, ACrankcaseLikewise) {
    const auto code = [](const char* end) {
        Bench bench(1, StrokeCycle::two);
        bench.engine().crankcase.set = Bench::pressure("0.6", "bar");
        bench.engine().crankcase.end_at_least = Bench::pressure("0.5", "bar");
        Reading& reading = bench.add(TestKind::crankcase, 0);
        reading.set = Bench::pressure("0.6", "bar");
        reading.held = Bench::pressure(end, "bar");
        return bench.find().crankcases.front().remark.message.code;
    };
    EXPECT_EQ(code("0.505"), "crankcase.close");
    EXPECT_EQ(code("0.52"), "crankcase.unsure");
}

}  // namespace
}  // namespace lapwing::findings

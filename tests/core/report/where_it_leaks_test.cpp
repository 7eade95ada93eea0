// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <gtest/gtest.h>

#include <algorithm>

#include "core/odds/data_files.h"
#include "core/odds/verdict.h"
#include "tests/core/report/sample.h"

namespace lapwing::report {
namespace {

using findings::Path;
using findings::say;
using sample::blocks;
using sample::section;

Report report_with(const odds::WhereItLeaks* leaks) {
    const auto shop = sample::orchard();
    const auto reference = findings::built_in_reference().value();
    const Visit& visit = shop.dossier.visits.back();
    Options options;
    options.appendix = true;
    options.leaks = leaks;
    return make_report(shop.dossier, visit, findings::find(shop.dossier, visit, reference), reference,
                       options);
}

TEST(ReportOdds, StandFirstOfTheEvidenceAndOnlyWhereTheyAreKnown) {
    EXPECT_EQ(section(report_with(nullptr), Label::where_it_leaks), nullptr);
    const auto leaks = sample::odds_of_orchard();
    const Report report = report_with(&leaks);
    EXPECT_FALSE(report_with(nullptr).basis.odds);
    EXPECT_EQ(report.basis.odds, (Basis::Odds{leaks.assumptions_version, leaks.seed}));
    std::vector<Label> headings;
    for (const Section& one : report.sections)
        headings.push_back(one.heading);
    // What an owner asks comes first: what was found, what to do, what it costs, what to beware of.
    const auto at = std::ranges::find(headings, Label::where_it_leaks);
    ASSERT_NE(at, headings.end());
    for (Label before : {Label::in_short, Label::plan, Label::cautions})
        EXPECT_LT(std::ranges::find(headings, before), at);
    EXPECT_LT(at, std::ranges::find(headings, Label::readings));
}

TEST(ReportOdds, DrawTheSharesLargestFirstAndNameTheSmallOnes) {
    const auto leaks = sample::odds_of_orchard();
    const Report report = report_with(&leaks);
    const auto shares = blocks<Shares>(*section(report, Label::where_it_leaks));
    ASSERT_EQ(shares.size(), 1u);  // a cylinder that seals well has a sentence only
    EXPECT_EQ(shares[0]->cylinder, 1);
    ASSERT_EQ(shares[0]->shares.size(), 2u);
    EXPECT_EQ(shares[0]->shares[0].path, Path::exhaust);
    EXPECT_DOUBLE_EQ(shares[0]->shares[0].low, 0.7);
    EXPECT_EQ(shares[0]->under_one_percent, std::vector{Path::gasket});
}

TEST(ReportOdds, SayTheirSentenceAndWhatTheyRestOn) {
    const auto leaks = sample::odds_of_orchard();
    const Report report = report_with(&leaks);
    const Section& odds = *section(report, Label::where_it_leaks);
    std::vector<std::string> said;
    for (const auto* sentences : blocks<Sentences>(odds))
        for (const Sentence& sentence : sentences->sentences)
            if (const auto* message = std::get_if<findings::Message>(&sentence.text))
                said.push_back(message->code);
    for (const char* code : {"odds.main_clearance", "odds.seals", "odds.working_assumptions"})
        EXPECT_NE(std::ranges::find(said, code), said.end()) << code;
    const auto facts = blocks<Facts>(odds);
    // Which assumptions and which seed: without them nobody could work it out again.
    const Facts& versions = *facts.back();
    EXPECT_EQ(std::get<int>(versions.facts[0].value[0]), 7);
    EXPECT_EQ(std::get<OwnWords>(versions.facts[0].value[1]).text, odds::sum_of(odds::built_in_data()));
    EXPECT_EQ(std::get<OwnWords>(versions.facts[1].value[0]).text, "3");
    // The exhaust valve's repair only: the rings are not at fault.
    ASSERT_EQ(facts[0]->facts.size(), 1u);
    EXPECT_DOUBLE_EQ(std::get<Range>(facts[0]->facts[0].value[1]).high.si, 10.2e5);
}

/// An owner meets one figure of a leak, its reading: odds and shares, which don't agree with each other, are
/// the mentor's.
TEST(ReportOdds, SpeakInWordsToTheOwner) {
    const auto leaks = sample::odds_of_orchard();
    const auto shop = sample::orchard();
    const auto reference = findings::built_in_reference().value();
    const Visit& visit = shop.dossier.visits.back();
    Options options;
    options.leaks = &leaks;
    const Report report =
        make_report(shop.dossier, visit, findings::find(shop.dossier, visit, reference), reference, options);
    const Section& odds = *section(report, Label::where_it_leaks);
    EXPECT_TRUE(blocks<Shares>(odds).empty());
    std::vector<std::string> said;
    for (const auto* sentences : blocks<Sentences>(odds))
        for (const Sentence& sentence : sentences->sentences)
            if (const auto* message = std::get_if<findings::Message>(&sentence.text)) {
                said.push_back(message->code);
                for (const auto& arg : message->args)
                    EXPECT_FALSE(std::holds_alternative<findings::Figure>(arg)) << message->code;
            }
    for (const char* code : {"odds.likely_main_clearance", "odds.likely_seals"})
        EXPECT_NE(std::ranges::find(said, code), said.end()) << code;
}

/// Four cylinders with a dry reading each; `sealing` are the chances that each seals well, else its rings
/// leak. `held_back`: why there is no verdict.
Section owners(const std::vector<std::string>& dry, const std::vector<double>& sealing,
               const char* held_back = nullptr) {
    sample::Shop shop(static_cast<int>(dry.size()));
    shop.shelve_testers();
    Visit& visit = shop.visit("2026-03-14", "");
    std::vector<odds::CylinderOdds> all;
    for (std::size_t i = 0; i < dry.size(); ++i) {
        const int number = static_cast<int>(i) + 1;
        shop.dry(visit, number, dry[i]);
        odds::CylinderOdds one;
        one.number = number;
        one.measured = true;
        one.seals_well = sealing[i];
        one.paths = {{Path::rings, {1.0, 1.0, 1.0}, 1.0 - sealing[i], 1.0 - sealing[i]}};
        one.leak_area_m2.mean = 1e-6 * number;
        if (sealing[i] < 0.5) one.main = Path::rings;
        one.main_chance = std::max(sealing[i], 1.0 - sealing[i]);
        one.unsure = held_back;
        if (held_back) one.reasons = {say(held_back, number)};
        all.push_back(one);
    }
    const auto leaks = sample::odds_with(std::move(all));
    Options options;
    options.leaks = &leaks;
    return *section(shop.report(options), Label::where_it_leaks);
}

std::vector<findings::Message> said_in(const Section& section) {
    std::vector<findings::Message> out;
    for (const auto* sentences : blocks<Sentences>(section))
        for (const Sentence& sentence : sentences->sentences)
            if (const auto* message = std::get_if<findings::Message>(&sentence.text)) out.push_back(*message);
    return out;
}

/// 11.4 and 11.6 bar on a gauge of 16 bar, class 1.6: +-0.26 bar by its class alone (EN 837-1: per cent of
/// span).
TEST(ReportOdds, DoNotTellApartWhatTheGaugeCannot) {
    const auto said = said_in(owners({"11.6", "11.4", "11.7", "11.5"}, {0.9, 0.6, 0.8, 0.55}));
    ASSERT_EQ(said.size(), 1u);
    // As sure as the least sure one: 55 % is about as likely as not (assumptions.json: likely-more 60 %).
    EXPECT_EQ(said[0],
              say("odds.likely_sound", findings::CylinderList{1, 2, 3, 4}, findings::Word{"likely:even"}));
    // What reads lower for sure is told apart.
    const auto lower = said_in(owners({"11.6", "9.0", "11.7", "11.5"}, {0.9, 0.6, 0.9, 0.9}));
    ASSERT_EQ(lower.size(), 2u);
    EXPECT_EQ(lower[0], say("odds.leaks_or_sound", 2, findings::word_of(Path::rings)));
    EXPECT_EQ(lower[1],
              say("odds.likely_sound", findings::CylinderList{1, 3, 4}, findings::Word{"likely:very"}));
}

TEST(ReportOdds, SayTheSameOfSeveralCylindersOnceTheLeakingOnesFirst) {
    const auto said = said_in(owners({"11.6", "6.4", "11.7", "6.6"}, {0.95, 0.02, 0.95, 0.03}));
    ASSERT_EQ(said.size(), 2u);
    EXPECT_EQ(said[0], say("odds.likely_main_several", findings::CylinderList{2, 4},
                           findings::word_of(Path::rings), findings::Word{"likely:very"}));
    EXPECT_EQ(said[1].code, "odds.likely_sound");
    // The larger leak first where the words differ: cylinder 4's is (its area above).
    const auto apart = said_in(owners({"11.6", "7.4", "11.7", "6.6"}, {0.95, 0.2, 0.95, 0.03}));
    ASSERT_EQ(apart.size(), 3u);
    EXPECT_EQ(std::get<int>(apart[0].args[0]), 4);
    EXPECT_EQ(std::get<int>(apart[1].args[0]), 2);
}

TEST(ReportOdds, SayOnceWhyTheyAreHeldBackForAllCylinders) {
    for (const auto& [why, of_all] : {std::pair{"odds.low_everywhere", "odds.low_everywhere_several"},
                                      std::pair{"odds.alike_only", "odds.alike_only_several"}}) {
        const auto said = said_in(owners({"6.4", "6.5", "6.4", "6.6"}, {0.1, 0.1, 0.1, 0.1}, why));
        ASSERT_EQ(said.size(), 1u);
        EXPECT_EQ(said[0], say(of_all, findings::CylinderList{1, 2, 3, 4}));
    }
}

TEST(ReportOdds, WithoutAVerdictThereIsNoBar) {
    auto leaks = sample::odds_of_orchard();
    leaks.cylinders[0].unsure = true;
    leaks.cylinders[0].contradictions.push_back(
        say("odds.does_not_fit", 1, findings::word_of(TestKind::wet)));
    const Report report = report_with(&leaks);
    EXPECT_TRUE(blocks<Shares>(*section(report, Label::where_it_leaks)).empty());
}

/// The reading that page two expects stands in the plan on page one too, where the line itself has none.
TEST(ReportPlan, ExpectsWhatTheOddsExpect) {
    const auto leaks = sample::odds_of_orchard();
    auto shop = sample::orchard();
    Visit& visit = shop.dossier.visits.back();
    visit.plan.resize(1);
    visit.plan[0].option = PlanOption::strip;
    visit.plan[0].cylinder = 1;
    visit.plan[0].done_at.reset();
    visit.plan[0].predicted_low.reset();
    visit.plan[0].predicted_high.reset();
    const auto reference = findings::built_in_reference().value();
    const auto found = findings::find(shop.dossier, visit, reference);
    const auto expected = [&](const odds::WhereItLeaks* odds) -> std::optional<Range> {
        Options options;
        options.leaks = odds;
        const Report report = make_report(shop.dossier, visit, found, reference, options);
        const Table& table = *blocks<Table>(*section(report, Label::plan)).at(0);
        for (std::size_t i = 0; i < table.columns.size(); ++i)
            if (std::get<Label>(table.columns[i].head.front()) == Label::expected)
                return std::get<Range>(table.rows[0][i].lines[0][0]);
        return std::nullopt;
    };
    ASSERT_TRUE(expected(&leaks));
    EXPECT_DOUBLE_EQ(expected(&leaks)->high.si, 10.2e5);  // as sample.h has it
    EXPECT_FALSE(expected(nullptr));                      // and no column of dashes
}

TEST(ReportPlan, ComesToWhatItsLinesCost) {
    auto shop = sample::orchard();
    Visit& visit = shop.dossier.visits.back();
    PlanLine quick = visit.plan.front();
    quick.option = PlanOption::quick_fix;
    quick.price = Money{"30.50", "EUR"};
    quick.labour = *TypedTime::make("30", units::minute);
    visit.plan.push_back(quick);
    const auto reference = findings::built_in_reference().value();
    const Report report =
        make_report(shop.dossier, visit, findings::find(shop.dossier, visit, reference), reference, {});
    const Facts& facts = *blocks<Facts>(*section(report, Label::plan)).at(0);
    const auto fact = [&](Label name) -> const Line& {
        const auto found = std::ranges::find_if(
            facts.facts, [&](const Fact& one) { return std::get<Label>(one.name) == name; });
        if (found == facts.facts.end()) throw std::runtime_error("no such fact");
        return found->value;
    };
    // 420 + 30.50 and 6 h + 0.5 h, by hand.
    EXPECT_EQ(std::get<OwnWords>(fact(Label::comes_to)[0]).text, "450.50 EUR");
    EXPECT_EQ(std::get<TypedTime>(fact(Label::comes_to)[1]).text(), "6.50 h");
    EXPECT_EQ(std::get<OwnWords>(fact(Label::strip)[0]).text, "420 EUR");
    EXPECT_EQ(std::get<OwnWords>(fact(Label::quick_fixes)[0]).text, "30.50 EUR");
}

}  // namespace
}  // namespace lapwing::report

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/knowhow/knowhow.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

namespace lapwing::knowhow {
namespace {

const findings::Reference& reference() {
    static const findings::Reference read = findings::built_in_reference().value();
    return read;
}

const Knowhow& knowhow() {
    static const Knowhow read = built_in_knowhow(reference()).value();
    return read;
}

std::vector<const Card*> cards() {
    std::vector<const Card*> out;
    for (const Group& group : knowhow().groups)
        for (const Card& card : group.cards)
            out.push_back(&card);
    return out;
}

TEST(Knowhow, BuiltInFilesRead) {
    const auto read = built_in_knowhow(reference());
    ASSERT_TRUE(read.has_value()) << read.error().english;
}

// The steps of the job as the app's pages have them, and what is special beside them.
TEST(Knowhow, EveryStepOfTheJobHasItsCard) {
    for (const char* id :
         {"complaint", "prepare",      "clearances", "cranking", "dry",       "tdc",          "leak-down",
          "listening", "staking",      "wet",        "findings", "decide",    "after-repair", "hand-over",
          "crankcase", "decompressor", "diesel",     "testers",  "signature", "uncertainty"})
        EXPECT_NE(knowhow().card(id), nullptr) << id;
    EXPECT_EQ(knowhow().card("no such card"), nullptr);
}

TEST(Knowhow, TheCardsAreReadInOneOrder) {
    const auto all = cards();
    for (std::size_t i = 0; i + 1 < all.size(); ++i)
        EXPECT_EQ(knowhow().after(all[i]->id), all[i + 1]);
    EXPECT_EQ(knowhow().after(all.back()->id), nullptr);
    EXPECT_EQ(knowhow().after("no such card"), nullptr);
}

// Oil stays on the rings, and a valve without clearance looks burnt: the order of the tests is part of the
// job.
TEST(Knowhow, ClearancesComeFirstAndOilLast) {
    const auto all = cards();
    const auto place = [&](std::string_view id) {
        return std::ranges::find(all, id, [](const Card* card) { return card->id; }) - all.begin();
    };
    EXPECT_LT(place("clearances"), place("dry"));
    EXPECT_LT(place("tdc"), place("leak-down"));
    EXPECT_LT(place("leak-down"), place("wet"));
    EXPECT_LT(place("listening"), place("wet"));
}

// The order of the job: nothing is decided before the findings, nothing repaired before it is decided.
TEST(Knowhow, TheJobBeginsWithTheComplaintAndEndsWithHandingOver) {
    const auto& job = knowhow().groups.front().cards;
    const auto place = [&](std::string_view id) {
        return std::ranges::find(job, id, &Card::id) - job.begin();
    };
    EXPECT_EQ(job.front().id, "complaint");
    EXPECT_LT(place("findings"), place("decide"));
    EXPECT_LT(place("decide"), place("after-repair"));
    EXPECT_EQ(job.back().id, "hand-over");
}

TEST(Knowhow, EveryCardSaysWhyHowAndWhatGoesWrong) {
    for (const Card* card : cards()) {
        EXPECT_FALSE(card->brief.empty()) << card->id;
        EXPECT_FALSE(card->why.empty()) << card->id;
        EXPECT_GE(card->how.size(), 3U) << card->id;
        EXPECT_FALSE(card->slips.empty()) << card->id;
        EXPECT_FALSE(card->sources.empty()) << card->id;
        for (const Source& source : card->sources)
            EXPECT_EQ(source.kind == findings::BasisKind::published, !source.name.empty())
                << card->id << ": " << source.what;
    }
}

TEST(Knowhow, TheUsualSlipsAreNamedWhereTheyHappen) {
    const auto names = [](const char* card, std::string_view part) {
        const auto& slips = knowhow().card(card)->slips;
        return std::ranges::any_of(
            slips, [&](const Slip& slip) { return slip.slip.find(part) != std::string::npos; });
    };
    EXPECT_TRUE(names("tdc", "Wrong TDC"));
    EXPECT_TRUE(names("leak-down", "Wrong TDC"));
    EXPECT_TRUE(names("listening", "Wrong TDC"));
    EXPECT_TRUE(names("clearances", "No clearance"));
    EXPECT_TRUE(names("findings", "No clearance"));
    EXPECT_TRUE(names("dry", "Decompressor"));
    EXPECT_TRUE(names("cranking", "Leaking adapter ring"));
    EXPECT_TRUE(names("leak-down", "Leaking adapter ring"));
    EXPECT_TRUE(names("dry", "Flat battery"));
    EXPECT_TRUE(names("wet", "Oil pooled in a flat engine"));
    EXPECT_TRUE(names("dry", "Gauge not zeroed"));
    EXPECT_TRUE(names("dry", "Throttle not really open"));
}

TEST(Knowhow, CautionsStandWhereTheDangerIs) {
    const auto warns = [](const char* card, std::string_view caution) {
        const auto& list = knowhow().card(card)->cautions;
        return std::ranges::find(list, caution) != list.end();
    };
    for (const char* card : {"cranking", "dry", "wet"})
        EXPECT_TRUE(warns(card, "cranking")) << card;
    for (const char* card : {"cranking", "diesel"})
        for (const char* caution : {"diesel-lines", "diesel-cranking"})
            EXPECT_TRUE(warns(card, caution)) << card << ": " << caution;
    EXPECT_FALSE(warns("diesel", "cranking")) << "a diesel has no sparks";
    for (const char* card : {"cranking", "dry", "leak-down", "diesel"})
        EXPECT_TRUE(warns(card, "adapter")) << card;
    for (const char* card : {"tdc", "leak-down", "listening", "staking"})
        EXPECT_TRUE(warns(card, "air")) << card;
    for (const char* card : {"wet", "diesel"})
        EXPECT_TRUE(warns(card, "oil")) << card;
    EXPECT_TRUE(warns("staking", "staking"));
    EXPECT_TRUE(warns("staking", "aircraft"));
    EXPECT_TRUE(warns("listening", "coolant-cap"));
    EXPECT_TRUE(warns("listening", "solvents"));
    EXPECT_TRUE(warns("prepare", "indoors"));
}

/// Every text of a card, for searching.
std::vector<std::string> texts_of(const Card& card) {
    std::vector<std::string> out{card.title, card.brief};
    for (const auto* list : {&card.why, &card.how})
        out.insert(out.end(), list->begin(), list->end());
    for (const Sign& sign : card.signs)
        out.insert(out.end(), {sign.sign, sign.means});
    for (const Slip& slip : card.slips)
        out.insert(out.end(), {slip.slip, slip.then});
    return out;
}

bool says(const std::vector<std::string>& lines, std::string_view part) {
    return std::ranges::any_of(lines,
                               [&](const std::string& line) { return line.find(part) != std::string::npos; });
}

// Common practice, no source: oil in a diesel's small chamber can lock it or fire, and a locked cylinder is
// to be felt by hand before the starter meets it.
TEST(Knowhow, WhereOilIsPutInItSaysNotIntoADieselAndWhatItDoes) {
    const auto& prepare = knowhow().card("prepare")->how;
    EXPECT_TRUE(says(prepare, "oil the bores"));
    for (const std::string& line : prepare)
        if (line.find("oil the bores") != std::string::npos) {
            EXPECT_NE(line.find("Never on a diesel"), std::string::npos) << line;
            EXPECT_NE(line.find("no longer a dry one"), std::string::npos) << line;
        }
    const auto& wet = knowhow().card("wet")->how;
    EXPECT_TRUE(says(wet, "never on a diesel"));
    EXPECT_TRUE(says(wet, "by hand, two turns, before the starter"));
    EXPECT_TRUE(says(knowhow().card("diesel")->why, "no wet test on a diesel"));
}

// FAA AC 43.13-1B change 1, par. 8-14: 20 psi first, flat spot, then up slowly; the crank may turn.
TEST(Knowhow, TheFlatSpotIsFoundBeforeThePressureRisesAndNothingIsTurnedUnderIt) {
    const auto& how = knowhow().card("leak-down")->how;
    const auto line = [&](std::string_view part) {
        return std::ranges::find_if(
            how, [&](const std::string& text) { return text.find(part) != std::string::npos; });
    };
    ASSERT_NE(line("flat spot"), how.end());
    ASSERT_NE(line("Raise the pressure slowly"), how.end());
    EXPECT_LT(line("flat spot"), line("every tool off"));
    EXPECT_LT(line("every tool off"), line("Raise the pressure slowly"));
    EXPECT_NE(line("Never move the crank under the set pressure"), how.end());
    EXPECT_TRUE(says(knowhow().card("tdc")->how, "only where the engine's manual allows turning back"));
}

TEST(Knowhow, TheTextsOfCautionsAreNotWrittenTwice) {
    for (const Card* card : cards())
        for (const std::string& text : texts_of(*card))
            for (const findings::Caution& caution : reference().cautions)
                EXPECT_EQ(text.find(caution.text), std::string::npos) << card->id << ": " << text;
}

TEST(Knowhow, PlainWordsOnly) {
    // "Tight" is said of clearances only; a cylinder seals well.
    for (const Card* card : cards())
        for (const std::string& text : texts_of(*card))
            if (card->id != "clearances") {
                EXPECT_EQ(text.find("tight"), std::string::npos) << card->id << ": " << text;
                EXPECT_EQ(text.find("Tight"), std::string::npos) << card->id << ": " << text;
            }
}

TEST(Knowhow, EveryCardHasAPicture) {
    for (const Card* card : cards())
        EXPECT_FALSE(card->pictures.empty()) << card->id;
}

TEST(Knowhow, EveryPictureIsDescribedMarkedAndUsed) {
    std::set<std::string> used;
    for (const Card* card : cards())
        used.insert(card->pictures.begin(), card->pictures.end());
    for (const Picture& picture : knowhow().pictures) {
        EXPECT_TRUE(used.contains(picture.id)) << picture.id;
        EXPECT_GE(picture.description.size(), 80U) << picture.id;
        EXPECT_GE(picture.marks.size(), 2U) << picture.id;
    }
    EXPECT_EQ(used.size(), knowhow().pictures.size());
}

TEST(Knowhow, MalformedFilesAreRefusedWithTheirPlace) {
    const KnowhowTexts good = built_in_texts();
    KnowhowTexts texts = good;
    texts.special = "{";
    const auto broken = read_knowhow(texts, reference());
    ASSERT_FALSE(broken.has_value());
    EXPECT_EQ(broken.error().code, "knowhow.malformed");
    EXPECT_NE(broken.error().english.find("special.json"), std::string::npos);

    struct Change {
        std::string_view KnowhowTexts::*file;
        const char *from, *to, *place;
    };
    for (const Change& change : {
             Change{&KnowhowTexts::job, "\"version\": 1", "\"version\": 2", "version 2"},
             Change{&KnowhowTexts::job, "\"id\": \"clearances\"", "\"id\": \"prepare\"", "there twice"},
             Change{&KnowhowTexts::job, "[\"clearance\", \"tdc\"]", "[\"clearence\"]",
                    "no picture \"clearence\""},
             Change{&KnowhowTexts::job, "[\"cranking\", \"indoors\", \"defers\"]", "[\"sparks\"]",
                    "no caution \"sparks\""},
             Change{&KnowhowTexts::job, "\"kind\": \"published\", \"source\": \"Thermo King manual\"",
                    "\"kind\": \"published\", \"source\": \"\"", "sources[0]"},
             Change{&KnowhowTexts::special, "\"title\": \"Decompressor\"", "\"title\": \"\"",
                    "card \"decompressor\": title is empty"},
             Change{&KnowhowTexts::pictures, "\"look\": \"metal\"", "\"look\": \"wood\"", "look \"wood\""},
             Change{&KnowhowTexts::pictures, "\"width\": 320", "\"width\": 0", "must be positive"},
             Change{&KnowhowTexts::pictures, "\"x\": 42, \"y\": 40", "\"x\": 420, \"y\": 40", "outside"},
         }) {
        std::string text(good.*change.file);
        const auto at = text.find(change.from);
        ASSERT_NE(at, std::string::npos) << change.from;
        text.replace(at, std::string_view(change.from).size(), change.to);
        texts = good;
        texts.*change.file = text;
        const auto refused = read_knowhow(texts, reference());
        ASSERT_FALSE(refused.has_value()) << change.from;
        EXPECT_NE(refused.error().english.find(change.place), std::string::npos) << refused.error().english;
    }
}

}  // namespace
}  // namespace lapwing::knowhow

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// Merging as a join of sets: the three laws over drawn edit histories, and what a person gets from them.

#include "core/record/merge.h"

#include <gmock/gmock.h>
#include <rapidcheck/gtest.h>

#include "tests/core/record/drawn.h"

namespace lapwing {
namespace {

using testing::IsEmpty;
using testing::SizeIs;

constexpr std::int64_t start_ms = 1'770'000'000'000;

Uuid library(int number) {
    return *Uuid::parse(fmt::format("00000000-0000-7000-8000-{:012}", number + 1));
}
Timestamp moment(int number) {
    return {start_ms + number, 60};
}
std::string text_of(const Record& record) {
    return std::get<Note>(record).text;
}
Lineage& lineage(Record& record) {
    return std::visit([](auto& value) -> Lineage& { return value.lineage; }, record);
}

Note first_note() {
    Note note;
    note.id = *NoteId::parse("01890000-0000-7000-8000-00000000000a");
    note.session = *SessionId::parse("01890000-0000-7000-8000-00000000000b");
    note.at = moment(0);
    note.text = "0";
    return note;
}
Record with_text(Record record, std::string text) {
    std::get<Note>(record).text = std::move(text);
    return record;
}

/// A drawn history: several libraries change one record, hand it to each other and settle conflicts, and each
/// state that ever was is kept.
struct History {
    std::vector<Record> states;

    static rc::Gen<History> any() {
        return rc::gen::map(rc::gen::arbitrary<std::uint32_t>(), [](std::uint32_t seed) {
            std::mt19937 random(seed);
            const auto draw = [&](int n) { return std::uniform_int_distribution(0, n - 1)(random); };
            const Record root = first_note();
            constexpr int libraries = 3;
            std::vector<Record> at(libraries, root);
            History out{{root}};
            for (int step = draw(14) + 1; step > 0; --step) {
                auto& here = at[static_cast<std::size_t>(draw(libraries))];
                const int who = static_cast<int>(&here - at.data());
                // Few moments and few words, so that equal changes and equal times happen.
                const auto now = moment(draw(8));
                switch (draw(5)) {
                    case 0:
                    case 1:
                        here = changed(here, with_text(here, std::to_string(draw(4))), library(who), now);
                        break;
                    case 2:
                    case 3:
                        here = *merge(here, at[static_cast<std::size_t>(draw(libraries))]);
                        break;
                    default: {
                        const auto all = versions(here);
                        here = settled(here, static_cast<std::size_t>(draw(static_cast<int>(all.size()))),
                                       library(who), now);
                    }
                }
                out.states.push_back(here);
            }
            // Files of the first version carry no revisions at all: a change made by such a program.
            out.states.push_back(with_text(root, "elsewhere"));
            return out;
        });
    }
    [[nodiscard]] const Record& pick(std::size_t number) const { return states[number % states.size()]; }
};

RC_GTEST_PROP(Merge, IsCommutativeAssociativeAndIdempotent, (std::size_t i, std::size_t j, std::size_t k)) {
    const auto history = *History::any();
    const auto& a = history.pick(i);
    const auto& b = history.pick(j);
    const auto& c = history.pick(k);
    const auto ab = merge(a, b).value();
    RC_ASSERT(merge(b, a).value() == ab);
    RC_ASSERT(merge(ab, c).value() == merge(a, merge(b, c).value()).value());
    RC_ASSERT(merge(a, a).value() == a);
    RC_ASSERT(merge(ab, b).value() == ab);
    RC_ASSERT(merge(ab, a).value() == ab);
    RC_ASSERT(record_from_json(RecordKind::note, to_json(ab)).value() == ab);
}

/// What a library should hold, worked out without revisions: every change is an event, and a version goes
/// when its event is among those that led to another version.
struct Told {
    int event = 0;
    std::set<int> before;
    std::string text;
};
std::vector<Told> told_together(std::vector<Told> all, const std::vector<Told>& more) {
    for (const auto& one : more)
        if (std::ranges::find(all, one.event, &Told::event) == all.end()) all.push_back(one);
    const auto everything = all;
    std::erase_if(all, [&](const Told& one) {
        return std::ranges::any_of(everything,
                                   [&](const Told& other) { return other.before.contains(one.event); });
    });
    return all;
}

RC_GTEST_PROP(Merge, HoldsJustTheVersionsThatNoOtherCameAfter, (std::uint32_t seed)) {
    std::mt19937 random(seed);
    const auto draw = [&](int n) { return static_cast<std::size_t>(random() % static_cast<unsigned>(n)); };
    constexpr int libraries = 3;
    std::vector<Record> at(libraries, first_note());
    std::vector<std::vector<Told>> told(libraries, {Told{0, {}, "0"}});
    for (int event = 1; event < 20; ++event) {
        const auto who = draw(libraries);
        auto& here = at[who];
        auto& here_told = told[who];
        const auto now = moment(static_cast<int>(draw(8)));
        const auto next = [&](const std::set<std::string>& followed, const std::string& text) {
            Told fresh{event, {}, text};
            std::erase_if(here_told, [&](const Told& one) {
                if (!followed.contains(one.text)) return false;
                fresh.before.insert(one.before.begin(), one.before.end());
                fresh.before.insert(one.event);
                return true;
            });
            here_told.push_back(fresh);
        };
        const auto kind = draw(5);
        if (kind < 2) {
            const auto text = std::to_string(draw(4));
            if (text == text_of(here)) continue;
            next({text_of(here)}, text);
            here = changed(here, with_text(here, text), library(static_cast<int>(who)), now);
        } else if (kind < 4) {
            const auto from = draw(libraries);
            here_told = told_together(here_told, told[from]);
            here = *merge(here, at[from]);
        } else {
            std::set<std::string> all;
            for (const auto& one : here_told)
                all.insert(one.text);
            const auto list = versions(here);
            const auto chosen = draw(static_cast<int>(list.size()));
            next(all, text_of(list[chosen]));
            here = settled(here, chosen, library(static_cast<int>(who)), now);
        }
        std::set<std::string> expected;
        for (const auto& one : here_told)
            expected.insert(one.text);
        std::set<std::string> found;
        for (const auto& version : versions(here))
            found.insert(text_of(version));
        RC_ASSERT(found == expected);
    }
}

RC_GTEST_PROP(Merge, OfDossiersObeysTheSameLaws, (std::uint16_t seed)) {
    test::Drawn drawn(seed % 500U);
    auto root = drawn.dossier();
    // Three sides take some of the visits each, drop some records and change others.
    const auto side = [&](int who) {
        auto records = records_of(root);
        std::vector<Record> kept;
        std::set<Uuid> gone;
        for (auto& record : records) {
            const bool session = kind_of(record) == RecordKind::session;
            if (gone.contains(parent_of(record)) ||
                (kind_of(record) != RecordKind::engine && drawn.number(0, 3) == 0)) {
                if (session) gone.insert(id_of(record));
                continue;
            }
            Record after = record;
            if (auto* note = std::get_if<Note>(&after)) note->text += drawn.coin() ? "x" : "";
            if (auto* engine = std::get_if<Engine>(&after)) engine->description += drawn.coin() ? "y" : "";
            if (auto* reading = std::get_if<Reading>(&after)) reading->note += drawn.coin() ? "z" : "";
            kept.push_back(changed(record, after, library(who), moment(drawn.number(0, 3))));
        }
        return dossier_of(std::move(kept)).value();
    };
    const auto a = side(0);
    const auto b = side(1);
    const auto c = side(2);
    const auto ab = merge(a, b).value();
    RC_ASSERT(ab == merge(b, a).value());
    RC_ASSERT(merge(ab, c).value() == merge(a, merge(b, c).value()).value());
    RC_ASSERT(merge(ab, b).value() == ab);
    RC_ASSERT(merge(a, a).value() == a);
    RC_ASSERT(dossier_from_json(to_json(ab)).value() == ab);
}

TEST(Merge, TakesTheLaterOfTwoVersionsOnOneLine) {
    const Record first = first_note();
    const auto second = changed(first, with_text(first, "1"), library(0), moment(1));
    const auto third = changed(second, with_text(second, "2"), library(1), moment(2));
    for (const auto& older : {first, second}) {
        const auto both = merge(older, third).value();
        EXPECT_EQ(both, third);
        EXPECT_FALSE(in_conflict(both));
    }
}

TEST(Merge, KeepsBothWhenBothSidesChanged) {
    const Record first = first_note();
    const auto mine = changed(first, with_text(first, "mine"), library(0), moment(1));
    const auto theirs = changed(first, with_text(first, "theirs"), library(1), moment(2));
    const auto both = merge(mine, theirs).value();
    ASSERT_TRUE(in_conflict(both));
    EXPECT_EQ(text_of(both), "theirs");  // changed last
    ASSERT_THAT(versions(both), SizeIs(2));
    EXPECT_EQ(text_of(versions(both)[1]), "mine");

    const auto chosen = settled(both, 1, library(0), moment(3));
    EXPECT_EQ(text_of(chosen), "mine");
    EXPECT_FALSE(in_conflict(chosen));
    for (const auto& old : {mine, theirs, both})
        EXPECT_EQ(merge(old, chosen).value(), chosen);  // the choice reaches the other side
}

TEST(Merge, TheSameChangeOnBothSidesIsNoConflict) {
    const Record first = first_note();
    const auto mine = changed(first, with_text(first, "same"), library(0), moment(1));
    const auto theirs = changed(first, with_text(first, "same"), library(1), moment(1));
    const auto both = merge(mine, theirs).value();
    EXPECT_FALSE(in_conflict(both));
    EXPECT_EQ(text_of(both), "same");
    const auto next = changed(both, with_text(both, "next"), library(0), moment(2));
    EXPECT_EQ(merge(next, theirs).value(), next);  // and both count as what came before
    EXPECT_FALSE(in_conflict(next));
}

TEST(Merge, VersionsWithoutAnyRevisionThatDifferAreAConflict) {
    const Record first = first_note();
    EXPECT_TRUE(in_conflict(merge(first, with_text(first, "other")).value()));
    // One that was changed here came after the one that never was.
    const auto here = changed(first, with_text(first, "here"), library(0), moment(1));
    EXPECT_FALSE(in_conflict(merge(first, here).value()));
}

TEST(Merge, AClockSetBackDoesNotMakeAChangeOlder) {
    const Record first = first_note();
    const auto second = changed(first, with_text(first, "1"), library(0), moment(100));
    const auto third = changed(second, with_text(second, "2"), library(0), moment(1));
    EXPECT_EQ(merge(second, third).value(), third);
}

TEST(Merge, UnchangedContentsStayTheSameVersion) {
    const Record first = first_note();
    EXPECT_EQ(changed(first, first, library(0), moment(1)), first);
}

TEST(Merge, RefusesRecordsThatMovedOrAreOthers) {
    const Record first = first_note();
    auto moved = first_note();
    moved.session = *SessionId::parse("01890000-0000-7000-8000-0000000000ff");
    EXPECT_EQ(merge(first, moved).error().code, "merge.moved");
    Reading reading;
    reading.id.uuid = id_of(first);
    EXPECT_EQ(merge(first, reading).error().code, "merge.other_record");
    test::Drawn drawn(3);
    EXPECT_EQ(merge(drawn.dossier(), drawn.dossier()).error().code, "merge.other_engine");
}

TEST(Merge, KeepsABoundedNumberOfVersions) {
    Record all = first_note();
    Result<Record> merged = all;
    for (int i = 1; merged && i < 200; ++i) {
        all = *merged;
        merged = merge(all, with_text(first_note(), std::to_string(i)));
    }
    ASSERT_FALSE(merged);
    EXPECT_EQ(merged.error().code, "merge.too_many_versions");
    EXPECT_THAT(versions(all), SizeIs(most_other_versions + 1));
    EXPECT_TRUE(record_from_json(RecordKind::note, to_json(all)));
}

TEST(Merge, AnEngineThatComesWithoutItsOwnerKeepsTheOneKnownHere) {
    test::Drawn drawn(5);
    auto engine = drawn.dossier().engine;
    engine.lineage = {};
    engine.owner = {"Mill Lane Engine Club", "the white gate"};
    auto incoming = without_owner(engine);
    EXPECT_EQ(merge(engine, with_owner_of(incoming, engine)).value(), Record(engine));
    incoming.description = "corrected elsewhere";
    const auto later = changed(without_owner(engine), incoming, library(1), moment(1));
    const auto both = merge(engine, with_owner_of(later, engine)).value();
    EXPECT_EQ(std::get<Engine>(both).owner, engine.owner);
    EXPECT_EQ(std::get<Engine>(both).description, "corrected elsewhere");
    EXPECT_FALSE(in_conflict(both));
}

TEST(Merge, OtherVersionsLeaveTheOwnerAtHomeToo) {
    test::Drawn drawn(5);
    auto engine = drawn.dossier().engine;
    engine.lineage = {};
    engine.owner = {"Mill Lane Engine Club", "the white gate"};
    auto other = engine;
    other.description += "!";
    const auto both = std::get<Engine>(merge(engine, other).value());
    EXPECT_NE(to_json(Record(both)).find("white gate"), std::string::npos);
    EXPECT_EQ(to_json(Record(without_owner(both))).find("white gate"), std::string::npos);
    EXPECT_TRUE(in_conflict(without_owner(both)));
}

TEST(Lineage, IsReadStrictly) {
    const Record good = merge(first_note(), with_text(first_note(), "other")).value();
    const auto text = to_json(good);
    ASSERT_TRUE(record_from_json(RecordKind::note, text));
    const auto refused = [&](auto&& spoil) {
        Record bad = good;
        spoil(lineage(bad));
        const auto read = record_from_json(RecordKind::note, to_json(bad));
        return read ? std::string("read") : read.error().code;
    };
    EXPECT_EQ(refused([](Lineage& all) { all.other_versions = {"{"}; }), "record.other_version");
    EXPECT_EQ(refused([](Lineage& all) { all.other_versions = {"{}"}; }), "record.other_version");
    EXPECT_EQ(refused([&](Lineage& all) { all.other_versions = {text}; }), "record.other_version");
    auto foreign = first_note();
    foreign.id = *NoteId::parse("01890000-0000-7000-8000-0000000000fe");
    EXPECT_EQ(refused([&](Lineage& all) { all.other_versions = {to_json(Record(foreign))}; }),
              "record.other_version");
    EXPECT_EQ(refused([](Lineage& all) {
                  all.revisions = {{library(2), moment(1)}, {library(1), moment(1)}};
              }),
              "record.impossible");
    EXPECT_EQ(refused([](Lineage& all) {
                  all.revisions = {{library(1), moment(1)}, {library(1), moment(2)}};
              }),
              "record.impossible");
    EXPECT_EQ(refused([](Lineage& all) { all.revisions = {{Uuid{}, moment(1)}}; }), "record.impossible");
    EXPECT_THAT(lineage(const_cast<Record&>(good)).revisions, IsEmpty());
}

}  // namespace
}  // namespace lapwing

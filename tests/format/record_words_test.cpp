// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/format/record_words.h"

#include <gtest/gtest.h>

#include <map>

namespace lapwing::format {
namespace {

using Texts = std::map<std::string, std::pair<std::string, std::string>>;

Texts told(const Record& one, const Record& other, const NameOf& name_of = {}) {
    Texts out;
    for (const auto& field : differences(Formatter(), one, other, name_of))
        out[field.name.toStdString()] = {field.one.toStdString(), field.other.toStdString()};
    return out;
}

TypedPressure bar(const char* digits) {
    return *TypedPressure::make(digits, units::bar);
}

TEST(RecordWords, EveryFieldOfEveryRecordHasAName) {
    EXPECT_TRUE(fields_without_words().isEmpty()) << fields_without_words().join(", ").toStdString();
}

TEST(RecordWords, TwoEqualRecordsDifferInNothing) {
    Reading reading;
    reading.final = bar("7.70");
    EXPECT_TRUE(told(reading, reading).empty());
}

TEST(RecordWords, AReadingsDigitsStandAsTheyWereTyped) {
    Reading here, there;
    here.final = bar("7.7");
    there.final = bar("7.70");
    there.note = "cold";
    EXPECT_EQ(told(here, there), (Texts{{"Final reading", {"7.7 bar", "7.70 bar"}}, {"Note", {"", "cold"}}}));
}

TEST(RecordWords, PartsOfACardAreToldOneByOne) {
    Engine here, there;
    here.limits.lowest = bar("8.0");
    there.limits.lowest = bar("7.5");
    there.limits.origin = Origin::manual;
    there.valves.intake_clearance = Sourced<ClearanceRange>{
        {*TypedLength::make("0.15", units::mm), *TypedLength::make("0.20", units::mm)},
        Origin::manual,
        "p. 7"};
    there.joined_intakes = {{1, 2}, {3, 4}};
    EXPECT_EQ(told(here, there), (Texts{{"Factory limit", {"8.0 bar", "7.5 bar"}},
                                        {"Source of the limits", {"source not noted", "manual"}},
                                        {"Intake clearance", {"", "0.15 mm to 0.20 mm, manual, p. 7"}},
                                        {"Joined intakes", {"", "1, 2; 3, 4"}}}));
}

TEST(RecordWords, ARecordThatAnotherOneNamesIsCalledByItsName) {
    Session here, there;
    there.compression_gauge = TesterId{*Uuid::parse("01956000-0000-7000-8000-000000000001")};
    const auto name_of = [](const Uuid&) { return QStringLiteral("Red gauge"); };
    EXPECT_EQ(told(here, there, name_of), (Texts{{"Compression gauge", {"", "Red gauge"}}}));
    EXPECT_EQ(told(here, there), (Texts{{"Compression gauge", {"", "another record"}}}));
}

TEST(RecordWords, LineageAndIdsAreNotTold) {
    Note here, there;
    there.lineage.revisions.push_back({*Uuid::parse("01956000-0000-7000-8000-000000000002"), {}});
    EXPECT_TRUE(told(here, there).empty());
}

TEST(RecordWords, ATestThatIsAskedForSaysWhatWhereAndWho) {
    Note note;
    note.kind = NoteKind::test_request;
    note.author = "The mentor";
    note.test = TestKind::leak_down;
    note.tie = {.to = TiedTo::cylinder, .record = {}, .cylinder = 2, .finding = {}};
    note.text = "With oil this time";
    const Formatter format;
    EXPECT_EQ(title_of(format, note), "Please test this, by The mentor");
    EXPECT_EQ(gist_of(format, note), "Cylinder 2, leak-down, With oil this time");
}

TEST(RecordWords, ACheckThatIsAskedForSaysWhich) {
    Note note;
    note.kind = NoteKind::test_request;
    note.check = AskedCheck::staking;
    note.tie = {.to = TiedTo::cylinder, .record = {}, .cylinder = 2, .finding = {}};
    EXPECT_EQ(gist_of(Formatter(), note), "Cylinder 2, staking a valve");
}

TEST(RecordWords, ALeakDownReadingSaysWhatItHeldOfWhat) {
    Reading reading;
    reading.test = TestKind::leak_down;
    reading.cylinder = 3;
    reading.set = bar("5.5");
    reading.held = bar("3.0");
    const Formatter format(Choice{}, QLocale(QLocale::German));
    EXPECT_EQ(title_of(format, reading), "Leak-down, cylinder 3");
    EXPECT_EQ(gist_of(format, reading), "held 3,0 bar of 5,5 bar");
}

}  // namespace
}  // namespace lapwing::format

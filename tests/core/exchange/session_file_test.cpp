// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/exchange/session_file.h"

#include <gmock/gmock.h>
#include <rapidcheck/gtest.h>

#include "tests/core/exchange/packed.h"

namespace lapwing::exchange {
namespace {

using namespace lapwing::test;
using ::testing::HasSubstr;

/// Out and in again: the same dossier, the same bytes of every attachment.
void expect_round_trip(const Sample& sample) {
    const Folder folder;
    const auto file = folder / "Orchard V-twin.lapwing";
    const auto written = write_session_file(file, sample.outgoing());
    ASSERT_TRUE(written) << written.error().english;
    const auto incoming = read_session_file(file, folder.path());
    ASSERT_TRUE(incoming) << incoming.error().english;
    EXPECT_EQ(incoming->dossier, sample.dossier);
    std::set<std::string> told;
    for (const auto& visit : sample.dossier.visits)
        for (const auto& one : visit.attachments)
            told.insert(one.sha256);
    EXPECT_EQ(incoming->attachments.size(), told.size());
    for (const auto& one : incoming->attachments)
        EXPECT_EQ(bytes_of(one.file), bytes_of(sample.store / one.sha256));
    EXPECT_EQ(bytes_of(incoming->report.value()), *sample.outgoing().report_pdf);
    EXPECT_TRUE(check_file(file, folder.path()).empty());
}

TEST(SessionFile, ComesBackToTheByte) {
    for (std::uint64_t seed = 1; seed < 400; seed += 20)
        expect_round_trip(Sample(seed));
}

TEST(SessionFile, LeavesNothingBesideTheFileAndNoStaging) {
    const Sample sample;
    const Folder folder;
    ASSERT_TRUE(write_session_file(folder / "a.lapwing", sample.outgoing()));
    EXPECT_EQ(folder.files(), 1u);
    {
        const auto incoming = read_session_file(folder / "a.lapwing", folder.path());
        ASSERT_TRUE(incoming);
        EXPECT_EQ(folder.files(), 2u);
    }
    EXPECT_EQ(folder.files(), 1u);
    check_file(folder / "a.lapwing", folder.path());
    EXPECT_EQ(folder.files(), 1u);
}

// RFC 8493, 2.2.2: other metadata elements than the listed ones may stand in bag-info.txt.
TEST(SessionFile, SaysUnderWhichAssumptionsItsReportWasMade) {
    const Sample sample;
    const Folder folder;
    auto outgoing = sample.outgoing();
    outgoing.assumptions = "12";
    ASSERT_TRUE(write_session_file(folder / "a.lapwing", outgoing));
    EXPECT_THAT(unpacked(folder / "a.lapwing").at("a/bag-info.txt"), HasSubstr("Working-Assumptions: 12\n"));
    EXPECT_TRUE(check_file(folder / "a.lapwing", folder.path()).empty());
    EXPECT_TRUE(read_session_file(folder / "a.lapwing", folder.path()));
}

TEST(SessionFile, HoldsWhatTheLayoutSays) {
    const Sample sample;
    const Folder folder;
    ASSERT_TRUE(write_session_file(folder / "Harbour six.lapwing", sample.outgoing()));
    const auto files = unpacked(folder / "Harbour six.lapwing");
    for (const auto* name : {"bagit.txt", "bag-info.txt", "manifest-sha256.txt", "tagmanifest-sha256.txt",
                             "data/session.json", "data/readings.csv", "data/report.pdf"})
        EXPECT_TRUE(files.contains("Harbour six/" + std::string(name))) << name;
    const auto& info = files.at("Harbour six/bag-info.txt");
    EXPECT_THAT(info, HasSubstr("Bag-Software-Agent: Lapwing 0.1.0\n"));
    EXPECT_THAT(info, HasSubstr("Bagging-Date: 2026-03-14\n"));
    EXPECT_THAT(info, HasSubstr("Payload-Oxum: "));
}

TEST(SessionFile, OwnerStaysAtHomeUnlessTicked) {
    const Sample sample;
    const Folder folder;
    auto outgoing = sample.outgoing();
    outgoing.with_owner = false;
    ASSERT_TRUE(write_session_file(folder / "a.lapwing", outgoing));
    for (const auto& [name, bytes] : unpacked(folder / "a.lapwing")) {
        EXPECT_EQ(bytes.find("Mill Lane"), std::string::npos) << name;
        EXPECT_EQ(bytes.find("white gate"), std::string::npos) << name;
    }
    ASSERT_TRUE(write_session_file(folder / "b.lapwing", sample.outgoing()));
    EXPECT_THAT(unpacked(folder / "b.lapwing").at("b/data/session.json"), HasSubstr("white gate"));
}

TEST(SessionFile, RefusesToWriteWithoutEveryAttachment) {
    const Sample sample;
    const Folder folder;
    const auto& one = sample.dossier.visits.front().attachments.empty()
                          ? sample.dossier.visits.back().attachments.front()
                          : sample.dossier.visits.front().attachments.front();
    put(folder / "a.lapwing", "an older file");
    const auto stored = sample.store / one.sha256;
    auto bytes = bytes_of(stored);
    bytes.back() = '?';
    put(stored, bytes);
    const auto damaged = write_session_file(folder / "a.lapwing", sample.outgoing());
    ASSERT_FALSE(damaged);
    EXPECT_EQ(damaged.error().code, "session_file.attachment_damaged");
    fs::remove(stored);
    const auto missing = write_session_file(folder / "a.lapwing", sample.outgoing());
    ASSERT_FALSE(missing);
    EXPECT_EQ(missing.error().code, "session_file.attachment_missing");
    EXPECT_THAT(missing.error().english, HasSubstr(one.sha256));
    EXPECT_EQ(bytes_of(folder / "a.lapwing"), "an older file");
    EXPECT_EQ(folder.files(), 1u);
}

TEST(SessionFile, SaysWhereItCantWrite) {
    const Sample sample;
    const Folder folder;
    const auto written = write_session_file(folder / "nowhere" / "a.lapwing", sample.outgoing());
    ASSERT_FALSE(written);
    EXPECT_EQ(written.error().code, "file.not_found");
}

TEST(SessionFile, BagMadeByHandIsRead) {
    const Sample sample;
    const Folder folder;
    auto bag = sample_bag(sample);
    for (const bool with_tag_manifest : {true, false}) {
        if (!with_tag_manifest) bag.erase("tagmanifest-sha256.txt");
        for (const auto* base : {"a b/", ""}) {
            pack(folder / "hand.lapwing", bag, base);
            const auto incoming = read_session_file(folder / "hand.lapwing", folder.path());
            ASSERT_TRUE(incoming) << incoming.error().english;
            EXPECT_EQ(incoming->dossier, sample.dossier);
            EXPECT_FALSE(incoming->report);
        }
    }
}

TEST(SessionFile, PayloadOfANewerVersionIsCheckedAndLeft) {
    const Sample sample;
    const Folder folder;
    auto bag = sample_bag(sample);
    bag["data/sounds/one.flac"] = "?";
    bag["signature.json"] = "{}";
    list_payload(bag);
    pack(folder / "a.lapwing", bag);
    const auto incoming = read_session_file(folder / "a.lapwing", folder.path());
    ASSERT_TRUE(incoming) << incoming.error().english;
    EXPECT_EQ(incoming->signature.state, SignatureState::unreadable);
    EXPECT_FALSE(fs::exists(incoming->staging.folder() / "sounds"));
    bag["data/sounds/one.flac"] = "!";
    pack(folder / "a.lapwing", bag);
    EXPECT_EQ(read_session_file(folder / "a.lapwing", folder.path()).error().code, "bag.checksum");
}

TEST(SessionFile, CheckTellsEveryProblem) {
    const Sample sample;
    const Folder folder;
    auto bag = sample_bag(sample);
    bag["data/session.json"] += ' ';
    bag["data/extra.txt"] = "added later";
    bag["bag-info.txt"] = "Payload-Oxum: 1.1\n";
    pack(folder / "a.lapwing", bag);
    std::vector<std::string> codes;
    for (const auto& problem : check_file(folder / "a.lapwing", folder.path())) {
        codes.push_back(problem.code);
        EXPECT_FALSE(is_structural(problem)) << problem.code;
    }
    EXPECT_THAT(codes,
                testing::UnorderedElementsAre("bag.checksum", "bag.unlisted_file", "bag.oxum_differs"));
    put(folder / "b.lapwing", "not at all");
    const auto none = check_file(folder / "b.lapwing", folder.path());
    ASSERT_EQ(none.size(), 1u);
    EXPECT_TRUE(is_structural(none.front()));
}

TEST(SessionFile, RefusesANewerMajorVersion) {
    const Sample sample;
    const Folder folder;
    auto bag = sample_bag(sample);
    auto& json = bag["data/session.json"];
    json.replace(json.find("\"1.1\""), 5, "\"2.0\"");
    list_payload(bag);
    pack(folder / "a.lapwing", bag);
    EXPECT_EQ(read_session_file(folder / "a.lapwing", folder.path()).error().code, "record.newer_major");
}

}  // namespace
}  // namespace lapwing::exchange

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/exchange/session_file.h"

#include <gmock/gmock.h>
#include <rapidcheck/gtest.h>

#include "core/exchange/portions.h"
#include "core/record/walk.h"
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
    outgoing.reference_data = {"limits.json, version 1, sha256 ab", "wet.json, version 3, sha256 cd"};
    ASSERT_TRUE(write_session_file(folder / "a.lapwing", outgoing));
    EXPECT_THAT(unpacked(folder / "a.lapwing").at("a/bag-info.txt"),
                HasSubstr("Working-Assumptions: 12\n"
                          "Reference-Data: limits.json, version 1, sha256 ab\n"
                          "Reference-Data: wet.json, version 3, sha256 cd\n"));
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

/// The first two attachments: one whose file is changed, one whose file is gone.
std::vector<MissingFile> spoil(const Sample& sample) {
    std::vector<MissingFile> out;
    std::set<std::string> spoilt;
    for (const auto& visit : sample.dossier.visits)
        for (const auto& one : visit.attachments) {
            const auto stored = sample.store / one.sha256;
            if (out.empty()) {
                auto bytes = bytes_of(stored);
                bytes.back() = '?';
                put(stored, bytes);
                out.push_back({one.id, Loss::damaged});
            } else if (out.size() == 1) {
                fs::remove(stored);
                out.push_back({one.id, Loss::lost});
            }
        }
    return out;
}

TEST(SessionFile, GoesWithoutWhatIsLostAndSaysSo) {
    const Sample sample;
    const Folder folder;
    const auto spoilt = spoil(sample);
    ASSERT_EQ(spoilt.size(), 2u);
    const auto file = folder / "a.lapwing";
    const auto written = write_session_file(file, sample.outgoing());
    ASSERT_TRUE(written) << written.error().english;

    auto told = sample.dossier;
    told.missing = spoilt;
    ASSERT_EQ(written->size(), 2u);
    EXPECT_EQ(*written, gaps_of(told));
    EXPECT_EQ(written->at(0).engine, told.engine.name);
    EXPECT_EQ(written->at(0).loss, Loss::damaged);
    EXPECT_EQ(written->at(1).loss, Loss::lost);
    for (const auto& gap : *written) {
        EXPECT_THAT(text_of(gap), HasSubstr(told.engine.name));
        EXPECT_THAT(text_of(gap), HasSubstr(to_rfc3339(gap.taken_at).substr(0, 10)));
        EXPECT_THAT(text_of(gap), HasSubstr(std::string(word(gap.kind))));
        EXPECT_THAT(text_of(gap), HasSubstr(gap.session));
    }

    const auto incoming = read_session_file(file, folder.path());
    ASSERT_TRUE(incoming) << incoming.error().english;
    EXPECT_EQ(incoming->dossier, told);
    std::set<std::string> all;
    for (const auto& visit : told.visits)
        for (const auto& one : visit.attachments)
            all.insert(one.sha256);
    EXPECT_EQ(incoming->attachments.size() + 2, all.size());
    const auto checked = check_session_file(file, folder.path());
    EXPECT_TRUE(checked.problems.empty());
    EXPECT_EQ(checked.gaps, *written);
    EXPECT_EQ(folder.files(), 1u + 1u);  // the file, and what `incoming` holds
}

TEST(SessionFile, AGapThatIsNotListedStaysAnError) {
    Sample sample;
    const Folder folder;
    const auto& photo = sample.dossier.visits.front().attachments.empty()
                            ? sample.dossier.visits.back().attachments.front()
                            : sample.dossier.visits.front().attachments.front();
    auto bag = sample_bag(sample);
    bag.erase(attachment_path(photo));
    list_payload(bag);
    pack(folder / "a.lapwing", bag);
    EXPECT_EQ(read_session_file(folder / "a.lapwing", folder.path()).error().code,
              "session_file.attachment_missing");
    sample.dossier.missing = {{photo.id, Loss::lost}};
    bag["data/session.json"] = to_json(sample.dossier);
    list_payload(bag);
    pack(folder / "a.lapwing", bag);
    EXPECT_TRUE(check_file(folder / "a.lapwing", folder.path()).empty());
}

TEST(SessionFile, MoreThanAReaderTakesIsNotWritten) {
    const Sample sample;
    const Folder folder;
    put(folder / "a.lapwing", "an older file");
    auto few = sample.outgoing();
    few.limits.entries = 9;
    auto small = sample.outgoing();
    small.limits.packed_bytes = 20'000;
    auto narrow = sample.outgoing();
    narrow.limits.unpacked_bytes = 20'000;
    for (const auto& outgoing : {few, small, narrow}) {
        const auto written = write_session_file(folder / "a.lapwing", outgoing);
        ASSERT_FALSE(written);
        EXPECT_EQ(written.error().code, "session_file.too_large");
        EXPECT_THAT(written.error().english, HasSubstr("Choose fewer sessions"));
    }
    EXPECT_EQ(bytes_of(folder / "a.lapwing"), "an older file");
    EXPECT_EQ(folder.files(), 1u);
}

TEST(SessionFile, MoreRecordsThanAreReadAtOnceAreDividedByVisits) {
    const Sample sample;
    const Folder folder;
    auto dossier = sample.dossier;
    ASSERT_GE(dossier.visits.size(), 2U);
    for (auto& visit : dossier.visits) {
        Note note;
        note.session = visit.session.id;
        note.text = "x";
        for (std::size_t i = 0; i < most_records * 6 / 10; ++i) {
            note.id = NoteId::make(FixedClock({1'773'480'600'000 + static_cast<std::int64_t>(i), 60}));
            visit.notes.push_back(note);
        }
    }
    auto outgoing = sample.outgoing();
    outgoing.dossier = dossier;
    const auto written = write_session_file(folder / "a.lapwing", outgoing);
    ASSERT_FALSE(written);
    EXPECT_EQ(written.error().code, "session_file.too_many_records");
    const auto too_many = dossier_from_json(to_json(dossier));
    ASSERT_FALSE(too_many);
    EXPECT_EQ(too_many.error().code, "record.too_many_records");
    const auto dealt = portions(dossier, {});
    EXPECT_EQ(dealt.size(), dossier.visits.size());
    std::size_t visits = 0;
    for (const auto& one : dealt) {
        visits += one.visits.size();
        EXPECT_LE(size_of(one).records, most_records);
        EXPECT_TRUE(dossier_from_json(to_json(one)));
    }
    EXPECT_EQ(visits, dossier.visits.size());
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
    const std::string ours = "\"1." + std::to_string(session_minor) + "\"";
    ASSERT_NE(json.find(ours), json.npos);
    json.replace(json.find(ours), ours.size(), "\"2.0\"");
    list_payload(bag);
    pack(folder / "a.lapwing", bag);
    EXPECT_EQ(read_session_file(folder / "a.lapwing", folder.path()).error().code, "record.newer_major");
}

}  // namespace
}  // namespace lapwing::exchange

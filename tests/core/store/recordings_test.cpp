// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/recordings.h"

#include <gtest/gtest.h>

#include <fstream>

#include "core/store/tape.h"
#include "tests/core/store/sample.h"

namespace lapwing::store {
namespace {

namespace fs = std::filesystem;
using sample::why;

std::vector<std::int16_t> ramp(int samples) {
    std::vector<std::int16_t> sound;
    for (int i = 0; i < samples; ++i)
        sound.push_back(static_cast<std::int16_t>(i));
    return sound;
}

unsigned number_at(const fs::path& file, int at) {
    std::ifstream in(file, std::ios::binary);
    in.seekg(at);
    unsigned value = 0;
    for (int i = 0; i < 4; ++i)
        value |= static_cast<unsigned>(in.get()) << (8 * i);
    return value;
}

Attachment voice(SessionId session) {
    Attachment note;
    note.id = AttachmentId::make(sample::clock());
    note.session = session;
    note.tie = {TiedTo::cylinder, {}, 2, {}};
    note.taken_at = sample::clock().now();
    return note;
}

TEST(Tape, IsAWholeWavFileAfterEveryAdd) {
    const sample::Folder folder;
    const auto file = folder.path() / "a.wav";
    auto tape = Tape::start(file);
    ASSERT_TRUE(tape) << why(tape);
    for (int adds = 1; adds <= 3; ++adds) {
        ASSERT_TRUE(tape->add(ramp(1600)));
        // Multimedia Programming Interface and Data Specifications 1.0 (1991), "WAVE form": the RIFF length
        // at 4 counts what follows it, the data length at 40 the samples.
        EXPECT_EQ(number_at(file, 4), 36U + 3200U * static_cast<unsigned>(adds));
        EXPECT_EQ(number_at(file, 40), 3200U * static_cast<unsigned>(adds));
        EXPECT_EQ(fs::file_size(file), 44U + 3200U * static_cast<unsigned>(adds));
    }
    EXPECT_DOUBLE_EQ(tape->seconds(), 0.3);
    EXPECT_EQ(number_at(file, 24), 16'000U);
    auto reader = TapeReader::open(file);
    ASSERT_TRUE(reader) << why(reader);
    std::vector<std::int16_t> back(5000);
    EXPECT_EQ(reader->read(back), 4800U);
    EXPECT_EQ(back[1601], 1);
}

TEST(Tape, CutOffBetweenSamplesAndHeaderIsMended) {
    const sample::Folder folder;
    const auto file = folder.path() / "a.wav";
    ASSERT_TRUE(Tape::start(file)->add(ramp(1600)));
    // As if the process had ended after the samples and before the header, in the middle of a sample.
    std::ofstream(file, std::ios::app | std::ios::binary) << std::string(3201, 'x');
    const auto seconds = mend_tape(file);
    ASSERT_TRUE(seconds) << why(seconds);
    EXPECT_DOUBLE_EQ(*seconds, 0.2);
    EXPECT_EQ(number_at(file, 40), 6400U);
}

TEST(Tape, LeavesOtherFilesAlone) {
    const sample::Folder folder;
    const auto file = folder.path() / "a.wav";
    std::ofstream(file) << std::string(100, 'x');
    EXPECT_EQ(mend_tape(file).error().code, "tape.not_a_tape");
    EXPECT_EQ(TapeReader::open(file).error().code, "tape.not_a_tape");
    EXPECT_EQ(Tape::start(file).error().code, "file.failed");
    EXPECT_EQ(fs::file_size(file), 100U);
    std::ofstream(folder.path() / "short.wav") << "RIFF";
    EXPECT_EQ(mend_tape(folder.path() / "short.wav").value(), 0.0);
}

TEST(Recordings, KnowWhatACutOffOneHangsOn) {
    const sample::Folder folder;
    const Recordings recordings(folder.path() / "recordings");
    EXPECT_TRUE(recordings.left_over().empty());
    const auto session = SessionId::make(sample::clock());
    const auto begun = recordings.begin(voice(session));
    ASSERT_TRUE(begun) << why(begun);
    const auto silent = recordings.begin(voice(session));
    ASSERT_TRUE(silent) << why(silent);
    ASSERT_TRUE(Tape::start(begun->sound)->add(ramp(1600)));

    const auto left = Recordings(folder.path() / "recordings").left_over();
    ASSERT_EQ(left.size(), 1U);
    EXPECT_EQ(left.front().note, begun->note);
    EXPECT_EQ(left.front().note.session, session);
    EXPECT_EQ(left.front().note.tie.cylinder, 2);
    EXPECT_EQ(left.front().sound, begun->sound);

    recordings.forget(left.front());
    EXPECT_TRUE(recordings.left_over().empty());
    EXPECT_TRUE(fs::is_empty(folder.path() / "recordings"));
}

TEST(Recordings, RefuseAPlaceThatCannotBe) {
    const sample::Folder folder;
    auto note = voice(SessionId::make(sample::clock()));
    note.tie.cylinder.reset();
    EXPECT_EQ(Recordings(folder.path()).begin(note).error().code, "tie.cylinder_missing");
}

}  // namespace
}  // namespace lapwing::store

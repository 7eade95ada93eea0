// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <sys/wait.h>
#include <unistd.h>

#include <csignal>
#include <random>
#include <set>
#include <thread>

#include "core/store/library.h"
#include "core/store/tape.h"
#include "core/workflow/remarks.h"
#include "core/workflow/voice_notes.h"
#include "tests/core/workflow/desk_fixture.h"

namespace lapwing::workflow {
namespace {

using sample::why;

// Every command of the child keeps one session with two readings; what it confirmed, it writes to a pipe.
struct Confirmed {
    char session[36];
};

/// Works until it is killed. Never returns.
[[noreturn]] void work(const std::filesystem::path& folder, EngineId engine, int pipe_end) {
    auto opened = Desk::open(folder, sample::clock());
    if (!opened) _exit(1);
    auto& desk = *opened->desk;
    for (int i = 0;; ++i) {
        const auto session = sample::session(engine);
        desk.keep_draft("pad", std::to_string(i));
        desk.run(Command{"test.pair",
                         {session.id.text()},
                         {Put{session}, Put{sample::reading(session.id)},
                          Put{sample::reading(session.id, TestKind::dry, 2)}}},
                 [pipe_end, id = session.id](const Result<Step>& step) {
                     Confirmed confirmed{};
                     id.text().copy(confirmed.session, sizeof confirmed.session);
                     if (!step || write(pipe_end, &confirmed, sizeof confirmed) != sizeof confirmed) _exit(2);
                 });
        if (i % 8 == 7) desk.flush();
    }
}

std::set<SessionId> read_confirmed(int pipe_end) {
    std::set<SessionId> ids;
    Confirmed confirmed{};
    while (read(pipe_end, &confirmed, sizeof confirmed) == sizeof confirmed)
        ids.insert(SessionId::parse({confirmed.session, sizeof confirmed.session}).value());
    return ids;
}

/// Lets a child work for a random moment and kills it. Hands back what it confirmed.
std::set<SessionId> work_and_kill(const std::filesystem::path& folder, EngineId engine,
                                  std::chrono::milliseconds after) {
    int ends[2];
    EXPECT_EQ(pipe(ends), 0);
    const pid_t child = fork();
    if (child == 0) {
        close(ends[0]);
        work(folder, engine, ends[1]);
    }
    close(ends[1]);
    // A pipe holds some 1,700 of these: more than a child can confirm in its short life.
    std::this_thread::sleep_for(after);
    kill(child, SIGKILL);
    int status = 0;
    waitpid(child, &status, 0);
    EXPECT_TRUE(WIFSIGNALED(status)) << "the child ended by itself: " << WEXITSTATUS(status);
    auto ids = read_confirmed(ends[0]);
    close(ends[0]);
    return ids;
}

TEST(Kill, AtAnyMomentLosesNothingConfirmedAndLeavesNothingHalfDone) {
    const sample::Folder folder;
    const auto engine = sample::engine();
    {
        auto opened = Desk::open(folder.path(), sample::clock());
        ASSERT_TRUE(opened) << why(opened);
        opened->desk->run(Command{"test.add", {}, {Put{engine}}});
    }
    std::mt19937 random(20260314);
    std::uniform_int_distribution<int> delay(0, 150);
    std::set<SessionId> all_confirmed;
    for (int round = 0; round < 25; ++round) {
        all_confirmed.merge(
            work_and_kill(folder.path(), engine.id, std::chrono::milliseconds(delay(random))));

        auto opened = Desk::open(folder.path(), sample::clock());
        ASSERT_TRUE(opened) << why(opened);
        for (const auto& told : opened->told)
            ASSERT_EQ(told.code, "store.was_checked") << told.english;
        const auto dossier = opened->desk->dossier(engine.id);
        ASSERT_TRUE(dossier) << why(dossier);
        std::set<SessionId> there;
        for (const auto& visit : dossier->visits) {
            ASSERT_EQ(visit.readings.size(), 2U) << "round " << round;
            there.insert(visit.session.id);
        }
        for (const auto& id : all_confirmed)
            ASSERT_TRUE(there.contains(id)) << "round " << round;
        // The journal is part of the same commit.
        const auto last = opened->desk->last_step();
        ASSERT_TRUE(last);
        if (last->name == "test.pair") {
            ASSERT_TRUE(there.contains(SessionId::parse(last->args.at(0)).value()));
        }
    }
    std::printf("25 kills, %zu commands confirmed, all there\n", all_confirmed.size());
    EXPECT_GT(all_confirmed.size(), 25U)
        << "the children were killed before they did anything worth checking";
}

TEST(Kill, KeepsADraftWhoseDoneWasCalled) {
    const sample::Folder folder;
    for (int round = 0; round < 5; ++round) {
        const pid_t child = fork();
        if (child == 0) {
            auto opened = Desk::open(folder.path(), sample::clock());
            if (!opened) _exit(1);
            opened->desk->keep_draft("pad", std::to_string(round), [] { kill(getpid(), SIGKILL); });
            opened->desk->flush();
            _exit(2);
        }
        int status = 0;
        waitpid(child, &status, 0);
        ASSERT_TRUE(WIFSIGNALED(status));
        auto opened = Desk::open(folder.path(), sample::clock());
        ASSERT_TRUE(opened) << why(opened);
        EXPECT_EQ(opened->desk->draft("pad"), std::to_string(round));
    }
}

/// Speaks for a second, then hangs: as an app whose screen was turned off. Never returns.
[[noreturn]] void speak_and_hang(const std::filesystem::path& folder, SessionId session) {
    auto opened = Desk::open(folder, sample::clock());
    if (!opened) _exit(1);
    Attachment note = sample::attachment(session, std::string(64, '0'), 1);
    note.kind = AttachmentKind::voice;
    note.photo_of.reset();
    const auto recording = opened->desk->recordings().begin(note);
    if (!recording) _exit(2);
    auto tape = store::Tape::start(recording->sound);
    const std::vector<std::int16_t> tenth(store::tape_rate / 10, 1234);
    for (int i = 0; i < 10; ++i)
        if (!tape || !tape->add(tenth)) _exit(3);
    raise(SIGSTOP);
    _exit(4);
}

TEST(Kill, WhileSuspendedInARecordingLeavesItToBeKept) {
    const sample::Folder folder;
    const auto engine = sample::engine();
    const auto session = sample::session(engine.id);
    {
        auto opened = Desk::open(folder.path(), sample::clock());
        ASSERT_TRUE(opened) << why(opened);
        opened->desk->run(Command{"test.add", {}, {Put{engine}, Put{session}}});
    }
    const pid_t child = fork();
    if (child == 0) speak_and_hang(folder.path(), session.id);
    int status = 0;
    waitpid(child, &status, WUNTRACED);
    ASSERT_TRUE(WIFSTOPPED(status)) << "it ended with " << WEXITSTATUS(status);
    EXPECT_EQ(Desk::open(folder.path(), sample::clock()).error().code, "store.in_use");
    kill(child, SIGKILL);
    waitpid(child, &status, 0);

    auto opened = Desk::open(folder.path(), sample::clock());
    ASSERT_TRUE(opened) << why(opened);
    const auto& desk = *opened->desk;
    const auto left = desk.recordings().left_over();
    ASSERT_EQ(left.size(), 1U);
    EXPECT_EQ(left.front().note.session, session.id);
    const auto note = keep_sound(desk.files(), left.front(), {});
    ASSERT_TRUE(note && *note) << why(note);
    std::promise<Status> answer;
    opened->desk->run(save_attachment(**note), [&](const Result<store::Step>& step) {
        answer.set_value(step ? Status() : tl::unexpected(step.error()));
    });
    const auto kept = answer.get_future().get();
    ASSERT_TRUE(kept) << why(kept);
    EXPECT_EQ(desk.visit(session.id)->attachments.size(), 1U);
    auto reader = store::TapeReader::open(desk.files().path((*note)->sha256));
    ASSERT_TRUE(reader) << why(reader);
    std::vector<std::int16_t> sound(2 * store::tape_rate);
    EXPECT_EQ(reader->read(sound), store::tape_rate);
    EXPECT_EQ(sound[0], 1234);
}

}  // namespace
}  // namespace lapwing::workflow

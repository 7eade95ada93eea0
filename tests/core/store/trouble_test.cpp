// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <gtest/gtest.h>
#include <sys/mount.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <csignal>
#include <fstream>

#include "core/store/attachment_files.h"
#include "core/store/library.h"
#include "tests/core/store/sample.h"

namespace lapwing::store {
namespace {

namespace fs = std::filesystem;
using sample::why;

Result<Outcome> put(Library& library, const Record& record) {
    Step info;
    info.name = "test.put";
    info.at = sample::clock().now();
    const std::vector<Edit> edits{Put{record}};
    return library.apply(std::move(info), edits);
}

Engine wordy_engine(int number) {
    auto engine = sample::engine("Engine " + std::to_string(number));
    for (int i = 0; i < 300; ++i)
        engine.history += "Ran on one cylinder, then on two. ";
    return engine;
}

/// Stores engines until there is no room, and checks that exactly the confirmed ones are there: at once,
/// after closing and after there is room again.
void fill_until_full(const fs::path& folder, const std::function<void()>& make_room) {
    std::vector<Engine> confirmed;
    Error refusal;
    {
        auto library = Library::open(folder, sample::clock());
        ASSERT_TRUE(library) << why(library);
        for (int i = 0; i < 2000 && refusal.code.empty(); ++i) {
            const auto engine = wordy_engine(i);
            const auto done = put(**library, engine);
            if (done)
                confirmed.push_back(engine);
            else
                refusal = done.error();
        }
        EXPECT_EQ(refusal.code, "store.full") << refusal.english;
        EXPECT_NE(refusal.english.find("Free some space"), std::string::npos);
        EXPECT_NE(refusal.english.find("library.sqlite"), std::string::npos);
        ASSERT_FALSE(confirmed.empty());
        const auto listed = (*library)->queries().engines();
        ASSERT_TRUE(listed) << why(listed);
        EXPECT_EQ(listed->size(), confirmed.size());
    }
    make_room();
    auto library = open_or_restore(folder, sample::clock());
    ASSERT_TRUE(library) << why(library);
    for (const auto& told : library->told)
        EXPECT_EQ(told.code, "store.was_checked") << told.english;
    for (const auto& engine : confirmed)
        ASSERT_EQ(library->library->queries().engine(engine.id).value(), engine);
    EXPECT_EQ(library->library->queries().engines()->size(), confirmed.size());
    EXPECT_TRUE(put(*library->library, wordy_engine(9999)));
}

TEST(DiskFull, LosesNothingThatWasConfirmedUnderAFileSizeLimit) {
    const sample::Folder folder;
    rlimit before{};
    getrlimit(RLIMIT_FSIZE, &before);
    std::signal(SIGXFSZ, SIG_IGN);
    rlimit limit = before;
    limit.rlim_cur = 600'000;
    ASSERT_EQ(setrlimit(RLIMIT_FSIZE, &limit), 0);
    fill_until_full(folder.path(), [&] { setrlimit(RLIMIT_FSIZE, &before); });
    setrlimit(RLIMIT_FSIZE, &before);
    std::signal(SIGXFSZ, SIG_DFL);
}

TEST(DiskFull, LosesNothingThatWasConfirmedOnASmallDisk) {
    const sample::Folder folder;
    const std::string where = folder.path().string();
    if (mount("tmpfs", where.c_str(), "tmpfs", 0, "size=1m") != 0) {
        GTEST_SKIP() << "A small disk can't be mounted here; the file size limit above stands in for it.";
    }
    fill_until_full(folder.path(), [&] { mount("tmpfs", where.c_str(), "tmpfs", MS_REMOUNT, "size=16m"); });
    EXPECT_EQ(umount(where.c_str()), 0);
}

/// Runs `body` where nobody's permissions hold; true when it says so.
bool as_ordinary_user(const std::function<bool()>& body) {
    const pid_t child = fork();
    if (child == 0) {
        // Root may write anywhere: become "nobody" (65534 on every Linux).
        if (getuid() == 0 && (setgid(65534) != 0 || setuid(65534) != 0)) _exit(2);
        _exit(body() ? 0 : 1);
    }
    int status = 0;
    waitpid(child, &status, 0);
    return WIFEXITED(status) && WEXITSTATUS(status) == 0;
}

TEST(Private, NobodyElseOpensAnythingOfALibrary) {
    const sample::Folder folder;
    fs::permissions(folder.path(), fs::perms(0755));
    const fs::path made = folder.path() / "library";
    const auto library = open_or_restore(made, sample::clock());
    ASSERT_TRUE(library) << why(library);
    ASSERT_TRUE(put(*library->library, wordy_engine(1)));
    const std::string photo = "\xff\xd8\xff\xd9";
    const auto kept = AttachmentFiles(Places{made}.attachments())
                          .keep({reinterpret_cast<const unsigned char*>(photo.data()), photo.size()});
    EXPECT_TRUE(kept) << why(kept);
    std::vector<fs::path> files;
    for (const auto& entry : fs::recursive_directory_iterator(made))
        if (entry.is_regular_file()) files.push_back(entry.path());
    EXPECT_GE(files.size(), 4U);
    // Without the right to go through a folder nobody opens what lies in it, whatever rights that has
    // (POSIX).
    EXPECT_EQ(fs::status(made).permissions(), fs::perms::owner_all);
    if (getuid() == 0) {
        EXPECT_TRUE(as_ordinary_user([&] {
            return std::ranges::none_of(files,
                                        [](const fs::path& file) { return std::ifstream(file).good(); });
        }));
    }
}

bool refused_as_read_only(const fs::path& folder) {
    const auto library = open_or_restore(folder, sample::clock());
    if (library) {
        std::fprintf(stderr, "opened though write-protected\n");
        return false;
    }
    std::fprintf(stderr, "%s\n", library.error().english.c_str());
    return library.error().code == "store.read_only" &&
           library.error().english.find(folder.string()) != std::string::npos &&
           library.error().english.find("write-protected") != std::string::npos;
}

TEST(ReadOnly, FolderIsRefusedWithASentence) {
    const sample::Folder folder;
    fs::permissions(folder.path(), fs::perms(0555));
    EXPECT_TRUE(as_ordinary_user([&] { return refused_as_read_only(folder.path()); }));
    EXPECT_TRUE(as_ordinary_user([&] { return refused_as_read_only(folder.path() / "new"); }));
    EXPECT_TRUE(fs::is_empty(folder.path()));
    fs::permissions(folder.path(), fs::perms(0755));
}

TEST(ReadOnly, LibraryIsRefusedAndLeftAsItIs) {
    const sample::Folder folder;
    {
        auto library = Library::open(folder.path(), sample::clock());
        ASSERT_TRUE(library) << why(library);
        ASSERT_TRUE(put(**library, sample::engine()));
    }
    for (const auto& entry : fs::directory_iterator(folder.path()))
        fs::permissions(entry.path(), fs::perms(0444));
    fs::permissions(folder.path(), fs::perms(0555));
    EXPECT_TRUE(as_ordinary_user([&] { return refused_as_read_only(folder.path()); }));
    fs::permissions(folder.path(), fs::perms(0755));
    for (const auto& entry : fs::directory_iterator(folder.path()))
        fs::permissions(entry.path(), fs::perms(0644));
    const auto library = open_or_restore(folder.path(), sample::clock());
    ASSERT_TRUE(library) << why(library);
    EXPECT_TRUE(library->told.empty());
    EXPECT_EQ(library->library->queries().engines()->size(), 1U);
}

TEST(ReadOnly, FileWhereTheFolderShouldBeIsRefused) {
    const sample::Folder folder;
    std::ofstream(folder.path() / "file") << "x";
    const auto library = Library::open(folder.path() / "file", sample::clock());
    ASSERT_FALSE(library);
    EXPECT_EQ(library.error().code, "store.read_only");
}

TEST(Busy, LibraryHeldByAnotherProgramSaysSo) {
    const auto error = sqlite_error(5 /* SQLITE_BUSY, sqlite.org/rescode.html */, 0, "", "x.sqlite");
    EXPECT_EQ(error.code, "store.busy");
    EXPECT_NE(error.english.find("do it again"), std::string::npos);
}

}  // namespace
}  // namespace lapwing::store

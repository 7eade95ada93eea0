// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/base/atomic_file.h"

#include <gmock/gmock.h>
#include <sys/resource.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <csignal>
#include <fstream>

#include "core/base/uuid.h"

namespace lapwing {
namespace {

namespace fs = std::filesystem;
using ::testing::HasSubstr;

class AtomicFile : public testing::Test {
protected:
    void SetUp() override { fs::create_directories(folder); }
    void TearDown() override { fs::remove_all(folder); }
    std::size_t files() {
        return static_cast<std::size_t>(
            std::distance(fs::directory_iterator(folder), fs::directory_iterator{}));
    }

    fs::path folder = fs::temp_directory_path() / ("lapwing-" + Uuid::make(SystemClock{}).text());
    fs::path file = folder / "notes.txt";
};

TEST_F(AtomicFile, WritesAndReplacesWhole) {
    const std::string bytes("a\0b\n", 4);
    ASSERT_TRUE(write_atomically(file, bytes));
    EXPECT_EQ(read_file(file, 100), bytes);
    ASSERT_TRUE(write_atomically(file, ""));
    EXPECT_EQ(read_file(file, 100), "");
    const std::string large(3'000'000, 'x');
    ASSERT_TRUE(write_atomically(file, large));
    EXPECT_EQ(read_file(file, large.size()), large);
    EXPECT_EQ(files(), 1u);
}

TEST_F(AtomicFile, ReadsNoMoreThanAsked) {
    ASSERT_TRUE(write_atomically(file, "12345"));
    EXPECT_EQ(read_file(file, 4).error().code, "file.too_large");
    EXPECT_EQ(read_file(folder / "none", 4).error().code, "file.not_found");
}

// A pipe that nobody writes into would be waited for, and a device might never end.
TEST_F(AtomicFile, ReadsNothingButFiles) {
    const auto pipe = folder / "pipe";
    ASSERT_EQ(::mkfifo(pipe.c_str(), 0600), 0);
    EXPECT_EQ(read_file(pipe, 4).error().code, "file.no_file");
    EXPECT_EQ(read_file(folder, 4).error().code, "file.no_file");
    EXPECT_EQ(read_file("/dev/zero", 4).error().code, "file.no_file");
}

TEST_F(AtomicFile, NamesTheFileWhenItsFolderIsMissing) {
    const auto path = folder / "none" / "a.txt";
    const auto written = write_atomically(path, "x");
    ASSERT_FALSE(written);
    EXPECT_EQ(written.error().code, "file.not_found");
    EXPECT_EQ(written.error().args.front(), path.string());
    EXPECT_THAT(written.error().english, HasSubstr(path.string() + " or its folder"));
    EXPECT_EQ(write_atomically(file / "below a file", "x").error().code, "file.not_found");
}

TEST_F(AtomicFile, SaysThatAFolderIsNotAllowed) {
    ASSERT_TRUE(write_atomically(file, "old"));
    fs::permissions(folder, fs::perms::owner_read | fs::perms::owner_exec | fs::perms::others_exec);
    // Root may write everywhere: the test then looks through the eyes of another user.
    const bool root = geteuid() == 0;
    if (root) ASSERT_EQ(seteuid(65534), 0);
    const auto written = write_atomically(file, "new");
    if (root) ASSERT_EQ(seteuid(0), 0);
    fs::permissions(folder, fs::perms::owner_all);
    ASSERT_FALSE(written);
    EXPECT_EQ(written.error().code, "file.not_allowed");
    EXPECT_THAT(written.error().english, HasSubstr(file.string()));
    EXPECT_EQ(read_file(file, 100), "old");
    EXPECT_EQ(files(), 1u);
}

TEST_F(AtomicFile, KeepsTheOldFileWhenWritingFailsHalfWay) {
    ASSERT_TRUE(write_atomically(file, "old"));
    // A limit on file size stands for a full disk: the write stops after some bytes.
    rlimit before{};
    getrlimit(RLIMIT_FSIZE, &before);
    const auto handler = std::signal(SIGXFSZ, SIG_IGN);
    const rlimit small{1 << 16, before.rlim_max};
    setrlimit(RLIMIT_FSIZE, &small);
    const auto written = write_atomically(file, std::string(1 << 20, 'x'));
    setrlimit(RLIMIT_FSIZE, &before);
    std::signal(SIGXFSZ, handler);
    ASSERT_FALSE(written);
    EXPECT_THAT(written.error().english, HasSubstr(file.string()));
    EXPECT_EQ(read_file(file, 100), "old");
    EXPECT_EQ(files(), 1u);
}

TEST(FileError, HasASentenceForTheCommonOnes) {
    EXPECT_EQ(file_error(ENOSPC, "/a/b").value().code, "file.no_space");
    EXPECT_EQ(file_error(EDQUOT, "/a/b").value().code, "file.no_space");
    EXPECT_EQ(file_error(EROFS, "/a/b").value().code, "file.not_allowed");
    EXPECT_EQ(file_error(EIO, "/a/b").value().code, "file.failed");
    for (const int number : {ENOSPC, EACCES, ENOENT, EIO})
        EXPECT_THAT(file_error(number, "/a/b").value().english, HasSubstr("/a/b"));
}

}  // namespace
}  // namespace lapwing

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/attachment_files.h"

#include <gtest/gtest.h>

#include <fstream>

#include "tests/core/store/sample.h"

namespace lapwing::store {
namespace {

namespace fs = std::filesystem;
using sample::why;

// FIPS 180-2, appendix B.1: SHA-256 of "abc".
constexpr const char* sha256_of_abc = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";
constexpr unsigned char abc[] = {'a', 'b', 'c'};

TEST(AttachmentFiles, AreNamedByTheirContents) {
    const sample::Folder folder;
    const AttachmentFiles files(folder.path() / "attachments");
    EXPECT_FALSE(files.has(sha256_of_abc));
    const auto kept = files.keep(abc);
    ASSERT_TRUE(kept) << why(kept);
    EXPECT_EQ(kept->sha256, sha256_of_abc);
    EXPECT_EQ(kept->bytes, 3);
    EXPECT_TRUE(files.has(sha256_of_abc));
    EXPECT_EQ(fs::file_size(files.path(sha256_of_abc)), 3U);
}

TEST(AttachmentFiles, AreCopiedInAndKeptOnce) {
    const sample::Folder folder;
    const AttachmentFiles files(folder.path() / "attachments");
    std::ofstream(folder.path() / "photo.jpg") << "abc";
    ASSERT_TRUE(files.keep(abc));
    const auto kept = files.keep_file(folder.path() / "photo.jpg");
    ASSERT_TRUE(kept) << why(kept);
    EXPECT_EQ(kept->sha256, sha256_of_abc);
    EXPECT_EQ(std::distance(fs::directory_iterator(folder.path() / "attachments"), {}), 1);
}

TEST(AttachmentFiles, RefuseWhatCannotBeReadOrWritten) {
    const sample::Folder folder;
    const AttachmentFiles files(folder.path() / "attachments");
    EXPECT_EQ(files.keep_file(folder.path() / "none.jpg").error().code, "store.unreadable_file");
    std::ofstream(folder.path() / "file") << "x";
    EXPECT_FALSE(AttachmentFiles(folder.path() / "file").keep(abc));
}

}  // namespace
}  // namespace lapwing::store

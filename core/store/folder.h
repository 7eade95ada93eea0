// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <filesystem>
#include <memory>

#include "core/base/result.h"

namespace lapwing::store {

/// Where things lie in a library's folder.
struct Places {
    std::filesystem::path folder;

    [[nodiscard]] std::filesystem::path library() const { return folder / "library.sqlite"; }
    [[nodiscard]] std::filesystem::path lock() const { return folder / "library.lock"; }
    /// There only while the library is closed and was closed properly.
    [[nodiscard]] std::filesystem::path closed_marker() const { return folder / "library.closed"; }
    [[nodiscard]] std::filesystem::path backups() const { return folder / "backups"; }
    [[nodiscard]] std::filesystem::path attachments() const { return folder / "attachments"; }
    [[nodiscard]] std::filesystem::path recordings() const { return folder / "recordings"; }
};

/// Holds a library's folder for one Lapwing at a time; let go by the operating system even after a crash.
class FolderLock {
public:
    /// Makes the folder if need be. Fails with "store.in_use" or "store.read_only".
    static Result<std::unique_ptr<FolderLock>> take(const Places& places);
    ~FolderLock();
    FolderLock(const FolderLock&) = delete;
    FolderLock& operator=(const FolderLock&) = delete;

private:
    explicit FolderLock(int descriptor) : descriptor_(descriptor) {}
    int descriptor_;
};

/// Makes a file's contents and then its name in the folder reach the storage.
Status sync_file(const std::filesystem::path& file);
Status sync_folder(const std::filesystem::path& folder);

}  // namespace lapwing::store

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <filesystem>
#include <span>
#include <string>

#include "core/base/result.h"

namespace lapwing::store {

/// The bytes of photos and voice notes: one file each, named by its SHA-256, written once and never changed.
/// Files outlive the records that name them, so that undo finds them again.
class AttachmentFiles {
public:
    explicit AttachmentFiles(std::filesystem::path folder) : folder_(std::move(folder)) {}

    [[nodiscard]] std::filesystem::path path(const std::string& sha256) const { return folder_ / sha256; }
    [[nodiscard]] bool has(const std::string& sha256) const;

    struct Kept {
        std::string sha256;  ///< 64 lower-case hex digits
        long long bytes = 0;
    };
    /// Stores the bytes, on the storage when this returns. The same bytes again cost nothing.
    Result<Kept> keep(std::span<const unsigned char> bytes) const;
    /// Copies a file in.
    Result<Kept> keep_file(const std::filesystem::path& file) const;
    /// Takes a file over whose SHA-256 was just worked out: moved where the storage is the same, else copied.
    Status adopt(const std::filesystem::path& file, const std::string& sha256) const;

private:
    std::filesystem::path folder_;
};

}  // namespace lapwing::store

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <filesystem>
#include <string_view>

#include "core/base/result.h"

namespace lapwing {

/// The sentence for a system error number while working on `path`: `file.no_space`, `file.not_allowed`,
/// `file.not_found` or `file.failed`; the path is its argument.
tl::unexpected<Error> file_error(int system_error, const std::filesystem::path& path);

/// A name beside `target` that no file has yet.
std::filesystem::path temporary_beside(const std::filesystem::path& target);

/// Gives a finished file its name for good: its bytes are on the disk before the name points to them, and the
/// name is on the disk before this returns. After an error `from` is gone and `target` as it was, or whole
/// where nothing but the name could not be made safe.
Status put_in_place(const std::filesystem::path& from, const std::filesystem::path& target);

/// Writes a whole file: after a power cut there is the old one or the new one, never a part.
Status write_atomically(const std::filesystem::path& target, std::string_view bytes);

/// Makes a folder, with those above it that are missing; its name and theirs are on the disk when this
/// returns, even if they were there before.
Status make_folders(const std::filesystem::path& folder);
/// Makes one folder in a folder that is there (or `file.not_found`); the name of a new one is on the disk
/// when this returns.
Status make_folder(const std::filesystem::path& folder);

/// The bytes of a whole file; one of more than `longest` bytes is an error (`file.too_large`), and so is what
/// is no file (`file.no_file`).
Result<std::string> read_file(const std::filesystem::path& path, std::size_t longest);

}  // namespace lapwing

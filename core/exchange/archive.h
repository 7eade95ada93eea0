// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <cstdint>
#include <filesystem>
#include <functional>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/result.h"

struct zip;

namespace lapwing::exchange {

/// How much a file from outside may ask for.
struct Limits {
    std::uint64_t packed_bytes = std::uint64_t{2} << 30;
    std::uint64_t unpacked_bytes = std::uint64_t{4} << 30;
    std::uint64_t entries = 20'000;
    std::uint64_t text_ratio = 200;  ///< unpacked to packed, of one entry
    std::uint64_t other_ratio = 20;
    std::uint64_t free_of_ratio = 64 << 10;  ///< unpacked bytes up to which a ratio says nothing
    std::uint64_t text_bytes = 32u << 20;    ///< of one list or of session.json
    std::uint64_t photo_pixels = 60'000'000;
};

struct Entry {
    std::uint64_t index = 0;
    std::string path;
    std::uint64_t bytes = 0;
};

/// A ZIP archive from outside. Opening one looks at every entry's name, kind, size and ratio; nothing is
/// unpacked before all of them are in order.
class Archive {
public:
    static Result<Archive> open(const std::filesystem::path& file, const Limits& limits);

    /// Files only, folders left out.
    [[nodiscard]] const std::vector<Entry>& entries() const { return entries_; }

    using Sink = std::function<Status(std::string_view)>;
    /// Unpacks one entry piece by piece. More or fewer bytes than announced, or a wrong CRC, is an error.
    Status read(const Entry& entry, const Sink& sink) const;
    /// A whole entry of at most `longest` bytes.
    Result<std::string> read_text(const Entry& entry, std::uint64_t longest) const;

private:
    struct Close {
        void operator()(zip* archive) const;
    };
    Status take_entries(const std::filesystem::path& file, const Limits& limits);

    std::unique_ptr<zip, Close> zip_;
    std::vector<Entry> entries_;
};

}  // namespace lapwing::exchange

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "core/base/result.h"

/// The text files of a bag: BagIt 1.0, RFC 8493.
namespace lapwing::exchange {

inline constexpr std::string_view bag_declaration =
    "BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n";

/// bagit.txt: exactly two lines, no byte-order mark, version 1.0 or its forerunner 0.97, UTF-8.
Status check_declaration(std::string_view bagit_txt);

struct ManifestLine {
    std::string checksum;  ///< lower-case hex
    std::string path;      ///< decoded, '/' between folders

    bool operator==(const ManifestLine&) const = default;
};

/// A manifest's lines, in the file's order. `name` is the manifest's own, for the sentences.
Result<std::vector<ManifestLine>> parse_manifest(std::string_view text, std::string_view name);
std::string manifest_text(const std::vector<ManifestLine>& lines);

/// Line feed, carriage return and percent sign become %0A, %0D and %25, nothing else; and back.
std::string encode_path(std::string_view path);
std::string decode_path(std::string_view written);

/// The payload's size as bag-info.txt tells it: bytes and files.
struct Oxum {
    std::uint64_t bytes = 0;
    std::uint64_t files = 0;

    bool operator==(const Oxum&) const = default;
};

using BagInfo = std::vector<std::pair<std::string, std::string>>;
/// "Label: value" lines; a line that begins with a space or tab continues the one before.
Result<BagInfo> parse_bag_info(std::string_view text);
std::string bag_info_text(const BagInfo& info);
/// Payload-Oxum, if there is one; two of them or a malformed one is an error.
Result<std::optional<Oxum>> payload_oxum(const BagInfo& info);

/// Why a path from outside must not be used, or nothing: absolute, "..", ".", backslash, drive letter, empty
/// part, control characters, not UTF-8, longer than 1000 bytes.
std::optional<Error> path_fault(std::string_view path);

}  // namespace lapwing::exchange

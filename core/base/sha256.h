// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <sodium/crypto_hash_sha256.h>

#include <filesystem>
#include <string>
#include <string_view>

#include "core/base/result.h"

namespace lapwing {

/// SHA-256 (FIPS 180-4) of bytes that come piece by piece.
class Sha256 {
public:
    Sha256();
    void add(std::string_view bytes);
    /// 64 lower-case hex digits of everything added; ends the sum.
    [[nodiscard]] std::string hex();

private:
    crypto_hash_sha256_state state_;
};

std::string sha256_hex(std::string_view bytes);
/// Of a file's content, read piece by piece.
Result<std::string> sha256_of_file(const std::filesystem::path& path);

}  // namespace lapwing

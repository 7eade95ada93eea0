// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <sodium/crypto_hash_sha256.h>
#include <sodium/crypto_hash_sha512.h>

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

/// SHA-512 (FIPS 180-4), for lists of checksums that others made with it.
class Sha512 {
public:
    Sha512();
    void add(std::string_view bytes);
    /// 128 lower-case hex digits of everything added; ends the sum.
    [[nodiscard]] std::string hex();

private:
    crypto_hash_sha512_state state_;
};

std::string sha256_hex(std::string_view bytes);
std::string sha512_hex(std::string_view bytes);
/// Of a file's content, read piece by piece.
Result<std::string> sha256_of_file(const std::filesystem::path& path);

}  // namespace lapwing

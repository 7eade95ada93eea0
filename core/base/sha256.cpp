// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/base/sha256.h"

#include <array>
#include <cerrno>
#include <cstdio>
#include <memory>

#include "core/base/atomic_file.h"

namespace lapwing {
namespace {

template <std::size_t size>
std::string hex_of(const std::array<unsigned char, size>& sum) {
    std::string out;
    for (const auto byte : sum)
        out += fmt::format("{:02x}", byte);
    return out;
}

}  // namespace

// Its own first call fills the state.
Sha256::Sha256() {  // NOLINT(cppcoreguidelines-pro-type-member-init)
    crypto_hash_sha256_init(&state_);
}

void Sha256::add(std::string_view bytes) {
    crypto_hash_sha256_update(&state_, reinterpret_cast<const unsigned char*>(bytes.data()), bytes.size());
}

std::string Sha256::hex() {
    std::array<unsigned char, crypto_hash_sha256_BYTES> sum{};
    crypto_hash_sha256_final(&state_, sum.data());
    return hex_of(sum);
}

// Its own first call fills the state.
Sha512::Sha512() {  // NOLINT(cppcoreguidelines-pro-type-member-init)
    crypto_hash_sha512_init(&state_);
}

void Sha512::add(std::string_view bytes) {
    crypto_hash_sha512_update(&state_, reinterpret_cast<const unsigned char*>(bytes.data()), bytes.size());
}

std::string Sha512::hex() {
    std::array<unsigned char, crypto_hash_sha512_BYTES> sum{};
    crypto_hash_sha512_final(&state_, sum.data());
    return hex_of(sum);
}

std::string sha256_hex(std::string_view bytes) {
    Sha256 sum;
    sum.add(bytes);
    return sum.hex();
}

std::string sha512_hex(std::string_view bytes) {
    Sha512 sum;
    sum.add(bytes);
    return sum.hex();
}

Result<std::string> sha256_of_file(const std::filesystem::path& path) {
    const std::unique_ptr<std::FILE, int (*)(std::FILE*)> file(std::fopen(path.c_str(), "rb"), &std::fclose);
    if (!file) return file_error(errno, path);
    Sha256 sum;
    std::array<char, 65536> buffer{};
    while (const auto count = std::fread(buffer.data(), 1, buffer.size(), file.get()))
        sum.add({buffer.data(), count});
    if (std::ferror(file.get()) != 0) return file_error(errno, path);
    return sum.hex();
}

}  // namespace lapwing

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/exchange/signature.h"

#include <sodium.h>

#include <nlohmann/json.hpp>

#include "core/base/atomic_file.h"
#include "core/base/sha256.h"

namespace lapwing::exchange {
namespace {

namespace fs = std::filesystem;

constexpr std::string_view algorithm = "Ed25519";

template <std::size_t N>
std::string hex_of(const std::array<unsigned char, N>& bytes) {
    std::string out(2 * N + 1, '\0');
    sodium_bin2hex(out.data(), out.size(), bytes.data(), N);
    out.pop_back();
    return out;
}

/// Exactly N bytes in lower-case hex.
template <std::size_t N>
std::optional<std::array<unsigned char, N>> bytes_of(std::string_view hex) {
    std::array<unsigned char, N> out{};
    std::size_t length = 0;
    if (hex.size() != 2 * N || hex.find_first_not_of("0123456789abcdef") != std::string_view::npos ||
        sodium_hex2bin(out.data(), N, hex.data(), hex.size(), nullptr, &length, nullptr) != 0 || length != N)
        return std::nullopt;
    return out;
}

std::string text_in(const nlohmann::json& object, const char* name) {
    const auto found = object.find(name);
    return found != object.end() && found->is_string() ? found->get<std::string>() : std::string{};
}

}  // namespace

SigningKey::SigningKey(const std::array<unsigned char, 32>& seed) {
    std::array<unsigned char, crypto_sign_PUBLICKEYBYTES> key{};
    crypto_sign_seed_keypair(key.data(), secret_.data(), seed.data());
    public_key_ = hex_of(key);
}

Result<SigningKey> SigningKey::open_or_make(const fs::path& file) {
    if (sodium_init() < 0)
        return fail("signature.no_library", "Nothing can be signed: the library for it did not start.");
    std::error_code error;
    std::array<unsigned char, 32> seed{};
    if (!fs::exists(file, error)) {
        randombytes_buf(seed.data(), seed.size());
        if (auto written = write_atomically(file, hex_of(seed) + '\n'); !written)
            return tl::unexpected(written.error());
        return SigningKey(seed);
    }
    const auto text = read_file(file, 1000);
    if (!text) return tl::unexpected(text.error());
    const auto kept = bytes_of<32>(std::string_view(*text).substr(0, text->find_last_not_of("\r\n") + 1));
    if (!kept)
        return fail(
            "signature.key_damaged",
            "The key that files are signed with ({}) is damaged. Move that file away to get a new key; "
            "others will then see a new fingerprint.",
            file.string());
    return SigningKey(*kept);
}

std::string SigningKey::sign(std::string_view tag_manifest) const {
    std::array<unsigned char, crypto_sign_BYTES> signature{};
    crypto_sign_detached(signature.data(), nullptr,
                         reinterpret_cast<const unsigned char*>(tag_manifest.data()), tag_manifest.size(),
                         secret_.data());
    nlohmann::ordered_json out;
    out["algorithm"] = algorithm;
    out["over"] = "tagmanifest-sha256.txt";
    out["public_key"] = public_key_;
    out["fingerprint"] = fingerprint(public_key_);
    out["signature"] = hex_of(signature);
    return out.dump(2) + '\n';
}

std::string fingerprint(std::string_view public_key) {
    const auto key = bytes_of<32>(public_key);
    if (!key) return {};
    const auto sum = sha256_hex({reinterpret_cast<const char*>(key->data()), key->size()});
    std::string out;
    for (std::size_t at = 0; at < 20; at += 4) {
        if (at > 0) out += ' ';
        out += sum.substr(at, 4);
    }
    return out;
}

Signature verify(const std::optional<std::string>& signature_json, std::string_view tag_manifest) {
    if (!signature_json) return {};
    constexpr std::size_t longest = 10'000;
    if (sodium_init() < 0 || signature_json->size() > longest) return {SignatureState::unreadable, {}};
    const auto json = nlohmann::json::parse(*signature_json, nullptr, false);
    if (!json.is_object() || text_in(json, "algorithm") != algorithm) return {SignatureState::unreadable, {}};
    const auto public_key = text_in(json, "public_key");
    const auto key = bytes_of<crypto_sign_PUBLICKEYBYTES>(public_key);
    const auto signature = bytes_of<crypto_sign_BYTES>(text_in(json, "signature"));
    if (!key || !signature) return {SignatureState::unreadable, {}};
    const bool holds = crypto_sign_verify_detached(
                           signature->data(), reinterpret_cast<const unsigned char*>(tag_manifest.data()),
                           tag_manifest.size(), key->data()) == 0;
    return {holds ? SignatureState::unaltered : SignatureState::altered, public_key};
}

}  // namespace lapwing::exchange

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <array>
#include <filesystem>
#include <optional>
#include <string>
#include <string_view>

#include "core/base/result.h"

/// The signature of a session file: Ed25519 (RFC 8032) over the bytes of tagmanifest-sha256.txt, which stands
/// for every other byte of the bag through its checksums. It says that the holder of a key handed the file
/// over as it is, not who that is, nor that what is in it is true.
namespace lapwing::exchange {

inline constexpr std::string_view signature_file = "signature.json";

/// The key that this library signs with. Its secret never leaves this object and its file.
class SigningKey {
public:
    /// Reads the key from its file, or makes both: readable by their owner only, whole or not at all. A file
    /// that is no key is left alone and an error ("signature.key_damaged"), never replaced.
    static Result<SigningKey> open_or_make(const std::filesystem::path& file);

    [[nodiscard]] const std::string& public_key() const { return public_key_; }  ///< 64 hex digits
    /// The text of signature.json for such a tag manifest.
    [[nodiscard]] std::string sign(std::string_view tag_manifest) const;

private:
    explicit SigningKey(const std::array<unsigned char, 32>& seed);
    std::array<unsigned char, 64> secret_{};
    std::string public_key_;
};

/// What a person compares by eye or over the telephone: 20 hex digits of the key's SHA-256 in groups of four.
std::string fingerprint(std::string_view public_key);

enum class SignatureState {
    not_signed,
    unaltered,   ///< as it was handed over by the holder of the key
    altered,     ///< signed, but something was changed, added or taken out since
    unreadable,  ///< signature.json is none that this version understands
};

struct Signature {
    SignatureState state = SignatureState::not_signed;
    std::string public_key;  ///< 64 hex digits; empty when not signed or unreadable

    bool operator==(const Signature&) const = default;
};

/// Looks at signature.json as it came, if it came. Whether the bag itself keeps what its manifests promise is
/// for the caller to know: any broken checksum makes a signed file `altered`.
Signature verify(const std::optional<std::string>& signature_json, std::string_view tag_manifest);

}  // namespace lapwing::exchange

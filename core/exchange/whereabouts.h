// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <filesystem>
#include <functional>
#include <string>
#include <vector>

#include "core/exchange/session_file.h"

namespace lapwing::exchange {

/// Whether a photo's file (JPEG) tells where it was taken: Exif with a position (Exif 2.32, 4.6.3, tag
/// 0x8825), XMP or IPTC that name a place. What is too damaged to tell counts as telling. Photos kept by this
/// app never do; those that come with a session file may, and are never rewritten, because their bytes are
/// what they are known by and what was signed.
[[nodiscard]] bool tells_where(const std::filesystem::path& photo);

/// A photo that tells where it was taken, in words that a person can look for.
struct Whereabouts {
    std::string engine;
    std::string session;  ///< its title; may be empty
    Timestamp taken_at;

    bool operator==(const Whereabouts&) const = default;
};
/// "a photo of 2026-03-14 (Orchard V-twin, Before)"
[[nodiscard]] std::string text_of(const Whereabouts& photo);

/// Those of a dossier's photos; an empty path stands for a file that is not there.
[[nodiscard]] std::vector<Whereabouts> whereabouts_of(
    const Dossier& dossier, const std::function<std::filesystem::path(const Attachment&)>& file_of);
[[nodiscard]] std::vector<Whereabouts> whereabouts_of(const Incoming& incoming);

}  // namespace lapwing::exchange

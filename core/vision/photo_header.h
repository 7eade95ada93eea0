// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <cstddef>
#include <cstdint>
#include <span>

#include "core/base/result.h"

namespace lapwing::vision {

inline constexpr std::int64_t largest_photo_px = 60'000'000;
/// Kinds that a decoder must hold as a whole before it can shrink them (PNG, JPEG in several passes).
inline constexpr std::int64_t largest_unshrinkable_px = 16'000'000;
/// Of such a kind: the file and what its decoder holds, together.
inline constexpr std::int64_t largest_unshrinkable_bytes = 75'000'000;
inline constexpr std::size_t largest_photo_bytes = std::size_t{64} << 20U;
inline constexpr int smallest_photo_side_px = 120;

/// What a photo file says of itself, read without decoding it.
struct PhotoHeader {
    enum class Kind { jpeg, png };
    Kind kind = Kind::jpeg;
    int width = 0;        ///< px, as stored
    int height = 0;       ///< px, as stored
    int orientation = 1;  ///< 1 to 8, Exif 2.32 tag 0x0112: how it must be turned to stand upright

    [[nodiscard]] bool lies_on_its_side() const { return orientation >= 5; }
    [[nodiscard]] int upright_width() const { return lies_on_its_side() ? height : width; }
    [[nodiscard]] int upright_height() const { return lies_on_its_side() ? width : height; }
};

/// Reads the header of a JPEG (ITU-T T.81) or PNG (ISO/IEC 15948) file and refuses, with a sentence, whatever
/// could not be decoded in bounded memory: other kinds of files, moving pictures, four-colour JPEG, files cut
/// short, pictures too small or too large. Never reads outside `file`.
[[nodiscard]] Result<PhotoHeader> read_photo_header(std::span<const std::byte> file);

}  // namespace lapwing::vision

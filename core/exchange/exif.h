// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <optional>
#include <string_view>

/// What is read of an Exif segment (Exif 2.32, 4.5.4 and 4.6) of a photo that came with a file. Inside
/// core/exchange only.
namespace lapwing::exchange {

/// The TIFF structure in a JPEG's segment; nothing if the segment holds none.
[[nodiscard]] std::optional<std::string_view> exif_in(std::string_view segment);

/// Whether its first directory leads to one of positions. What is too damaged to tell counts as leading.
[[nodiscard]] bool has_position(std::string_view exif);

/// Which way up the picture is meant, 1 to 8; nothing where that is not said.
[[nodiscard]] std::optional<int> orientation_in(std::string_view exif);

}  // namespace lapwing::exchange

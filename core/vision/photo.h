// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <cstddef>
#include <span>
#include <vector>

#include "core/base/result.h"

namespace lapwing::vision {

inline constexpr int keepable_side_px =
    4096;  ///< longer side; above it most phones give no more detail of a dial

/// The photo as it is kept: upright, a JPEG of at most `keepable_side_px`, and nothing in the file but the
/// picture: no place, no device, no time, no preview. It is encoded anew in any case, because tags hide in
/// many corners of a file. Errors are those of reading the file.
[[nodiscard]] Result<std::vector<std::byte>> make_keepable(std::span<const std::byte> photo);

}  // namespace lapwing::vision

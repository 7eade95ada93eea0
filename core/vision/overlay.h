// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <cstddef>
#include <span>
#include <vector>

#include "core/base/result.h"
#include "core/vision/needle.h"

namespace lapwing::vision {

/// The photo, upright and at most 1280 px long, with what the reading found drawn on it: centre, scale with
/// its ends and divisions, needle. What was not found is not drawn. PNG.
[[nodiscard]] Result<std::vector<std::byte>> draw_overlay(std::span<const std::byte> photo,
                                                          const NeedleReading& reading);

}  // namespace lapwing::vision

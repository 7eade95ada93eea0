// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <span>
#include <vector>

#include "core/base/result.h"

namespace lapwing::exchange {

/// The same picture without what was noted beside it (place, time, device, words, previews): the bytes that
/// its pixels and their colours come from are copied as they are, so that nothing is lost by it. Which way up
/// it is meant stays. A new file with a new hash; the old one is left alone. An error for what is no JPEG, or
/// ends before its end.
[[nodiscard]] Result<std::vector<unsigned char>> bare_copy(std::span<const unsigned char> photo);

}  // namespace lapwing::exchange

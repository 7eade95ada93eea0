// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <cstdint>
#include <filesystem>
#include <string_view>

#include "core/base/result.h"

namespace lapwing::exchange {

/// Whether a file from outside is what its media type says, by its own header: a JPEG with at most
/// `most_pixels`, an Ogg, WAV or WebM. `name` is what the sentence calls it.
Status check_media(const std::filesystem::path& file, std::string_view media_type, std::uint64_t most_pixels,
                   std::string_view name);

}  // namespace lapwing::exchange

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <filesystem>

#include "core/base/result.h"

namespace lapwing::platform {

/// See Media::PackSpeech.
Status pack_speech(const std::filesystem::path& wav, const std::filesystem::path& to);

}  // namespace lapwing::platform

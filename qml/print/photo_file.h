// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <filesystem>
#include <functional>
#include <string>

namespace lapwing::print {

/// Where the photo with this SHA-256 is stored; an empty path where it isn't.
using PhotoFile = std::function<std::filesystem::path(const std::string& sha256)>;

}  // namespace lapwing::print

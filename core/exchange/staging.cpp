// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/base/atomic_file.h"
#include "core/base/uuid.h"
#include "core/exchange/session_file.h"

namespace lapwing::exchange {

Result<Staging> Staging::make(const std::filesystem::path& parent) {
    const auto folder = parent / ("incoming-" + Uuid::make(SystemClock{}).text());
    std::error_code error;
    std::filesystem::create_directories(folder, error);
    if (!error) std::filesystem::permissions(folder, std::filesystem::perms::owner_all, error);
    if (error) return file_error(error.value(), folder);
    return Staging(folder);
}

Staging::~Staging() {
    std::error_code ignored;
    if (!folder_.empty()) std::filesystem::remove_all(folder_, ignored);
}

}  // namespace lapwing::exchange

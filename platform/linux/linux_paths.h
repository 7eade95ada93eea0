// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <optional>

#include "platform/api/paths.h"

namespace lapwing::platform {

/// The XDG base and user directories, by the application's and organisation's names.
class LinuxPaths final : public Paths {
public:
    /// `data`: a library somewhere else, as the person asked on the command line.
    explicit LinuxPaths(std::optional<std::filesystem::path> data = {}) : data_(std::move(data)) {}

    [[nodiscard]] std::filesystem::path data() const override;
    [[nodiscard]] std::filesystem::path documents() const override;
    [[nodiscard]] std::filesystem::path scratch() const override;

private:
    std::optional<std::filesystem::path> data_;
};

}  // namespace lapwing::platform

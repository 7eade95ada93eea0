// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <filesystem>

namespace lapwing::platform {

/// Where files belong on this device. The folders need not exist yet.
class Paths {
public:
    virtual ~Paths() = default;
    /// The library: database, photos, voice notes. Private to the app. On Android in no backup
    /// of the system's (allowBackup is off): nothing leaves the device by itself, the app makes its own
    /// backups.
    [[nodiscard]] virtual std::filesystem::path data() const = 0;
    /// Reports, session files and backups that the person asked for and can find without the app.
    [[nodiscard]] virtual std::filesystem::path documents() const = 0;
    /// Files on their way to another program; the system may clear it.
    [[nodiscard]] virtual std::filesystem::path scratch() const = 0;
};

}  // namespace lapwing::platform

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QDBusConnection>
#include <optional>

#include "platform/api/keep_awake.h"

namespace lapwing::platform {

/// org.freedesktop.ScreenSaver, freedesktop.org's idle inhibition interface. The desktop drops the inhibition
/// by itself when the program ends.
class LinuxKeepAwake final : public KeepAwake {
public:
    explicit LinuxKeepAwake(QDBusConnection bus) : bus_(std::move(bus)) {}
    ~LinuxKeepAwake() override { LinuxKeepAwake::keepAwake(false); }
    LinuxKeepAwake(const LinuxKeepAwake&) = delete;
    LinuxKeepAwake& operator=(const LinuxKeepAwake&) = delete;

    [[nodiscard]] bool available() const override;
    void keepAwake(bool on) override;
    [[nodiscard]] bool isOn() const override { return cookie_.has_value(); }

private:
    QDBusConnection bus_;
    std::optional<uint> cookie_;
};

}  // namespace lapwing::platform

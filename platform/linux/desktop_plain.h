// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "platform/api/haptics.h"
#include "platform/api/permissions.h"

namespace lapwing::platform {

/// No desktop computer ticks under the finger.
class NoHaptics final : public Haptics {
public:
    [[nodiscard]] bool available() const override { return false; }
    void tick() override {}
};

/// A Linux desktop has no permissions per program: whoever may open the device may use it.
class OpenPermissions final : public Permissions {
public:
    [[nodiscard]] State state(Permission /*permission*/) const override { return State::granted; }
    void request(Permission /*permission*/, Done done) override { done(State::granted); }
    bool openSystemSettings() override { return false; }
};

}  // namespace lapwing::platform

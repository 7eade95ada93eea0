// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <functional>

#include "platform/api/permissions.h"

namespace lapwing::platform {

/// The phone's own questions, through Qt (QPermission, Qt 6.5 and newer).
class AskedPermissions final : public Permissions {
public:
    /// `openSettings` opens the system's page for this app and says whether there is one.
    explicit AskedPermissions(std::function<bool()> openSettings) : openSettings_(std::move(openSettings)) {}

    [[nodiscard]] State state(Permission permission) const override;
    void request(Permission permission, Done done) override;
    bool openSystemSettings() override { return openSettings_(); }

private:
    std::function<bool()> openSettings_;
};

}  // namespace lapwing::platform

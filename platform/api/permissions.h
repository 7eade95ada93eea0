// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <functional>

namespace lapwing::platform {

enum class Permission { camera, microphone };

/// What the system lets the app use. Nothing is asked for before a person wants the thing itself.
class Permissions {
public:
    enum class State {
        not_asked,  ///< `request` will show the system's question
        granted,
        denied  ///< only the system's settings can change it now
    };
    using Done = std::function<void(State)>;

    virtual ~Permissions() = default;
    [[nodiscard]] virtual State state(Permission permission) const = 0;
    /// Asks if it was never asked; `done` is called once, on the calling thread, at once or later.
    virtual void request(Permission permission, Done done) = 0;
    /// Opens the system's page for this app's permissions; false where there is none.
    virtual bool openSystemSettings() = 0;
};

}  // namespace lapwing::platform

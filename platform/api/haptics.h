// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

namespace lapwing::platform {

/// The short tick that a gloved finger feels when a key took.
class Haptics {
public:
    virtual ~Haptics() = default;
    [[nodiscard]] virtual bool available() const = 0;  ///< false: the setting is not shown
    virtual void tick() = 0;
};

}  // namespace lapwing::platform

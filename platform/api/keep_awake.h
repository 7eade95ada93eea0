// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

namespace lapwing::platform {

/// Keeps the screen lit while both hands are on the engine.
class KeepAwake {
public:
    virtual ~KeepAwake() = default;
    [[nodiscard]] virtual bool available() const = 0;
    /// Takes effect until switched off or the program ends; saying the same twice changes nothing.
    virtual void keepAwake(bool on) = 0;
    [[nodiscard]] virtual bool isOn() const = 0;
};

}  // namespace lapwing::platform

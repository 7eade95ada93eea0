// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <functional>
#include <optional>

namespace lapwing::platform {

/// What the person has chosen for every program on this device. Nothing stands for "the system doesn't say".
class Appearance {
public:
    using Changed = std::function<void()>;

    virtual ~Appearance() = default;
    [[nodiscard]] virtual std::optional<bool> dark() const = 0;
    /// 1.0 is normal size; not clamped.
    [[nodiscard]] virtual std::optional<double> textScale() const = 0;
    [[nodiscard]] virtual std::optional<bool> reducedMotion() const = 0;
    /// `changed` is called on the main thread after any of them changed; one listener.
    virtual void listen(Changed changed) = 0;
};

}  // namespace lapwing::platform

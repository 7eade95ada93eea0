// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <cstdint>
#include <functional>
#include <span>

#include "core/base/result.h"

namespace lapwing::platform {

/// Hears speech: one channel, 16 bits, 16 000 samples a second, whatever the hardware has.
class Microphone {
public:
    static constexpr int rate = 16'000;

    struct Listener {
        std::function<void(std::span<const std::int16_t>)> heard;
        /// It went away while listening; nothing is heard any more.
        std::function<void(const Error&)> lost;
    };

    virtual ~Microphone() = default;
    /// Whether one is there now.
    [[nodiscard]] virtual bool available() const = 0;
    /// Listens until stop(); the listener is called on the calling thread. "microphone.none" or
    /// "microphone.busy" when it can't be opened.
    virtual Status start(Listener listener) = 0;
    /// Hands over what was heard last, then ends. Does nothing when nothing runs.
    virtual void stop() = 0;
};

}  // namespace lapwing::platform

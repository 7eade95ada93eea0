// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <filesystem>
#include <functional>

#include "core/base/result.h"

namespace lapwing::platform {

/// Plays one voice note at a time.
class SoundPlayer {
public:
    struct Now {
        bool playing = false;
        double at = 0;      ///< seconds
        double length = 0;  ///< seconds; 0 until it is known
    };
    struct Listener {
        std::function<void(const Now&)> changed;  ///< several times a second while it plays
        std::function<void(const Error&)> failed;
    };

    virtual ~SoundPlayer() = default;
    /// Plays `file` from `from` seconds on instead of whatever plays; the listener is called on the calling
    /// thread. At the end `changed` says not playing, at 0.
    virtual void play(const std::filesystem::path& file, double from, Listener listener) = 0;
    virtual void seek(double seconds) = 0;
    /// Silent, where it is.
    virtual void pause() = 0;
    /// Silent and forgotten: the listener is not called any more.
    virtual void stop() = 0;
};

}  // namespace lapwing::platform

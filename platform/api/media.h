// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <filesystem>

#include "platform/api/camera.h"
#include "platform/api/microphone.h"
#include "platform/api/sound_player.h"

namespace lapwing::platform {

/// Camera, microphone and speaker.
class Media {
public:
    virtual ~Media() = default;
    [[nodiscard]] virtual Camera& camera() = 0;
    [[nodiscard]] virtual Microphone& microphone() = 0;
    [[nodiscard]] virtual SoundPlayer& player() = 0;

    /// Writes a voice note's WAV file (one channel, 16 bits, Microphone::rate) to a new Ogg Opus file of
    /// about 24 kbit/s (RFC 6716, RFC 7845). Any thread; outlives the media.
    using PackSpeech = Status (*)(const std::filesystem::path& wav, const std::filesystem::path& to);
    /// Null where there is no encoder.
    [[nodiscard]] virtual PackSpeech packSpeech() const = 0;
};

/// Hands the media out. What stands behind them is large, so it is brought in when a person first wants it:
/// the app starts without.
class MediaStore {
public:
    virtual ~MediaStore() = default;
    /// The same every time; an error when this installation has none.
    virtual Result<Media*> media() = 0;
};

}  // namespace lapwing::platform

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "platform/api/media.h"
#include "platform/media/pack_speech.h"
#include "platform/media/qt_camera.h"
#include "platform/media/qt_microphone.h"
#include "platform/media/qt_sound_player.h"

namespace lapwing::platform {
namespace {

class QtMedia final : public Media {
public:
    [[nodiscard]] Camera& camera() override { return camera_; }
    [[nodiscard]] Microphone& microphone() override { return microphone_; }
    [[nodiscard]] SoundPlayer& player() override { return player_; }
    [[nodiscard]] PackSpeech packSpeech() const override { return &pack_speech; }

private:
    QtCamera camera_;
    QtMicrophone microphone_;
    QtSoundPlayer player_;
};

}  // namespace
}  // namespace lapwing::platform

/// What LoadedMedia looks for. The caller owns what it gets.
extern "C" Q_DECL_EXPORT lapwing::platform::Media* lapwing_media() {
    return new lapwing::platform::QtMedia;
}

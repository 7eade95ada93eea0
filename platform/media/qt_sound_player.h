// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QAudioOutput>
#include <QMediaPlayer>
#include <QObject>
#include <memory>

#include "platform/api/sound_player.h"

namespace lapwing::platform {

class QtSoundPlayer final : public QObject, public SoundPlayer {
    Q_OBJECT

public:
    void play(const std::filesystem::path& file, double from, Listener listener) override;
    void seek(double seconds) override;
    void pause() override;
    void stop() override;

private:
    void tell();

    std::unique_ptr<QMediaPlayer> player_;
    std::unique_ptr<QAudioOutput> speaker_;
    Listener listener_;
};

}  // namespace lapwing::platform

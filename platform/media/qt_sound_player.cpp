// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "platform/media/qt_sound_player.h"

#include <QAudioDevice>
#include <QMediaDevices>
#include <QUrl>
#include <utility>

namespace lapwing::platform {

void QtSoundPlayer::play(const std::filesystem::path& file, double from, Listener listener) {
    stop();
    listener_ = std::move(listener);
    if (QMediaDevices::defaultAudioOutput().isNull()) {
        if (listener_.failed)
            listener_.failed(fail("player.no_speaker",
                                  "No speaker or headphones were found. Connect some, then play it again.")
                                 .value());
        return;
    }
    speaker_ = std::make_unique<QAudioOutput>();
    player_ = std::make_unique<QMediaPlayer>();
    player_->setAudioOutput(speaker_.get());
    connect(player_.get(), &QMediaPlayer::positionChanged, this, &QtSoundPlayer::tell);
    connect(player_.get(), &QMediaPlayer::durationChanged, this, &QtSoundPlayer::tell);
    connect(player_.get(), &QMediaPlayer::playbackStateChanged, this, &QtSoundPlayer::tell);
    connect(
        player_.get(), &QMediaPlayer::errorOccurred, this, [this](QMediaPlayer::Error, const QString& why) {
            if (listener_.failed)
                listener_.failed(
                    fail("player.failed",
                         "This voice note can't be played here ({}). It is kept; hand the session over and "
                         "play it elsewhere.",
                         why.toStdString())
                        .value());
        });
    player_->setSource(QUrl::fromLocalFile(QString::fromStdString(file.string())));
    player_->play();
    if (from > 0) seek(from);
}

void QtSoundPlayer::tell() {
    if (!listener_.changed) return;
    const bool playing = player_->playbackState() == QMediaPlayer::PlayingState;
    const bool ended = player_->playbackState() == QMediaPlayer::StoppedState;
    listener_.changed({.playing = playing,
                       .at = ended ? 0.0 : double(player_->position()) / 1000,
                       .length = double(player_->duration()) / 1000});
}

void QtSoundPlayer::seek(double seconds) {
    if (player_) player_->setPosition(qint64(seconds * 1000));
}

void QtSoundPlayer::pause() {
    if (player_) player_->pause();
}

void QtSoundPlayer::stop() {
    listener_ = {};
    // Later: this may be called from one of the player's own signals.
    if (player_) {
        player_->disconnect(this);
        player_->stop();
        player_.release()->deleteLater();
        speaker_.release()->deleteLater();
    }
}

}  // namespace lapwing::platform

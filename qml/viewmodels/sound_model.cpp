// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/sound_model.h"

#include <algorithm>

#include "core/store/attachment_files.h"
#include "qml/viewmodels/length_text.h"

namespace lapwing {

SoundModel::~SoundModel() {
    if (player_) player_->stop();
}

double SoundModel::share() const {
    return seconds_ > 0 ? std::clamp(now_.at / seconds_, 0.0, 1.0) : 0.0;
}

QString SoundModel::atText() const {
    return length_text(now_.at);
}

void SoundModel::toggle(const QString& id, double seconds) {
    if (id == current_ && now_.playing) return player_->pause();
    play(id, seconds, id == current_ ? now_.at : 0);
}

void SoundModel::seek(const QString& id, double seconds, double share) {
    const double at = std::clamp(share, 0.0, 1.0) * seconds;
    if (id == current_ && now_.playing) return player_->seek(at);
    play(id, seconds, at);
}

void SoundModel::play(const QString& id, double seconds, double from) {
    const auto uuid = Uuid::parse(id.toStdString());
    const auto record = uuid ? app_->desk().record(RecordKind::attachment, *uuid) : std::nullopt;
    const auto* note = record ? std::get_if<Attachment>(&*record) : nullptr;
    if (!note) return;
    if (!app_->desk().files().has(note->sha256))
        return app_->tell(
            fail("attachment.file_gone",
                 "The sound of this voice note is missing from the library. Settings, Storage says what "
                 "can be done.")
                .value());
    const auto media = app_->devices().media.media();
    if (!media) return app_->tell(media.error());
    player_ = &(*media)->player();
    current_ = id;
    seconds_ = seconds;
    now_ = {.playing = true, .at = from, .length = seconds};
    emit changed();
    player_->play(app_->desk().files().path(note->sha256), from,
                  {.changed =
                       [this](const platform::SoundPlayer::Now& now) {
                           now_ = now;
                           emit changed();
                       },
                   .failed =
                       [this](const Error& error) {
                           stop();
                           app_->tell(error);
                       }});
}

void SoundModel::stop() {
    if (player_) player_->stop();
    now_ = {};
    current_.clear();
    emit changed();
}

}  // namespace lapwing

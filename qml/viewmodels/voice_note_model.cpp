// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/voice_note_model.h"

#include <QGuiApplication>
#include <algorithm>
#include <cmath>

#include "core/store/folder.h"
#include "qml/viewmodels/keep_evidence.h"
#include "qml/viewmodels/length_text.h"

namespace lapwing {
namespace {

constexpr double quietest_db = -60;
constexpr double sync_every_s = 2;

double loudness(std::span<const std::int16_t> samples) {
    double sum = 0;
    for (const double sample : samples)
        sum += sample * sample;
    const double share = std::sqrt(sum / double(std::max<std::size_t>(samples.size(), 1))) / 32'768;
    return share > 0 ? std::clamp(1 - 20 * std::log10(share) / quietest_db, 0.0, 1.0) : 0.0;
}

}  // namespace

VoiceNoteModel::VoiceNoteModel(QObject* parent) : CaptureBacked(parent) {
    connect(qGuiApp, &QGuiApplication::applicationStateChanged, this, [this](Qt::ApplicationState now) {
        if (now == Qt::ApplicationHidden || now == Qt::ApplicationSuspended) stop();
    });
}

VoiceNoteModel::~VoiceNoteModel() {
    stop();
}

double VoiceNoteModel::seconds() const {
    return tape_ ? tape_->seconds() : last_s_;
}

QString VoiceNoteModel::lengthText() const {
    return length_text(seconds());
}

bool VoiceNoteModel::busy() const {
    return microphone_ || state() == QLatin1String("keeping");
}

void VoiceNoteModel::start() {
    if (busy()) return;
    wanted_ = true;
    allow(platform::Permission::microphone, [this] {
        if (wanted_ && !busy()) listen();
    });
}

void VoiceNoteModel::listen() {
    const QString ready = QStringLiteral("ready");
    const auto media = app()->devices().media.media();
    if (!media) return block(media.error(), ready);
    auto recording = app()->desk().recordings().begin(blank());
    if (!recording) return block(recording.error(), ready);
    auto tape = store::Tape::start(recording->sound);
    auto started = tape ? (*media)->microphone().start(
                              {.heard = [this](std::span<const std::int16_t> samples) { hear(samples); },
                               .lost =
                                   [this](const Error& error) {
                                       app()->tell(error);
                                       stop();
                                   }})
                        : Status(tl::unexpected(tape.error()));
    if (!started) {
        app()->desk().recordings().forget(*recording);
        return block(started.error(), ready);
    }
    microphone_ = &(*media)->microphone();
    recording_ = std::move(*recording);
    tape_ = std::move(*tape);
    synced_s_ = 0;
    go(QStringLiteral("recording"));
    emit heard();
}

void VoiceNoteModel::hear(std::span<const std::int16_t> samples) {
    if (!tape_) return;
    if (auto added = tape_->add(samples); !added) {
        app()->tell(added.error());
        return stop();
    }
    level_ = loudness(samples);
    if (tape_->seconds() - synced_s_ >= sync_every_s) syncNow();
    emit heard();
}

/// Onto the storage itself, so that a flat battery costs seconds and not the whole note.
void VoiceNoteModel::syncNow() {
    synced_s_ = tape_->seconds();
    app()->background().start([sound = recording_->sound] { (void)store::sync_file(sound); });
}

void VoiceNoteModel::stop() {
    wanted_ = false;
    if (auto* microphone = std::exchange(microphone_, nullptr)) {
        microphone->stop();
        finish();
    }
}

void VoiceNoteModel::finish() {
    last_s_ = tape_->seconds();
    tape_.reset();
    level_ = 0;
    const auto recording = *std::exchange(recording_, std::nullopt);
    go(QStringLiteral("keeping"));
    emit heard();
    keep_voice(*app(), recording, [guard = QPointer(this)](const Result<Attachment>& kept) {
        if (!guard) return;
        if (!kept) return guard->block(kept.error(), QStringLiteral("ready"));
        guard->go(QStringLiteral("kept"));
        emit guard->kept(QString::fromStdString(kept->id.text()));
    });
}

}  // namespace lapwing

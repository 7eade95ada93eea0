// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "platform/media/qt_microphone.h"

#include <QAudioDevice>
#include <QMediaDevices>
#include <utility>

namespace lapwing::platform {
namespace {

QAudioFormat speech() {
    QAudioFormat format;
    format.setSampleRate(Microphone::rate);
    format.setChannelCount(1);
    format.setSampleFormat(QAudioFormat::Int16);
    return format;
}

}  // namespace

bool QtMicrophone::available() const {
    return !QMediaDevices::defaultAudioInput().isNull();
}

Status QtMicrophone::start(Listener listener) {
    stop();
    const auto device = QMediaDevices::defaultAudioInput();
    if (device.isNull())
        return fail(
            "microphone.none",
            "No microphone was found. Connect one, or allow Lapwing to use it in the system's settings.");
    source_ = std::make_unique<QAudioSource>(device, speech());
    // A second: a busy screen must not cost a word.
    source_->setBufferSize(rate * qsizetype{sizeof(std::int16_t)});
    listener_ = std::move(listener);
    sound_ = source_->start();
    if (!sound_ || source_->error() != QAudio::NoError) {
        stop();
        return fail("microphone.busy",
                    "The microphone {} can't be opened. Close other programs that record, then try again.",
                    device.description().toStdString());
    }
    connect(sound_, &QIODevice::readyRead, this, &QtMicrophone::read);
    connect(source_.get(), &QAudioSource::stateChanged, this, &QtMicrophone::lookWhy);
    return {};
}

void QtMicrophone::read() {
    while (sound_ && listener_.heard) {
        samples_.resize(rate / 4);
        const auto bytes = sound_->read(reinterpret_cast<char*>(samples_.data()),
                                        static_cast<qint64>(samples_.size()) * qint64{sizeof(std::int16_t)});
        if (bytes < qint64(sizeof(std::int16_t))) return;
        listener_.heard(std::span(samples_).first(std::size_t(bytes) / sizeof(std::int16_t)));
    }
}

void QtMicrophone::lookWhy(QAudio::State state) {
    if (state != QAudio::StoppedState || source_->error() == QAudio::NoError) return;
    const auto lost = listener_.lost;
    // Not here: the source is in the middle of telling.
    QMetaObject::invokeMethod(
        this,
        [this, lost] {
            stop();
            if (lost)
                lost(fail("microphone.lost", "The microphone stopped. What was recorded until then is kept.")
                         .value());
        },
        Qt::QueuedConnection);
}

void QtMicrophone::stop() {
    if (!source_) return;
    read();
    source_->disconnect(this);
    source_->stop();
    sound_ = nullptr;
    source_.reset();
    listener_ = {};
}

}  // namespace lapwing::platform

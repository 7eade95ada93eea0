// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <span>

#include "core/store/recordings.h"
#include "core/store/tape.h"
#include "qml/viewmodels/capture_backed.h"

namespace lapwing {

/// Records one voice note. What is heard is on the storage as it is heard; stopping, leaving the page, losing
/// the screen or the microphone all keep what there is. States: "ready", "recording", "keeping" (until the
/// commit), "kept".
class VoiceNoteModel : public lapwing::CaptureBacked {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(double seconds READ seconds NOTIFY heard)
    Q_PROPERTY(QString lengthText READ lengthText NOTIFY heard)
    Q_PROPERTY(double level READ level NOTIFY heard)

public:
    explicit VoiceNoteModel(QObject* parent = nullptr);
    ~VoiceNoteModel() override;

    [[nodiscard]] double seconds() const;
    /// "0:12"
    [[nodiscard]] QString lengthText() const;
    /// How loud it is, 0..1, on the scale that ears have (60 dB below the loudest is 0).
    [[nodiscard]] double level() const { return level_; }

    /// Asks for permission the first time, then listens.
    Q_INVOKABLE void start();
    Q_INVOKABLE void stop();

signals:
    void heard();

private:
    [[nodiscard]] bool busy() const;
    void listen();
    void hear(std::span<const std::int16_t> samples);
    void syncNow();
    void finish();

    bool wanted_ = false;  ///< not let go of while the system asked for permission
    double level_ = 0;
    double synced_s_ = 0;
    double last_s_ = 0;  ///< length of the one before
    std::optional<store::Recording> recording_;
    std::optional<store::Tape> tape_;
    platform::Microphone* microphone_ = nullptr;  ///< while it listens
};

}  // namespace lapwing

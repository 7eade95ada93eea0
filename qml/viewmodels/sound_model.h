// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "qml/viewmodels/app_context.h"

namespace lapwing {

/// Plays voice notes of a page, one at a time.
class SoundModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lapwing::AppContext* app MEMBER app_ REQUIRED)
    Q_PROPERTY(QString current READ current NOTIFY changed)
    Q_PROPERTY(bool playing READ playing NOTIFY changed)
    Q_PROPERTY(double share READ share NOTIFY changed)
    Q_PROPERTY(QString atText READ atText NOTIFY changed)

public:
    using QObject::QObject;
    ~SoundModel() override;

    /// The voice note that plays or waits in its middle; empty when none does.
    [[nodiscard]] QString current() const { return current_; }
    [[nodiscard]] bool playing() const { return now_.playing; }
    /// How much of it was heard, 0..1.
    [[nodiscard]] double share() const;
    [[nodiscard]] QString atText() const;

    /// Plays, or pauses and goes on. `seconds` is how long it lasts.
    Q_INVOKABLE void toggle(const QString& id, double seconds);
    /// Goes to a share (0..1) of the note, and plays on from there if it played.
    Q_INVOKABLE void seek(const QString& id, double seconds, double share);
    Q_INVOKABLE void stop();

signals:
    void changed();

private:
    void play(const QString& id, double seconds, double from);

    AppContext* app_ = nullptr;
    platform::SoundPlayer* player_ = nullptr;
    platform::SoundPlayer::Now now_;
    QString current_;
    double seconds_ = 0;
};

}  // namespace lapwing

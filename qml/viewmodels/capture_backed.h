// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <functional>

#include "qml/viewmodels/evidence_backed.h"

namespace lapwing {

/// What taking a photo and recording a voice note have in common: the system's permission, asked for when a
/// person first wants the thing itself, and the sentence when it can't be had.
class CaptureBacked : public lapwing::EvidenceBacked {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("what PhotoModel and VoiceNoteModel stand on")
    Q_PROPERTY(QString state READ state NOTIFY stateChanged)
    Q_PROPERTY(QString blocked READ blocked NOTIFY stateChanged)
    Q_PROPERTY(bool canOpenSettings READ canOpenSettings NOTIFY stateChanged)

public:
    using EvidenceBacked::EvidenceBacked;

    [[nodiscard]] QString state() const { return state_; }
    /// Why it can't be done and what to do; empty while nothing stands in the way.
    [[nodiscard]] QString blocked() const { return blocked_; }
    /// The system's page would help.
    [[nodiscard]] bool canOpenSettings() const { return denied_; }
    Q_INVOKABLE void openSystemSettings();

signals:
    void stateChanged();
    void kept(const QString& id);

protected:
    /// Calls `granted` at once or after the system asked, unless this object is gone by then.
    void allow(platform::Permission permission, const std::function<void()>& granted);
    void block(const Error& error, const QString& state);
    void go(const QString& state);
    /// A record for what is taken now, with its tie.
    [[nodiscard]] Attachment blank() const;

private:
    QString state_ = QStringLiteral("ready");
    QString blocked_;
    bool denied_ = false;
};

}  // namespace lapwing

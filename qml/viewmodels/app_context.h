// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QtQml/qqmlregistration.h>

#include <QObject>
#include <QPointer>
#include <QString>
#include <QThreadPool>
#include <functional>

#include "core/findings/reference.h"
#include "core/workflow/desk.h"
#include "platform/api/devices.h"
#include "qml/format/formatter.h"
#include "qml/viewmodels/app_settings.h"
#include "qml/viewmodels/odds_memory.h"
#include "qml/viewmodels/photo_eye.h"

namespace lapwing {

/// What every page is handed: the desk (through it everything is read and changed), the phone's services, the
/// settings, and the way back to the UI thread. Made once by the composition root.
class AppContext : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the app")
    Q_PROPERTY(lapwing::AppSettings* settings READ settings CONSTANT)

public:
    AppContext(workflow::Desk& desk, platform::Devices& devices, AppSettings& settings,
               const findings::Reference& reference, QObject* parent = nullptr);

    [[nodiscard]] workflow::Desk& desk() const { return desk_; }
    [[nodiscard]] platform::Devices& devices() const { return devices_; }
    [[nodiscard]] AppSettings* settings() const { return &settings_; }
    [[nodiscard]] const findings::Reference& reference() const { return reference_; }
    /// For reading that takes a moment. What runs there has ended before the context and the desk go.
    [[nodiscard]] QThreadPool& background() { return background_; }
    [[nodiscard]] OddsMemory& odds() { return odds_; }
    /// What looks into photos.
    [[nodiscard]] PhotoEyeStore& eye() { return eye_; }
    /// In the units and language chosen now. Don't keep the reference across events.
    [[nodiscard]] const format::Formatter& format() const { return format_; }

    /// Runs a command off the UI thread. `done` is called on the UI thread, after the commit, unless
    /// `receiver` is gone by then. A failure is also shown to the person (`told`).
    using Done = std::function<void(const Result<workflow::Step>&)>;
    void run(workflow::Intent intent, QObject* receiver, Done done = {});

    /// The same for a step that no Undo is offered for.
    void runForGood(workflow::Intent intent, QObject* receiver, Done done = {});

    /// Takes back one step (by its number), and says so.
    Q_INVOKABLE void undo(qint64 step);
    /// Does a step again that was taken back, and says so.
    Q_INVOKABLE void redo(qint64 step);

    /// A haptic tick, when there is a motor and the person wants it.
    Q_INVOKABLE void tick();
    /// Keeps the screen on while a test is going on.
    Q_INVOKABLE void keepAwake(bool on);

    /// Half-typed digits and places, which survive the end of the process.
    Q_INVOKABLE void keepDraft(const QString& key, const QString& text);
    [[nodiscard]] Q_INVOKABLE QString draft(const QString& key) const;

    /// Shows what is in a file that the system handed to the app: a session file or a backup.
    void openFile(const QString& file) { emit openRequested(file); }

    /// Shows a sentence to the person.
    void tell(const Error& error);

    /// The texts and the default locale were exchanged: formats anew, and has every page built anew.
    void changeLanguage();

signals:
    /// Something was committed. On the UI thread.
    void changed(const lapwing::workflow::Change& change);
    /// A step was done that can be taken back: "Cylinder 2 removed".
    void stepDone(const QString& text, qint64 step);
    /// A step was taken back, and can be done again: "Undone: Cylinder 2 removed".
    void stepUndone(const QString& text, qint64 step);
    /// A sentence for the person: something went wrong, or happened while opening.
    void told(const QString& text);
    void openRequested(const QString& file);
    /// Units, language or number format changed: everything shown must be formatted anew.
    void formatChanged();
    /// Every text is another one now.
    void languageChanged();

private:
    void formatAnew();
    void run(workflow::Intent intent, QObject* receiver, Done done, bool undoable);
    std::function<void(const Result<workflow::Step>&)> answered(
        std::function<void(const workflow::Step&)> then);

    workflow::Desk& desk_;
    platform::Devices& devices_;
    AppSettings& settings_;
    const findings::Reference& reference_;
    format::Formatter format_;
    PhotoEyeStore eye_;
    OddsMemory odds_;
    QThreadPool background_;
};

}  // namespace lapwing

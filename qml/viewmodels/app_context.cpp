// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/app_context.h"

#include <QPointer>
#include <algorithm>

#include "qml/viewmodels/step_text.h"

namespace lapwing {
namespace {

format::Choice choice_of(const AppSettings& settings) {
    format::Choice choice;
    choice.pressure = Unit<PressureTag>::find(settings.pressureUnit().toStdString()).value_or(units::bar);
    choice.inches = settings.clearanceUnit() == QLatin1String("thou");
    return choice;
}

/// Plan and notes are no evidence.
bool concerns_odds(const workflow::Change& change) {
    return std::any_of(change.kinds.begin(), change.kinds.end(), [](RecordKind kind) {
        return kind != RecordKind::plan_line && kind != RecordKind::note;
    });
}

}  // namespace

AppContext::AppContext(workflow::Desk& desk, platform::Devices& devices, AppSettings& settings,
                       const findings::Reference& reference, QObject* parent)
    : QObject(parent),
      desk_(desk),
      devices_(devices),
      settings_(settings),
      reference_(reference),
      format_(choice_of(settings), QLocale()) {
    // The desk calls back on its own thread; everything that reaches a page does so on the UI thread.
    desk_.listen([self = QPointer<AppContext>(this), this](const workflow::Change& change) {
        if (self)
            QMetaObject::invokeMethod(
                this,
                [this, change] {
                    if (concerns_odds(change)) odds_.forget();
                    emit changed(change);
                },
                Qt::QueuedConnection);
    });
    desk_.on_trouble([self = QPointer<AppContext>(this), this](const Error& error) {
        if (self)
            QMetaObject::invokeMethod(
                this, [this, error] { tell(error); }, Qt::QueuedConnection);
    });
    connect(&settings_, &AppSettings::unitsChanged, this, &AppContext::formatAnew);
}

void AppContext::formatAnew() {
    format_ = format::Formatter(choice_of(settings_), QLocale());
    emit formatChanged();
}

void AppContext::changeLanguage() {
    formatAnew();
    emit languageChanged();
}

void AppContext::run(workflow::Intent intent, QObject* receiver, Done done) {
    run(std::move(intent), receiver, std::move(done), true);
}

void AppContext::runForGood(workflow::Intent intent, QObject* receiver, Done done) {
    run(std::move(intent), receiver, std::move(done), false);
}

void AppContext::run(workflow::Intent intent, QObject* receiver, Done done, bool undoable) {
    desk_.run(std::move(intent), [this, undoable, guard = QPointer<QObject>(receiver),
                                  done = std::move(done)](Result<workflow::Step> result) {
        QMetaObject::invokeMethod(
            this,
            [this, undoable, guard, done, result = std::move(result)] {
                if (!result) tell(result.error());
                if (result && undoable) emit stepDone(step_text(*result, format_), result->number);
                if (result && !undoable) emit told(step_text(*result, format_));
                if (guard && done) done(result);
            },
            Qt::QueuedConnection);
    });
}

void AppContext::undo(qint64 step) {
    desk_.undo(step, answered([this](const workflow::Step& taken_back) {
                   emit stepUndone(tr("Undone: %1").arg(step_text(taken_back, format_)), taken_back.number);
               }));
}

void AppContext::redo(qint64 step) {
    desk_.redo(step, answered([this](const workflow::Step& again) {
                   emit stepDone(tr("Done again: %1").arg(step_text(again, format_)), again.number);
               }));
}

/// Back on this thread; what failed is said.
std::function<void(const Result<workflow::Step>&)> AppContext::answered(
    std::function<void(const workflow::Step&)> then) {
    return [this, then = std::move(then)](const Result<workflow::Step>& result) {
        QMetaObject::invokeMethod(
            this,
            [this, then, result] {
                if (result)
                    then(*result);
                else
                    tell(result.error());
            },
            Qt::QueuedConnection);
    };
}

void AppContext::tick() {
    if (settings_.haptics()) devices_.haptics.tick();
}

void AppContext::keepAwake(bool on) {
    devices_.keepAwake.keepAwake(on);
}

void AppContext::keepDraft(const QString& key, const QString& text) {
    desk_.keep_draft(key.toStdString(), text.toStdString());
}

QString AppContext::draft(const QString& key) const {
    return QString::fromStdString(desk_.draft(key.toStdString()));
}

void AppContext::tell(const Error& error) {
    emit told(format_.text(error));
}

}  // namespace lapwing

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QPointer>
#include <QQmlApplicationEngine>
#include <QQuickWindow>
#include <QString>
#include <memory>
#include <vector>

#include "core/base/clock.h"
#include "core/findings/reference.h"
#include "core/workflow/desk.h"
#include "platform/api/devices.h"
#include "qml/app/language.h"
#include "qml/viewmodels/app_context.h"
#include "qml/viewmodels/app_settings.h"
#include "qml/viewmodels/look_model.h"

namespace lapwing {

/// The composition root: builds every object of the app once and hands references down. Nothing else reaches
/// them another way.
class Composition {
public:
    /// Opens the library in the devices' data folder. Devices and clock have to outlive the composition.
    static Result<std::unique_ptr<Composition>> make(platform::Devices devices, const Clock& clock);
    ~Composition();

    /// Puts the app on the screen through an engine whose import path this sets up. Null when the QML is
    /// broken.
    QQuickWindow* show(QQmlApplicationEngine& engine);

    [[nodiscard]] AppContext& context() { return *context_; }
    [[nodiscard]] AppSettings& settings() { return *settings_; }

    static void addImports(QQmlEngine& engine);

    /// The window that stands in for the app when `make` failed: says what is wrong and what to do.
    static QQuickWindow* showTrouble(QQmlApplicationEngine& engine, const platform::Devices& devices,
                                     const Error& error);

private:
    Composition(platform::Devices devices, workflow::Opened opened, findings::Reference reference);

    platform::Devices devices_;
    std::unique_ptr<workflow::Desk> desk_;
    std::vector<Error> told_;
    findings::Reference reference_;
    std::unique_ptr<AppSettings> settings_;
    Language language_;
    std::unique_ptr<LookModel> look_;
    std::unique_ptr<AppContext> context_;
    QPointer<QQuickWindow> window_;
};

}  // namespace lapwing

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QCoreApplication>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

#include "core/findings/reference.h"
#include "core/workflow/engines.h"
#include "core/workflow/sessions.h"
#include "core/workflow/testers.h"
#include "platform/fake/fake_devices.h"
#include "qml/viewmodels/app_context.h"
#include "qml/viewmodels/engine_changes.h"

namespace lapwing {

/// A real library in a folder of its own, with scripted services: what a view-model meets in the app.
class Shop {
public:
    Shop() : fake(folder.path().toStdString()) {
        auto opened = workflow::Desk::open(fake.paths.data(), clock);
        if (!opened) qFatal("%s", opened.error().english.c_str());
        desk = std::move(opened->desk);
        auto read = findings::built_in_reference();
        if (!read) qFatal("%s", read.error().english.c_str());
        reference = std::move(*read);
        settings = std::make_unique<AppSettings>(folder.filePath(QStringLiteral("settings.ini")));
        app = std::make_unique<AppContext>(*desk, devices, *settings, reference);
        QObject::connect(app.get(), &AppContext::told, app.get(),
                         [this](const QString& text) { told << text; });
    }
    // The desk's thread calls back into the context.
    ~Shop() {
        app->background().waitForDone();
        desk.reset();
    }

    /// Everything asked for is committed and has reached the view-models.
    void settle() const {
        desk->flush();
        QCoreApplication::sendPostedEvents();
        QCoreApplication::processEvents();
    }

    Engine add_engine(const QString& name, int cylinders, Arrangement arrangement = Arrangement::in_line,
                      std::vector<std::string> tags = {}) {
        Engine engine = new_engine(name, cylinders, arrangement).value();
        engine.id = desk->make_id<EngineId>();
        engine.made_at = clock.now();
        engine.tags = std::move(tags);
        desk->run(workflow::save_engine(engine));
        settle();
        return engine;
    }

    SessionId open_session(const Engine& engine, const std::string& title) {
        const auto id = desk->make_id<SessionId>();
        desk->run(workflow::open_session(id, engine.id, title));
        settle();
        return id;
    }

    Engine engine(const Engine& of) const { return desk->engine(of.id).value(); }
    /// Undo touched under the message of the last step.
    void undo() {
        const auto step = desk->last_step();
        QVERIFY2(step, "there is nothing to undo");
        app->undo(step->number);
        settle();
    }

    QTemporaryDir folder;
    FixedClock clock{Timestamp{1'773'480'600'000, 60}};  // 2026-03-14T10:30+01:00
    platform::FakeDevices fake;
    platform::Devices devices = fake.devices();
    findings::Reference reference;
    std::unique_ptr<workflow::Desk> desk;
    std::unique_ptr<AppSettings> settings;
    std::unique_ptr<AppContext> app;
    QStringList told;
};

inline QString text_id(const auto& id) {
    return QString::fromStdString(id.text());
}

/// A view-model made as QML makes one: properties first, then completed.
template <class Model>
void complete(Model& model, Shop& shop) {
    model.setApp(shop.app.get());
    model.componentComplete();
}

inline QVariantMap typed(const QString& text, const QString& unit = {}) {
    return {{QStringLiteral("text"), text}, {QStringLiteral("unit"), unit}};
}

inline QVariantMap chosen(const QStringList& words) {
    return {{QStringLiteral("chosen"), words}};
}

}  // namespace lapwing

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/engine_backed.h"

namespace lapwing {

void EngineBacked::setApp(AppContext* app) {
    if (app_ == app) return;
    app_ = app;
    emit appChanged();
}

void EngineBacked::setEngineId(const QString& id) {
    const auto engine = EngineId::parse(id.toStdString()).value_or(EngineId{});
    if (engine == engine_) return;
    engine_ = engine;
    emit engineIdChanged();
    if (complete_) reload();
}

void EngineBacked::componentComplete() {
    complete_ = true;
    connect(app_, &AppContext::changed, this, [this](const workflow::Change& change) {
        bool here = change.engines.contains(engine_) || change.kinds.contains(RecordKind::tester);
        for (const auto session : change.sessions)
            here = here || app_->desk().engine_of(session) == engine_;
        if (here) reload();
    });
    connect(app_, &AppContext::formatChanged, this, &EngineBacked::reload);
    reload();
}

void EngineBacked::reload() {
    const auto engine = app_->desk().engine(engine_);
    name_ = engine ? QString::fromStdString(engine->name) : QString();
    refresh();
    emit refreshed();
}

}  // namespace lapwing

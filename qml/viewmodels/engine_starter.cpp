// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/engine_starter.h"

#include <algorithm>

#include "core/workflow/engines.h"
#include "core/workflow/sessions.h"
#include "qml/viewmodels/engine_changes.h"
#include "qml/viewmodels/form_lines.h"

namespace lapwing {

void EngineStarter::setApp(AppContext* app) {
    if (app_ == app) return;
    app_ = app;
    emit appChanged();
}

QVariantList EngineStarter::arrangements() const {
    QVariantList list;
    if (!app_) return list;
    for (const auto arrangement : FormLines<Engine>::all<Arrangement>())
        list << QVariantMap{{QStringLiteral("value"), QString::fromUtf8(word(arrangement).data())},
                            {QStringLiteral("text"), app_->format().name(arrangement)}};
    return list;
}

QString EngineStarter::addEngine(const QString& name, const QString& cylinders, const QString& arrangement) {
    auto made = forms::whole(cylinders.trimmed(), tr("Number of cylinders"))
                    .and_then([&](int count) {
                        return new_engine(
                            name, count,
                            from_word<Arrangement>(arrangement.toStdString()).value_or(Arrangement::in_line));
                    })
                    .and_then([&](Engine engine) {
                        engine.id = app_->desk().make_id<EngineId>();
                        engine.made_at = app_->desk().clock().now();
                        return checked(std::move(engine));
                    });
    if (!made) return app_->format().text(made.error());
    const QString id = QString::fromStdString(made->id.text());
    app_->run(workflow::save_engine(std::move(*made)), this, [this, id](const Result<workflow::Step>& step) {
        if (step)
            emit engineAdded(id);
        else
            emit engineRefused();
    });
    return {};
}

/// The first visit finds the engine as it is; one that follows ticked work looks whether that helped.
QString EngineStarter::titleOfNext(EngineId engine) const {
    const auto sessions = app_->desk().sessions(engine);
    if (sessions.empty()) return tr("As found");
    const auto newest = std::ranges::max_element(
        sessions, {}, [](const Session& session) { return session.opened_at.unix_ms; });
    const auto visit = app_->desk().visit(newest->id);
    const bool repaired = visit && std::ranges::any_of(visit->plan, [](const PlanLine& line) {
                              return line.done_at.has_value();
                          });
    return repaired ? tr("After repair") : QString();
}

void EngineStarter::openSession(const QString& engineId) {
    const auto engine = EngineId::parse(engineId.toStdString());
    if (!engine) return;
    const auto session = app_->desk().make_id<SessionId>();
    const QString title = titleOfNext(*engine);
    app_->run(workflow::open_session(session, *engine, title.toStdString()), this,
              [this, id = QString::fromStdString(session.text())](const Result<workflow::Step>& step) {
                  if (step) emit sessionOpened(id);
              });
}

}  // namespace lapwing

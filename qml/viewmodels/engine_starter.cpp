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

template <class Enum>
static QVariantList choices(const AppContext* app) {
    QVariantList list;
    if (!app) return list;
    for (const auto one : FormLines<Engine>::all<Enum>())
        list << QVariantMap{{QStringLiteral("value"), QString::fromUtf8(word(one).data())},
                            {QStringLiteral("text"), app->format().name(one)}};
    return list;
}

QVariantList EngineStarter::arrangements() const {
    return choices<Arrangement>(app_);
}

QVariantList EngineStarter::cycles() const {
    return choices<StrokeCycle>(app_);
}

QVariantList EngineStarter::fuels() const {
    return choices<Fuel>(app_);
}

QString EngineStarter::addEngine(const QString& name, const QString& cylinders, const QString& arrangement,
                                 const QString& cycle, const QString& fuel) {
    // What stands first on the sheet is spoken of first.
    if (name.trimmed().isEmpty())
        if (auto nameless = new_engine(name, 1, Arrangement::single).and_then([this](Engine engine) {
                engine.id = app_->desk().make_id<EngineId>();
                engine.made_at = app_->desk().clock().now();
                return checked(std::move(engine));
            });
            !nameless)
            return app_->format().text(nameless.error());
    auto made = forms::whole(cylinders.trimmed(), tr("Number of cylinders"))
                    .and_then([&](int count) {
                        return new_engine(
                            name, count,
                            from_word<Arrangement>(arrangement.toStdString()).value_or(Arrangement::in_line));
                    })
                    .and_then([&](Engine engine) {
                        engine.id = app_->desk().make_id<EngineId>();
                        engine.made_at = app_->desk().clock().now();
                        set_cycle(engine, from_word<StrokeCycle>(cycle.toStdString()).value_or(engine.cycle));
                        engine.fuel = from_word<Fuel>(fuel.toStdString()).value_or(engine.fuel);
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

/// Today's session in which nothing was recorded yet: a second touch is a slip, not another visit.
std::optional<SessionId> EngineStarter::emptySession(EngineId engine) const {
    const auto& desk = app_->desk();
    const auto sessions = desk.sessions(engine);
    const auto day = [this](Timestamp at) { return app_->format().shortDate(at); };
    if (sessions.empty() || day(sessions.front().opened_at) != day(desk.clock().now())) return std::nullopt;
    const auto visit = desk.visit(sessions.front().id);
    const bool empty = visit && visit->readings.empty() && visit->exits.empty() &&
                       visit->clearances.empty() && visit->attachments.empty() && visit->notes.empty() &&
                       visit->plan.empty();
    return empty ? std::optional(sessions.front().id) : std::nullopt;
}

void EngineStarter::openSession(const QString& engineId) {
    const auto engine = EngineId::parse(engineId.toStdString());
    if (!engine) return;
    if (const auto empty = emptySession(*engine)) {
        emit sessionOpened(QString::fromStdString(empty->text()));
        return;
    }
    const auto session = app_->desk().make_id<SessionId>();
    const QString title = titleOfNext(*engine);
    app_->run(workflow::open_session(session, *engine, title.toStdString()), this,
              [this, id = QString::fromStdString(session.text())](const Result<workflow::Step>& step) {
                  if (step) emit sessionOpened(id);
              });
}

}  // namespace lapwing

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/session_backed.h"

#include <QStringList>

#include "qml/viewmodels/session_name.h"

namespace lapwing {

SessionBacked::SessionBacked(QObject* parent) : QObject(parent) {
    dossier_.visits.emplace_back();
}

void SessionBacked::setApp(AppContext* app) {
    if (app_ == app) return;
    app_ = app;
    emit appChanged();
}

void SessionBacked::setSessionId(const QString& id) {
    if (session_id_ == id) return;
    session_id_ = id;
    emit sessionIdChanged();
    if (complete_) reload();
}

void SessionBacked::componentComplete() {
    complete_ = true;
    connect(app_, &AppContext::changed, this, &SessionBacked::take);
    connect(app_, &AppContext::formatChanged, this, [this] {
        line_.reset();
        refresh();
        emit refreshed();
    });
    reload();
}

QString SessionBacked::engineId() const {
    return QString::fromStdString(engine().id.text());
}

QString SessionBacked::engineName() const {
    return QString::fromStdString(engine().name);
}

QString SessionBacked::visitLine() const {
    if (!found_) return {};
    // No altitude: beside sessions that name their mileage it would read as one.
    if (!line_) line_ = session_name(visit(), app_->desk().sessions(engine().id), format()).line();
    return *line_;
}

const format::Formatter& SessionBacked::format() const {
    static const format::Formatter before;
    return app_ ? app_->format() : before;
}

const findings::Reference& SessionBacked::reference() const {
    static const findings::Reference before;
    return app_ ? app_->reference() : before;
}

void SessionBacked::take(const workflow::Change& change) {
    const bool here = change.sessions.contains(session().id) || change.engines.contains(engine().id) ||
                      change.kinds.contains(RecordKind::tester);
    if (here || !found_) reload();
}

void SessionBacked::reload() {
    const auto id = SessionId::parse(session_id_.toStdString());
    auto visit = id ? app_->desk().visit(*id) : std::nullopt;
    line_.reset();
    auto engine = visit ? app_->desk().engine(visit->session.engine) : std::nullopt;
    found_ = engine.has_value();
    if (found_) {
        dossier_.engine = std::move(*engine);
        dossier_.testers = app_->desk().testers();
        dossier_.visits.front() = std::move(*visit);
    }
    if (found_) sessionRead();
    refresh();
    emit refreshed();
    if (found_ && wantsFindings()) think();
}

void SessionBacked::think() {
    if (!thinker_) thinker_ = std::make_unique<workflow::Background>();
    // The dossier is copied: the page may read it again while this one is thought about. The thinker ends
    // before the page does, so posting to the page is safe; a posted event dies with it.
    thinker_->ask<findings::Findings>(
        [dossier = dossier_, &desk = app_->desk(), &reference = reference(),
         &models = models_](const std::stop_token&) mutable {
            findings::FindingsOptions options;
            options.models = &models;
            // What earlier visits left open counts too.
            if (auto history = desk.dossier(dossier.engine.id))
                for (Visit& other : history->visits)
                    if (other.session.id != dossier.visits.front().session.id)
                        dossier.visits.push_back(std::move(other));
            return findings::find(dossier, dossier.visits.front(), reference, options);
        },
        [this](findings::Findings found) {
            QMetaObject::invokeMethod(
                this,
                [this, found = std::move(found)]() mutable {
                    findings_ = std::move(found);
                    refresh();
                    emit refreshed();
                },
                Qt::QueuedConnection);
        });
}

}  // namespace lapwing

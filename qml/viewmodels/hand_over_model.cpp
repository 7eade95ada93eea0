// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/hand_over_model.h"

#include "core/exchange/session_file.h"
#include "core/workflow/bare_photos.h"
#include "qml/viewmodels/my_call_model.h"
#include "qml/viewmodels/record_items.h"
#include "qml/viewmodels/session_name.h"

namespace lapwing {
namespace {

QString media_type(HandOverKind kind) {
    switch (kind) {
        case HandOverKind::report:
            return QStringLiteral("application/pdf");
        case HandOverKind::session_file:
            return QString::fromUtf8(exchange::session_media_type.data());
        case HandOverKind::table:
            return QStringLiteral("text/csv");
    }
    return {};
}

}  // namespace

bool HandOverModel::chosen(SessionId id) const {
    return !left_out_.contains(id);
}

QVariantList HandOverModel::visits() const {
    QVariantList list;
    if (!found()) return list;
    const auto all = app()->desk().sessions(engine().id);
    for (const auto& session : all) {
        const SessionName called = session_name(session, all, app()->desk(), format());
        list << QVariantMap{{"id", QString::fromStdString(session.id.text())},
                            {"title", called.name},
                            {"date", called.when},
                            {"chosen", chosen(session.id)}};
    }
    return list;
}

void HandOverModel::setWithOwner(bool with) {
    with_owner_ = with;
    emit refreshed();
}

void HandOverModel::toggleVisit(const QString& text) {
    const auto id = SessionId::parse(text.toStdString());
    if (!id) return;
    if (!left_out_.erase(*id)) left_out_.insert(*id);
    emit refreshed();
}

bool HandOverModel::canShare() const {
    return app() && app()->devices().share.way() != platform::Share::Way::none;
}

QString HandOverModel::shareText() const {
    const bool folder = app() && app()->devices().share.way() == platform::Share::Way::show_folder;
    return folder ? tr("Show in folder") : tr("Share");
}

QString HandOverModel::fingerprint() const {
    return app() ? QString::fromStdString(workflow::own_fingerprint(app()->desk())) : QString();
}

bool HandOverModel::beforeCall() const {
    return app() && found() && call_wanted(*app(), visit());
}

workflow::HandOver HandOverModel::chosenVisits() const {
    workflow::HandOver out{engine().id, {}, with_owner_};
    for (const auto& visit : app()->desk().sessions(engine().id))
        if (chosen(visit.id)) out.sessions.push_back(visit.id);
    return out;
}

void HandOverModel::setBusy(bool busy) {
    busy_ = busy;
    emit busyChanged();
}

void HandOverModel::make(const QString& word) {
    if (busy_ || !found()) return;
    HandOverOrder order;
    order.kind = word == QLatin1String("report")    ? HandOverKind::report
                 : word == QLatin1String("session") ? HandOverKind::session_file
                                                    : HandOverKind::table;
    order.chosen = chosenVisits();
    order.session = session().id;
    order.letter = app()->settings()->paper() == QLatin1String("Letter");
    order.appendix = appendix_;
    order.format = format();
    order.folder = app()->devices().paths.documents();
    if (order.chosen.sessions.empty()) {
        emit app()->told(tr("Choose at least one visit."));
        return;
    }
    setBusy(true);
    writer_.ask<Result<HandedOver>>(
        [order, &desk = app()->desk(), &reference = app()->reference()](const std::stop_token&) {
            return write_hand_over(desk, reference, order);
        },
        [this, kind = order.kind](Result<HandedOver> written) {
            QMetaObject::invokeMethod(
                this, [this, kind, written = std::move(written)] { finish(kind, written); },
                Qt::QueuedConnection);
        });
}

void HandOverModel::takePlacesOff() {
    if (busy_ || !found()) return;
    const auto chosen = chosenVisits();
    if (chosen.sessions.empty()) {  // which would stand for all of them
        emit app()->told(tr("Choose at least one visit."));
        return;
    }
    setBusy(true);
    using Copies = Result<std::vector<workflow::BarePhoto>>;
    writer_.ask<Copies>([chosen, &desk = app()->desk()](
                            const std::stop_token&) { return workflow::bare_photos(desk, chosen); },
                        [this](Copies copies) {
                            QMetaObject::invokeMethod(
                                this,
                                [this, copies = std::move(copies)] {
                                    setBusy(false);
                                    if (!copies) return app()->tell(copies.error());
                                    app()->run(workflow::keep_bare(*copies), this,
                                               [this](const Result<workflow::Step>& done) {
                                                   if (done) make(QStringLiteral("session"));
                                               });
                                },
                                Qt::QueuedConnection);
                        });
}

void HandOverModel::finish(HandOverKind kind, const Result<HandedOver>& written) {
    setBusy(false);
    if (!written) {
        app()->tell(written.error());
        return;
    }
    if (kind != HandOverKind::table && beforeCall()) note_report_before_call(*app(), session());
    const QString path = QString::fromStdString(written->file.string());
    made_.removeIf([&](const QVariant& item) { return item.toMap()["path"] == path; });
    made_.prepend(QVariantMap{{"kind", static_cast<int>(kind)},
                              {"name", QString::fromStdString(written->file.filename().string())},
                              {"place", QString::fromStdString(written->file.parent_path().string())},
                              {"path", path},
                              {"gaps", gap_lines(format(), written->gaps)},
                              {"whereabouts", whereabouts_lines(format(), written->whereabouts)}});
    emit madeChanged();
}

void HandOverModel::share(int index) {
    if (index < 0 || index >= made_.size()) return;
    const auto item = made_[index].toMap();
    app()->devices().share.share(item["path"].toString(),
                                 media_type(static_cast<HandOverKind>(item["kind"].toInt())),
                                 [app = QPointer<AppContext>(app())](const Status& done) {
                                     if (app && !done) app->tell(done.error());
                                 });
}

void HandOverModel::saveCopy(int index) {
    if (index < 0 || index >= made_.size()) return;
    const auto item = made_[index].toMap();
    const auto kind = static_cast<HandOverKind>(item["kind"].toInt());
    const QString ending = item["name"].toString().section(QLatin1Char('.'), -1);
    app()->devices().filePicker.saveCopy(
        tr("Save a copy"), item["path"].toString(), item["name"].toString(),
        {item["name"].toString(), {QStringLiteral("*.") + ending}, media_type(kind)},
        [app = QPointer<AppContext>(app())](Result<std::optional<QString>> place) {
            if (!app) return;
            if (!place)
                app->tell(place.error());
            else if (*place)
                emit app->told(tr("Saved: %1").arg(**place));
        });
}

}  // namespace lapwing

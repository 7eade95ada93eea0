// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/news_model.h"

#include <QCoreApplication>
#include <QPointer>
#include <algorithm>

#include "core/record/merge.h"
#include "qml/viewmodels/record_items.h"

namespace lapwing {
/// The page that shows a record where it belongs; what is to be done, where it is done now.
std::pair<QString, QVariantMap> NewsModel::placeOf(const Record& record) const {
    const QString id = QString::fromStdString(id_of(record).text());
    const QString above = QString::fromStdString(parent_of(record).text());
    switch (kind_of(record)) {
        case RecordKind::engine:
            return {QStringLiteral("EngineCard"), {{QStringLiteral("engineId"), id}}};
        case RecordKind::tester:
            return {QStringLiteral("TesterCard"), {{QStringLiteral("testerId"), id}}};
        case RecordKind::session:
            return {QStringLiteral("Session"), {{QStringLiteral("sessionId"), id}}};
        case RecordKind::note:
            if (std::get<Note>(record).kind == NoteKind::test_request) {
                const auto sessions = app()->desk().sessions(engine());
                return {QStringLiteral("Session"),
                        {{QStringLiteral("sessionId"),
                          sessions.empty() ? above : QString::fromStdString(sessions.front().id.text())}}};
            }
            break;
        default:
            break;
    }
    return {QStringLiteral("SecondOpinion"), {{QStringLiteral("sessionId"), above}}};
}

QString NewsModel::from() const {
    if (news_.items.empty()) return {};
    QStringList parts;
    if (!news_.from.isEmpty()) parts << tr("Handed over by %1").arg(news_.from);
    parts << tr("brought in %1").arg(app()->format().shortDateTime(news_.at));
    return app()->format().headed(parts.join(QStringLiteral(" · ")));
}

void NewsModel::refresh() {
    news_ = news_of(app()->desk(), engine());
    items_.clear();
    for (const auto& news : news_.items)
        if (const auto now = app()->desk().record(news.kind, news.id)) items_ << item(news, *now);
    count();
}

void NewsModel::count() {
    // Reads the engine's whole history: not for the thread that draws.
    app()->background().start([&desk = app()->desk(), engine = engine(), guard = QPointer(this)] {
        const auto dossier = desk.dossier(engine);
        const int waiting = dossier ? int(workflow::conflicts(*dossier).size()) : 0;
        QMetaObject::invokeMethod(
            qApp,
            [guard, waiting] {
                if (!guard || guard->two_versions_ == waiting) return;
                guard->two_versions_ = waiting;
                emit guard->refreshed();
            },
            Qt::QueuedConnection);
    });
}

QVariantMap NewsModel::item(const News::Item& news, const Record& now) const {
    const auto& desk = app()->desk();
    const auto& format = app()->format();
    auto item = record_item(format, now);
    QStringList detail{in_conflict(now) ? tr("two versions") : news.before ? tr("changed") : tr("new")};
    const auto* note = std::get_if<Note>(&now);
    if (note && note->tie.record) detail << names_in(desk, format)(*note->tie.record);
    if (const auto session = desk.record(RecordKind::session, parent_of(now)))
        detail << format::title_of(format, *session);
    item[QStringLiteral("detail")] = detail.join(QStringLiteral(" · "));
    item[QStringLiteral("fields")] = news.before && !in_conflict(now)
                                         ? difference_items(format, *news.before, now, names_in(desk, format))
                                         : QVariantList{};
    item[QStringLiteral("seen")] = news.seen;
    item[QStringLiteral("record")] = QString::fromStdString(news.id.text());
    const auto [page, args] = placeOf(now);
    item[QStringLiteral("page")] = page;
    item[QStringLiteral("args")] = args;
    return item;
}

int NewsModel::unseen() const {
    return int(std::ranges::count_if(
        items_, [](const QVariant& item) { return !item.toMap()[QStringLiteral("seen")].toBool(); }));
}

void NewsModel::touch(int index) {
    if (index < 0 || index >= items_.size()) return;
    const auto record = items_[index].toMap()[QStringLiteral("record")].toString();
    const auto id = Uuid::parse(record.toStdString());
    if (!id) return;
    mark_seen(app()->desk(), engine(), *id);
    reload();
}

void NewsModel::seen() {
    forget_news(app()->desk(), engine());
    reload();
}

}  // namespace lapwing

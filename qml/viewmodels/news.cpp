// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/news.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <algorithm>

namespace lapwing {
namespace {

std::string key_of(EngineId engine) {
    return "news/" + engine.text();
}

QString text_of(std::string_view text) {
    return QString::fromUtf8(text.data(), qsizetype(text.size()));
}

QJsonObject json_of(const News::Item& item) {
    QJsonObject object{{QStringLiteral("kind"), text_of(word(item.kind))},
                       {QStringLiteral("id"), QString::fromStdString(item.id.text())}};
    if (item.seen) object[QStringLiteral("seen")] = true;
    if (item.before) object[QStringLiteral("before")] = QString::fromStdString(to_json(*item.before));
    return object;
}

std::optional<News::Item> item_of(const QJsonObject& object) {
    const auto kind = from_word<RecordKind>(object[QStringLiteral("kind")].toString().toStdString());
    const auto id = Uuid::parse(object[QStringLiteral("id")].toString().toStdString());
    if (!kind || !id) return std::nullopt;
    News::Item item{*kind, *id, {}, object[QStringLiteral("seen")].toBool()};
    const auto before = object[QStringLiteral("before")].toString();
    if (!before.isEmpty())
        if (auto record = record_from_json(*kind, before.toStdString())) item.before = std::move(*record);
    return item;
}

void keep(workflow::Desk& desk, EngineId engine, const News& news) {
    QJsonArray items;
    for (const auto& item : news.items)
        items << json_of(item);
    const QJsonObject kept{{QStringLiteral("from"), news.from},
                           {QStringLiteral("at"), QString::fromStdString(to_rfc3339(news.at))},
                           {QStringLiteral("items"), items}};
    desk.keep_draft(key_of(engine), QJsonDocument(kept).toJson(QJsonDocument::Compact).toStdString());
}

}  // namespace

News news_of(const workflow::Desk& desk, EngineId engine) {
    News news;
    const auto kept = QJsonDocument::fromJson(QByteArray::fromStdString(desk.draft(key_of(engine)))).object();
    news.from = kept[QStringLiteral("from")].toString();
    if (const auto at = parse_rfc3339(kept[QStringLiteral("at")].toString().toStdString())) news.at = *at;
    const auto items = kept[QStringLiteral("items")].toArray();
    for (const auto& one : items)
        if (auto item = item_of(one.toObject())) news.items.push_back(std::move(*item));
    return news;
}

void add_news(workflow::Desk& desk, EngineId engine, const workflow::Preview& preview, const QString& from) {
    News news = news_of(desk, engine);
    std::erase_if(news.items, [](const News::Item& item) { return item.seen; });
    const auto add = [&](News::Item item) {
        if (std::ranges::none_of(news.items, [&](const auto& one) { return one.id == item.id; }))
            news.items.push_back(std::move(item));
    };
    for (const auto& record : preview.new_records)
        add({kind_of(record), id_of(record), {}, false});
    for (const auto& change : preview.differences)
        add({kind_of(change.here), id_of(change.here), change.here, false});
    news.from = from;
    news.at = desk.clock().now();
    keep(desk, engine, news);
}

void mark_seen(workflow::Desk& desk, EngineId engine, Uuid record) {
    News news = news_of(desk, engine);
    for (auto& item : news.items)
        if (item.id == record) item.seen = true;
    keep(desk, engine, news);
}

void forget_news(workflow::Desk& desk, EngineId engine) {
    desk.keep_draft(key_of(engine), {});
}

}  // namespace lapwing

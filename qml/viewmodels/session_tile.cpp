// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/session_tile.h"

#include <QJsonDocument>
#include <QJsonObject>
#include <algorithm>

#include "qml/viewmodels/bores.h"

namespace lapwing {

QVariantMap tile(const char* key, const QString& title, const QString& text, findings::State state,
                 const char* page, QVariantMap args, QVariantList bores) {
    return {
        {"key", QString::fromLatin1(key)},   {"title", title}, {"text", text},  {"state", state_key(state)},
        {"page", QString::fromLatin1(page)}, {"args", args},   {"bores", bores}};
}

bool half_typed(const AppContext& app, const QString& session, const char* test) {
    const QString draft = app.draft(QStringLiteral("pad/%1/%2").arg(session, QLatin1String(test)));
    const QJsonObject entries = QJsonDocument::fromJson(draft.toUtf8())["entries"].toObject();
    // A reading that is to be measured again stands there before a digit is typed.
    return std::any_of(entries.begin(), entries.end(),
                       [](const QJsonValue& one) { return !one.toObject()["text"].toObject().isEmpty(); });
}

}  // namespace lapwing

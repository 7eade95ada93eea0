// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QVariantList>

#include "qml/viewmodels/engine_backed.h"
#include "qml/viewmodels/news.h"

namespace lapwing {

/// "What is new": what session files brought for one engine, until the person has seen it.
class NewsModel : public lapwing::EngineBacked {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString from READ from NOTIFY refreshed)
    Q_PROPERTY(QVariantList items READ items NOTIFY refreshed)
    Q_PROPERTY(int unseen READ unseen NOTIFY refreshed)
    Q_PROPERTY(int twoVersions READ twoVersions NOTIFY refreshed)

public:
    using EngineBacked::EngineBacked;

    /// "Handed over by Anna · brought in 14 Mar 2026 10:30"
    [[nodiscard]] QString from() const;
    /// {title, text, detail, fields: [{name, one, other}], seen, page, args}; `one` is how it stood here
    /// before.
    [[nodiscard]] QVariantList items() const { return items_; }
    [[nodiscard]] int unseen() const;
    [[nodiscard]] int twoVersions() const { return two_versions_; }  ///< records that wait for a choice

    /// The card was touched: it stays in the list until that is taken away.
    Q_INVOKABLE void touch(int index);
    /// Another page may have marked something.
    Q_INVOKABLE void lookAgain() { reload(); }
    /// Takes the list away; what it listed stays.
    Q_INVOKABLE void seen();

protected:
    void refresh() override;

private:
    void count();
    [[nodiscard]] std::pair<QString, QVariantMap> placeOf(const Record& record) const;
    [[nodiscard]] QVariantMap item(const News::Item& news, const Record& now) const;

    News news_;
    QVariantList items_;
    int two_versions_ = 0;
};

}  // namespace lapwing

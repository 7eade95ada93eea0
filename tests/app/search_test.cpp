// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// The list of engines while words are typed into its search: tiles that stay are not made again, and what
// stands there is what a list that is made anew would show.
#include <QTest>
#include <algorithm>

#include "tests/app/harness/phone.h"
#include "tests/app/harness/stock.h"

namespace lapwing::test {

#define DO(action) QVERIFY2(action, qPrintable(thumb.why() + " / " + phone.why()))

class SearchTest : public QObject {
    Q_OBJECT

    static QRectF place(const QQuickItem* item) {
        return item->mapRectToScene({0, 0, item->width(), item->height()});
    }
    /// The tiles in sight, from the top.
    static QList<QQuickItem*> tiles(QQuickItem* list) {
        QList<QQuickItem*> seen;
        for (auto* tile : list->property("contentItem").value<QQuickItem*>()->childItems())
            if (tile->isVisible() && tile->objectName().startsWith(QLatin1String("engine_")) &&
                place(tile).intersects(place(list)))
                seen << tile;
        std::ranges::sort(seen, {}, [](const QQuickItem* tile) { return tile->y(); });
        return seen;
    }
    static QStringList names(const QList<QQuickItem*>& tiles) {
        QStringList names;
        for (const auto* tile : tiles)
            names << tile->property("name").toString();
        return names;
    }
    static QImage picture(Phone& phone, const QQuickItem* list) {
        return phone.window().grabWindow().copy(place(list).toRect());
    }

private slots:
    void every_key_shows_what_a_list_made_anew_would() {
        Phone phone({412, 915});
        QVERIFY2(phone.on(), qPrintable(phone.why()));
        auto& thumb = phone.thumb();
        Stock stock(phone.desk());
        const char* kinds[] = {"Saw", "Mower", "Boat", "Pump", "Sawmill"};
        for (int i = 0; i < 60; ++i)
            stock.engine(std::string(kinds[i * i % 5]) + " " + std::to_string(i), 1 + i % 4);
        DO(thumb.appears(QStringLiteral("search")));
        QStringList all, read;
        for (const auto& engine : phone.desk().engines()) {
            all << QString::fromStdString(engine.name);
            read << all.back();
            for (const auto& tag : engine.tags)
                read.back() += u' ' + QString::fromStdString(tag);
        }
        QCOMPARE(all.size(), 60);
        auto* list = phone.window().findChild<QQuickItem*>(QStringLiteral("engines"));
        settle(200);
        const QImage at_first = picture(phone, list);

        // Somewhere down the list.
        list->setProperty("contentY", 900.0);
        settle(50);
        DO(thumb.touch(QStringLiteral("search")));
        QString typed;
        int kept = 0;
        const QString wanted_keys = QStringLiteral("saw 1\b\b\b\b\bmower 2\b\b\b\b\b\b\b");
        for (const QChar key : wanted_keys) {
            const auto before = tiles(list);
            if (key == u'\b') {
                thumb.key(Qt::Key_Backspace);
                typed.chop(1);
            } else {
                thumb.keys(key);
                typed += key;
            }
            settle(50);
            QStringList fit;
            for (qsizetype i = 0; i < all.size(); ++i)
                if (std::ranges::all_of(typed.split(u' ', Qt::SkipEmptyParts), [&](const QString& part) {
                        return read[i].contains(part, Qt::CaseInsensitive);
                    }))
                    fit << all[i];
            const auto seen = tiles(list);
            QVERIFY2(!seen.isEmpty(), qPrintable(typed));
            QCOMPARE(names(seen), fit.first(seen.size()));
            // One under the other from the top, as far as there are any.
            QVERIFY(std::abs(place(seen.front()).top() - place(list).top()) < 0.5);
            for (qsizetype i = 1; i < seen.size(); ++i)
                QVERIFY(std::abs(place(seen[i]).top() - place(seen[i - 1]).bottom() -
                                 list->property("spacing").toDouble()) < 0.5);
            QVERIFY(seen.size() == fit.size() || place(seen.back()).bottom() > place(list).bottom() - 8);
            kept += int(std::ranges::count_if(seen, [&](auto* tile) { return before.contains(tile); }));

            // A new tester has the list made anew while words stand in the search.
            const QStringList stood = names(seen);
            const QImage grown = picture(phone, list);
            stock.tester(TesterKind::compression_gauge, "Gauge for \"" + typed.toStdString() + '"', "16");
            settle(100);
            QCOMPARE(names(tiles(list)), stood);
            QVERIFY2(picture(phone, list) == grown, qPrintable(typed));
        }
        QVERIFY(kept > 20);
        settle(100);
        QCOMPARE(names(tiles(list)), all.first(tiles(list).size()));
        QVERIFY(picture(phone, list) == at_first);
    }
};

}  // namespace lapwing::test

LAPWING_APP_TEST_MAIN(lapwing::test::SearchTest)
#include "search_test.moc"

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// The search of the list of engines: how letters are held against each other, and tags.
#include <QAbstractItemModelTester>
#include <QElapsedTimer>
#include <QSignalSpy>
#include <algorithm>

#include "qml/viewmodels/engine_list_model.h"
#include "tests/viewmodels/shop.h"

namespace lapwing {

class EngineSearchTest : public QObject {
    Q_OBJECT

private:
    static std::vector<workflow::EngineSummary> engines(const QList<QPair<QString, QStringList>>& named) {
        std::vector<workflow::EngineSummary> all;
        for (const auto& [name, tags] : named) {
            workflow::EngineSummary one;
            one.name = name.toStdString();
            for (const QString& tag : tags)
                one.tags.push_back(tag.toStdString());
            all.push_back(std::move(one));
        }
        return all;
    }
    static QList<int> found(const std::vector<workflow::EngineSummary>& all, const QString& text) {
        const EngineSearch search;
        QList<int> places;
        for (const std::size_t place : search.find(all, text))
            places << int(place);
        return places;
    }

private slots:
    // German spells umlauts out by DIN 5007 variant 2 (names) and files them as their base letter by variant
    // 1; the other pairs are the base letters of Unicode's decomposition, and of letters that it leaves whole
    // the ones that their alphabets' names give (from memory).
    void letters_are_found_however_they_are_written_data() {
        QTest::addColumn<QString>("stands");
        QTest::addColumn<QString>("typed");
        QTest::addColumn<bool>("fits");
        const auto both = [](const char* name, const QString& a, const QString& b) {
            QTest::addRow("%s", name) << a << b << true;
            QTest::addRow("%s, the other way", name) << b << a << true;
        };
        both("umlaut as its base", QStringLiteral("Müller"), QStringLiteral("Muller"));
        both("umlaut spelled out", QStringLiteral("Müller"), QStringLiteral("mueller"));
        both("capital umlaut", QStringLiteral("MÜLLER"), QStringLiteral("müller"));
        both("umlaut with a mark of its own", QStringLiteral("Mu\u0308ller"), QStringLiteral("Müller"));
        both("mark of its own, spelled out", QStringLiteral("Mu\u0308ller"), QStringLiteral("mueller"));
        both("ä", QStringLiteral("Gerät"), QStringLiteral("gerat"));
        both("ö", QStringLiteral("Öl"), QStringLiteral("oel"));
        both("é", QStringLiteral("René"), QStringLiteral("rene"));
        both("ñ", QStringLiteral("Añasco"), QStringLiteral("anasco"));
        both("ß", QStringLiteral("Groß"), QStringLiteral("gross"));
        both("capital ß", QStringLiteral("GRO\u1e9e"), QStringLiteral("groß"));
        both("ø", QStringLiteral("Sjømotor"), QStringLiteral("sjomotor"));
        both("ł", QStringLiteral("Łódź"), QStringLiteral("lodz"));
        both("small figures", QStringLiteral("cm³"), QStringLiteral("cm3"));
        QTest::newRow("inside a word")
            << QStringLiteral("Großmähtechnik") << QStringLiteral("mahtech") << true;
        QTest::newRow("another letter") << QStringLiteral("Müller") << QStringLiteral("moller") << false;
        QTest::newRow("no umlaut there") << QStringLiteral("Muller") << QStringLiteral("mueller") << false;
        QTest::newRow("all words") << QStringLiteral("Müller Säge") << QStringLiteral("sage mull") << true;
        QTest::newRow("a word too many")
            << QStringLiteral("Müller Säge") << QStringLiteral("sage boot") << false;
    }
    void letters_are_found_however_they_are_written() {
        QFETCH(QString, stands);
        QFETCH(QString, typed);
        QFETCH(bool, fits);
        // A word that is typed may be longer than what stands: all of it has to be there.
        const auto words = stands.simplified();
        QCOMPARE(found(engines({{words, {}}}), typed), fits ? QList<int>{0} : QList<int>{});
        QCOMPARE(found(engines({{QStringLiteral("Pump"), {words}}}), typed),
                 fits ? QList<int>{0} : QList<int>{});
    }

    void a_tag_is_asked_for_whole() {
        const auto all =
            engines({{QStringLiteral("Cart pump"), {QStringLiteral("Säge")}},
                     {QStringLiteral("Saw"), {QStringLiteral("car"), QStringLiteral("old iron")}},
                     {QStringLiteral("Truck"), {QStringLiteral("carrier")}},
                     {QStringLiteral("Boat"), {}}});
        QCOMPARE(found(all, QStringLiteral("car")), (QList<int>{0, 1, 2}));
        QCOMPARE(found(all, EngineSearch::for_tag(QStringLiteral("car"))), QList<int>{1});
        QCOMPARE(found(all, EngineSearch::for_tag(QStringLiteral("old iron"))), QList<int>{1});
        QCOMPARE(found(all, EngineSearch::for_tag(QStringLiteral("Säge"))), QList<int>{0});
        QCOMPARE(found(all, QStringLiteral("#saege")), QList<int>{0});
        // While it is typed.
        QCOMPARE(found(all, QStringLiteral("#ca")), (QList<int>{1, 2}));
        QCOMPARE(found(all, QStringLiteral("#")), (QList<int>{0, 1, 2}));
        QCOMPARE(found(all, QStringLiteral("#iron")), QList<int>{});
        // A tag that was written with the sign.
        QCOMPARE(found(engines({{QStringLiteral("Tug"), {QStringLiteral("#boat")}}}),
                       EngineSearch::for_tag(QStringLiteral("#boat"))),
                 QList<int>{0});
    }

    void what_changed_is_searched_as_it_is_now() {
        Shop shop;
        Engine saw = shop.add_engine(QStringLiteral("Säge"), 1, Arrangement::single);
        shop.add_engine(QStringLiteral("Boat"), 1, Arrangement::single);
        EngineListModel list;
        complete(list, shop);
        list.setFilter(QStringLiteral("sage"));
        QCOMPARE(list.count(), 1);
        saw = shop.engine(saw);
        saw.name = "Mower";
        shop.desk->run(workflow::save_engine(saw));
        shop.settle();
        QCOMPARE(list.count(), 0);
        list.setFilter(QStringLiteral("mow"));
        QCOMPARE(list.count(), 1);
        QCOMPARE(list.choices(QStringLiteral("MOW"), 5).size(), 1);
        QCOMPARE(list.choices({}, 1).size(), 1);
    }

    void rows_that_stay_are_left_alone() {
        Shop shop;
        const char* kinds[] = {"Saw", "Mower", "Boat", "Pump", "Sawmill"};
        for (int i = 0; i < 200; ++i)
            shop.add_engine(QStringLiteral("%1 %2").arg(QLatin1String(kinds[i * i % 5])).arg(i), 1,
                            Arrangement::single);
        EngineListModel list;
        complete(list, shop);
        const QAbstractItemModelTester always(&list, QAbstractItemModelTester::FailureReportingMode::QtTest);
        const auto name = [&](int row) {
            return list.data(list.index(row), EngineListModel::NameRole).toString();
        };
        // What somebody believes who is only told what came and went.
        QStringList told;
        for (int row = 0; row < list.count(); ++row)
            told << name(row);
        QObject::connect(&list, &EngineListModel::rowsRemoved, &list,
                         [&](const QModelIndex&, int from, int to) { told.remove(from, to - from + 1); });
        QObject::connect(&list, &EngineListModel::rowsInserted, &list,
                         [&](const QModelIndex&, int from, int to) {
                             for (int row = from; row <= to; ++row)
                                 told.insert(row, name(row));
                         });
        QSignalSpy anew(&list, &EngineListModel::modelReset);
        QSignalSpy came(&list, &EngineListModel::rowsInserted), went(&list, &EngineListModel::rowsRemoved);
        const QStringList all = told;
        for (const char* words : {"s", "sa", "saw", "saw 1", "saw 19", "saw 1", "", "mower 7", "1", "2", "12",
                                  "nothing of the kind", "boat", "boat 1", "saw", "sawmill", "#", ""}) {
            const QString typed = QLatin1String(words);
            QList<std::pair<QPersistentModelIndex, QString>> before;
            for (int row = 0; row < list.count(); ++row)
                before.emplaceBack(list.index(row), name(row));
            came.clear();
            went.clear();
            list.setFilter(typed);
            QStringList wanted;
            for (const QString& one : all) {
                const auto parts = typed.split(u' ', Qt::SkipEmptyParts);
                // None of these engines has a tag.
                if (typed != QLatin1String("#") && std::ranges::all_of(parts, [&](const QString& part) {
                        return one.contains(part, Qt::CaseInsensitive);
                    }))
                    wanted << one;
            }
            QCOMPARE(told, wanted);
            QCOMPARE(list.count(), int(wanted.size()));
            for (int row = 0; row < list.count(); ++row)
                QCOMPARE(name(row), wanted[row]);
            // Further down than anybody sees all may go and come as one.
            for (const auto& [index, was] : before)
                if (const auto place = wanted.indexOf(was); place >= 0 && place < 12)
                    QVERIFY2(index.isValid() && index.row() == int(place), qPrintable(was));
            QVERIFY(came.size() + went.size() <= 26);
        }
        QCOMPARE(anew.size(), 0);
        // A letter more that leaves the same engines.
        list.setFilter(QStringLiteral("sawm"));
        came.clear();
        went.clear();
        list.setFilter(QStringLiteral("sawmi"));
        QCOMPARE(came.size() + went.size(), 0);
    }

    // A key of a search in a library of ten years has one frame (job: 60 a second).
    void two_thousand_engines_are_searched_within_a_frame() {
        QList<QPair<QString, QStringList>> named;
        for (int i = 0; i < 2000; ++i)
            named << qMakePair(QStringLiteral("Müllers Mähmaschine %1, Großgerät").arg(i),
                               QStringList{QStringLiteral("Frühjahr"), QStringLiteral("wassergekühlt")});
        const auto all = engines(named);
        const EngineSearch search;
        QCOMPARE(search.find(all, QStringLiteral("mahm")).size(), std::size_t(2000));
        qint64 best = std::numeric_limits<qint64>::max();
        for (int round = 0; round < 5; ++round) {
            QElapsedTimer timer;
            timer.start();
            QCOMPARE(search.find(all, QStringLiteral("maehmaschine 1999")).size(), std::size_t(1));
            best = std::min(best, timer.nsecsElapsed());
        }
        QVERIFY2(best < 16'000'000, qPrintable(QString::number(double(best) / 1e6)));
    }
};

}  // namespace lapwing

QTEST_GUILESS_MAIN(lapwing::EngineSearchTest)
#include "engine_search_test.moc"

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/workflow/readings.h"
#include "core/workflow/remarks.h"
#include "qml/viewmodels/engine_list_model.h"
#include "qml/viewmodels/engine_starter.h"
#include "qml/viewmodels/session_model.h"
#include "tests/viewmodels/shop.h"

namespace lapwing {

class EngineListTest : public QObject {
    Q_OBJECT

private:
    static QString shown(const EngineListModel& list, int row, int role) {
        return list.data(list.index(row), role).toString();
    }
    static QStringList names(const EngineListModel& list) {
        QStringList all;
        for (int row = 0; row < list.count(); ++row)
            all << shown(list, row, EngineListModel::NameRole);
        all.sort();
        return all;
    }
    static void keep_dry(Shop& shop, SessionId session, int cylinder, const char* bar) {
        Reading reading;
        reading.session = session;
        reading.test = TestKind::dry;
        reading.cylinder = cylinder;
        reading.final = TypedPressure::make(bar, units::bar).value();
        shop.desk->run(workflow::keep_reading(reading));
    }
    static void keep_air(Shop& shop, SessionId session, int cylinder, const char* held) {
        Reading air;
        air.session = session;
        air.test = TestKind::leak_down;
        air.cylinder = cylinder;
        air.set = TypedPressure::make("6.0", units::bar).value();
        air.held = TypedPressure::make(held, units::bar).value();
        shop.desk->run(workflow::keep_reading(air));
    }
    /// An engine that must read 8 bar at least.
    static Engine add_limited(Shop& shop, const char* name, int cylinders) {
        Engine engine = shop.add_engine(QString::fromLatin1(name), cylinders);
        engine.limits.lowest = TypedPressure::make("8.0", units::bar).value();
        shop.desk->run(workflow::save_engine(engine));
        return engine;
    }

private slots:
    void an_empty_library_has_no_rows() {
        Shop shop;
        EngineListModel list;
        complete(list, shop);
        QCOMPARE(list.count(), 0);
        QCOMPARE(list.total(), 0);
        QVERIFY(list.onlyEngine().isEmpty());
    }

    void a_new_engine_shows_up_by_itself() {
        Shop shop;
        EngineListModel list;
        complete(list, shop);
        const Engine engine = shop.add_engine(QStringLiteral("Mower"), 1, Arrangement::single);
        QCOMPARE(list.count(), 1);
        QCOMPARE(list.onlyEngine(), text_id(engine.id));
        QCOMPARE(shown(list, 0, EngineListModel::LastRole), QStringLiteral("No session yet"));
        QCOMPARE(list.data(list.index(0), EngineListModel::BoresRole).toList().size(), 1);
        shop.undo();
        QCOMPARE(list.count(), 0);
    }

    void the_only_engines_last_session_fills_the_calculators() {
        Shop shop;
        EngineListModel list;
        complete(list, shop);
        QCOMPARE(list.onlySession(), QString());
        const Engine engine = shop.add_engine(QStringLiteral("Mower"), 1, Arrangement::single);
        QCOMPARE(list.onlySession(), QString());
        shop.open_session(engine, "As found");
        shop.clock.move_by(std::chrono::hours(1));
        const auto newest = shop.open_session(engine, "After repair");
        QCOMPARE(list.onlySession(), text_id(newest));
        // With two engines it would be a guess.
        shop.add_engine(QStringLiteral("Pump"), 1, Arrangement::single);
        QCOMPARE(list.onlySession(), QString());
    }

    void a_session_of_today_is_gone_on_with() {
        Shop shop;
        EngineListModel list;
        complete(list, shop);
        QVERIFY(list.goOn().isEmpty());
        const Engine engine = shop.add_engine(QStringLiteral("Mower"), 1, Arrangement::single);
        QVERIFY(list.goOn().isEmpty());
        const auto session = shop.open_session(engine, "As found");
        QCOMPARE(list.goOn()[QStringLiteral("sessionId")].toString(), text_id(session));
        QCOMPARE(list.goOn()[QStringLiteral("name")].toString(), QStringLiteral("Mower"));
        shop.clock.move_by(std::chrono::hours(24));
        list.lookAgain();
        QVERIFY(list.goOn().isEmpty());
    }

    void an_empty_session_does_not_make_a_fault_forgotten() {
        Shop shop;
        const Engine engine = add_limited(shop, "Pair", 2);
        const SessionId found = shop.open_session(engine, "As found");
        keep_dry(shop, found, 1, "10.2");
        keep_dry(shop, found, 2, "3.1");
        shop.settle();
        EngineListModel list;
        complete(list, shop);
        const auto state = [&] { return shown(list, 0, EngineListModel::BoreStateRole); };
        QTRY_COMPARE(state(), QStringLiteral("fault"));
        shop.clock.move_by(std::chrono::hours(1));
        const auto last = [&] { return shown(list, 0, EngineListModel::LastRole); };
        const QString before = last();
        QVERIFY(before.startsWith(QStringLiteral("As found")));
        const SessionId next = shop.open_session(engine, "After repair");
        QTRY_COMPARE(state(), QStringLiteral("fault"));
        // Bores and verdict stand under the day that they are from.
        // Two of one day: the clock tells them apart.
        QTRY_VERIFY2(last().startsWith(before), qPrintable(last()));
        QVERIFY2(last().contains(QLatin1Char('\n')), qPrintable(last()));
        QVERIFY2(last().endsWith(QStringLiteral("no reading yet")), qPrintable(last()));
        // What is measured there counts as soon as it is.
        keep_dry(shop, next, 1, "10.2");
        keep_dry(shop, next, 2, "10.1");
        shop.settle();
        QTRY_COMPARE(state(), QStringLiteral("good"));
        QVERIFY2(last().startsWith(QStringLiteral("After repair")), qPrintable(last()));
        QVERIFY2(!last().contains(QLatin1Char('\n')), qPrintable(last()));
    }

    void what_todays_readings_find_amiss_is_no_earlier_visits() {
        Shop shop;
        const Engine engine = add_limited(shop, "Pair", 2);
        const SessionId found = shop.open_session(engine, "As found");
        for (const int cylinder : {1, 2}) {
            keep_dry(shop, found, cylinder, "10.0");
            keep_air(shop, found, cylinder, "1.5");
        }
        shop.clock.move_by(std::chrono::hours(1));
        const SessionId next = shop.open_session(engine, "Again");
        keep_dry(shop, next, 1, "9.9");
        keep_dry(shop, next, 2, "3.1");
        shop.settle();
        EngineListModel list;
        complete(list, shop);
        // Cylinder 1 keeps what air found earlier; cylinder 2 is at fault by today's reading, and that
        // counts.
        QTRY_COMPARE(shown(list, 0, EngineListModel::BoreStateRole), QStringLiteral("fault"));
        QVERIFY(!list.data(list.index(0), EngineListModel::BoreEarlierRole).toBool());
    }

    void a_borderline_reading_takes_no_leak_back_that_air_found() {
        Shop shop;
        const Engine engine = add_limited(shop, "Pair", 2);
        const SessionId found = shop.open_session(engine, "As found");
        for (const int cylinder : {1, 2}) {
            keep_dry(shop, found, cylinder, "10.0");
            keep_air(shop, found, cylinder, cylinder == 1 ? "5.8" : "1.5");
        }
        shop.clock.move_by(std::chrono::hours(1));
        const SessionId next = shop.open_session(engine, "Again");
        keep_dry(shop, next, 1, "9.9");
        keep_dry(shop, next, 2, "8.1");  // hardly above the least
        shop.settle();
        EngineListModel list;
        complete(list, shop);
        QTRY_COMPARE(shown(list, 0, EngineListModel::BoreStateRole), QStringLiteral("fault"));
        QVERIFY(list.data(list.index(0), EngineListModel::BoreEarlierRole).toBool());
    }

    void a_first_reading_of_a_new_visit_does_not_make_a_fault_forgotten() {
        Shop shop;
        const Engine engine = add_limited(shop, "Three", 3);
        const SessionId found = shop.open_session(engine, "As found");
        keep_dry(shop, found, 1, "10.2");
        keep_dry(shop, found, 2, "5.1");
        keep_dry(shop, found, 3, "9.9");
        keep_air(shop, found, 3, "1.5");
        shop.settle();
        EngineListModel list;
        complete(list, shop);
        const auto state = [&] { return shown(list, 0, EngineListModel::BoreStateRole); };
        const auto earlier = [&] {
            return list.data(list.index(0), EngineListModel::BoreEarlierRole).toBool();
        };
        const auto bore = [&](int at, const char* key) {
            const auto bores = list.data(list.index(0), EngineListModel::BoresRole).toList();
            return bores.value(at).toMap().value(QString::fromLatin1(key)).toString();
        };
        QTRY_COMPARE(state(), QStringLiteral("fault"));
        QVERIFY(!earlier());
        shop.clock.move_by(std::chrono::hours(1));
        const SessionId next = shop.open_session(engine, "Again");
        keep_dry(shop, next, 3, "9.8");
        shop.settle();
        QTRY_VERIFY(earlier());
        QCOMPARE(state(), QStringLiteral("fault"));
        QCOMPARE(bore(1, "state"), QStringLiteral("fault"));
        QCOMPARE(bore(1, "earlier"), QStringLiteral("true"));
        QCOMPARE(bore(2, "earlier"), QStringLiteral("false"));
        // Cylinder 2 reads well now; what air found in cylinder 3 no dry test takes back.
        keep_dry(shop, next, 2, "9.7");
        shop.settle();
        QTRY_COMPARE(bore(1, "earlier"), QStringLiteral("false"));
        QCOMPARE(state(), QStringLiteral("fault"));
        QVERIFY(earlier());
        keep_air(shop, next, 3, "5.9");
        keep_dry(shop, next, 1, "10.0");
        shop.settle();
        QTRY_COMPARE(state(), QStringLiteral("good"));
        QVERIFY(!earlier());
    }

    void what_waits_for_a_call_says_nothing_and_an_earlier_fault_says_that_it_is_one() {
        Shop shop;
        const Engine engine = add_limited(shop, "Pair", 2);
        const SessionId found = shop.open_session(engine, "As found");
        keep_dry(shop, found, 1, "10.2");
        keep_dry(shop, found, 2, "5.1");
        shop.settle();
        Note call;
        call.session = found;
        call.author = shop.settings->author().toStdString();
        call.cause = Cause::rings;
        call.tie.to = TiedTo::cylinder;
        call.tie.cylinder = 2;
        shop.desk->run(workflow::commit_calls({call}));
        shop.clock.move_by(std::chrono::hours(1));
        const SessionId next = shop.open_session(engine, "Again");
        keep_dry(shop, next, 1, "3.0");
        shop.settle();
        shop.settings->setCallFirst(true);
        EngineListModel list;
        complete(list, shop);
        const auto bore = [&](int at) {
            const auto bores = list.data(list.index(0), EngineListModel::BoresRole).toList();
            return bores.value(at).toMap().value(QStringLiteral("state")).toString();
        };
        QTRY_COMPARE(bore(0), QStringLiteral("waiting"));
        QCOMPARE(bore(1), QStringLiteral("fault"));
        QCOMPARE(shown(list, 0, EngineListModel::BoreStateRole), QStringLiteral("fault"));
        QVERIFY(list.data(list.index(0), EngineListModel::BoreEarlierRole).toBool());
    }

    void a_new_engine_is_what_was_chosen() {
        Shop shop;
        EngineStarter starter;
        starter.setApp(shop.app.get());
        QCOMPARE(starter.addEngine(QStringLiteral("Scooter"), QStringLiteral("1"), QStringLiteral("single"),
                                   QStringLiteral("two-stroke"), QStringLiteral("petrol")),
                 QString());
        shop.settle();
        const auto scooter = *shop.desk->engine(shop.desk->engines()[0].id);
        QCOMPARE(scooter.cycle, StrokeCycle::two);
        QCOMPARE(scooter.valves.intake_valves, 0);
        shop.clock.move_by(std::chrono::hours(1));
        QCOMPARE(starter.addEngine(QStringLiteral("Tractor"), QStringLiteral("3"), QStringLiteral("in-line"),
                                   QStringLiteral("four-stroke"), QStringLiteral("diesel")),
                 QString());
        shop.settle();
        for (const auto& one : shop.desk->engines())
            if (one.name == "Tractor") QCOMPARE(shop.desk->engine(one.id)->fuel, Fuel::diesel);
        QCOMPARE(starter.cycles().size(), 2);
        QCOMPARE(starter.fuels().size(), 2);
    }

    void the_search_looks_at_name_tags_and_description() {
        Shop shop;
        shop.add_engine(QStringLiteral("Harbour six"), 6, Arrangement::in_line, {"boat"});
        shop.add_engine(QStringLiteral("Orchard V-twin"), 2, Arrangement::vee, {"club", "Racing"});
        Engine tractor = shop.add_engine(QStringLiteral("Grey tractor"), 4);
        tractor.description = "older machine, 1954";
        shop.desk->run(workflow::save_engine(tractor));
        shop.settle();
        EngineListModel list;
        complete(list, shop);
        const auto left = [&](const char* words) {
            list.setFilter(QString::fromLatin1(words));
            return names(list);
        };
        QCOMPARE(left("harb"), QStringList{QStringLiteral("Harbour six")});
        QCOMPARE(left("RACING"), QStringList{QStringLiteral("Orchard V-twin")});
        QCOMPARE(left("1954 grey"), QStringList{QStringLiteral("Grey tractor")});
        QCOMPARE(left("grey boat"), QStringList());
        QCOMPARE(left("  ").size(), 3);
        QCOMPARE(list.total(), 3);
    }

    void a_session_without_a_title_is_called_as_on_its_own_page() {
        Shop shop;
        const Engine engine = shop.add_engine(QStringLiteral("Pair"), 2);
        const SessionId session = shop.open_session(engine, "");
        EngineListModel list;
        complete(list, shop);
        SessionModel page;
        page.setSessionId(text_id(session));
        complete(page, shop);
        const auto last = [&] { return shown(list, 0, EngineListModel::LastRole); };
        QVERIFY(last().startsWith(QStringLiteral("Session, nothing measured")));
        QCOMPARE(last(), page.visitLine());
        keep_dry(shop, session, 1, "10.2");
        shop.settle();
        QTRY_VERIFY2(last().startsWith(QStringLiteral("Dry test · ")), qPrintable(last()));
        QCOMPARE(last(), page.visitLine());
        QCOMPARE(list.choices(QString(), 5).value(0).toMap()["detail"].toString(), page.visitLine());
    }

    void bores_come_from_the_last_session() {
        Shop shop;
        const Engine engine = shop.add_engine(QStringLiteral("Pair"), 2);
        const SessionId session = shop.open_session(engine, "As found");
        keep_dry(shop, session, 1, "10.2");
        shop.settle();
        EngineListModel list;
        complete(list, shop);
        QVERIFY(shown(list, 0, EngineListModel::LastRole).startsWith(QStringLiteral("As found")));
        const auto bores = [&] { return list.data(list.index(0), EngineListModel::BoresRole).toList(); };
        QCOMPARE(bores().size(), 2);
        QTRY_VERIFY(bores().at(0).toMap().value(QStringLiteral("measured")).toBool());
        QVERIFY(!bores().at(1).toMap().value(QStringLiteral("measured")).toBool());

        keep_dry(shop, session, 2, "10.1");
        shop.settle();
        QTRY_VERIFY(bores().at(1).toMap().value(QStringLiteral("measured")).toBool());
    }

    void readings_are_looked_into_only_when_the_list_is_drawn() {
        Shop shop;
        const Engine engine = shop.add_engine(QStringLiteral("Single"), 1, Arrangement::single);
        keep_dry(shop, shop.open_session(engine, "As found"), 1, "10.2");
        shop.settle();
        EngineListModel list;
        list.setLooking(false);
        complete(list, shop);
        const auto measured = [&] {
            const auto bores = list.data(list.index(0), EngineListModel::BoresRole).toList();
            return bores.size() == 1 && bores.at(0).toMap().value(QStringLiteral("measured")).toBool();
        };
        QVERIFY(!measured());
        QTest::qWait(100);
        QVERIFY(!measured());
        QSignalSpy changes(&list, &QAbstractItemModel::dataChanged);
        list.setLooking(true);
        QCOMPARE(changes.size(), 1);
        QTRY_VERIFY(measured());
    }

    void above_six_cylinders_a_line_counts_them() {
        Shop shop;
        const Engine engine = shop.add_engine(QStringLiteral("Eight"), 8);
        const SessionId session = shop.open_session(engine, "As found");
        keep_dry(shop, session, 3, "10.2");
        shop.settle();
        EngineListModel list;
        complete(list, shop);
        const auto line = [&] { return shown(list, 0, EngineListModel::BoreLineRole); };
        QVERIFY(list.data(list.index(0), EngineListModel::BoresRole).toList().isEmpty());
        QTRY_VERIFY(line().endsWith(QStringLiteral("7 not measured")));
    }

    void a_session_is_opened_on_the_chosen_engine() {
        Shop shop;
        const Engine engine = shop.add_engine(QStringLiteral("Mower"), 1);
        EngineStarter starter;
        starter.setApp(shop.app.get());
        QSignalSpy opened(&starter, &EngineStarter::sessionOpened);
        starter.openSession(text_id(engine.id));
        shop.settle();
        QCOMPARE(opened.size(), 1);
        const auto sessions = shop.desk->sessions(engine.id);
        QCOMPARE(sessions.size(), 1u);
        QCOMPARE(opened.at(0).at(0).toString(), text_id(sessions.front().id));
        QCOMPARE(sessions.front().title, std::string("As found"));
    }

    void a_second_touch_opens_no_second_session() {
        Shop shop;
        const Engine engine = shop.add_engine(QStringLiteral("Mower"), 1);
        EngineStarter starter;
        starter.setApp(shop.app.get());
        QSignalSpy opened(&starter, &EngineStarter::sessionOpened);
        starter.openSession(text_id(engine.id));
        shop.settle();
        starter.openSession(text_id(engine.id));
        shop.settle();
        QCOMPARE(opened.size(), 2);
        QCOMPARE(opened[1][0].toString(), opened[0][0].toString());
        QCOMPARE(shop.desk->sessions(engine.id).size(), 1u);
        // With something in it, or on another day, it is another visit.
        keep_dry(shop, shop.desk->sessions(engine.id).front().id, 1, "10.2");
        shop.settle();
        shop.clock.move_by(std::chrono::minutes(1));
        starter.openSession(text_id(engine.id));
        shop.settle();
        QCOMPARE(shop.desk->sessions(engine.id).size(), 2u);
        shop.clock.move_by(std::chrono::hours(24));
        starter.openSession(text_id(engine.id));
        shop.settle();
        QCOMPARE(shop.desk->sessions(engine.id).size(), 3u);
    }

    void a_new_engine_takes_three_answers() {
        Shop shop;
        EngineStarter starter;
        starter.setApp(shop.app.get());
        QSignalSpy added(&starter, &EngineStarter::engineAdded);
        QVERIFY(starter.addEngine(QStringLiteral("Tug"), QStringLiteral("six"), {})
                    .contains(QStringLiteral("six")));
        QVERIFY(starter.addEngine(QStringLiteral("Tug"), QStringLiteral("17"), {})
                    .contains(QStringLiteral("16")));
        QVERIFY(!starter.addEngine(QStringLiteral("  "), QStringLiteral("2"), {}).isEmpty());
        // Both are missing: what stands first on the sheet is spoken of.
        QVERIFY(starter.addEngine({}, {}, {}).contains(QStringLiteral("no name")));
        shop.settle();
        QCOMPARE(shop.desk->engines().size(), 0u);
        QCOMPARE(starter.addEngine(QStringLiteral("Tug"), QStringLiteral("4"), QStringLiteral("v")),
                 QString());
        shop.settle();
        QCOMPARE(added.size(), 1);
        const Engine made = shop.desk->engine(shop.desk->engines().front().id).value();
        QCOMPARE(made.cylinders.size(), 4u);
        QCOMPARE(made.cylinders[3].bank, 1);
    }

    void two_thousand_engines_open_without_a_look_at_each() {
        Shop shop;
        workflow::Command many{"engine.add", {"many"}, {}};
        for (int i = 0; i < 2000; ++i) {
            Engine engine = new_engine(QStringLiteral("Engine %1").arg(i), 4, Arrangement::in_line).value();
            engine.id = shop.desk->make_id<EngineId>();
            engine.made_at = shop.clock.now();
            many.edits.push_back(Put{engine});
        }
        shop.desk->run(std::move(many));
        shop.settle();
        EngineListModel list;
        QElapsedTimer timer;
        timer.start();
        complete(list, shop);
        QCOMPARE(list.count(), 2000);
        // Far above what it takes (some 10 ms): it only has to catch a list that opens every card.
        QVERIFY2(timer.elapsed() < 500, qPrintable(QString::number(timer.elapsed())));
        QCOMPARE(list.choices(QStringLiteral("engine 19"), 12).size(), 12);
    }
};

}  // namespace lapwing

QTEST_GUILESS_MAIN(lapwing::EngineListTest)
#include "engine_list_test.moc"

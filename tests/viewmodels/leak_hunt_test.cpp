// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <algorithm>
#include <map>

#include "core/workflow/clearances.h"
#include "qml/viewmodels/leak_hunt_model.h"
#include "tests/viewmodels/measured_visit.h"

namespace lapwing {

class LeakHuntTest : public QObject {
    Q_OBJECT

private slots:
    /// The plug holes to listen at are those of the cylinders that findings and odds call neighbours, however
    /// far apart they were drawn.
    void listens_at_the_neighbours_that_the_findings_know() {
        Shop shop;
        Engine engine = shop.add_engine(QStringLiteral("Harbour four"), 4);
        for (auto& cylinder : engine.cylinders)
            cylinder.column *= 2;
        shop.desk->run(workflow::save_engine(engine));
        shop.settle();
        const auto session = shop.open_session(engine, "As found");
        // Four in a row.
        const std::map<int, std::vector<int>> beside{{1, {2}}, {2, {1, 3}}, {3, {2, 4}}, {4, {3}}};
        LeakHuntModel hunt;
        hunt.setSessionId(text_id(session));
        complete(hunt, shop);
        for (const auto& cylinder : engine.cylinders) {
            hunt.setCylinder(cylinder.number);
            std::vector<int> offered;
            for (const auto& exit : hunt.exits())
                if (const int other = exit.toMap()[QStringLiteral("neighbour")].toInt(); other > 0)
                    offered.push_back(other);
            QCOMPARE(offered, beside.at(cylinder.number));
        }
    }

    /// After a clearance was put right nothing that is heard is as found, and what was heard is heard again.
    void a_valve_that_was_put_right_is_listened_to_again() {
        MeasuredVisit at;
        at.burnt_valve();
        LeakHuntModel hunt;
        hunt.setSessionId(text_id(at.session));
        complete(hunt, at.shop);
        hunt.setCylinder(2);
        const auto exhaust = [&] {
            for (const auto& exit : hunt.exits())
                if (exit.toMap()[QStringLiteral("key")] == QStringLiteral("exhaust"))
                    return exit.toMap()[QStringLiteral("loudness")].toString();
            return QString();
        };
        const auto listened = [&] {
            return hunt.cylinders()[1].toMap()[QStringLiteral("listened")].toBool();
        };
        QCOMPARE(hunt.tagWord(), QStringLiteral("as found"));
        QCOMPARE(exhaust(), QStringLiteral("strong"));
        QVERIFY(listened());

        Clearance valve;
        valve.session = at.session;
        valve.cylinder = 2;
        valve.side = ValveSide::exhaust;
        valve.found = TypedLength::make("0.02", units::mm).value();
        valve.left = TypedLength::make("0.20", units::mm).value();
        at.shop.desk->run(workflow::keep_clearance(valve));
        at.shop.settle();
        QTRY_COMPARE(hunt.tagWord(), QStringLiteral("after clearance adjustment"));
        QTRY_COMPARE(exhaust(), QString());
        QTRY_VERIFY(!listened());  // findings come from a thread of their own

        hunt.note(QStringLiteral("exhaust"), 0, QStringLiteral("faint"));
        at.shop.settle();
        QTRY_COMPARE(exhaust(), QStringLiteral("faint"));
        const auto kept = at.stored().exits;
        QVERIFY(std::ranges::any_of(kept, [](const ExitNote& note) {
            return note.tag == Tag::after_adjustment && note.loudness == Loudness::faint;
        }));
    }

    /// In 1-3-4-2 every 180 degrees the cylinder before or after in the order stands half a turn away, its
    /// companion on overlap (arithmetic of the order; usual valve timings are assumptions).
    void says_whether_a_neighbour_s_plug_hole_counts_now() {
        Shop shop;
        Engine engine = shop.add_engine(QStringLiteral("Harbour four"), 4);
        const auto session = shop.open_session(engine, "As found");
        LeakHuntModel hunt;
        hunt.setSessionId(text_id(session));
        complete(hunt, shop);
        const auto hint = [&](int cylinder, int neighbour) {
            hunt.setCylinder(cylinder);
            for (const auto& exit : hunt.exits())
                if (exit.toMap()[QStringLiteral("neighbour")].toInt() == neighbour)
                    return exit.toMap()[QStringLiteral("hint")].toString();
            return QString();
        };
        engine.firing_order.clear();
        shop.desk->run(workflow::save_engine(engine));
        shop.settle();
        QCOMPARE(hint(2, 3), QStringLiteral("Only counts while its valves are shut"));
        engine.firing_order = {1, 3, 4, 2};
        shop.desk->run(workflow::save_engine(engine));
        shop.settle();
        // 2 and 3 are companions: 3 is on overlap while the air is on 2.
        QVERIFY2(hint(2, 3).startsWith(QStringLiteral("It stands on overlap")), qPrintable(hint(2, 3)));
        // 1 fires 180 degrees after 2: at 2's TDC it begins its compression, its intake about to close or
        // open yet.
        QVERIFY2(hint(2, 1) != QStringLiteral("Only counts while its valves are shut"),
                 qPrintable(hint(2, 1)));
        QVERIFY2(hint(2, 1).contains(QStringLiteral("intake")), qPrintable(hint(2, 1)));
    }

    /// A diesel may have no throttle: nothing tells its mechanic to open one.
    void a_diesel_is_not_asked_for_a_throttle_that_it_may_not_have() {
        Shop shop;
        Engine engine = shop.add_engine(QStringLiteral("Harbour four"), 4);
        const auto session = shop.open_session(engine, "As found");
        const auto intake = [&] {
            LeakHuntModel hunt;
            hunt.setSessionId(text_id(session));
            complete(hunt, shop);
            hunt.setCylinder(1);
            for (const auto& exit : hunt.exits())
                if (exit.toMap()[QStringLiteral("key")] == QStringLiteral("intake"))
                    return exit.toMap()[QStringLiteral("hint")].toString();
            return QString();
        };
        QVERIFY2(intake().startsWith(QStringLiteral("Throttle open")), qPrintable(intake()));
        engine.fuel = Fuel::diesel;
        shop.desk->run(workflow::save_engine(engine));
        shop.settle();
        QVERIFY2(intake().contains(QStringLiteral("if there is one")), qPrintable(intake()));
    }
};

}  // namespace lapwing

QTEST_GUILESS_MAIN(lapwing::LeakHuntTest)
#include "leak_hunt_test.moc"

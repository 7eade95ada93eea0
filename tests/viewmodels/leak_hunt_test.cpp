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

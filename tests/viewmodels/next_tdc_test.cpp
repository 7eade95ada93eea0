// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/workflow/engines.h"
#include "qml/viewmodels/next_tdc_model.h"
#include "tests/viewmodels/measured_visit.h"

namespace lapwing {

/// A four-stroke turns 720 degrees a cycle, a two-stroke 360 (by definition).
class NextTdcTest : public QObject {
    Q_OBJECT

private slots:
    void one_cylinder_comes_back_after_a_whole_cycle() {
        MeasuredVisit visit(1);
        NextTdcModel model;
        show(model, visit);
        QCOMPARE(model.turnText(), QStringLiteral("720°"));
        QCOMPARE(model.problem(), QString());
        QCOMPARE(model.whichTdc().size(), 2);
        QVERIFY(model.whichTdc()[1].contains(QStringLiteral("overlap")));
    }

    void a_two_stroke_has_no_overlap_and_turns_once() {
        MeasuredVisit visit(1);
        Engine engine = *visit.shop.desk->engine(visit.shop.desk->engines().front().id);
        engine.cycle = StrokeCycle::two;
        visit.shop.desk->run(workflow::save_engine(engine));
        visit.shop.settle();
        NextTdcModel model;
        show(model, visit);
        QCOMPARE(model.turnText(), QStringLiteral("360°"));
        QVERIFY(!model.whichTdc()[1].contains(QStringLiteral("overlap")));
    }

    void stands_where_it_was_turned_to_until_the_next_reading_tells() {
        MeasuredVisit visit(2);
        Engine engine = *visit.shop.desk->engine(visit.shop.desk->engines().front().id);
        engine.firing_order = {1, 2};
        engine.firing_intervals = {TypedAngle::make("270", units::deg).value(),
                                   TypedAngle::make("450", units::deg).value()};
        visit.shop.desk->run(workflow::save_engine(engine));
        visit.shop.settle();
        NextTdcModel model;
        show(model, visit);
        QCOMPARE(model.from(), 1);
        QCOMPARE(model.turnText(), QStringLiteral("270°"));
        // Nobody turned it yet, and no air tells.
        QCOMPARE(model.choices().front().toMap()["turn"].toString(), QStringLiteral("if it stands at TDC"));
        model.turned();
        visit.shop.settle();
        NextTdcModel again;
        show(again, visit);
        QCOMPARE(again.from(), 2);
        QCOMPARE(again.turnText(), QStringLiteral("450°"));
        QCOMPARE(again.choices().front().toMap()["turn"].toString(), QStringLiteral("stands at TDC now"));
        // Whoever measures the first all the same has it at TDC.
        visit.leak(1, "5.5", "5.2");
        visit.shop.settle();
        NextTdcModel later;
        show(later, visit);
        QCOMPARE(later.from(), 1);
    }

    void names_the_line_of_the_card_that_is_missing() {
        MeasuredVisit visit(2);
        NextTdcModel model;
        show(model, visit);
        QVERIFY(!model.problem().isEmpty());
        QCOMPARE(model.missingLine(), QStringLiteral("order"));
    }

private:
    static void show(NextTdcModel& model, MeasuredVisit& visit) {
        model.setSessionId(text_id(visit.session));
        complete(model, visit.shop);
    }
};

}  // namespace lapwing

QTEST_GUILESS_MAIN(lapwing::NextTdcTest)
#include "next_tdc_test.moc"

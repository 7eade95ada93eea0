// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/workflow/plan.h"

#include "core/workflow/clearances.h"
#include "core/workflow/remarks.h"
#include "qml/viewmodels/plan_line_form.h"
#include "qml/viewmodels/plan_lines.h"
#include "qml/viewmodels/plan_model.h"
#include "tests/viewmodels/measured_visit.h"

namespace lapwing {

class PlanTest : public QObject {
    Q_OBJECT

private:
    static void show(PlanModel& model, MeasuredVisit& visit) {
        model.setSessionId(text_id(visit.session));
        complete(model, visit.shop);
    }
    static int proposal(const PlanModel& model, const QString& words) {
        const QVariantList all = model.proposals();
        for (int i = 0; i < all.size(); ++i)
            if (all[i].toMap()["work"].toString().contains(words)) return i;
        return -1;
    }
    static QVariantMap line(const PlanModel& model, int at) { return model.lines().value(at).toMap(); }

    /// One line of the plan and the form over it.
    struct Written {
        Written() {
            PlanModel model;
            show(model, visit);
            QString added;
            QObject::connect(&model, &PlanModel::added, &model, [&](const QString& id) { added = id; });
            model.addLine();
            visit.shop.settle();
            form.setRecordId(added);
            complete(form, visit.shop);
        }
        QString enter(const char* key, const QVariantMap& entry) {
            const QString problem = form.enter(QString::fromLatin1(key), entry);
            visit.shop.settle();
            return problem;
        }
        PlanLine stored() const { return visit.stored().plan.at(0); }

        MeasuredVisit visit;
        PlanLineForm form;
    };

private slots:
    void a_proposal_is_taken_over_with_its_reason_and_the_reading_to_expect() {
        MeasuredVisit visit;
        visit.burnt_valve();
        PlanModel model;
        show(model, visit);
        QVERIFY(model.proposing());
        QVERIFY(model.proposals().isEmpty());
        QTRY_VERIFY_WITH_TIMEOUT(!model.proposing(), 60000);
        // Before its clearance is known, nothing is taken apart for this valve.
        QVERIFY(proposal(model, QStringLiteral("Check the clearance of the exhaust valve")) >= 0);
        QCOMPARE(proposal(model, QStringLiteral("Head off")), -1);

        Clearance clearance;
        clearance.session = visit.session;
        clearance.cylinder = 2;
        clearance.side = ValveSide::exhaust;
        clearance.found = TypedLength::make("0.20", units::mm).value();
        visit.shop.desk->run(workflow::keep_clearance(clearance));
        visit.shop.settle();
        QTRY_VERIFY_WITH_TIMEOUT(proposal(model, QStringLiteral("Head off")) >= 0, 60000);
        const int head = proposal(model, QStringLiteral("Head off"));
        const QVariantMap shown = model.proposals()[head].toMap();
        QVERIFY(shown["expected"].toString().contains(QStringLiteral("bar")));
        const auto steps = shown["from"].toList();
        QCOMPARE(steps.size(), 1);
        QVERIFY(!steps[0].toMap()["formula"].toString().isEmpty());
        QVERIFY(steps[0].toMap()["inputs"].toList().size() > 5);
        QVERIFY(steps[0].toMap()["doubts"].toList().size() > 1);
        model.takeOver(head);
        visit.shop.settle();

        const auto plan = visit.stored().plan;
        QCOMPARE(plan.size(), std::size_t(1));
        QCOMPARE(plan[0].option, PlanOption::strip);
        QCOMPARE(plan[0].cylinder, std::optional(2));
        QVERIFY(QString::fromStdString(plan[0].reason).contains(QStringLiteral("working assumptions")));
        QVERIFY(!plan[0].if_left.empty());
        QVERIFY(plan[0].predicted_low && plan[0].predicted_high);
        QVERIFY(plan[0].predicted_low->si() < plan[0].predicted_high->si());
        QVERIFY(plan[0].predicted_low->unit() == units::bar);
        // What is in the plan is not proposed again.
        QCOMPARE(proposal(model, QStringLiteral("Head off")), -1);
        QCOMPARE(line(model, 0)["work"].toString(), shown["work"].toString());
        QCOMPARE(line(model, 0)["from"].toList(), steps);
        visit.shop.undo();
        QVERIFY(visit.stored().plan.empty());
        QVERIFY(proposal(model, QStringLiteral("Head off")) >= 0);
    }

    void ticked_work_says_whether_its_prediction_held() {
        MeasuredVisit visit;
        visit.dry(1, "6.0");
        visit.shop.settle();
        PlanLine work;
        work.id = visit.shop.desk->make_id<PlanLineId>();
        work.session = visit.session;
        work.option = PlanOption::strip;
        work.cylinder = 1;
        work.work = "Rings new";
        work.predicted_low = MeasuredVisit::bar("9.0");
        work.predicted_high = MeasuredVisit::bar("10.5");
        visit.shop.desk->run(workflow::add_plan_line(work));
        visit.shop.settle();
        PlanModel model;
        show(model, visit);
        const auto proof = [&] { return line(model, 0)["proofs"].toList().value(0).toMap(); };
        QVERIFY(proof().isEmpty());
        QVERIFY(!line(model, 0)["expected"].toString().isEmpty());
        visit.shop.clock.move_by(std::chrono::hours(1));
        model.tick(text_id(work.id), true);
        QTRY_VERIFY(proof()["text"].toString().contains(QStringLiteral("Test it again")));
        QCOMPARE(proof()["symbol"].toString(), QStringLiteral("question"));
        // Ticked and not tested since: the next thing to do is a visit of its own.
        QCOMPARE(model.testAgain(), QStringLiteral("later"));
        QVERIFY(model.retestedIn().isEmpty());

        visit.shop.clock.move_by(std::chrono::hours(24));
        const SessionId as_found = visit.session;
        visit.session = visit.shop.open_session(
            *visit.shop.desk->engine(visit.shop.desk->engines().front().id), "After the repair");
        visit.dry(1, "9.8");
        visit.shop.settle();
        QTRY_VERIFY2(proof()["text"].toString().contains(QStringLiteral("9.8 bar after the work")),
                     qPrintable(proof()["text"].toString()));
        QCOMPARE(proof()["symbol"].toString(), QStringLiteral("check"));
        QTRY_COMPARE(model.testAgain(), QString());
        QCOMPARE(model.retestedIn(), text_id(visit.session));
        // It would have held without a repair: said, and no tick.
        Visit stored = visit.shop.desk->visit(as_found).value();
        stored.plan.front().predicted_low = MeasuredVisit::bar("5.0");
        visit.shop.desk->run(workflow::save_plan_line(stored.plan.front()));
        visit.shop.settle();
        QTRY_VERIFY2(proof()["text"].toString().contains(QStringLiteral("without any repair")),
                     qPrintable(proof()["text"].toString()));
        QCOMPARE(proof()["symbol"].toString(), QStringLiteral("question"));
    }

    void a_quick_fix_is_tested_in_its_own_session() {
        MeasuredVisit visit;
        visit.dry(1, "6.0");
        PlanLine work;
        work.id = visit.shop.desk->make_id<PlanLineId>();
        work.session = visit.session;
        work.option = PlanOption::quick_fix;
        work.work = "Run it until it is warm, then test again.";
        visit.shop.desk->run(workflow::add_plan_line(work));
        visit.shop.settle();
        PlanModel model;
        show(model, visit);
        QCOMPARE(model.testAgain(), QString());
        visit.shop.clock.move_by(std::chrono::minutes(20));
        model.tick(text_id(work.id), true);
        QTRY_COMPARE(model.testAgain(), QStringLiteral("here"));
        visit.shop.clock.move_by(std::chrono::minutes(5));
        visit.dry(1, "7.5");
        visit.shop.settle();
        QTRY_COMPARE(model.testAgain(), QString());
        // On another day it is another visit.
        model.tick(text_id(work.id), false);
        visit.shop.clock.move_by(std::chrono::hours(48));
        model.tick(text_id(work.id), true);
        QTRY_COMPARE(model.testAgain(), QStringLiteral("later"));
        QVERIFY(model.retestedIn().isEmpty());
    }

    void an_aircrafts_plan_says_who_decides() {
        MeasuredVisit visit;
        PlanModel model;
        show(model, visit);
        const auto says = [&] {
            return model.cautions().join(QLatin1Char('\n')).contains(QStringLiteral("airworthiness"));
        };
        QVERIFY(!says());
        Engine engine = *visit.shop.desk->engine(visit.shop.desk->engines().front().id);
        engine.description = "Flugmotor";
        visit.shop.desk->run(workflow::save_engine(engine));
        visit.shop.settle();
        QTRY_VERIFY(says());
    }

    void staking_is_warned_of_where_a_line_means_it() {
        MeasuredVisit visit;
        PlanModel model;
        show(model, visit);
        const auto warns = [&](const char* of) {
            return model.cautions().join(QLatin1Char('\n')).contains(QLatin1String(of));
        };
        const auto add = [&](const char* work) {
            PlanLine line;
            line.id = visit.shop.desk->make_id<PlanLineId>();
            line.session = visit.session;
            line.option = PlanOption::quick_fix;
            line.work = work;
            visit.shop.desk->run(workflow::add_plan_line(line));
            visit.shop.settle();
        };
        QVERIFY(!warns("exhaust is poison"));
        add("Run it until it is warm, then test again.");
        QTRY_VERIFY(warns("exhaust is poison"));
        QVERIFY(!warns("taps on the stem"));
        add("Stake the exhaust valve of cylinder 2 lightly on its seat, then test again.");
        QTRY_VERIFY(warns("taps on the stem"));
    }

    void what_is_taken_apart_already_is_not_proposed_again() {
        MeasuredVisit visit;
        visit.burnt_valve();
        Clearance clearance;
        clearance.session = visit.session;
        clearance.cylinder = 2;
        clearance.side = ValveSide::exhaust;
        clearance.found = TypedLength::make("0.20", units::mm).value();
        visit.shop.desk->run(workflow::keep_clearance(clearance));
        // In somebody's own words.
        PlanLine own;
        own.id = visit.shop.desk->make_id<PlanLineId>();
        own.session = visit.session;
        own.option = PlanOption::strip;
        own.cylinder = 2;
        own.work = "Head to the machine shop";
        visit.shop.desk->run(workflow::add_plan_line(own));
        visit.shop.settle();
        PlanModel model;
        show(model, visit);
        QTRY_VERIFY_WITH_TIMEOUT(!model.proposing(), 60000);
        QCOMPARE(proposal(model, QStringLiteral("Head off")), -1);
        QVERIFY(proposal(model, QStringLiteral("Run it")) >= 0);
        model.tick(text_id(own.id), true);
        visit.shop.settle();
        QVERIFY(model.proposals().isEmpty());
    }

    void lines_are_ticked_moved_and_added_up() {
        MeasuredVisit visit;
        PlanModel model;
        show(model, visit);
        for (int i = 0; i < 2; ++i) {
            model.addLine();
            visit.shop.settle();
        }
        QCOMPARE(model.lines().size(), 2);
        const QString first = line(model, 0)["id"].toString();
        QVERIFY(line(model, 0)["first"].toBool() && line(model, 1)["last"].toBool());
        model.move(first, false);
        visit.shop.settle();
        QCOMPARE(line(model, 1)["id"].toString(), first);
        model.tick(first, true);
        visit.shop.settle();
        QVERIFY(line(model, 1)["done"].toBool());
        QCOMPARE(line(model, 1)["doneText"].toString(), QStringLiteral("Done 14 Mar 2026"));
        visit.shop.undo();
        QVERIFY(!line(model, 1)["done"].toBool());

        PlanLineForm form;
        form.setRecordId(first);
        complete(form, visit.shop);
        QCOMPARE(form.enter(QStringLiteral("price"), typed(QStringLiteral("120.5 EUR"))), QString());
        QCOMPARE(form.enter(QStringLiteral("labour"), typed(QStringLiteral("90"), QStringLiteral("min"))),
                 QString());
        visit.shop.settle();
        QCOMPARE(model.totals().size(), 1);
        QCOMPARE(model.totals().first().toMap()["value"].toString(), QString::fromUtf8("120.50 EUR · 1.5 h"));
    }

    void the_owner_answers_and_a_retest_is_planned() {
        MeasuredVisit visit;
        PlanModel model;
        show(model, visit);
        QCOMPARE(model.answer(), QStringLiteral("none"));
        model.setAnswer(QStringLiteral("yes"));
        visit.shop.settle();
        QCOMPARE(model.answer(), QStringLiteral("yes"));
        QCOMPARE(model.answeredAt(), QStringLiteral("Noted 14 Mar 2026"));
        QCOMPARE(visit.stored().session.owner_answer, OwnerAnswer::yes);

        model.retestInMonths(3);
        visit.shop.settle();
        QCOMPARE(model.retest(), QStringLiteral("14 Jun 2026"));
        QCOMPARE(model.retestOn(QStringLiteral("2026-04-03")), QString());
        visit.shop.settle();
        QCOMPARE(model.retest(), QStringLiteral("3 Apr 2026"));
        for (const char* wrong : {"soon", "2026-13-40", "31.02.2026", "0026-04-03"})
            QVERIFY2(model.retestOn(QString::fromLatin1(wrong)).contains(QStringLiteral("is not a day")),
                     wrong);
        const QString past = model.retestOn(QStringLiteral("2026-03-13"));
        QVERIFY2(past.contains(QStringLiteral("is over")), qPrintable(past));
        visit.shop.settle();
        QCOMPARE(model.retest(), QStringLiteral("3 Apr 2026"));
        model.retestInMonths(0);
        visit.shop.settle();
        QCOMPARE(model.retest(), QString());
    }

    void a_contradiction_stands_before_any_proposal() {
        MeasuredVisit visit;
        visit.dry(1, "9.8");
        visit.dry(2, "6.1");
        visit.leak(2, "5.5", "0");
        visit.shop.settle();
        PlanModel model;
        show(model, visit);
        QTRY_VERIFY_WITH_TIMEOUT(!model.proposing(), 60000);
        for (const QVariant& one : model.proposals())
            QVERIFY2(!one.toMap()["title"].toString().startsWith(QStringLiteral("Strip")),
                     qPrintable(one.toMap()["work"].toString()));
    }

    void a_line_is_written() {
        Written line;
        QCOMPARE(line.enter("option", chosen({QStringLiteral("strip")})), QString());
        QCOMPARE(line.enter("cylinder", chosen({QStringLiteral("2")})), QString());
        QCOMPARE(line.enter("work", typed(QStringLiteral("Head off"))), QString());
        QCOMPARE(line.enter("price", typed(QString::fromUtf8("€ 1420,50"))), QString());
        QCOMPARE(line.enter("predicted_low", typed(QStringLiteral("9.0"), QStringLiteral("bar"))), QString());
        QCOMPARE(line.enter("predicted_high", typed(QStringLiteral("10.2"), QStringLiteral("bar"))),
                 QString());
        const PlanLine stored = line.stored();
        QCOMPARE(stored.option, PlanOption::strip);
        QCOMPARE(stored.cylinder, std::optional(2));
        QCOMPARE(stored.price->digits, std::string("1420.50"));
        QCOMPARE(stored.price->currency, std::string("€"));
        QCOMPARE(stored.predicted_high->text(), std::string("10.2 bar"));
        line.form.remove();
        line.visit.shop.settle();
        QVERIFY(line.visit.stored().plan.empty());
        QVERIFY(!line.form.found());
    }

    void what_cannot_be_is_refused_in_a_sentence() {
        Written line;
        for (const char* wrong : {"EUR", "-20 EUR", "12,3,4 EUR", "10 20 EUR"})
            QVERIFY2(line.enter("price", typed(QString::fromLatin1(wrong)))
                         .contains(QStringLiteral("not a price")),
                     wrong);
        QVERIFY(line.enter("price", typed(QStringLiteral("420"))).contains(QStringLiteral("currency")));
        QCOMPARE(line.enter("predicted_high", typed(QStringLiteral("8"), QStringLiteral("bar"))), QString());
        QVERIFY(!line.enter("predicted_low", typed(QStringLiteral("9"), QStringLiteral("bar"))).isEmpty());
        QVERIFY(!line.stored().price);
        QVERIFY(!line.stored().predicted_low);
        QCOMPARE(line.enter("price", typed(QString())), QString());
    }
};

}  // namespace lapwing

QTEST_GUILESS_MAIN(lapwing::PlanTest)
#include "plan_test.moc"

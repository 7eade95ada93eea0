// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <QRegularExpression>
#include <algorithm>

#include "core/workflow/plan.h"
#include "core/workflow/sessions.h"
#include "core/workflow/testers.h"
#include "qml/viewmodels/findings_model.h"
#include "qml/viewmodels/odds_evidence.h"
#include "qml/viewmodels/session_model.h"
#include "tests/viewmodels/measured_visit.h"

namespace lapwing {

class FindingsTest : public QObject {
    Q_OBJECT

private:
    static void show(FindingsModel& model, MeasuredVisit& visit) {
        model.setSessionId(text_id(visit.session));
        complete(model, visit.shop);
    }
    static QVariantMap cylinder(const FindingsModel& model, int number) {
        return model.cylinders().value(number - 1).toMap();
    }
    static QVariantMap odds(const FindingsModel& model, int number) {
        return cylinder(model, number)["odds"].toMap();
    }

    static Dossier evidence_of(MeasuredVisit& visit) {
        const auto stored = visit.stored();
        const auto engine = visit.shop.desk->engine(stored.session.engine).value();
        return {engine, visit.shop.desk->testers(), {stored}, {}};
    }

private slots:
    void findings_come_at_once_and_the_odds_after_them() {
        MeasuredVisit visit;
        visit.burnt_valve();
        FindingsModel model;
        show(model, visit);
        QCOMPARE(model.oddsState(), QStringLiteral("working"));
        QTRY_VERIFY(model.ready());
        QTRY_COMPARE_WITH_TIMEOUT(model.oddsState(), QStringLiteral("ready"), 60000);
        QVERIFY(model.oddsRestOn().first().contains(QStringLiteral("not yet counted on real engines")));

        const QVariantMap leaking = odds(model, 2);
        QVERIFY(leaking["verdict"].toBool());
        QVERIFY2(leaking["headline"].toString().startsWith(
                     QStringLiteral("Cylinder 2 leaks mostly at the exhaust valve")),
                 qPrintable(leaking["headline"].toString()));
        const QVariantList shares = leaking["shares"].toList();
        QVERIFY(shares.size() >= 4);
        QCOMPARE(shares.first().toMap()["path"].toString(), QStringLiteral("exhaust"));
        double sum = 0.0;
        for (const QVariant& one : shares) {
            const QVariantMap share = one.toMap();
            sum += share["mean"].toDouble();
            // As long as the share, filled only as far as it is sure.
            QCOMPARE(share["share"].toDouble(), share["mean"].toDouble());
            QVERIFY(share["sure"].toDouble() <= share["share"].toDouble() + 1e-9);
            QVERIFY(share["low"].toDouble() <= share["mean"].toDouble() + 1e-9);
            QVERIFY(share["mean"].toDouble() <= share["high"].toDouble() + 1e-9);
            QVERIFY(!share["name"].toString().isEmpty());
            QVERIFY(!share["figure"].toString().isEmpty());
        }
        QVERIFY(std::abs(sum - 1.0) < 1e-3);
        // What "seals well" is stands where its odds do, and only there.
        const QVariantMap sound = odds(model, 1);
        QVERIFY(sound["others"].toString().startsWith(QStringLiteral("Seals well: odds ")));
        QVERIFY2(
            sound["means"].toString().contains(QStringLiteral("less than 10 % on a tester set to 5.5 bar")),
            qPrintable(sound["means"].toString()));
        QCOMPARE(leaking["means"].toString().isEmpty(), leaking["others"].toString().isEmpty());
        // No valve is given up before its clearance is recorded.
        QVERIFY(leaking["headline"].toString().contains(QStringLiteral("Check its clearance")));
        QVERIFY(!leaking["repairs"].toList().isEmpty());
        const QRegularExpression percent(QStringLiteral("odds (\\d+) %"));
        for (int number = 1; number <= 2; ++number) {
            auto found = percent.globalMatch(odds(model, number)["headline"].toString());
            while (found.hasNext()) {
                const int said = found.next().captured(1).toInt();
                QVERIFY(said <= 95 && said % 5 == 0);
            }
        }
    }

    void new_evidence_sets_them_aside_and_only_the_newest_is_shown() {
        MeasuredVisit visit;
        visit.dry(1, "9.8");
        visit.dry(2, "6.1");
        visit.leak(1, "5.5", "5.2");
        visit.leak(2, "5.5", "3.2");
        visit.shop.settle();
        FindingsModel model;
        show(model, visit);
        QTRY_COMPARE_WITH_TIMEOUT(model.oddsState(), QStringLiteral("ready"), 60000);
        const QString before = odds(model, 2)["headline"].toString();
        QStringList shown;
        connect(&model, &FindingsModel::refreshed, this, [&] {
            const QString now = odds(model, 2).value("headline").toString();
            if (shown.isEmpty() || shown.last() != now) shown << now;
        });
        // Two changes at once: the odds of the state between them are given up.
        visit.hear(2, Exit::breather, Loudness::faint);
        visit.shop.settle();
        QCOMPARE(model.oddsState(), QStringLiteral("working"));
        QVERIFY(odds(model, 2).isEmpty());
        visit.hear(2, Exit::exhaust, Loudness::strong);
        visit.hear(2, Exit::intake, Loudness::nothing);
        visit.shop.settle();
        QCOMPARE(model.oddsState(), QStringLiteral("working"));
        QTRY_COMPARE_WITH_TIMEOUT(model.oddsState(), QStringLiteral("ready"), 60000);
        QVERIFY(odds(model, 2)["headline"].toString().contains(QStringLiteral("exhaust valve")));
        QVERIFY(odds(model, 2)["headline"].toString() != before);
        // Nothing, then the newest.
        QCOMPARE(shown, (QStringList{QString(), odds(model, 2)["headline"].toString()}));
    }

    void the_plan_is_no_evidence() {
        MeasuredVisit visit;
        visit.burnt_valve();
        FindingsModel model;
        show(model, visit);
        QTRY_COMPARE_WITH_TIMEOUT(model.oddsState(), QStringLiteral("ready"), 60000);
        PlanLine line;
        line.session = visit.session;
        line.work = "Head off";
        visit.shop.desk->run(workflow::add_plan_line(line));
        visit.shop.desk->run(workflow::set_answer(visit.session, OwnerAnswer::yes));
        visit.shop.settle();
        QCOMPARE(model.oddsState(), QStringLiteral("ready"));
    }

    void a_contradiction_is_named_and_no_share_shown() {
        MeasuredVisit visit;
        visit.dry(1, "9.8");
        visit.dry(2, "9.6");
        visit.leak(2, "5.5", "0");
        visit.shop.settle();
        FindingsModel model;
        show(model, visit);
        QTRY_COMPARE_WITH_TIMEOUT(model.oddsState(), QStringLiteral("ready"), 60000);
        const QVariantMap unsure = odds(model, 2);
        QVERIFY(!unsure["verdict"].toBool());
        QVERIFY(unsure["shares"].toList().isEmpty());
        QVERIFY(unsure["repairs"].toList().isEmpty());
        QVERIFY2(unsure["headline"].toString().contains(QStringLiteral("does not fit together")),
                 qPrintable(unsure["headline"].toString()));
        QVERIFY(
            unsure["reasons"].toStringList().join(u' ').contains(QStringLiteral("held nothing of 5.5 bar")));
    }

    void the_right_tdc_is_asked_for_first() {
        MeasuredVisit visit;
        visit.dry(2, "9.6");
        visit.leak(2, "5.5", "0.3");
        visit.hear(2, Exit::intake, Loudness::strong);
        visit.hear(2, Exit::exhaust, Loudness::strong);
        visit.shop.settle();
        FindingsModel model;
        show(model, visit);
        QTRY_COMPARE_WITH_TIMEOUT(model.oddsState(), QStringLiteral("ready"), 60000);
        QVERIFY(!odds(model, 2)["verdict"].toBool());
        QVERIFY(odds(model, 2)["headline"].toString().contains(QStringLiteral("right TDC")));
    }

    void nothing_measured_asks_for_nothing() {
        MeasuredVisit visit;
        FindingsModel model;
        show(model, visit);
        QCOMPARE(model.oddsState(), QStringLiteral("none"));
        QTRY_VERIFY(model.ready());
        QVERIFY(odds(model, 1).isEmpty());
        QCOMPARE(model.nextPage(), QStringLiteral("Pad"));
        QCOMPARE(model.nextArgs()["test"].toString(), QStringLiteral("dry"));
    }

    void the_next_test_is_the_way_on_while_one_is_outstanding() {
        MeasuredVisit visit;
        visit.dry(1, "9.8");
        visit.dry(2, "6.1");
        visit.shop.settle();
        FindingsModel model;
        show(model, visit);
        QTRY_VERIFY(model.ready());
        QCOMPARE(model.nextPage(), QStringLiteral("Pad"));
        QCOMPARE(model.nextArgs()["test"].toString(), QStringLiteral("leak-down"));
        QCOMPARE(model.nextArgs()["cylinder"].toInt(), 2);
        QTRY_COMPARE_WITH_TIMEOUT(model.oddsState(), QStringLiteral("ready"), 60000);
        // Other tests that would tell something lead to where they are done.
        for (const QVariant& one : model.settling()) {
            const QVariantMap step = one.toMap();
            QVERIFY(!step["title"].toString().isEmpty());
            QVERIFY(step["text"].toString().contains(QStringLiteral("would tell")));
            QVERIFY(step["page"].toString() == QLatin1String("Pad") ||
                    step["page"].toString() == QLatin1String("LeakHunt"));
        }
    }

    void the_session_page_advises_as_the_findings_do() {
        MeasuredVisit visit(3);
        visit.dry(1, "6.1");
        visit.dry(2, "6.2");
        visit.dry(3, "9.8");
        visit.shop.settle();
        SessionModel session;
        session.setSessionId(text_id(visit.session));
        complete(session, visit.shop);
        QTRY_VERIFY(!session.nextReason().isEmpty());
        // By rule, and not waiting for odds that nobody asked for.
        const Dossier evidence = evidence_of(visit);
        const auto rules = findings::find(evidence, evidence.visits.front(), visit.shop.reference);
        QVERIFY(rules.next.size() > 1);
        const int first = rules.next[0].cylinder.value_or(0);
        const int second = rules.next[1].cylinder.value_or(0);
        QVERIFY(first != second && first > 0 && second > 0);
        QCOMPARE(session.nextArgs()["cylinder"].toInt(), first);
        QVERIFY(!visit.shop.app->odds().find(evidence_in(evidence)));

        // Odds become known that find the other test more telling.
        const double much = visit.shop.reference.assumed("tells-much") + 0.1;
        auto leaks = std::make_shared<odds::WhereItLeaks>();
        leaks->next_tests = {{findings::Action::leak_down, second, much + 0.1},
                             {findings::Action::leak_down, first, much}};
        visit.shop.app->odds().keep(evidence_in(evidence), leaks);
        session.lookAgain();
        QCOMPARE(session.nextArgs()["cylinder"].toInt(), second);
        FindingsModel findings;
        show(findings, visit);
        QTRY_VERIFY(findings.ready());
        QCOMPARE(findings.nextArgs(), session.nextArgs());
        QCOMPARE(findings.nextText(), session.nextText());

        // One reading more, and they count no longer.
        visit.dry(1, "6.0");
        visit.shop.settle();
        QTRY_COMPARE(session.nextArgs()["cylinder"].toInt(), first);
    }

    void a_tester_nobody_named_is_named_where_the_session_asks_for_it() {
        MeasuredVisit visit(1);
        // 27 %: between what seals and what does not while the restrictor may be any.
        visit.leak(1, "5.5", "4.0");
        visit.shop.settle();
        FindingsModel model;
        show(model, visit);
        QTRY_VERIFY(model.ready());
        QCOMPARE(model.nextText(), QStringLiteral("Name the tester"));
        QCOMPARE(model.nextPage(), QStringLiteral("Visit"));
        QCOMPARE(model.nextArgs()["line"].toString(), QStringLiteral("leak_down"));

        // Named, but its restrictor is not known: its own card asks for that.
        Tester tester;
        tester.id = visit.shop.desk->make_id<TesterId>();
        tester.made_at = visit.shop.desk->clock().now();
        tester.gauge.full_scale = MeasuredVisit::bar("10");
        tester.name = "Green case";
        tester.kind = TesterKind::leak_down;
        visit.shop.desk->run(workflow::save_tester(tester));
        visit.shop.settle();
        QCOMPARE(visit.shop.desk->testers().size(), std::size_t{1});
        const auto id = visit.shop.desk->testers().front().id;
        Session session = *visit.shop.desk->session(visit.session);
        session.leak_down_tester = id;
        visit.shop.desk->run(workflow::save_session(session));
        visit.shop.settle();
        QTRY_COMPARE(model.nextPage(), QStringLiteral("TesterCard"));
        QCOMPARE(model.nextArgs()["testerId"].toString(), QString::fromStdString(id.text()));
    }

    void odds_that_are_worked_out_are_remembered_for_the_session_page() {
        MeasuredVisit visit;
        visit.burnt_valve();
        FindingsModel model;
        show(model, visit);
        QTRY_COMPARE_WITH_TIMEOUT(model.oddsState(), QStringLiteral("ready"), 60000);
        QVERIFY(visit.shop.app->odds().find(evidence_in(evidence_of(visit))));
    }

    void the_plan_is_the_way_on_when_no_test_is_outstanding() {
        MeasuredVisit visit;
        for (int number : {1, 2}) {
            visit.dry(number, "9.8");
            visit.leak(number, "5.5", "5.3");
        }
        visit.shop.settle();
        FindingsModel model;
        show(model, visit);
        QTRY_VERIFY(model.ready());
        QCOMPARE(model.nextPage(), QStringLiteral("Plan"));
        QCOMPARE(model.nextText(), QStringLiteral("Plan"));
    }
};

}  // namespace lapwing

QTEST_GUILESS_MAIN(lapwing::FindingsTest)
#include "findings_test.moc"

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// From readings to a plan that the owner said yes to, by touch alone: evidence, where it leaks, the next
// test, a proposal taken over, a tick, the answer, and all of it on paper.
#include <QTest>

#include "tests/app/harness/errands.h"

namespace lapwing::test {

#define DO(action) QVERIFY2(action, qPrintable(errands.why() + " / " + thumb.why() + " / " + phone.why()))

class PlanJobTest : public QObject {
    Q_OBJECT

private slots:
    void from_readings_to_a_plan_on_paper();
};

void PlanJobTest::from_readings_to_a_plan_on_paper() {
    constexpr int patience = 60'000;
    Phone phone;
    QVERIFY2(phone.on(), qPrintable(phone.why()));
    auto& thumb = phone.thumb();
    Errands errands(phone);
    DO(errands.add_engine(QStringLiteral("Orchard two"), 2));
    // Hydraulic adjusters: no clearance stands before a verdict.
    DO(thumb.sees(QStringLiteral("line_adjuster")) || thumb.touch(QStringLiteral("section_Valves")));
    DO(thumb.touch(QStringLiteral("line_adjuster")));
    DO(thumb.touch(QStringLiteral("option_hydraulic")));
    DO(wait_until([&] { return thumb.overlay() == nullptr; }));
    settle(300);  // the card is laid out anew after the commit
    DO(errands.card_line(QStringLiteral("Factory limits"), QStringLiteral("lowest"), QStringLiteral("8.0"),
                         QStringLiteral("bar")));
    DO(errands.new_session());

    DO(errands.open_pad(QStringLiteral("dry")));
    DO(errands.keep(QStringLiteral("98")));
    DO(errands.keep(QStringLiteral("61")));
    DO(errands.back_to(QStringLiteral("Session")));

    // The findings are there at once; the amber button leads to the test that is still wanting.
    DO(thumb.touch(QStringLiteral("tile_findings")));
    QVERIFY2(phone.arrives(QStringLiteral("Findings")), qPrintable(phone.why()));
    DO(thumb.reads(QStringLiteral("Cylinder 2 reads 6.1 bar")));
    DO(thumb.reads(QStringLiteral("Leak-down, cylinder 2")));
    DO(thumb.touch(QStringLiteral("next")));
    QVERIFY2(phone.arrives(QStringLiteral("Pad")), qPrintable(phone.why()));
    DO(thumb.appears(QStringLiteral("understood")));
    DO(errands.free_pad());
    DO(thumb.reads(QStringLiteral("Cylinder 2")));
    DO(errands.field(QStringLiteral("set"), QStringLiteral("5.5")));
    DO(thumb.touch(QStringLiteral("tab_held")));
    DO(errands.keep(QStringLiteral("30")));
    QVERIFY2(phone.arrives(QStringLiteral("LeakHunt")), qPrintable(phone.why()));
    std::size_t heard = 0;
    for (const auto& [exit, loudness] :
         {std::pair{"exhaust", "strong"}, std::pair{"intake", "nothing"}, std::pair{"breather", "nothing"}}) {
        DO(thumb.touch_in(QStringLiteral("exit_") + QLatin1String(exit),
                          QStringLiteral("choice_") + QLatin1String(loudness)));
        ++heard;
        DO(wait_until([&] { return errands.visit()->exits.size() == heard; }, patience));
        settle(50);
    }
    DO(errands.back_to(QStringLiteral("Findings")));

    // Where it leaks: the bar comes after the sentence, with a legend line for every share.
    auto* panel = thumb.find(QStringLiteral("findings_2"));
    QVERIFY(panel);
    DO(wait_until(
        [&] {
            panel = thumb.find(QStringLiteral("findings_2"));
            return panel && thumb.find(QStringLiteral("splitBar"), panel) != nullptr;
        },
        patience));
    DO(thumb.reads(QStringLiteral("Cylinder 2 leaks mostly at the exhaust valve: odds"), 5000, panel));
    DO(thumb.reads(QStringLiteral("not yet counted on real engines"), 5000, panel));
    for (const char* path : {"Rings", "Intake valve", "Exhaust valve", "Head gasket"})
        DO(thumb.reads(QString::fromLatin1(path), 5000, panel));

    // A lifter may hold that valve open: it is asked once more before the plan.
    DO(thumb.reads(QStringLiteral("Leak-down, cylinder 2")));
    DO(thumb.touch(QStringLiteral("next")));
    QVERIFY2(phone.arrives(QStringLiteral("Pad")), qPrintable(phone.why()));
    DO(thumb.reads(QStringLiteral("Cylinder 2")));
    DO(errands.keep(QStringLiteral("31")));
    QVERIFY2(phone.arrives(QStringLiteral("LeakHunt")), qPrintable(phone.why()));
    DO(errands.back_to(QStringLiteral("Findings")));
    DO(wait_until([&] { return thumb.words().contains(QStringLiteral("Plan")); }, patience));

    // No test is outstanding: the plan, with what is proposed.
    DO(thumb.touch(QStringLiteral("next")));
    QVERIFY2(phone.arrives(QStringLiteral("Plan")), qPrintable(phone.why()));
    DO(thumb.appears(QStringLiteral("proposal_0"), patience));
    std::size_t lines = 0;
    while (thumb.sees(QStringLiteral("proposal_0"))) {
        DO(thumb.touch_in(QStringLiteral("proposal_0"), QStringLiteral("take")));
        ++lines;
        DO(wait_until([&] { return errands.visit()->plan.size() == lines; }));
        settle(300);  // cautions of the work taken over push what is below
        QVERIFY(lines < 10);
    }
    QVERIFY(lines >= 2);
    // Quick fixes first: what stands on top can be ticked before anything is taken apart.
    DO(thumb.touch_in(QStringLiteral("plan_0"), QStringLiteral("done")));
    DO(wait_until([&] {
        const auto plan = errands.visit()->plan;
        return std::any_of(plan.begin(), plan.end(), [](const PlanLine& line) {
            return line.done_at && line.option == PlanOption::quick_fix;
        });
    }));
    settle(200);
    const QString last = QStringLiteral("plan_%1").arg(lines - 1);
    DO(thumb.touch_in(last, QStringLiteral("change")));
    QVERIFY2(phone.arrives(QStringLiteral("PlanLine")), qPrintable(phone.why()));
    DO(errands.card_line(QStringLiteral("Work"), QStringLiteral("price"), QStringLiteral("420 EUR")));
    DO(thumb.touch(QStringLiteral("done")));
    QVERIFY2(phone.arrives(QStringLiteral("Plan")), qPrintable(phone.why()));
    DO(thumb.reads(QStringLiteral("420 EUR")));
    DO(thumb.touch_in(QStringLiteral("answer"), QStringLiteral("choice_yes")));
    DO(wait_until([&] { return errands.visit()->session.owner_answer == OwnerAnswer::yes; }));
    DO(thumb.touch(QStringLiteral("retest")));
    DO(thumb.touch(QStringLiteral("months_1")));
    DO(wait_until([&] { return errands.visit()->session.retest_planned_for.has_value(); }));
    DO(wait_until([&] { return thumb.overlay() == nullptr; }));

    const QString report = errands.make_report();
    DO(!report.isEmpty());
    const QString printed = text_of_pdf(report);
    for (const char* there :
         {"Where it leaks", "Cylinder 2 leaks mostly at the exhaust valve: ",
          "not yet counted on real engines", "Plan", "Head off", "420 EUR", "yes", "done"})
        QVERIFY2(printed.contains(QLatin1String(there)),
                 qPrintable(QLatin1String(there) + printed.left(4000)));

    // The work is done: tested again in a visit of its own, and held against this one.
    const SessionId found = errands.visit()->session.id;
    DO(errands.back_to(QStringLiteral("Plan")));
    DO(thumb.touch_in(last, QStringLiteral("done")));
    DO(thumb.reads(QStringLiteral("Test it again to see whether it holds")));
    DO(thumb.touch(QStringLiteral("testAgain")));
    QVERIFY2(phone.arrives(QStringLiteral("Session")), qPrintable(phone.why()));
    DO(wait_until([&] { return errands.visit()->session.id != found; }));
    QCOMPARE(errands.visit()->session.title, std::string("After repair"));
    DO(errands.open_pad(QStringLiteral("dry")));
    DO(errands.keep(QStringLiteral("98")));
    DO(errands.keep(QStringLiteral("97")));
    phone.go(QStringLiteral("Plan"), {{"sessionId", QString::fromStdString(found.text())}});
    DO(thumb.reads(QStringLiteral("Cylinder 2 reads 9.7 bar after the work")));
    DO(thumb.touch(QStringLiteral("beforeAfter")));
    QVERIFY2(phone.arrives(QStringLiteral("Changes")), qPrintable(phone.why()));
    DO(thumb.reads(QStringLiteral("better beyond doubt")));
    DO(thumb.reads(QStringLiteral("Cylinder 2 reads 9.7 bar after the work")));
}

}  // namespace lapwing::test

LAPWING_APP_TEST_MAIN(lapwing::test::PlanJobTest)
#include "plan_job_test.moc"

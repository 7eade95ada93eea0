// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// The main job by touch alone: a new engine, dry test, leak-down with its exits, wet test, clearances,
// findings, hand over; what can go wrong on the way; and what stands in the library afterwards.
#include <QSignalSpy>
#include <QTest>

#include "core/workflow/sessions.h"
#include "tests/app/harness/errands.h"
#include "tests/app/harness/stock.h"

namespace lapwing::test {
namespace {

QString readout(Phone& phone) {
    const auto* figure = phone.thumb().find(QStringLiteral("figure"), phone.page_item());
    return figure ? figure->property("text").toString() : QStringLiteral("(no readout)");
}

QString digits(const std::optional<TypedPressure>& value) {
    return value ? QString::fromStdString(value->digits()) : QStringLiteral("(none)");
}

/// The word "faint" of an exit: "exit_breather".
bool hear(Thumb& thumb, const QString& exit, const QString& loudness) {
    return thumb.touch_in(QStringLiteral("exit_") + exit, QStringLiteral("choice_") + loudness);
}

}  // namespace

#define DO(action) QVERIFY2(action, qPrintable(errands.why() + " / " + thumb.why() + " / " + phone.why()))

class MainJobTest : public QObject {
    Q_OBJECT

private slots:
    void the_whole_job();
    void typed_digits();
    void questions_refuse_nothing();
    void undo_of_step_and_deletion();
    void redo_keeps_and_repeat_counts();
    void other_conditions_get_a_session_of_their_own();
    void drafts_outlive_the_process();
    void the_first_frame_shows_the_engines();
};

void MainJobTest::the_whole_job() {
    Phone phone;
    QVERIFY2(phone.on(), qPrintable(phone.why()));
    auto& thumb = phone.thumb();
    Errands errands(phone);

    DO(thumb.reads(QStringLiteral("No engine yet")));
    DO(errands.add_engine(QStringLiteral("Orchard four"), 4));
    DO(errands.card_line(QStringLiteral("Valves"), QStringLiteral("intake_clearance"),
                         QStringLiteral("0.15-0.20")));
    DO(errands.new_session());

    // Dry test: two digits and one touch a cylinder, nothing else.
    DO(errands.open_pad(QStringLiteral("dry")));
    const int before = thumb.touches();
    for (const char* typed : {"92", "88", "61", "90"})
        DO(errands.keep(QString::fromLatin1(typed)));
    QCOMPARE(thumb.touches() - before, 4 * (2 + 1));
    DO(thumb.reads(QStringLiteral("Cylinder 4: 9.0 bar kept")));
    DO(thumb.touch(QStringLiteral("keep")));  // "Done"
    QVERIFY2(phone.arrives(QStringLiteral("Session")), qPrintable(phone.why()));

    // Leak-down: set once, then held, listen, done, next.
    DO(errands.open_pad(QStringLiteral("leak-down")));
    DO(errands.field(QStringLiteral("set"), QStringLiteral("5.5")));
    DO(thumb.touch(QStringLiteral("tab_held")));
    const std::vector<std::tuple<const char*, const char*, const char*>> air{{"50", "breather", "faint"},
                                                                             {"48", "breather", "faint"},
                                                                             {"30", "exhaust", "strong"},
                                                                             {"51", "intake", "nothing"}};
    for (std::size_t i = 0; i < air.size(); ++i) {
        const auto& [held, exit, loudness] = air[i];
        QCOMPARE(phone.page(), QStringLiteral("Pad"));
        DO(thumb.reads(QStringLiteral("Cylinder %1 held, of 5.5 bar set").arg(i + 1)));
        DO(thumb.type(QString::fromLatin1(held)));
        DO(thumb.reads(QStringLiteral("Keep, listen")));
        DO(thumb.reads(QStringLiteral("leakage on this tester")));  // while typing
        DO(errands.keep({}));
        QVERIFY2(phone.arrives(QStringLiteral("LeakHunt")), qPrintable(phone.why()));
        DO(thumb.reads(QStringLiteral("Cylinder %1, leak hunt").arg(i + 1)));
        DO(hear(thumb, QString::fromLatin1(exit), QString::fromLatin1(loudness)));
        DO(wait_until([&] { return errands.visit()->exits.size() == i + 1; }));
        settle(20);
        DO(thumb.touch(QStringLiteral("done")));
        settle(30);
    }
    DO(errands.back_to(QStringLiteral("Session")));

    // Wet test of the low one only, oil last.
    DO(errands.open_pad(QStringLiteral("wet")));
    DO(thumb.touch(QStringLiteral("cylinder_2")));
    DO(errands.field(QStringLiteral("oil"), QStringLiteral("15")));
    DO(thumb.touch(QStringLiteral("tab_final")));
    DO(errands.keep(QStringLiteral("62")));
    DO(thumb.reads(QStringLiteral("Cylinder 3: 6.2 bar kept")));
    DO(errands.back_to(QStringLiteral("Session")));

    // Clearances: the intake valve of the first cylinder, found too small, left right.
    DO(thumb.touch(QStringLiteral("tile_clearances")));
    QVERIFY2(phone.arrives(QStringLiteral("Clearances")), qPrintable(phone.why()));
    DO(thumb.type(QStringLiteral("0.05")));
    DO(thumb.touch(QStringLiteral("tab_left")));
    DO(thumb.type(QStringLiteral("0,18")));
    DO(thumb.touch(QStringLiteral("keep")));
    DO(wait_until([&] { return errands.visit()->clearances.size() == 1; }));
    DO(errands.back_to(QStringLiteral("Session")));

    // Findings, then the report.
    DO(thumb.touch(QStringLiteral("tile_findings")));
    QVERIFY2(phone.arrives(QStringLiteral("Findings")), qPrintable(phone.why()));
    DO(thumb.reads(QStringLiteral("Cylinder 3 leaks")));
    DO(thumb.reads(QStringLiteral("exhaust valve")));
    const QString report = errands.make_report();
    DO(!report.isEmpty());
    const QString printed = text_of_pdf(report);
    QVERIFY2(printed.contains(QStringLiteral("Orchard four")), qPrintable(printed.left(400)));
    QVERIFY2(printed.contains(QStringLiteral("Cylinder 3 leaks")), qPrintable(printed.left(2000)));
    DO(thumb.touch(QStringLiteral("makeSession")));
    DO(thumb.appears(QStringLiteral("made_1"), 15000));

    // What stands in the library: everything, as typed.
    const auto visit = errands.visit();
    QVERIFY(visit);
    QCOMPARE(visit->readings.size(), 9U);
    const std::vector<QString> finals{"9.2", "8.8", "6.1", "9.0"};
    for (int number = 1; number <= 4; ++number) {
        const auto at = static_cast<std::size_t>(number - 1);
        const auto* dry = latest(visit->readings, TestKind::dry, number);
        QVERIFY(dry);
        QCOMPARE(digits(dry->final), finals[at]);
        QCOMPARE(QString::fromUtf8(dry->final->unit().symbol().data()), QStringLiteral("bar"));
        const auto* leak = latest(visit->readings, TestKind::leak_down, number);
        QVERIFY(leak);
        QCOMPARE(digits(leak->set), QStringLiteral("5.5"));
    }
    QCOMPARE(digits(latest(visit->readings, TestKind::leak_down, 3)->held), QStringLiteral("3.0"));
    const auto* wet = latest(visit->readings, TestKind::wet, 3);
    QVERIFY(wet);
    QCOMPARE(wet->oiled, Oiled::fresh);
    QCOMPARE(QString::fromStdString(wet->oil_volume->digits()), QStringLiteral("15"));
    QCOMPARE(visit->exits.size(), 4U);
    QCOMPARE(visit->exits[2].exit, Exit::exhaust);
    QCOMPARE(visit->exits[2].loudness, Loudness::strong);
    QCOMPARE(visit->exits[2].reading, latest(visit->readings, TestKind::leak_down, 3)->id);
    QCOMPARE(QString::fromStdString(visit->clearances[0].found->digits()), QStringLiteral("0.05"));
    QCOMPARE(QString::fromStdString(visit->clearances[0].left->digits()), QStringLiteral("0.18"));
}

/// The bar gauge of 16 that stands in when none is chosen (common practice, no source).
void MainJobTest::typed_digits() {
    Phone phone;
    QVERIFY2(phone.on(), qPrintable(phone.why()));
    auto& thumb = phone.thumb();
    Errands errands(phone);
    DO(errands.add_engine(QStringLiteral("Two"), 2));
    DO(errands.new_session());
    DO(errands.open_pad(QStringLiteral("dry")));

    DO(thumb.type(QStringLiteral("92")));
    QCOMPARE(readout(phone), QStringLiteral("9.2"));
    DO(thumb.reads(QStringLiteral("point placed")));
    // Placed visibly, and taken away by the point key: 92 was meant.
    DO(thumb.touch(QStringLiteral("key_mark")));
    QCOMPARE(readout(phone), QStringLiteral("92."));
    for (int i = 0; i < 3; ++i)
        DO(thumb.touch(QStringLiteral("key_backspace")));
    DO(thumb.type(QStringLiteral("9,2")));
    QCOMPARE(readout(phone), QStringLiteral("9.2"));
    DO(thumb.touch(QStringLiteral("key_backspace")));
    DO(thumb.touch(QStringLiteral("key_backspace")));
    DO(thumb.touch(QStringLiteral("key_backspace")));

    // A hardware keyboard: letters are no digits, comma and point both are the mark.
    thumb.keys(QStringLiteral("x9,ab2"));
    QCOMPARE(readout(phone), QStringLiteral("9.2"));
    thumb.key(Qt::Key_Delete);
    thumb.keys(QStringLiteral("8.8"));
    QCOMPARE(readout(phone), QStringLiteral("8.8"));
    thumb.key(Qt::Key_Return);
    DO(wait_until([&] { return errands.visit()->readings.size() == 1; }));
    QCOMPARE(digits(errands.visit()->readings[0].final), QStringLiteral("8.8"));
    DO(thumb.reads(QStringLiteral("Cylinder 1: 8.8 bar kept")));
}

void MainJobTest::questions_refuse_nothing() {
    Phone phone;
    QVERIFY2(phone.on(), qPrintable(phone.why()));
    auto& thumb = phone.thumb();
    Errands errands(phone);
    DO(errands.add_tester(QStringLiteral("compression gauge"), QStringLiteral("Red gauge"),
                          QStringLiteral("16"), QStringLiteral("bar")));
    DO(errands.add_engine(QStringLiteral("Two"), 2));
    DO(errands.new_session());
    DO(errands.use_tester(QStringLiteral("gauge"), QStringLiteral("Red gauge")));

    DO(errands.open_pad(QStringLiteral("dry")));
    DO(thumb.type(QStringLiteral("18.5")));
    DO(thumb.reads(QStringLiteral("over the gauge's scale")));
    DO(thumb.reads(QStringLiteral("Keep all the same")));
    DO(errands.keep({}));
    QCOMPARE(digits(errands.visit()->readings[0].final), QStringLiteral("18.5"));
    DO(errands.back_to(QStringLiteral("Session")));

    DO(errands.open_pad(QStringLiteral("leak-down")));
    // Without a set pressure the leakage can't be counted: it is asked for, and what was typed stays.
    DO(thumb.type(QStringLiteral("6.5")));
    DO(thumb.touch(QStringLiteral("keep")));
    DO(thumb.reads(QStringLiteral("Set pressure?")));
    DO(thumb.type(QStringLiteral("5.5")));
    DO(thumb.touch(QStringLiteral("tab_held")));
    QCOMPARE(readout(phone), QStringLiteral("6.5"));
    DO(thumb.reads(QStringLiteral("Were the two swapped?")));
    DO(thumb.reads(QStringLiteral("Keep all the same")));
    DO(errands.keep({}));
    QCOMPARE(digits(latest(errands.visit()->readings, TestKind::leak_down, 1)->held), QStringLiteral("6.5"));
}

void MainJobTest::undo_of_step_and_deletion() {
    Phone phone;
    QVERIFY2(phone.on(), qPrintable(phone.why()));
    auto& thumb = phone.thumb();
    Errands errands(phone);
    DO(errands.add_engine(QStringLiteral("Two"), 2));
    DO(errands.new_session());
    DO(errands.open_pad(QStringLiteral("dry")));
    DO(errands.keep(QStringLiteral("92")));
    DO(errands.keep(QStringLiteral("88")));
    DO(thumb.touch(QStringLiteral("undo")));
    DO(wait_until([&] { return errands.visit()->readings.size() == 1; }));
    QCOMPARE(digits(errands.visit()->readings[0].final), QStringLiteral("9.2"));
    DO(thumb.reads(QStringLiteral("Undone")));
    // Back on its cylinder, to be put right; nothing lies over the cylinders meanwhile.
    QCOMPARE(readout(phone), QStringLiteral("8.8"));
    QVERIFY(!thumb.sees(QStringLiteral("snack")));
    DO(errands.keep(QStringLiteral("89")));
    QCOMPARE(errands.visit()->readings[1].cylinder, 2);
    QCOMPARE(digits(errands.visit()->readings[1].final), QStringLiteral("8.9"));
    DO(thumb.touch(QStringLiteral("undo")));
    DO(wait_until([&] { return errands.visit()->readings.size() == 1; }));

    // A deletion, undone where it is offered.
    DO(errands.back_to(QStringLiteral("Session")));
    const auto engine = errands.engine()->id;
    DO(thumb.touch(QStringLiteral("deleteSession")));
    DO(thumb.touch(QStringLiteral("confirm")));
    DO(wait_until([&] { return phone.desk().sessions(engine).empty(); }));
    DO(thumb.appears(QStringLiteral("undo")));
    settle(100);
    DO(thumb.touch(QStringLiteral("undo")));
    DO(wait_until([&] { return phone.desk().sessions(engine).size() == 1; }));
    QCOMPARE(errands.visit()->readings.size(), 1U);
    QCOMPARE(digits(errands.visit()->readings[0].final), QStringLiteral("9.2"));

    // The whole engine, too.
    DO(errands.back_to(QStringLiteral("EngineCard")));
    DO(thumb.touch(QStringLiteral("deleteEngine")));
    DO(thumb.touch(QStringLiteral("confirm")));
    DO(wait_until([&] { return phone.desk().engines().empty(); }));
    settle(100);
    DO(thumb.touch(QStringLiteral("undo")));
    DO(wait_until([&] { return phone.desk().engines().size() == 1; }));
    QCOMPARE(errands.visit()->readings.size(), 1U);
}

void MainJobTest::redo_keeps_and_repeat_counts() {
    Phone phone;
    QVERIFY2(phone.on(), qPrintable(phone.why()));
    auto& thumb = phone.thumb();
    Errands errands(phone);
    DO(errands.add_engine(QStringLiteral("Single"), 1));
    DO(errands.new_session());
    DO(errands.open_pad(QStringLiteral("dry")));
    DO(errands.keep(QStringLiteral("92")));

    // Redo: the new reading stands for the old one, which is kept and shown struck out.
    DO(thumb.touch(QStringLiteral("more")));
    DO(thumb.touch(QStringLiteral("redo")));
    DO(wait_until([&] { return thumb.overlay() == nullptr; }));
    DO(thumb.type(QStringLiteral("90")));
    DO(thumb.reads(QStringLiteral("Keep instead")));
    DO(errands.keep({}));
    auto readings = errands.visit()->readings;
    QCOMPARE(readings.size(), 2U);
    QCOMPARE(readings[1].replaces, readings[0].id);
    QCOMPARE(digits(readings[0].final), QStringLiteral("9.2"));
    DO(thumb.touch(QStringLiteral("more")));
    DO(thumb.reads(QStringLiteral("measured again")));
    DO(thumb.touch(QStringLiteral("close")));
    DO(wait_until([&] { return thumb.overlay() == nullptr; }));

    // A second pull is a repeat: both count.
    DO(errands.keep(QStringLiteral("94")));
    readings = errands.visit()->readings;
    QCOMPARE(readings.size(), 3U);
    QVERIFY(!readings[2].replaces);
    DO(errands.back_to(QStringLiteral("Session")));
    DO(thumb.touch(QStringLiteral("tile_findings")));
    DO(thumb.reads(QStringLiteral("mean of 2")));
    DO(thumb.reads(QStringLiteral("9.2")));  // (9.0 + 9.4) / 2
}

void MainJobTest::drafts_outlive_the_process() {
    Phone phone;
    QVERIFY2(phone.on(), qPrintable(phone.why()));
    {
        auto& thumb = phone.thumb();
        Errands errands(phone);
        DO(errands.add_engine(QStringLiteral("Four"), 4));
        DO(errands.new_session());
        DO(errands.open_pad(QStringLiteral("dry")));
        DO(errands.keep(QStringLiteral("92")));
        DO(errands.keep(QStringLiteral("88")));
        DO(thumb.type(QStringLiteral("7")));
    }
    phone.off();
    QVERIFY2(phone.on(), qPrintable(phone.why()));
    auto& thumb = phone.thumb();
    Errands errands(phone);
    QVERIFY2(phone.arrives(QStringLiteral("Pad")), qPrintable(phone.why()));
    DO(thumb.reads(QStringLiteral("Cylinder 3, final reading")));
    QCOMPARE(readout(phone), QStringLiteral("7"));
    QCOMPARE(errands.visit()->readings.size(), 2U);
    // And goes on as if nothing had happened, the way back included.
    DO(errands.keep(QStringLiteral(".5")));
    QCOMPARE(digits(errands.visit()->readings[2].final), QStringLiteral("7.5"));
    DO(errands.back_to(QStringLiteral("Engines")));
}

/// From what is worth doing next to the pad of a session whose conditions were looked at; and from a repeat
/// that says by itself that something was changed.
void MainJobTest::other_conditions_get_a_session_of_their_own() {
    Phone phone;
    QVERIFY2(phone.on(), qPrintable(phone.why()));
    auto& thumb = phone.thumb();
    Errands errands(phone);
    DO(errands.add_engine(QStringLiteral("Scooter"), 1));
    DO(errands.new_session());
    const auto first = errands.visit()->session.id;
    Conditions shut;
    shut.throttle = Throttle::closed;
    QVERIFY(phone.run(workflow::set_conditions(first, shut)));
    DO(errands.open_pad(QStringLiteral("dry")));
    DO(errands.keep(QStringLiteral("66")));
    DO(errands.back_to(QStringLiteral("Session")));
    DO(thumb.reads(QStringLiteral("as a session of its own")));
    DO(thumb.touch(QStringLiteral("next")));
    QVERIFY2(phone.arrives(QStringLiteral("Again")), qPrintable(phone.why()));
    DO(thumb.touch(QStringLiteral("throttleOpen")));
    DO(thumb.touch(QStringLiteral("start")));
    QVERIFY2(phone.arrives(QStringLiteral("Pad")), qPrintable(phone.why()));
    DO(errands.free_pad());
    DO(errands.keep(QStringLiteral("88")));
    const auto engine = phone.desk().session(first)->engine;
    const auto sessions = phone.desk().sessions(engine);
    QCOMPARE(sessions.size(), std::size_t(2));
    QCOMPARE(sessions.front().conditions.throttle, Throttle::held_open);
    QCOMPARE(phone.desk().visit(first)->readings.size(), std::size_t(1));
    // The way back is that session, then the list.
    DO(errands.back_to(QStringLiteral("Session")));
    DO(thumb.reads(QStringLiteral("Throttle open")));

    // 8.8 bar, then 6.0: something else was changed.
    DO(errands.open_pad(QStringLiteral("dry")));
    DO(thumb.type(QStringLiteral("60")));
    DO(thumb.touch(QStringLiteral("keep")));
    DO(thumb.reads(QStringLiteral("What is different?")));
    QCOMPARE(phone.desk().visit(sessions.front().id)->readings.size(), std::size_t(1));
    DO(thumb.touch(QStringLiteral("keepInstead")));
    DO(wait_until([&] { return phone.desk().visit(sessions.front().id)->readings.size() == 2; }));
    QVERIFY(phone.desk().visit(sessions.front().id)->readings.back().replaces.has_value());
}

/// What the start is timed by is of use to a person.
void MainJobTest::the_first_frame_shows_the_engines() {
    Phone phone;
    QVERIFY2(phone.on(), qPrintable(phone.why()));
    Stock stock(phone.desk());
    for (int i = 1; i <= 20; ++i)
        stock.session(stock.engine("Harbour engine " + std::to_string(i), 2), "As found");
    phone.off();
    QStringList words;
    int engines = 0;
    phone.at_first_frame = [&](QQuickWindow& window) {
        words = Thumb(window).words();
        engines = int(words.filter(QStringLiteral("Harbour engine")).size());
    };
    QVERIFY2(phone.on(), qPrintable(phone.why()));
    QVERIFY(wait_until([&] { return !words.isEmpty(); }));
    // As many as the screen has room for.
    QVERIFY2(engines >= 4, qPrintable(words.join(QStringLiteral(" | "))));
    QVERIFY2(words.contains(QStringLiteral("Go on: Harbour engine 20")),
             qPrintable(words.join(QStringLiteral(" | "))));
}

}  // namespace lapwing::test

LAPWING_APP_TEST_MAIN(lapwing::test::MainJobTest)
#include "main_job_test.moc"

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// What hands meet beside the glass: keys, the tick, the light, the other thumb, a rag.
#include <QElapsedTimer>
#include <QTest>

#include "core/workflow/engines.h"
#include "tests/app/harness/errands.h"
#include "tests/app/harness/stock.h"

namespace lapwing::test {

#define DO(action) QVERIFY2(action, qPrintable(errands.why() + " / " + thumb.why() + " / " + phone.why()))

class HandsTest : public QObject {
    Q_OBJECT

private slots:
    void a_volume_key_keeps_unless_switched_off();
    void a_hardware_keyboard_types_keeps_and_goes_back();
    void keys_reach_no_pad_under_a_caution();
    void a_caution_is_seen_to_its_end_before_it_is_understood();
    void which_gauge_is_asked_once_and_may_wait();
    void a_message_lies_over_the_title_and_goes_with_a_swipe();
    void a_swipe_at_the_end_of_a_page_is_no_touch();
    void the_check_that_is_asked_for_stands_open();
    void the_folded_line_leads_to_every_field();
    void the_exits_that_are_left_are_quiet_with_one_touch();
    void keys_stay_where_they_are_when_a_repeat_is_kept();
    void the_return_key_keeps_after_a_touch();
    void a_key_ticks_unless_switched_off();
    void the_screen_stays_lit_through_a_test();
    void the_amber_button_comes_under_the_left_thumb();
    void nothing_moves_for_who_asked_for_that();
    void a_rag_touches_nothing();
    void the_last_step_is_taken_back_from_more();

private:
    /// Of the last reading that was kept, wherever its decimal point stands.
    static QString digits(Errands& errands) {
        return QString::fromStdString(errands.visit()->readings.back().final->digits()).remove(u'.');
    }
    static bool readings(Errands& errands, std::size_t count) {
        return wait_until([&] { return errands.visit() && errands.visit()->readings.size() == count; });
    }
};

void HandsTest::a_volume_key_keeps_unless_switched_off() {
    Phone phone;
    QVERIFY2(phone.on(), qPrintable(phone.why()));
    auto& thumb = phone.thumb();
    Errands errands(phone);
    phone.go(QStringLiteral("Pad"), {{"sessionId", twin_ready_to_test(phone)}, {"test", "dry"}});
    QVERIFY(phone.settings().volumeKeeps());
    DO(thumb.type(QStringLiteral("92")));
    thumb.key(Qt::Key_VolumeUp);
    QVERIFY(readings(errands, 1));
    settle(100);
    phone.settings().setVolumeKeeps(false);
    DO(thumb.type(QStringLiteral("88")));
    thumb.key(Qt::Key_VolumeDown);
    settle(300);
    QCOMPARE(errands.visit()->readings.size(), std::size_t(1));
    phone.settings().setVolumeKeeps(true);
    thumb.key(Qt::Key_VolumeDown);
    QVERIFY(readings(errands, 2));
}

void HandsTest::a_hardware_keyboard_types_keeps_and_goes_back() {
    Phone phone;
    QVERIFY2(phone.on(), qPrintable(phone.why()));
    auto& thumb = phone.thumb();
    Errands errands(phone);
    const QString id = twin_ready_to_test(phone);
    phone.go(QStringLiteral("Session"), {{"sessionId", id}});
    phone.go(QStringLiteral("Pad"), {{"sessionId", id}, {"test", "dry"}});
    settle(100);
    thumb.keys(QStringLiteral("917"));
    thumb.key(Qt::Key_Backspace);
    thumb.key(Qt::Key_Return);
    QVERIFY(readings(errands, 1));
    QCOMPARE(digits(errands), QStringLiteral("91"));
    // Out of a sheet first, then out of the page.
    DO(thumb.touch(QStringLiteral("more")));
    QVERIFY(wait_until([&] { return thumb.overlay() != nullptr; }));
    thumb.key(Qt::Key_Escape);
    QVERIFY(wait_until([&] { return thumb.overlay() == nullptr; }));
    settle(50);
    QCOMPARE(phone.page(), QStringLiteral("Pad"));
    thumb.key(Qt::Key_Back);
    QVERIFY2(phone.arrives(QStringLiteral("Session")), qPrintable(phone.why()));
    thumb.key(Qt::Key_Escape);
    QVERIFY2(phone.arrives(QStringLiteral("Engines")), qPrintable(phone.why()));
}

void HandsTest::keys_reach_no_pad_under_a_caution() {
    Phone phone;
    QVERIFY2(phone.on(), qPrintable(phone.why()));
    auto& thumb = phone.thumb();
    Errands errands(phone);
    DO(errands.add_engine(QStringLiteral("Harbour four"), 4));
    DO(errands.new_session());
    DO(thumb.touch(QStringLiteral("tile_dry")));
    DO(thumb.appears(QStringLiteral("understood")));
    settle(100);
    thumb.keys(QStringLiteral("91"));
    settle(50);
    DO(thumb.sees(QStringLiteral("understood")));
    // "Read on" down to the last caution, "Understood", and nothing of the pad.
    for (int keys = 0; keys < 12 && thumb.sees(QStringLiteral("understood")); ++keys) {
        thumb.key(Qt::Key_Return);
        settle(100);
    }
    DO(thumb.goes(QStringLiteral("understood")));
    DO(thumb.appears(QStringLiteral("notNow")));
    settle(100);
    thumb.keys(QStringLiteral("91"));
    thumb.key(Qt::Key_Escape);  // no tester; Return would add one
    DO(thumb.goes(QStringLiteral("notNow")));
    settle(100);
    QVERIFY(errands.visit()->readings.empty());
    thumb.keys(QStringLiteral("92"));
    thumb.key(Qt::Key_Return);
    QVERIFY(readings(errands, 1));
    QCOMPARE(digits(errands), QStringLiteral("92"));
    QCOMPARE(errands.visit()->readings.front().cylinder, 1);
}

void HandsTest::a_caution_is_seen_to_its_end_before_it_is_understood() {
    Phone phone({320, 568});
    QVERIFY2(phone.on(), qPrintable(phone.why()));
    auto& thumb = phone.thumb();
    Errands errands(phone);
    DO(errands.add_engine(QStringLiteral("Scooter"), 1));
    DO(errands.new_session());
    DO(thumb.touch(QStringLiteral("tile_wet")));
    // Of three cautions the one of this test comes first, with how much oil it takes.
    DO(thumb.reads(QStringLiteral("Only a little oil")));
    DO(thumb.reads(QStringLiteral("Oil: 2 to 5 ml")));
    DO(thumb.reads(QStringLiteral("Read on")));
    DO(thumb.touch(QStringLiteral("understood")));
    settle(100);
    DO(thumb.sees(QStringLiteral("understood")));
    // Put away, nothing is started: back to the session, and it comes again.
    DO(thumb.touch(QStringLiteral("close")));
    DO(thumb.goes(QStringLiteral("understood")));
    QVERIFY2(phone.arrives(QStringLiteral("Session")), qPrintable(phone.why()));
    settle(200);
    DO(thumb.touch(QStringLiteral("tile_wet")));
    DO(thumb.appears(QStringLiteral("understood")));
    DO(errands.free_pad());
    DO(errands.back());
    DO(thumb.touch(QStringLiteral("tile_wet")));
    QVERIFY2(phone.arrives(QStringLiteral("Pad")), qPrintable(phone.why()));
    settle(200);
    QVERIFY(!thumb.sees(QStringLiteral("understood")));
}

void HandsTest::which_gauge_is_asked_once_and_may_wait() {
    Phone phone;
    QVERIFY2(phone.on(), qPrintable(phone.why()));
    auto& thumb = phone.thumb();
    Errands errands(phone);
    DO(errands.add_engine(QStringLiteral("Scooter"), 1));
    DO(errands.new_session());
    DO(errands.open_pad(QStringLiteral("dry")));  // "Not now"
    DO(errands.back());
    DO(errands.open_pad(QStringLiteral("wet")));
    QVERIFY(!errands.visit()->session.compression_gauge);
    // The same kind of gauge: asked for once. A leak-down tester is another.
    DO(errands.back());
    DO(thumb.touch(QStringLiteral("tile_leak-down")));
    for (int touches = 0; touches < 12 && !thumb.sees(QStringLiteral("notNow")); ++touches) {
        if (thumb.sees(QStringLiteral("understood"))) DO(thumb.touch(QStringLiteral("understood")));
        settle(150);
    }
    DO(thumb.reads(QStringLiteral("Which tester?")));
    DO(thumb.touch(QStringLiteral("addTester")));
    DO(thumb.write(QStringLiteral("name"), QStringLiteral("Two gauges")));
    DO(thumb.write(QStringLiteral("scale"), QStringLiteral("10")));
    DO(thumb.touch(QStringLiteral("keep")));
    DO(wait_until([&] { return errands.visit()->session.leak_down_tester.has_value(); }));
    QCOMPARE(phone.desk().testers().size(), std::size_t(1));
    QCOMPARE(phone.page(), QStringLiteral("Pad"));
}

void HandsTest::a_message_lies_over_the_title_and_goes_with_a_swipe() {
    Phone phone({320, 568});
    QVERIFY2(phone.on(), qPrintable(phone.why()));
    auto& thumb = phone.thumb();
    Errands errands(phone);
    DO(errands.add_engine(QStringLiteral("Scooter"), 1));
    DO(thumb.reads(QStringLiteral("Scooter added")));
    const auto* snack = thumb.find(QStringLiteral("snack"));
    QVERIFY(snack && snack->isVisible());
    const auto place = [](const QQuickItem* item) {
        return item->mapRectToScene({0, 0, item->width(), item->height()});
    };
    // Neither the way back nor what is worked on lies under it.
    QVERIFY(!place(snack).intersects(place(thumb.find(QStringLiteral("back")))));
    QVERIFY(!place(snack).intersects(place(thumb.find(QStringLiteral("newSession")))));
    QVERIFY2(place(snack).bottom() <= 64, qPrintable(QString::number(place(snack).bottom())));
    const QPointF from = place(snack).topLeft() + QPointF(20, 20);
    static auto* glass = QTest::createTouchDevice();
    QTest::touchEvent(&phone.window(), glass).press(1, from.toPoint());
    for (int step = 1; step <= 5; ++step)
        QTest::touchEvent(&phone.window(), glass).move(1, (from + QPointF(0, 20 * step)).toPoint());
    QTest::touchEvent(&phone.window(), glass).release(1, (from + QPointF(0, 100)).toPoint());
    QVERIFY(wait_until([&] { return !thumb.sees(QStringLiteral("snack")); }));
    QCOMPARE(phone.desk().engines().size(), std::size_t(1));
}

/// Over a tall card, up and down, where the page can't move that way.
void HandsTest::a_swipe_at_the_end_of_a_page_is_no_touch() {
    Phone phone({320, 568});
    QVERIFY2(phone.on(), qPrintable(phone.why()));
    auto& thumb = phone.thumb();
    Errands errands(phone);
    Stock stock(phone.desk());
    const auto engine = stock.engine("Scooter", 1);
    const QString row = QStringLiteral("engine_") + QString::fromStdString(engine.text());
    DO(thumb.appears(row));
    settle(100);
    static auto* glass = QTest::createTouchDevice();
    const auto swipe = [&](const QQuickItem* over, double by) {
        const QPointF from = over->mapToScene({over->width() / 2, over->height() / 2 - by / 2});
        QTest::touchEvent(&phone.window(), glass).press(1, from.toPoint());
        for (int step = 1; step <= 6; ++step) {
            QTest::touchEvent(&phone.window(), glass).move(1, (from + QPointF(0, by * step / 6)).toPoint());
            settle(10);
        }
        QTest::touchEvent(&phone.window(), glass).release(1, (from + QPointF(0, by)).toPoint());
        settle(400);
    };
    for (const double by : {-40.0, 40.0}) {
        swipe(thumb.find(row), by);
        QCOMPARE(phone.page(), QStringLiteral("Engines"));
    }
    const auto session = stock.session(engine, "As found");
    phone.devices.appearance.choose({false, 2.0, true});
    phone.go(QStringLiteral("Session"), {{"sessionId", QString::fromStdString(session.text())}});
    DO(thumb.appears(QStringLiteral("tile_plan")));
    settle(200);
    auto* tile = thumb.find(QStringLiteral("tile_plan"));
    auto* page = tile->parentItem();
    while (page && !page->inherits("QQuickFlickable"))
        page = page->parentItem();
    QVERIFY(page != nullptr);
    page->setProperty("contentY", page->property("contentHeight").toDouble() - page->height());
    settle(100);
    swipe(tile, -0.6 * tile->height());
    QCOMPARE(phone.page(), QStringLiteral("Session"));
    // A touch is one all the same.
    phone.home();
    DO(thumb.touch(row));
    DO(phone.arrives(QStringLiteral("EngineCard")));
}

void HandsTest::the_check_that_is_asked_for_stands_open() {
    Phone phone;
    QVERIFY2(phone.on(), qPrintable(phone.why()));
    auto& thumb = phone.thumb();
    Errands errands(phone);
    Stock stock(phone.desk());
    const auto tester = stock.tester(TesterKind::leak_down, "Two gauges", "10");
    phone.desk().flush();
    settle(50);
    const QString id = QString::fromStdString(tester.text());
    phone.go(QStringLiteral("TesterCard"), {{"testerId", id}, {"checkKind", "outlet blocked"}});
    DO(wait_until([&] { return thumb.overlay() != nullptr; }));
    DO(thumb.reads(QStringLiteral("utlet blocked"), 5000, thumb.overlay()));
    DO(thumb.touch(QStringLiteral("close")));
    DO(wait_until([&] { return thumb.overlay() == nullptr; }));
    // Without one that is asked for the card alone.
    phone.home();
    phone.go(QStringLiteral("TesterCard"), {{"testerId", id}});
    settle(200);
    QVERIFY(thumb.overlay() == nullptr);
}

void HandsTest::the_folded_line_leads_to_every_field() {
    Phone phone({320, 568});
    QVERIFY2(phone.on(), qPrintable(phone.why()));
    phone.settings().setTextPercent(200);
    auto& thumb = phone.thumb();
    Errands errands(phone);
    phone.go(QStringLiteral("Pad"), {{"sessionId", twin_ready_to_test(phone)}, {"test", "leak-down"}});
    settle(200);
    DO(thumb.touch(QStringLiteral("fieldsFold")));
    DO(thumb.touch(QStringLiteral("tab_set")));
    DO(wait_until([&] { return thumb.overlay() == nullptr; }));  // chosen, and out of the way
    DO(thumb.type(QStringLiteral("6.0")));
    DO(thumb.touch(QStringLiteral("fieldsFold")));
    DO(thumb.touch(QStringLiteral("tab_held")));
    DO(wait_until([&] { return thumb.overlay() == nullptr; }));
    DO(thumb.type(QStringLiteral("5.5")));
    DO(thumb.touch(QStringLiteral("keep")));
    QVERIFY(readings(errands, 1));
    const auto kept = errands.visit()->readings.front();
    QCOMPARE(kept.set->text(), std::string("6.0 bar"));
    QCOMPARE(kept.held->text(), std::string("5.5 bar"));
}

void HandsTest::the_exits_that_are_left_are_quiet_with_one_touch() {
    Phone phone;
    QVERIFY2(phone.on(), qPrintable(phone.why()));
    auto& thumb = phone.thumb();
    Errands errands(phone);
    phone.go(QStringLiteral("LeakHunt"), {{"sessionId", twin_ready_to_test(phone)}, {"cylinder", 1}});
    settle(100);
    // Not before something was listened to.
    QVERIFY(!thumb.sees(QStringLiteral("nothingElse")));
    DO(thumb.touch_in(QStringLiteral("exit_exhaust"), QStringLiteral("choice_strong")));
    DO(thumb.touch(QStringLiteral("nothingElse")));
    DO(thumb.goes(QStringLiteral("nothingElse")));
    const auto exits = errands.visit()->exits;
    QVERIFY(exits.size() > 3);
    for (const auto& exit : exits)
        QCOMPARE(exit.loudness, exit.exit == Exit::exhaust ? Loudness::strong : Loudness::nothing);
}

void HandsTest::keys_stay_where_they_are_when_a_repeat_is_kept() {
    Phone phone({320, 568});
    QVERIFY2(phone.on(), qPrintable(phone.why()));
    auto& thumb = phone.thumb();
    Errands errands(phone);
    phone.go(QStringLiteral("Pad"), {{"sessionId", twin_ready_to_test(phone)}, {"test", "dry"}});
    const auto lies = [&](const char* name) {
        const auto* one = thumb.find(QLatin1String(name));
        return one ? one->mapRectToScene(QRectF({0, 0}, one->size())) : QRectF();
    };
    settle(100);
    const QRectF pad = lies("pad");
    const QRectF keep = lies("keep");
    QVERIFY(!pad.isEmpty() && !keep.isEmpty());
    const QRectF fields = lies("tab_final");
    QVERIFY(!fields.isEmpty());
    DO(errands.keep(QStringLiteral("92")));
    settle(100);
    // Undo has come into the head.
    DO(thumb.sees(QStringLiteral("undo")));
    QCOMPARE(lies("tab_final"), fields);
    // Redo stands in Photo's place while digits stand beside a reading; with both and the long words of Keep
    // the buttons would need two lines.
    DO(thumb.touch(QStringLiteral("cylinder_0")));
    DO(errands.keep(QStringLiteral("93")));
    settle(200);
    QCOMPARE(lies("pad"), pad);
    QCOMPARE(lies("keep"), keep);
}

void HandsTest::the_return_key_keeps_after_a_touch() {
    Phone phone;
    QVERIFY2(phone.on(), qPrintable(phone.why()));
    auto& thumb = phone.thumb();
    Errands errands(phone);
    phone.go(QStringLiteral("Pad"), {{"sessionId", twin_ready_to_test(phone)}, {"test", "dry"}});
    settle(100);
    DO(thumb.touch(QStringLiteral("cylinder_1")));
    DO(thumb.touch(QStringLiteral("tab_first")));
    DO(thumb.touch(QStringLiteral("tab_final")));
    thumb.keys(QStringLiteral("92"));
    thumb.key(Qt::Key_Return);
    QVERIFY(readings(errands, 1));
    settle(100);
    DO(thumb.touch(QStringLiteral("undo")));
    QVERIFY(readings(errands, 0));
    settle(100);
    thumb.keys(QStringLiteral("91"));
    thumb.key(Qt::Key_Return);
    QVERIFY(readings(errands, 1));
}

void HandsTest::a_key_ticks_unless_switched_off() {
    Phone phone;
    QVERIFY2(phone.on(), qPrintable(phone.why()));
    auto& thumb = phone.thumb();
    Errands errands(phone);
    phone.go(QStringLiteral("Pad"), {{"sessionId", twin_ready_to_test(phone)}, {"test", "dry"}});
    DO(thumb.type(QStringLiteral("12")));
    QCOMPARE(phone.devices.haptics.ticks, 2);
    phone.settings().setHaptics(false);
    DO(thumb.type(QStringLiteral("3")));
    QCOMPARE(phone.devices.haptics.ticks, 2);
}

void HandsTest::the_screen_stays_lit_through_a_test() {
    Phone phone;
    QVERIFY2(phone.on(), qPrintable(phone.why()));
    auto& thumb = phone.thumb();
    Errands errands(phone);
    const QString id = twin_ready_to_test(phone);
    const auto& awake = phone.devices.keepAwake;
    phone.go(QStringLiteral("Session"), {{"sessionId", id}});
    QVERIFY(!awake.isOn());
    DO(errands.open_pad(QStringLiteral("leak-down")));
    QVERIFY(awake.isOn());
    DO(errands.field(QStringLiteral("set"), QStringLiteral("600")));
    DO(thumb.touch(QStringLiteral("tab_held")));
    // From cylinder to cylinder and through the exits of each, which opens the pad anew.
    for (const int cylinder : {1, 2}) {
        DO(errands.keep(QStringLiteral("350")));
        DO(phone.arrives(QStringLiteral("LeakHunt")));
        settle(100);
        QVERIFY2(awake.isOn(), qPrintable(QStringLiteral("listening to cylinder %1").arg(cylinder)));
        if (cylinder == 2) break;
        DO(thumb.touch(QStringLiteral("done")));
        DO(phone.arrives(QStringLiteral("Pad")));
        settle(100);
        QVERIFY2(awake.isOn(), "on the pad again");
    }
    DO(errands.back_to(QStringLiteral("Session")));
    settle(100);
    QVERIFY(!awake.isOn());
}

void HandsTest::the_amber_button_comes_under_the_left_thumb() {
    Phone phone;
    QVERIFY2(phone.on(), qPrintable(phone.why()));
    auto& thumb = phone.thumb();
    phone.go(QStringLiteral("Pad"), {{"sessionId", twin_ready_to_test(phone)}, {"test", "dry"}});
    settle(100);
    const auto middle = [&](const char* name) {
        const auto* item = thumb.find(QString::fromLatin1(name));
        return item ? item->mapToScene({item->width() / 2, 0}).x() : -1.0;
    };
    QVERIFY(middle("keep") > middle("more") && middle("more") > 0);
    phone.settings().setLeftHand(true);
    settle(100);
    QVERIFY(middle("keep") < middle("more") && middle("keep") > 0);
    // Lying down the digits change sides, too.
    phone.resize({915, 412});
    settle(100);
    QVERIFY(middle("key_5") < middle("readout"));
    phone.settings().setLeftHand(false);
    settle(100);
    QVERIFY(middle("key_5") > middle("readout"));
}

void HandsTest::nothing_moves_for_who_asked_for_that() {
    Phone phone;
    QVERIFY2(phone.on(), qPrintable(phone.why()));
    const QString id = twin_ready_to_test(phone);
    const auto* stack = phone.thumb().find(QStringLiteral("stack"));
    QVERIFY(stack);
    // 150 ms, as long as a page takes to come: it is caught on its way, or never on its way.
    const auto moved = [&] {
        phone.home();
        settle(400);
        phone.go(QStringLiteral("Session"), {{"sessionId", id}});
        bool seen = false;
        wait_until(
            [&] {
                seen = seen || (phone.page_item() && phone.page_item()->x() > 0.5);
                return seen;
            },
            400);
        return seen;
    };
    phone.devices.appearance.choose({true, 1.0, false});
    QVERIFY(moved());
    phone.devices.appearance.choose({true, 1.0, true});
    QVERIFY(!moved());
}

void HandsTest::a_rag_touches_nothing() {
    Phone phone;
    QVERIFY2(phone.on(), qPrintable(phone.why()));
    auto& thumb = phone.thumb();
    Errands errands(phone);
    phone.go(QStringLiteral("Pad"), {{"sessionId", twin_ready_to_test(phone)}, {"test", "dry"}});
    DO(thumb.type(QStringLiteral("92")));
    const auto* key = thumb.find(QStringLiteral("key_5"));
    const auto* keep = thumb.find(QStringLiteral("keep"));
    QVERIFY(key && keep);
    const QPoint digit = key->mapToScene({key->width() / 2, key->height() / 2}).toPoint();
    const QPoint amber = keep->mapToScene({keep->width() / 2, keep->height() / 2}).toPoint();
    DO(thumb.touch(QStringLiteral("more")));
    DO(thumb.touch(QStringLiteral("wipe")));
    DO(thumb.reads(QStringLiteral("Touches count again in")));
    settle(200);
    QElapsedTimer locked;
    locked.start();
    for (int stroke = 0; stroke < 3; ++stroke) {
        QTest::mouseClick(&phone.window(), Qt::LeftButton, {}, digit);
        QTest::mouseClick(&phone.window(), Qt::LeftButton, {}, amber);
        for (const auto button : {Qt::Key_5, Qt::Key_Return, Qt::Key_VolumeUp, Qt::Key_Escape, Qt::Key_Back})
            thumb.key(button);
        settle(100);
    }
    QVERIFY(thumb.sees(QStringLiteral("wiping")));
    QCOMPARE(phone.page(), QStringLiteral("Pad"));
    QVERIFY(errands.visit()->readings.empty());
    // Ten seconds, and it ends by itself.
    QVERIFY(wait_until([&] { return !thumb.sees(QStringLiteral("wiping")); }, 15'000));
    QVERIFY2(locked.elapsed() > 7'000, qPrintable(QString::number(locked.elapsed())));
    settle(100);
    DO(thumb.touch(QStringLiteral("keep")));
    QVERIFY(readings(errands, 1));
    QCOMPARE(digits(errands), QStringLiteral("92"));
}

/// A message with Undo is gone after seconds: a whole engine that was deleted is not.
void HandsTest::the_last_step_is_taken_back_from_more() {
    Phone phone;
    QVERIFY2(phone.on(), qPrintable(phone.why()));
    auto& thumb = phone.thumb();
    Errands errands(phone);
    const auto session = SessionId::parse(twin_ready_to_test(phone).toStdString());
    const auto engine = errands.engine()->id;
    QVERIFY(phone.run(workflow::remove_engine(engine)));
    QVERIFY(phone.desk().engines().empty());
    settle(100);
    DO(thumb.touch(QStringLiteral("more")));
    DO(thumb.reads(QStringLiteral("Harbour twin deleted, with its sessions")));
    DO(thumb.touch(QStringLiteral("undoLast")));
    QTRY_COMPARE(phone.desk().engines().size(), std::size_t(1));
    QVERIFY(phone.desk().visit(*session));
}

}  // namespace lapwing::test

LAPWING_APP_TEST_MAIN(lapwing::test::HandsTest)
#include "hands_test.moc"

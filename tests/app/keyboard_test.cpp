// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// Who works by keyboard in two panes, looks for an engine among many, or has thick gloves.
#include <QTest>

#include "core/workflow/sessions.h"
#include "tests/app/harness/errands.h"
#include "tests/app/harness/stock.h"

namespace lapwing::test {

#define DO(action) QVERIFY2(action, qPrintable(errands.why() + " / " + thumb.why() + " / " + phone.why()))

class KeyboardTest : public QObject {
    Q_OBJECT

private slots:
    void a_page_that_opens_beside_the_list_has_the_keys();
    void a_search_is_emptied_before_the_page_closes();
    void the_rows_of_more_keep_their_places();
    void big_keys_are_bigger_on_a_small_screen();
    void found_and_left_are_in_reach_with_big_keys_data();
    void found_and_left_are_in_reach_with_big_keys();
    void set_and_held_stand_whole_in_large_text();
    void cautions_of_a_plan_stand_open_once();

private:
    static bool ringed(Phone& phone) {
        const auto* focused = phone.window().activeFocusItem();
        return focused && focused->property("visualFocus").toBool();
    }
};

void KeyboardTest::a_page_that_opens_beside_the_list_has_the_keys() {
    Phone phone({1280, 800});
    QVERIFY2(phone.on(), qPrintable(phone.why()));
    auto& thumb = phone.thumb();
    Errands errands(phone);
    twin_ready_to_test(phone);
    const QString row =
        QStringLiteral("engine_") + QString::fromStdString(phone.desk().engines().front().id.text());
    DO(thumb.appears(row));
    thumb.find(row)->forceActiveFocus(Qt::TabFocusReason);
    thumb.key(Qt::Key_Return);
    QVERIFY2(phone.arrives(QStringLiteral("EngineCard")), qPrintable(phone.why()));
    const auto inside = [&] {
        return ringed(phone) && is_inside(phone.window().activeFocusItem(), phone.page_item());
    };
    QVERIFY(wait_until(inside));
    settle(100);
    QVERIFY(inside());
    thumb.key(Qt::Key_Escape);
    QVERIFY(wait_until([&] {
        const auto* focused = phone.window().activeFocusItem();
        return ringed(phone) && focused->objectName() == row;
    }));
}

void KeyboardTest::a_search_is_emptied_before_the_page_closes() {
    Phone phone({320, 568});
    QVERIFY2(phone.on(), qPrintable(phone.why()));
    auto& thumb = phone.thumb();
    Errands errands(phone);
    Stock stock(phone.desk());
    for (const char* name : {"Mower", "Saw", "Pump", "Tug", "Hoist"})
        stock.engine(name, 1);
    DO(thumb.appears(QStringLiteral("search")));
    QVERIFY(!thumb.sees(QStringLiteral("clearSearch")));
    DO(thumb.touch(QStringLiteral("search")));
    const auto text = [&] { return thumb.find(QStringLiteral("search"))->property("text").toString(); };
    thumb.keys(QStringLiteral("saw"));
    DO(thumb.reads(QStringLiteral("1 of 5")));
    DO(thumb.appears(QStringLiteral("clearSearch")));
    // A glove's target (screens: 48 at least).
    QVERIFY(thumb.find(QStringLiteral("clearSearch"))->width() >= 48);
    QVERIFY(thumb.find(QStringLiteral("clearSearch"))->height() >= 48);
    DO(thumb.touch(QStringLiteral("clearSearch")));
    QCOMPARE(text(), QString());
    QVERIFY(wait_until([&] { return !thumb.words().contains(QStringLiteral("1 of 5")); }));
    // The keys are still the field's.
    thumb.keys(QStringLiteral("tug"));
    QCOMPARE(text(), QStringLiteral("tug"));
    thumb.key(Qt::Key_Escape);
    QCOMPARE(text(), QString());
    QVERIFY(!thumb.sees(QStringLiteral("clearSearch")));
}

void KeyboardTest::the_rows_of_more_keep_their_places() {
    Phone phone({412, 915});
    QVERIFY2(phone.on(), qPrintable(phone.why()));
    auto& thumb = phone.thumb();
    Errands errands(phone);
    const auto place = [&](const char* row) {
        if (!thumb.touch(QStringLiteral("more"))) return -1.0;
        settle(300);
        const auto* item = thumb.find(QLatin1String(row));
        const double y = item ? item->mapToScene({0, 0}).y() : -2.0;
        thumb.key(Qt::Key_Escape);
        settle(300);
        return y;
    };
    const double before = place("addEngine");
    QVERIFY2(before > 0, qPrintable(thumb.why()));
    // With a session of today, and a step that can be taken back.
    DO(errands.add_engine(QStringLiteral("Scooter"), 1));
    DO(errands.new_session());
    phone.home();
    DO(thumb.appears(QStringLiteral("goOn")));
    QCOMPARE(place("addEngine"), before);
}

void KeyboardTest::big_keys_are_bigger_on_a_small_screen() {
    Phone phone({320, 568});
    QVERIFY2(phone.on(), qPrintable(phone.why()));
    auto& thumb = phone.thumb();
    Errands errands(phone);
    phone.go(QStringLiteral("Pad"), {{"sessionId", twin_ready_to_test(phone)}, {"test", "dry"}});
    DO(thumb.appears(QStringLiteral("key_5")));
    settle(100);
    const auto key = [&] { return thumb.find(QStringLiteral("key_5"))->height(); };
    const double before = key();
    phone.settings().setBigKeys(true);
    settle(200);
    QVERIFY2(key() >= before + 10, qPrintable(QStringLiteral("%1 after %2").arg(key()).arg(before)));
    // What stands above loses nothing for it: the line of fields, the figure.
    const auto* line = thumb.find(QStringLiteral("fieldsFold"));
    const auto* figure = thumb.find(QStringLiteral("readout"));
    const auto* pad = thumb.find(QStringLiteral("pad"));
    QVERIFY(line && figure && pad);
    const auto bottom = [](const QQuickItem* item) { return item->mapToScene({0, item->height()}).y(); };
    const QQuickItem* above = line;
    while (above && !above->property("contentY").isValid())
        above = above->parentItem();
    QVERIFY(above);
    QVERIFY(above->property("contentHeight").toDouble() <= above->height() + 0.5);
    QVERIFY(bottom(line) <= figure->mapToScene({0, 0}).y() + 0.5);
    QVERIFY(bottom(figure) <= pad->mapToScene({0, 0}).y() + 0.5);
    DO(thumb.type(QStringLiteral("92")));
    DO(thumb.touch(QStringLiteral("keep")));
    QVERIFY(wait_until([&] { return errands.visit()->readings.size() == 1; }));
}

void KeyboardTest::found_and_left_are_in_reach_with_big_keys_data() {
    QTest::addColumn<QSize>("size");
    for (const QSize size : {QSize(320, 568), QSize(360, 800), QSize(412, 915)})
        QTest::addRow("%dx%d", size.width(), size.height()) << size;
}
void KeyboardTest::found_and_left_are_in_reach_with_big_keys() {
    QFETCH(QSize, size);
    Phone phone(size);
    QVERIFY2(phone.on(), qPrintable(phone.why()));
    phone.settings().setBigKeys(true);
    auto& thumb = phone.thumb();
    Errands errands(phone);
    phone.go(QStringLiteral("Clearances"), {{"sessionId", twin_ready_to_test(phone)}});
    DO(thumb.appears(QStringLiteral("key_5")));
    settle(200);
    DO(thumb.type(QStringLiteral("0.05")));
    DO(thumb.touch(QStringLiteral("fieldsFold")));
    DO(thumb.touch(QStringLiteral("tab_left")));
    DO(wait_until([&] { return thumb.overlay() == nullptr; }));
    DO(thumb.type(QStringLiteral("0.12")));
    DO(thumb.touch(QStringLiteral("keep")));
    QVERIFY(wait_until([&] { return errands.visit()->clearances.size() == 1; }));
    const auto kept = errands.visit()->clearances.front();
    QCOMPARE(kept.found->digits(), std::string("0.05"));
    QCOMPARE(kept.left->digits(), std::string("0.12"));
}

/// The head, which could say engine and tester in three lines there, gives way to them.
void KeyboardTest::set_and_held_stand_whole_in_large_text() {
    Phone phone({412, 915});
    QVERIFY2(phone.on(), qPrintable(phone.why()));
    phone.devices.appearance.choose({false, 2.0, true});
    auto& thumb = phone.thumb();
    Errands errands(phone);
    Stock stock(phone.desk());
    const auto session = stock.session(stock.engine("Harbour twin of the pilot boat", 2), "As found");
    const auto tester = stock.tester(TesterKind::leak_down, "Two-gauge tester, borrowed", "7");
    stock.run(workflow::choose_tester(session, workflow::TesterUse::leak_down, tester));
    nothing_over_pads(phone, session);
    phone.go(QStringLiteral("Pad"),
             {{"sessionId", QString::fromStdString(session.text())}, {"test", "leak-down"}});
    DO(thumb.appears(QStringLiteral("tab_held")));
    settle(200);
    for (const char* name : {"tab_set", "tab_held"}) {
        const QQuickItem* field = thumb.find(QLatin1String(name));
        DO(field != nullptr);
        const QQuickItem* room = field->parentItem();
        while (room && !room->inherits("QQuickFlickable"))
            room = room->parentItem();
        QVERIFY(room != nullptr);
        const QRectF place = room->mapRectFromItem(field, {0, 0, field->width(), field->height()});
        QVERIFY2(place.top() >= 0 && place.bottom() <= room->height(),
                 qPrintable(QStringLiteral("%1 stands from %2 to %3 in %4")
                                .arg(QLatin1String(name))
                                .arg(place.top())
                                .arg(place.bottom())
                                .arg(room->height())));
    }
}

void KeyboardTest::cautions_of_a_plan_stand_open_once() {
    Phone phone({320, 568});
    QVERIFY2(phone.on(), qPrintable(phone.why()));
    auto& thumb = phone.thumb();
    Errands errands(phone);
    Stock stock(phone.desk());
    const auto engine = stock.engine("Pump", 1);
    const auto session = stock.session(engine, "As found");
    stock.plan_line(session, PlanOption::quick_fix, "run it warm");
    const QVariantMap args{{"sessionId", QString::fromStdString(session.text())}};
    phone.go(QStringLiteral("Plan"), args);
    DO(thumb.reads(QStringLiteral("Running an engine indoors")));
    // Nobody stakes a valve here.
    QVERIFY(!thumb.words().join(QLatin1Char('\n')).contains(QStringLiteral("Light, square taps")));
    // No card speaks of an aircraft.
    QVERIFY(!thumb.words().join(QLatin1Char('\n')).contains(QStringLiteral("airworthiness")));
    thumb.reveal(thumb.find(QStringLiteral("answer")));
    settle(3400);  // as long as it takes to have seen them
    phone.home();
    phone.go(QStringLiteral("Plan"), args);
    DO(thumb.appears(QStringLiteral("cautions")));
    settle(200);
    QVERIFY(!thumb.words().join(QLatin1Char('\n')).contains(QStringLiteral("Running an engine indoors")));
    DO(thumb.touch(QStringLiteral("cautions")));
    DO(thumb.reads(QStringLiteral("Running an engine indoors")));
}

}  // namespace lapwing::test

LAPWING_APP_TEST_MAIN(lapwing::test::KeyboardTest)
#include "keyboard_test.moc"

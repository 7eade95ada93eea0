// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// How to by touch alone: from the list of engines, and out of the test that someone is in the middle of.
#include <QAccessible>
#include <QTest>

#include "core/knowhow/knowhow.h"
#include "tests/app/harness/errands.h"

namespace lapwing::test {

#define DO(action) QVERIFY2(action, qPrintable(errands.why() + " / " + thumb.why() + " / " + phone.why()))

class HowToTest : public QObject {
    Q_OBJECT

private slots:
    void from_the_list_through_every_card();
    void out_of_a_pad_and_back_to_the_digits();
    void from_the_places_where_it_helps();
    void a_screen_reader_hears_it_in_order();
    void a_picture_is_drawn_and_described();
};

void HowToTest::from_the_list_through_every_card() {
    Phone phone;
    QVERIFY2(phone.on(), qPrintable(phone.why()));
    auto& thumb = phone.thumb();
    Errands errands(phone);
    DO(errands.add_engine(QStringLiteral("Orchard twin"), 2));
    DO(errands.back_to(QStringLiteral("Engines")));
    DO(thumb.touch(QStringLiteral("more")));
    DO(thumb.touch(QStringLiteral("howTo")));
    DO(phone.arrives(QStringLiteral("HowTo")));
    DO(thumb.touch(QStringLiteral("card_complaint")));
    DO(phone.arrives(QStringLiteral("HowToCard")));
    const auto knowhow = knowhow::built_in_knowhow(phone.app().reference());
    QVERIFY(knowhow.has_value());
    std::size_t cards = 0;
    for (const auto* card = knowhow->card("complaint"); card; card = knowhow->after(card->id)) {
        const QString title = QString::fromStdString(card->title);
        QTRY_COMPARE(phone.page_item()->property("title").toString(), title);
        for (const auto& step : card->how)
            DO(thumb.reads(QString::fromStdString(step), 2000, phone.page_item()));
        QVERIFY2(!card->pictures.empty(), card->id.c_str());
        for (const auto& picture : card->pictures)
            QVERIFY2(thumb.find(QString::fromStdString("picture_" + picture), phone.page_item()),
                     picture.c_str());
        ++cards;
        if (knowhow->after(card->id)) DO(thumb.touch(QStringLiteral("nextCard")));
    }
    QVERIFY(cards >= 20);
    // The last one leads on nowhere, and one step back is the list, not one step for each card.
    QVERIFY(!thumb.sees(QStringLiteral("nextCard")));
    DO(errands.back());
    QCOMPARE(phone.page(), QStringLiteral("HowTo"));
    DO(errands.back());
    QCOMPARE(phone.page(), QStringLiteral("Engines"));
}

void HowToTest::out_of_a_pad_and_back_to_the_digits() {
    Phone phone;
    QVERIFY2(phone.on(), qPrintable(phone.why()));
    auto& thumb = phone.thumb();
    Errands errands(phone);
    const QString id = twin_ready_to_test(phone);
    phone.go(QStringLiteral("Session"), {{"sessionId", id}});
    DO(errands.open_pad(QStringLiteral("dry")));
    DO(thumb.type(QStringLiteral("92")));
    DO(thumb.touch(QStringLiteral("more")));
    DO(thumb.touch(QStringLiteral("howTo")));
    DO(phone.arrives(QStringLiteral("HowToCard")));
    QCOMPARE(phone.page_item()->property("title").toString(), QStringLiteral("Dry test"));
    DO(errands.back());
    QCOMPARE(phone.page(), QStringLiteral("Pad"));
    DO(thumb.touch(QStringLiteral("keep")));
    QVERIFY(wait_until([&] { return errands.visit() && errands.visit()->readings.size() == 1; }));
}

void HowToTest::from_the_places_where_it_helps() {
    Phone phone;
    QVERIFY2(phone.on(), qPrintable(phone.why()));
    auto& thumb = phone.thumb();
    Errands errands(phone);
    const QVariantMap here{{"sessionId", twin_ready_to_test(phone)}};
    struct Place {
        const char *page, *link, *title;
    };
    for (const Place& place :
         {Place{"Session", "howToNext", "Dry test"}, Place{"Prepare", "howTo", "Prepare"},
          Place{"Clearances", "howTo", "Clearances"}, Place{"NextTdc", "howTo", "Finding TDC"},
          Place{"LeakHunt", "howTo", "Leak hunt: listening"},
          Place{"LeakHunt", "howToStake", "Staking a valve"},
          Place{"Findings", "howTo", "Reading the findings"}}) {
        phone.home();
        phone.go(QString::fromLatin1(place.page), here);
        settle(100);
        DO(thumb.touch(QString::fromLatin1(place.link)));
        DO(phone.arrives(QStringLiteral("HowToCard")));
        QCOMPARE(phone.page_item()->property("title").toString(), QString::fromLatin1(place.title));
        DO(errands.back());
        QCOMPARE(phone.page(), QString::fromLatin1(place.page));
    }
    phone.home();
    phone.go(QStringLiteral("Session"), here);
    DO(thumb.touch(QStringLiteral("howTo")));
    DO(phone.arrives(QStringLiteral("HowTo")));
}

namespace {

struct Heard {
    QAccessible::Role role;
    QString name, description;
};

/// What a screen reader comes by, in its order.
void listen(QAccessibleInterface* at, QList<Heard>& heard) {
    if (!at || at->state().invisible) return;
    heard << Heard{at->role(), at->text(QAccessible::Name), at->text(QAccessible::Description)};
    for (int i = 0; i < at->childCount(); ++i)
        listen(at->child(i), heard);
}

qsizetype place_of(const QList<Heard>& heard, const QString& start) {
    for (qsizetype i = 0; i < heard.size(); ++i)
        if (heard[i].name.startsWith(start)) return i;
    return -1;
}

}  // namespace

void HowToTest::a_screen_reader_hears_it_in_order() {
    Phone phone;
    QVERIFY2(phone.on(), qPrintable(phone.why()));
    phone.go(QStringLiteral("HowToCard"), {{"card", "listening"}});
    settle(100);
    QAccessible::setActive(true);
    QList<Heard> heard;
    listen(QAccessible::queryAccessibleInterface(phone.page_item()), heard);
    QVERIFY(heard.size() > 20);
    const auto knowhow = knowhow::built_in_knowhow(phone.app().reference());
    const auto* card = knowhow->card("listening");
    const auto why = place_of(heard, QStringLiteral("Why"));
    const auto how = place_of(heard, QStringLiteral("How"));
    const auto slips = place_of(heard, QStringLiteral("What goes wrong"));
    const auto sources = place_of(heard, QStringLiteral("Where this comes from"));
    QVERIFY(why >= 0 && why < how && how < slips && slips < sources);
    for (const auto at : {why, how, slips, sources})
        QCOMPARE(heard[at].role, QAccessible::Heading);
    // The danger is heard before the steps.
    const auto caution = place_of(heard, QStringLiteral("Caution"));
    QVERIFY(caution > why && caution < how);
    qsizetype last = how;
    for (std::size_t i = 0; i < card->how.size(); ++i) {
        const auto at =
            place_of(heard, QStringLiteral("%1. %2").arg(i + 1).arg(QString::fromStdString(card->how[i])));
        QVERIFY2(at > last && at < slips, card->how[i].c_str());
        last = at;
    }
    QAccessible::setActive(false);
}

void HowToTest::a_picture_is_drawn_and_described() {
    Phone phone;
    QVERIFY2(phone.on(), qPrintable(phone.why()));
    auto& thumb = phone.thumb();
    for (const bool dark : {true, false}) {
        phone.devices.appearance.choose({dark, 1.0, true});
        phone.home();
        phone.go(QStringLiteral("HowToCard"), {{"card", "tdc"}});
        settle(100);
        auto* picture = thumb.find(QStringLiteral("picture_tdc"), phone.page_item());
        QVERIFY(picture);
        Thumb::reveal(picture);
        settle(100);
        const QImage window = phone.window().grabWindow();
        const QRect place =
            picture->mapRectToScene(QRectF(0, 0, picture->width(), picture->height())).toAlignedRect() &
            window.rect();
        QVERIFY(place.height() > 100);
        // Its own ground, ink, the colours of two leak paths and the air: a picture that shows what it says.
        QHash<QRgb, int> colors;
        for (int y = place.top(); y <= place.bottom(); ++y)
            for (int x = place.left(); x <= place.right(); ++x)
                ++colors[window.pixel(x, y)];
        for (const char* property : {"ground", "ink", "intake", "air"}) {
            const auto color = picture->property(property).value<QColor>();
            QVERIFY2(colors.value(color.rgb()) > 20, property);
        }
        auto* spoken = QAccessible::queryAccessibleInterface(picture);
        QVERIFY(spoken);
        QCOMPARE(spoken->role(), QAccessible::Graphic);
        QCOMPARE(spoken->text(QAccessible::Name), QStringLiteral("Compression and overlap"));
        QVERIFY(spoken->text(QAccessible::Description).contains(QStringLiteral("the valves are shut")));
    }
}

}  // namespace lapwing::test

LAPWING_APP_TEST_MAIN(lapwing::test::HowToTest)
#include "how_to_test.moc"

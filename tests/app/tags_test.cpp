// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// Tags are there to find engines by: a touch on one does.
#include <QAccessible>
#include <QTest>

#include "core/workflow/engines.h"
#include "tests/app/harness/phone.h"
#include "tests/app/harness/stock.h"

namespace lapwing::test {

#define DO(action) QVERIFY2(action, qPrintable(thumb.why() + " / " + phone.why()))

class TagsTest : public QObject {
    Q_OBJECT

    /// Every engine of the stock has the tags "spring" and "water-cooled"; `without` loses them.
    static void fill(Phone& phone, const QStringList& with, const QStringList& without) {
        Stock stock(phone.desk());
        for (const QString& name : with)
            stock.engine(name.toStdString(), 1);
        for (const QString& name : without) {
            auto engine = *phone.desk().engine(stock.engine(name.toStdString(), 1));
            engine.tags.clear();
            // Its words are not its tags.
            engine.description = "worked on in spring";
            phone.run(workflow::save_engine(engine));
        }
        settle(200);
    }
    static QStringList names(Phone& phone) {
        QStringList seen;
        for (const QString& word : phone.thumb().words())
            for (const char* name : {"Mower", "Saw", "Pump", "Tug", "Hoist"})
                if (word == QLatin1String(name)) seen << word;
        seen.sort();
        return seen;
    }

private slots:
    void a_touch_on_a_tag_shows_the_engines_with_it_data() {
        QTest::addColumn<QSize>("size");
        QTest::newRow("phone") << QSize(412, 915);
        QTest::newRow("small phone") << QSize(320, 568);
        QTest::newRow("two panes") << QSize(1280, 800);
    }
    void a_touch_on_a_tag_shows_the_engines_with_it() {
        QFETCH(QSize, size);
        Phone phone(size);
        QVERIFY2(phone.on(), qPrintable(phone.why()));
        auto& thumb = phone.thumb();
        fill(phone, {"Mower"}, {"Saw", "Pump"});
        DO(thumb.appears(QStringLiteral("tag_spring")));
        QVERIFY(!thumb.sees(QStringLiteral("search")));
        QVERIFY(thumb.find(QStringLiteral("tag_spring"))->height() >= 48);  // screens: never less
        DO(thumb.touch(QStringLiteral("tag_spring")));
        DO(thumb.reads(QStringLiteral("1 of 3")));
        QCOMPARE(names(phone), QStringList{"Mower"});
        QCOMPARE(phone.page(), QStringLiteral("Engines"));
        QCOMPARE(thumb.find(QStringLiteral("search"))->property("text").toString(),
                 QStringLiteral("#spring"));
        DO(thumb.touch(QStringLiteral("clearSearch")));
        QTRY_COMPARE(names(phone).size(), 3);
    }

    void a_tag_of_the_card_leads_to_the_list() {
        Phone phone({412, 915});
        QVERIFY2(phone.on(), qPrintable(phone.why()));
        auto& thumb = phone.thumb();
        fill(phone, {"Mower", "Tug"}, {"Saw", "Pump", "Hoist"});
        const QString id = QString::fromStdString(phone.desk().engines().back().id.text());
        phone.go(QStringLiteral("EngineCard"), {{"engineId", id}});
        DO(thumb.touch(QStringLiteral("tag_spring")));
        DO(phone.arrives(QStringLiteral("Engines")));
        DO(thumb.reads(QStringLiteral("2 of 5")));
        QCOMPARE(names(phone), (QStringList{"Mower", "Tug"}));
    }

    void beside_the_list_the_card_stays() {
        Phone phone({1280, 800});
        QVERIFY2(phone.on(), qPrintable(phone.why()));
        auto& thumb = phone.thumb();
        fill(phone, {"Mower"}, {"Saw"});
        const QString id = QString::fromStdString(phone.desk().engines().back().id.text());
        phone.go(QStringLiteral("EngineCard"), {{"engineId", id}});
        DO(phone.arrives(QStringLiteral("EngineCard")));
        DO(thumb.touch(QStringLiteral("tag_spring"), phone.page_item()));
        DO(thumb.reads(QStringLiteral("1 of 2")));
        QCOMPARE(phone.page(), QStringLiteral("EngineCard"));
    }

    void the_list_beside_marks_whose_pages_are_open() {
        Phone phone({1280, 800});
        QVERIFY2(phone.on(), qPrintable(phone.why()));
        auto& thumb = phone.thumb();
        fill(phone, {"Mower"}, {"Saw"});
        Stock stock(phone.desk());
        const auto mower = phone.desk().engines().back().id;
        const auto saw = phone.desk().engines().front().id;
        const auto marked = [&](EngineId id) {
            auto* tile = thumb.find(QStringLiteral("engine_") + QString::fromStdString(id.text()));
            auto* spoken = tile ? QAccessible::queryAccessibleInterface(tile) : nullptr;
            return spoken && spoken->state().selected;
        };
        QVERIFY(!marked(mower) && !marked(saw));
        phone.go(QStringLiteral("EngineCard"), {{"engineId", QString::fromStdString(saw.text())}});
        QTRY_VERIFY(marked(saw) && !marked(mower));
        const auto session = stock.session(mower, "As found");
        phone.home();
        QTRY_VERIFY(!marked(saw));
        phone.go(QStringLiteral("Session"), {{"sessionId", QString::fromStdString(session.text())}});
        QTRY_VERIFY(marked(mower) && !marked(saw));
        // What is about no engine leaves the mark where it was come from.
        phone.go(QStringLiteral("HowTo"), {});
        DO(phone.arrives(QStringLiteral("HowTo")));
        QVERIFY(marked(mower));
    }

    void a_tag_is_reached_by_keys_and_spoken() {
        Phone phone({412, 915});
        QVERIFY2(phone.on(), qPrintable(phone.why()));
        auto& thumb = phone.thumb();
        fill(phone, {"Mower"}, {"Saw"});
        DO(thumb.appears(QStringLiteral("tag_spring")));
        auto* chip = thumb.find(QStringLiteral("tag_spring"));
        auto* spoken = QAccessible::queryAccessibleInterface(chip);
        QVERIFY(spoken);
        QCOMPARE(spoken->role(), QAccessible::Button);
        QCOMPARE(spoken->text(QAccessible::Name), QStringLiteral("spring"));
        QVERIFY(!spoken->text(QAccessible::Description).isEmpty());
        chip->forceActiveFocus(Qt::TabFocusReason);
        thumb.key(Qt::Key_Return);
        DO(thumb.reads(QStringLiteral("1 of 2")));
        // The chip may go with its tile: the keys go on at the search.
        QTRY_VERIFY(phone.window().activeFocusItem() &&
                    phone.window().activeFocusItem()->objectName() == QLatin1String("clearSearch"));
        QVERIFY(phone.window().activeFocusItem()->property("visualFocus").toBool());
        thumb.key(Qt::Key_Return);
        QTRY_COMPARE(names(phone).size(), 2);
    }
};

}  // namespace lapwing::test

LAPWING_APP_TEST_MAIN(lapwing::test::TagsTest)
#include "tags_test.moc"

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// Adding a tester, and what becomes of one that is done with.
#include <QTest>

#include "core/workflow/sessions.h"
#include "tests/app/harness/phone.h"
#include "tests/app/harness/stock.h"

namespace lapwing::test {

#define DO(action) QVERIFY2(action, qPrintable(thumb.why() + " / " + phone.why()))

class TestersTest : public QObject {
    Q_OBJECT

private slots:
    void a_tester_without_a_name_is_asked_for_one_where_it_is_typed() {
        Phone phone({320, 568});
        QVERIFY2(phone.on(), qPrintable(phone.why()));
        auto& thumb = phone.thumb();
        DO(thumb.touch(QStringLiteral("testers")));
        DO(thumb.touch(QStringLiteral("addTester")));
        DO(thumb.write(QStringLiteral("scale"), QStringLiteral("16")));
        DO(thumb.touch(QStringLiteral("keep")));
        auto* row = thumb.find(QStringLiteral("name"));
        QVERIFY(row);
        DO(thumb.reads(QStringLiteral("Give it a name"), 5000, row));
        auto* field = thumb.find(QStringLiteral("field"), row);
        QTRY_VERIFY(field && field->hasActiveFocus());
        // In sight, with its sentence.
        QTRY_VERIFY(row->mapToScene({0, 0}).y() >= 0 &&
                    row->mapToScene({0, row->height()}).y() <= phone.window().height());
        thumb.keys(QStringLiteral("Old gauge"));
        QVERIFY(!thumb.words().join(QLatin1Char('\n')).contains(QStringLiteral("Give it a name")));
        DO(thumb.touch(QStringLiteral("keep")));
        DO(phone.arrives(QStringLiteral("TesterCard")));
        QCOMPARE(phone.desk().testers().size(), std::size_t(1));
    }

    void the_empty_list_can_be_read_to_its_end_in_large_text() {
        Phone phone({320, 568});
        QVERIFY2(phone.on(), qPrintable(phone.why()));
        phone.settings().setTextPercent(200);
        phone.settings().setLanguage(QStringLiteral("es"));
        settle(200);
        phone.go(QStringLiteral("Testers"), {}, 200);
        auto* list = phone.thumb().find(QStringLiteral("noTesters"));
        auto* words = phone.thumb().find(QStringLiteral("noTestersWords"));
        QVERIFY(list && words);
        // More words than the screen has room for: the rest is a stroke away.
        QVERIFY(words->height() > list->height());
        list->setProperty("contentY", list->property("contentHeight").toReal() - list->height());
        settle(50);
        QVERIFY(words->mapToItem(list, {0, words->height()}).y() <= list->height());
    }

    void a_tester_in_use_says_why_it_stays_and_can_be_renamed() {
        Phone phone({412, 915});
        QVERIFY2(phone.on(), qPrintable(phone.why()));
        auto& thumb = phone.thumb();
        Stock stock(phone.desk());
        const auto tester = stock.tester(TesterKind::compression_gauge, "Shop gauge", "16");
        const QVariantMap args{{"testerId", QString::fromStdString(tester.text())}};
        phone.go(QStringLiteral("TesterCard"), args);
        DO(thumb.appears(QStringLiteral("deleteTester")));
        QVERIFY(!thumb.sees(QStringLiteral("inUse")));
        phone.home();
        const auto session = stock.session(stock.engine("Mower", 1), "As found");
        stock.run(workflow::choose_tester(session, workflow::TesterUse::compression, tester));
        phone.go(QStringLiteral("TesterCard"), args);
        DO(thumb.appears(QStringLiteral("inUse")));
        QVERIFY(!thumb.sees(QStringLiteral("deleteTester")));
        DO(thumb.touch(QStringLiteral("renameTester")));
        DO(wait_until([&] { return thumb.overlay() != nullptr; }));
        settle(200);
        auto* field = thumb.find(QStringLiteral("field"));
        QVERIFY(field);
        QCOMPARE(field->property("text").toString(), QStringLiteral("Shop gauge"));
    }
};

}  // namespace lapwing::test

LAPWING_APP_TEST_MAIN(lapwing::test::TestersTest)
#include "testers_test.moc"

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// Who goes about by keyboard, or is read to, goes on where the work goes on: nowhere does the focus get lost.
#include <QTest>

#include "core/workflow/readings.h"
#include "tests/app/harness/errands.h"
#include "tests/app/harness/stock.h"

namespace lapwing::test {

#define DO(action) QVERIFY2(action, qPrintable(thumb.why() + " / " + phone.why()))

class FocusTest : public QObject {
    Q_OBJECT

    static QQuickItem* focused(Phone& phone) { return phone.window().activeFocusItem(); }
    /// Name of what is in the ring, with what it stands in: "choice_nothing in exit_intake".
    static QString ring(Phone& phone) {
        auto* item = focused(phone);
        if (!item || !item->property("visualFocus").toBool()) return {};
        QString at = item->objectName();
        for (auto* up = item->parentItem(); up; up = up->parentItem())
            if (!up->objectName().isEmpty()) return at + QStringLiteral(" in ") + up->objectName();
        return at;
    }
    static void tab_to(Phone& phone, const QString& name) {
        auto* item = phone.thumb().find(name);
        QVERIFY2(item, qPrintable(name));
        item->forceActiveFocus(Qt::TabFocusReason);
    }

private slots:
    void keep_listen_leads_to_the_first_exit_data() {
        QTest::addColumn<QSize>("size");
        QTest::addColumn<bool>("button");
        QTest::newRow("digits and return") << QSize(412, 915) << false;
        QTest::newRow("the button by tab") << QSize(412, 915) << true;
        QTest::newRow("two panes") << QSize(1280, 800) << false;
    }
    void keep_listen_leads_to_the_first_exit() {
        QFETCH(QSize, size);
        QFETCH(bool, button);
        Phone phone(size);
        QVERIFY2(phone.on(), qPrintable(phone.why()));
        auto& thumb = phone.thumb();
        const QString session = twin_ready_to_test(phone);
        phone.go(QStringLiteral("Pad"), {{"sessionId", session}, {"test", "leak-down"}});
        DO(thumb.appears(QStringLiteral("keep")));
        DO(thumb.touch(QStringLiteral("tab_set")));
        thumb.keys(QStringLiteral("6.0"));
        DO(thumb.touch(QStringLiteral("tab_held")));
        thumb.keys(QStringLiteral("4.5"));
        if (button) tab_to(phone, QStringLiteral("keep"));
        thumb.key(Qt::Key_Return);
        DO(phone.arrives(QStringLiteral("LeakHunt")));
        QTRY_VERIFY2(ring(phone).startsWith(QStringLiteral("choice_")), qPrintable(ring(phone)));
        QVERIFY2(ring(phone).contains(QStringLiteral(" in exit_")), qPrintable(ring(phone)));
        // What is noted makes the list of exits anew: the ring stays where it stood.
        const QString before = ring(phone);
        thumb.key(Qt::Key_Return);
        const auto checked = [&] { return focused(phone) && focused(phone)->property("checked").toBool(); };
        QVERIFY2(wait_until(checked), qPrintable(ring(phone)));
        QTRY_COMPARE(ring(phone), before);
    }

    void a_touch_puts_no_ring_on_the_exits() {
        Phone phone({412, 915});
        QVERIFY2(phone.on(), qPrintable(phone.why()));
        auto& thumb = phone.thumb();
        const QString session = twin_ready_to_test(phone);
        phone.go(QStringLiteral("Pad"), {{"sessionId", session}, {"test", "leak-down"}});
        DO(thumb.touch(QStringLiteral("tab_set")));
        DO(thumb.type(QStringLiteral("6.0")));
        DO(thumb.touch(QStringLiteral("tab_held")));
        DO(thumb.type(QStringLiteral("4.5")));
        DO(thumb.touch(QStringLiteral("keep")));
        DO(phone.arrives(QStringLiteral("LeakHunt")));
        settle(200);
        QCOMPARE(ring(phone), QString());
    }

    void what_is_taken_into_the_plan_leads_to_the_next_proposal() {
        Phone phone({412, 915});
        QVERIFY2(phone.on(), qPrintable(phone.why()));
        auto& thumb = phone.thumb();
        Stock stock(phone.desk());
        const auto engine = stock.engine("Pump", 2);
        const auto session = stock.session(engine, "As found");
        stock.readings(session, 2);
        nothing_over_pads(phone, session);
        phone.go(QStringLiteral("Plan"), {{"sessionId", QString::fromStdString(session.text())}});
        QVERIFY(wait_until([&] { return thumb.sees(QStringLiteral("proposal_0")); }, 60000));
        const auto proposals = [&] {
            int count = 0;
            while (thumb.sees(QStringLiteral("proposal_%1").arg(count)))
                ++count;
            return count;
        };
        int left = proposals();
        QVERIFY2(left >= 1, "the stock has a bad cylinder: something is proposed");
        tab_to(phone, QStringLiteral("take"));
        for (; left > 0; --left) {
            QTRY_COMPARE(ring(phone), QStringLiteral("take in proposal_0"));
            thumb.key(Qt::Key_Return);
            QTRY_VERIFY(proposals() < left);
            left = proposals() + 1;
        }
        // The last one is gone: what was taken stands in the plan.
        QVERIFY2(wait_until([&] { return ring(phone).contains(QStringLiteral(" in plan_")); }),
                 qPrintable(ring(phone) + QLatin1Char(' ') +
                            QString::fromLatin1(focused(phone)->metaObject()->className())));
    }
};

}  // namespace lapwing::test

LAPWING_APP_TEST_MAIN(lapwing::test::FocusTest)
#include "focus_test.moc"

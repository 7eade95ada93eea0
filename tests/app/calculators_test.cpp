// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// The calculators by touch alone, without a session and out of one; results held against published figures.
#include <QTest>

#include "tests/app/harness/errands.h"
#include "tests/app/harness/stock.h"

namespace lapwing::test {

#define DO(action) QVERIFY2(action, qPrintable(errands.why() + " / " + thumb.why() + " / " + phone.why()))

class CalculatorsTest : public QObject {
    Q_OBJECT

private slots:
    void leakage_without_any_session();
    void altitude_and_torque();
    void bad_input_is_a_sentence();
    void attached_to_a_session();
    void an_engine_s_card_fills_the_sums_from_more();

private:
    /// From the list of engines to one calculator.
    static bool open(Phone& phone, const QString& calculator);
    static QString result(Phone& phone);
};

bool CalculatorsTest::open(Phone& phone, const QString& calculator) {
    auto& thumb = phone.thumb();
    return thumb.touch(QStringLiteral("more")) && thumb.touch(QStringLiteral("calculators")) &&
           phone.arrives(QStringLiteral("Calculators")) &&
           thumb.touch(QStringLiteral("calculator_") + calculator) &&
           phone.arrives(QStringLiteral("Calculator"));
}

QString CalculatorsTest::result(Phone& phone) {
    const auto* value = phone.thumb().find(QStringLiteral("mainValue"), phone.page_item());
    // A figure and its unit are held together by a space that does not break.
    return value ? value->property("text").toString().replace(QChar::Nbsp, QLatin1Char(' '))
                 : QStringLiteral("(no result)");
}

void CalculatorsTest::leakage_without_any_session() {
    Phone phone;
    QVERIFY2(phone.on(), qPrintable(phone.why()));
    auto& thumb = phone.thumb();
    Errands errands(phone);
    DO(errands.add_engine(QStringLiteral("Orchard twin"), 2));
    DO(errands.back_to(QStringLiteral("Engines")));
    DO(open(phone, QStringLiteral("leakage")));
    DO(thumb.reads(QStringLiteral("Still to be typed: held pressure.")));
    // Jeep service manual 1982: 80 to 60 psi is 25 %. What stands there already is 80 psi in bar: 5.5.
    DO(errands.card_line(QStringLiteral("Reading"), QStringLiteral("held"), QStringLiteral("60"),
                         QStringLiteral("psi")));
    QTRY_COMPARE(result(phone), QStringLiteral("25 %"));
    DO(thumb.reads(QStringLiteral("±")));
    DO(thumb.touch(QStringLiteral("mainResult")));
    DO(thumb.reads(QStringLiteral("Where does this come from")));
    DO(thumb.reads(QStringLiteral("held pressure")));

    // What was typed is there again, also after the end of the process.
    phone.off();
    QVERIFY2(phone.on(), qPrintable(phone.why()));
    phone.home();
    phone.go(QStringLiteral("Calculator"), {{"calculator", "leakage"}});
    QTRY_COMPARE(result(phone), QStringLiteral("25 %"));
    QVERIFY(phone.thumb().touch(QStringLiteral("startAgain")));
    QTRY_COMPARE(result(phone), QStringLiteral("(no result)"));
}

void CalculatorsTest::altitude_and_torque() {
    Phone phone;
    QVERIFY2(phone.on(), qPrintable(phone.why()));
    auto& thumb = phone.thumb();
    Errands errands(phone);
    // ISO 2533: 850 hPa at 1457 m.
    phone.go(QStringLiteral("Calculator"), {{"calculator", "altitude"}});
    DO(errands.card_line(QStringLiteral("Shop"), QStringLiteral("altitude"), QStringLiteral("1457"),
                         QStringLiteral("m")));
    QTRY_COMPARE(result(phone), QStringLiteral("850 hPa"));
    // 80 psi, bore 4.0 in, stroke 3.48, rod 5.7, 5 degrees: 22.5 N m (virtual work, computed).
    phone.home();
    phone.go(QStringLiteral("Calculator"), {{"calculator", "torque"}});
    DO(thumb.reads(QStringLiteral("the engine can turn without warning")));
    const auto in = QStringLiteral("in");
    DO(errands.card_line(QStringLiteral("Engine"), QStringLiteral("bore"), QStringLiteral("4.0"), in));
    DO(errands.card_line(QStringLiteral("Engine"), QStringLiteral("stroke"), QStringLiteral("3.48"), in));
    DO(errands.card_line(QStringLiteral("Engine"), QStringLiteral("rod"), QStringLiteral("5.7"), in));
    DO(errands.card_line(QStringLiteral("Air in the cylinder"), QStringLiteral("held"), QStringLiteral("80"),
                         QStringLiteral("psi")));
    DO(errands.card_line(QStringLiteral("Air in the cylinder"), QStringLiteral("off_tdc"),
                         QStringLiteral("5")));
    // "5" is known to half a degree, and so the tenths are not.
    QTRY_COMPARE(result(phone), QStringLiteral("22 N m"));
}

void CalculatorsTest::bad_input_is_a_sentence() {
    Phone phone;
    QVERIFY2(phone.on(), qPrintable(phone.why()));
    auto& thumb = phone.thumb();
    Errands errands(phone);
    phone.go(QStringLiteral("Calculator"), {{"calculator", "leakage"}});
    DO(errands.card_line(QStringLiteral("Reading"), QStringLiteral("held"), QStringLiteral("90"),
                         QStringLiteral("psi")));
    QCOMPARE(result(phone), QStringLiteral("(no result)"));
    const auto* problem = thumb.find(QStringLiteral("problem"), phone.page_item());
    QVERIFY(problem);
    QVERIFY2(problem->property("text").toString().contains(QStringLiteral("set")),
             qPrintable(problem->property("text").toString()));
}

void CalculatorsTest::attached_to_a_session() {
    Phone phone;
    QVERIFY2(phone.on(), qPrintable(phone.why()));
    Stock stock(phone.desk());
    const auto engine = stock.engine("Harbour twin", 2);
    const auto session = stock.session(engine, "As found");
    phone.desk().flush();
    auto& thumb = phone.thumb();
    Errands errands(phone);
    const QString id = QString::fromStdString(session.text());
    phone.go(QStringLiteral("Session"), {{"sessionId", id}});
    DO(thumb.touch(QStringLiteral("calculators")));
    QVERIFY2(phone.arrives(QStringLiteral("Calculators")), qPrintable(phone.why()));
    DO(thumb.touch(QStringLiteral("calculator_leakage")));
    QVERIFY2(phone.arrives(QStringLiteral("Calculator")), qPrintable(phone.why()));
    // Jeep service manual 1982: 80 to 60 psi is 25 %. With set in psi, held is asked for in psi too.
    DO(errands.card_line(QStringLiteral("Reading"), QStringLiteral("set"), QStringLiteral("80"),
                         QStringLiteral("psi")));
    DO(errands.card_line(QStringLiteral("Reading"), QStringLiteral("held"), QStringLiteral("60")));
    QTRY_COMPARE(result(phone), QStringLiteral("25 %"));
    // A gauge that nobody named has no scale to show.
    DO(!thumb.reads(QStringLiteral("0 Pa"), 0));
    DO(thumb.touch(QStringLiteral("attach")));
    QTRY_COMPARE(phone.desk().visit(session)->notes.size(), std::size_t(1));
    const auto note = QString::fromStdString(phone.desk().visit(session)->notes.front().text);
    QVERIFY2(note.contains(QStringLiteral("25 %")), qPrintable(note));
    QVERIFY2(note.contains(QStringLiteral("60 psi")), qPrintable(note));
    // It stands on the session's page.
    phone.home();
    phone.go(QStringLiteral("Session"), {{"sessionId", id}});
    DO(thumb.reads(QStringLiteral("Remarks")));
}

void CalculatorsTest::an_engine_s_card_fills_the_sums_from_more() {
    Phone phone;
    QVERIFY2(phone.on(), qPrintable(phone.why()));
    Stock stock(phone.desk());
    stock.engine("Harbour twin", 2);
    const auto other = stock.engine("Orchard four", 4);
    phone.desk().flush();
    settle(100);
    auto& thumb = phone.thumb();
    Errands errands(phone);
    DO(thumb.touch(QStringLiteral("more")));
    DO(thumb.touch(QStringLiteral("calculators")));
    DO(phone.arrives(QStringLiteral("Calculators")));
    DO(thumb.touch(QStringLiteral("calculator_torque")));
    DO(phone.arrives(QStringLiteral("Calculator")));
    DO(thumb.reads(QStringLiteral("Still to be typed: bore")));
    DO(errands.back());
    DO(thumb.touch(QStringLiteral("fromEngine")));
    DO(thumb.touch(QStringLiteral("option_") + QString::fromStdString(other.text())));
    DO(thumb.reads(QStringLiteral("Orchard four")));
    DO(thumb.touch(QStringLiteral("calculator_torque")));
    DO(phone.arrives(QStringLiteral("Calculator")));
    // As the card has it: 86 mm bore and stroke.
    DO(thumb.reads(QStringLiteral("86 mm")));
    DO(!thumb.reads(QStringLiteral("Still to be typed: bore"), 0));
}

}  // namespace lapwing::test

LAPWING_APP_TEST_MAIN(lapwing::test::CalculatorsTest)
#include "calculators_test.moc"

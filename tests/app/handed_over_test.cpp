// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// The report in a session file, as people without the app see it: taken out by unzip and read by poppler's
// pdftotext. It must hold the readings and the verdicts that the app shows, in the person's language.
#include <QDir>
#include <QProcess>
#include <QTest>

#include "qml/viewmodels/findings_model.h"
#include "tests/app/harness/errands.h"
#include "tests/app/harness/stock.h"

namespace lapwing::test {
namespace {

QByteArray output_of(const QString& program, const QStringList& arguments) {
    QProcess process;
    process.start(program, arguments);
    if (!process.waitForFinished(60'000) || process.exitCode() != 0) return {};
    return process.readAllStandardOutput();
}

}  // namespace

#define DO(action) QVERIFY2(action, qPrintable(thumb.why() + " / " + phone.why()))

class HandedOverTest : public QObject {
    Q_OBJECT

private slots:
    void the_report_in_the_file_says_what_the_app_says_data();
    void the_report_in_the_file_says_what_the_app_says();
};

void HandedOverTest::the_report_in_the_file_says_what_the_app_says_data() {
    QTest::addColumn<QString>("language");
    QTest::addColumn<QStringList>("words");
    QTest::newRow("English") << QStringLiteral("en")
                             << QStringList{QStringLiteral("10.1"), QStringLiteral("6.1"),
                                            QStringLiteral("Cylinder 2")};
    QTest::newRow("German") << QStringLiteral("de")
                            << QStringList{QStringLiteral("10,1"), QStringLiteral("6,1"),
                                           QStringLiteral("Zylinder 2")};
}

void HandedOverTest::the_report_in_the_file_says_what_the_app_says() {
    QFETCH(QString, language);
    QFETCH(QStringList, words);
    Phone phone;
    QVERIFY2(phone.on(), qPrintable(phone.why()));
    phone.settings().setLanguage(language);
    QTRY_COMPARE(phone.page(), QStringLiteral("Engines"));
    auto& thumb = phone.thumb();
    Stock stock(phone.desk());
    const auto engine = stock.engine("Orchard twin", 2);
    const auto session = stock.session(engine, "As found");
    stock.readings(session, 2);

    FindingsModel shown;
    shown.setSessionId(QString::fromStdString(session.text()));
    shown.setApp(&phone.app());
    shown.componentComplete();
    QTRY_VERIFY_WITH_TIMEOUT(shown.oddsState() == QStringLiteral("ready"), 60'000);
    QTRY_COMPARE(shown.cylinders().size(), 2);

    phone.go(QStringLiteral("HandOver"), {{"engineId", QString::fromStdString(engine.text())},
                                          {"sessionId", QString::fromStdString(session.text())}});
    DO(thumb.touch(QStringLiteral("makeSession")));
    DO(thumb.appears(QStringLiteral("made_0"), 60'000));
    const QDir documents(QString::fromStdString(phone.devices.paths.documents().string()));
    const auto files = documents.entryInfoList({QStringLiteral("*.lapwing")}, QDir::Files);
    QCOMPARE(files.size(), 1);
    QTemporaryDir out;
    const QString pdf = out.filePath(QStringLiteral("report.pdf"));
    const auto bytes = output_of(QStringLiteral("unzip"), {QStringLiteral("-p"), files[0].filePath(),
                                                           QStringLiteral("*/data/report.pdf")});
    QVERIFY(bytes.startsWith("%PDF-"));
    QFile file(pdf);
    QVERIFY(file.open(QIODevice::WriteOnly) && file.write(bytes) == bytes.size());
    file.close();
    const QString text =
        QString::fromUtf8(output_of(QStringLiteral("pdftotext"), {pdf, QStringLiteral("-")})).simplified();
    // On the paper a unit keeps to its figure.
    const auto plain = [](QString said) {
        return said.replace(QChar(QChar::Nbsp), QLatin1Char(' '))
            .replace(QChar(0x202f), QLatin1Char(' '))
            .simplified();
    };
    for (const auto& word : words)
        QVERIFY2(text.contains(word), qPrintable(word + QStringLiteral(" is not in: ") + text));
    for (const auto& cylinder : shown.cylinders()) {
        const auto map = cylinder.toMap();
        for (const auto& verdict : {map["headline"].toString(), map["odds"].toMap()["headline"].toString()}) {
            QVERIFY(!verdict.isEmpty());
            QVERIFY2(plain(text).contains(plain(verdict)),
                     qPrintable(verdict + QStringLiteral(" is not in: ") + text));
        }
    }
}

}  // namespace lapwing::test

LAPWING_APP_TEST_MAIN(lapwing::test::HandedOverTest)
#include "handed_over_test.moc"

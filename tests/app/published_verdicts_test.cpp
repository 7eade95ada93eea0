// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// Published verdict sets (tests/fixtures/published_verdicts.json, each with its source) entered by touch, and
// the verdicts read from the screen and from the printed report.
#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QRegularExpression>
#include <QTest>

#include "tests/app/harness/errands.h"

namespace lapwing::test {
namespace {

/// The parts in this order with little between them.
QRegularExpression sentence(const QJsonArray& parts) {
    QStringList pieces;
    for (const auto& part : parts)
        pieces << QRegularExpression::escape(part.toString());
    return QRegularExpression(pieces.join(QStringLiteral(".{0,120}?")),
                              QRegularExpression::DotMatchesEverythingOption);
}

/// Signs that a page may write in one of two ways.
QString plain(QString text) {
    return text.replace(QChar(0x00A0), QLatin1Char(' '))
        .replace(QChar(0x202F), QLatin1Char(' '))
        .simplified();
}

QString mark_of(const QQuickItem* panel) {
    for (const auto* child : painted(panel)) {
        if (child->isVisible() && QByteArray(child->metaObject()->className()).startsWith("StateMark"))
            return child->property("state").toString();
        if (const QString found = mark_of(child); !found.isEmpty()) return found;
    }
    return {};
}

/// The line of findings that says this and can be touched.
QQuickItem* line_with(QQuickItem* panel, const QString& words) {
    for (auto* child : painted(panel)) {
        if (QByteArray(child->metaObject()->className()).startsWith("InfoLine") &&
            child->property("explained").toBool() &&
            plain(child->property("text").toString()).contains(words))
            return child;
        if (auto* found = line_with(child, words)) return found;
    }
    return nullptr;
}

}  // namespace

#define DO(action) QVERIFY2(action, qPrintable(errands.why() + " / " + thumb.why() + " / " + phone.why()))

class PublishedVerdictsTest : public QObject {
    Q_OBJECT

private slots:
    void on_screen_and_on_paper_data();
    void on_screen_and_on_paper();
};

void PublishedVerdictsTest::on_screen_and_on_paper_data() {
    QTest::addColumn<QJsonObject>("set");
    QFile file(QStringLiteral(LAPWING_FIXTURES "/published_verdicts.json"));
    QVERIFY2(file.open(QIODevice::ReadOnly), qPrintable(file.fileName()));
    const auto sets = QJsonDocument::fromJson(file.readAll()).object()["sets"].toArray();
    QVERIFY(sets.size() >= 20);
    for (const auto& set : sets)
        QTest::newRow(qPrintable(set.toObject()["id"].toString())) << set.toObject();
}

void PublishedVerdictsTest::on_screen_and_on_paper() {
    QFETCH(QJsonObject, set);
    const auto dry = set["dry"].toArray(), held = set["held"].toArray(), wet = set["wet"].toArray();
    const int cylinders = int(std::max(dry.size(), held.size()));

    Phone phone;
    QVERIFY2(phone.on(), qPrintable(phone.why()));
    auto& thumb = phone.thumb();
    Errands errands(phone);
    const QString unit = set["unit"].toString(QStringLiteral("psi"));
    DO(errands.show_pressures_in(unit));
    if (set.contains("scale"))
        DO(errands.add_tester(QStringLiteral("compression gauge"), QStringLiteral("Gauge"),
                              set["scale"].toString(), unit));
    DO(errands.add_engine(QStringLiteral("Engine of the manual"), cylinders));
    if (set.contains("difference"))
        DO(errands.card_line(QStringLiteral("Factory limits"), QStringLiteral("difference"),
                             set["difference"].toString(), QStringLiteral("psi")));
    DO(errands.new_session());
    if (set.contains("scale")) DO(errands.use_tester(QStringLiteral("gauge"), QStringLiteral("Gauge")));

    if (!dry.isEmpty()) {
        DO(errands.open_pad(QStringLiteral("dry")));
        const auto first = set["first"].toArray();
        for (qsizetype i = 0; i < dry.size(); ++i) {
            if (first.at(i).isString()) {
                DO(errands.field(QStringLiteral("first"), first.at(i).toString()));
                DO(thumb.touch(QStringLiteral("tab_final")));
            }
            DO(errands.keep(dry[i].toString()));
        }
        DO(errands.back_to(QStringLiteral("Session")));
    }
    if (!held.isEmpty()) {
        DO(errands.open_pad(QStringLiteral("leak-down")));
        DO(errands.field(QStringLiteral("set"), set["set"].toString()));
        DO(thumb.touch(QStringLiteral("tab_held")));
        for (qsizetype i = 0; i < held.size(); ++i) {
            DO(errands.keep(held[i].toString()));
            QVERIFY2(phone.arrives(QStringLiteral("LeakHunt")), qPrintable(phone.why()));
            for (const auto exits = set["exits"].toArray().at(i).toObject(); const auto& exit : exits.keys())
                DO(thumb.touch_in(QStringLiteral("exit_") + exit,
                                  QStringLiteral("choice_") + exits[exit].toString()));
            if (i + 1 == held.size()) break;
            DO(thumb.touch(QStringLiteral("done")));
            QVERIFY2(phone.arrives(QStringLiteral("Pad")), qPrintable(phone.why()));
        }
        DO(errands.back_to(QStringLiteral("Session")));
    }
    if (!wet.isEmpty()) {
        DO(errands.open_pad(QStringLiteral("wet")));
        for (qsizetype i = 0; i < wet.size(); ++i) {
            if (wet[i].isNull()) continue;
            DO(thumb.touch(QStringLiteral("cylinder_%1").arg(i)));
            DO(errands.keep(wet[i].toString()));
        }
        DO(errands.back_to(QStringLiteral("Session")));
    }

    DO(thumb.touch(QStringLiteral("tile_findings")));
    QVERIFY2(phone.arrives(QStringLiteral("Findings")), qPrintable(phone.why()));
    DO(thumb.appears(QStringLiteral("findings_%1").arg(cylinders)));
    const auto on_screen = [&] {
        QStringList all;
        for (const auto& text : thumb.words(phone.page_item()))
            all << plain(text);
        return all;
    };
    for (const auto& line : set["lines"].toArray()) {
        const auto wanted = sentence(line.toArray());
        QVERIFY2(
            wait_until([&] { return !on_screen().filter(wanted).isEmpty(); }, 3000),
            qPrintable(wanted.pattern() + "\nnot on the screen:\n" + on_screen().join(QLatin1Char('\n'))));
    }
    const auto states = set["states"].toArray();
    for (qsizetype i = 0; i < states.size(); ++i)
        if (!states[i].isNull())
            QCOMPARE(mark_of(thumb.find(QStringLiteral("findings_%1").arg(i + 1))), states[i].toString());
    // "25 % +- 3 %" or the like: the number itself, whatever doubt stands behind it.
    const auto leakage = set["leakage"].toArray();
    QList<QRegularExpression> figures;
    for (qsizetype i = 0; i < leakage.size(); ++i) {
        const QRegularExpression figure(
            QStringLiteral("^%1(\\.0+)?( %| ?\\x{00B1}).*leakage: held %2 %3 of %4")
                .arg(leakage[i].toString(), held[i].toString(), unit, set["set"].toString()));
        QStringList words;
        for (const auto& text : thumb.words(thumb.find(QStringLiteral("findings_%1").arg(i + 1))))
            words << plain(text);
        QVERIFY2(!words.filter(figure).isEmpty(),
                 qPrintable(figure.pattern() + "\n" + words.join(QLatin1Char('\n'))));
    }

    // What stands behind a figure: touched, read, and closed again.
    for (const auto& behind : set["behind"].toArray()) {
        const int cylinder = behind.toObject()["cylinder"].toInt();
        DO(thumb.goes(QStringLiteral("working"), 30'000));
        DO(thumb.appears(QStringLiteral("findings_%1").arg(cylinder)));
        auto* panel = thumb.find(QStringLiteral("findings_%1").arg(cylinder));
        auto* line = line_with(panel, behind.toObject()["figure"].toString());
        QVERIFY2(line, qPrintable(thumb.words(panel).join(QLatin1Char('\n'))));
        DO(thumb.touch(line));
        DO(thumb.reads(QStringLiteral("Where does this come from")));
        QStringList all;
        for (const auto& text : thumb.words())
            all << plain(text);
        for (const auto& words : behind.toObject()["lines"].toArray())
            QVERIFY2(!all.filter(sentence(words.toArray())).isEmpty(),
                     qPrintable(sentence(words.toArray()).pattern() + "\nnot behind the figure:\n" +
                                all.join(QLatin1Char('\n'))));
        DO(thumb.touch(QStringLiteral("close")));
        DO(wait_until([&] { return thumb.find(QStringLiteral("close")) == nullptr; }));
    }

    const QString report = errands.make_report();
    DO(!report.isEmpty());
    const QString printed = plain(text_of_pdf(report));
    QVERIFY2(!printed.isEmpty(), "pdftotext (poppler-utils) reads nothing in the report");
    // Rules made for other engines that decide nothing here are spared an owner.
    const auto in_print = set["mentor_only"].toBool() ? QJsonArray() : set["lines"].toArray();
    for (const auto& line : in_print)
        QVERIFY2(sentence(line.toArray()).match(printed).hasMatch(),
                 qPrintable(sentence(line.toArray()).pattern() + "\nnot in print:\n" + printed));
    for (const auto& percent : leakage)
        QVERIFY2(QRegularExpression(QStringLiteral("\\b%1(\\.0+)?( %| ?\\x{00B1})").arg(percent.toString()))
                     .match(printed)
                     .hasMatch(),
                 qPrintable(percent.toString() + " % is not in print:\n" + printed));
}

}  // namespace lapwing::test

LAPWING_APP_TEST_MAIN(lapwing::test::PublishedVerdictsTest)
#include "published_verdicts_test.moc"

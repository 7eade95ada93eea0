// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// The session page: its figures tell where they come from, and what it is called without a title.
#include "core/findings/findings.h"
#include "qml/viewmodels/hand_over_model.h"
#include "qml/viewmodels/leak_hunt_model.h"
#include "qml/viewmodels/session_model.h"
#include "tests/viewmodels/measured_visit.h"

namespace lapwing {
namespace {

QVariantMap tile(const SessionModel& model, const QString& key) {
    for (const auto& one : model.tiles())
        if (one.toMap()[QStringLiteral("key")] == key) return one.toMap();
    return {};
}

/// What the derivation of a line says, in one text.
QString told(const QVariantList& steps) {
    QStringList words;
    for (const auto& step : steps) {
        const auto map = step.toMap();
        words << map["title"].toString() << map["words"].toString() << map["formula"].toString()
              << map["source"].toString();
        for (const auto& input : map["inputs"].toList())
            words << input.toMap()["name"].toString() + QLatin1Char(' ') + input.toMap()["value"].toString();
    }
    return words.join(QLatin1Char('\n'));
}

}  // namespace

class SessionTest : public QObject {
    Q_OBJECT

private slots:
    void every_figure_opens_its_derivation() {
        MeasuredVisit visit;
        visit.burnt_valve();
        SessionModel model;
        model.setSessionId(text_id(visit.session));
        complete(model, visit.shop);
        QTRY_VERIFY(!tile(model, QStringLiteral("dry"))["lines"].toList().isEmpty());
        int explained = 0;
        for (const QString& key :
             {QStringLiteral("dry"), QStringLiteral("leak-down"), QStringLiteral("findings")}) {
            const auto shown = tile(model, key);
            QVERIFY2(!shown["figures"].toString().isEmpty(), qPrintable(key));
            const auto lines = shown["lines"].toList();
            QVERIFY2(!lines.isEmpty(), qPrintable(key));
            for (const auto& line : lines) {
                const auto steps = model.derivation(line.toMap()["from"].toInt());
                QVERIFY2(!steps.isEmpty(),
                         qPrintable(key + QLatin1Char(' ') + line.toMap()["text"].toString()));
                QVERIFY(!told(steps).trimmed().isEmpty());
                ++explained;
            }
        }
        QVERIFY(explained >= 6);
        QVERIFY(model.derivation(-1).isEmpty());
        QVERIFY(model.derivation(1000).isEmpty());
        // The figures are those that were typed.
        QVERIFY(tile(model, QStringLiteral("dry"))["figures"].toString().contains(QStringLiteral("6.1")));
        const auto second = tile(model, QStringLiteral("leak-down"))["lines"].toList()[1].toMap();
        const QString how = told(model.derivation(second["from"].toInt()));
        QVERIFY2(how.contains(QStringLiteral("3.2")) && how.contains(QStringLiteral("5.5")), qPrintable(how));
    }

    void the_leak_hunt_tells_where_its_leakage_comes_from() {
        MeasuredVisit visit;
        visit.burnt_valve();
        LeakHuntModel hunt;
        hunt.setSessionId(text_id(visit.session));
        complete(hunt, visit.shop);
        hunt.setCylinder(2);
        QTRY_VERIFY(hunt.explained());
        const QString how = told(hunt.derivation());
        QVERIFY2(how.contains(QStringLiteral("3.2")) && how.contains(QStringLiteral("5.5")), qPrintable(how));
    }

    void without_a_title_it_is_named_by_what_was_done() {
        MeasuredVisit visit;
        const auto bare = visit.shop.open_session(
            visit.shop.desk->engine(visit.shop.desk->visit(visit.session)->session.engine).value(), "");
        SessionModel model;
        model.setSessionId(text_id(bare));
        complete(model, visit.shop);
        QVERIFY(!model.visitLine().contains(QStringLiteral(" · ")));
        Reading reading;
        reading.session = bare;
        reading.test = TestKind::dry;
        reading.cylinder = 1;
        reading.final = MeasuredVisit::bar("9.8");
        visit.shop.desk->run(workflow::keep_reading(reading));
        reading.test = TestKind::leak_down;
        reading.set = MeasuredVisit::bar("5.5");
        reading.held = MeasuredVisit::bar("5.1");
        reading.final.reset();
        visit.shop.desk->run(workflow::keep_reading(reading));
        visit.shop.settle();
        QVERIFY2(model.visitLine().endsWith(QStringLiteral(" · Dry test, leak-down")),
                 qPrintable(model.visitLine()));
        HandOverModel out;
        out.setSessionId(text_id(bare));
        complete(out, visit.shop);
        QStringList titles;
        for (const auto& one : out.visits())
            titles << one.toMap()["title"].toString();
        QVERIFY2(titles.contains(QStringLiteral("Dry test, leak-down")), qPrintable(titles.join(u';')));
        QVERIFY(titles.contains(QStringLiteral("As found")));
    }
};

}  // namespace lapwing

QTEST_MAIN(lapwing::SessionTest)
#include "session_test.moc"

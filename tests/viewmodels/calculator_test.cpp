// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// A calculator without a session that an engine's card fills.
#include "qml/viewmodels/calculator_model.h"
#include "tests/viewmodels/measured_visit.h"

namespace lapwing {

class CalculatorTest : public QObject {
    Q_OBJECT

private slots:
    void the_card_of_an_engine_fills_the_sheet() {
        MeasuredVisit visit;  // bore 78.0 mm, stroke 70.0 mm
        CalculatorModel model;
        model.setRecordId(QStringLiteral("torque"));
        complete(model, visit.shop);
        const auto shown = [&](const QString& key) {
            return model.field(key)[QStringLiteral("shown")].toString();
        };
        QCOMPARE(shown(QStringLiteral("bore")), QString());
        QVERIFY(model.problem().contains(QStringLiteral("bore")));
        const auto engine = visit.shop.desk->visit(visit.session)->session.engine;
        model.setEngineId(text_id(engine));
        QVERIFY(model.found());
        QVERIFY2(shown(QStringLiteral("bore")).contains(QStringLiteral("78.0")),
                 qPrintable(shown(QStringLiteral("bore"))));
        QVERIFY(!model.problem().contains(QStringLiteral("bore")));
        QVERIFY(!model.attachable());  // there is no session to attach it to
        model.setEngineId({});
        QCOMPARE(shown(QStringLiteral("bore")), QString());
    }

    void an_engine_that_is_gone_fills_nothing() {
        MeasuredVisit visit;
        CalculatorModel model;
        model.setRecordId(QStringLiteral("torque"));
        model.setEngineId(text_id(visit.shop.desk->make_id<EngineId>()));
        complete(model, visit.shop);
        QVERIFY(!model.found());
    }
};

}  // namespace lapwing

QTEST_GUILESS_MAIN(lapwing::CalculatorTest)
#include "calculator_test.moc"

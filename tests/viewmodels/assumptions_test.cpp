// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/odds/assumptions.h"

#include "qml/viewmodels/assumptions_model.h"
#include "tests/viewmodels/shop.h"

namespace lapwing {

class AssumptionsTest : public QObject {
    Q_OBJECT

private slots:
    void every_number_stands_in_a_group_with_its_comment() {
        Shop shop;
        AssumptionsModel model;
        model.setApp(shop.app.get());
        const auto odds = odds::built_in_assumptions().value();
        QCOMPARE(model.version(), odds.version);
        QStringList texts;
        for (const QVariant& one : model.groups()) {
            const QVariantMap group = one.toMap();
            // A number that no group knows would end up here, where nobody looks for it.
            QVERIFY2(group["heading"].toString() != QLatin1String("Others"),
                     qPrintable(group["items"].toList().value(0).toMap()["text"].toString()));
            for (const QVariant& line : group["items"].toList()) {
                texts << line.toMap()["text"].toString();
                QVERIFY(!line.toMap()["figure"].toString().isEmpty());
            }
        }
        qsizetype wanted = static_cast<qsizetype>(odds.numbers.size() + odds.others.size() +
                                                  shop.reference.assumptions.size());
        QCOMPARE(texts.size(), wanted);
        for (const auto& number : odds.numbers)
            QVERIFY2(texts.contains(QString::fromStdString(number.text)), number.id.c_str());
        const QVariantMap rings = model.groups().first().toMap();
        QCOMPARE(rings["heading"].toString(), QStringLiteral("Rings"));
        QVERIFY(rings["items"].toList().first().toMap()["source"].toString().contains(
            QString::fromStdString(odds.numbers.front().basis.comment)));
    }
};

}  // namespace lapwing

QTEST_GUILESS_MAIN(lapwing::AssumptionsTest)
#include "assumptions_test.moc"

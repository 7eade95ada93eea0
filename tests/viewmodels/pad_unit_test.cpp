// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// Digits that somebody typed in psi by habit, on a pad in bar: 150 psi are 10.34 bar (1 bar is 14.504 psi).
#include "tests/viewmodels/pad_bench.h"

namespace lapwing {

class PadUnitTest : public QObject {
    Q_OBJECT

    static QStringList texts(const QVariantList& choices) {
        QStringList all;
        for (const auto& one : choices)
            all << one.toMap()["text"].toString();
        return all;
    }

private slots:
    void psi_by_habit_is_asked_about_before_it_is_kept() {
        PadBench bench;
        auto pad = bench.open<PadModel>(QStringLiteral("dry"));
        QSignalSpy asked(pad.get(), &PadModel::unitAsked);
        PadBench::type(*pad, QStringLiteral("150"));
        QCOMPARE(pad->typed(), QStringLiteral("15.0"));
        // It is the first thing said under the figure, and a touch on it asks.
        const auto first = pad->lines().first().toMap();
        QCOMPARE(first["text"].toString(), QStringLiteral("15.0 bar, or 150 psi (10.3 bar)?"));
        QCOMPARE(first["asks"].toString(), QStringLiteral("unit"));
        QVERIFY(pad->otherUnit().contains(QStringLiteral("You typed 150.")));
        QCOMPARE(pad->keepText(), QStringLiteral("Keep …"));
        pad->keep();
        bench.shop.settle();
        QCOMPARE(asked.size(), 1);
        QVERIFY(bench.visit().readings.empty());
        QCOMPARE(texts(pad->unitChoices()),
                 (QStringList{QStringLiteral("It is 150 psi (10.3 bar)"), QStringLiteral("It is 15.0 bar")}));
        // One touch: the other unit, and kept.
        pad->settleUnit(QStringLiteral("other"));
        bench.shop.settle();
        QCOMPARE(bench.visit().readings.size(), std::size_t(1));
        QCOMPARE(bench.visit().readings[0].final->text(), std::string("150 psi"));
        // Who types psi goes on in psi, and is not asked again.
        QCOMPARE(pad->unit(), QStringLiteral("psi"));
        PadBench::type(*pad, QStringLiteral("145"));
        pad->keep();
        bench.shop.settle();
        QCOMPARE(asked.size(), 1);
        QCOMPARE(bench.visit().readings[1].final->text(), std::string("145 psi"));
    }

    void what_is_said_to_be_bar_is_kept_in_bar() {
        PadBench bench;
        auto pad = bench.open<PadModel>(QStringLiteral("dry"));
        QSignalSpy asked(pad.get(), &PadModel::unitAsked);
        PadBench::type(*pad, QStringLiteral("150"));
        pad->settleUnit(QStringLiteral("as shown"));
        bench.shop.settle();
        QCOMPARE(asked.size(), 0);
        QCOMPARE(bench.visit().readings[0].final->text(), std::string("15.0 bar"));
        QCOMPARE(pad->unit(), QStringLiteral("bar"));
    }

    void other_digits_are_another_question() {
        PadBench bench;
        auto pad = bench.open<PadModel>(QStringLiteral("dry"));
        PadBench::type(*pad, QStringLiteral("150"));
        QVERIFY(!pad->otherUnit().isEmpty());
        pad->backspace();
        // On the way to 155.
        QCOMPARE(pad->typed(), QStringLiteral("15"));
        PadBench::type(*pad, QStringLiteral("5"));
        QVERIFY(!pad->otherUnit().isEmpty());
        pad->clear();
        PadBench::type(*pad, QStringLiteral("92"));
        QCOMPARE(pad->otherUnit(), QString());
        pad->keep();
        bench.shop.settle();
        QCOMPARE(bench.visit().readings[0].final->text(), std::string("9.2 bar"));
    }

    void a_set_pressure_in_psi_is_asked_about_too() {
        PadBench bench;
        auto pad = bench.open<PadModel>(QStringLiteral("leak-down"));
        QSignalSpy asked(pad.get(), &PadModel::unitAsked);
        pad->focusField(QStringLiteral("set"));
        PadBench::type(*pad, QStringLiteral("100"));
        QCOMPARE(pad->typed(), QStringLiteral("10.0"));
        pad->focusField(QStringLiteral("held"));
        PadBench::type(*pad, QStringLiteral("92"));
        pad->keep();
        bench.shop.settle();
        QCOMPARE(asked.size(), 1);
        pad->settleUnit(QStringLiteral("other"));
        bench.shop.settle();
        QCOMPARE(bench.visit().readings.size(), std::size_t(1));
        QCOMPARE(bench.visit().readings[0].set->text(), std::string("100 psi"));
        QCOMPARE(bench.visit().readings[0].held->text(), std::string("92 psi"));
    }
};

}  // namespace lapwing

QTEST_GUILESS_MAIN(lapwing::PadUnitTest)
#include "pad_unit_test.moc"

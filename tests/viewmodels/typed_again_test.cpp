// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// What is typed a second time: after Undo, on coming back, beside a reading that stands.
#include "core/workflow/readings.h"
#include "qml/viewmodels/bores.h"
#include "qml/viewmodels/clearances_model.h"
#include "tests/viewmodels/pad_bench.h"

namespace lapwing {

class TypedAgainTest : public QObject {
    Q_OBJECT

private slots:
    void undo_goes_back_to_where_it_was_typed() {
        PadBench bench;
        auto pad = bench.open<PadModel>(QStringLiteral("dry"));
        PadBench::type(*pad, QStringLiteral("97"));
        pad->keep();
        bench.shop.settle();
        QCOMPARE(pad->cylinder(), 2);
        bench.shop.undo();
        QVERIFY(bench.visit().readings.empty());
        QCOMPARE(pad->cylinder(), 1);
        QCOMPARE(pad->typed(), QStringLiteral("9.7"));
        // Corrected at its end, or typed anew; either way it lands where it belongs.
        pad->backspace();
        PadBench::type(*pad, QStringLiteral("8"));
        QCOMPARE(pad->typed(), QStringLiteral("9.8"));
        pad->keep();
        bench.shop.settle();
        QCOMPARE(bench.visit().readings.size(), std::size_t{1});
        QCOMPARE(bench.visit().readings.front().cylinder, 1);
        bench.shop.undo();
        PadBench::type(*pad, QStringLiteral("101"));
        QCOMPARE(pad->typed(), QStringLiteral("10.1"));
        // What was typed on the next cylinder meanwhile stays there.
        pad->keep();
        bench.shop.settle();
        PadBench::type(*pad, QStringLiteral("5"));
        bench.shop.undo();
        QCOMPARE(pad->cylinder(), 1);
        pad->chooseCylinder(2);
        QCOMPARE(pad->typed(), QStringLiteral("5"));
    }

    void a_reading_deleted_on_purpose_does_not_come_back() {
        PadBench bench;
        auto pad = bench.open<PadModel>(QStringLiteral("dry"));
        PadBench::type(*pad, QStringLiteral("97"));
        pad->keep();
        bench.shop.settle();
        pad->remove(text_id(bench.visit().readings.front().id));
        bench.shop.settle();
        QCOMPARE(pad->cylinder(), 2);
        pad->chooseCylinder(1);
        QVERIFY(pad->empty());
        QCOMPARE(pad->lastKept(), QString());
    }

    void digits_that_one_comes_back_to_are_replaced_or_edited() {
        PadBench bench;
        auto pad = bench.open<PadModel>(QStringLiteral("leak-down"));
        pad->focusField(QStringLiteral("held"));
        PadBench::type(*pad, QStringLiteral("2.7"));
        pad->focusField(QStringLiteral("set"));
        PadBench::type(*pad, QStringLiteral("6"));
        pad->focusField(QStringLiteral("held"));
        PadBench::type(*pad, QStringLiteral("28"));
        QCOMPARE(pad->typed(), QStringLiteral("2.8"));
        pad->focusField(QStringLiteral("set"));
        pad->focusField(QStringLiteral("held"));
        pad->backspace();
        QCOMPARE(pad->typed(), QStringLiteral("2"));
        PadBench::type(*pad, QStringLiteral(".7"));
        QCOMPARE(pad->typed(), QStringLiteral("2.7"));
        // A touch on the field that has the keys already changes nothing.
        pad->focusField(QStringLiteral("held"));
        PadBench::type(*pad, QStringLiteral("5"));
        QCOMPARE(pad->typed(), QStringLiteral("2.75"));
    }

    void oil_typed_after_the_reading_is_kept_with_it() {
        PadBench bench;
        auto pad = bench.open<PadModel>(QStringLiteral("wet"));
        PadBench::type(*pad, QStringLiteral("56"));
        // Asked for once, in the field itself.
        pad->keep();
        bench.shop.settle();
        QVERIFY(bench.visit().readings.empty());
        QCOMPARE(pad->field(), QStringLiteral("oil"));
        QVERIFY(words(*pad).contains(QStringLiteral("How much oil?")));
        QVERIFY(bench.shop.told.isEmpty());
        QCOMPARE(pad->keepText(), QStringLiteral("Keep, oil not noted"));
        pad->keep();
        bench.shop.settle();
        QCOMPARE(bench.visit().readings.size(), std::size_t{1});
        QVERIFY(!bench.visit().readings.front().oil_volume);
        pad->chooseCylinder(1);
        pad->focusField(QStringLiteral("oil"));
        PadBench::type(*pad, QStringLiteral("5"));
        QCOMPARE(pad->keepText(), QStringLiteral("Keep oil"));
        pad->keep();
        bench.shop.settle();
        QCOMPARE(bench.visit().readings.size(), std::size_t{1});
        QCOMPARE(bench.visit().readings.front().oil_volume->digits(), std::string("5"));
        QCOMPARE(pad->lastKept(), QStringLiteral("Cylinder 1: oil 5 ml kept"));
        // Undo of the oil leaves the reading, and the digits.
        bench.shop.undo();
        QVERIFY(!bench.visit().readings.front().oil_volume);
        QCOMPARE(pad->cylinder(), 1);
        QCOMPARE(pad->keepText(), QStringLiteral("Keep oil"));
    }

    void a_leak_down_repeat_that_jumps_is_asked_about() {
        PadBench bench;
        auto pad = bench.open<PadModel>(QStringLiteral("leak-down"));
        QSignalSpy asked(pad.get(), &PadModel::repeatAsked);
        const auto type = [&](const char* held) {
            pad->chooseCylinder(1);
            PadBench::hold(*pad, QStringLiteral("6.0"), QString::fromUtf8(held));
        };
        type("2.8");
        pad->keep();
        bench.shop.settle();
        // What is worked out off this thread has to be there before it can be compared with.
        type("2.9");
        QTRY_VERIFY(!pad->history().isEmpty());
        QTest::qWait(50);
        QCOMPARE(pad->oddRepeat(), QString());
        pad->clear();
        PadBench::type(*pad, QStringLiteral("4.4"));
        QTRY_VERIFY(!pad->oddRepeat().isEmpty());
        QVERIFY(!pad->oilBetween());
        pad->keep();
        QCOMPARE(asked.size(), 1);
        bench.shop.settle();
        QCOMPARE(bench.visit().readings.size(), std::size_t{1});
        // "Oil was used since": beside the first, and not in a mean with it.
        pad->keepOiled();
        bench.shop.settle();
        QCOMPARE(bench.visit().readings.size(), std::size_t{2});
        QCOMPARE(bench.visit().readings.back().oiled, Oiled::before);
        const auto about = [&] {
            pad->chooseCylinder(1);
            return pad->history().back().toMap()[QStringLiteral("about")].toString();
        };
        QTRY_VERIFY(about().contains(QStringLiteral("not counted")));
    }

    void a_repeat_after_a_wet_test_says_that_oil_lies_between() {
        PadBench bench;
        Reading air;
        air.session = bench.session;
        air.test = TestKind::leak_down;
        air.set = TypedPressure::make("6.0", units::bar).value();
        air.held = TypedPressure::make("2.8", units::bar).value();
        bench.shop.desk->run(workflow::keep_reading(air));
        Reading wet;
        wet.session = bench.session;
        wet.test = TestKind::wet;
        wet.final = TypedPressure::make("9.0", units::bar).value();
        bench.shop.desk->run(workflow::keep_reading(wet));
        bench.shop.settle();
        auto pad = bench.open<PadModel>(QStringLiteral("leak-down"));
        pad->chooseCylinder(1);
        PadBench::type(*pad, QStringLiteral("4.4"));
        QVERIFY(pad->oilBetween());
        QVERIFY(words(*pad).contains(QStringLiteral("After oil")));
        QTRY_VERIFY(!pad->oddRepeat().isEmpty());
        pad->keepOiled();
        bench.shop.settle();
        QCOMPARE(bench.visit().readings.back().oiled, Oiled::before);
    }

    void a_clearance_in_mm_gets_its_point() {
        PadBench bench(1);
        auto pad = bench.open<ClearancesModel>();
        const auto typed = [&](const char* keys) {
            pad->clear();
            PadBench::type(*pad, QString::fromUtf8(keys));
            return pad->typed();
        };
        // What is typed in a shop, and what a wide one would be; whole millimetres stay a question.
        QCOMPARE(typed("15"), QStringLiteral("0.15"));
        QCOMPARE(typed("20"), QStringLiteral("0.20"));
        QCOMPARE(typed("105"), QStringLiteral("1.05"));
        QCOMPARE(typed("005"), QStringLiteral("0.05"));
        QCOMPARE(typed("0.1"), QStringLiteral("0.1"));
        QCOMPARE(typed("1.5"), QStringLiteral("1.5"));
        QCOMPARE(typed("8"), QStringLiteral("8"));
        pad->clear();
        PadBench::type(*pad, QStringLiteral("15"));
        pad->keep();
        bench.shop.settle();
        QCOMPARE(bench.visit().clearances.front().found->text(), std::string("0.15 mm"));
        QCOMPARE(pad->lastKept(), QStringLiteral("0.15 mm kept: cylinder 1, intake valve 1"));
        // It stands in its field, and its cylinder does not look as if nothing was measured.
        pad->chooseValve(0);
        QCOMPARE(pad->fields().front().toMap()[QStringLiteral("value")].toString(), QStringLiteral("0.15"));
        QCOMPARE(pad->cylinders().front().toMap()[QStringLiteral("state")].toString(), measured_only);
        // Thou are whole.
        pad->chooseSide(QStringLiteral("exhaust"));
        QCOMPARE(pad->valveIndex(), 1);
        pad->switchUnit();
        QCOMPARE(typed("8"), QStringLiteral("8"));
        QCOMPARE(typed("15"), QStringLiteral("15"));
    }
};

}  // namespace lapwing

QTEST_GUILESS_MAIN(lapwing::TypedAgainTest)
#include "typed_again_test.moc"

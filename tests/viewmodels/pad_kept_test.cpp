// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// What a pad says of what was kept, of what is missing, and in which unit.
#include <cmath>

#include "core/workflow/remarks.h"
#include "qml/viewmodels/bores.h"
#include "qml/viewmodels/clearances_model.h"
#include "qml/viewmodels/visit_form.h"
#include "tests/viewmodels/pad_bench.h"

namespace lapwing {

class PadKeptTest : public QObject {
    Q_OBJECT

private slots:
    void a_kept_value_is_seen_at_its_cylinder() {
        PadBench bench;
        auto pad = bench.open<PadModel>(QStringLiteral("dry"));
        PadBench::type(*pad, QStringLiteral("9.2"));
        pad->keep();
        bench.shop.settle();
        QVERIFY(!words(*pad).contains(QStringLiteral("Kept")));  // cylinder 2
        pad->chooseCylinder(1);
        QVERIFY2(words(*pad).startsWith(QStringLiteral("Kept: 9.2 bar")), qPrintable(words(*pad)));
        PadBench::type(*pad, QStringLiteral("9"));
        QVERIFY(!words(*pad).contains(QStringLiteral("Kept")));

        auto air = bench.open<PadModel>(QStringLiteral("leak-down"));
        PadBench::hold(*air, QStringLiteral("5.5"), QStringLiteral("5.1"));
        air->keep();
        bench.shop.settle();
        QVERIFY2(words(*air).startsWith(QStringLiteral("Kept: 5.1 bar of 5.5 bar")), qPrintable(words(*air)));
    }

    void a_limit_stands_in_the_unit_that_is_typed() {
        PadBench bench;
        bench.engine.limits.lowest = TypedPressure::make("9.0", units::bar).value();
        bench.shop.desk->run(workflow::save_engine(bench.engine));
        bench.shop.settle();
        auto pad = bench.open<PadModel>(QStringLiteral("dry"));
        pad->setPressureUnit(QStringLiteral("psi"));
        PadBench::type(*pad, QStringLiteral("145"));
        QVERIFY2(!words(*pad).contains(QStringLiteral(" bar")), qPrintable(words(*pad)));
        // 9.0 bar is 130.5 psi.
        QVERIFY2(words(*pad).contains(QStringLiteral("Factory limit: 131 psi")) ||
                     words(*pad).contains(QStringLiteral("Factory limit: 130")),
                 qPrintable(words(*pad)));
    }

    void a_dial_in_percent_is_typed_as_it_stands() {
        PadBench bench;
        auto air = bench.open<PadModel>(QStringLiteral("leak-down"));
        QVERIFY(air->pressureUnits().contains(QStringLiteral("%")));
        air->setPressureUnit(QStringLiteral("psi"));
        air->setPressureUnit(QStringLiteral("%"));
        QCOMPARE(air->pressureUnitSymbol(), QStringLiteral("%"));
        PadBench::type(*air, QStringLiteral("25"));
        QCOMPARE(air->unit(), QStringLiteral("%"));
        QCOMPARE(air->typed(), QStringLiteral("25"));
        air->keep();  // what it is a share of is asked for first
        QCOMPARE(air->field(), QStringLiteral("set"));
        QCOMPARE(air->unit(), QStringLiteral("psi"));
        PadBench::type(*air, QStringLiteral("80"));
        // 80 psi set and 60 held is 25 %: Jeep service manual 1982.
        QVERIFY2(words(*air).contains(QStringLiteral("25 %")), qPrintable(words(*air)));
        air->keep();
        bench.shop.settle();
        const auto visit = bench.visit();
        QCOMPARE(visit.readings.size(), std::size_t{1});
        const Reading& kept = visit.readings.front();
        QCOMPARE(kept.dial_loss->digits(), std::string("25"));
        QCOMPARE(kept.held->number(), 60.0);
        QVERIFY2(words(*air).startsWith(QStringLiteral("Kept: 25 % at 80 psi")), qPrintable(words(*air)));
        QCOMPARE(air->history().front().toMap()[QStringLiteral("text")].toString(),
                 QStringLiteral("25 % lost of 80 psi"));

        // A session of another day begins with the same dial, though nobody chose it there.
        const auto first = bench.session;
        bench.session = bench.shop.open_session(bench.engine, "Later");
        QCOMPARE(bench.open<PadModel>(QStringLiteral("leak-down"))->pressureUnitSymbol(),
                 QStringLiteral("bar"));
        bench.session = first;
        // And the next cylinder.
        auto next = bench.open<PadModel>(QStringLiteral("leak-down"));
        next->chooseCylinder(2);
        QCOMPARE(next->pressureUnitSymbol(), QStringLiteral("%"));
        PadBench::type(*next, QStringLiteral("12"));
        next->keep();
        bench.shop.settle();
        QCOMPARE(bench.visit().readings.back().held->number(), 70.4);
        // No compression gauge is marked like that.
        auto dry = bench.open<PadModel>(QStringLiteral("dry"));
        QVERIFY(!dry->pressureUnits().contains(QStringLiteral("%")));
    }

    void digits_come_back_in_the_unit_that_they_were_typed_in() {
        PadBench bench;
        {
            auto pad = bench.open<PadModel>(QStringLiteral("dry"));
            pad->setPressureUnit(QStringLiteral("psi"));
            PadBench::type(*pad, QStringLiteral("120"));
        }
        auto pad = bench.open<PadModel>(QStringLiteral("dry"));
        QCOMPARE(pad->typed(), QStringLiteral("120"));
        QCOMPARE(pad->unit(), QStringLiteral("psi"));
        pad->keep();
        bench.shop.settle();
        QCOMPARE(bench.visit().readings.front().final->text(), std::string("120 psi"));
        // And a gauge that nobody described keeps its unit when the draft is gone.
        bench.shop.desk->keep_draft(("pad/" + text_id(bench.session) + "/dry").toStdString(), "");
        bench.shop.settle();
        auto later = bench.open<PadModel>(QStringLiteral("dry"));
        QCOMPARE(later->unit(), QStringLiteral("psi"));
    }

    void oil_of_another_session_is_asked_about_once_data() {
        QTest::addColumn<QString>("way");
        QTest::addColumn<bool>("worked");
        for (const bool worked : {false, true}) {
            const char* after = worked ? ", after ticked work" : "";
            QTest::addRow("it ran since%s", after) << "ran" << worked;
            QTest::addRow("it was wiped%s", after) << "wiped" << worked;
            QTest::addRow("neither%s", after) << "stays" << worked;
        }
    }
    void oil_of_another_session_is_asked_about_once() {
        QFETCH(QString, way);
        QFETCH(bool, worked);
        PadBench bench;
        auto wet = bench.open<PadModel>(QStringLiteral("wet"));
        for (int cylinder = 1; cylinder <= 2; ++cylinder) {
            wet->focusField(QStringLiteral("oil"));
            PadBench::type(*wet, QStringLiteral("10"));
            wet->focusField(QStringLiteral("final"));
            PadBench::type(*wet, QStringLiteral("9.9"));
            wet->keep();
            bench.shop.settle();
        }
        QCOMPARE(bench.visit().readings.size(), std::size_t{2});
        bench.shop.clock.move_by(std::chrono::minutes(30));
        if (worked) {
            PlanLine line;
            line.id = bench.shop.desk->make_id<PlanLineId>();
            line.session = bench.session;
            line.option = PlanOption::strip;
            line.work = "Rings";
            line.done_at = bench.shop.clock.now();
            bench.shop.desk->run(workflow::save_plan_line(line));
            bench.shop.settle();
        }
        bench.shop.clock.move_by(std::chrono::minutes(30));

        bench.session = bench.shop.open_session(bench.engine, "After");
        auto dry = bench.open<PadModel>(QStringLiteral("dry"));
        QSignalSpy asked(dry.get(), &PadModel::oilAsked);
        QVERIFY(dry->earlierOil().isEmpty());
        PadBench::type(*dry, QStringLiteral("9.2"));
        QVERIFY2(words(*dry).contains(QStringLiteral("is its oil still on the rings?")),
                 qPrintable(words(*dry)));
        QCOMPARE(dry->keepText(), QStringLiteral("Keep …"));
        dry->keep();
        QCOMPARE(asked.size(), 1);
        bench.shop.settle();
        QVERIFY(bench.visit().readings.empty());
        dry->settleOil(way);
        bench.shop.settle();
        const Oiled said = way == QLatin1String("stays") ? Oiled::before : Oiled::no;
        QCOMPARE(bench.visit().readings.back().oiled, said);
        // What ran, ran with all its cylinders; a wiped bore says nothing of the next.
        PadBench::type(*dry, QStringLiteral("9.3"));
        dry->keep();
        bench.shop.settle();
        QCOMPARE(asked.size(), way == QLatin1String("ran") ? 1 : 2);
        QCOMPARE(bench.visit().readings.size(),
                 way == QLatin1String("ran") ? std::size_t{2} : std::size_t{1});

        // What was said of these rings holds for the session's other tests.
        auto air = bench.open<PadModel>(QStringLiteral("leak-down"));
        QSignalSpy again(air.get(), &PadModel::oilAsked);
        air->chooseCylinder(1);
        PadBench::hold(*air, QStringLiteral("5.5"), QStringLiteral("5.1"));
        air->keep();
        bench.shop.settle();
        QCOMPARE(again.size(), 0);
        QCOMPARE(bench.visit().readings.back().oiled, said);
    }

    void the_crankcase_s_end_pressure_is_asked_for() {
        PadBench bench(1);
        auto pad = bench.open<PadModel>(QStringLiteral("crankcase"));
        QSignalSpy left(pad.get(), &PadModel::finished);
        QCOMPARE(pad->keepText(), QStringLiteral("Done"));
        pad->focusField(QStringLiteral("set"));
        PadBench::type(*pad, QStringLiteral("0.5"));
        QCOMPARE(pad->keepText(), QStringLiteral("End pressure first"));
        pad->keep();
        QCOMPARE(left.size(), 0);
        QCOMPARE(pad->field(), QStringLiteral("held"));
        QVERIFY2(words(*pad).contains(QStringLiteral("End pressure?")), qPrintable(words(*pad)));
        PadBench::type(*pad, QStringLiteral("0.4"));
        QVERIFY(!words(*pad).contains(QStringLiteral("End pressure?")));
    }

    void each_chamber_of_a_two_stroke_twin_is_held_by_itself() {
        PadBench bench(2);
        bench.engine.cycle = StrokeCycle::two;
        bench.shop.desk->run(workflow::save_engine(bench.engine));
        // As earlier sessions have it.
        Reading as_one;
        as_one.session = bench.session;
        as_one.test = TestKind::crankcase;
        as_one.cylinder = 0;
        as_one.set = TypedPressure::make("0.6", units::bar).value();
        as_one.held = TypedPressure::make("0.5", units::bar).value();
        as_one.hold = TypedTime::make("3", units::minute).value();
        bench.shop.desk->run(workflow::keep_reading(as_one));
        bench.shop.settle();
        auto pad = bench.open<PadModel>(QStringLiteral("crankcase"));
        QCOMPARE(pad->cylinders().size(), 2);
        QCOMPARE(pad->cylinder(), 1);
        QVERIFY2(pad->caption().startsWith(QStringLiteral("Crankcase of cylinder 1")),
                 qPrintable(pad->caption()));
        QCOMPARE(pad->history().size(), 1);
        QVERIFY(pad->history().front().toMap()[QStringLiteral("asOne")].toBool());
        pad->focusField(QStringLiteral("set"));
        PadBench::type(*pad, QStringLiteral("0.5"));
        pad->focusField(QStringLiteral("hold"));
        PadBench::type(*pad, QStringLiteral("3"));
        pad->focusField(QStringLiteral("held"));
        PadBench::type(*pad, QStringLiteral("0.4"));
        QCOMPARE(pad->keepText(), QStringLiteral("Keep, next 2"));
        pad->keep();
        QCOMPARE(pad->cylinder(), 2);
        bench.shop.settle();
        QTRY_COMPARE(bench.visit().readings.size(), std::size_t(2));
        QCOMPARE(bench.visit().readings.back().cylinder, 1);
        QTRY_VERIFY(pad->cylinders().front().toMap()[QStringLiteral("measured")].toBool());
        pad->choose(0);
        QCOMPARE(pad->history().size(), 2);
    }

    void whether_a_clearance_is_right_is_said_first() {
        PadBench bench;
        bench.engine.valves.intake_clearance = Sourced<ClearanceRange>{
            {*TypedLength::make("0.15", units::mm), *TypedLength::make("0.20", units::mm)},
            Origin::manual,
            {}};
        bench.shop.desk->run(workflow::save_engine(bench.engine));
        bench.shop.settle();
        auto pad = bench.open<ClearancesModel>();
        PadBench::type(*pad, QStringLiteral("0.18"));
        QCOMPARE(pad->lines().first().toMap()["mark"].toString(), state_key(findings::State::good));
        QCOMPARE(pad->lines().size(), 2);
    }

    void two_gauges_of_one_name_are_told_apart() {
        PadBench bench;
        for (const char* scale : {"16", "10"}) {
            Tester gauge;
            gauge.id = bench.shop.desk->make_id<TesterId>();
            gauge.kind = TesterKind::compression_gauge;
            gauge.name = "Bench gauge";
            gauge.gauge.full_scale = TypedPressure::make(scale, units::bar).value();
            bench.shop.desk->run(workflow::save_tester(gauge));
        }
        bench.shop.settle();
        VisitForm form;
        form.setRecordId(text_id(bench.session));
        complete(form, bench.shop);
        const auto names = form.field(QStringLiteral("gauge"))["optionNames"].toStringList();
        QCOMPARE(names.size(), 3);
        QVERIFY2(names[1] != names[2], qPrintable(names.join(u';')));
        QVERIFY2(names.join(u';').contains(QStringLiteral("0 to 10 bar")), qPrintable(names.join(u';')));
    }

    void a_line_says_that_something_was_written_and_not_kept() {
        PadBench bench;
        VisitForm form;
        form.setRecordId(text_id(bench.session));
        complete(form, bench.shop);
        const int before = form.revision();
        form.keepDraft(QStringLiteral("complaint"), QStringLiteral("It lost po"));
        QVERIFY(form.revision() > before);
        const int written = form.revision();
        form.keepDraft(QStringLiteral("complaint"), QStringLiteral("It lost pow"));
        QCOMPARE(form.revision(), written);  // not with every key
        form.keepDraft(QStringLiteral("complaint"), {});
        QVERIFY(form.revision() > written);
    }

    void a_limit_is_one_here_only_where_it_was_brought_to_this_air() {
        PadBench bench(1);
        bench.engine.limits.lowest = TypedPressure::make("9.0", units::bar).value();
        bench.shop.desk->run(workflow::save_engine(bench.engine));
        bench.shop.settle();
        const auto told = [&] {
            auto pad = bench.open<PadModel>(QStringLiteral("dry"));
            PadBench::type(*pad, QStringLiteral("97"));
            return words(*pad);
        };
        QVERIFY2(told().contains(QStringLiteral("Factory limit: 9.0")), qPrintable(told()));
        bench.engine.shop_altitude = TypedLength::make("900", units::m).value();
        bench.shop.desk->run(workflow::save_engine(bench.engine));
        bench.shop.settle();
        QVERIFY2(told().contains(QStringLiteral("Factory limit here: 8.")), qPrintable(told()));
    }

    void a_decompressor_at_work_leaves_no_limit_on_the_bores() {
        PadBench bench(1);
        bench.engine.limits.lowest = TypedPressure::make("9.0", units::bar).value();
        const auto limit = [&](Decompressor decompressor) {
            bench.engine.decompressor = decompressor;
            bench.shop.desk->run(workflow::save_engine(bench.engine));
            bench.shop.settle();
            auto pad = bench.open<PadModel>(QStringLiteral("dry"));
            PadBench::type(*pad, QStringLiteral("55"));
            pad->keep();
            bench.shop.settle();
            const auto first = [&] { return pad->cylinders().value(0).toMap(); };
            // Findings come from another thread.
            if (!QTest::qWaitFor([&] { return first()[QStringLiteral("measured")].toBool(); })) return -1.0;
            return first()[QStringLiteral("limit")].toDouble();
        };
        QVERIFY(limit(Decompressor::none) > 0.0);
        QVERIFY(std::isnan(limit(Decompressor::automatic)));
    }
};

}  // namespace lapwing

QTEST_GUILESS_MAIN(lapwing::PadKeptTest)
#include "pad_kept_test.moc"

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// Pads of digits without their pages: keys, drafts, Keep and what comes next.
#include <algorithm>

#include "core/workflow/clearances.h"
#include "core/workflow/readings.h"
#include "qml/viewmodels/bores.h"
#include "qml/viewmodels/clearances_model.h"
#include "qml/viewmodels/cylinder_order.h"
#include "tests/viewmodels/pad_bench.h"

namespace lapwing {

class KeyedTest : public QObject {
    Q_OBJECT

private:
    /// With what the cranking model needs (made up).
    static Engine measured(Engine engine) {
        engine.bore = Sourced<TypedLength>{*TypedLength::make("73.4", units::mm), Origin::manual, ""};
        engine.stroke = Sourced<TypedLength>{*TypedLength::make("58.8", units::mm), Origin::manual, ""};
        engine.compression_ratio =
            Sourced<TypedRatio>{*TypedRatio::make("8.6", units::one), Origin::manual, ""};
        return engine;
    }

private slots:
    void keys_write_one_number() {
        PadBench bench;
        auto pad = bench.open<PadModel>(QStringLiteral("dry"));
        PadBench::type(*pad, QStringLiteral("9,2.5"));
        QCOMPARE(pad->typed(), QStringLiteral("9.25"));  // one point, whichever key it was
        pad->backspace();
        QCOMPARE(pad->typed(), QStringLiteral("9.2"));
        pad->clear();
        QVERIFY(pad->empty());
        PadBench::type(*pad, QStringLiteral("123456789"));
        QCOMPARE(pad->typed().remove(QLatin1Char('.')), QStringLiteral("1234567"));
    }

    void the_clock_types_the_minutes_that_the_crankcase_held() {
        PadBench bench(1);
        auto pad = bench.open<PadModel>(QStringLiteral("crankcase"));
        pad->focusField(QStringLiteral("held"));
        PadBench::type(*pad, QStringLiteral("5.0"));
        const auto minutes = [&] {
            for (const auto& field : pad->fields())
                if (field.toMap()[QStringLiteral("key")] == QStringLiteral("hold"))
                    return field.toMap()[QStringLiteral("value")].toString();
            return QString();
        };
        pad->enterHold(330);  // 5 min 30 s
        QCOMPARE(minutes(), QStringLiteral("5.5"));
        // The field that was typed in stays the one, with its digits.
        QCOMPARE(pad->field(), QStringLiteral("held"));
        QCOMPARE(pad->typed(), QStringLiteral("5.0"));
        // A second run stands in for the first, and a short one is not nothing.
        pad->enterHold(2);
        QCOMPARE(minutes(), QStringLiteral("0.1"));
        auto other = bench.open<PadModel>(QStringLiteral("dry"));
        other->enterHold(330);
        QVERIFY(other->empty());
    }

    void no_point_in_pulls() {
        PadBench bench;
        auto pad = bench.open<PadModel>(QStringLiteral("dry"));
        pad->focusField(QStringLiteral("pulls"));
        PadBench::type(*pad, QStringLiteral("6.5"));
        QCOMPARE(pad->typed(), QStringLiteral("65"));
        pad->step(QStringLiteral("pulls"), -1);
        QCOMPARE(pad->typed(), QStringLiteral("64"));
    }

    void keep_moves_on_at_once_and_ticks_with_the_commit() {
        PadBench bench;
        auto pad = bench.open<PadModel>(QStringLiteral("dry"));
        QSignalSpy ticks(pad.get(), &PadModel::kept);
        PadBench::type(*pad, QStringLiteral("9.2"));
        QCOMPARE(pad->keepText(), QStringLiteral("Keep, next 2"));
        pad->keep();
        QCOMPARE(pad->cylinder(), 2);
        QVERIFY(pad->empty());
        QCOMPARE(ticks.size(), 0);
        bench.shop.settle();
        QCOMPARE(ticks.size(), 1);
        QCOMPARE(pad->lastKept(), QStringLiteral("Cylinder 1: 9.2 bar kept"));
        const auto readings = bench.visit().readings;
        QCOMPARE(readings.size(), std::size_t{1});
        QCOMPARE(readings.front().final->text(), std::string("9.2 bar"));
    }

    void what_the_library_refuses_comes_back() {
        PadBench bench;
        auto pad = bench.open<PadModel>(QStringLiteral("dry"));
        PadBench::type(*pad, QStringLiteral("9.2"));
        bench.shop.desk->run(workflow::remove_session(bench.session));
        bench.shop.desk->flush();
        pad->keep();
        bench.shop.settle();
        QCOMPARE(pad->cylinder(), 1);
        QCOMPARE(pad->typed(), QStringLiteral("9.2"));
        QVERIFY(!bench.shop.told.isEmpty());
    }

    void half_typed_digits_outlive_the_pad() {
        PadBench bench;
        {
            auto pad = bench.open<PadModel>(QStringLiteral("dry"));
            pad->chooseCylinder(3);
            pad->focusField(QStringLiteral("first"));
            PadBench::type(*pad, QStringLiteral("6."));
            pad->setTag(QStringLiteral("after staking"));
        }
        auto again = bench.open<PadModel>(QStringLiteral("dry"));
        QCOMPARE(again->cylinder(), 3);
        QCOMPARE(again->field(), QStringLiteral("first"));
        QCOMPARE(again->tag(), QStringLiteral("after staking"));
        QCOMPARE(again->typed(), QStringLiteral("6."));
        auto other = bench.open<PadModel>(QStringLiteral("wet"));
        QVERIFY(other->typed().isEmpty());
    }

    void a_draft_whose_reading_was_committed_is_spent() {
        PadBench bench;
        auto pad = bench.open<PadModel>(QStringLiteral("dry"));
        PadBench::type(*pad, QStringLiteral("9.2"));
        const QString key = QStringLiteral("pad/%1/dry").arg(text_id(bench.session));
        const QString draft = bench.shop.app->draft(key);
        QVERIFY(draft.contains(QStringLiteral("9.2")));
        pad->keep();
        bench.shop.settle();
        // As after an end of the process between the commit and the new draft.
        bench.shop.app->keepDraft(key, draft);
        auto again = bench.open<PadModel>(QStringLiteral("dry"));
        QCOMPARE(again->cylinder(), 2);
        again->chooseCylinder(1);
        QVERIFY(again->empty());
    }

    void redo_stands_in_place_of_a_reading() {
        PadBench bench;
        auto pad = bench.open<PadModel>(QStringLiteral("dry"));
        PadBench::type(*pad, QStringLiteral("9.2"));
        pad->keep();
        bench.shop.settle();
        pad->chooseCylinder(1);
        pad->startRedo(pad->history().front().toMap()[QStringLiteral("id")].toString());
        auto again = bench.open<PadModel>(QStringLiteral("dry"));
        again->chooseCylinder(1);
        QVERIFY(again->redoing());
        PadBench::type(*again, QStringLiteral("9.4"));
        QCOMPARE(again->keepText(), QStringLiteral("Keep instead"));
        again->keep();
        bench.shop.settle();
        QCOMPARE(bench.visit().readings.size(), std::size_t{2});
        const Visit visit = bench.visit();
        const auto standing = lapwing::standing(visit.readings, TestKind::dry, 1);
        QCOMPARE(standing.size(), std::size_t{1});
        QCOMPARE(standing.front()->final->text(), std::string("9.4 bar"));
    }

    void redo_with_digits_typed_takes_them_or_others() {
        PadBench bench;
        auto pad = bench.open<PadModel>(QStringLiteral("dry"));
        PadBench::type(*pad, QStringLiteral("9.3"));
        pad->keep();
        bench.shop.settle();
        pad->chooseCylinder(1);
        PadBench::type(*pad, QStringLiteral("9.1"));
        // Both would count.
        QCOMPARE(pad->keepText(), QStringLiteral("Keep as well, next 2"));
        pad->startRedo(pad->history().front().toMap()[QStringLiteral("id")].toString());
        QCOMPARE(pad->typed(), QStringLiteral("9.1"));
        QCOMPARE(pad->keepText(), QStringLiteral("Keep instead"));
        PadBench::type(*pad, QStringLiteral("8.4"));
        QCOMPARE(pad->typed(), QStringLiteral("8.4"));
    }

    void what_was_taken_back_is_no_longer_said_to_be_kept() {
        PadBench bench;
        auto pad = bench.open<PadModel>(QStringLiteral("dry"));
        PadBench::type(*pad, QStringLiteral("9."));
        pad->keep();
        bench.shop.settle();
        QCOMPARE(pad->lastKept(), QStringLiteral("Cylinder 1: 9 bar kept"));
        bench.shop.desk->run(workflow::remove_reading(bench.visit().readings.front().id));
        bench.shop.settle();
        QCOMPARE(pad->lastKept(), QString());
    }

    // Compression of a diesel is 20 to 40 bar (makers' manuals, several: 350 to 430 psi).
    void a_diesel_reads_whole_bars() {
        PadBench bench;
        Engine diesel = bench.engine;
        diesel.fuel = Fuel::diesel;
        bench.shop.desk->run(workflow::save_engine(diesel));
        bench.shop.settle();
        auto pad = bench.open<PadModel>(QStringLiteral("dry"));
        PadBench::type(*pad, QStringLiteral("28"));
        QCOMPARE(pad->typed(), QStringLiteral("28"));
        PadBench::type(*pad, QStringLiteral("5"));
        QCOMPARE(pad->typed(), QStringLiteral("28.5"));
    }

    void the_pad_says_what_to_hold_a_reading_against() {
        PadBench bench;
        auto pad = bench.open<PadModel>(QStringLiteral("dry"));
        QTRY_VERIFY2(words(*pad).contains(QStringLiteral("the model needs")), qPrintable(words(*pad)));
        Engine known = measured(bench.engine);
        bench.shop.desk->run(workflow::save_engine(known));
        bench.shop.settle();
        // The model works on a thread of its own; the line comes when it is ready.
        QTRY_VERIFY(words(*pad).contains(QStringLiteral("the model expects")));
        QVERIFY(!pad->derivation(0).isEmpty());
        PadBench::type(*pad, QStringLiteral("9.2"));
        QVERIFY(words(*pad).contains(QStringLiteral("the model expects")));

        known.limits.lowest = *TypedPressure::make("8.0", units::bar);
        bench.shop.desk->run(workflow::save_engine(known));
        bench.shop.settle();
        QVERIFY(words(*pad).contains(QStringLiteral("Factory limit: 8.0 bar")));
        QVERIFY(!words(*pad).contains(QStringLiteral("the model expects")));

        pad->focusField(QStringLiteral("first"));
        PadBench::type(*pad, QStringLiteral("6.0"));
        QVERIFY(words(*pad).contains(QStringLiteral("First puff 65")));  // 6.0 of 9.2
    }

    void oil_alone_explains_a_part_of_a_rise() {
        PadBench bench;
        Engine known = measured(bench.engine);
        bench.shop.desk->run(workflow::save_engine(known));
        auto dry = bench.open<PadModel>(QStringLiteral("dry"));
        PadBench::type(*dry, QStringLiteral("7.0"));
        dry->keep();
        bench.shop.settle();
        auto wet = bench.open<PadModel>(QStringLiteral("wet"));
        wet->focusField(QStringLiteral("oil"));
        PadBench::type(*wet, QStringLiteral("5"));
        wet->focusField(QStringLiteral("final"));
        PadBench::type(*wet, QStringLiteral("8.4"));
        QTRY_VERIFY2(words(*wet).contains(QStringLiteral("The volume of 5.0 cm³ of oil alone explains")),
                     qPrintable(words(*wet)));
        QVERIFY(words(*wet).startsWith(QStringLiteral("+20 %")));  // 8.4 over 7.0
        for (int line = 0; line < wet->lines().size(); ++line)
            QVERIFY2(!wet->derivation(line).isEmpty(), qPrintable(words(*wet)));
        wet->clear();
        PadBench::type(*wet, QStringLiteral("6.3"));
        QVERIFY2(words(*wet).contains(QStringLiteral("\u221210 %")),
                 qPrintable(words(*wet)));  // 6.3 over 7.0
    }

    void a_leak_is_told_as_a_hole() {
        PadBench bench;
        auto pad = bench.open<PadModel>(QStringLiteral("leak-down"));
        PadBench::hold(*pad, QStringLiteral("5.5"), QStringLiteral("4.1"));
        QVERIFY(words(*pad).contains(QStringLiteral("hole would leak as much")));
    }

    void without_a_set_pressure_that_comes_first() {
        PadBench bench;
        auto pad = bench.open<PadModel>(QStringLiteral("leak-down"));
        PadBench::type(*pad, QStringLiteral("4.1"));
        QCOMPARE(pad->keepText(), QStringLiteral("Set first"));
        pad->keep();
        QCOMPARE(pad->field(), QStringLiteral("set"));
        QVERIFY(bench.visit().readings.empty());
        // In a line, not in a message that lies over the field.
        QVERIFY(words(*pad).contains(QStringLiteral("Set pressure?")));
        QVERIFY(bench.shop.told.isEmpty());
        PadBench::type(*pad, QStringLiteral("5.5"));
        QVERIFY(!words(*pad).contains(QStringLiteral("Set pressure?")));
        QCOMPARE(pad->keepText(), QStringLiteral("Keep, listen"));
    }

    void what_was_kept_names_held_of_set() {
        PadBench bench;
        auto pad = bench.open<PadModel>(QStringLiteral("leak-down"));
        QSignalSpy listens(pad.get(), &PadModel::listenTo);
        const int here = pad->cylinder();
        pad->focusField(QStringLiteral("held"));
        PadBench::type(*pad, QStringLiteral("4.0"));
        pad->focusField(QStringLiteral("set"));  // typed last, and not what the reading says
        pad->clear();
        PadBench::type(*pad, QStringLiteral("5.0"));
        pad->keep();
        bench.shop.settle();
        QCOMPARE(pad->lastKept(), QStringLiteral("Cylinder %1: 4.0 bar of 5.0 bar kept").arg(here));
        QCOMPARE(listens.size(), 1);
    }

    void held_above_set_leads_to_no_listening() {
        PadBench bench;
        auto pad = bench.open<PadModel>(QStringLiteral("leak-down"));
        QSignalSpy listens(pad.get(), &PadModel::listenTo);
        const int here = pad->cylinder();
        PadBench::hold(*pad, QStringLiteral("5.0"), QStringLiteral("5.5"));
        pad->keep();
        bench.shop.settle();
        QCOMPARE(bench.visit().readings.size(), std::size_t{1});
        QCOMPARE(pad->lastKept(), QStringLiteral("Cylinder %1: 5.5 bar of 5.0 bar kept").arg(here));
        QCOMPARE(listens.size(), 0);
    }

    void leak_down_goes_round_in_firing_order() {
        PadBench bench;
        Engine engine = bench.engine;
        engine.firing_order = {1, 3, 4, 2};
        Visit visit;
        const auto next = [&](int here) {
            return next_without_reading(engine, visit, TestKind::leak_down, here);
        };
        QCOMPARE(next(1), 3);
        QCOMPARE(next(2), 1);
        QCOMPARE(next_without_reading(engine, visit, TestKind::dry, 1), 2);
        for (const int number : {3, 4}) {
            Reading reading;
            reading.id = ReadingId::make(bench.shop.clock);
            reading.test = TestKind::leak_down;
            reading.cylinder = number;
            visit.readings.push_back(reading);
        }
        QCOMPARE(next(1), 2);
        QCOMPARE(next_without_reading(engine, visit, TestKind::leak_down, 1, [](int n) { return n == 2; }),
                 0);
    }

    void a_crankcases_pad_warns_of_leak_down_pressure() {
        PadBench bench;
        const auto cautions = bench.open<PadModel>(QStringLiteral("crankcase"))->cautions();
        QCOMPARE(cautions.size(), 1);
        QVERIFY(cautions.front().contains(QStringLiteral("pushes the shaft seals out")));
    }

    void a_diesels_pad_shows_a_diesels_cautions() {
        PadBench bench;
        const auto says = [](const PadModel& pad, const char* part) {
            return pad.cautions().join(QLatin1Char('\n')).contains(QLatin1String(part));
        };
        auto petrol = bench.open<PadModel>(QStringLiteral("dry"));
        QVERIFY(says(*petrol, "fuel mist"));
        QVERIFY(!says(*petrol, "injection line"));
        bench.engine.fuel = Fuel::diesel;
        bench.shop.desk->run(workflow::save_engine(bench.engine));
        bench.shop.settle();
        auto dry = bench.open<PadModel>(QStringLiteral("dry"));
        QVERIFY(!says(*dry, "fuel mist"));
        QVERIFY(says(*dry, "injection line"));
        QVERIFY(says(*dry, "40 bar or more"));
        auto leak_down = bench.open<PadModel>(QStringLiteral("leak-down"));
        QVERIFY(says(*leak_down, "injection line"));
        QVERIFY(says(*leak_down, "With air in"));
    }

    void clearances_go_valve_by_valve_and_keep_their_drafts() {
        PadBench bench(2);
        auto pad = bench.open<ClearancesModel>();
        PadBench::type(*pad, QStringLiteral("0.15"));
        pad->keep();
        QCOMPARE(pad->valveIndex(), 1);
        PadBench::type(*pad, QStringLiteral("0.2"));
        bench.shop.settle();
        auto again = bench.open<ClearancesModel>();
        QCOMPARE(again->cylinder(), 1);
        QCOMPARE(again->valveIndex(), 1);
        QCOMPARE(again->typed(), QStringLiteral("0.2"));
        again->keep();
        QCOMPARE(again->cylinder(), 2);
        QCOMPARE(again->valveIndex(), 0);
        bench.shop.settle();
        const auto kept = bench.visit().clearances;
        QCOMPARE(kept.size(), std::size_t{2});
        const auto exhaust = std::ranges::find(kept, ValveSide::exhaust, &Clearance::side);
        QVERIFY(exhaust != kept.end());
        QCOMPARE(exhaust->found->text(), std::string("0.2 mm"));
        // Choosing a cylinder starts at its first valve.
        again->chooseValve(1);
        again->chooseCylinder(1);
        QCOMPARE(again->valveIndex(), 0);
    }

    void after_a_cylinders_last_valve_comes_the_one_that_was_left_out() {
        PadBench bench(2);
        auto pad = bench.open<ClearancesModel>();
        pad->chooseSide(QStringLiteral("exhaust"));
        PadBench::type(*pad, QStringLiteral("0.2"));
        QCOMPARE(pad->keepText(), QStringLiteral("Keep, next valve"));
        pad->keep();
        QCOMPARE(pad->cylinder(), 1);
        QCOMPARE(pad->valveIndex(), 0);
        PadBench::type(*pad, QStringLiteral("0.15"));
        pad->keep();
        // Both are kept: on to the next cylinder, and not round to the valve that came first.
        QCOMPARE(pad->cylinder(), 2);
        QCOMPARE(pad->valveIndex(), 0);
        bench.shop.settle();
        QCOMPARE(bench.visit().clearances.size(), std::size_t{2});
    }

    void a_clearance_is_judged_as_the_findings_judge_it() {
        PadBench bench;
        bench.engine.valves.intake_clearance = Sourced<ClearanceRange>{
            {*TypedLength::make("6", units::thou), *TypedLength::make("9", units::thou)}, Origin::manual, {}};
        bench.shop.desk->run(workflow::save_engine(bench.engine));
        bench.shop.settle();
        auto pad = bench.open<ClearancesModel>();
        const auto mark = [&](const QString& thou) {
            PadBench::type(*pad, thou);
            QString mark;
            for (const auto& line : pad->lines())
                if (const QString key = line.toMap()[QStringLiteral("mark")].toString(); !key.isEmpty())
                    mark = key;
            pad->clear();
            return mark;
        };
        QCOMPARE(mark(QStringLiteral("6")), state_key(findings::State::good));
        QCOMPARE(mark(QStringLiteral("9")), state_key(findings::State::good));
        QCOMPARE(mark(QStringLiteral("12")), state_key(findings::State::borderline));  // it seats
        QCOMPARE(mark(QStringLiteral("4")), state_key(findings::State::fault));
        // No clearance holds the valve open, whatever the maker wants: of the exhaust nothing is known.
        pad->chooseValve(1);
        QCOMPARE(mark(QStringLiteral("12")), QString());
        QCOMPARE(mark(QStringLiteral("0")), state_key(findings::State::fault));
    }

    void a_cylinder_is_marked_good_once_all_of_its_valves_are() {
        PadBench bench;
        const Sourced<ClearanceRange> wanted{
            {*TypedLength::make("0.15", units::mm), *TypedLength::make("0.25", units::mm)},
            Origin::manual,
            {}};
        bench.engine.valves.intake_clearance = bench.engine.valves.exhaust_clearance = wanted;
        bench.shop.desk->run(workflow::save_engine(bench.engine));
        bench.shop.settle();
        auto pad = bench.open<ClearancesModel>();
        const auto mark = [&] {
            return pad->cylinders().front().toMap()[QStringLiteral("state")].toString();
        };
        PadBench::type(*pad, QStringLiteral("0.2"));
        pad->keep();
        bench.shop.settle();
        QCOMPARE(mark(), measured_only);
        PadBench::type(*pad, QStringLiteral("0.2"));
        pad->keep();
        bench.shop.settle();
        QCOMPARE(mark(), state_key(findings::State::good));
    }

    void a_clearance_far_off_what_is_wanted_is_asked_about_once() {
        PadBench bench;
        bench.engine.valves.intake_clearance = Sourced<ClearanceRange>{
            {*TypedLength::make("0.15", units::mm), *TypedLength::make("0.25", units::mm)},
            Origin::manual,
            {}};
        bench.shop.desk->run(workflow::save_engine(bench.engine));
        bench.shop.settle();
        auto pad = bench.open<ClearancesModel>();
        // Found next to nothing: that is what is looked for, and nothing is asked.
        PadBench::type(*pad, QStringLiteral("0.02"));
        pad->focusField(QStringLiteral("left"));
        PadBench::type(*pad, QStringLiteral("3"));
        QVERIFY(
            pad->lines().front().toMap()[QStringLiteral("text")].toString().contains(QStringLiteral("3 mm")));
        pad->keep();
        bench.shop.settle();
        QVERIFY(bench.visit().clearances.empty());
        QCOMPARE(pad->keepText(), QStringLiteral("Keep all the same"));
        // Another figure is another question; the right one is none.
        pad->clear();
        PadBench::type(*pad, QStringLiteral("0.20"));
        QVERIFY(pad->keepText() != QStringLiteral("Keep all the same"));
        pad->keep();
        bench.shop.settle();
        QCOMPARE(bench.visit().clearances.size(), std::size_t{1});
        // Whoever means it is let through.
        pad->chooseValve(0);
        pad->focusField(QStringLiteral("left"));
        PadBench::type(*pad, QStringLiteral("3"));
        pad->keep();
        pad->keep();
        bench.shop.settle();
        QCOMPARE(standing(bench.visit().clearances, 1).front()->left->text(), std::string("3 mm"));
    }

    void what_is_wanted_is_asked_for_on_the_engine_card() {
        PadBench bench;
        auto pad = bench.open<ClearancesModel>();
        const auto way = [&] {
            const auto lines = pad->lines();
            return lines.isEmpty() ? QVariantMap() : lines.front().toMap();
        };
        QCOMPARE(way()[QStringLiteral("way")].toString(), QStringLiteral("EngineCard"));
        QCOMPARE(way()[QStringLiteral("args")].toMap()[QStringLiteral("line")].toString(),
                 QStringLiteral("intake_clearance"));
        pad->chooseValve(1);
        QCOMPARE(way()[QStringLiteral("args")].toMap()[QStringLiteral("line")].toString(),
                 QStringLiteral("exhaust_clearance"));
        bench.engine.valves.exhaust_clearance = Sourced<ClearanceRange>{
            {*TypedLength::make("6", units::thou), *TypedLength::make("9", units::thou)}, Origin::manual, {}};
        bench.shop.desk->run(workflow::save_engine(bench.engine));
        bench.shop.settle();
        // Also where it stands there: it may be wrong.
        QCOMPARE(way()[QStringLiteral("text")].toString(), QStringLiteral("wanted, cold"));
        QCOMPARE(way()[QStringLiteral("way")].toString(), QStringLiteral("EngineCard"));
    }

    void a_clearance_is_deleted_and_comes_back() {
        PadBench bench;
        auto pad = bench.open<ClearancesModel>();
        QVERIFY(!pad->deletable());
        PadBench::type(*pad, QStringLiteral("0.15"));
        pad->keep();
        bench.shop.settle();
        QVERIFY(!pad->deletable());  // the next valve
        pad->chooseValve(0);
        QVERIFY(pad->deletable());
        PadBench::type(*pad, QStringLiteral("0.2"));
        QVERIFY(!pad->deletable());  // what is typed comes first
        pad->clear();
        pad->remove();
        bench.shop.settle();
        QVERIFY(bench.visit().clearances.empty());
        QVERIFY(!pad->deletable());
        QCOMPARE(pad->placeholder(), QStringLiteral("–"));
        bench.shop.undo();
        QCOMPARE(bench.visit().clearances.size(), std::size_t{1});
        QVERIFY(pad->deletable());
        QCOMPARE(pad->placeholder(), QStringLiteral("0.15"));
    }
};

}  // namespace lapwing

QTEST_GUILESS_MAIN(lapwing::KeyedTest)
#include "keyed_test.moc"

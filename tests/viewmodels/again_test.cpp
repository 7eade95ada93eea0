// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// A test under other conditions gets a session of its own: from what is worth doing next, from what a mentor
// asks for, and from the pad where a repeat lies far from the reading before.
#include <QSignalSpy>

#include "core/workflow/remarks.h"
#include "qml/viewmodels/again_model.h"
#include "qml/viewmodels/findings_model.h"
#include "qml/viewmodels/pad_model.h"
#include "qml/viewmodels/prepare_model.h"
#include "qml/viewmodels/session_model.h"
#include "qml/viewmodels/tester_ask_model.h"
#include "qml/viewmodels/todo_model.h"
#include "tests/viewmodels/measured_visit.h"

namespace lapwing {
namespace {

template <class Model>
void open(Model& model, MeasuredVisit& at, SessionId session) {
    model.setSessionId(text_id(session));
    complete(model, at.shop);
    at.shop.settle();
}

void open_again(AgainModel& model, MeasuredVisit& at, TestKind test, bool other, int cylinder = 0) {
    model.setTest(QString::fromUtf8(word(test).data()));
    model.setProperty("other", other);
    model.setProperty("cylinder", cylinder);
    open(model, at, at.session);
}

/// The id of the session that it started; empty when it did not.
QString started(AgainModel& model, MeasuredVisit& at) {
    QSignalSpy went(&model, &AgainModel::started);
    model.start();
    at.shop.settle();
    return went.size() == 1 ? went[0][0].toString() : QString();
}

/// Some time before what the test then does.
void shut_and_cold(MeasuredVisit& at) {
    Conditions conditions;
    conditions.throttle = Throttle::closed;
    conditions.heat = EngineHeat::cold;
    at.shop.desk->run(workflow::set_conditions(at.session, conditions));
    at.dry(1, "6.6");
    at.dry(2, "6.7");
    at.shop.settle();
    at.shop.clock.move_by(std::chrono::minutes(10));
}

NoteId ask_for(MeasuredVisit& at, TestKind test, std::optional<int> cylinder = {}) {
    Note request;
    request.id = at.shop.desk->make_id<NoteId>();
    request.session = at.session;
    request.kind = NoteKind::test_request;
    request.test = test;
    request.author = "The mentor";
    if (cylinder) request.tie = {.to = TiedTo::cylinder, .record = {}, .cylinder = cylinder, .finding = {}};
    at.shop.clock.move_by(std::chrono::minutes(1));
    at.shop.desk->run(workflow::save_note(request));
    at.shop.settle();
    at.shop.clock.move_by(std::chrono::minutes(1));
    return request.id;
}

QVariantMap todo(const TodoModel& model) {
    return model.todos().value(0).toMap();
}

void type(KeyedModel& pad, const char* keys) {
    for (const QChar key : QString::fromLatin1(keys))
        pad.press(key);
}

}  // namespace

class AgainTest : public QObject {
    Q_OBJECT

private slots:
    void the_step_that_asks_for_another_throttle_leads_to_a_new_session() {
        MeasuredVisit at;
        shut_and_cold(at);
        SessionModel session;
        open(session, at, at.session);
        QTRY_COMPARE(session.nextPage(), QStringLiteral("Again"));
        QCOMPARE(session.nextText(), QStringLiteral("Dry test, new session"));
        FindingsModel findings;
        open(findings, at, at.session);
        QTRY_VERIFY(!findings.nextSteps().isEmpty());
        const auto step = findings.nextSteps()[0].toMap();
        QCOMPARE(step["page"].toString(), QStringLiteral("Again"));
        QCOMPARE(step["args"].toMap()["test"].toString(), QStringLiteral("dry"));

        AgainModel again;
        open_again(again, at, TestKind::dry, true);
        QVERIFY(again.asksThrottle());
        QCOMPARE(again.throttleBefore(), QStringLiteral("In the session before: closed"));
        QVERIFY(!again.throttleOpen());  // looked at first, not taken for granted
        again.setThrottleOpen(true);
        again.setWarm(true);
        const QString id = started(again, at);
        QVERIFY(!id.isEmpty());
        QVERIFY(id != text_id(at.session));
        const auto made = at.shop.desk->session(*SessionId::parse(id.toStdString()));
        QCOMPARE(made->conditions.throttle, Throttle::held_open);
        QCOMPARE(made->conditions.heat, EngineHeat::warm);
        QCOMPARE(made->title, std::string("Throttle open, warm"));
        // The first session is as it was.
        QCOMPARE(at.stored().session.conditions.throttle, Throttle::closed);

        // Asked for again, it is the session that was begun.
        at.shop.clock.move_by(std::chrono::minutes(10));
        AgainModel second;
        open_again(second, at, TestKind::dry, true);
        QCOMPARE(second.startText(), QStringLiteral("Go on there"));
        QCOMPARE(started(second, at), id);
        QCOMPARE(at.shop.desk->sessions(at.stored().session.engine).size(), 2u);
    }

    void what_was_not_looked_at_is_not_noted() {
        MeasuredVisit at;
        shut_and_cold(at);
        AgainModel again;
        open_again(again, at, TestKind::dry, true);
        const auto id = SessionId::parse(started(again, at).toStdString());
        QVERIFY(id);
        QCOMPARE(at.shop.desk->session(*id)->conditions.throttle, Throttle::unknown);
        QCOMPARE(at.shop.desk->session(*id)->conditions.heat, EngineHeat::unknown);
    }

    void a_request_stands_in_the_newest_session_and_is_ticked_there() {
        MeasuredVisit at;
        shut_and_cold(at);
        const auto request = ask_for(at, TestKind::dry);
        {
            TodoModel here;
            open(here, at, at.session);
            QCOMPARE(here.open(), 1);
            // It was measured here, with the throttle shut.
            QCOMPARE(todo(here)["page"].toString(), QStringLiteral("Again"));
        }
        const auto engine = at.stored().session.engine;
        const auto later = at.shop.desk->make_id<SessionId>();
        at.shop.desk->run(workflow::open_session(later, engine, "Warm"));
        at.shop.settle();
        TodoModel there;
        open(there, at, later);
        QCOMPARE(there.open(), 1);
        QCOMPARE(todo(there)["detail"].toString(), QStringLiteral("asked by The mentor"));
        // Throttle and heat are looked at first, in that session.
        QCOMPARE(todo(there)["page"].toString(), QStringLiteral("Again"));
        at.shop.desk->run(workflow::set_start(later, {Throttle::held_open, EngineHeat::warm}));
        at.shop.settle();
        QCOMPARE(todo(there)["page"].toString(), QStringLiteral("Pad"));
        QCOMPARE(todo(there)["args"].toMap()["sessionId"].toString(), text_id(later));
        // From the old session too.
        TodoModel old;
        open(old, at, at.session);
        QCOMPARE(todo(old)["args"].toMap()["sessionId"].toString(), text_id(later));

        at.session = later;
        at.dry(1, "9.6");
        at.dry(2, "9.7");
        at.shop.settle();
        QCOMPARE(there.open(), 0);
        QVERIFY(todo(there)["done"].toBool());  // said where it was done
        QVERIFY(std::get<Note>(*at.shop.desk->record(RecordKind::note, request.uuid)).done);
        QCOMPARE(old.open(), 0);
    }

    void a_test_that_this_session_lacks_is_done_in_it() {
        MeasuredVisit at;
        at.dry(1, "9.8");
        ask_for(at, TestKind::leak_down, 2);
        TodoModel here;
        open(here, at, at.session);
        QCOMPARE(todo(here)["page"].toString(), QStringLiteral("Pad"));
        QCOMPARE(todo(here)["args"].toMap()["cylinder"].toInt(), 2);
        at.leak(2, "5.5", "5.0");
        at.shop.settle();
        QCOMPARE(here.open(), 0);
    }

    void a_repeat_far_from_the_reading_before_is_asked_about() {
        MeasuredVisit at;
        at.dry(1, "6.6");
        at.dry(2, "6.7");
        at.shop.settle();
        PadModel pad;
        pad.setTest(QStringLiteral("dry"));
        open(pad, at, at.session);
        pad.chooseCylinder(1);
        QTRY_VERIFY(pad.cylinders().value(0).toMap()["measured"].toBool());
        QSignalSpy asked(&pad, &PadModel::repeatAsked);
        // As near as gauges read: kept at once.
        type(pad, "6.7");
        QCOMPARE(pad.oddRepeat(), QString());
        pad.clear();
        type(pad, "8.9");
        QVERIFY2(pad.oddRepeat().startsWith(QStringLiteral("8.9 bar after 6.6 bar")),
                 qPrintable(pad.oddRepeat()));
        QCOMPARE(pad.keepText(), QStringLiteral("Keep …"));
        pad.keep();
        at.shop.settle();
        QCOMPARE(asked.size(), 1);
        QCOMPARE(at.stored().readings.size(), 2u);
        QCOMPARE(pad.typed(), QStringLiteral("8.9"));

        // A new session takes the digits along.
        AgainModel again;
        open_again(again, at, TestKind::dry, true, 1);
        again.setThrottleOpen(true);
        const auto id = SessionId::parse(started(again, at).toStdString());
        QVERIFY(id);
        PadModel there;
        there.setTest(QStringLiteral("dry"));
        open(there, at, *id);
        QCOMPARE(there.cylinder(), 1);
        QCOMPARE(there.typed(), QStringLiteral("8.9"));
        PadModel here;
        here.setTest(QStringLiteral("dry"));
        open(here, at, at.session);
        here.chooseCylinder(1);
        QVERIFY(here.empty());
        // And in the new one there is nothing to differ from.
        QCOMPARE(there.oddRepeat(), QString());

        // Nothing was changed: it counts beside the first.
        type(here, "8.9");
        QTRY_VERIFY(!here.oddRepeat().isEmpty());
        here.keepRepeat();
        at.shop.settle();
        QCOMPARE(at.stored().readings.size(), 3u);
    }

    void after_an_adjustment_it_is_meant_to_differ() {
        MeasuredVisit at;
        at.dry(1, "6.6");
        at.shop.settle();
        PadModel pad;
        pad.setTest(QStringLiteral("dry"));
        open(pad, at, at.session);
        pad.chooseCylinder(1);
        QTRY_VERIFY(pad.cylinders().value(0).toMap()["measured"].toBool());
        type(pad, "8.9");
        QVERIFY(!pad.oddRepeat().isEmpty());
        pad.setTag(QStringLiteral("after clearance adjustment"));
        QCOMPARE(pad.oddRepeat(), QString());
    }

    void how_much_oil_is_said_by_the_size_of_the_cylinder() {
        // 78 x 70 mm are 334 cm3: no small cylinder. A teaspoon is 5 ml, a tablespoon 15 (common practice, no
        // source).
        MeasuredVisit at;
        PadModel pad;
        pad.setTest(QStringLiteral("wet"));
        open(pad, at, at.session);
        const auto said = [&pad] {
            const auto line = pad.lines().value(0).toMap();
            return line["figure"].toString() + QLatin1Char(' ') + line["text"].toString();
        };
        QVERIFY2(said().startsWith(QStringLiteral("Oil: 5 to 15 ml")), qPrintable(said()));
        auto card = *at.shop.desk->engine(at.stored().session.engine);
        card.bore->value = TypedLength::make("54.0", units::mm).value();
        card.stroke->value = TypedLength::make("54.0", units::mm).value();  // 124 cm3
        at.shop.desk->run(workflow::save_engine(card));
        at.shop.settle();
        QVERIFY2(said().startsWith(QStringLiteral("Oil: 2 to 5 ml")), qPrintable(said()));
        card.bore.reset();
        at.shop.desk->run(workflow::save_engine(card));
        at.shop.settle();
        QVERIFY2(said().contains(QStringLiteral("never more than 15 ml")), qPrintable(said()));
        // Once an amount is typed, it is that.
        pad.focusField(QStringLiteral("oil"));
        type(pad, "4");
        QVERIFY2(!said().contains(QStringLiteral("teaspoon")), qPrintable(said()));
        PadModel dry;
        dry.setTest(QStringLiteral("dry"));
        open(dry, at, at.session);
        QCOMPARE(dry.oilAmount(), QString());
    }

    void the_danger_of_the_test_itself_comes_first() {
        MeasuredVisit at;
        PadModel pad;
        pad.setTest(QStringLiteral("wet"));
        open(pad, at, at.session);
        QVERIFY2(pad.cautions().value(0).startsWith(QStringLiteral("Only a little oil")),
                 qPrintable(pad.cautions().value(0)));
        QCOMPARE(pad.cautions().size(), 3);
    }

    void which_tester_is_asked_once_of_an_engine() {
        MeasuredVisit at;
        TesterAskModel ask;
        ask.setProperty("test", QStringLiteral("wet"));
        open(ask, at, at.session);
        QVERIFY(ask.wanted());
        QCOMPARE(ask.kind(), QStringLiteral("compression gauge"));
        QCOMPARE(ask.choices().size(), 0);
        ask.notNow();
        QVERIFY(!ask.wanted());
        // Another kind is another question.
        TesterAskModel air;
        air.setProperty("test", QStringLiteral("leak-down"));
        open(air, at, at.session);
        QVERIFY(air.wanted());
        Tester tester;
        tester.id = at.shop.desk->make_id<TesterId>();
        tester.made_at = at.shop.clock.now();
        tester.kind = TesterKind::leak_down;
        tester.name = "Two gauges";
        tester.gauge.full_scale = MeasuredVisit::bar("10");
        at.shop.desk->run(workflow::save_tester(tester));
        at.shop.settle();
        QCOMPARE(air.choices().value(0).toMap()["text"].toString(), QStringLiteral("Two gauges"));
        air.choose(text_id(tester.id));
        at.shop.settle();
        QVERIFY(!air.wanted());
        QCOMPARE(at.stored().session.leak_down_tester, std::optional(tester.id));
    }

    void a_tester_that_nobody_named_leads_to_where_it_is_named() {
        MeasuredVisit at;
        at.burnt_valve();
        FindingsModel findings;
        open(findings, at, at.session);
        QTRY_COMPARE(findings.testersMissing().size(), 2);
        QStringList lines;
        for (const auto& one : findings.testersMissing())
            lines << one.toMap()["line"].toString();
        QCOMPARE(lines, QStringList({QStringLiteral("gauge"), QStringLiteral("leak_down")}));
        for (const auto& line : findings.weakenedBy())
            QVERIFY2(!line.toMap()["text"].toString().contains(QStringLiteral("tester was used")),
                     qPrintable(line.toMap()["text"].toString()));
    }

    void an_aircrafts_caution_is_open_on_an_aircrafts_engine_only() {
        MeasuredVisit at;
        PrepareModel prepare;
        open(prepare, at, at.session);
        const auto last = [&] { return prepare.cautions().back().toMap(); };
        QVERIFY(prepare.cautions().size() >= 2);
        QVERIFY(last()["apart"].toBool());
        QVERIFY2(last()["text"].toString().startsWith(QStringLiteral("Aircraft")),
                 qPrintable(last()["text"].toString()));
        for (const auto& one : prepare.cautions())
            QCOMPARE(one.toMap()["apart"].toBool(), one == prepare.cautions().back());
        Engine engine = *at.shop.desk->engine(at.shop.desk->engines().front().id);
        engine.description = "Flugmotor, left side";
        at.shop.desk->run(workflow::save_engine(engine));
        at.shop.settle();
        for (const auto& one : prepare.cautions())
            QVERIFY(!one.toMap()["apart"].toBool());
    }

    void the_rest_of_prepare_is_done_in_one_step() {
        MeasuredVisit at;
        PrepareModel prepare;
        open(prepare, at, at.session);
        prepare.mark(QStringLiteral("battery"), QStringLiteral("not done"));
        at.shop.settle();
        const int open_before = prepare.open();
        QVERIFY(open_before > 3);
        prepare.restIsDone();
        at.shop.settle();
        // Warm or cold is noted by saying which.
        QCOMPARE(prepare.open(), 1);
        QCOMPARE(step_state(at.stored().session, PrepareStep::temperature_noted), StepState::open);
        QCOMPARE(step_state(at.stored().session, PrepareStep::throttle_open), StepState::done);
        QCOMPARE(step_state(at.stored().session, PrepareStep::battery), StepState::not_done);
        // Nobody said that oil went in.
        QCOMPARE(step_state(at.stored().session, PrepareStep::bores_oiled), StepState::not_needed);
        QVERIFY(!prepare.restToSay());
        // Undo takes all of it back, and nothing else.
        at.shop.undo();
        QCOMPARE(prepare.open(), open_before);
        QCOMPARE(step_state(at.stored().session, PrepareStep::battery), StepState::not_done);
    }

    void warm_or_cold_is_noted_by_saying_which() {
        MeasuredVisit at;
        PrepareModel prepare;
        open(prepare, at, at.session);
        const auto state = [&] {
            for (const auto& step : prepare.steps())
                if (step.toMap()["key"] == QLatin1String("temperature noted"))
                    return step.toMap()["state"].toString();
            return QString();
        };
        // Ticked in a library of before, with nothing noted.
        prepare.mark(QStringLiteral("temperature noted"), QStringLiteral("done"));
        at.shop.settle();
        QCOMPARE(state(), QStringLiteral("open"));
        prepare.noteHeat(QStringLiteral("cold"));
        at.shop.settle();
        QCOMPARE(state(), QStringLiteral("done"));
        QCOMPARE(at.stored().session.conditions.heat, EngineHeat::cold);
        prepare.noteHeat(QStringLiteral("cold"));
        at.shop.settle();
        QCOMPARE(at.stored().session.conditions.heat, EngineHeat::unknown);
        prepare.mark(QStringLiteral("temperature noted"), QStringLiteral("not done"));
        at.shop.settle();
        QCOMPARE(state(), QStringLiteral("not done"));
    }

    void whether_the_bores_of_an_engine_that_stood_were_oiled_is_not_guessed() {
        MeasuredVisit at;
        Session stood = at.stored().session;
        stood.complaint.symptoms.push_back(Symptom::stood_long);
        at.shop.desk->run(workflow::save_session(stood));
        at.shop.settle();
        PrepareModel prepare;
        open(prepare, at, at.session);
        prepare.mark(QStringLiteral("battery"), QStringLiteral("done"));
        at.shop.settle();
        prepare.noteHeat(QStringLiteral("warm"));
        at.shop.settle();
        QVERIFY(prepare.restToSay());
        prepare.restIsDone();
        at.shop.settle();
        QCOMPARE(prepare.open(), 1);
        QCOMPARE(step_state(at.stored().session, PrepareStep::bores_oiled), StepState::open);
        QVERIFY(!prepare.restToSay());
    }
};

}  // namespace lapwing

QTEST_GUILESS_MAIN(lapwing::AgainTest)
#include "again_test.moc"

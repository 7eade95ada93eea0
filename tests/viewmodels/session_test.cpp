// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// The session page: its figures tell where they come from, and what it is called without a title.
#include "core/findings/findings.h"
#include "core/workflow/clearances.h"
#include "core/workflow/sessions.h"
#include "core/workflow/testers.h"
#include "qml/viewmodels/engine_card_form.h"
#include "qml/viewmodels/hand_over_model.h"
#include "qml/viewmodels/leak_hunt_model.h"
#include "qml/viewmodels/session_model.h"
#include "qml/viewmodels/visit_form.h"
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

    void clearances_are_counted_by_valve() {
        Shop shop;
        Engine engine = shop.add_engine(QStringLiteral("Lane twin"), 2);
        engine.valves.exhaust_clearance = Sourced<ClearanceRange>{
            {*TypedLength::make("0.15", units::mm), *TypedLength::make("0.20", units::mm)},
            Origin::manual,
            {}};
        shop.desk->run(workflow::save_engine(engine));
        const auto session = shop.open_session(engine, "As found");
        SessionModel model;
        model.setSessionId(text_id(session));
        complete(model, shop);
        const auto keep = [&](int cylinder, ValveSide side, const char* mm) {
            Clearance one;
            one.session = session;
            one.cylinder = cylinder;
            one.side = side;
            one.found = *TypedLength::make(mm, units::mm);
            shop.desk->run(workflow::keep_clearance(one));
            shop.settle();
        };
        const auto shown = [&] { return tile(model, QStringLiteral("clearances")); };
        keep(1, ValveSide::exhaust, "0.18");
        // Nothing to hold it against is on the card.
        keep(2, ValveSide::intake, "0.10");
        QTRY_COMPARE(shown()["text"].toString(), QStringLiteral("2 of 4 valves, 1 in range"));
        QVERIFY(shown()["state"].toString() != QStringLiteral("good"));
        keep(2, ValveSide::exhaust, "0.02");
        QTRY_COMPARE(shown()["text"].toString(), QStringLiteral("3 of 4 valves, fault"));
    }

    void what_the_card_lacks_is_not_asked_for_as_if_nothing_was_found() {
        MeasuredVisit visit(1);
        visit.leak(1, "5.5", "2.7");
        visit.hear(1, Exit::intake, Loudness::strong);
        Clearance found;
        found.session = visit.session;
        found.side = ValveSide::intake;
        found.found = *TypedLength::make("0.02", units::mm);
        visit.shop.desk->run(workflow::keep_clearance(found));
        visit.shop.settle();
        SessionModel model;
        model.setSessionId(text_id(visit.session));
        complete(model, visit.shop);
        // The clearance was measured; what it is to be is not on the card.
        QTRY_COMPARE(model.nextText(), QStringLiteral("Look up the clearance"));
        QCOMPARE(model.nextPage(), QStringLiteral("EngineCard"));
        QCOMPARE(model.nextArgs()["line"].toString(), QStringLiteral("intake_clearance"));
    }

    void names_every_tester_that_it_uses() {
        Shop shop;
        const Engine engine = shop.add_engine(QStringLiteral("Lane twin"), 2);
        const auto id = shop.open_session(engine, "As found");
        for (const auto& [kind, use, name] :
             {std::tuple{TesterKind::compression_gauge, workflow::TesterUse::compression, "Red gauge"},
              std::tuple{TesterKind::leak_down, workflow::TesterUse::leak_down, "Green box"}}) {
            Tester tester;
            tester.id = shop.desk->make_id<TesterId>();
            tester.made_at = shop.clock.now();
            tester.kind = kind;
            tester.name = name;
            tester.gauge.full_scale = TypedPressure::make("16", units::bar).value();
            shop.desk->run(workflow::save_tester(tester));
            shop.desk->run(workflow::choose_tester(id, use, tester.id));
            shop.settle();
        }
        SessionModel model;
        model.setSessionId(text_id(id));
        complete(model, shop);
        QCOMPARE(tile(model, QStringLiteral("visit"))["text"].toString(),
                 QStringLiteral("Red gauge · Green box"));
    }

    void a_second_session_can_be_held_against_the_first() {
        Shop shop;
        const Engine engine = shop.add_engine(QStringLiteral("Lane twin"), 2);
        const auto first = shop.open_session(engine, "As found");
        SessionModel model;
        model.setSessionId(text_id(first));
        complete(model, shop);
        QVERIFY(!model.hasOthers());
        shop.open_session(engine, "After repair");
        shop.settle();
        SessionModel again;
        again.setSessionId(text_id(first));
        complete(again, shop);
        QVERIFY(again.hasOthers());
    }

    void the_crankcase_of_a_twin_is_shown_by_chamber() {
        Shop shop;
        Engine engine = shop.add_engine(QStringLiteral("Moor twin"), 2);
        engine.cycle = StrokeCycle::two;
        engine.crankcase.end_at_least = MeasuredVisit::bar("0.45");
        shop.desk->run(workflow::save_engine(engine));
        const auto session = shop.open_session(engine, "As found");
        SessionModel model;
        model.setSessionId(text_id(session));
        complete(model, shop);
        const auto shown = [&] { return tile(model, QStringLiteral("crankcase")); };
        const auto hold = [&](int cylinder, const char* end) {
            Reading reading;
            reading.session = session;
            reading.test = TestKind::crankcase;
            reading.cylinder = cylinder;
            reading.set = MeasuredVisit::bar("0.50");
            reading.held = MeasuredVisit::bar(end);
            reading.hold = TypedTime::make("3", units::minute).value();
            shop.desk->run(workflow::keep_reading(reading));
            shop.settle();
        };
        hold(1, "0.49");
        QTRY_COMPARE(shown()["figures"].toString(), QStringLiteral("1: 0.49 bar of 0.50 bar"));
        QVERIFY2(shown()["text"].toString().startsWith(QStringLiteral("1 of 2 measured")),
                 qPrintable(shown()["text"].toString()));
        QVERIFY(shown()["state"].toString() != QStringLiteral("good"));
        hold(2, "0.30");
        QTRY_COMPARE(shown()["state"].toString(), QStringLiteral("fault"));
        QVERIFY(shown()["text"].toString().startsWith(QStringLiteral("The crankcase of cylinder 2 fell to")));
        QCOMPARE(shown()["lines"].toList().size(), 4);
    }

    void without_a_title_it_is_named_by_what_was_done() {
        MeasuredVisit visit;
        const auto bare = visit.shop.open_session(
            visit.shop.desk->engine(visit.shop.desk->visit(visit.session)->session.engine).value(), "");
        SessionModel model;
        model.setSessionId(text_id(bare));
        complete(model, visit.shop);
        QVERIFY2(model.visitLine().startsWith(QStringLiteral("Session, nothing measured · ")),
                 qPrintable(model.visitLine()));
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
        QVERIFY2(model.visitLine().startsWith(QStringLiteral("Dry test, leak-down · ")),
                 qPrintable(model.visitLine()));
    }

    void it_has_one_name_wherever_it_is() {
        MeasuredVisit visit;
        const Engine engine =
            visit.shop.desk->engine(visit.shop.desk->visit(visit.session)->session.engine).value();
        const auto names = [&](SessionId id) {
            SessionModel page;
            page.setSessionId(text_id(id));
            complete(page, visit.shop);
            VisitForm conditions;
            conditions.setRecordId(text_id(id));
            complete(conditions, visit.shop);
            EngineCardForm card;
            card.setRecordId(text_id(engine.id));
            complete(card, visit.shop);
            HandOverModel out;
            out.setSessionId(text_id(id));
            complete(out, visit.shop);
            QStringList all{page.visitLine(), conditions.visitLine()};
            for (const auto& one : card.sessionList())
                if (const auto row = one.toMap(); row["sessionId"].toString() == text_id(id))
                    all << row["text"].toString() + QStringLiteral(" · ") +
                               row["detail"].toString().section(QStringLiteral(" · "), 0, 0);
            for (const auto& one : out.visits())
                if (const auto row = one.toMap(); row["id"].toString() == text_id(id))
                    all << row["title"].toString() + QStringLiteral(" · ") + row["date"].toString();
            return all;
        };
        const auto alike = [&](SessionId id) {
            const QStringList all = names(id);
            QCOMPARE(all.size(), 4);
            for (const QString& one : all)
                QCOMPARE(one, all.front());
        };
        alike(visit.session);
        // Of one day, with and without a title: then the clock tells them apart.
        const QString alone = names(visit.session).front();
        const auto bare = visit.shop.open_session(engine, "");
        alike(visit.session);
        alike(bare);
        QVERIFY(names(visit.session).front().startsWith(alone + QLatin1Char(' ')));
        visit.shop.clock.move_by(std::chrono::hours(48));
        const auto later = visit.shop.open_session(engine, "After repair");
        alike(later);
        QVERIFY(names(later).front().startsWith(QStringLiteral("After repair · ")));
    }
};

}  // namespace lapwing

QTEST_MAIN(lapwing::SessionTest)
#include "session_test.moc"

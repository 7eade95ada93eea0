// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/workflow/clearances.h"
#include "core/workflow/engines.h"
#include "qml/viewmodels/findings_model.h"
#include "qml/viewmodels/my_call_model.h"
#include "qml/viewmodels/second_opinion_model.h"
#include "qml/viewmodels/session_model.h"
#include "qml/viewmodels/todo_model.h"
#include "tests/viewmodels/hand_over_shop.h"
#include "tests/viewmodels/measured_visit.h"

namespace lapwing {
namespace {

QVariantMap with(const QVariantList& list, const QString& key, const QString& value) {
    for (const auto& one : list)
        if (one.toMap()[key].toString() == value) return one.toMap();
    return {};
}

/// The thing of that key, in whichever section.
QVariantMap thing(const SecondOpinionModel& model, const QString& key) {
    for (const auto& section : model.sections())
        if (const auto found = with(section.toMap()["things"].toList(), QStringLiteral("key"), key);
            !found.isEmpty())
            return found;
    return {};
}

QStringList texts(const QVariantList& list) {
    QStringList all;
    for (const auto& one : list)
        all << one.toMap()["text"].toString();
    return all;
}

template <class Model>
void open(Model& model, HandingShop& shop) {
    model.setSessionId(text_id(shop.session));
    complete(model, shop);
    shop.settle();
}

}  // namespace

class SecondOpinionTest : public QObject {
    Q_OBJECT

private slots:
    void what_weakens_the_readings_comes_first() {
        HandingShop shop;
        shop.fill();
        Reading second = shop.desk->visit(shop.session)->readings.front();
        second.id = {};
        second.final = TypedPressure::make("8.1", units::bar).value();
        shop.run(workflow::keep_reading(second));
        Tester gauge;
        gauge.id = shop.desk->make_id<TesterId>();
        gauge.made_at = shop.clock.now();
        gauge.name = "Red gauge";
        gauge.gauge.full_scale = TypedPressure::make("16", units::bar).value();
        gauge.checks.push_back(
            {TesterCheckKind::zero_at_rest, shop.clock.now(), CheckResult::failed, {}, {}, {}, ""});
        shop.run(workflow::save_tester(gauge));
        shop.run(workflow::choose_tester(shop.session, workflow::TesterUse::compression, gauge.id));
        shop.run(workflow::mark_step(shop.session,
                                     {PrepareStep::throttle_open, StepState::not_done, "cable seized"}));
        shop.run(workflow::mark_step(shop.session, {PrepareStep::battery, StepState::done, ""}));

        SecondOpinionModel model;
        open(model, shop);
        const auto lines = texts(model.first());
        QCOMPARE(lines[0], QStringLiteral("Red gauge: needle at zero at rest, failed, ") +
                               shop.app->format().shortDate(shop.clock.now()));
        QCOMPARE(model.first()[0].toMap()["mark"].toString(), QStringLiteral("fault"));
        QCOMPARE(lines[1], QStringLiteral("Repeated: Dry test, cylinder 2: 7.7 bar; 8.1 bar"));
        QCOMPARE(lines[2], QStringLiteral("Not done: throttle held open (cable seized)"));
        QVERIFY(lines[3].startsWith(QStringLiteral("Not marked: ")));
        QVERIFY(!lines[3].contains(QStringLiteral("battery")));
    }

    void a_clearance_says_which_valve_where_its_side_has_several() {
        HandingShop shop;
        shop.fill();
        Engine engine = *shop.desk->engine(shop.engine_id);
        engine.valves.intake_valves = 2;
        shop.run(workflow::save_engine(engine));
        for (const auto& [side, valve] :
             {std::pair(ValveSide::intake, 2), std::pair(ValveSide::exhaust, 1)}) {
            Clearance clearance;
            clearance.session = shop.session;
            clearance.cylinder = 1;
            clearance.side = side;
            clearance.valve = valve;
            clearance.found = TypedLength::make("0.10", units::mm).value();
            shop.run(workflow::keep_clearance(clearance));
        }
        SecondOpinionModel model;
        open(model, shop);
        QTRY_VERIFY(!model.sections().isEmpty());
        QStringList titles;
        for (const auto& section : model.sections())
            for (const auto& one : section.toMap()["things"].toList())
                if (const QString title = one.toMap()["title"].toString(); title.startsWith("Clearance"))
                    titles << title;
        titles.sort();
        QCOMPARE(titles, (QStringList{"Clearance, exhaust valve", "Clearance, intake valve 2"}));
    }

    void photos_voice_notes_and_remarks_stand_beside_what_they_belong_to() {
        HandingShop shop;
        shop.fill();
        const Tie on_reading{
            .to = TiedTo::reading, .record = shop.reading_id.uuid, .cylinder = {}, .finding = {}};
        const auto attach = [&](AttachmentKind kind, const Tie& tie, std::string_view bytes) {
            const auto kept =
                shop.desk->files().keep({reinterpret_cast<const unsigned char*>(bytes.data()), bytes.size()});
            Attachment one;
            one.session = shop.session;
            one.kind = kind;
            one.tie = tie;
            one.sha256 = kept->sha256;
            one.bytes = kept->bytes;
            one.media_type = kind == AttachmentKind::photo ? "image/jpeg" : "audio/wav";
            if (kind == AttachmentKind::photo) one.photo_of = PhotoOf::gauge;
            if (kind == AttachmentKind::voice) one.length = TypedTime::make("3", Unit<TimeTag>{}).value();
            shop.run(workflow::save_attachment(one));
        };
        attach(AttachmentKind::photo, on_reading, "a photo");
        attach(AttachmentKind::voice, on_reading, "a voice");
        Note remark = shop.note("The needle stands between two marks");
        remark.tie = on_reading;
        shop.run(workflow::save_note(remark));
        attach(AttachmentKind::voice,
               {.to = TiedTo::note, .record = remark.id.uuid, .cylinder = {}, .finding = {}}, "spoken");

        SecondOpinionModel model;
        open(model, shop);
        QTRY_VERIFY(!model.sections().isEmpty());
        const auto reading = thing(model, QStringLiteral("reading_") + text_id(shop.reading_id));
        QCOMPARE(reading["text"].toString(), QStringLiteral("7.7 bar"));
        QCOMPARE(reading["photos"].toList().size(), 1);
        QVERIFY(QUrl(reading["photos"].toList()[0].toMap()["file"].toString()).isLocalFile());
        QCOMPARE(reading["voices"].toList().size(), 1);
        const auto note = reading["notes"].toList().value(0).toMap();
        QCOMPARE(note["text"].toString(), QStringLiteral("The needle stands between two marks"));
        QVERIFY(note["detail"].toString().startsWith(QStringLiteral("The mentor")));
        QCOMPARE(note["voices"].toList().size(), 1);
        // Another person's remark is theirs to change.
        QVERIFY(!note["mine"].toBool());
        shop.settings->setAuthor(QStringLiteral("The mentor"));
        model.setSessionId({});
        model.setSessionId(text_id(shop.session));
        QVERIFY(thing(model, reading["key"].toString())["notes"].toList()[0].toMap()["mine"].toBool());
    }

    void the_mentor_adds_a_note_another_cause_and_asks_for_a_test() {
        HandingShop shop;
        shop.fill();
        shop.settings->setAuthor(QStringLiteral("Kim"));
        SecondOpinionModel model;
        open(model, shop);
        QTRY_VERIFY(!thing(model, QStringLiteral("finding_2")).isEmpty());
        QSignalSpy kept(&model, &SecondOpinionModel::noteKept);
        const auto keep = [&](const QString& key, const QVariantMap& more, bool speak = false) {
            auto note = thing(model, key);
            note.insert(more);
            shop.clock.move_by(std::chrono::seconds(1));
            model.keepNote(note, speak);
            shop.settle();
        };
        keep(QStringLiteral("reading_") + text_id(shop.reading_id), {{"kind", "note"}, {"text", " Cold? "}});
        keep(QStringLiteral("finding_2"), {{"kind", "other cause"}, {"cause", "intake"}, {"test", "wet"}});
        keep(QStringLiteral("cylinder_2"), {{"kind", "please test this"}, {"test", "leak-down"}}, true);
        QCOMPARE(kept.size(), 3);
        QVERIFY(kept[2][1].toBool());

        const auto notes = shop.desk->visit(shop.session)->notes;
        QCOMPARE(notes.size(), 3u);
        QCOMPARE(notes[0].text, std::string("Cold?"));
        QCOMPARE(notes[0].tie.record, std::optional(shop.reading_id.uuid));
        QCOMPARE(notes[1].cause, std::optional(Cause::intake));
        QVERIFY(!notes[1].test);  // left over from another choice
        QCOMPARE(notes[1].tie.to, TiedTo::finding);
        QVERIFY(!notes[1].tie.finding.empty());
        QCOMPARE(notes[2].test, std::optional(TestKind::leak_down));
        for (const auto& note : notes)
            QCOMPARE(note.author, std::string("Kim"));
        // A remark on a finding stays where it was put.
        QCOMPARE(thing(model, QStringLiteral("finding_2"))["notes"].toList().size(), 1);

        auto first =
            with(thing(model, QStringLiteral("reading_") + text_id(shop.reading_id))["notes"].toList(),
                 QStringLiteral("text"), QStringLiteral("Cold?"));
        first["text"] = QStringLiteral("Cold, I think");
        model.keepNote(first, false);
        shop.settle();
        QCOMPARE(shop.kept(notes[0].id).text, std::string("Cold, I think"));
        QCOMPARE(shop.kept(notes[0].id).tie, notes[0].tie);
        model.removeNote(text_id(notes[0].id));
        shop.settle();
        QCOMPARE(shop.desk->visit(shop.session)->notes.size(), 2u);
    }

    void remarks_hang_on_the_headline_a_contradiction_and_a_line_of_the_odds() {
        MeasuredVisit visit(3);
        visit.burnt_valve();
        // The third reads well and leaks like a sieve.
        visit.dry(3, "9.7");
        visit.leak(3, "5.5", "2.2");
        visit.shop.settings->setAuthor(QStringLiteral("Kim"));
        visit.shop.settle();
        SecondOpinionModel model;
        model.setSessionId(text_id(visit.session));
        complete(model, visit.shop);
        const auto odds = [&] {
            return with(model.sections(), QStringLiteral("title"), QStringLiteral("Where it leaks"))["things"]
                .toList();
        };
        QTRY_VERIFY_WITH_TIMEOUT(!odds().isEmpty(), 60'000);
        // The same odds that the findings show, line by line.
        FindingsModel mechanic;
        mechanic.setSessionId(text_id(visit.session));
        complete(mechanic, visit.shop);
        QTRY_VERIFY_WITH_TIMEOUT(mechanic.oddsState() == QStringLiteral("ready"), 60'000);
        QTRY_VERIFY(!mechanic.cylinders().isEmpty());
        QStringList seen, shown;
        for (const auto& cylinder : mechanic.cylinders()) {
            const auto map = cylinder.toMap()["odds"].toMap();
            seen << map["headline"].toString();
            for (const auto& share : map["shares"].toList())
                seen << share.toMap()["figure"].toString();
        }
        for (const auto& one : odds())
            shown << one.toMap()["text"].toString();
        QCOMPARE(shown, seen);

        const auto keep = [&](const QString& key, const char* text) {
            auto note = thing(model, key);
            QVERIFY2(!note.isEmpty(), qPrintable(key));
            note.insert({{"kind", "note"}, {"text", text}});
            visit.shop.clock.move_by(std::chrono::seconds(1));
            model.keepNote(note, false);
            visit.shop.settle();
        };
        const auto texts_on = [&](const QString& key) { return texts(thing(model, key)["notes"].toList()); };
        const QString exhaust = QStringLiteral("finding_2_where_it_leaks:_exhaust");
        keep(QStringLiteral("finding"), "Of the engine");
        keep(QStringLiteral("finding_2"), "Of the cylinder");
        keep(QStringLiteral("finding_2_where_it_leaks"), "Of the odds");
        keep(exhaust, "Of one line");
        QString contradiction;
        for (const auto& section : model.sections())
            for (const auto& one : section.toMap()["things"].toList())
                if (one.toMap()["title"].toString() == QStringLiteral("Contradiction"))
                    contradiction = one.toMap()["key"].toString();
        QVERIFY(!contradiction.isEmpty());
        keep(contradiction, "Of the contradiction");
        QCOMPARE(texts_on(QStringLiteral("finding")), QStringList("Of the engine"));
        QCOMPARE(texts_on(QStringLiteral("finding_2")), QStringList("Of the cylinder"));
        QCOMPARE(texts_on(QStringLiteral("finding_2_where_it_leaks")), QStringList("Of the odds"));
        QCOMPARE(texts_on(exhaust), QStringList("Of one line"));
        QCOMPARE(texts_on(contradiction), QStringList("Of the contradiction"));

        // Found no longer: the remark stays with the cylinder's findings.
        Note gone;
        gone.id = visit.shop.desk->make_id<NoteId>();
        gone.session = visit.session;
        gone.text = "Of what was found once";
        gone.author = "Kim";
        gone.tie = {.to = TiedTo::finding, .record = {}, .cylinder = 2, .finding = "contradiction.gone"};
        visit.shop.desk->run(workflow::save_note(gone));
        visit.shop.settle();
        QVERIFY(texts_on(QStringLiteral("finding_2")).contains(QStringLiteral("Of what was found once")));
    }

    void a_test_that_is_asked_for_is_a_to_do_until_it_is_ticked() {
        HandingShop shop;
        shop.fill();
        Note request = shop.note("Before any oil", NoteKind::test_request);
        request.test = TestKind::leak_down;
        request.tie = {.to = TiedTo::reading, .record = shop.reading_id.uuid, .cylinder = {}, .finding = {}};
        shop.run(workflow::save_note(request));
        shop.run(workflow::save_note(shop.note("Nicely kept")));
        TodoModel model;
        open(model, shop);
        QCOMPARE(model.open(), 1);
        const auto todo = model.todos()[0].toMap();
        QCOMPARE(todo["text"].toString(), QStringLiteral("Leak-down, cylinder 2"));
        QCOMPARE(todo["detail"].toString(), QStringLiteral("Before any oil · asked by The mentor"));
        QCOMPARE(todo["page"].toString(), QStringLiteral("Pad"));
        QCOMPARE(todo["args"].toMap()["cylinder"].toInt(), 2);
        // One of a thing is said by lapwing_en.ts, which the app alone loads.
        QCOMPARE(model.remarksText(), QStringLiteral("1 notes, 1 tests asked for"));
        model.tick(todo["id"].toString());
        shop.settle();
        QCOMPARE(model.open(), 0);
        QVERIFY(model.todos()[0].toMap()["done"].toBool());
        QVERIFY(shop.kept(request.id).done);
        model.tick(todo["id"].toString());
        shop.settle();
        QVERIFY(!shop.kept(request.id).done);
    }

    void a_check_that_is_asked_for_opens_where_it_is_done() {
        HandingShop shop;
        shop.fill();
        SecondOpinionModel mentor;
        open(mentor, shop);
        const auto ask = [&](const QString& check, const QVariantMap& tied) {
            QVariantMap note{{"kind", "please test this"}, {"test", check}};
            note.insert(tied);
            mentor.keepNote(note, false);
            shop.settle();
        };
        QStringList offered;
        for (const auto& one : mentor.tests())
            offered << one.toMap()["value"].toString();
        for (const char* check : {"leak hunt", "clearances", "staking", "tester check"}) {
            QVERIFY2(offered.contains(QLatin1String(check)), check);
            ask(QLatin1String(check), {{"to", "cylinder"}, {"cylinder", 2}});
        }
        Tester gauge;
        gauge.id = shop.desk->make_id<TesterId>();
        gauge.made_at = shop.clock.now();
        gauge.name = "Red gauge";
        gauge.gauge.full_scale = TypedPressure::make("16", units::bar).value();
        shop.run(workflow::save_tester(gauge));
        const QString tester = text_id(gauge.id);
        ask(QStringLiteral("tester check"), {{"to", "tester"}, {"record", tester}});
        TodoModel model;
        open(model, shop);
        QCOMPARE(model.open(), 5);
        QStringList places;
        for (const auto& one : model.todos()) {
            const auto todo = one.toMap();
            const auto args = todo["args"].toMap();
            places << todo["text"].toString() + QStringLiteral(" > ") + todo["page"].toString() +
                          (args.contains("cylinder") ? QStringLiteral(" ") + args["cylinder"].toString()
                                                     : QString()) +
                          (args["testerId"].toString() == tester ? QStringLiteral(" it") : QString());
        }
        places.sort();
        QCOMPARE(places.size(), 5);
        QCOMPARE(places, (QStringList{
                             "Leak hunt, cylinder 2 > LeakHunt 2", "Staking a valve, cylinder 2 > LeakHunt 2",
                             "Tester check, Red gauge > TesterCard it", "Tester check, cylinder 2 > Testers",
                             "Valve clearances, cylinder 2 > Clearances 2"}));
    }

    void my_call_comes_before_the_findings_and_stands() {
        HandingShop shop;
        shop.fill();
        const auto findings_tile = [&] {
            SessionModel session;
            open(session, shop);
            return with(session.tiles(), QStringLiteral("key"), QStringLiteral("findings"))["text"]
                .toString();
        };
        MyCallModel model;
        open(model, shop);
        QVERIFY(!model.wanted());  // nobody asked for it
        shop.settings->setCallFirst(true);
        shop.settings->setAuthor(QStringLiteral("Kim"));
        QVERIFY(model.wanted());
        QCOMPARE(findings_tile(), QStringLiteral("Your own call first"));
        QCOMPARE(model.cylinders().size(), 1);  // only what was measured
        const auto told = model.cylinders()[0].toMap()["measured"].toString();
        QVERIFY2(told.contains(QStringLiteral("bar")) && !told.contains(QStringLiteral("fault")),
                 qPrintable(told));
        QVERIFY(!model.complete());
        model.commit();
        shop.settle();
        QVERIFY(model.wanted());
        model.choose(2, QStringLiteral("rings"));
        model.write(2, QStringLiteral("Oil in the breather"));
        shop.settle();

        // What is chosen and not yet committed outlives the page.
        MyCallModel again;
        open(again, shop);
        QCOMPARE(again.cylinders()[0].toMap()["causes"].toStringList(), QStringList{QStringLiteral("rings")});
        QVERIFY(again.complete());
        QSignalSpy undoable(shop.app.get(), &AppContext::stepDone);
        again.commit();
        shop.settle();
        QVERIFY(!again.wanted());
        QVERIFY(!model.wanted());
        QCOMPARE(undoable.size(), 0);
        QVERIFY(findings_tile() != QStringLiteral("Your own call first"));
        FindingsModel findings;
        open(findings, shop);
        QCOMPARE(findings.calls()[0].toMap()["number"].toInt(), 2);
        const auto call = findings.calls()[0].toMap()["calls"].toList()[0].toMap();
        QCOMPARE(call["text"].toString(), QStringLiteral("Rings"));
        QVERIFY(call["detail"].toString().startsWith(QStringLiteral("Oil in the breather · Kim")));

        // The mentor sees both, and whose call it is.
        SecondOpinionModel mentor;
        open(mentor, shop);
        QTRY_VERIFY(!thing(mentor, QStringLiteral("finding_2"))["text"].toString().isEmpty());
        const auto seen = thing(mentor, QStringLiteral("cylinder_2"))["notes"].toList()[0].toMap();
        QCOMPARE(seen["heading"].toString(), QStringLiteral("My call: rings"));
        QVERIFY(!seen["mine"].toBool());
        mentor.removeNote(seen["id"].toString());
        shop.settle();
        QCOMPARE(findings.calls().size(), 1);
        QVERIFY(shop.told.last().contains(QStringLiteral("stands as it was committed")));

        // Another cause that is named since stands beside it.
        auto other = thing(mentor, QStringLiteral("finding_2"));
        other.insert(QVariantMap{{"kind", "other cause"}, {"cause", "intake"}});
        mentor.keepNote(other, false);
        shop.settle();
        QCOMPARE(findings.calls().size(), 2);
        const auto named = findings.calls()[1].toMap()["calls"].toList()[0].toMap();
        QVERIFY(named["text"].toString().startsWith(QStringLiteral("Another cause: Cylinder 2: ")));
    }

    void nobody_is_held_up_by_a_call() {
        HandingShop shop;
        shop.fill();
        shop.settings->setCallFirst(true);
        MyCallModel model;
        open(model, shop);
        QVERIFY(model.wanted());
        model.skip();
        QVERIFY(!model.wanted());
        shop.settle();
        MyCallModel again;
        open(again, shop);
        QVERIFY(!again.wanted());
        FindingsModel findings;
        open(findings, shop);
        QVERIFY(findings.calls().isEmpty());
    }
};

}  // namespace lapwing

QTEST_GUILESS_MAIN(lapwing::SecondOpinionTest)
#include "second_opinion_test.moc"

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// "My call" before the findings: until it is committed no page says or shows what the readings mean.
#include <QSignalSpy>
#include <QTest>

#include "qml/viewmodels/changes_model.h"
#include "qml/viewmodels/engine_list_model.h"
#include "qml/viewmodels/findings_model.h"
#include "qml/viewmodels/hand_over_model.h"
#include "qml/viewmodels/my_call_model.h"
#include "qml/viewmodels/pad_model.h"
#include "qml/viewmodels/session_model.h"
#include "tests/viewmodels/measured_visit.h"

namespace lapwing {
namespace {

const QString waiting = QStringLiteral("waiting");

/// A learner with a burnt exhaust valve on the second of two cylinders.
class Learner {
public:
    explicit Learner(int cylinders = 2) : visit(cylinders) {
        visit.burnt_valve();
        visit.shop.settings->setCallFirst(true);
        visit.shop.settings->setAuthor(QStringLiteral("Kim"));
    }
    template <class Model>
    void open(Model& model) {
        model.setSessionId(text_id(visit.session));
        complete(model, visit.shop);
        visit.shop.settle();
    }
    void call() {
        MyCallModel mine;
        open(mine);
        mine.choose(1, QStringLiteral("seals well"));
        mine.choose(2, QStringLiteral("rings"));
        mine.commit();
        visit.shop.settle();
    }

    MeasuredVisit visit;
};

QVariantMap tile(const SessionModel& model, const QString& key) {
    for (const auto& one : model.tiles())
        if (one.toMap()["key"].toString() == key) return one.toMap();
    return {};
}

QStringList states(const QVariantList& bores) {
    QStringList all;
    for (const auto& one : bores)
        all << one.toMap()["state"].toString();
    return all;
}

QStringList marks(const QVariantList& lines) {
    QStringList all;
    for (const auto& one : lines)
        if (const auto mark = one.toMap()["mark"].toString(); !mark.isEmpty()) all << mark;
    return all;
}

}  // namespace

class MyCallTest : public QObject {
    Q_OBJECT

private slots:
    void the_session_shows_readings_and_no_verdicts() {
        Learner learner;
        SessionModel session;
        learner.open(session);
        // The bores stand at their readings once the findings are there.
        QTRY_VERIFY(tile(session, QStringLiteral("dry"))["bores"].toList()[1].toMap()["measured"].toBool());
        for (const auto& key : {QStringLiteral("dry"), QStringLiteral("leak-down")}) {
            QCOMPARE(tile(session, key)["state"].toString(), waiting);
            QCOMPARE(states(tile(session, key)["bores"].toList()), QStringList({waiting, waiting}));
        }
        QVERIFY(tile(session, QStringLiteral("dry"))["figures"].toString().contains(QStringLiteral("6.1")));
        QVERIFY(tile(session, QStringLiteral("dry"))["figures"].toString().contains(
            QStringLiteral("factory limit")));
        QVERIFY(!tile(session, QStringLiteral("dry"))["figures"].toString().contains(
            QStringLiteral("model expects")));
        QCOMPARE(tile(session, QStringLiteral("findings"))["text"].toString(),
                 QStringLiteral("Your own call first"));
        QCOMPARE(session.nextText(), QStringLiteral("Findings"));
        QCOMPARE(session.nextReason(),
                 QStringLiteral("Measure what you want to know, then make your own call."));
        QCOMPARE(session.nextPage(), QStringLiteral("Findings"));

        learner.call();
        QTRY_VERIFY(states(tile(session, QStringLiteral("dry"))["bores"].toList())[1] ==
                    QStringLiteral("fault"));
        QCOMPARE(tile(session, QStringLiteral("leak-down"))["state"].toString(), QStringLiteral("fault"));
        QVERIFY(session.nextReason() !=
                QStringLiteral("Measure what you want to know, then make your own call."));
    }

    void what_is_next_whatever_was_measured_is_still_said() {
        Learner learner(3);  // nothing was measured on the third
        SessionModel session;
        learner.open(session);
        QTRY_COMPARE(session.nextPage(), QStringLiteral("Pad"));
        QCOMPARE(session.nextArgs()["cylinder"].toInt(), 3);
    }

    void the_pad_shows_figures_and_no_verdicts() {
        Learner learner;
        const auto open_pad = [&](PadModel& pad, const char* test) {
            pad.setTest(QString::fromLatin1(test));
            learner.open(pad);
        };
        PadModel dry, leak;
        open_pad(dry, "dry");
        open_pad(leak, "leak-down");
        QTRY_VERIFY(dry.cylinders()[1].toMap()["measured"].toBool());
        QTRY_VERIFY(leak.cylinders()[1].toMap()["measured"].toBool());
        QCOMPARE(states(dry.cylinders()), QStringList({waiting, waiting}));
        QCOMPARE(states(leak.cylinders()), QStringList({waiting, waiting}));
        const auto type = [](PadModel& pad, const QString& digits) {
            for (const QChar key : digits)
                pad.press(QString(key));
        };
        type(dry, QStringLiteral("6.0"));
        type(leak, QStringLiteral("3.0"));
        QVERIFY(!dry.lines().isEmpty());
        QVERIFY(!leak.lines().isEmpty());
        QCOMPARE(marks(dry.lines()), QStringList());
        QCOMPARE(marks(leak.lines()), QStringList());

        learner.call();
        QTRY_VERIFY(states(dry.cylinders())[1] == QStringLiteral("fault"));
        QTRY_VERIFY(marks(dry.lines()).contains(QStringLiteral("fault")));
        QTRY_VERIFY(marks(leak.lines()).contains(QStringLiteral("fault")));
    }

    void nothing_is_judged_while_the_first_reading_is_typed() {
        Learner learner;
        MeasuredVisit& visit = learner.visit;
        const auto engine = visit.shop.desk->engine(visit.shop.desk->engines()[0].id);
        visit.session = visit.shop.open_session(*engine, "Another day");
        PadModel pad;
        pad.setTest(QStringLiteral("dry"));
        learner.open(pad);
        for (const auto& key : {QStringLiteral("6"), QStringLiteral("."), QStringLiteral("0")})
            pad.press(key);
        QVERIFY(!pad.lines().isEmpty());
        QCOMPARE(marks(pad.lines()), QStringList());
        visit.shop.settings->setCallFirst(false);
        pad.press(QStringLiteral("1"));
        QVERIFY(marks(pad.lines()).contains(QStringLiteral("fault")));
    }

    void the_list_of_engines_gives_nothing_away() {
        Learner learner;
        EngineListModel list;
        complete(list, learner.visit.shop);
        list.setProperty("looking", true);
        const auto bores = [&] { return list.data(list.index(0), EngineListModel::BoresRole).toList(); };
        const auto state = [&] {
            return list.data(list.index(0), EngineListModel::BoreStateRole).toString();
        };
        QTRY_VERIFY(bores().value(1).toMap()["measured"].toBool());
        QCOMPARE(states(bores()), QStringList({waiting, waiting}));
        QCOMPARE(state(), waiting);
        learner.call();
        QTRY_COMPARE(state(), QStringLiteral("fault"));
    }

    void a_known_fault_of_an_earlier_visit_stays_in_the_list() {
        Learner learner;
        auto& visit = learner.visit;
        learner.call();
        EngineListModel list;
        complete(list, visit.shop);
        const auto state = [&] {
            return list.data(list.index(0), EngineListModel::BoreStateRole).toString();
        };
        const auto bores = [&] { return list.data(list.index(0), EngineListModel::BoresRole).toList(); };
        QTRY_COMPARE(state(), QStringLiteral("fault"));
        const auto engine = *visit.shop.desk->engine(visit.stored().session.engine);
        visit.shop.clock.move_by(std::chrono::hours(1));
        visit.session = visit.shop.open_session(engine, "A year later");
        visit.dry(1, "9.8");
        visit.dry(2, "9.7");
        visit.shop.settle();
        // The new readings are not judged before the call; what the visit before found is known.
        QTRY_COMPARE(states(bores()), QStringList({waiting, waiting}));
        QCOMPARE(state(), QStringLiteral("fault"));
        MyCallModel mine;
        learner.open(mine);
        mine.skip();
        list.lookAgain();
        // Judged they read well; the leak that air found is one until air is put on again.
        QTRY_COMPARE(states(bores()), QStringList({QStringLiteral("good"), QStringLiteral("good")}));
        QCOMPARE(state(), QStringLiteral("fault"));
        QVERIFY(list.data(list.index(0), EngineListModel::BoreEarlierRole).toBool());
        visit.leak(1, "5.5", "5.3");
        visit.leak(2, "5.5", "5.3");
        visit.shop.settle();
        QTRY_COMPARE(state(), QStringLiteral("good"));
    }

    void before_and_after_gives_nothing_away_either() {
        Learner learner;
        auto& visit = learner.visit;
        learner.call();
        const auto engine = *visit.shop.desk->engine(visit.stored().session.engine);
        visit.shop.clock.move_by(std::chrono::hours(1));
        visit.session = visit.shop.open_session(engine, "A year later");
        visit.dry(1, "9.8");
        visit.dry(2, "5.1");
        visit.shop.settle();
        const auto dry_of_2 = [](const ChangesModel& changes) {
            return changes.cylinders().value(1).toMap()["tests"].toList().value(0).toMap();
        };
        const auto look = [&](ChangesModel& changes) {
            changes.setEngineId(text_id(engine.id));
            complete(changes, visit.shop);
            QTRY_VERIFY(changes.ready());
        };
        ChangesModel before;
        look(before);
        QCOMPARE(dry_of_2(before)["before"].toMap()["state"].toString(), QStringLiteral("fault"));
        QCOMPARE(dry_of_2(before)["after"].toMap()["state"].toString(), waiting);
        QCOMPARE(dry_of_2(before)["verdict"].toString(), QStringLiteral("none"));
        QCOMPARE(dry_of_2(before)["word"].toString(), QStringLiteral("after your own call"));
        QVERIFY(dry_of_2(before)["afterText"].toString().contains(QStringLiteral("5.1")));
        learner.call();
        ChangesModel after;
        look(after);
        QCOMPARE(dry_of_2(after)["after"].toMap()["state"].toString(), QStringLiteral("fault"));
        QVERIFY(dry_of_2(after)["verdict"].toString() != QStringLiteral("none"));
    }

    void more_than_one_cause_can_be_called() {
        Learner learner;
        MyCallModel mine;
        learner.open(mine);
        const auto causes = [&](int at) {
            return mine.cylinders().value(at).toMap()["causes"].toStringList();
        };
        mine.choose(1, QStringLiteral("seals well"));
        mine.choose(2, QStringLiteral("rings"));
        mine.choose(2, QStringLiteral("exhaust"));
        mine.write(2, QStringLiteral("Hissing at the pipe"));
        QCOMPARE(causes(1), QStringList({QStringLiteral("rings"), QStringLiteral("exhaust")}));
        // What seals well leaks nowhere, and the other way round.
        mine.choose(1, QStringLiteral("rings"));
        QCOMPARE(causes(0), QStringList{QStringLiteral("rings")});
        mine.choose(1, QStringLiteral("seals well"));
        QCOMPARE(causes(0), QStringList{QStringLiteral("seals well")});
        mine.choose(1, QStringLiteral("seals well"));
        QVERIFY(!mine.complete());
        mine.choose(1, QStringLiteral("seals well"));
        QVERIFY(mine.complete());
        mine.commit();
        learner.visit.shop.settle();
        std::vector<Note> of_2;
        for (const auto& note : learner.visit.stored().notes)
            if (note.tie.cylinder == 2) of_2.push_back(note);
        QCOMPARE(of_2.size(), 2u);
        QCOMPARE(of_2[0].text + of_2[1].text, std::string("Hissing at the pipe"));
        FindingsModel findings;
        learner.open(findings);
        const auto calls = findings.calls();
        QCOMPARE(calls.size(), 2);
        QCOMPARE(calls[0].toMap()["calls"].toList().size(), 1);
        QCOMPARE(calls[1].toMap()["calls"].toList().size(), 2);
    }

    /// Each call stands beside the finding of its cylinder, and it is said whether they name the same.
    void a_call_stands_beside_the_finding_with_same_or_different() {
        Learner learner;
        MyCallModel mine;
        learner.open(mine);
        mine.choose(1, QStringLiteral("rings"));    // it is sound
        mine.choose(2, QStringLiteral("exhaust"));  // a burnt valve
        mine.commit();
        learner.visit.shop.settle();
        FindingsModel findings;
        learner.open(findings);
        QTRY_VERIFY_WITH_TIMEOUT(findings.oddsState() == QStringLiteral("ready"), 30'000);
        const auto calls = findings.calls();
        QCOMPARE(calls.size(), 2);
        const auto one = calls[0].toMap(), two = calls[1].toMap();
        QCOMPARE(one["number"].toInt(), 1);
        QCOMPARE(two["calls"].toList()[0].toMap()["text"].toString(), QStringLiteral("Exhaust valve"));
        for (const auto& each : {one, two})
            QVERIFY(each["finding"].toString().contains(
                QStringLiteral("ylinder %1").arg(each["number"].toInt())));
        QVERIFY2(!one.contains(QStringLiteral("same")) || !one["same"].toBool(),
                 qPrintable(one["finding"].toString()));
        // Without the clearance nothing is said against a valve; "same" compares with the likeliest path all
        // the same.
        QVERIFY2(two["same"].toBool(), qPrintable(two["finding"].toString()));
    }

    void a_report_that_was_written_before_is_said() {
        Learner learner;
        auto& shop = learner.visit.shop;
        HandOverModel out;
        learner.open(out);
        QVERIFY(out.beforeCall());
        MyCallModel mine;
        learner.open(mine);
        QSignalSpy made(&out, &HandOverModel::madeChanged);
        out.make(QStringLiteral("table"));
        QVERIFY(made.wait(20'000));
        QVERIFY(!mine.reported());  // readings only
        out.make(QStringLiteral("report"));
        QVERIFY(made.wait(60'000));
        shop.settle();
        QVERIFY(mine.reported());
        // What is chosen afterwards doesn't wash it off.
        mine.choose(1, QStringLiteral("seals well"));
        mine.choose(2, QStringLiteral("exhaust"));
        mine.write(2, QStringLiteral("I heard it"));
        QVERIFY(mine.reported());
        mine.commit();
        shop.settle();
        QVERIFY(!out.beforeCall());
        FindingsModel findings;
        learner.open(findings);
        QString said;
        for (const auto& call : findings.calls())
            if (call.toMap()["number"].toInt() == 2)
                said = call.toMap()["calls"].toList()[0].toMap()["detail"].toString().section(
                    QStringLiteral(" · "), 0, 0);
        QCOMPARE(said, QStringLiteral("I heard it (Called after a report with the findings was written.)"));
    }
};

}  // namespace lapwing

QTEST_MAIN(lapwing::MyCallTest)
#include "my_call_test.moc"

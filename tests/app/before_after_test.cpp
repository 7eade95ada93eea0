// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// Before and after by touch: from the list of engines to a difference and where it comes from, and the
// history on the engine's card. With the demo V-twin: as found, after the repair, a year later.
#include <QTest>

#include "core/exchange/session_file.h"
#include "core/workflow/bring_in.h"
#include "tests/app/harness/errands.h"

namespace lapwing::test {

#define DO(action) QVERIFY2(action, qPrintable(errands.why() + " / " + thumb.why() + " / " + phone.why()))

class BeforeAfterTest : public QObject {
    Q_OBJECT

    static QString bring_in_demo(Phone& phone) {
        const auto read = exchange::read_session_file(
            std::string(LAPWING_FIXTURES) + "/../../assets/demo/orchard-v-twin.lapwing", phone.folder());
        if (!read || !phone.run(workflow::bring_in(read->dossier))) return {};
        return QString::fromStdString(read->dossier.engine.id.text());
    }

private slots:
    void two_visits_are_compared() {
        Phone phone;
        QVERIFY2(phone.on(), qPrintable(phone.why()));
        auto& thumb = phone.thumb();
        Errands errands(phone);
        const QString engine = bring_in_demo(phone);
        QVERIFY(!engine.isEmpty());
        phone.go(QStringLiteral("EngineCard"), {{"engineId", engine}});
        DO(thumb.touch(QStringLiteral("beforeAfter")));
        DO(phone.arrives(QStringLiteral("Changes")));
        // The last two visits to begin with: cylinder 2 has lost since the repair.
        DO(thumb.reads(QStringLiteral("A year later")));
        auto* rear = thumb.find(QStringLiteral("changes_2"));
        QVERIFY(rear);
        DO(thumb.reads(QStringLiteral("worse"), 5000, rear));

        // As found against after the repair: 6.8 and 6.4, then 10.4 and 10.2 bar stand in the demo.
        DO(thumb.touch(QStringLiteral("chooseAfter")));
        DO(thumb.reads(QStringLiteral("After the repair")));
        DO(thumb.touch(option(phone, QStringLiteral("After the repair"))));
        DO(thumb.touch(QStringLiteral("chooseBefore")));
        DO(thumb.reads(QStringLiteral("As found")));
        DO(thumb.touch(option(phone, QStringLiteral("As found"))));
        DO(thumb.reads(QStringLiteral("+3.7 bar ±")));
        DO(thumb.reads(QStringLiteral("better beyond doubt")));
        auto* front = thumb.find(QStringLiteral("changes_1"));
        QVERIFY(front);
        DO(thumb.reads(QStringLiteral("was predicted: it held"), 5000, front));
        DO(thumb.touch(QStringLiteral("change_dry"), front));
        DO(thumb.reads(QStringLiteral("Where does this come from")));
        DO(thumb.reads(QStringLiteral("its zero error cancels")));
    }

    void the_ring_leak_is_coming_back() {
        Phone phone;
        QVERIFY2(phone.on(), qPrintable(phone.why()));
        auto& thumb = phone.thumb();
        Errands errands(phone);
        const QString engine = bring_in_demo(phone);
        phone.go(QStringLiteral("EngineCard"), {{"engineId", engine}});
        DO(thumb.appears(QStringLiteral("sinceRepair_2")));
        DO(thumb.reads(QStringLiteral("is coming back")));
        QVERIFY(!thumb.sees(QStringLiteral("sinceRepair_1")));
        DO(thumb.touch(QStringLiteral("historyList")));
        DO(thumb.appears(QStringLiteral("history_2")));
        DO(thumb.reads(QStringLiteral("after a repair"), 5000, thumb.find(QStringLiteral("history_2"))));
        DO(thumb.touch(QStringLiteral("choice_dry")));
        DO(thumb.reads(QStringLiteral("10.0 bar")));
    }

    void the_findings_of_that_visit_say_so_too() {
        Phone phone;
        QVERIFY2(phone.on(), qPrintable(phone.why()));
        auto& thumb = phone.thumb();
        Errands errands(phone);
        const QString engine = bring_in_demo(phone);
        QVERIFY(!engine.isEmpty());
        QStringList sessions;
        const auto dossier = phone.desk().dossier(EngineId::parse(engine.toStdString()).value());
        for (const auto& visit : dossier->visits)
            sessions << QString::fromStdString(visit.session.id.text());
        QCOMPARE(sessions.size(), 3);
        phone.go(QStringLiteral("Findings"), {{"sessionId", sessions[2]}});
        DO(thumb.appears(QStringLiteral("findings_2")));
        DO(thumb.reads(QStringLiteral("is coming back"), 20000, thumb.find(QStringLiteral("findings_2"))));
        DO(thumb.reads(QStringLiteral("worse beyond doubt"), 5000, thumb.find(QStringLiteral("findings_2"))));
        // The panels are built anew when the odds arrive: looked up at that moment.
        const auto* sound = thumb.find(QStringLiteral("findings_1"));
        QVERIFY(!sound || !thumb.words(sound).join(u'\n').contains(QStringLiteral("is coming back")));
        phone.go(QStringLiteral("Findings"), {{"sessionId", sessions[1]}});
        DO(thumb.appears(QStringLiteral("nextSteps")));
        QVERIFY(!thumb.reads(QStringLiteral("is coming back"), 1500));
    }

private:
    /// Name of the option in the open sheet that begins with this text.
    static QString option(Phone& phone, const QString& title) {
        QString found;
        const std::function<void(QQuickItem*)> look = [&](QQuickItem* item) {
            if (item->objectName().startsWith(QLatin1String("option_")) &&
                item->property("text").toString().startsWith(title))
                found = item->objectName();
            for (auto* child : item->childItems())
                look(child);
        };
        if (auto* sheet = phone.thumb().overlay()) look(sheet);
        return found;
    }
};

}  // namespace lapwing::test

LAPWING_APP_TEST_MAIN(lapwing::test::BeforeAfterTest)
#include "before_after_test.moc"

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <QFile>

#include "core/exchange/session_file.h"
#include "core/workflow/readings.h"
#include "qml/viewmodels/bring_in_model.h"
#include "tests/viewmodels/shop.h"

namespace lapwing {

class BringInTest : public QObject {
    Q_OBJECT

private:
    /// A session file that another shop wrote: one engine, one session, one reading.
    static QString file_from_elsewhere(const QTemporaryDir& folder) {
        Shop sender;
        const Engine engine = sender.add_engine(QStringLiteral("Orchard V-twin"), 2, Arrangement::vee);
        Reading reading;
        reading.session = sender.open_session(engine, "As found");
        reading.cylinder = 2;
        reading.final = TypedPressure::make("7.7", units::bar).value();
        sender.desk->run(workflow::keep_reading(reading));
        sender.settle();
        exchange::Outgoing outgoing;
        outgoing.dossier = sender.desk->dossier(engine.id).value();
        outgoing.at = sender.clock.now();
        const QString file = folder.filePath(QStringLiteral("visit.lapwing"));
        const auto written = exchange::write_session_file(file.toStdString(), outgoing);
        if (!written) qFatal("%s", written.error().english.c_str());
        return file;
    }

    struct Receiver {
        Receiver() { model.setApp(shop.app.get()); }
        bool open(const QString& file) {
            shop.fake.filePicker.answers.push_back(std::optional<QString>(file));
            QSignalSpy ready(&model, &BringInModel::previewReady);
            model.openSessionFile();
            return ready.wait();
        }
        bool bring_in() {
            QSignalSpy done(&model, &BringInModel::broughtIn);
            model.bringIn();
            return done.size() == 1 || done.wait();
        }
        QString detail() const {
            return model.lines().value(0).toMap().value(QStringLiteral("detail")).toString();
        }

        Shop shop;
        BringInModel model;
    };

private slots:
    void a_file_is_shown_first_and_then_brought_in() {
        QTemporaryDir folder;
        const QString file = file_from_elsewhere(folder);
        Receiver receiver;
        QVERIFY(receiver.open(file));
        QCOMPARE(receiver.model.problem(), QString());
        QVERIFY(receiver.detail().contains(QStringLiteral("1 session, 1 reading")));
        QVERIFY(receiver.model.possible());
        QCOMPARE(receiver.shop.desk->engines().size(), 0u);

        QVERIFY(receiver.bring_in());
        const auto engines = receiver.shop.desk->engines();
        QCOMPARE(engines.size(), 1u);
        QCOMPARE(engines.front().readings, 1);

        QVERIFY(receiver.open(file));
        QVERIFY(receiver.detail().contains(QStringLiteral("already")));
        QVERIFY(!receiver.model.possible());

        receiver.shop.undo();
        QCOMPARE(receiver.shop.desk->engines().size(), 0u);
    }

    void a_file_that_is_none_says_so_and_changes_nothing() {
        QTemporaryDir folder;
        const QString path = folder.filePath(QStringLiteral("holiday.lapwing"));
        QFile file(path);
        QVERIFY(file.open(QIODevice::WriteOnly));
        file.write("not a session at all");
        file.close();
        Receiver receiver;
        QVERIFY(receiver.open(path));
        QVERIFY(!receiver.model.problem().isEmpty());
        QVERIFY(!receiver.model.possible());
        receiver.model.bringIn();
        receiver.shop.settle();
        QCOMPARE(receiver.shop.desk->engines().size(), 0u);
        QVERIFY(!receiver.shop.desk->last_step());
    }

    void a_change_made_here_since_stands() {
        QTemporaryDir folder;
        const QString file = file_from_elsewhere(folder);
        Receiver receiver;
        QVERIFY(receiver.open(file));
        QVERIFY(receiver.bring_in());
        Engine engine = receiver.shop.desk->engine(receiver.shop.desk->engines().front().id).value();
        engine.name = "Another name";
        receiver.shop.desk->run(workflow::save_engine(engine));
        receiver.shop.settle();
        QVERIFY(receiver.open(file));
        QVERIFY(receiver.detail().contains(QStringLiteral("already")));
        QVERIFY(!receiver.model.possible());
    }

    void a_change_of_mind_is_no_fault() {
        Receiver receiver;
        QSignalSpy ready(&receiver.model, &BringInModel::previewReady);
        receiver.model.openSessionFile();
        receiver.shop.settle();
        QCOMPARE(ready.size(), 0);
        QVERIFY(!receiver.model.busy());
        QVERIFY(receiver.shop.told.isEmpty());
    }

#ifdef LAPWING_DEMO
    void the_demo_brings_in_two_engines() {
        Receiver receiver;
        QSignalSpy ready(&receiver.model, &BringInModel::previewReady);
        receiver.model.openDemo();
        QVERIFY(ready.wait());
        QCOMPARE(receiver.model.problem(), QString());
        QCOMPARE(receiver.model.lines().size(), 2);
        QVERIFY(receiver.bring_in());
        QStringList names;
        for (const auto& engine : receiver.shop.desk->engines())
            names << QString::fromStdString(engine.name);
        names.sort();
        QCOMPARE(names, (QStringList{QStringLiteral("Harbour six"), QStringLiteral("Orchard V-twin")}));
    }
#endif
};

}  // namespace lapwing

QTEST_GUILESS_MAIN(lapwing::BringInTest)
#include "bring_in_test.moc"

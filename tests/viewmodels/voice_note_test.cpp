// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <QGuiApplication>
#include <QProcess>
#include <algorithm>
#include <csignal>
#include <cstdio>

#include "core/store/attachment_files.h"
#include "qml/viewmodels/evidence_model.h"
#include "qml/viewmodels/keep_evidence.h"
#include "qml/viewmodels/sound_model.h"
#include "qml/viewmodels/voice_note_model.h"
#include "tests/viewmodels/shop.h"

namespace lapwing {
namespace {

const QString ready = QStringLiteral("ready");
const QString recording = QStringLiteral("recording");
const QString was_kept = QStringLiteral("kept");

struct Bench {
    explicit Bench(const QString& to = QStringLiteral("cylinder"), int cylinder = 2) {
        engine = shop.add_engine(QStringLiteral("Twin"), 2);
        session = shop.open_session(engine, "As found");
        for (EvidenceBacked* model :
             {static_cast<EvidenceBacked*>(&note), static_cast<EvidenceBacked*>(&list)}) {
            model->setSessionId(text_id(session));
            model->setProperty("to", to);
            model->setProperty("cylinder", cylinder);
            complete(*model, shop);
        }
    }
    platform::FakeMicrophone& ear() { return shop.fake.media.ear; }
    std::vector<Attachment> stored() { return shop.desk->visit(session)->attachments; }
    bool waits_for(const QString& state) {
        return QTest::qWaitFor([&] { return note.state() == state; }, 5000);
    }

    Shop shop;
    Engine engine;
    SessionId session;
    EvidenceModel list;
    VoiceNoteModel note;
};

/// Records until it is killed, and says how much the library was handed.
int record_until_killed(const QString& folder) {
    SystemClock clock;
    platform::FakeDevices fake(folder.toStdString());
    auto devices = fake.devices();
    auto opened = workflow::Desk::open(fake.paths.data(), clock);
    if (!opened) return 1;
    const auto reference = findings::built_in_reference();
    AppSettings settings(folder + QStringLiteral("/settings.ini"));
    AppContext app(*opened->desk, devices, settings, *reference);
    VoiceNoteModel note;
    note.setSessionId(text_id(opened->desk->sessions(opened->desk->engines().front().id).front().id));
    note.setProperty("to", QStringLiteral("cylinder"));
    note.setProperty("cylinder", 2);
    note.setApp(&app);
    note.componentComplete();
    note.start();
    for (;;) {
        fake.media.ear.hum(0.05);
        std::printf("%.2f\n", note.seconds());
        std::fflush(stdout);
        QTest::qWait(5);
    }
}

}  // namespace

class VoiceNoteTest : public QObject {
    Q_OBJECT

private slots:
    void what_was_said_is_kept_where_it_belongs() {
        Bench bench;
        QCOMPARE(bench.note.place(), QStringLiteral("Cylinder 2"));
        bench.note.start();
        QCOMPARE(bench.note.state(), recording);
        bench.ear().hum(1.5, 0.5);
        QCOMPARE(bench.note.lengthText(), QStringLiteral("0:02"));
        // Half of the loudest is 6 dB below it (20 log10 0.5), a tenth of the meter's 60 dB.
        QVERIFY(qAbs(bench.note.level() - 0.9) < 0.01);
        bench.ear().hum(2.5, 0);
        QCOMPARE(bench.note.level(), 0.0);
        bench.note.stop();
        QVERIFY(!bench.ear().listening());
        QVERIFY(bench.waits_for(was_kept));

        const auto stored = bench.stored();
        QCOMPARE(stored.size(), std::size_t(1));
        QCOMPARE(stored[0].kind, AttachmentKind::voice);
        QCOMPARE(stored[0].tie.to, TiedTo::cylinder);
        QCOMPARE(stored[0].tie.cylinder, 2);
        QCOMPARE(stored[0].length->si(), 4.0);
        QVERIFY(bench.shop.desk->files().has(stored[0].sha256));
        QVERIFY(bench.shop.desk->recordings().left_over().empty());
        bench.shop.settle();
        QCOMPARE(bench.list.items().size(), 1);
        QCOMPARE(bench.list.items()[0].toMap()["length"].toString(), QStringLiteral("0:04"));
    }

    void it_becomes_smaller_where_there_is_an_encoder() {
        Bench bench;
        bench.shop.fake.media.packer = [](const std::filesystem::path&,
                                          const std::filesystem::path& to) -> Status {
            QFile file(QString::fromStdString(to.string()));
            return file.open(QIODevice::WriteOnly) && file.write("OggS") == 4
                       ? Status()
                       : Status(fail("test", "no room"));
        };
        bench.note.start();
        bench.ear().hum(1);
        bench.note.stop();
        QVERIFY(bench.waits_for(was_kept));
        QCOMPARE(bench.stored()[0].media_type, std::string("audio/ogg"));
        QCOMPARE(bench.stored()[0].bytes, 4LL);
    }

    void an_encoder_that_fails_costs_nothing() {
        Bench bench;
        bench.shop.fake.media.packer = [](const std::filesystem::path&,
                                          const std::filesystem::path&) -> Status {
            return fail("test", "no");
        };
        bench.note.start();
        bench.ear().hum(1);
        bench.note.stop();
        QVERIFY(bench.waits_for(was_kept));
        QCOMPARE(bench.stored()[0].media_type, std::string("audio/wav"));
        QCOMPARE(bench.stored()[0].bytes, 44LL + 2 * 16'000);
    }

    void a_slip_of_the_thumb_is_no_voice_note() {
        Bench bench;
        bench.note.start();
        bench.ear().hum(0.1);
        bench.note.stop();
        QVERIFY(bench.waits_for(ready));
        QVERIFY(!bench.note.blocked().isEmpty());
        QVERIFY(bench.stored().empty());
        QVERIFY(bench.shop.desk->recordings().left_over().empty());
    }

    void without_permission_or_microphone_it_says_so() {
        Bench bench;
        auto& states = bench.shop.fake.permissions.states;
        states[platform::Permission::microphone] = platform::Permissions::State::denied;
        bench.note.start();
        QCOMPARE(bench.note.state(), ready);
        QVERIFY(bench.note.blocked().contains(QStringLiteral("settings")));
        QVERIFY(bench.note.canOpenSettings());
        QCOMPARE(bench.ear().starts, 0);

        states[platform::Permission::microphone] = platform::Permissions::State::granted;
        bench.ear().offered = false;
        bench.note.start();
        QVERIFY(bench.note.blocked().contains(QStringLiteral("microphone")));
        QVERIFY(!bench.note.canOpenSettings());
        QVERIFY(bench.shop.desk->recordings().left_over().empty());

        bench.shop.fake.media.installed = false;
        bench.note.start();
        QVERIFY(bench.note.blocked().contains(QStringLiteral("lacks a part")));
    }

    void losing_microphone_or_page_keeps_what_there_is() {
        Bench bench;
        bench.note.start();
        bench.ear().hum(1);
        bench.ear().lose();
        QVERIFY(bench.waits_for(was_kept));
        QCOMPARE(bench.shop.told.size(), 1);
        QCOMPARE(bench.stored().size(), std::size_t(1));

        auto page = std::make_unique<VoiceNoteModel>();
        page->setSessionId(text_id(bench.session));
        complete(*page, bench.shop);
        page->start();
        bench.ear().hum(1);
        page.reset();
        QVERIFY(QTest::qWaitFor([&] { return bench.stored().size() == 2; }, 5000));
        const auto kept = bench.stored();
        QCOMPARE(std::ranges::count(kept, TiedTo::session, [](const Attachment& one) { return one.tie.to; }),
                 1);
    }

    void it_plays_scrubs_and_goes_with_undo() {
        Bench bench;
        bench.note.start();
        bench.ear().hum(4);
        bench.note.stop();
        QVERIFY(bench.waits_for(was_kept));
        bench.shop.settle();
        const QString id = bench.list.items()[0].toMap()["id"].toString();
        auto& mouth = bench.shop.fake.media.mouth;

        SoundModel sound;
        sound.setProperty("app", QVariant::fromValue(bench.shop.app.get()));
        sound.toggle(id, 4);
        QCOMPARE(mouth.played.size(), std::size_t(1));
        QVERIFY(sound.playing());
        sound.seek(id, 4, 0.5);
        QCOMPARE(mouth.now.at, 2.0);
        QCOMPARE(sound.atText(), QStringLiteral("0:02"));
        sound.toggle(id, 4);
        QVERIFY(!sound.playing());
        QCOMPARE(sound.share(), 0.5);
        sound.toggle(id, 4);
        QCOMPARE(mouth.now.at, 2.0);
        mouth.end();
        QCOMPARE(sound.share(), 0.0);

        bench.list.remove(id);
        bench.shop.settle();
        QVERIFY(bench.list.items().isEmpty());
        bench.shop.undo();
        QCOMPARE(bench.list.items().size(), 1);
        QVERIFY(!bench.list.items()[0].toMap()["file"].toString().isEmpty());
    }

    void killed_while_recording_it_keeps_what_was_said() {
        QTemporaryDir folder;
        {
            platform::FakeDevices fake(folder.path().toStdString());
            SystemClock clock;
            auto opened = workflow::Desk::open(fake.paths.data(), clock);
            Engine engine = new_engine(QStringLiteral("Twin"), 2, Arrangement::in_line).value();
            engine.id = opened->desk->make_id<EngineId>();
            opened->desk->run(workflow::save_engine(engine));
            opened->desk->run(
                workflow::open_session(opened->desk->make_id<SessionId>(), engine.id, "As found"));
        }
        QProcess child;
        child.start(QCoreApplication::applicationFilePath(), {QStringLiteral("--record"), folder.path()});
        QByteArray said;
        QVERIFY(QTest::qWaitFor(
            [&] {
                said += child.readAllStandardOutput();
                return said.count('\n') > 30;
            },
            20'000));
        ::kill(pid_t(child.processId()), SIGKILL);
        child.waitForFinished();
        said += child.readAllStandardOutput();
        // The last line may have been cut off; what the child said before it went on is confirmed.
        const double confirmed = said.split('\n').at(said.count('\n') - 1).toDouble();
        QVERIFY(confirmed > 1);

        platform::FakeDevices fake(folder.path().toStdString());
        auto devices = fake.devices();
        SystemClock clock;
        auto opened = workflow::Desk::open(fake.paths.data(), clock);
        QVERIFY(opened);
        const auto reference = findings::built_in_reference();
        AppSettings settings(folder.filePath(QStringLiteral("settings.ini")));
        auto app = std::make_unique<AppContext>(*opened->desk, devices, settings, *reference);
        QSignalSpy told(app.get(), &AppContext::told);
        const auto session = opened->desk->sessions(opened->desk->engines().front().id).front().id;
        keep_cut_off(*app, opened->desk->recordings().left_over());
        QVERIFY(QTest::qWaitFor([&] { return !told.isEmpty(); }, 5000));
        const auto stored = opened->desk->visit(session)->attachments;
        QCOMPARE(stored.size(), std::size_t(1));
        QCOMPARE(stored[0].tie.cylinder, 2);
        QVERIFY2(stored[0].length->si() >= confirmed - 0.06,
                 qPrintable(QStringLiteral("%1 s of %2 s").arg(stored[0].length->si()).arg(confirmed)));
        QVERIFY(opened->desk->recordings().left_over().empty());
        opened->desk.reset();
    }
};

}  // namespace lapwing

int main(int argc, char** argv) {
    QGuiApplication gui(argc, argv);
    const auto arguments = QCoreApplication::arguments();
    if (arguments.value(1) == QLatin1String("--record"))
        return lapwing::record_until_killed(arguments.value(2));
    lapwing::VoiceNoteTest test;
    return QTest::qExec(&test, argc, argv);
}
#include "voice_note_test.moc"

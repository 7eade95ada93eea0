// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// A session's way to a mentor and back, by touch alone: handed over, opened from outside on another phone,
// remarked on, sent back, brought in. Then everything into one file, and back from it.
#include <QBuffer>
#include <QDir>
#include <QImage>
#include <QTest>

#include "core/record/record.h"
#include "core/store/attachment_files.h"
#include "core/workflow/hand_over.h"
#include "core/workflow/remarks.h"
#include "tests/app/harness/errands.h"
#include "tests/app/harness/stock.h"

namespace lapwing::test {
namespace {

std::string jpeg() {
    QImage image(320, 240, QImage::Format_RGB32);
    image.fill(Qt::darkGreen);
    QByteArray bytes;
    QBuffer buffer(&bytes);
    image.save(&buffer, "jpg");
    return bytes.toStdString();
}

std::string bytes_of(const std::filesystem::path& path) {
    QFile file(QString::fromStdString(path.string()));
    if (!file.open(QIODevice::ReadOnly)) return {};
    return file.readAll().toStdString();
}

/// Voice notes that hang on remarks: their bytes.
std::vector<std::string> spoken(Phone& phone, SessionId session) {
    std::vector<std::string> all;
    const auto visit = phone.desk().visit(session);
    for (const auto& one : visit->attachments)
        if (one.kind == AttachmentKind::voice && one.tie.to == TiedTo::note)
            all.push_back(bytes_of(phone.desk().files().path(one.sha256)));
    return all;
}

/// The reading that the spoken remark hangs on.
Uuid spoken_on(Phone& phone, SessionId session) {
    const auto visit = *phone.desk().visit(session);
    for (const auto& one : visit.attachments)
        for (const auto& note : visit.notes)
            if (one.kind == AttachmentKind::voice && one.tie.record == note.id.uuid && note.tie.record)
                return *note.tie.record;
    return {};
}

}  // namespace

#define DO(action) QVERIFY2(action, qPrintable(thumb.why() + " / " + phone.why()))

class MentorTest : public QObject {
    Q_OBJECT

private slots:
    void there_and_back();
    void a_call_before_the_findings();
    void people_are_known_by_their_keys();
    void everything_into_one_file_and_back();

private:
    /// Touches through Hand over and copies the session file out of the phone, as a share sheet would.
    void hand_over(Phone& phone, const QString& to);
    QTemporaryDir post_;
};

void MentorTest::hand_over(Phone& phone, const QString& to) {
    auto& thumb = phone.thumb();
    QVERIFY2(phone.arrives(QStringLiteral("HandOver")), qPrintable(phone.why()));
    DO(thumb.touch(QStringLiteral("makeSession")));
    DO(thumb.appears(QStringLiteral("made_0"), 20'000));
    const QDir documents(QString::fromStdString(phone.devices.paths.documents().string()));
    const auto files = documents.entryList({QStringLiteral("*.lapwing")}, QDir::Files);
    QCOMPARE(files.size(), 1);
    QVERIFY(QFile::rename(documents.filePath(files[0]), to));
}

void MentorTest::there_and_back() {
    const QString there = post_.filePath(QStringLiteral("there.lapwing"));
    const QString back = post_.filePath(QStringLiteral("back.lapwing"));
    Phone learner, mentor;
    EngineId engine;
    SessionId session;
    QString learner_fingerprint;
    std::string said;  ///< the bytes of what the mentor spoke

    {
        Phone& phone = learner;
        QVERIFY2(phone.on(), qPrintable(phone.why()));
        auto& thumb = phone.thumb();
        Stock stock(phone.desk());
        engine = stock.engine("Orchard twin", 2);
        session = stock.session(engine, "As found");
        stock.readings(session, 2);
        const auto photo = stock.attachment(session, AttachmentKind::photo, jpeg());
        auto attachment = std::get<Attachment>(*phone.desk().record(RecordKind::attachment, photo.uuid));
        attachment.tie = {.to = TiedTo::reading,
                          .record = phone.desk().visit(session)->readings.back().id.uuid,
                          .cylinder = {},
                          .finding = {}};
        stock.run(workflow::save_attachment(attachment));
        phone.go(QStringLiteral("Session"), {{"sessionId", QString::fromStdString(session.text())}});
        DO(thumb.touch(QStringLiteral("handOver")));
        hand_over(phone, there);
        learner_fingerprint = QString::fromStdString(workflow::own_fingerprint(phone.desk()));
        DO(thumb.reads(learner_fingerprint));
        phone.off();
    }
    {
        Phone& phone = mentor;
        QVERIFY2(phone.on(), qPrintable(phone.why()));
        auto& thumb = phone.thumb();
        phone.app().openFile(there);
        QVERIFY2(phone.arrives(QStringLiteral("BringIn")), qPrintable(phone.why()));
        DO(thumb.reads(QStringLiteral("unknown key"), 20'000));
        DO(thumb.reads(learner_fingerprint));
        DO(thumb.reads(QStringLiteral("A new engine with 1 session")));
        DO(thumb.write(QStringLiteral("keyName"), QStringLiteral("Kim")));
        DO(thumb.touch(QStringLiteral("nameKey")));
        DO(thumb.reads(QStringLiteral("handed over by Kim")));
        QVERIFY(phone.desk().engines().empty());
        DO(thumb.touch(QStringLiteral("bringIn")));
        QVERIFY2(phone.arrives(QStringLiteral("SecondOpinion")), qPrintable(phone.why()));
        DO(thumb.reads(QStringLiteral("Look at these first")));
        DO(thumb.reads(QStringLiteral("No tester is named")));

        DO(thumb.appears(QStringLiteral("thing_finding_2")));

        // The photo stands beside its reading, and opens large.
        const QString reading =
            QStringLiteral("thing_reading_") +
            QString::fromStdString(phone.desk().visit(session)->readings.back().id.text());
        DO(thumb.touch_in(reading, QStringLiteral("photo_0")));
        DO(thumb.appears(QStringLiteral("picture")));
        DO(thumb.touch(QStringLiteral("close")));
        DO(wait_until([&] { return thumb.overlay() == nullptr; }));

        // A note in words; the name is asked for once.
        DO(thumb.touch_in(reading, QStringLiteral("addNote")));
        DO(thumb.touch(QStringLiteral("keep")));
        DO(thumb.reads(QStringLiteral("Write your name first")));
        DO(thumb.write(QStringLiteral("author"), QStringLiteral("Robin")));
        DO(thumb.touch(QStringLiteral("keep")));
        DO(thumb.reads(QStringLiteral("Write a word, or speak it")));
        DO(thumb.write(QStringLiteral("text"), QStringLiteral("Was the oil warm")));
        DO(thumb.touch(QStringLiteral("keep")));
        DO(wait_until([&] { return phone.desk().visit(session)->notes.size() == 1; }));
        DO(wait_until([&] { return thumb.overlay() == nullptr; }));

        // The list is made anew when findings arrive; a touch that this swallows is repeated.
        const auto note_on = [&](const QString& thing) {
            for (int tries = 0; tries < 3; ++tries)
                if (!thumb.touch_in(thing, QStringLiteral("addNote")))
                    return false;
                else if (thumb.appears(QStringLiteral("kind"), 2000))
                    return true;
            return false;
        };
        DO(note_on(QStringLiteral("thing_finding_2")));
        QVERIFY(!thumb.sees(QStringLiteral("author")));
        DO(thumb.touch_in(QStringLiteral("kind"), QStringLiteral("choice_other cause")));
        DO(thumb.touch_in(QStringLiteral("cause"), QStringLiteral("choice_rings")));
        DO(thumb.touch(QStringLiteral("keep")));
        DO(wait_until([&] { return phone.desk().visit(session)->notes.size() == 2; }));
        DO(wait_until([&] { return thumb.overlay() == nullptr; }));

        DO(note_on(QStringLiteral("thing_cylinder_1")));
        DO(thumb.touch_in(QStringLiteral("kind"), QStringLiteral("choice_please test this")));
        thumb.appears(QStringLiteral("test"));
        settle(60);
        DO(thumb.touch_in(QStringLiteral("test"), QStringLiteral("choice_wet")));
        DO(thumb.touch(QStringLiteral("keep")));
        DO(wait_until([&] { return phone.desk().visit(session)->notes.size() == 3; }));
        DO(wait_until([&] { return thumb.overlay() == nullptr; }));
        DO(thumb.reads(QStringLiteral("Please test this: wet test")));
        // A remark that is spoken: the note first, then what was said with it.
        DO(note_on(reading));
        DO(thumb.touch(QStringLiteral("speak")));
        QVERIFY2(phone.arrives(QStringLiteral("VoiceNote")), qPrintable(phone.why()));
        DO(thumb.touch(QStringLiteral("record")));
        DO(wait_until([&] { return phone.devices.media.ear.listening(); }));
        phone.devices.media.ear.hum(2.5);
        DO(thumb.touch(QStringLiteral("record")));
        DO(thumb.reads(QStringLiteral("Kept")));
        DO(wait_until([&] { return spoken(phone, session).size() == 1; }));
        said = spoken(phone, session).front();
        QVERIFY(!said.empty());
        Errands mentor_errands(phone);
        DO(mentor_errands.back_to(QStringLiteral("SecondOpinion")));
        // Nothing that was measured changed.
        QCOMPARE(phone.desk().visit(session)->readings.size(), 5U);

        DO(thumb.touch(QStringLiteral("sendBack")));
        hand_over(phone, back);
        phone.off();
    }
    {
        Phone& phone = learner;
        QVERIFY2(phone.on(), qPrintable(phone.why()));
        auto& thumb = phone.thumb();
        phone.home();
        phone.devices.filePicker.answers.push_back(std::optional<QString>(back));
        DO(thumb.touch(QStringLiteral("more")));
        DO(thumb.touch(QStringLiteral("openFile")));
        QVERIFY2(phone.arrives(QStringLiteral("BringIn")), qPrintable(phone.why()));
        DO(thumb.reads(QStringLiteral("New are 1 photo or voice note, 4 notes"), 20'000));
        DO(thumb.reads(QStringLiteral("Was the oil warm")));
        QCOMPARE(phone.desk().visit(session)->notes.size(), 0U);
        DO(thumb.touch(QStringLiteral("bringIn")));
        QVERIFY2(phone.arrives(QStringLiteral("News")), qPrintable(phone.why()));
        DO(thumb.reads(QStringLiteral("Other cause, by Robin")));

        // Tomorrow it is still there, and leads to where it belongs.
        phone.off();
        QVERIFY2(phone.on(), qPrintable(phone.why()));
    }
    {
        Phone& phone = learner;
        auto& thumb = phone.thumb();
        QVERIFY2(phone.arrives(QStringLiteral("News")), qPrintable(phone.why()));
        for (int at = 0; at < 4; ++at) {
            auto* item = thumb.find(QStringLiteral("news_%1").arg(at));
            QVERIFY(item);
            if (!thumb.words(item).join(QLatin1Char(' ')).contains(QStringLiteral("Please test"))) continue;
            DO(thumb.touch(item));
            break;
        }
        QVERIFY2(phone.arrives(QStringLiteral("Session")), qPrintable(phone.why()));
        DO(thumb.reads(QStringLiteral("Wet test, cylinder 1")));
        DO(thumb.reads(QStringLiteral("asked by Robin")));
        DO(thumb.touch(QStringLiteral("doTodo_0")));
        QVERIFY2(phone.arrives(QStringLiteral("Pad")), qPrintable(phone.why()));
        Errands errands(phone);
        DO(errands.free_pad());
        DO(errands.back_to(QStringLiteral("Session")));
        DO(thumb.touch(QStringLiteral("todo_0")));
        DO(thumb.reads(QStringLiteral("Asked for, and done")));
        const auto notes = phone.desk().visit(session)->notes;
        QCOMPARE(std::ranges::count(notes, true, &Note::done), 1);
        // What the mentor said is heard beside the reading, byte for byte.
        QCOMPARE(spoken(phone, session), std::vector<std::string>{said});
        phone.go(QStringLiteral("SecondOpinion"), {{"sessionId", QString::fromStdString(session.text())}});
        const QString reading =
            QStringLiteral("thing_reading_") + QString::fromStdString(spoken_on(phone, session).text());
        DO(thumb.appears(reading));
        DO(thumb.touch_in(reading, QStringLiteral("play")));
        const auto& played = phone.devices.media.mouth.played;
        DO(wait_until([&] { return played.size() == 1; }));
        QCOMPARE(bytes_of(played[0]), said);
        DO(errands.back_to(QStringLiteral("News")));
        DO(thumb.touch(QStringLiteral("seen")));
        phone.go(QStringLiteral("EngineCard"), {{"engineId", QString::fromStdString(engine.text())}});
        settle(50);
        QVERIFY(!thumb.sees(QStringLiteral("news")));
    }
}

void MentorTest::a_call_before_the_findings() {
    Phone phone;
    QVERIFY2(phone.on(), qPrintable(phone.why()));
    auto& thumb = phone.thumb();
    Stock stock(phone.desk());
    const auto engine = stock.engine("Learner's twin", 2);
    const auto session = stock.session(engine, "As found");
    stock.readings(session, 2);
    phone.go(QStringLiteral("Settings"), {});
    DO(thumb.touch(QStringLiteral("callFirst")));
    DO(thumb.write(QStringLiteral("author"), QStringLiteral("Kim")));
    const QVariantMap here{{"sessionId", QString::fromStdString(session.text())}};
    // No way round it: proposals and headlines would give the findings away.
    for (const auto& page : {QStringLiteral("Plan"), QStringLiteral("SecondOpinion")}) {
        phone.go(page, here);
        DO(thumb.appears(QStringLiteral("commitCall")));
        settle(300);
        QVERIFY(!thumb.sees(QStringLiteral("proposals")));
        QVERIFY(!thumb.words().join(QLatin1Char(' ')).contains(QStringLiteral("Cylinder 2 reads")));
    }
    const QStringList verdicts{QStringLiteral("in range"), QStringLiteral("borderline"),
                               QStringLiteral("fault"), QStringLiteral("odds")};
    const auto gives_away = [&] {
        const QString all = thumb.words().join(QLatin1Char(' '));
        for (const auto& verdict : verdicts)
            if (all.contains(verdict)) return all;
        return QString();
    };
    for (const auto& test : {QStringLiteral("dry"), QStringLiteral("leak-down")}) {
        auto pad = here;
        pad[QStringLiteral("test")] = test;
        pad[QStringLiteral("cylinder")] = 2;
        phone.go(QStringLiteral("Pad"), pad);
        DO(Errands(phone).free_pad());
        DO(thumb.type(QStringLiteral("3.1")));
        settle(300);
        QVERIFY2(gives_away().isEmpty(), qPrintable(gives_away()));
    }
    phone.go(QStringLiteral("HandOver"),
             {{"engineId", QString::fromStdString(engine.text())}, {"sessionId", here["sessionId"]}});
    DO(thumb.reads(QStringLiteral("Your own call is not made yet")));
    QVERIFY2(gives_away().isEmpty(), qPrintable(gives_away()));
    phone.go(QStringLiteral("Session"), here);
    DO(thumb.reads(QStringLiteral("Your own call first")));
    // The tiles are made anew when the findings are there.
    DO(thumb.reads(QStringLiteral("factory limit")));
    settle(50);
    DO(thumb.reads(QStringLiteral("make your own call")));
    QVERIFY2(gives_away().isEmpty(), qPrintable(gives_away()));
    DO(thumb.touch(QStringLiteral("tile_findings")));
    QVERIFY2(phone.arrives(QStringLiteral("Findings")), qPrintable(phone.why()));
    settle(300);
    QVERIFY(!thumb.sees(QStringLiteral("findings_2")));
    DO(thumb.touch_in(QStringLiteral("call_1"), QStringLiteral("choice_seals well")));
    DO(thumb.touch_in(QStringLiteral("call_2"), QStringLiteral("choice_rings")));
    DO(thumb.touch(QStringLiteral("commitCall")));
    DO(thumb.appears(QStringLiteral("findings_2")));
    // Beside the finding, which names the exhaust valve.
    DO(thumb.reads(QStringLiteral("Cylinder 2: different")));
    DO(thumb.reads(QStringLiteral("Cylinder 1: same")));
    QVERIFY(!thumb.sees(QStringLiteral("undo")));
    QCOMPARE(phone.desk().visit(session)->notes.size(), 2U);
    phone.go(QStringLiteral("SecondOpinion"), here);
    DO(thumb.reads(QStringLiteral("My call: rings")));
}

void MentorTest::people_are_known_by_their_keys() {
    Phone phone;
    QVERIFY2(phone.on(), qPrintable(phone.why()));
    auto& thumb = phone.thumb();
    const std::string theirs(64, 'a');
    phone.desk().name_key(theirs, "Robin");
    phone.desk().flush();
    phone.go(QStringLiteral("Settings"), {});
    DO(thumb.touch(QStringLiteral("knownKeys")));
    QVERIFY2(phone.arrives(QStringLiteral("KnownKeys")), qPrintable(phone.why()));
    DO(thumb.reads(QStringLiteral("There is none yet")));
    DO(thumb.reads(QString::fromStdString(exchange::fingerprint(theirs))));
    DO(thumb.reads(QStringLiteral("Known since")));
    DO(thumb.write(QStringLiteral("name"), QStringLiteral(" Kim")));
    DO(thumb.touch(QStringLiteral("rename")));
    DO(wait_until([&] { return phone.desk().name_of_key(theirs) != "Robin"; }));
    const auto name = phone.desk().name_of_key(theirs);
    QVERIFY(!name.empty());
    DO(thumb.touch(QStringLiteral("forget")));
    DO(thumb.reads(QStringLiteral("from an unknown key again")));
    QCOMPARE(phone.desk().name_of_key(theirs), std::string());
    DO(thumb.touch(QStringLiteral("undoForget")));
    DO(wait_until([&] { return phone.desk().name_of_key(theirs) == name; }));
}

void MentorTest::everything_into_one_file_and_back() {
    const QString file = post_.filePath(QStringLiteral("all.lapwing-backup"));
    std::vector<std::string> before;
    const auto everything = [](Phone& phone) {
        std::vector<std::string> all;
        for (const auto& engine : phone.desk().engines())
            all.push_back(to_json(*phone.desk().dossier(engine.id)));
        std::ranges::sort(all);
        return all;
    };
    std::string photo;
    {
        Phone phone;
        QVERIFY2(phone.on(), qPrintable(phone.why()));
        auto& thumb = phone.thumb();
        Stock stock(phone.desk());
        for (const char* name : {"Orchard twin", "Harbour twin"}) {
            const auto session = stock.session(stock.engine(name, 2), "As found");
            stock.readings(session, 2);
            const auto id = stock.attachment(session, AttachmentKind::photo, jpeg());
            photo = std::get<Attachment>(*phone.desk().record(RecordKind::attachment, id.uuid)).sha256;
        }
        before = everything(phone);
        phone.go(QStringLiteral("Settings"), {});
        DO(thumb.touch(QStringLiteral("backup")));
        QVERIFY2(phone.arrives(QStringLiteral("Backup")), qPrintable(phone.why()));
        phone.devices.filePicker.answers.push_back(std::optional<QString>(file));
        DO(thumb.touch(QStringLiteral("backUp")));
        DO(thumb.reads(QStringLiteral("Everything is backed up"), 20'000));
        phone.off();
    }
    Phone phone;
    QVERIFY2(phone.on(), qPrintable(phone.why()));
    auto& thumb = phone.thumb();
    phone.app().openFile(file);
    QVERIFY2(phone.arrives(QStringLiteral("Backup")), qPrintable(phone.why()));
    DO(thumb.reads(QStringLiteral("The backup holds 2 engines"), 20'000));
    DO(thumb.reads(QStringLiteral("Harbour twin")));
    QVERIFY(phone.desk().engines().empty());
    DO(thumb.touch(QStringLiteral("restore")));
    DO(thumb.reads(QStringLiteral("Here now with all that was in it: 2 of 2 engines"), 20'000));
    QCOMPARE(everything(phone), before);
    QVERIFY(phone.desk().files().has(photo));
    phone.home();
    DO(thumb.reads(QStringLiteral("Orchard twin")));
}

}  // namespace lapwing::test

LAPWING_APP_TEST_MAIN(lapwing::test::MentorTest)
#include "mentor_test.moc"

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/workflow/bring_in.h"

#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <QTranslator>
#include <functional>

#include "core/exchange/session_file.h"
#include "core/record/record.h"
#include "qml/viewmodels/bring_in_model.h"
#include "qml/viewmodels/conflicts_model.h"
#include "qml/viewmodels/demo_texts.h"
#include "qml/viewmodels/hand_over_files.h"
#include "qml/viewmodels/hand_over_model.h"
#include "qml/viewmodels/news_model.h"
#include "tests/viewmodels/hand_over_shop.h"

namespace lapwing {

class BringInTest : public QObject {
    Q_OBJECT

private:
    struct Receiver {
        Receiver() { model.setApp(shop.app.get()); }
        bool open(const QString& file) {
            QSignalSpy ready(&model, &BringInModel::previewReady);
            model.open(file);
            return ready.wait();
        }
        bool bring_in() {
            QSignalSpy done(&model, &BringInModel::broughtIn);
            model.bringIn();
            if (done.size() != 1 && !done.wait()) return false;
            shop.settle();
            return true;
        }
        bool take(const QString& file) { return open(file) && bring_in(); }
        QVariantMap file() const { return model.files().value(0).toMap(); }
        QString text() const { return file()["text"].toString(); }
        QVariantMap signature() const { return file()["signature"].toMap(); }

        HandingShop shop;
        BringInModel model;
    };
    struct News : NewsModel {
        News(Shop& shop, EngineId engine) {
            setEngineId(QString::fromStdString(engine.text()));
            complete(*this, shop);
        }
        QVariantMap item(int at) const { return items().value(at).toMap(); }
    };

    /// Another byte in the middle of a file, as a bad card or a bad copy leaves it.
    static void spoil(const QString& path) {
        QFile file(path);
        if (!file.open(QIODevice::ReadWrite)) qFatal("no file to spoil");
        const QByteArray bytes = file.readAll();
        const auto at = bytes.size() / 2;
        file.seek(at);
        file.putChar(char(bytes[at] ^ 0x55));
    }

    QTemporaryDir place_;

private slots:
    void a_file_is_shown_first_and_then_brought_in() {
        HandingShop sender;
        sender.fill();
        const QString file = sender.hand_over(place_, QStringLiteral("visit.lapwing"));
        Receiver receiver;
        receiver.shop.fake.filePicker.answers.push_back(std::optional<QString>(file));
        QSignalSpy chosen(&receiver.model, &BringInModel::chosen);
        receiver.model.choose();
        QCOMPARE(chosen.value(0).value(0).toString(), file);
        QVERIFY(receiver.open(file));
        QVERIFY(receiver.model.refusal().isEmpty());
        // One of a thing is said by lapwing_en.ts, which the app alone loads.
        QVERIFY(receiver.text().contains(QStringLiteral("1 session")));
        QVERIFY(receiver.text().contains(QStringLiteral("1 reading")));
        QVERIFY(receiver.model.possible());
        QCOMPARE(receiver.shop.desk->engines().size(), 0u);

        QVERIFY(receiver.bring_in());
        const auto engines = receiver.shop.desk->engines();
        QCOMPARE(engines.size(), 1u);
        QVERIFY(engines.front().last_session.has_value());
        // Of a new engine everything is new: that is no list to read.
        QVERIFY(News(receiver.shop, sender.engine_id).items().isEmpty());

        QVERIFY(receiver.open(file));
        QVERIFY(receiver.text().contains(QStringLiteral("already")));
        QVERIFY(!receiver.model.possible());

        receiver.shop.undo();
        QCOMPARE(receiver.shop.desk->engines().size(), 0u);
    }

    void a_file_says_what_its_sender_had_lost() {
        HandingShop sender;
        sender.fill();
        sender.lose_a_photo();
        Receiver receiver;
        QVERIFY(receiver.open(sender.hand_over(place_, QStringLiteral("gap.lapwing"))));
        const QString gaps = receiver.model.files()[0].toMap()["gaps"].toString();
        for (const auto* part : {"Photo of", "Orchard V-twin", "As found", "lost"})
            QVERIFY2(gaps.contains(QLatin1String(part)), qPrintable(gaps));
    }

    void a_long_name_is_cut_between_letters() {
        Engine engine;
        for (int i = 0; i < 50; ++i)
            engine.name += "\u00dc";  // of two bytes
        engine.name = "x" + engine.name;
        const auto name = hand_over_name(engine, Session{}, HandOverKind::session_file);
        QCOMPARE(QString::fromUtf8(name.c_str()).count(QChar::ReplacementCharacter), 0);
        QVERIFY(name.ends_with(".lapwing"));
    }

    void what_is_sent_and_what_comes_back_can_lie_in_one_folder() {
        const auto written_by = [this](HandingShop& shop, EngineId engine, SessionId session) {
            const HandOverOrder order{.kind = HandOverKind::session_file,
                                      .chosen = {engine, {session}, false},
                                      .session = session,
                                      .format = shop.app->format(),
                                      .folder = place_.filePath(QStringLiteral("both")).toStdString()};
            const auto written = write_hand_over(*shop.desk, shop.reference, order);
            return written ? written->file : std::filesystem::path();
        };
        HandingShop sender;
        sender.fill();
        const auto sent = written_by(sender, sender.engine_id, sender.session);
        QCOMPARE(sent.filename().string(), "Orchard V-twin 2026-03-14 As found.lapwing");
        Receiver mentor;
        QVERIFY(mentor.take(QString::fromStdString(sent.string())));
        Note remark = sender.note("Measure cylinder 2 again");
        remark.at = Timestamp{1'773'567'120'000, 60};  // 2026-03-15T10:32+01:00
        mentor.shop.run([remark](const workflow::Now&) -> Result<workflow::Command> {
            return workflow::Command{"note.add", {}, {Put{remark}}, true};
        });
        const auto back = written_by(mentor.shop, sender.engine_id, sender.session);
        QCOMPARE(back.filename().string(),
                 "Orchard V-twin 2026-03-14 As found, The mentor 2026-03-15 10.32.lapwing");
        QVERIFY(std::filesystem::exists(sent) && std::filesystem::exists(back));
    }

    void photos_that_tell_where_they_were_taken_are_told_on_both_ways() {
        HandingShop sender;
        sender.fill();
        const auto photo = sender.keep_a_photo(HandingShop::bare_photo(true));
        Receiver receiver;
        QVERIFY(receiver.open(sender.hand_over(place_, QStringLiteral("where.lapwing"))));
        const QString told = receiver.file()["whereabouts"].toString();
        QVERIFY2(told.contains(QStringLiteral("Orchard V-twin, As found")), qPrintable(told));
        QVERIFY(receiver.bring_in());
        // As it came: its bytes are what it is known by.
        QVERIFY(receiver.shop.desk->files().has(photo.sha256));
        const HandOverOrder order{.kind = HandOverKind::session_file,
                                  .chosen = {sender.engine_id, {sender.session}, false},
                                  .session = sender.session,
                                  .format = receiver.shop.app->format(),
                                  .folder = place_.filePath(QStringLiteral("on")).toStdString()};
        const auto written = write_hand_over(*receiver.shop.desk, receiver.shop.reference, order);
        QVERIFY2(written, written ? "" : written.error().english.c_str());
        QCOMPARE(written->whereabouts.size(), std::size_t(1));

        HandOverModel handing;
        handing.setSessionId(text_id(sender.session));
        complete(handing, receiver.shop);
        handing.make(QStringLiteral("session"));
        QTRY_COMPARE(handing.made().size(), 1);
        QVERIFY(handing.made()[0].toMap()["whereabouts"].toString() != QString());
        handing.takePlacesOff();
        QTRY_COMPARE(handing.made()[0].toMap()["whereabouts"].toString(), QString());
        QVERIFY(receiver.shop.desk->files().has(photo.sha256));  // as it came
        Receiver further;
        QVERIFY(further.open(handing.made()[0].toMap()["path"].toString()));
        QCOMPARE(further.file()["whereabouts"].toString(), QString());

        HandingShop plain;
        plain.fill();
        plain.keep_a_photo(HandingShop::bare_photo(false));
        Receiver other;
        QVERIFY(other.open(plain.hand_over(place_, QStringLiteral("plain.lapwing"))));
        QCOMPARE(other.file()["whereabouts"].toString(), QString());
    }

    void two_visits_of_one_day_and_one_name_have_files_of_their_own() {
        HandingShop shop;
        shop.fill();
        shop.clock.move_by(std::chrono::minutes(5));
        const SessionId second = shop.open_session(*shop.desk->engine(shop.engine_id), "As found");
        std::set<std::filesystem::path> files;
        for (const SessionId session : {shop.session, second}) {
            const HandOverOrder order{.kind = HandOverKind::table,
                                      .chosen = {shop.engine_id, {session}, false},
                                      .session = session,
                                      .format = shop.app->format(),
                                      .folder = place_.filePath(QStringLiteral("own")).toStdString()};
            const auto written = write_hand_over(*shop.desk, shop.reference, order);
            QVERIFY2(written, written ? "" : written.error().english.c_str());
            files.insert(written->file);
        }
        QCOMPARE(files.size(), std::size_t(2));
    }

    void a_reports_appendix_is_there_when_it_is_asked_for() {
        HandingShop shop;
        shop.fill();
        const auto size_of = [&](bool appendix) {
            const HandOverOrder order{.kind = HandOverKind::report,
                                      .chosen = {shop.engine_id, {}, false},
                                      .session = shop.session,
                                      .appendix = appendix,
                                      .format = shop.app->format(),
                                      .folder = place_.filePath(QStringLiteral("reports")).toStdString()};
            const auto written = write_hand_over(*shop.desk, shop.reference, order);
            return written ? std::filesystem::file_size(written->file) : 0;
        };
        const auto plain = size_of(false);
        QVERIFY(plain > 0);
        QVERIFY(size_of(true) > plain);
    }

    void a_signature_says_whose_file_it_is() {
        HandingShop sender;
        sender.fill();
        const QString file = sender.hand_over(place_, QStringLiteral("signed.lapwing"));
        const QString own = QString::fromStdString(workflow::own_fingerprint(*sender.desk));
        // Five groups of four.
        QCOMPARE(own.size(), 24);

        Receiver receiver;
        QVERIFY(workflow::own_fingerprint(*receiver.shop.desk).empty());
        QVERIFY(receiver.open(file));
        QCOMPARE(receiver.signature()["mark"].toString(), QStringLiteral("borderline"));
        QVERIFY(receiver.signature()["title"].toString().contains(QStringLiteral("unknown key")));
        QCOMPARE(receiver.signature()["fingerprint"].toString(), own);
        receiver.model.nameKey(0, QStringLiteral("  Kim  "));
        receiver.shop.settle();
        QCOMPARE(receiver.signature()["title"].toString(),
                 QStringLiteral("Unaltered since it was handed over by Kim"));
        QCOMPARE(receiver.signature()["mark"].toString(), QStringLiteral("good"));
        receiver.model.nameKey(0, {});
        receiver.shop.settle();
        QVERIFY(receiver.signature()["title"].toString().contains(QStringLiteral("unknown key")));

        QVERIFY(receiver.open(sender.hand_over(place_, QStringLiteral("bare.lapwing"), false)));
        QCOMPARE(receiver.signature()["title"].toString(), QStringLiteral("Not signed"));
        QVERIFY(receiver.signature()["key"].toString().isEmpty());
        QVERIFY(receiver.model.possible());

        BringInModel at_home;
        at_home.setApp(sender.app.get());
        QSignalSpy ready(&at_home, &BringInModel::previewReady);
        at_home.open(file);
        QVERIFY(ready.wait());
        QCOMPARE(at_home.files()[0].toMap()["signature"].toMap()["title"].toString(),
                 QStringLiteral("Unaltered since you handed it over"));
    }

    void an_altered_file_is_told() {
        HandingShop sender;
        sender.fill();
        const QString file = sender.hand_over(place_, QStringLiteral("altered.lapwing"));
        // Someone unpacks it, writes another reading, mends the checksums and packs it again.
        const QString script = QStringLiteral(
            "set -e; d=$(mktemp -d); cd $d; unzip -q \"$1\"; r=$(dirname $(find . -name bagit.txt)); cd $r; "
            "sed -i 's/\"7.7\"/\"9.7\"/' data/session.json; "
            "find data -type f -printf '%P\\n' | sort | while read f; do sha256sum data/\"$f\"; done > "
            "manifest-sha256.txt; "
            "sed -i '/Payload-Oxum/d' bag-info.txt; "
            "sha256sum bagit.txt bag-info.txt manifest-sha256.txt > tagmanifest-sha256.txt; "
            "rm \"$1\"; cd $d; zip -q -r -X \"$1\" .; rm -r $d");
        QProcess shell;
        shell.start(QStringLiteral("bash"), {QStringLiteral("-c"), script, QStringLiteral("-"), file});
        QVERIFY(shell.waitForFinished());
        QVERIFY2(shell.exitCode() == 0, shell.readAllStandardError().constData());

        Receiver receiver;
        QVERIFY(receiver.open(file));
        QVERIFY2(receiver.model.refusal().isEmpty(), qPrintable(receiver.model.refusal()));
        QVERIFY(receiver.model.altered());
        QCOMPARE(receiver.signature()["mark"].toString(), QStringLiteral("fault"));
        QCOMPARE(receiver.signature()["title"].toString(),
                 QStringLiteral("Altered since it was handed over"));
        QVERIFY(receiver.signature()["key"].toString().isEmpty());
    }

    void a_damaged_file_is_refused_and_changes_nothing() {
        HandingShop sender;
        sender.fill();
        const QString file = sender.hand_over(place_, QStringLiteral("damaged.lapwing"));
        spoil(file);
        Receiver receiver;
        QVERIFY(receiver.open(file));
        QVERIFY(!receiver.model.refusal().isEmpty());
        QVERIFY(!receiver.model.possible());
        QVERIFY(receiver.model.files().isEmpty());
        receiver.model.bringIn();
        receiver.shop.settle();
        QCOMPARE(receiver.shop.desk->engines().size(), 0u);
    }

    void a_file_that_is_none_says_so_and_changes_nothing() {
        const QString path = place_.filePath(QStringLiteral("holiday.lapwing"));
        QFile file(path);
        QVERIFY(file.open(QIODevice::WriteOnly));
        file.write("not a session at all");
        file.close();
        Receiver receiver;
        QVERIFY(receiver.open(path));
        QVERIFY(!receiver.model.refusal().isEmpty());
        // Nobody asked whether it is signed.
        QVERIFY(receiver.model.refusedSignature().isEmpty());
        QVERIFY(!receiver.model.possible());
        QCOMPARE(receiver.shop.desk->engines().size(), 0u);
        QVERIFY(!receiver.shop.desk->last_step());
    }

    void what_came_back_is_listed_until_it_is_seen() {
        HandingShop learner;
        learner.fill();
        Receiver mentor;
        QVERIFY(mentor.take(learner.hand_over(place_, QStringLiteral("there.lapwing"))));
        mentor.shop.engine_id = learner.engine_id;
        mentor.shop.session = learner.session;
        Note remark = mentor.shop.note("Warm it up first");
        Note request = mentor.shop.note("", NoteKind::test_request);
        request.test = TestKind::leak_down;
        mentor.shop.run(workflow::save_note(remark));
        mentor.shop.run(workflow::save_note(request));
        Engine renamed = learner.desk->engine(learner.engine_id).value();
        renamed.description = "Said by the mentor";
        mentor.shop.run(workflow::save_engine(renamed));
        const QString back = mentor.shop.hand_over(place_, QStringLiteral("back.lapwing"));

        BringInModel model;
        model.setApp(learner.app.get());
        QSignalSpy ready(&model, &BringInModel::previewReady), done(&model, &BringInModel::broughtIn);
        model.open(back);
        QVERIFY(ready.wait());
        const auto file = model.files()[0].toMap();
        QCOMPARE(file["news"].toList().size(), 2);
        const auto differences = file["differences"].toList();
        QCOMPARE(differences.size(), 1);
        const auto field = differences[0].toMap()["fields"].toList()[0].toMap();
        QCOMPARE(field["name"].toString(), QStringLiteral("Description"));
        QCOMPARE(field["one"].toString(), QString());
        QCOMPARE(field["other"].toString(), QStringLiteral("Said by the mentor"));
        model.nameKey(0, QStringLiteral("The mentor"));
        learner.settle();
        model.bringIn();
        QVERIFY(done.wait());
        QCOMPARE(done[0][1].toBool(), false);
        learner.settle();

        News news(learner, learner.engine_id);
        QVERIFY2(news.from().startsWith(QStringLiteral("Handed over by The mentor")),
                 qPrintable(news.from()));
        QCOMPARE(news.items().size(), 3);
        QStringList places;
        for (const auto& item : news.items())
            places << item.toMap()["title"].toString() + QStringLiteral(" > ") +
                          item.toMap()["page"].toString();
        places.sort();
        QCOMPARE(places, (QStringList{QStringLiteral("Note, by The mentor > SecondOpinion"),
                                      QStringLiteral("Orchard V-twin > EngineCard"),
                                      QStringLiteral("Please test this, by The mentor > Session")}));
        for (const auto& item : news.items())
            QCOMPARE(item.toMap()["fields"].toList().size(),
                     item.toMap()["page"].toString() == QLatin1String("EngineCard") ? 1 : 0);
        // A card that was touched is seen, tomorrow too; it stays in the list until that is taken away.
        QCOMPARE(news.unseen(), 3);
        news.touch(0);
        learner.settle();
        QCOMPARE(news.unseen(), 2);
        QVERIFY(news.item(0)["seen"].toBool());
        News tomorrow(learner, learner.engine_id);
        QCOMPARE(tomorrow.unseen(), 2);
        QCOMPARE(tomorrow.items().size(), 3);
        // The request leads to where it is done now.
        learner.clock.move_by(std::chrono::hours(1));
        const auto newest = learner.open_session(*learner.desk->engine(learner.engine_id), "Warm");
        tomorrow.lookAgain();
        for (const auto& item : tomorrow.items())
            if (item.toMap()["page"].toString() == QLatin1String("Session"))
                QCOMPARE(item.toMap()["args"].toMap()["sessionId"].toString(), text_id(newest));
        news.seen();
        learner.settle();
        QVERIFY(News(learner, learner.engine_id).items().isEmpty());
        QCOMPARE(learner.kept(remark.id).text, remark.text);
    }

    void a_record_changed_on_both_sides_waits_for_a_choice() {
        HandingShop learner;
        learner.fill();
        const Note note = learner.note("as first written");
        learner.run(workflow::save_note(note));
        Receiver mentor;
        QVERIFY(mentor.take(learner.hand_over(place_, QStringLiteral("first.lapwing"))));
        mentor.shop.engine_id = learner.engine_id;
        const auto changed = [&](HandingShop& shop, const char* text) {
            Note other = shop.kept(note.id);
            other.text = text;
            shop.run(workflow::save_note(other));
        };
        changed(learner, "the learner's");
        mentor.shop.clock.move_by(std::chrono::minutes(1));
        changed(mentor.shop, "the mentor's");
        QVERIFY(mentor.open(learner.hand_over(place_, QStringLiteral("again.lapwing"))));
        const auto difference = mentor.file()["differences"].toList()[0].toMap();
        QVERIFY(difference["text"].toString().startsWith(QStringLiteral("Changed on both sides")));
        const auto field = difference["fields"].toList()[0].toMap();
        QCOMPARE(field["one"].toString(), QStringLiteral("the mentor's"));
        QCOMPARE(field["other"].toString(), QStringLiteral("the learner's"));
        QVERIFY(mentor.bring_in());
        News news(mentor.shop, learner.engine_id);
        QTRY_COMPARE(news.twoVersions(), 1);

        ConflictsModel conflicts;
        conflicts.setEngineId(text_id(learner.engine_id));
        complete(conflicts, mentor.shop);
        QCOMPARE(conflicts.items().size(), 1);
        const auto versions = conflicts.items()[0].toMap()["versions"].toList();
        QStringList texts;
        for (const auto& version : versions)
            texts << version.toMap()["fields"].toList()[0].toMap()["text"].toString();
        QCOMPARE(texts, (QStringList{QStringLiteral("the mentor's"), QStringLiteral("the learner's")}));
        conflicts.choose(0, 1);
        mentor.shop.settle();
        QVERIFY(conflicts.items().isEmpty());
        QCOMPARE(mentor.shop.kept(note.id).text, std::string("the learner's"));
        mentor.shop.undo();
        QCOMPARE(conflicts.items().size(), 1);
    }

    void what_was_taken_out_here_comes_back_only_when_asked_for() {
        HandingShop sender;
        sender.fill();
        const QString file = sender.hand_over(place_, QStringLiteral("whole.lapwing"));
        Receiver receiver;
        QVERIFY(receiver.take(file));
        receiver.shop.run(workflow::remove_reading(sender.reading_id));
        QVERIFY(receiver.open(file));
        QVERIFY(!receiver.model.possible());
        QVERIFY(receiver.model.leavesOut());
        receiver.model.setBringBack(true);
        QVERIFY(receiver.model.possible());
        QVERIFY(receiver.bring_in());
        QCOMPARE(receiver.shop.desk->visit(sender.session)->readings.size(), 1u);
    }

    void a_change_of_mind_is_no_fault() {
        Receiver receiver;
        QSignalSpy chosen(&receiver.model, &BringInModel::chosen);
        receiver.model.choose();
        receiver.shop.settle();
        QCOMPARE(chosen.size(), 0);
        QVERIFY(!receiver.model.busy());
        QVERIFY(receiver.shop.told.isEmpty());
    }

#ifdef LAPWING_DEMO
    void the_demo_brings_in_two_engines() {
        Receiver receiver;
        QSignalSpy ready(&receiver.model, &BringInModel::previewReady);
        receiver.model.openDemo();
        QVERIFY(ready.wait());
        QVERIFY(receiver.model.refusal().isEmpty());
        QCOMPARE(receiver.model.files().size(), 2);
        QSignalSpy said(receiver.shop.app.get(), &AppContext::stepDone);
        QVERIFY(receiver.bring_in());
        QStringList names;
        for (const auto& engine : receiver.shop.desk->engines())
            names << QString::fromStdString(engine.name);
        names.sort();
        QCOMPARE(names, (QStringList{QStringLiteral("Harbour six"), QStringLiteral("Orchard V-twin")}));
        // One step, that names both and takes both back.
        QCOMPARE(said.size(), 1);
        for (const QString& name : names)
            QVERIFY(said.first().first().toString().contains(name));
        receiver.shop.undo();
        QVERIFY(receiver.shop.desk->engines().empty());
    }

    void the_demo_is_told_in_the_language_of_the_app() {
        /// Any language: every text of the demo comes out in brackets.
        struct Brackets : QTranslator {
            QString translate(const char* context, const char* text, const char*, int) const override {
                return qstrcmp(context, "Demo") == 0 ? u'[' + QString::fromUtf8(text) + u']' : QString();
            }
            bool isEmpty() const override { return false; }
        };
        const auto bring_in = [](Receiver& receiver) {
            QSignalSpy ready(&receiver.model, &BringInModel::previewReady);
            receiver.model.openDemo();
            if (!ready.wait() || !receiver.model.refusal().isEmpty()) return false;
            for (const auto& file : receiver.model.files())
                if (!file.toMap()["differences"].toList().isEmpty()) return false;
            return receiver.bring_in();
        };
        Receiver receiver;
        QVERIFY(bring_in(receiver));
        const auto english = receiver.shop.desk->engines();
        Brackets brackets;
        QVERIFY(QCoreApplication::installTranslator(&brackets));
        const bool done = bring_in(receiver);
        QCoreApplication::removeTranslator(&brackets);
        QVERIFY(done);
        // Beside the English ones, not mixed with them.
        QCOMPARE(receiver.shop.desk->engines().size(), 2 * english.size());
        for (const auto& summary : receiver.shop.desk->engines()) {
            const bool told =
                std::ranges::none_of(english, [&](const auto& e) { return e.id == summary.id; });
            const auto engine = receiver.shop.desk->engine(summary.id);
            QVERIFY(engine);
            QCOMPARE(engine->description.starts_with("["), told);
            QVERIFY(!engine->name.starts_with("["));
            const auto sessions = receiver.shop.desk->sessions(summary.id);
            QVERIFY(!sessions.empty());
            for (const auto& session : sessions) {
                const auto visit = receiver.shop.desk->visit(session.id);
                QVERIFY(visit);
                QCOMPARE(visit->session.title.starts_with("["), told);
                QVERIFY(!visit->readings.empty());
                for (const auto& note : visit->notes)
                    QCOMPARE(note.text.starts_with("["), told);
                for (const auto& line : visit->plan)
                    QCOMPARE(line.work.starts_with("["), told);
            }
        }
    }

    /// What someone wrote in the demo is translated, but for names and what is written alike everywhere.
    void no_text_of_the_demo_is_forgotten() {
        const QStringList alike{"Orchard V-twin", "Harbour six", "Mill Lane Engine Club",
                                "Quayside Old Car Circle"};
        QStringList unused = demo_texts();
        QStringList forgotten;
        const std::function<void(const QJsonValue&, const QString&)> look = [&](const QJsonValue& value,
                                                                                const QString& field) {
            const auto object = value.toObject();
            for (auto at = object.begin(); at != object.end(); ++at)
                look(at.value(), at.key());
            for (const auto& one : value.toArray())
                look(one, field);
            if (!value.isString()) return;
            const QString text = value.toString();
            unused.removeAll(text);
            static const QRegularExpression sentence(QStringLiteral("^[A-Z0-9].* |\\.$"));
            const bool free = field == u"name" || field == u"text" || field == u"note" || field == u"title" ||
                              sentence.match(text).hasMatch();
            if (free && !text.isEmpty() && !alike.contains(text) && !demo_texts().contains(text) &&
                field != u"scheme")
                forgotten << field + QStringLiteral(": ") + text;
        };
        for (const char* name : {"orchard-v-twin", "harbour-six"}) {
            QTemporaryDir folder;
            const auto incoming = exchange::read_session_file(
                std::string(LAPWING_SOURCE_DIR) + "/assets/demo/" + name + ".lapwing",
                folder.path().toStdString());
            QVERIFY(incoming);
            look(QJsonDocument::fromJson(QByteArray::fromStdString(to_json(incoming->dossier))).object(), {});
        }
        QVERIFY2(forgotten.isEmpty(), qPrintable(forgotten.join(u'\n')));
        QVERIFY2(unused.isEmpty(), qPrintable(unused.join(u'\n')));
    }
#endif
};

}  // namespace lapwing

QTEST_MAIN(lapwing::BringInTest)
#include "bring_in_test.moc"

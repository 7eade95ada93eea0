// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <QFile>
#include <QFileInfo>

#include "core/store/attachment_files.h"
#include "qml/viewmodels/backup_model.h"
#include "tests/viewmodels/hand_over_shop.h"

namespace lapwing {
namespace {

struct Desk2 {
    Desk2() { model.setApp(shop.app.get()); }
    bool idle() {
        return QTest::qWaitFor([&] { return !model.busy(); }, 20'000);
    }
    std::filesystem::path made_in() const { return shop.fake.paths.scratch() / "backup"; }
    bool nothing_left() const {
        return !std::filesystem::exists(made_in()) || std::filesystem::is_empty(made_in());
    }
    HandingShop shop;
    BackupModel model;
};

std::vector<Dossier> everything(const workflow::Desk& desk) {
    std::vector<Dossier> all;
    for (const auto& engine : desk.engines())
        all.push_back(*desk.dossier(engine.id));
    std::ranges::sort(all, {}, [](const Dossier& one) { return one.engine.id; });
    return all;
}

}  // namespace

class BackupTest : public QObject {
    Q_OBJECT

private:
    QString place(const char* name) const { return place_.filePath(QString::fromLatin1(name)); }
    /// Makes a backup of a shop with two engines at that place.
    void back_up(Desk2& from, const QString& file) {
        from.shop.fill();
        from.shop.add_engine(QStringLiteral("Harbour six"), 6);
        from.shop.fake.filePicker.answers.push_back(std::optional<QString>(file));
        from.model.backUp();
        QVERIFY(from.idle());
    }
    QTemporaryDir place_;

private slots:
    void everything_goes_into_one_file_and_comes_back() {
        Desk2 old;
        const QString file = place("all.lapwing-backup");
        back_up(old, file);
        QVERIFY2(old.model.problem().isEmpty(), qPrintable(old.model.problem()));
        QVERIFY2(old.model.result().startsWith(QStringLiteral("Everything is backed up")),
                 qPrintable(old.model.result()));
        QVERIFY(QFileInfo::exists(file));
        QVERIFY(!old.model.unsaved());
        QVERIFY(old.nothing_left());
        QVERIFY(old.shop.fake.filePicker.asked[0].name.endsWith(QStringLiteral(".lapwing-backup")));

        Desk2 fresh;
        fresh.shop.fake.filePicker.answers.push_back(std::optional<QString>(file));
        fresh.model.choose();
        QVERIFY(fresh.idle());
        QVERIFY(fresh.model.possible());
        QVERIFY(
            fresh.model.holds().startsWith(QStringLiteral("The backup holds 2 engines. Not here yet: 2.")));
        QCOMPARE(fresh.model.engines().size(), 2);
        QVERIFY(fresh.shop.desk->engines().empty());
        fresh.model.restore();
        QVERIFY(fresh.idle());
        QVERIFY2(fresh.model.result().startsWith(
                     QStringLiteral("Here now with all that was in it: 2 of 2 engines")),
                 qPrintable(fresh.model.problem()));
        QVERIFY(!fresh.model.possible());
        QCOMPARE(everything(*fresh.shop.desk), everything(*old.shop.desk));

        fresh.model.open(file);
        QVERIFY(fresh.idle());
        QVERIFY(fresh.model.holds().contains(QStringLiteral("Here already and unchanged: 2.")));
        fresh.model.forget();
        QVERIFY(!fresh.model.possible());
    }

    void a_backup_merges_with_what_is_here() {
        Desk2 old;
        const QString file = place("merge.lapwing-backup");
        back_up(old, file);
        Desk2 other;
        const Engine own = other.shop.add_engine(QStringLiteral("Here before"), 1);
        other.model.open(file);
        QVERIFY(other.idle());
        other.model.restore();
        QVERIFY(other.idle());
        QCOMPARE(other.shop.desk->engines().size(), 3u);
        QCOMPARE(other.shop.engine(own), own);
    }

    void photos_that_tell_where_they_were_taken_are_told() {
        for (const bool tells_where : {true, false}) {
            Desk2 old;
            const QString file = place(tells_where ? "where.lapwing-backup" : "nowhere.lapwing-backup");
            old.shop.fill();
            old.shop.keep_a_photo(HandingShop::bare_photo(tells_where));
            old.shop.fake.filePicker.answers.push_back(std::optional<QString>(file));
            old.model.backUp();
            QVERIFY(old.idle());
            Desk2 fresh;
            fresh.model.open(file);
            QVERIFY(fresh.idle());
            QVERIFY2(
                fresh.model.holds().contains(QStringLiteral("tell where they were taken")) == tells_where,
                qPrintable(fresh.model.holds()));
        }
    }

    void names_of_keys_are_shown_and_taken_only_when_they_are_chosen() {
        Desk2 old;
        const std::string known(64, 'a'), wanted(64, 'b'), other(64, 'c');
        old.shop.desk->name_key(known, "Alex");
        old.shop.desk->name_key(wanted, "Kim");
        old.shop.desk->name_key(other, "Robin");
        old.shop.settle();
        const QString file = place("keys.lapwing-backup");
        back_up(old, file);
        Desk2 fresh;
        fresh.shop.desk->name_key(known, "Sam");
        fresh.shop.settle();
        fresh.model.open(file);
        QVERIFY(fresh.idle());
        const auto keys = fresh.model.keys();
        QCOMPARE(keys.size(), 3);
        QCOMPARE(keys[0].toMap()["here"].toString(), QStringLiteral("Sam"));
        QCOMPARE(keys[1].toMap()["name"].toString(), QStringLiteral("Kim"));
        QCOMPARE(keys[1].toMap()["fingerprint"].toString().toStdString(), exchange::fingerprint(wanted));
        for (const auto& one : keys)
            QVERIFY(!one.toMap()["taken"].toBool());
        fresh.model.toggleKey(QString::fromStdString(wanted));
        fresh.model.toggleKey(QString::fromStdString(other));
        fresh.model.toggleKey(QString::fromStdString(other));
        QVERIFY(fresh.model.keys()[1].toMap()["taken"].toBool());
        fresh.model.restore();
        QVERIFY(fresh.idle());
        QCOMPARE(fresh.shop.desk->name_of_key(known), std::string("Sam"));
        QCOMPARE(fresh.shop.desk->name_of_key(wanted), std::string("Kim"));
        QCOMPARE(fresh.shop.desk->name_of_key(other), std::string());
        QVERIFY(fresh.model.keys().isEmpty());
    }

    void stopping_loses_nothing() {
        Desk2 old;
        old.shop.fill();
        old.model.backUp();
        old.model.cancel();
        QVERIFY(old.idle());
        // Whichever was first: stopped, or made and then not saved anywhere.
        QVERIFY(old.model.unsaved() || !old.model.result().isEmpty());
        if (!old.model.unsaved()) QVERIFY(old.nothing_left());

        const QString file = place("stopped.lapwing-backup");
        old.shop.fake.filePicker.answers.push_back(std::optional<QString>(file));
        old.model.backUp();
        QVERIFY(old.idle());
        Desk2 fresh;
        fresh.model.open(file);
        fresh.model.cancel();
        QVERIFY(fresh.idle());
        QVERIFY(fresh.shop.desk->engines().empty());
        fresh.model.open(file);
        QVERIFY(fresh.idle());
        fresh.model.restore();
        fresh.model.cancel();
        QVERIFY(fresh.idle());
        QVERIFY2(!fresh.model.result().isEmpty(), qPrintable(fresh.model.problem()));
        if (fresh.model.possible()) {
            QVERIFY(fresh.model.result().startsWith(QStringLiteral("Stopped after")));
            fresh.model.restore();
            QVERIFY(fresh.idle());
        }
        QCOMPARE(everything(*fresh.shop.desk), everything(*old.shop.desk));
    }

    void a_backup_that_nobody_put_anywhere_is_asked_for_again() {
        Desk2 old;
        old.shop.fill();
        old.model.backUp();  // the picker has no answer: a change of mind
        QVERIFY(old.idle());
        QVERIFY(old.model.unsaved());
        QVERIFY(old.model.result().isEmpty());
        const QString file = place("later.lapwing-backup");
        old.shop.fake.filePicker.answers.push_back(fail("picker.copy_write", "The card is full."));
        old.model.save();
        QCOMPARE(old.model.problem(), QStringLiteral("The card is full."));
        QVERIFY(old.model.unsaved());
        old.shop.fake.filePicker.answers.push_back(std::optional<QString>(file));
        old.model.save();
        QVERIFY(!old.model.unsaved());
        QVERIFY(old.model.problem().isEmpty());
        QVERIFY(QFileInfo::exists(file));
    }

    void a_lost_photo_is_named_and_keeps_nothing_else_back() {
        Desk2 old;
        old.shop.fill();
        old.shop.lose_a_photo();
        const QString file = place("lost.lapwing-backup");
        old.shop.fake.filePicker.answers.push_back(std::optional<QString>(file));
        old.model.backUp();
        QVERIFY(old.idle());
        QVERIFY2(old.model.problem().isEmpty(), qPrintable(old.model.problem()));
        const QString said = old.model.result();
        QVERIFY2(said.startsWith(QStringLiteral("Backed up")), qPrintable(said));
        for (const auto* part : {"Photo of", "Orchard V-twin", "As found", "lost"})
            QVERIFY2(said.contains(QLatin1String(part)), qPrintable(said));
        Desk2 fresh;
        fresh.model.open(file);
        QVERIFY(fresh.idle());
        QVERIFY2(fresh.model.holds().contains(QStringLiteral("As found")), qPrintable(fresh.model.holds()));
        fresh.model.restore();
        QVERIFY(fresh.idle());
        QCOMPARE(everything(*fresh.shop.desk), everything(*old.shop.desk));
    }

    void what_is_whole_of_a_damaged_backup_comes_back() {
        Desk2 old;
        const QString path = place("hurt.lapwing-backup");
        back_up(old, path);
        QFile file(path);
        QVERIFY(file.open(QIODevice::ReadWrite));
        QByteArray bytes = file.readAll();
        // A byte of the table in the second of the two session files, each a ZIP archive within the archive.
        const auto at = bytes.lastIndexOf("/data/readings.csv", bytes.lastIndexOf("/data/session.json") - 1);
        QVERIFY(at > 0);
        bytes[at + 40] = char(bytes[at + 40] ^ 1);
        QVERIFY(file.seek(0) && file.write(bytes) == bytes.size());
        file.close();
        Desk2 fresh;
        fresh.model.open(path);
        QVERIFY(fresh.idle());
        QVERIFY2(fresh.model.possible(), qPrintable(fresh.model.problem()));
        QVERIFY2(fresh.model.holds().contains(QStringLiteral("1 of 2 engines in it are whole")),
                 qPrintable(fresh.model.holds()));
        QCOMPARE(fresh.model.engines().size(), 2);
        QVERIFY(fresh.model.engines()[0].toMap()["text"].toString().startsWith(QStringLiteral("Damaged")));
        const QString hurt = fresh.model.engines()[0].toMap()["title"].toString();
        fresh.model.restore();
        QVERIFY(fresh.idle());
        QCOMPARE(fresh.shop.desk->engines().size(), 1u);
        QVERIFY2(fresh.model.result().contains(hurt), qPrintable(fresh.model.result()));
    }

    void a_damaged_backup_is_refused_with_a_sentence() {
        Desk2 old;
        const QString path = place("damaged.lapwing-backup");
        back_up(old, path);
        QFile file(path);
        QVERIFY(file.open(QIODevice::ReadWrite));
        QVERIFY(file.resize(file.size() / 2));
        file.close();
        Desk2 fresh;
        fresh.model.open(path);
        QVERIFY(fresh.idle());
        QVERIFY(!fresh.model.problem().isEmpty());
        QVERIFY(!fresh.model.possible());
        QVERIFY(fresh.shop.desk->engines().empty());
    }
};

}  // namespace lapwing

QTEST_GUILESS_MAIN(lapwing::BackupTest)
#include "backup_test.moc"

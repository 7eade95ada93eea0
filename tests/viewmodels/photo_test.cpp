// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <sys/stat.h>

#include "core/store/attachment_files.h"
#include "core/workflow/remarks.h"
#include "qml/viewmodels/photo_model.h"
#include "qml/viewmodels/storage_model.h"
#include "tests/viewmodels/shop.h"

namespace lapwing {
namespace {

const QString ready = QStringLiteral("ready");
const QString looking = QStringLiteral("looking");
const QString shown = QStringLiteral("kept");

QImage scene() {
    QImage image(640, 480, QImage::Format_RGB32);
    image.fill(Qt::darkGreen);
    return image;
}

struct Bench {
    Bench() {
        engine = shop.add_engine(QStringLiteral("Twin"), 2);
        session = shop.open_session(engine, "As found");
        eye().scene = scene();
        photo.setSessionId(text_id(session));
        photo.setProperty("to", QStringLiteral("cylinder"));
        photo.setProperty("cylinder", 1);
        photo.setKind(QStringLiteral("plug"));
        complete(photo, shop);
    }
    platform::FakeCamera& eye() { return shop.fake.media.eye; }
    std::vector<Attachment> stored() { return shop.desk->visit(session)->attachments; }
    bool waits_for(const QString& state) {
        return QTest::qWaitFor([&] { return photo.state() == state; }, 5000);
    }
    bool take() {
        photo.setLive(true);
        photo.take();
        return waits_for(shown);
    }

    Shop shop;
    Engine engine;
    SessionId session;
    PhotoModel photo;
};

}  // namespace

class PhotoTest : public QObject {
    Q_OBJECT

private slots:
    void the_camera_is_on_only_while_it_is_looked_through() {
        Bench bench;
        QVERIFY(!bench.eye().on());
        QVERIFY(bench.shop.fake.permissions.asked.empty());
        bench.photo.setLive(true);
        QCOMPARE(bench.shop.fake.permissions.asked.size(), std::size_t(1));
        QCOMPARE(bench.photo.state(), looking);
        QVERIFY(bench.eye().on());
        QCOMPARE(bench.photo.frame().size(), QSize(640, 480));
        bench.photo.setTorch(true);
        QVERIFY(bench.eye().torch);
        bench.photo.focusAt(0.25, 0.5);
        QCOMPARE(*bench.eye().focus, QPointF(0.25, 0.5));
        bench.photo.setLive(false);
        QVERIFY(!bench.eye().on());
    }

    void a_photo_is_kept_as_it_is_taken() {
        Bench bench;
        QVERIFY(bench.take());
        QVERIFY(!bench.eye().on());
        const auto stored = bench.stored();
        QCOMPARE(stored.size(), std::size_t(1));
        QCOMPARE(stored[0].photo_of, PhotoOf::plug);
        QCOMPARE(stored[0].tie.cylinder, 1);
        const QImage back(QString::fromStdString(bench.shop.desk->files().path(stored[0].sha256).string()),
                          "jpg");
        QCOMPARE(back.size(), QSize(640, 480));
        QVERIFY(bench.photo.file().startsWith(QStringLiteral("file:")));

        bench.photo.setKind(QStringLiteral("valve"));
        bench.shop.settle();
        QCOMPARE(bench.stored()[0].photo_of, PhotoOf::valve);
        QCOMPARE(bench.stored()[0].sha256, stored[0].sha256);
    }

    void retake_and_delete_come_back_with_undo() {
        Bench bench;
        QVERIFY(bench.take());
        bench.photo.retake();
        bench.shop.settle();
        QCOMPARE(bench.photo.state(), looking);
        QVERIFY(bench.stored().empty());
        bench.shop.undo();
        QCOMPARE(bench.stored().size(), std::size_t(1));
        QVERIFY(bench.shop.desk->files().has(bench.stored()[0].sha256));
    }

    void a_retaken_photo_hangs_on_what_the_first_one_did() {
        Bench bench;
        QVERIFY(bench.take());
        // Opened from the list of all photos, which knows no tie.
        PhotoModel again;
        again.setSessionId(text_id(bench.session));
        complete(again, bench.shop);
        again.setPhotoId(text_id(bench.stored()[0].id));
        again.setLive(true);
        again.retake();
        bench.shop.settle();
        again.take();
        QVERIFY(QTest::qWaitFor([&] { return again.state() == shown; }, 5000));
        QCOMPARE(bench.stored()[0].tie.to, TiedTo::cylinder);
        QCOMPARE(bench.stored()[0].tie.cylinder, 1);
        QCOMPARE(bench.stored()[0].photo_of, PhotoOf::plug);
    }

    void what_the_needle_reads_is_undone_with_the_photo() {
        Bench bench;
        QVERIFY(bench.take());
        Attachment read = bench.stored()[0];
        read.read_value = TypedPressure::make("6.4", units::bar).value();
        bench.shop.desk->run(workflow::note_needle(read));
        bench.shop.settle();
        QVERIFY(bench.stored()[0].read_value);
        bench.shop.undo();
        QVERIFY(bench.stored().empty());
    }

    void a_camera_that_cannot_be_had_says_why() {
        Bench bench;
        bench.shop.fake.permissions.answer = platform::Permissions::State::denied;
        bench.photo.setLive(true);
        QCOMPARE(bench.photo.state(), ready);
        QVERIFY(bench.photo.blocked().contains(QStringLiteral("settings")));
        QVERIFY(bench.photo.canOpenSettings());
        QVERIFY(bench.photo.canChoose());

        bench.shop.fake.permissions.states[platform::Permission::camera] =
            platform::Permissions::State::granted;
        bench.photo.lookAgain();
        QCOMPARE(bench.photo.state(), looking);
        bench.eye().fall_silent();
        QVERIFY(bench.photo.blocked().contains(QStringLiteral("does not answer")));
        bench.eye().offered = false;
        bench.photo.lookAgain();
        QVERIFY(bench.photo.blocked().contains(QStringLiteral("No camera")));
    }

    void a_picture_that_never_came_leaves_the_camera_on() {
        Bench bench;
        bench.eye().refusal = fail("camera.silent", "The camera does not answer.").value();
        bench.photo.setLive(true);
        bench.photo.take();
        QVERIFY(!bench.photo.blocked().isEmpty());
        QVERIFY(bench.stored().empty());
        bench.eye().refusal.reset();
        bench.photo.lookAgain();  // what the page's "Try again" does
        QCOMPARE(bench.photo.state(), looking);
        bench.photo.take();
        QVERIFY(bench.waits_for(shown));
    }

    // Nobody writes into the pipe: reading it would wait for ever.
    void what_is_no_file_is_no_photo() {
        Bench bench;
        const auto pipe = bench.shop.folder.filePath(QStringLiteral("pipe"));
        QCOMPARE(::mkfifo(pipe.toUtf8().constData(), 0600), 0);
        for (const auto& odd : {pipe, bench.shop.folder.path(), QStringLiteral("/dev/zero")}) {
            bench.shop.fake.filePicker.answers.push_back(std::optional<QString>(odd));
            bench.photo.choose();
            QVERIFY(bench.waits_for(ready));
            QVERIFY2(bench.photo.blocked().contains(QStringLiteral("a pipe or a device")),
                     qPrintable(bench.photo.blocked()));
        }
        QVERIFY(bench.stored().empty());
    }

    void storage_tells_what_has_lost_what() {
        Bench bench;
        QVERIFY(bench.take());
        const auto kept = bench.stored()[0];
        const auto& files = bench.shop.desk->files();
        const QByteArray stray("\xff\xd8 a photo that nobody names");
        const auto stranger =
            files.keep({reinterpret_cast<const unsigned char*>(stray.constData()), std::size_t(stray.size())})
                .value();
        std::filesystem::last_write_time(
            files.path(stranger.sha256),
            std::filesystem::file_time_type::clock::now() - std::chrono::hours(1));
        std::filesystem::remove(files.path(kept.sha256));

        StorageModel storage;
        storage.setApp(bench.shop.app.get());
        QVERIFY(QTest::qWaitFor([&] { return storage.known(); }, 5000));
        QCOMPARE(storage.lost().size(), 1);
        QCOMPARE(storage.strays().size(), 1);
        QCOMPARE(storage.strays()[0].toMap()["text"].toString(), QStringLiteral("Photo"));

        const QString copy = bench.shop.folder.filePath(QStringLiteral("copy.jpg"));
        bench.shop.fake.filePicker.answers.push_back(std::optional(copy));
        storage.saveStray(0);
        QVERIFY(QFile::exists(copy));
        storage.deleteStray(0);
        QVERIFY(QTest::qWaitFor([&] { return storage.strays().isEmpty(); }, 5000));
        QVERIFY(!files.has(stranger.sha256));

        storage.deleteLost(storage.lost()[0].toMap()["id"].toString());
        QVERIFY(QTest::qWaitFor([&] { return storage.lost().isEmpty(); }, 5000));
        QVERIFY(bench.stored().empty());
        bench.shop.app->background().waitForDone();
    }
};

}  // namespace lapwing

QTEST_MAIN(lapwing::PhotoTest)
#include "photo_test.moc"

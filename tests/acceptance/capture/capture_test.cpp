// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// The app on a real microphone, speaker and camera that need no hardware (studio.py): words are spoken,
// recorded, kept and heard again; a gauge is photographed, kept and handed over.
#include <QElapsedTimer>
#include <QFileInfo>
#include <QPainter>
#include <QProcess>
#include <QTest>
#include <algorithm>
#include <cmath>
#include <cstdlib>

#include "core/exchange/session_file.h"
#include "core/store/attachment_files.h"
#include "core/workflow/hand_over.h"
#include "core/workflow/readings.h"
#include "core/workflow/sessions.h"
#include "core/workflow/testers.h"
#include "platform/media/loaded_media.h"
#include "tests/acceptance/capture/listening.h"
#include "tests/app/harness/phone.h"
#include "tests/app/harness/stock.h"

namespace lapwing::test {
namespace {

/// Runs beside the test and ends with it.
class Helper {
public:
    Helper(const QString& program, const QStringList& arguments) {
        process_.setProcessChannelMode(QProcess::ForwardedErrorChannel);
        process_.start(program, arguments);
        process_.waitForStarted();
    }
    ~Helper() { end(); }
    void end() {
        process_.terminate();
        if (!process_.waitForFinished(5000)) process_.kill();
        process_.waitForFinished();
    }
    bool finishes() {
        return wait_until([&] { return process_.state() == QProcess::NotRunning; }, 30'000);
    }

private:
    QProcess process_;
};

bool run(const QString& program, const QStringList& arguments) {
    return QProcess::execute(program, arguments) == 0;
}

/// How far apart two pictures are, 0 (the same) to 1, looked at from afar.
double apart(const QImage& a, const QImage& b) {
    constexpr int width = 64, height = 36;
    const auto small = [&](const QImage& image) {
        return image.scaled(width, height, Qt::IgnoreAspectRatio, Qt::SmoothTransformation)
            .convertToFormat(QImage::Format_Grayscale8);
    };
    const QImage one = small(a), other = small(b);
    double sum = 0;
    for (int y = 0; y < height; ++y)
        for (int x = 0; x < width; ++x)
            sum += std::abs(qGray(one.pixel(x, y)) - qGray(other.pixel(x, y)));
    return sum / (255.0 * width * height);
}

}  // namespace

class CaptureTest : public QObject {
    Q_OBJECT

private slots:
    void initTestCase() {
        phone_.devices.real_media = &media_;
        QVERIFY2(phone_.on(), qPrintable(phone_.why()));
        Stock stock(phone_.desk());
        const auto engine = stock.engine("Harbour twin", 2);
        engine_ = engine;
        session_ = stock.session(engine, "As found");
        tester_ = stock.tester(TesterKind::compression_gauge, "Red gauge", "10");
        QVERIFY(phone_.run(workflow::choose_tester(session_, workflow::TesterUse::compression, tester_)));
        speech_ = phone_.own->filePath(QStringLiteral("speech.wav"));
        QVERIFY(run(
            QStringLiteral("espeak-ng"),
            {QStringLiteral("-w"), speech_, QStringLiteral("Air hisses at the exhaust of cylinder two.")}));
        said_ = loudness_of(speech_);
        QVERIFY(said_.size() > 50);
    }

    void words_are_recorded_kept_and_heard_again() {
        auto& thumb = phone_.thumb();
        phone_.go(QStringLiteral("VoiceNote"), here());
        QVERIFY2(thumb.touch(QStringLiteral("record")), qPrintable(thumb.why()));
        QVERIFY2(thumb.reads(QStringLiteral("Recording")), qPrintable(thumb.words().join(u'|')));
        {
            Helper speaker(QStringLiteral("paplay"), {QStringLiteral("--device=fakemic"), speech_});
            QVERIFY(speaker.finishes());
        }
        settle(600);
        QVERIFY(thumb.touch(QStringLiteral("record")));
        QVERIFY2(thumb.reads(QStringLiteral("Kept"), 20'000), qPrintable(thumb.words().join(u'|')));

        const auto note = only(AttachmentKind::voice);
        QVERIFY(note);
        QCOMPARE(note->media_type, std::string("audio/ogg"));
        const QString file = stored(*note);
        // 24 kbit/s and the container's share.
        const double rate = 8.0 * double(note->bytes) / note->length->si();
        qInfo("voice note: %.1f s, %.1f kbit/s, likeness to what was said %.2f", note->length->si(),
              rate / 1000, likeness(said_, loudness_of(file)));
        QVERIFY(rate < 32'000);
        QVERIFY(likeness(said_, loudness_of(file)) > 0.8);

        // Sound in real time on a machine with other work can lose a moment: it is heard up to three times.
        double again = 0;
        for (int turn = 0; turn < 3 && again <= 0.8; ++turn) {
            const QString played = phone_.own->filePath(QStringLiteral("played%1.wav").arg(turn));
            Helper ear(QStringLiteral("parec"),
                       {QStringLiteral("--device=speaker.monitor"), QStringLiteral("--file-format=wav"),
                        QStringLiteral("--rate=16000"), QStringLiteral("--channels=1"), played});
            // It listens once its file grows.
            QVERIFY(wait_until([&] { return QFileInfo(played).size() > 2000; }, 10'000));
            QVERIFY2(thumb.touch(QStringLiteral("play")), qPrintable(thumb.why()));
            settle(int(1000 * note->length->si()) + 1500);
            ear.end();
            again = likeness(said_, loudness_of(played));
            qInfo("heard again: likeness %.2f", again);
        }
        QVERIFY(again > 0.8);
    }

    void silence_is_not_taken_for_words() {
        auto& thumb = phone_.thumb();
        phone_.home();
        phone_.go(QStringLiteral("VoiceNote"), with(here(), "cylinder", 1));
        QVERIFY(thumb.touch(QStringLiteral("record")));
        QVERIFY(thumb.reads(QStringLiteral("Recording")));
        settle(int(20 * said_.size()) + 1000);
        QVERIFY(thumb.touch(QStringLiteral("record")));
        QVERIFY(thumb.reads(QStringLiteral("Kept"), 20'000));
        const auto visit = phone_.desk().visit(session_);
        const auto note =
            std::ranges::find_if(visit->attachments, [](const Attachment& a) { return a.tie.cylinder == 1; });
        QVERIFY(note != visit->attachments.end());
        QVERIFY(likeness(said_, loudness_of(stored(*note))) < 0.5);
    }

    void a_gauge_is_photographed_read_kept_and_handed_over() {
        const QImage scene = gauge();
        const QString picture = phone_.own->filePath(QStringLiteral("scene.png"));
        QVERIFY(scene.save(picture));
        const Helper camera(
            QStringLiteral("gst-launch-1.0"),
            QStringLiteral("-q videotestsrc is-live=true pattern=black ! "
                           "video/x-raw,format=YUY2,width=1280,height=720,framerate=15/1 ! "
                           "gdkpixbufoverlay location=%1 overlay-width=1280 overlay-height=720 ! "
                           "pipewiresink mode=provide stream-properties=p,media.class=Video/Source,"
                           "media.role=Camera,node.name=fakecam,node.description=FakeCamera")
                .arg(picture)
                .split(u' '));
        auto& thumb = phone_.thumb();
        QVERIFY(wait_until([&] { return (*media_.media())->camera().available(); }, 20'000));

        const auto typed = dry_reading("6.4");
        phone_.home();
        phone_.go(QStringLiteral("Photo"), {{"sessionId", QString::fromStdString(session_.text())},
                                            {"to", QStringLiteral("reading")},
                                            {"record", QString::fromStdString(typed.text())},
                                            {"kind", QStringLiteral("gauge")}});
        auto* finder = thumb.find(QStringLiteral("viewfinder"));
        QVERIFY(finder);
        QVERIFY2(wait_until([&] { return finder->property("picture").toRectF().width() > 0; }, 10'000),
                 qPrintable(thumb.words().join(u'|')));
        settle(500);
        QVERIFY2(thumb.touch(QStringLiteral("take")), qPrintable(thumb.why()));
        QVERIFY2(thumb.appears(QStringLiteral("photoDone"), 10'000), qPrintable(thumb.words().join(u'|')));

        auto photo = the_photo();
        QVERIFY(photo);
        QCOMPARE(photo->photo_of, PhotoOf::gauge);
        const QImage kept(stored(*photo), "jpg");
        QCOMPARE(kept.size(), scene.size());
        QImage card = scene;
        card.fill(Qt::gray);
        qInfo("photo: %d x %d, %lld bytes, %.3f apart from the scene, a grey card %.3f", kept.width(),
              kept.height(), photo->bytes, apart(kept, scene), apart(card, scene));
        QVERIFY(apart(kept, scene) < 0.05);
        QVERIFY(apart(card, scene) > 0.1);

        // It reads what the needle really shows, and says that this is not what was typed.
        QVERIFY2(thumb.reads(QStringLiteral("you typed 6.4 bar"), 20'000),
                 qPrintable(thumb.words().join(u'|')));
        photo = the_photo();
        QVERIFY(photo->read_value);
        qInfo("needle: %s, really %.2f", photo->read_value->text().c_str(), gauge_shows_bar);
        QVERIFY(std::abs(photo->read_value->number() - gauge_shows_bar) < 0.02 * gauge_scale_bar);
        QVERIFY2(thumb.touch_in(QStringLiteral("settle"), QStringLiteral("choice_as read")),
                 qPrintable(thumb.why()));
        QVERIFY(wait_until([&] { return the_photo()->read_settled == ReadSettled::as_read; }));
        const auto visit = phone_.desk().visit(session_);
        const auto standing = std::ranges::find_if(
            visit->readings, [&](const Reading& reading) { return reading.replaces == typed; });
        QVERIFY(standing != visit->readings.end());
        QCOMPARE(standing->final, photo->read_value);
        QCOMPARE(standing->from, ReadingFrom::photo);

        // A slip on the tester's card is told of; it does not make the photo unreadable.
        const auto testers = phone_.desk().testers();
        const auto noted = std::ranges::find(testers, tester_, &Tester::id);
        QVERIFY(noted != testers.end());
        Tester slip = *noted;
        slip.gauge.sweep = TypedAngle::make("180", units::deg).value();
        QVERIFY(phone_.run(workflow::save_tester(slip)));
        QVERIFY2(thumb.reads(QStringLiteral("sweeps about 27"), 20'000),
                 qPrintable(thumb.words().join(u'|')));
        QVERIFY(thumb.reads(QStringLiteral("the tester's card says 180")));
        QVERIFY(thumb.reads(QStringLiteral("Reads 4.0")));

        const auto dossier = workflow::hand_over(phone_.desk(), {engine_, {session_}, false});
        QVERIFY(dossier);
        const auto target = phone_.folder() / "handed over.lapwing";
        exchange::Outgoing outgoing;
        outgoing.dossier = *dossier;
        outgoing.stored_at = [this](const Attachment& one) { return phone_.desk().files().path(one.sha256); };
        outgoing.at = phone_.desk().clock().now();
        const auto written = exchange::write_session_file(target, outgoing);
        QVERIFY2(written, written ? "" : written.error().english.c_str());
        const auto read = exchange::read_session_file(target, phone_.folder());
        QVERIFY2(read, read ? "" : read.error().english.c_str());
        QVERIFY(std::ranges::any_of(read->attachments, [&](const exchange::StagedAttachment& one) {
            return one.sha256 == photo->sha256 &&
                   QImage(QString::fromStdString(one.file.string()), "jpg") == kept;
        }));
    }

    /// A camera that is listed and opens, and then sends no picture: all of its frames are dropped.
    void a_camera_that_never_answers_says_so_within_three_seconds() {
        auto& thumb = phone_.thumb();
        phone_.home();
        QVERIFY(wait_until([&] { return !(*media_.media())->camera().available(); }, 20'000));
        const Helper camera(
            QStringLiteral("gst-launch-1.0"),
            QStringLiteral("-q videotestsrc is-live=true ! "
                           "video/x-raw,format=YUY2,width=1280,height=720,framerate=15/1 ! "
                           "identity drop-probability=1 ! "
                           "pipewiresink mode=provide stream-properties=p,media.class=Video/Source,"
                           "media.role=Camera,node.name=mutecam,node.description=MuteCamera")
                .split(u' '));
        QVERIFY(wait_until([&] { return (*media_.media())->camera().available(); }, 20'000));
        QElapsedTimer since;
        since.start();
        phone_.go(QStringLiteral("Photo"), here());
        auto* finder = thumb.find(QStringLiteral("viewfinder"));
        QVERIFY(finder);
        QVERIFY2(thumb.reads(QStringLiteral("camera does not answer"), 8000),
                 qPrintable(thumb.words().join(u'|')));
        qInfo("told after %lld ms", since.elapsed());
        QVERIFY(since.elapsed() < 4000);  // three seconds from when it was asked, and a busy machine's share
        QCOMPARE(finder->property("picture").toRectF().width(), 0.0);
        QVERIFY(thumb.sees(QStringLiteral("fromFile")));
    }

    void a_camera_that_is_gone_says_so_within_three_seconds() {
        auto& thumb = phone_.thumb();
        phone_.home();
        QVERIFY(wait_until([&] { return !(*media_.media())->camera().available(); }, 20'000));
        phone_.go(QStringLiteral("Photo"), here());
        QVERIFY2(thumb.reads(QStringLiteral("No camera was found"), 3000),
                 qPrintable(thumb.words().join(u'|')));
    }

    void cleanupTestCase() { phone_.off(); }

private:
    QVariantMap here() const {
        return {{"sessionId", QString::fromStdString(session_.text())},
                {"to", QStringLiteral("cylinder")},
                {"cylinder", 2}};
    }
    static QVariantMap with(QVariantMap map, const char* key, const QVariant& value) {
        map[QString::fromLatin1(key)] = value;
        return map;
    }
    std::optional<Attachment> only(AttachmentKind kind) {
        std::optional<Attachment> found;
        const auto visit = phone_.desk().visit(session_);
        for (const auto& one : visit->attachments)
            if (one.kind == kind && one.tie.cylinder == 2) found = one;
        return found;
    }
    QString stored(const Attachment& attachment) {
        return QString::fromStdString(phone_.desk().files().path(attachment.sha256).string());
    }
    std::optional<Attachment> the_photo() {
        const auto visit = phone_.desk().visit(session_);
        for (const auto& one : visit->attachments)
            if (one.kind == AttachmentKind::photo) return one;
        return {};
    }
    ReadingId dry_reading(const char* bar) {
        Reading reading;
        reading.id = phone_.desk().make_id<ReadingId>();
        reading.session = session_;
        reading.cylinder = 2;
        reading.final = TypedPressure::make(bar, units::bar).value();
        if (!phone_.run(workflow::keep_reading(reading))) qFatal("the reading was not kept");
        return reading.id;
    }
    /// A photo of a gauge in the middle of the camera's picture.
    static QImage gauge() {
        QImage image(1280, 720, QImage::Format_RGB32);
        image.fill(QColor(60, 70, 80));
        const QImage photo(QStringLiteral(LAPWING_FIXTURES "/gauge-photos/g005.jpg"));
        QPainter(&image).drawImage(QRect(160, 0, 960, 720), photo);
        return image;
    }
    // tests/fixtures/gauge-photos/truth.csv, g005.jpg: its scale's end and the value its needle points at.
    static constexpr double gauge_scale_bar = 10, gauge_shows_bar = 4.0653;

    Phone phone_;
    platform::LoadedMedia media_;
    EngineId engine_;
    SessionId session_;
    TesterId tester_;
    QString speech_;
    std::vector<double> said_;
};

}  // namespace lapwing::test

LAPWING_APP_TEST_MAIN(lapwing::test::CaptureTest)
#include "capture_test.moc"

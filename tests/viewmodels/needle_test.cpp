// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/findings/findings.h"
#include "core/findings/photo_reading.h"
#include "core/store/attachment_files.h"
#include "core/workflow/remarks.h"
#include "qml/viewmodels/evidence_model.h"
#include "qml/viewmodels/needle_model.h"
#include "qml/viewmodels/pad_model.h"
#include "tests/viewmodels/measured_visit.h"

namespace lapwing {
namespace {

const QString as_read = QStringLiteral("as read");
const QString as_typed = QStringLiteral("as typed");

/// 6.4 bar was typed off a gauge whose photo reads 9.1 bar; a wet test came an hour later.
struct Bench {
    Bench() {
        visit.dry(1, "6.4");
        visit.shop.settle();
        typed = visit.stored().readings[0];
        visit.shop.clock.move_to({typed.taken_at.unix_ms + 3'600'000, 60});
        Reading wet;
        wet.session = visit.session;
        wet.test = TestKind::wet;
        wet.cylinder = 1;
        wet.final = MeasuredVisit::bar("7.0");
        visit.shop.desk->run(workflow::keep_reading(wet));

        const QByteArray bytes("\xff\xd8 a picture");
        const auto file = visit.shop.desk->files().keep(
            {reinterpret_cast<const unsigned char*>(bytes.constData()), std::size_t(bytes.size())});
        Attachment photo;
        photo.id = visit.shop.desk->make_id<AttachmentId>();
        photo.session = visit.session;
        photo.tie = {TiedTo::reading, typed.id.uuid, {}, {}};
        photo.photo_of = PhotoOf::gauge;
        photo.sha256 = file->sha256;
        photo.media_type = "image/jpeg";
        photo.bytes = bytes.size();
        photo.taken_at = typed.taken_at;
        photo.read_value = MeasuredVisit::bar("9.1");
        photo.read_uncertainty = MeasuredVisit::bar("0.05");
        photo.read_confidence = TypedRatio::make("0.9", units::one).value();
        visit.shop.desk->run(workflow::save_attachment(photo));
        visit.shop.clock.move_to({typed.taken_at.unix_ms + 7'200'000, 60});
        visit.shop.settle();
        model.setSessionId(text_id(visit.session));
        complete(model, visit.shop);
        model.setPhotoId(text_id(photo.id));
    }
    void settle(const QString& way) {
        model.settle(way);
        visit.shop.settle();
    }
    /// The dry reading that counts.
    [[nodiscard]] Reading standing() const {
        const auto all = visit.stored().readings;
        for (const auto& one : all) {
            const bool replaced =
                std::ranges::any_of(all, [&](const Reading& other) { return other.replaces == one.id; });
            if (one.test == TestKind::dry && !replaced) return one;
        }
        return {};
    }
    [[nodiscard]] bool told_open() const {
        PadModel pad;
        pad.setSessionId(text_id(visit.session));
        pad.setProperty("test", QStringLiteral("dry"));
        complete(pad, const_cast<Shop&>(visit.shop));
        const auto earlier = pad.history();
        return !earlier.isEmpty() &&
               earlier.last().toMap()["about"].toString().contains(QStringLiteral("not settled"));
    }

    MeasuredVisit visit{1};
    Reading typed;
    NeedleModel model;
};

}  // namespace

class NeedleTest : public QObject {
    Q_OBJECT

private slots:
    void a_difference_is_said_on_the_reading_until_it_is_settled() {
        Bench bench;
        QVERIFY(bench.model.differs());
        QVERIFY(bench.told_open());
        EvidenceModel evidence;
        evidence.setSessionId(text_id(bench.visit.session));
        complete(evidence, bench.visit.shop);
        QVERIFY(evidence.items()[0].toMap()["reading"].toString().contains(QStringLiteral("differs")));
        bench.settle(as_typed);
        QVERIFY(!bench.told_open());
        QCOMPARE(bench.standing().id, bench.typed.id);
    }

    void the_photo_stands_in_without_changing_when_it_was() {
        Bench bench;
        QSignalSpy said(bench.visit.shop.app.get(), &AppContext::stepDone);
        bench.settle(as_read);
        // Nothing was measured again.
        QCOMPARE(said.last().first().toString(),
                 QStringLiteral("dry test, cylinder 1: the photo's figure stands"));
        const Reading now = bench.standing();
        QCOMPARE(now.final->text(), std::string("9.1 bar"));
        QCOMPARE(now.from, ReadingFrom::photo);
        QCOMPARE(now.replaces, bench.typed.id);
        QCOMPARE(now.taken_at, bench.typed.taken_at);
        // The oil came later: this is still a dry reading of an unoiled bore.
        QCOMPARE(now.oiled, Oiled::no);
        QVERIFY(bench.model.line().contains(QStringLiteral("you typed 6.4")));
        QVERIFY(bench.model.differs());
        QCOMPARE(bench.model.settled(), as_read);
    }

    void what_was_typed_can_be_put_back() {
        Bench bench;
        bench.settle(as_read);
        bench.settle(as_typed);
        Reading now = bench.standing();
        QCOMPARE(now.final->text(), std::string("6.4 bar"));
        QCOMPARE(now.from, ReadingFrom::typed);
        QCOMPARE(now.taken_at, bench.typed.taken_at);
        bench.settle(as_read);
        QCOMPARE(bench.standing().final->text(), std::string("9.1 bar"));
        bench.visit.shop.undo();
        QCOMPARE(bench.standing().final->text(), std::string("6.4 bar"));
        QCOMPARE(bench.model.settled(), as_typed);
    }

    void a_number_that_came_off_the_photo_is_nobody_s_typing() {
        Bench bench;
        Reading alone = bench.typed;
        alone.id = bench.visit.shop.desk->make_id<ReadingId>();
        alone.from = ReadingFrom::photo;
        bench.visit.shop.desk->run(workflow::keep_reading(alone));
        Attachment photo = bench.visit.stored().attachments[0];
        photo.tie.record = alone.id.uuid;
        bench.visit.shop.desk->run(workflow::save_attachment(photo));
        bench.visit.shop.settle();
        QVERIFY(!bench.model.line().contains(QStringLiteral("typed")));
        QVERIFY(bench.model.choices().isEmpty());
    }

    void the_number_of_a_photo_that_came_first_can_be_kept_later() {
        Bench bench;
        Attachment photo = bench.visit.stored().attachments[0];
        photo.tie = {TiedTo::cylinder, {}, 1, {}};
        bench.visit.shop.desk->run(workflow::save_attachment(photo));
        bench.visit.leak(1, "5.5", "5.2");
        bench.visit.shop.settle();
        // Nobody said on which pad it was taken: each test that it can be of is offered.
        QStringList tests;
        for (const auto& offer : bench.model.offers())
            tests << offer.toMap()["value"].toString();
        QCOMPARE(tests,
                 (QStringList{QStringLiteral("dry"), QStringLiteral("wet"), QStringLiteral("leak-down")}));
        bench.model.keepAsReading(QStringLiteral("leak-down"));
        bench.visit.shop.settle();
        const auto kept = bench.visit.stored().readings.back();
        // 9.1 of 5.5 bar: what is impossible is for the findings to question, nothing is lost.
        QCOMPARE(kept.held->text(), std::string("9.1 bar"));
        QCOMPARE(kept.set->text(), std::string("5.5 bar"));
        QCOMPARE(kept.from, ReadingFrom::photo);
        QCOMPARE(bench.visit.stored().attachments[0].tie.record, kept.id.uuid);
        QVERIFY(bench.model.offers().isEmpty());
    }

    void a_number_that_is_kept_off_a_fresh_photo_is_undone_with_its_tie() {
        Bench bench;
        Attachment photo = bench.visit.stored().attachments[0];
        photo.tie = {TiedTo::cylinder, {}, 1, {}};
        photo.taken_at = bench.visit.shop.clock.now();
        bench.visit.shop.desk->run(workflow::save_attachment(photo));
        bench.visit.shop.settle();
        const auto readings = bench.visit.stored().readings;
        bench.model.keepAsReading(QStringLiteral("dry"));
        bench.visit.shop.settle();
        QCOMPARE(bench.visit.stored().attachments[0].tie.record,
                 bench.visit.stored().readings.back().id.uuid);
        bench.visit.shop.undo();
        QCOMPARE(bench.visit.stored().readings, readings);
        QCOMPARE(bench.visit.stored().attachments[0].tie.to, TiedTo::cylinder);
        QCOMPARE(bench.visit.stored().attachments[0].tie.cylinder, 1);
    }
};

}  // namespace lapwing

QTEST_MAIN(lapwing::NeedleTest)
#include "needle_test.moc"

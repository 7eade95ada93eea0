// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QImage>
#include <QPainter>

#include "tests/core/report/sample.h"
#include "tests/report/paper.h"

/// What hangs on a visit beside its readings: photos, other people's opinions, the owner's decision.
namespace lapwing::print {
namespace {

namespace sample = report::sample;

Attachment photo_of(const Visit& visit, const Reading& reading, char digit) {
    Attachment photo;
    photo.session = visit.session.id;
    photo.tie = {TiedTo::reading, reading.id.uuid, {}, {}};
    photo.photo_of = PhotoOf::gauge;
    photo.sha256 = std::string(64, digit);
    photo.media_type = "image/jpeg";
    return photo;
}

class PrintedPhotos : public testing::Test {
protected:
    sample::Shop shop_ = sample::orchard();
    Visit& visit_ = shop_.dossier.visits.back();
    QTemporaryDir folder_;

    void SetUp() override {
        QImage dial(640, 480, QImage::Format_RGB32);
        dial.fill(Qt::white);
        QPainter painter(&dial);
        painter.setPen(QPen(Qt::black, 8));
        painter.drawEllipse(QPoint(320, 240), 200, 200);
        painter.drawLine(320, 240, 440, 120);
        painter.end();
        ASSERT_TRUE(dial.save(folder_.filePath("stored"), "JPG", 90));
    }

    [[nodiscard]] Paper print() {
        return Paper(shop_.report(), format::Formatter(), PageSize::a4, [this](const std::string& sha256) {
            return sha256[0] == 'a' ? std::filesystem::path(folder_.filePath("stored").toStdString())
                                    : std::filesystem::path("/no/such/photo");
        });
    }
};

TEST_F(PrintedPhotos, StandWithTheReadingsThatTheyShow) {
    Attachment agrees = photo_of(visit_, visit_.readings[0], 'a');
    agrees.read_value = sample::bar("6.4");
    agrees.read_uncertainty = sample::bar("0.1");
    agrees.read_settled = ReadSettled::left_open;
    Attachment missing = photo_of(visit_, visit_.readings[2], 'b');
    missing.caption = "Needle shook";
    missing.read_refusal = "unsure";
    visit_.attachments = {agrees, missing};
    const Paper paper = print();
    const QString words = paper.words();
    // 6.1 bar was typed in the sample for the first reading; 3.5 of 5.5 bar held for the third.
    for (const char* there :
         {"Photos", "Cylinder 1 · dry test", "Typed: 6.1 bar",
          "The needle reads: 6.4 bar ± 0.2, needle set by hand, left open", "Needle not read",
          "Cylinder 1 · leak-down", "Held: 3.5 bar", "Needle shook", "This photo is not stored here."})
        EXPECT_TRUE(words.contains(there, Qt::CaseInsensitive)) << there << "\n" << words.toStdString();
    // How a better photo is taken is not the owner's to know.
    EXPECT_FALSE(words.contains("square on")) << words.toStdString();
    // One picture in the file, on the page of its caption.
    const QStringList pictures = paper.images().split('\n', Qt::SkipEmptyParts).mid(2);
    ASSERT_EQ(pictures.size(), 1) << paper.images().toStdString();
    const int page = pictures[0].simplified().split(' ')[0].toInt();
    EXPECT_TRUE(
        run("pdftotext", {"-f", QString::number(page), "-l", QString::number(page), paper.file(), "-"})
            .contains("The needle reads"));
    expect_nothing_overlaps_or_leaves_the_page(paper, a4);
}

TEST_F(PrintedPhotos, FitHoweverManyThereAre) {
    for (int i = 0; i < 23; ++i) {
        Attachment photo = photo_of(visit_, visit_.readings[static_cast<std::size_t>(i) % 6], 'a');
        photo.caption = "A caption that goes on for a while because somebody had a lot to say about it";
        visit_.attachments.push_back(photo);
    }
    const Paper paper = print();
    EXPECT_EQ(paper.images().split('\n', Qt::SkipEmptyParts).size(), 2 + 23);
    expect_nothing_overlaps_or_leaves_the_page(paper, a4);
}

TEST_F(PrintedPhotos, OfAReadingThatWasDoneAgainAreLeftOut) {
    visit_.attachments = {photo_of(visit_, visit_.readings[0], 'a')};
    Reading& again = shop_.read(visit_, TestKind::dry, 1);
    again.final = sample::bar("6.2");
    again.replaces = visit_.readings[0].id;
    EXPECT_FALSE(print().words().contains("Photos"));
}

TEST(Opinions, AndTheOwnersDecisionStandInTheReport) {
    sample::Shop shop = sample::orchard();
    Visit& visit = shop.dossier.visits.back();
    Note cause;
    cause.kind = NoteKind::other_cause;
    cause.cause = Cause::intake;
    cause.tie = {TiedTo::finding, {}, 1, "cylinder.leaks_at"};
    cause.author = "A mentor far away";
    cause.text = "The intake seat looks pitted on the photo.";
    cause.at = sample::day("2026-03-16");
    Note request = cause;
    request.kind = NoteKind::test_request;
    request.cause.reset();
    request.test = TestKind::leak_down;
    request.tie = {TiedTo::reading, visit.readings[0].id.uuid, {}, {}};
    request.text = "Please once more with the valve staked.";
    Note call = cause;
    call.kind = NoteKind::my_call;
    call.text = "A learner's own call.";
    visit.notes = {cause, request, call};
    const Paper paper(shop.report());
    const QString words = paper.words();
    for (const char* there :
         {"second opinions", "other cause, intake valve", "The intake seat looks pitted", "A mentor far away",
          "please test this", "with the valve staked", "Owner's answer", "yes, Mar 15, 2026"})
        EXPECT_TRUE(words.contains(there)) << there << "\n" << words.toStdString();
    // A learner's own call is for the mentor, not for the owner.
    EXPECT_TRUE(words.contains("my call, intake valve"));
    EXPECT_TRUE(words.contains("A learner's own call."));
    const QString for_owner =
        Paper(shop.report({true, false, sample::day("2026-03-15"), nullptr, false})).words();
    EXPECT_FALSE(for_owner.contains("A learner's own call."));
    EXPECT_TRUE(for_owner.contains("The intake seat looks pitted"));
    expect_nothing_overlaps_or_leaves_the_page(paper, a4);
}

}  // namespace
}  // namespace lapwing::print

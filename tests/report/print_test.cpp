// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QBuffer>
#include <QGuiApplication>

#include "core/odds/data_files.h"
#include "tests/core/report/sample.h"
#include "tests/report/paper.h"

namespace lapwing::print {
namespace {

namespace sample = report::sample;

const QString long_words = QStringLiteral(
    "A very long remark by somebody who had a lot to say about this engine and said all of it, with a "
    "partnumberthathasnospacesinitatallandisfarlongerthananycolumnofanytable, twice over. ");

TEST(Pdf, HoldsVerdictsFiguresAndCircumstances) {
    const Paper paper(sample::orchard().report());
    const QString words = paper.drawn();
    for (const char* there : {"Orchard V-twin",
                              "Mill Lane Engine Club",
                              "8000 km",
                              "Job number",
                              "114",
                              "As found",
                              "6.1 bar",
                              "7.7 bar",
                              "36 %",
                              "5.5 bar",
                              "front",
                              "rear",
                              "fault",
                              "strong",
                              "0.18 mm",
                              "Bench gauge",
                              "EN 837-1",
                              "420 EUR",
                              "The seat burns away and the head is lost.",
                              "Lost power over one season.",
                              "240 m",
                              "Page 1 of"})
        EXPECT_TRUE(words.contains(there)) << there << "\n" << words.toStdString();
    EXPECT_FALSE(words.contains("bench@mill-lane.example"));
}

TEST(Pdf, ShowsWhereItLeaksWithItsRangesAndWhatItRestsOn) {
    const auto leaks = sample::odds_of_orchard();
    report::Options options;
    options.leaks = &leaks;
    options.appendix = true;
    const Paper paper(sample::orchard().report(options));
    expect_nothing_overlaps_or_leaves_the_page(paper, a4);
    const QString words = paper.words();
    for (const char* there :
         {"Where it leaks", "Cylinder 1 leaks mostly at the exhaust valve: odds 95 %.", "Exhaust valve",
          "80 %, 70 to 90 %", "20 %, 10 to 30 %", "Under 1 % each: head gasket",
          "Cylinder 2 seals well: odds 90 %.", "not yet counted on real engines", "Assumptions, version",
          "Its ± comes from: gauge, its class and zero"})
        EXPECT_TRUE(words.contains(there)) << there << "\n" << words.toStdString();
    options.appendix = false;
    EXPECT_FALSE(Paper(sample::orchard().report(options)).words().contains("Its ± comes from"));
}

TEST(Pdf, DerivesTheReadingToExpectAfterARepair) {
    auto leaks = sample::odds_of_orchard();
    odds::CylinderOdds& first = leaks.cylinders.front();
    odds::AfterRepair valve;
    valve.repair = findings::Path::exhaust;
    valve.value_pa = 9.6e5;
    valve.lo_pa = 9.0e5;
    valve.hi_pa = 10.2e5;
    valve.doubts = {{findings::Word{"doubt:day"}, 0.7}, {findings::Word{"doubt:sound_part"}, 0.3}};
    first.expected_after = {valve};
    for (odds::PathOdds& path : first.paths)
        if (path.path == findings::Path::exhaust) path.fault = 0.9;
    report::Options options;
    options.leaks = &leaks;
    options.appendix = true;
    const QString words = Paper(sample::orchard().report(options)).words();
    for (const char* there : {"Dry test to expect after a repair", "p(A − A₁ + A₀)", "to expect, at least",
                              "one day to the next 70 %"})
        EXPECT_TRUE(words.contains(there)) << there << "\n" << words.toStdString();
    options.appendix = false;
    EXPECT_FALSE(Paper(sample::orchard().report(options)).words().contains("one day to the next 70 %"));
}

TEST(Pdf, SaysEveryHeadline) {
    const report::Report report = sample::orchard().report();
    const format::Formatter formatter;
    const QString words = Paper(report, formatter).words();
    int said = 0;
    for (const auto& block : report.sections.at(1).blocks) {
        const auto* verdicts = std::get_if<report::Verdicts>(&block);
        if (!verdicts) continue;
        for (const auto& verdict : verdicts->verdicts) {
            const QString headline = formatter.text(verdict.headline);
            EXPECT_TRUE(words.contains(headline)) << headline.toStdString();
            ++said;
        }
    }
    EXPECT_EQ(said, 2);
}

/// The owner's report has no appendix: what it can be worked out again from stands in the file's properties.
TEST(Pdf, PropertiesNameWhatItRestsOn) {
    auto plain = sample::orchard().report();
    const QString told = QStringLiteral("Creator:\\s+Lapwing \\S+, data %1")
                             .arg(QString::fromStdString(odds::sum_of(odds::built_in_data())));
    QString info = Paper(plain).info();
    EXPECT_TRUE(info.contains(QRegularExpression(told + '\n'))) << info.toStdString();
    plain.basis.odds = {12, 345};
    info = Paper(plain).info();
    EXPECT_TRUE(info.contains(QRegularExpression(told + ", working assumptions 12, seed 345\n")))
        << info.toStdString();
}

TEST(Pdf, HasTitleCreatorAndTheEmbeddedTypeface) {
    const Paper paper(sample::orchard().report());
    EXPECT_TRUE(paper.info().contains(QRegularExpression("Title:\\s+Orchard V-twin")));
    EXPECT_TRUE(paper.info().contains(QRegularExpression("Creator:\\s+Lapwing")));
    EXPECT_TRUE(paper.info().contains("(A4)")) << paper.info().toStdString();
    const QStringList fonts = paper.fonts().split('\n', Qt::SkipEmptyParts).mid(2);
    ASSERT_FALSE(fonts.isEmpty());
    EXPECT_TRUE(paper.fonts().contains("B612-Regular"));
    EXPECT_TRUE(paper.fonts().contains("B612-Bold"));
    EXPECT_FALSE(paper.fonts().contains("Mono"));
    // A letter that B612 lacks may come from another typeface, but every one lies in the file.
    for (const QString& font : fonts) {
        // Columns of pdffonts: ... emb sub uni
        EXPECT_TRUE(font.contains(QRegularExpression("\\syes\\s+(yes|no)\\s+(yes|no)\\s")))
            << font.toStdString();
    }
}

TEST(Pdf, ComesOnLetterPaperToo) {
    const Paper paper(sample::orchard().report(), format::Formatter(), PageSize::letter);
    EXPECT_TRUE(paper.info().contains("(letter)")) << paper.info().toStdString();
    expect_nothing_overlaps_or_leaves_the_page(paper, letter);
}

class EveryEngine : public testing::TestWithParam<int> {};

TEST_P(EveryEngine, FitsOnThePaper) {
    const report::Report report = sample::row_of(GetParam()).report();
    const Paper paper(report);
    expect_nothing_overlaps_or_leaves_the_page(paper, a4);
    const QString words = paper.words();
    for (int number = 1; number <= GetParam(); ++number)
        EXPECT_TRUE(words.contains(QStringLiteral("Cylinder %1").arg(number)));
    EXPECT_TRUE(words.contains(QStringLiteral("Page %1 of %1").arg(paper.pages())));
    // Four pages are what an owner is handed; sixteen cylinders with every test may take a few more, with the
    // heads of their tables repeated on each.
    EXPECT_LE(paper.pages(), GetParam() <= 6 ? 4 : 6);
}

TEST_P(EveryEngine, FitsWithItsOdds) {
    const auto leaks = sample::odds_of_row(GetParam());
    report::Options options;
    options.leaks = &leaks;
    options.appendix = true;
    expect_nothing_overlaps_or_leaves_the_page(Paper(sample::row_of(GetParam()).report(options)), a4);
}

TEST_P(EveryEngine, FitsWithLongTextsEverywhere) {
    const report::Report report = sample::row_of(GetParam(), long_words.toStdString()).report();
    const Paper paper(report);
    expect_nothing_overlaps_or_leaves_the_page(paper, a4);
    const QString words = paper.words();
    EXPECT_TRUE(words.contains("twice over."));
}

INSTANTIATE_TEST_SUITE_P(Cylinders, EveryEngine, testing::Values(1, 2, 6, 16));

TEST(Pdf, KeepsEveryWordOfATextLongerThanAPage) {
    sample::Shop shop(1);
    Visit& visit = shop.visit("2026-03-14", "");
    for (int i = 0; i < 2000; ++i)
        visit.session.complaint.text += "w" + std::to_string(i) + " ";
    const Paper paper(shop.report());
    EXPECT_GE(paper.pages(), 2);
    const QString words = paper.words();
    for (int i = 0; i < 2000; ++i)
        ASSERT_TRUE(words.contains(QStringLiteral("w%1").arg(i))) << i;
    expect_nothing_overlaps_or_leaves_the_page(paper, a4);
}

TEST(Pdf, KeepsRowsWholeAndRepeatsTheHead) {
    const Paper paper(sample::row_of(16).report());
    const auto words = paper.boxes();
    // Every row of the readings starts with its cylinder's number and has its figures on the same page.
    std::map<int, int> heads;
    for (const auto& word : words)
        if (word.text == "Rise:") ++heads[word.page];
    int rows = 0;
    for (const auto& [page, count] : heads) {
        rows += count;
        int firsts = 0;
        for (const auto& word : words)
            firsts += word.page == page && word.text == "puff:";
        EXPECT_EQ(firsts, count) << "page " << page;
    }
    EXPECT_EQ(rows, 16);
}

TEST(Pdf, SpeaksTheUsersUnitsAndLocale) {
    format::Choice choice;
    choice.pressure = units::psi;
    const QString words =
        Paper(sample::orchard().report(), format::Formatter(choice, QLocale(QLocale::German))).words();
    EXPECT_TRUE(words.contains(" psi"));
    // 6.1 bar: 1 psi is 4.4482216152605 N / 0.00064516 m2 (NIST SP 811), so 88.5 psi.
    EXPECT_TRUE(words.contains(QRegularExpression("88(,\\d)? psi"))) << words.toStdString();
}

TEST(Pdf, NamesAPlaceThatCannotBeWritten) {
    const auto status = write_pdf(sample::orchard().report(), format::Formatter(),
                                  std::filesystem::path("/no/such/folder/r.pdf"));
    ASSERT_FALSE(status);
    EXPECT_EQ(status.error().code, "file.not_found");
    EXPECT_THAT(status.error().english, testing::HasSubstr("/no/such/folder/r.pdf"));
}

TEST(Pdf, ReportsADeviceThatTakesNothing) {
    QBuffer closed;
    EXPECT_FALSE(write_pdf(sample::orchard().report(), format::Formatter(), closed));
}

}  // namespace
}  // namespace lapwing::print

int main(int argc, char** argv) {
    testing::InitGoogleTest(&argc, argv);
    QGuiApplication application(argc, argv);
    return RUN_ALL_TESTS();
}

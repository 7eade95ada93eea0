// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QBuffer>
#include <QFile>
#include <QGuiApplication>
#include <QProcess>
#include <QRectF>
#include <QRegularExpression>
#include <QTemporaryDir>

#include "qml/print/pdf.h"
#include "tests/core/report/sample.h"

/// What stands on the paper is read back with poppler's tools, the reference library of these tests.
namespace lapwing::print {
namespace {

namespace sample = report::sample;

QString run(const QString& program, const QStringList& arguments) {
    QProcess process;
    process.start(program, arguments);
    if (!process.waitForFinished(60000) || process.exitStatus() != QProcess::NormalExit ||
        process.exitCode() != 0)
        throw std::runtime_error("poppler-utils: " + program.toStdString() + " did not run");
    return QString::fromUtf8(process.readAllStandardOutput());
}

class Paper {
public:
    explicit Paper(const report::Report& report, const format::Formatter& formatter = format::Formatter(),
                   PageSize size = PageSize::a4) {
        const auto written = write_pdf(report, formatter, folder_.filePath("report.pdf").toStdString(), size);
        if (!written) throw std::runtime_error(written.error().english);
        file_ = folder_.filePath("report.pdf");
        if (const QString keep = qEnvironmentVariable("LAPWING_KEEP_PDF"); !keep.isEmpty()) {
            const auto* test = testing::UnitTest::GetInstance()->current_test_info();
            const QString name = QStringLiteral("%1/%2-%3.pdf")
                                     .arg(keep, QString(test->name()).replace('/', '-'))
                                     .arg(++kept_);
            QFile::remove(name);
            QFile::copy(file_, name);
        }
    }

    [[nodiscard]] QString text() const { return run("pdftotext", {"-layout", file_, "-"}); }
    /// The words in reading order, one space between them, so that a line break hides no sentence.
    [[nodiscard]] QString words() const { return run("pdftotext", {file_, "-"}).simplified(); }
    [[nodiscard]] QString info() const { return run("pdfinfo", {file_}); }
    [[nodiscard]] QString fonts() const { return run("pdffonts", {file_}); }
    [[nodiscard]] int pages() const {
        return QRegularExpression("Pages:\\s+(\\d+)").match(info()).captured(1).toInt();
    }

    struct Word {
        int page;
        QRectF box;
        QString text;
    };
    /// Every word with its box in points.
    [[nodiscard]] std::vector<Word> boxes() const {
        static const QRegularExpression line(
            "<page width=|<word xMin=\"([\\d.]+)\" yMin=\"([\\d.]+)\" xMax=\"([\\d.]+)\" "
            "yMax=\"([\\d.]+)\">([^<]*)<");
        std::vector<Word> words;
        int page = 0;
        auto found = line.globalMatch(run("pdftotext", {"-bbox", file_, "-"}));
        while (found.hasNext()) {
            const auto match = found.next();
            if (match.captured(0).startsWith("<page")) {
                ++page;
                continue;
            }
            const auto at = [&](int i) { return match.captured(i).toDouble(); };
            words.push_back({page, QRectF(QPointF(at(1), at(2)), QPointF(at(3), at(4))), match.captured(5)});
        }
        return words;
    }

private:
    QTemporaryDir folder_;
    QString file_;
    static inline int kept_ = 0;
};

const QString long_words = QStringLiteral(
    "A very long remark by somebody who had a lot to say about this engine and said all of it, with a "
    "partnumberthathasnospacesinitatallandisfarlongerthananycolumnofanytable, twice over. ");

void expect_nothing_overlaps_or_leaves_the_page(const Paper& paper, QSizeF page) {
    const auto words = paper.boxes();
    ASSERT_FALSE(words.empty());
    const QRectF sheet(QPointF(0, 0), page);
    for (const auto& word : words)
        EXPECT_TRUE(sheet.adjusted(30, 15, -30, -15).contains(word.box)) << word.text.toStdString();
    for (std::size_t i = 0; i < words.size(); ++i)
        for (std::size_t j = i + 1; j < words.size(); ++j) {
            if (words[i].page != words[j].page) continue;
            // Line boxes of neighbouring lines may touch; letters may not.
            const QRectF a =
                words[i].box.adjusted(0.5, words[i].box.height() * 0.25, -0.5, -words[i].box.height() * 0.25);
            const QRectF b =
                words[j].box.adjusted(0.5, words[j].box.height() * 0.25, -0.5, -words[j].box.height() * 0.25);
            EXPECT_FALSE(a.intersects(b)) << words[i].text.toStdString() << " over "
                                          << words[j].text.toStdString() << " on page " << words[i].page;
        }
}

constexpr QSizeF a4(595.3, 841.9);
constexpr QSizeF letter(612, 792);

TEST(Pdf, HoldsVerdictsFiguresAndCircumstances) {
    const Paper paper(sample::orchard().report());
    const QString words = paper.words();
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
    const Paper paper(sample::orchard().report(options));
    expect_nothing_overlaps_or_leaves_the_page(paper, a4);
    const QString words = paper.words();
    for (const char* there :
         {"Where it leaks", "Cylinder 1 leaks mostly at the exhaust valve: odds 95 %.", "Exhaust valve",
          "80 %, 70 to 90 %", "20 %, 10 to 30 %", "Under 1 % each: head gasket",
          "Cylinder 2 seals well: odds 90 %.", "not yet counted on real engines", "Assumptions, version"})
        EXPECT_TRUE(words.contains(there)) << there << "\n" << words.toStdString();
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
    // A page holds about 60 lines; an engine of 16 needs several lines in each of six tables, one of 1 few.
    EXPECT_LE(paper.pages(), GetParam() <= 2 ? 5 : 14);
}

TEST_P(EveryEngine, FitsWithItsOdds) {
    const auto leaks = sample::odds_of_row(GetParam());
    report::Options options;
    options.leaks = &leaks;
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
    EXPECT_EQ(status.error().code, "print.write");
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

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <gtest/gtest.h>

#include <QFile>
#include <QProcess>
#include <QRectF>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <map>
#include <stdexcept>
#include <vector>

#include "qml/print/pdf.h"
#include "qml/print/wording.h"

/// What stands on the paper is read back with poppler's tools, the reference library of these tests.
namespace lapwing::print {

inline QString run(const QString& program, const QStringList& arguments) {
    QProcess process;
    process.start(program, arguments);
    if (!process.waitForFinished(60000) || process.exitStatus() != QProcess::NormalExit ||
        process.exitCode() != 0)
        throw std::runtime_error("poppler-utils: " + program.toStdString() + " did not run");
    if (const QByteArray complaint = process.readAllStandardError(); !complaint.isEmpty())
        throw std::runtime_error(program.toStdString() + ": " + complaint.toStdString());
    return QString::fromUtf8(process.readAllStandardOutput());
}

class Paper {
public:
    explicit Paper(const report::Report& report, const format::Formatter& formatter = format::Formatter(),
                   PageSize size = PageSize::a4, const PhotoFile& photos = {}) {
        const auto written =
            write_pdf(report, formatter, folder_.filePath("report.pdf").toStdString(), size, photos);
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
    /// The words in the order that they were drawn in: cell by cell, where `words` reads across columns.
    [[nodiscard]] QString drawn() const { return run("pdftotext", {"-raw", file_, "-"}).simplified(); }
    [[nodiscard]] QString info() const { return run("pdfinfo", {file_}); }
    [[nodiscard]] QString images() const { return run("pdfimages", {"-list", file_}); }
    [[nodiscard]] const QString& file() const { return file_; }
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
            QString text = match.captured(5);
            text.replace("&apos;", "'").replace("&quot;", "\"").replace("&amp;", "&");
            words.push_back({page, QRectF(QPointF(at(1), at(2)), QPointF(at(3), at(4))), text});
        }
        return words;
    }

private:
    QTemporaryDir folder_;
    QString file_;
    static inline int kept_ = 0;
};

inline void expect_nothing_overlaps_or_leaves_the_page(const Paper& paper, QSizeF page) {
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

/// No line begins with the sign or the unit of the figure before it, none with a lone doubt, and none ends
/// within a range.
inline void expect_figures_on_one_line(const Paper& paper) {
    const QString text = run("pdftotext", {"-raw", paper.file(), "-"});
    static const QRegularExpression broken("^(%|bar|psi|mm) \\S|^± \\d|\\d\u2013$",
                                           QRegularExpression::MultilineOption);
    const auto match = broken.match(text);
    EXPECT_FALSE(match.hasMatch())
        << text.mid(std::max<qsizetype>(0, match.capturedStart() - 80), 160).toStdString();
}

/// Every short word that stands in a table stands on the paper in one piece, as often: "hos / e" is none.
inline void expect_short_words_of_tables_whole(const Paper& paper, const report::Report& report,
                                               const format::Formatter& formatter) {
    constexpr qsizetype short_word = 9;
    std::map<QString, int> left;
    for (const auto& word : paper.boxes())
        ++left[word.text];
    const Wording wording(formatter);
    for (const report::Section& section : report.sections)
        for (const report::Block& block : section.blocks)
            if (const auto* table = std::get_if<report::Table>(&block))
                for (const auto& row : table->rows)
                    for (const report::Cell& cell : row)
                        for (const report::Line& line : cell.lines)
                            for (const QString& word : wording.text(line)
                                                           .replace(QChar::Nbsp, u' ')
                                                           .split(u' ', Qt::SkipEmptyParts)) {
                                if (word.size() > short_word || !word.front().isLetter()) continue;
                                EXPECT_GE(--left[word], 0) << word.toStdString() << " is broken";
                            }
}

/// How much of a page is used, down to the last line above the running foot.
inline double used_of_page(const Paper& paper, int page, QSizeF sheet) {
    double lowest = 0.0;
    for (const auto& word : paper.boxes())
        if (word.page == page && word.box.bottom() < sheet.height() - 40.0)
            lowest = std::max(lowest, word.box.bottom());
    return lowest / sheet.height();
}

/// A page for a few lines is a page too many.
inline void expect_last_page_used(const Paper& paper, QSizeF sheet) {
    EXPECT_GT(used_of_page(paper, paper.pages(), sheet), 0.2);
}

inline constexpr QSizeF a4(595.3, 841.9);
inline constexpr QSizeF letter(612, 792);

}  // namespace lapwing::print

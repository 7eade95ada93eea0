// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/report/demo.h"
#include "tests/report/paper.h"
#include "tests/report/spoken.h"

/// Every visit of the demo in the languages that the app speaks, as an owner is handed it.
namespace lapwing::print {
namespace {

struct Case {
    demo::VisitOf visit;
    const char* language;
};

class Languages : public testing::TestWithParam<Case> {
protected:
    Spoken spoken_{GetParam().language};
    report::Report report_ = demo::report_of(GetParam().visit, false);
    format::Formatter format_{{}, QLocale(QString::fromLatin1(GetParam().language))};
};

TEST_P(Languages, TakesAtMostFourPages) {
    const Paper on_a4(report_, format_);
    EXPECT_LE(on_a4.pages(), 4);
    expect_nothing_overlaps_or_leaves_the_page(on_a4, a4);
    const Paper on_letter(report_, format_, PageSize::letter);
    EXPECT_LE(on_letter.pages(), 4);
    expect_nothing_overlaps_or_leaves_the_page(on_letter, letter);
    expect_last_page_used(on_a4, a4);
    expect_last_page_used(on_letter, letter);
}

TEST_P(Languages, KeepsShortWordsWhole) {
    expect_short_words_of_tables_whole(Paper(report_, format_), report_, format_);
    expect_short_words_of_tables_whole(Paper(report_, format_, PageSize::letter), report_, format_);
}

/// "Mar 14, / 2025"
TEST_P(Languages, KeepsDaysOnOneLine) {
    const QString text = run("pdftotext", {"-raw", Paper(report_, format_).file(), "-"});
    for (const QString& day : {format_.shortDate(report_.made_at), format_.shortDate(report_.session_at)})
        EXPECT_EQ(text.count(QString(day).replace(u' ', u'\n')), 0);
    static const QRegularExpression broken("\\n(2025|2026)\\b");
    EXPECT_FALSE(text.contains(broken)) << text.mid(text.indexOf(broken) - 60, 120).toStdString();
}

/// What a mentor gets beside it, with its appendix.
TEST_P(Languages, HoldsItsAppendix) {
    const report::Report whole = demo::report_of(GetParam().visit, true);
    for (const auto& [size, sheet] : {std::pair{PageSize::a4, a4}, std::pair{PageSize::letter, letter}}) {
        const Paper paper(whole, format_, size);
        EXPECT_LE(paper.pages(), 6);
        expect_nothing_overlaps_or_leaves_the_page(paper, sheet);
        expect_last_page_used(paper, sheet);
    }
    expect_short_words_of_tables_whole(Paper(whole, format_), whole, format_);
}

/// "Cilindro 1  El cilindro 1 ..." names it twice.
TEST_P(Languages, NamesACylinderOnce) {
    const QString words = Paper(report_, format_).words();
    static const QRegularExpression twice(
        "(cylinder|zylinder|cilindro) (\\d+) (?:\\w{1,3} )?\\1 \\2\\b",
        QRegularExpression::CaseInsensitiveOption | QRegularExpression::UseUnicodePropertiesOption);
    const auto match = twice.match(words);
    EXPECT_FALSE(match.hasMatch()) << words.mid(match.capturedStart(), 120).toStdString();
}

TEST_P(Languages, KeepsFiguresOnOneLine) {
    expect_figures_on_one_line(Paper(report_, format_));
}

std::vector<Case> cases() {
    std::vector<Case> out;
    for (const demo::VisitOf& visit : demo::visits)
        for (const char* language : {"en", "de", "es"})
            out.push_back({visit, language});
    return out;
}

INSTANTIATE_TEST_SUITE_P(Visits, Languages, testing::ValuesIn(cases()), [](const auto& info) {
    return demo::name_of(info.param.visit) + "_" + info.param.language;
});

}  // namespace
}  // namespace lapwing::print

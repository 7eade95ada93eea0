// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QImage>
#include <QPainter>

#include "core/odds/where_it_leaks.h"
#include "qml/print/wording.h"
#include "tests/report/paper.h"
#include "tests/report/shops.h"
#include "tests/report/spoken.h"

/// Engines of every kind in the languages that the app speaks, as an owner is handed them: with their odds.
namespace lapwing::print {
namespace {

namespace sample = report::sample;

struct Kind {
    const char* name;
    sample::Shop (*shop)();
};
constexpr Kind kinds[] = {{"Four", sample::petrol_four},    {"Eight", sample::vee_eight},
                          {"Diesel", sample::diesel_four},  {"TwoStroke", sample::two_stroke_twin},
                          {"Unheard", sample::six_unheard}, {"Years", sample::six_over_years}};

/// The odds take their time: each report is made once.
const report::Report& report_of(const Kind& kind) {
    static std::map<std::string, report::Report> made;
    auto at = made.find(kind.name);
    if (at == made.end()) {
        const sample::Shop shop = kind.shop();
        const auto reference = findings::built_in_reference().value();
        const auto leaks = odds::where_it_leaks(shop.dossier, shop.dossier.visits.back(), reference);
        if (!leaks) throw std::runtime_error(leaks.error().english);
        report::Options options;
        options.made_at = sample::day("2026-03-15");
        options.leaks = &*leaks;
        at = made.emplace(kind.name, shop.report(options)).first;
    }
    return at->second;
}

struct Case {
    Kind kind;
    const char* language;
};

class Shops : public testing::TestWithParam<Case> {
protected:
    Spoken spoken_{GetParam().language};
    const report::Report& report_ = report_of(GetParam().kind);
    format::Formatter format_{{}, QLocale(QString::fromLatin1(GetParam().language))};
    QTemporaryDir folder_;

    void SetUp() override {
        QImage dial(640, 480, QImage::Format_RGB32);
        dial.fill(Qt::white);
        QPainter painter(&dial);
        painter.setPen(QPen(Qt::black, 8));
        painter.drawEllipse(QPoint(320, 240), 200, 200);
        painter.drawLine(320, 240, 440, 120);
        painter.end();
        ASSERT_TRUE(dial.save(folder_.filePath("dial"), "JPG", 90));
    }

    /// The first words of it.
    [[nodiscard]] QString bores_explained() const {
        return text_of(report::Label::how_bores).section(u' ', 0, 3);
    }

    [[nodiscard]] Paper on(PageSize size) const {
        return Paper(report_, format_, size, [this](const std::string&) {
            return std::filesystem::path(folder_.filePath("dial").toStdString());
        });
    }
};

TEST_P(Shops, TakeAtMostFourPages) {
    const Paper on_a4 = on(PageSize::a4);
    EXPECT_LE(on_a4.pages(), 4);
    expect_nothing_overlaps_or_leaves_the_page(on_a4, a4);
    const Paper on_letter = on(PageSize::letter);
    EXPECT_LE(on_letter.pages(), 4);
    expect_nothing_overlaps_or_leaves_the_page(on_letter, letter);
}

TEST_P(Shops, EndWithMoreThanAFewLines) {
    for (const auto& [size, sheet] : {std::pair{PageSize::a4, a4}, std::pair{PageSize::letter, letter}}) {
        const Paper paper = on(size);
        expect_last_page_used(paper, sheet);
        // What the bores show is said, and once, however often the pages were laid out.
        EXPECT_EQ(paper.words().count(bores_explained()), 1) << bores_explained().toStdString();
    }
}

TEST_P(Shops, KeepFiguresOnOneLine) {
    expect_figures_on_one_line(on(PageSize::a4));
    expect_figures_on_one_line(on(PageSize::letter));
}

TEST_P(Shops, KeepShortWordsWhole) {
    expect_short_words_of_tables_whole(on(PageSize::a4), report_, format_);
    expect_short_words_of_tables_whole(on(PageSize::letter), report_, format_);
}

TEST(ShopsHistory, HasTheHeadsOfItsChartsOnOneLine) {
    const Paper paper(report_of({"Years", sample::six_over_years}));
    const auto words = paper.boxes();
    const auto history =
        std::ranges::find_if(words, [](const auto& word) { return word.text == "History" && word.page > 1; });
    ASSERT_NE(history, words.end());
    const auto head = [&](const char* text) {
        return std::ranges::find_if(words, [&](const auto& word) {
            return word.page == history->page && word.box.top() > history->box.bottom() && word.text == text;
        });
    };
    ASSERT_NE(head("Dry"), words.end());
    ASSERT_NE(head("Leak-down"), words.end());
    EXPECT_NEAR(head("Dry")->box.top(), head("Leak-down")->box.top(), 1.0);
    EXPECT_GT(head("Leak-down")->box.left(), a4.width() / 2.0);
}

std::vector<Case> cases() {
    std::vector<Case> out;
    for (const Kind& kind : kinds)
        for (const char* language : {"en", "de", "es"})
            out.push_back({kind, language});
    return out;
}

INSTANTIATE_TEST_SUITE_P(Kinds, Shops, testing::ValuesIn(cases()), [](const auto& info) {
    return std::string(info.param.kind.name) + "_" + info.param.language;
});

}  // namespace
}  // namespace lapwing::print

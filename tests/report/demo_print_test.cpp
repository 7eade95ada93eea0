// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QCoreApplication>
#include <QTranslator>

#include "tests/report/demo.h"
#include "tests/report/paper.h"

/// Every visit of the demo, as the app hands it over: with its odds.
namespace lapwing::print {
namespace {

/// Every text of the program two fifths longer, its words longer too, as a German one may be.
class Longer : public QTranslator {
public:
    Longer() { QCoreApplication::installTranslator(this); }
    ~Longer() override { QCoreApplication::removeTranslator(this); }
    Longer(const Longer&) = delete;
    Longer& operator=(const Longer&) = delete;

    [[nodiscard]] bool isEmpty() const override { return false; }
    [[nodiscard]] QString translate(const char* /*context*/, const char* text, const char* /*comment*/,
                                    int /*count*/) const override {
        static const QRegularExpression word("[A-Za-z]{3,}");
        const QString english = QString::fromUtf8(text);
        QString out;
        qsizetype from = 0;
        auto words = word.globalMatch(english);
        while (words.hasNext()) {
            const auto match = words.next();
            const QString one = match.captured();
            out +=
                english.mid(from, match.capturedEnd() - from) + one.toLower().left((one.size() * 2 + 4) / 5);
            from = match.capturedEnd();
        }
        return out + english.mid(from);
    }
};

class Demo : public testing::TestWithParam<demo::VisitOf> {
protected:
    [[nodiscard]] static report::Report report(bool appendix = true) {
        return demo::report_of(GetParam(), appendix);
    }
};

/// The story of the V-twin: rings of cylinder 2 new in April, leaking again a year later.
TEST_P(Demo, SaysInShortWhatIsComingBack) {
    const report::Report report = Demo::report();
    const auto& in_short =
        *std::ranges::find(report.sections, report::Label::in_short, &report::Section::heading);
    std::vector<int> back;
    for (const auto& block : in_short.blocks)
        if (const auto* said = std::get_if<report::Sentences>(&block))
            for (const auto& sentence : said->sentences)
                if (const auto* message = std::get_if<findings::Message>(&sentence.text);
                    message && message->code == "history.coming_back")
                    back.push_back(sentence.cylinder.value_or(0));
    const bool a_year_later = GetParam().file == std::string_view("orchard-v-twin") && GetParam().visit == 2;
    EXPECT_EQ(back, a_year_later ? std::vector{2} : std::vector<int>{});
}

TEST_P(Demo, TakesAtMostFourPagesAndOneMoreWithItsAppendix) {
    for (const bool appendix : {false, true}) {
        const report::Report report = Demo::report(appendix);
        const int most = appendix ? 5 : 4;
        const Paper on_a4(report);
        EXPECT_LE(on_a4.pages(), most);
        expect_nothing_overlaps_or_leaves_the_page(on_a4, a4);
        const Paper on_letter(report, format::Formatter(), PageSize::letter);
        EXPECT_LE(on_letter.pages(), most);
        expect_nothing_overlaps_or_leaves_the_page(on_letter, letter);
    }
}

TEST_P(Demo, HasItsTitleItsTypefaceAndItsText) {
    const report::Report report = Demo::report();
    const Paper paper(report);
    EXPECT_TRUE(
        paper.info().contains(QRegularExpression("Title:\\s+" + QString::fromStdString(report.engine))));
    const QStringList fonts = paper.fonts().split('\n', Qt::SkipEmptyParts).mid(2);
    EXPECT_FALSE(fonts.isEmpty());
    for (const QString& font :
         fonts)  // columns of pdffonts: ... emb sub uni; embedded, and every glyph has its letter
        EXPECT_TRUE(font.contains(QRegularExpression("\\syes\\s+(yes|no)\\s+yes\\s"))) << font.toStdString();
    const QString words = paper.words();
    for (const char* there : {"In short", "Cautions", "Readings", "Conditions", "Testers",
                              "How sure the numbers are", "Where the numbers come from", "Sources"})
        EXPECT_TRUE(words.contains(there)) << there;
}

TEST_P(Demo, TellsTheOwnerOnTheFirstPage) {
    const report::Report report = Demo::report();
    const Paper paper(report);
    const QString first = run("pdftotext", {"-l", "1", paper.file(), "-"}).simplified();
    const format::Formatter format;
    for (const report::Section& section : report.sections) {
        if (section.heading == report::Label::where_it_leaks) break;
        for (const auto& block : section.blocks) {
            const auto* verdicts = std::get_if<report::Verdicts>(&block);
            if (!verdicts) continue;
            for (const auto& verdict : verdicts->verdicts)
                EXPECT_TRUE(first.contains(format.text(verdict.headline)));
        }
    }
    for (const char* there : {"In short", "Plan", "Cautions"}) {
        // The second visit found nothing to plan.
        if (std::string_view(there) == "Plan" && !paper.words().contains("Work and parts")) continue;
        EXPECT_TRUE(first.contains(there)) << there;
    }
}

TEST_P(Demo, HoldsTextsTwoFifthsLonger) {
    const report::Report report = Demo::report();
    const Longer longer;
    const format::Formatter german({}, QLocale(QLocale::German));
    const Paper on_a4(report, german);
    EXPECT_LE(on_a4.pages(), 6);
    EXPECT_TRUE(on_a4.words().contains("Cautionscaut")) << on_a4.words().toStdString();
    expect_nothing_overlaps_or_leaves_the_page(on_a4, a4);
    expect_nothing_overlaps_or_leaves_the_page(Paper(report, german, PageSize::letter), letter);
}

INSTANTIATE_TEST_SUITE_P(Visits, Demo, testing::ValuesIn(demo::visits),
                         [](const auto& info) { return demo::name_of(info.param); });

}  // namespace
}  // namespace lapwing::print

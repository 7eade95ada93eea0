// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/print/flow.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QImage>
#include <QPainter>
#include <utility>
#include <vector>

namespace lapwing::print {
namespace {

constexpr QRectF body(100, 100, 1000, 2000);
constexpr double between = 40;
constexpr double right_column = 100 + (1000 - between) / 2 + between;

/// Rows that note where they were drawn.
class Sheet {
public:
    Flow flow{body};

    Row row(int name, double height) {
        return {{{0.0, {{height, [this, name](QPainter&, QPointF at) {
                             drawn_.push_back({name, page_, at});
                         }}}}}};
    }
    struct Drawn {
        int name;
        int page;
        QPointF at;
    };
    std::vector<Drawn> drawn() {
        QImage nothing(1, 1, QImage::Format_RGB32);
        QPainter painter(&nothing);
        drawn_.clear();
        for (page_ = 0; page_ < flow.page_count(); ++page_)
            flow.paint(painter, page_);
        return drawn_;
    }

private:
    std::vector<Drawn> drawn_;
    int page_ = 0;
};

/// Rows that go over to the next page together take the head of their table with them.
TEST(Flow, RepeatsAHeadOverRowsThatAreKeptTogether) {
    Sheet sheet;
    sheet.flow.repeat(sheet.row(0, 100));
    sheet.flow.put(sheet.row(1, 1500));
    sheet.flow.put_with_next(sheet.row(2, 300));
    sheet.flow.put(sheet.row(3, 300));
    sheet.flow.end_repeat();
    const auto drawn = sheet.drawn();
    std::vector<std::pair<int, int>> seen;
    for (const auto& one : drawn)
        seen.emplace_back(one.page, one.name);
    EXPECT_THAT(seen, testing::ElementsAre(std::pair(0, 0), std::pair(0, 1), std::pair(1, 0), std::pair(1, 2),
                                           std::pair(1, 3)));
    EXPECT_EQ(drawn.back().at, QPointF(100, 500));
}

/// One that still waits for its first row goes over with it, and stands there once.
TEST(Flow, SetsAHeadThatWaitsForItsRowOnce) {
    Sheet sheet;
    sheet.flow.put(sheet.row(9, 1700));
    sheet.flow.repeat(sheet.row(0, 100));
    sheet.flow.put(sheet.row(1, 300));
    sheet.flow.end_repeat();
    const auto drawn = sheet.drawn();
    ASSERT_EQ(drawn.size(), 3u);
    EXPECT_EQ(drawn[1].page, 1);
    EXPECT_EQ(drawn[1].name, 0);
    EXPECT_EQ(drawn[2].at, QPointF(100, 200));
}

TEST(Flow, BeginsNoColumnWithSpace) {
    Sheet sheet;
    sheet.flow.begin_columns(2, between, 1.0);
    for (int i = 0; i < 2; ++i) {
        sheet.flow.put(sheet.row(i, 1900));
        sheet.flow.put({{{0.0, {gap(200)}}}});
    }
    sheet.flow.end_columns();
    const auto drawn = sheet.drawn();
    ASSERT_EQ(drawn.size(), 2u);
    EXPECT_EQ(drawn[1].at, QPointF(right_column, 100));
    EXPECT_EQ(sheet.flow.page_count(), 1);
}

TEST(Flow, EndsItsColumnsTogether) {
    Sheet sheet;
    sheet.flow.begin_columns(2, between, 1.0);
    for (int i = 0; i < 10; ++i)
        sheet.flow.put(sheet.row(i, 100));
    sheet.flow.end_columns();
    sheet.flow.put(sheet.row(10, 100));
    const auto drawn = sheet.drawn();
    ASSERT_EQ(drawn.size(), 11u);
    EXPECT_EQ(drawn[4].at, QPointF(100, 500));
    EXPECT_EQ(drawn[5].at, QPointF(right_column, 100));
    EXPECT_EQ(drawn[9].at, QPointF(right_column, 500));
    // What follows stands across the page again, below both.
    EXPECT_EQ(drawn[10].at, QPointF(100, 600));
    EXPECT_EQ(sheet.flow.page_count(), 1);
}

TEST(Flow, FillsBothColumnsBeforeTheNextPage) {
    Sheet sheet;
    sheet.flow.put(sheet.row(0, 1000));
    sheet.flow.begin_columns(2, between, 1.0);
    for (int i = 1; i <= 26; ++i)
        sheet.flow.put(sheet.row(i, 190));
    sheet.flow.end_columns();
    const auto drawn = sheet.drawn();
    EXPECT_EQ(sheet.flow.page_count(), 2);
    int on_first_left = 0;
    int on_first_right = 0;
    for (const auto& one : drawn) {
        EXPECT_LE(one.at.y() + 190, body.bottom() + 1.0) << one.name;
        if (one.name > 0 && one.page == 0) ++(one.at.x() < right_column ? on_first_left : on_first_right);
    }
    EXPECT_EQ(on_first_left, on_first_right);
    EXPECT_GE(on_first_left, 4);
    // Ten a column would fit on the second page: what is left is shared evenly.
    const int left = 26 - 2 * on_first_left;
    const auto on_second_left = std::ranges::count_if(
        drawn, [](const auto& one) { return one.page == 1 && one.at.x() < right_column; });
    EXPECT_EQ(on_second_left, (left + 1) / 2);
}

TEST(Flow, KeepsAHeadingWithWhatFollowsIt) {
    for (double before : {1700.0, 1900.0, 1950.0}) {
        Sheet across;
        across.flow.put(across.row(0, before));
        across.flow.put_with_next(across.row(1, 60));
        across.flow.put(across.row(2, 400));
        const auto drawn = across.drawn();
        EXPECT_EQ(drawn[1].page, 1) << before;
        EXPECT_EQ(drawn[2].page, 1) << before;
    }
    Sheet columns;
    columns.flow.begin_columns(2, between, 1.0);
    columns.flow.put(columns.row(0, 500));
    columns.flow.put_with_next(columns.row(1, 60));
    columns.flow.put(columns.row(2, 400));
    columns.flow.end_columns();
    const auto drawn = columns.drawn();
    EXPECT_EQ(drawn[1].at, QPointF(right_column, 100));
    EXPECT_EQ(drawn[2].at, QPointF(right_column, 160));
}

TEST(Flow, DoesNotPartARowToMakeColumnsEven) {
    Sheet sheet;
    Row tall{{{0.0, {}}}};
    for (int i = 0; i < 10; ++i)
        tall.boxes[0].pieces.push_back(sheet.row(i, 60).boxes[0].pieces[0]);
    sheet.flow.begin_columns(2, between, 1.0);
    sheet.flow.put(std::move(tall));
    sheet.flow.end_columns();
    for (const auto& one : sheet.drawn())
        EXPECT_LT(one.at.x(), right_column);
}

TEST(Flow, KeepsTogetherWhatIsWhole) {
    // 1,700 of 2,000 are taken: three rows of 150 would be parted, one over the foot.
    Sheet parted, whole;
    for (Sheet* sheet : {&parted, &whole}) {
        sheet->flow.put(sheet->row(0, 1700));
        if (sheet == &whole) sheet->flow.begin_whole();
        for (int i = 1; i <= 3; ++i)
            sheet->flow.put(sheet->row(i, 150));
        sheet->flow.end_whole();
    }
    EXPECT_EQ(parted.drawn()[1].page, 0);
    for (int i = 1; i <= 3; ++i)
        EXPECT_EQ(whole.drawn()[static_cast<std::size_t>(i)].page, 1) << i;
    EXPECT_EQ(whole.flow.page_count(), 2);
}

TEST(Flow, PartsWhatIsTooTallToStayWhole) {
    Sheet sheet;
    sheet.flow.put(sheet.row(0, 1700));
    sheet.flow.begin_whole(0.2);
    for (int i = 1; i <= 3; ++i)
        sheet.flow.put(sheet.row(i, 150));
    sheet.flow.end_whole();
    EXPECT_EQ(sheet.drawn()[1].page, 0);
}

TEST(Flow, KeepsWhatIsWholeInOneColumn) {
    Sheet sheet;
    sheet.flow.begin_columns(2, between, 1.0);
    for (int unit = 0; unit < 2; ++unit) {
        sheet.flow.begin_whole();
        for (int i = 0; i < 3; ++i)
            sheet.flow.put(sheet.row(unit * 3 + i, unit == 0 ? 100 : 140));
        sheet.flow.end_whole();
    }
    sheet.flow.end_columns();
    for (const auto& one : sheet.drawn())
        EXPECT_EQ(one.at.x(), one.name < 3 ? 100 : right_column) << one.name;
}

}  // namespace
}  // namespace lapwing::print

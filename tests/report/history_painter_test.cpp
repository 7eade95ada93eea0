// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/charts/history_painter.h"

#include <gtest/gtest.h>

#include <QImage>
#include <QPainter>
#include <random>
#include <set>

#include "qml/charts/history_layout.h"
#include "qml/charts/history_plot.h"

namespace lapwing::charts {
namespace {

HistoryLook look() {
    HistoryLook out;
    out.ink = Qt::black;
    out.quiet = QColor(Qt::white);  // axes vanish: what is left is the readings
    out.paper = Qt::white;
    out.font.setPixelSize(12);
    return out;
}

QImage drawn(const HistoryPlot& plot, const HistoryLook& with) {
    QImage image(300, 200, QImage::Format_ARGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    paint_history(painter, QRectF(0, 0, 300, 200), plot, with);
    return image;
}

long ink_of(const QImage& image) {
    long out = 0;
    for (int y = 0; y < image.height(); ++y)
        for (int x = 0; x < image.width(); ++x)
            out += 255 - qGray(image.pixel(x, y));
    return out;
}

HistoryPlot two_points(bool broken, bool counted = true) {
    HistoryPlot plot;
    plot.lines.push_back({QString(), 1, {{0.0, 0.2, 0.0, true, false}, {1.0, 0.8, 0.0, counted, broken}}});
    return plot;
}

TEST(HistoryPainter, ARepairBreaksTheLine) {
    EXPECT_GT(ink_of(drawn(two_points(false), look())), ink_of(drawn(two_points(true), look())) + 50'000);
}

TEST(HistoryPainter, WhatCannotBeComparedIsOpenAndUnconnected) {
    EXPECT_LT(ink_of(drawn(two_points(false, false), look())), ink_of(drawn(two_points(true), look())));
}

TEST(HistoryPainter, AWhiskerShowsTheDoubt) {
    HistoryPlot plot = two_points(true);
    const long without = ink_of(drawn(plot, look()));
    plot.lines[0].points[0].u = 0.2;
    EXPECT_GT(ink_of(drawn(plot, look())), without);
}

TEST(HistoryPainter, MarksDifferByTheirShape) {
    // Every pair of the eight shapes differs in many pixels, in one colour.
    std::vector<QImage> marks;
    for (int line = 0; line < 8; ++line) {
        QImage image(40, 40, QImage::Format_ARGB32);
        image.fill(Qt::white);
        QPainter painter(&image);
        HistoryLook with = look();
        with.unit = 3.0;
        paint_history_mark(painter, {20, 20}, line, with, true);
        painter.end();
        marks.push_back(image);
    }
    for (std::size_t a = 0; a < marks.size(); ++a) {
        for (std::size_t b = a + 1; b < marks.size(); ++b) {
            int apart = 0;
            for (int y = 0; y < 40; ++y)
                for (int x = 0; x < 40; ++x)
                    apart += std::abs(qGray(marks[a].pixel(x, y)) - qGray(marks[b].pixel(x, y))) > 128;
            EXPECT_GT(apart, 60) << a << " and " << b;
        }
    }
}

/// Any readings: of 1 to 16 cylinders, equal ones among them, lines that end early, ends outside of the axes.
HistoryPlot any_plot(std::mt19937& random) {
    const auto up_to = [&](int most) { return std::uniform_int_distribution<int>(0, most)(random); };
    HistoryPlot plot;
    plot.unit = "bar";
    for (int i = 0; i <= 5; ++i)
        plot.values.push_back({i / 5.0, QString::number(8 + i)});
    const int visits = 1 + up_to(4);
    // Few steps: many readings are the same.
    const int steps = 1 + up_to(40);
    const int lines = 1 + up_to(15);
    for (int line = 0; line < lines; ++line) {
        HistoryPlot::Line drawn{QString::number(line + 1), line + 1, {}};
        for (int visit = 0; visit < visits; ++visit)
            if (up_to(5) > 0)
                drawn.points.push_back({visits == 1 ? 0.5 : static_cast<double>(visit) / (visits - 1),
                                        -0.1 + 1.2 * up_to(steps) / steps, 0.05, up_to(3) > 0, false});
        plot.lines.push_back(drawn);
    }
    return plot;
}

void expect_names_stand_free(const HistoryLayout& layout, const HistoryPlot& plot, const QRectF& area,
                             double mark) {
    std::set<std::size_t> named;
    for (std::size_t i = 0; i < layout.names.size(); ++i) {
        const QRectF& box = layout.names[i].box;
        EXPECT_TRUE(area.adjusted(-0.01, -0.01, 0.01, 0.01).contains(box));
        for (std::size_t j = 0; j < i; ++j)
            EXPECT_FALSE(box.adjusted(0.01, 0.01, -0.01, -0.01).intersects(layout.names[j].box));
        for (const std::size_t line : layout.names[i].lines)
            EXPECT_TRUE(named.insert(line).second);
        for (std::size_t line = 0; line < plot.lines.size(); ++line)
            for (const auto& point : plot.lines[line].points) {
                const QPointF at = layout.frame.at(point, line);
                EXPECT_GE(box.left(), at.x() + mark);
                EXPECT_GE(at.x() - mark, layout.frame.inner.left());
            }
    }
    for (std::size_t line = 0; line < plot.lines.size(); ++line)
        EXPECT_EQ(named.contains(line), !plot.lines[line].points.empty()) << line;
}

TEST(HistoryLayout, NoNameCoversAnotherOrAReading) {
    // A phone's chart, the same with twice the text, a column of a printed page (pixels of it a point each).
    struct Place {
        QSizeF size;
        int text;
        double unit;
    };
    std::mt19937 random(1);
    for (const Place& place : {Place{{360, 220}, 13, 1.0}, Place{{288, 260}, 26, 1.0},
                               Place{{244, 113}, 8, 0.75}, Place{{510, 113}, 8, 0.75}}) {
        for (int i = 0; i < 400; ++i) {
            const HistoryPlot plot = any_plot(random);
            HistoryLook with = look();
            with.font.setPixelSize(place.text);
            with.unit = place.unit;
            const QRectF area(QPointF(7, 11), place.size);
            expect_names_stand_free(lay_out(area, plot, with), plot, area, 5.0 * place.unit);
            if (HasFailure()) return;
        }
    }
}

HistoryPlot ending_at(const std::vector<double>& ends) {
    HistoryPlot plot;
    for (std::size_t i = 0; i < ends.size(); ++i) {
        const int number = static_cast<int>(i) + 1;
        plot.lines.push_back({QString::number(number), number, {{0.0, 0.5}, {1.0, ends[i]}}});
    }
    return plot;
}

TEST(HistoryLayout, EqualEndsShareOneName) {
    // Cylinders 1, 4 and 6 end in one place.
    const HistoryPlot plot = ending_at({0.8, 0.2, 0.4, 0.8, 0.6, 0.8});
    const HistoryLayout layout = lay_out({0, 0, 360, 220}, plot, look());
    ASSERT_EQ(layout.names.size(), 4U);
    EXPECT_EQ(layout.names[0].lines, (std::vector<std::size_t>{0, 3, 5}));
    EXPECT_NEAR(layout.names[0].box.center().y(), layout.frame.y(0.8), 0.01);
    EXPECT_FALSE(layout.led);
}

TEST(HistoryLayout, CloseEndsAreSpreadAndLed) {
    const HistoryPlot plot = ending_at({0.50, 0.52, 0.54});
    const HistoryLayout layout = lay_out({0, 0, 360, 220}, plot, look());
    ASSERT_EQ(layout.names.size(), 3U);
    EXPECT_TRUE(layout.led);
    // From above: the highest reading first, the middle one level with its end.
    EXPECT_EQ(layout.names[0].lines, std::vector<std::size_t>{2});
    EXPECT_NEAR(layout.names[1].box.center().y(), layout.frame.y(0.52), 0.01);
    // The leaders are drawn, in the quiet ink.
    HistoryLook inked = look();
    const long without = ink_of(drawn(plot, inked));
    inked.quiet = Qt::black;
    EXPECT_GT(ink_of(drawn(plot, inked)), without);
}

TEST(HistoryPainter, NoTwoOfSixteenLinesLookAlike) {
    std::vector<QImage> lines;
    for (std::size_t i = 0; i < 16; ++i) {
        HistoryPlot plot = two_points(false);
        plot.lines.insert(plot.lines.begin(), i, HistoryPlot::Line{});
        plot.lines.resize(16);
        lines.push_back(drawn(plot, look()));
    }
    for (std::size_t a = 0; a < lines.size(); ++a)
        for (std::size_t b = a + 8; b < lines.size(); b += 8)
            EXPECT_GT(std::abs(ink_of(lines[a]) - ink_of(lines[b])), 2'000) << a << " and " << b;
}

TEST(HistoryPlot, StandsOnRoundFiguresInTheChosenUnit) {
    report::Chart chart;
    chart.dimension = findings::Dimension::gauge_pressure;
    chart.visits = {{{0, 0}, "a", {}}, {{1'000, 0}, "b", {}}, {{4'000, 0}, "c", {}}};
    const auto bar = [](double of) {
        return findings::Figure{findings::Dimension::gauge_pressure, of * 1e5, 0.2e5, {}, {}};
    };
    chart.lines = {
        {1, "", {{0, bar(7.0), true, false}, {1, bar(9.0), true, true}, {2, bar(8.0), true, false}}}};
    const HistoryPlot plot = plot_of(chart, format::Formatter());
    // By hand: 6.8 to 9.2 bar in steps of 1: an axis from 6 to 10, and 8 bar in its middle.
    ASSERT_EQ(plot.values.size(), 5U);
    EXPECT_EQ(plot.values.front().text, "6");
    EXPECT_EQ(plot.values.back().text, "10");
    EXPECT_EQ(plot.unit, "bar");
    const auto& points = plot.lines.at(0).points;
    EXPECT_NEAR(points[2].y, 0.5, 1e-9);
    EXPECT_NEAR(points[2].u, 0.05, 1e-9);
    EXPECT_NEAR(points[1].x, 0.25, 1e-9);
    EXPECT_TRUE(points[1].broken);

    // 100 kPa is 14.504 psi (NIST SP 811).
    format::Choice choice;
    choice.pressure = units::psi;
    const HistoryPlot in_psi = plot_of(chart, format::Formatter(choice));
    EXPECT_EQ(in_psi.unit, "psi");
    EXPECT_EQ(in_psi.values.front().text, "90");  // 98.6 to 133.4 psi in steps of 10
}

TypedUsage run(const char* digits, Unit<UsageTag> unit = units::km) {
    return TypedUsage::make(digits, unit).value();
}

report::Chart read_at(const std::vector<std::optional<TypedUsage>>& meter) {
    report::Chart chart;
    chart.dimension = findings::Dimension::gauge_pressure;
    report::Chart::Line line{1, "", {}};
    for (std::size_t i = 0; i < meter.size(); ++i) {
        chart.visits.push_back({Timestamp{static_cast<std::int64_t>(i) * 1'000, 0}, "", meter[i]});
        line.points.push_back(
            {i, findings::Figure{findings::Dimension::gauge_pressure, 8e5, 0.2e5, {}, {}}, true, false});
    }
    chart.lines.push_back(line);
    return chart;
}

TEST(HistoryPlot, RunsAlongTheMeterToo) {
    report::Chart chart = read_at({run("1000"), std::nullopt, run("4000"), run("5000")});
    chart.lines[0].points[1].after_repair = true;
    const Meter meter = meter_of(chart);
    EXPECT_TRUE(meter.drawable);
    EXPECT_FALSE(meter.runs_back);
    EXPECT_EQ(meter.unread, 1);
    const HistoryPlot plot = plot_of(chart, format::Formatter(), Along::meter);
    ASSERT_EQ(plot.lines.at(0).points.size(), 3U);
    EXPECT_NEAR(plot.lines[0].points[1].x, 0.75, 1e-12);
    // The repair lay at the visit that is left out: the line still breaks.
    EXPECT_TRUE(plot.lines[0].points[1].broken);
    EXPECT_FALSE(plot.lines[0].points[2].broken);
    ASSERT_EQ(plot.times.size(), 3U);
    EXPECT_EQ(plot.times.back().text, "5000 km");
    EXPECT_EQ(plot_of(chart, format::Formatter()).lines.at(0).points.size(), 4U);
}

TEST(HistoryPlot, TheMeterIsOfOneKind) {
    // Hours and kilometres have no common scale: the newest decides. A mile is 1.609344 km (NIST SP 811).
    const Meter mixed = meter_of(read_at({run("10", units::hour), run("1000"), run("2000")}));
    EXPECT_TRUE(mixed.drawable);
    EXPECT_EQ(mixed.unread, 1);
    const auto miles = plot_of(read_at({run("0"), run("1000", *Unit<UsageTag>::find("mi")), run("3218.688")}),
                               format::Formatter(), Along::meter);
    EXPECT_NEAR(miles.lines.at(0).points[1].x, 0.5, 1e-12);
    EXPECT_FALSE(meter_of(read_at({run("10", units::hour), run("1000")})).drawable);
    EXPECT_FALSE(meter_of(read_at({run("1000"), run("1000")})).drawable);
    EXPECT_FALSE(meter_of(read_at({std::nullopt, std::nullopt})).drawable);
    EXPECT_TRUE(meter_of(read_at({run("90000"), run("200")})).runs_back);
}

}  // namespace
}  // namespace lapwing::charts

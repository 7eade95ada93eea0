// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/charts/history_painter.h"

#include <gtest/gtest.h>

#include <QImage>
#include <QPainter>

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

TEST(HistoryPlot, StandsOnRoundFiguresInTheChosenUnit) {
    report::Chart chart;
    chart.dimension = findings::Dimension::gauge_pressure;
    chart.visits = {{Timestamp{0, 0}, "a"}, {Timestamp{1'000, 0}, "b"}, {Timestamp{4'000, 0}, "c"}};
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

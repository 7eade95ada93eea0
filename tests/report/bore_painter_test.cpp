// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/charts/bore_painter.h"

#include <gtest/gtest.h>

#include <QImage>
#include <QPainter>
#include <set>

namespace lapwing::charts {
namespace {

using findings::State;

QImage mark(State state) {
    QImage image(64, 64, QImage::Format_Grayscale8);
    image.fill(Qt::white);
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    paint_state_mark(painter, QRectF(2, 2, 60, 60), state, paper_look(2));
    return image;
}

int ink(const QImage& image, const QRect& part) {
    int dark = 0;
    for (int y = part.top(); y <= part.bottom(); ++y)
        for (int x = part.left(); x <= part.right(); ++x)
            dark += qGray(image.pixel(x, y)) < 160;
    return dark;
}

TEST(StateMark, IsToldApartByShapeAlone) {
    const QRect left(14, 20, 16, 24);
    const QRect right(34, 20, 16, 24);
    const QImage good = mark(State::good);
    EXPECT_EQ(ink(good, left), 16 * 24);
    EXPECT_EQ(ink(good, right), 16 * 24);
    const QImage half = mark(State::borderline);
    EXPECT_EQ(ink(half, left), 16 * 24);
    EXPECT_EQ(ink(half, right), 0);
    // Open triangle: nothing in the middle, nothing in the upper corners, a base line below.
    const QImage fault = mark(State::fault);
    EXPECT_EQ(ink(fault, QRect(26, 34, 12, 14)), 0);
    EXPECT_EQ(ink(fault, QRect(0, 0, 12, 24)), 0);
    EXPECT_GT(ink(fault, QRect(10, 52, 44, 12)), 44 * 5);
    const QImage none = mark(State::none);
    EXPECT_EQ(ink(none, QRect(18, 18, 28, 28)), 0);
    EXPECT_GT(ink(none, none.rect()), 100);
    // Dashes: the ring has gaps that a full ring of the same width would not have.
    EXPECT_LT(ink(none, none.rect()), ink(half, none.rect()) / 2);
}

QImage bore_image(const report::Bore& bore) {
    QImage image(100, 200, QImage::Format_Grayscale8);
    image.fill(Qt::white);
    QPainter painter(&image);
    paint_bore(painter, QRectF(0, 0, 100, 200), bore, paper_look(2));
    return image;
}

TEST(Bore, StandsAtItsHeight) {
    report::Bore bore;
    bore.state = State::fault;
    bore.piston = 0.25;
    const QImage image = bore_image(bore);
    // A quarter of 200 from the foot: y = 150. Left of the middle, where no whisker stands.
    EXPECT_LT(qGray(image.pixel(35, 150)), 120);
    EXPECT_EQ(qGray(image.pixel(35, 100)), 255);
    const int fill = qGray(image.pixel(35, 180));
    EXPECT_LT(fill, 250);
    EXPECT_GT(fill, 150);
}

TEST(Bore, IsAnEmptyDashedOutlineWhenNotMeasured) {
    const QImage image = bore_image({});
    EXPECT_EQ(ink(image, QRect(30, 10, 40, 180)), 0);
    int dark = 0;
    int light = 0;
    for (int y = 0; y < 200; ++y)
        (qGray(image.pixel(20, y)) < 128 ? dark : light)++;
    EXPECT_GT(dark, 40);
    EXPECT_GT(light, 40);
}

TEST(Bore, ShowsLimitLeftAndRangeRight) {
    report::Bore bore;
    bore.piston = 0.5;
    EXPECT_EQ(ink(bore_image(bore), QRect(0, 0, 16, 200)), 0);
    EXPECT_EQ(ink(bore_image(bore), QRect(84, 0, 16, 200)), 0);
    bore.notch = 0.4;
    bore.band_low = 0.6;
    bore.band_high = 0.8;
    const QImage image = bore_image(bore);
    EXPECT_GT(ink(image, QRect(0, 110, 16, 20)), 20);  // 200 - 0.4 * 200 = 120
    EXPECT_EQ(ink(image, QRect(0, 0, 16, 100)), 0);
    EXPECT_GT(ink(image, QRect(84, 41, 16, 38)), 60);  // between 40 and 80
    EXPECT_EQ(ink(image, QRect(84, 84, 16, 116)), 0);
}

}  // namespace
}  // namespace lapwing::charts

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/charts/share_painter.h"

#include <gtest/gtest.h>

#include <QImage>
#include <QPainter>
#include <map>

namespace lapwing::charts {
namespace {

/// On grey paper of the path's own colour, as a black and white printer shows it.
QImage part(const QString& path) {
    QImage image(96, 48, QImage::Format_Grayscale8);
    QPainter painter(&image);
    painter.fillRect(image.rect(), Qt::white);
    paint_path_pattern(painter, QRectF(0, 0, 96, 48), path, Qt::black, 1.0);
    return image;
}

double darkness(const QImage& image, const QRect& area) {
    double sum = 0.0;
    for (int y = area.top(); y <= area.bottom(); ++y)
        for (int x = area.left(); x <= area.right(); ++x)
            sum += 255 - qGray(image.pixel(x, y));
    return sum / (area.width() * area.height());
}

TEST(PathPattern, TellsEveryPathFromEveryOtherWithoutColour) {
    std::map<QString, QImage> parts;
    for (const char* path :
         {"rings", "intake", "exhaust", "gasket", "next_cylinder", "coolant", "decompressor"})
        parts[QString::fromLatin1(path)] = part(QString::fromLatin1(path));
    for (const auto& [one, a] : parts)
        for (const auto& [other, b] : parts) {
            if (one >= other) continue;
            int differing = 0;
            for (int y = 0; y < a.height(); ++y)
                for (int x = 0; x < a.width(); ++x)
                    differing += std::abs(qGray(a.pixel(x, y)) - qGray(b.pixel(x, y))) > 60;
            EXPECT_GT(differing, a.width() * a.height() / 40)
                << one.toStdString() << ' ' << other.toStdString();
        }
    EXPECT_EQ(darkness(parts["rings"], parts["rings"].rect()), 0.0);
}

TEST(PathPattern, StaysInsideItsPart) {
    QImage image(60, 60, QImage::Format_Grayscale8);
    image.fill(Qt::white);
    QPainter painter(&image);
    paint_path_pattern(painter, QRectF(20, 20, 20, 20), QStringLiteral("gasket"), Qt::black, 1.0);
    painter.end();
    EXPECT_GT(darkness(image, QRect(20, 20, 20, 20)), 5.0);
    EXPECT_EQ(darkness(image, QRect(0, 0, 60, 19)), 0.0);
    EXPECT_EQ(darkness(image, QRect(41, 0, 19, 60)), 0.0);
}

TEST(SplitBar, SharesTheWidthAndLeavesTheGapsFree) {
    const auto parts = split_bar(QRectF(10, 0, 104, 8), {0.5, 0.0, 0.25, 0.25}, 2.0);
    ASSERT_EQ(parts.size(), 4u);
    // 104 less two gaps of 2 is 100, by hand.
    EXPECT_EQ(parts[0], QRectF(10, 0, 50, 8));
    EXPECT_EQ(parts[1].width(), 0.0);
    EXPECT_EQ(parts[2], QRectF(62, 0, 25, 8));
    EXPECT_EQ(parts[3], QRectF(89, 0, 25, 8));
    EXPECT_TRUE(split_bar(QRectF(0, 0, 10, 1), {}, 2.0).empty());
}

TEST(ShareTrack, DrawsTheIntervalWhereItLies) {
    QImage image(200, 20, QImage::Format_Grayscale8);
    image.fill(Qt::white);
    QPainter painter(&image);
    paint_share_track(painter, QRectF(0, 0, 200, 20), 0.5, 0.4, 0.7, Qt::black, 1.0);
    painter.end();
    // Two rows off the middle line: only the interval's bar reaches there, from 80 to 140.
    EXPECT_GT(darkness(image, QRect(85, 9, 50, 1)), 200.0);
    EXPECT_LT(darkness(image, QRect(20, 8, 50, 1)), 60.0);
    EXPECT_LT(darkness(image, QRect(150, 8, 40, 1)), 60.0);
    EXPECT_GT(darkness(image, QRect(99, 2, 2, 2)), 100.0);  // the mean's tick
    EXPECT_EQ(darkness(image, QRect(60, 2, 30, 2)), 0.0);
}

}  // namespace
}  // namespace lapwing::charts

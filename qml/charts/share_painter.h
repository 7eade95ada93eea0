// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QColor>
#include <QRectF>
#include <QString>
#include <vector>

class QPainter;

/// Where it leaks, drawn: the same on screen and on paper. Paths go by their word in the findings ("rings",
/// "intake", "exhaust", "gasket", "next_cylinder", "coolant"); any other word is drawn as "other".
namespace lapwing::charts {

/// The pattern that tells a path from the others without its colour: rings plain, intake dots, exhaust slant
/// lines, the head gasket cross lines (its joints upright, its coolant side level lines), others circles.
/// Over what is there already. `unit` is one density-independent pixel in the painter's units.
void paint_path_pattern(QPainter& painter, const QRectF& area, const QString& path, const QColor& ink,
                        double unit);

/// A share on a line from 0 to 1: the 90 % interval as a bar, the mean as a tick across it.
void paint_share_track(QPainter& painter, const QRectF& area, double mean, double low, double high,
                       const QColor& ink, double unit);

/// The parts of a bar in the proportion of the shares, `gap` apart; a share of nothing gets no width.
std::vector<QRectF> split_bar(const QRectF& bar, const std::vector<double>& shares, double gap);

/// The path's colour on paper (and in both looks on screen: Theme.pathColor).
QColor path_colour(const QString& path);

}  // namespace lapwing::charts

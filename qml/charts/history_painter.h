// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QColor>
#include <QFont>
#include <QMetaType>
#include <QRectF>
#include <QString>
#include <optional>
#include <vector>

class QPainter;

/// Readings over the years, drawn: the same on screen and on paper. Lines are told apart by the shape of
/// their marks, by dashes and by the number at their end, not by colour.
namespace lapwing::charts {

struct HistoryPlot {
    struct Point {
        double x = 0.0;  ///< 0 to 1: place in time
        double y = 0.0;  ///< 0 to 1, from below
        double u = 0.0;  ///< half the 95 % interval, on the same scale
        bool counted = true;
        bool broken = false;  ///< no line leads here: a repair lies before it
    };
    struct Line {
        QString name;  ///< written at its end
        int number = 1;
        std::vector<Point> points;
    };
    struct Tick {
        double at = 0.0;  ///< 0 to 1
        QString text;
    };
    std::vector<Line> lines;
    std::vector<Tick> values;
    std::vector<Tick> times;
    QString unit;
};

struct HistoryLook {
    QColor ink;
    QColor quiet;
    QColor paper;
    QFont font;                 ///< in the painter's units (pixel size)
    double unit = 1.0;          ///< one density-independent pixel in the painter's units
    std::optional<int> picked;  ///< cylinder whose line stands out
};

/// Axes, whiskers, marks and lines within `area`.
void paint_history(QPainter& painter, const QRectF& area, const HistoryPlot& plot, const HistoryLook& look);

/// The mark that stands for a cylinder's readings: one of eight shapes, open or filled.
void paint_history_mark(QPainter& painter, QPointF middle, int line, const HistoryLook& look, bool filled);

}  // namespace lapwing::charts

Q_DECLARE_METATYPE(lapwing::charts::HistoryPlot)

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QPointF>
#include <QRectF>
#include <vector>

#include "qml/charts/history_painter.h"

/// Where a chart of readings has its axes, its points, and the names of its lines. Nothing is painted here,
/// so that a test can measure it.
namespace lapwing::charts {

/// The drawing's inner rectangle, and where a point of it stands.
struct HistoryFrame {
    QRectF inner;
    double apart = 0.0;  ///< from one line's marks to the next one's at the same visit
    double free = 0.0;   ///< at either side, for marks that stand side by side
    std::size_t lines = 0;

    [[nodiscard]] double x(double share) const;
    [[nodiscard]] double y(double share) const;
    /// Marks and whiskers of one visit stand side by side.
    [[nodiscard]] QPointF at(const HistoryPlot::Point& point, std::size_t line) const;
};

/// The names of lines that end in one place, in one box right of the drawing.
struct HistoryName {
    std::vector<std::size_t> lines;  ///< in their order
    QRectF box;
};

struct HistoryLayout {
    HistoryFrame frame;
    std::vector<HistoryName> names;  ///< from above; none covers another
    bool led = false;                ///< a name stands away from its line's end: leaders show which is whose
};

HistoryLayout lay_out(const QRectF& area, const HistoryPlot& plot, const HistoryLook& look);

/// Radius of the mark before a name, and how much of a box the name of one line takes.
double name_mark(const HistoryLook& look);
double name_width(const HistoryPlot::Line& line, const HistoryLook& look);
double between_names(const HistoryLook& look);

}  // namespace lapwing::charts

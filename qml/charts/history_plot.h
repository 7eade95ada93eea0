// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/report/report.h"
#include "qml/charts/history_painter.h"
#include "qml/format/formatter.h"

namespace lapwing::charts {

/// What the readings are drawn over.
enum class Along { time, meter };

/// What the meter read at the visits of a chart: kilometres or miles, or hours, whichever the newest has.
struct Meter {
    std::vector<std::optional<TypedUsage>>
        readings;            ///< as many as visits; empty: not read, or of the other kind
    int unread = 0;          ///< visits without one
    bool runs_back = false;  ///< it read less than at a visit before: changed, or misread
    bool drawable = false;   ///< two visits differ in it
};
Meter meter_of(const report::Chart& chart);

/// The chart in the user's unit, with its axes: readings over the time or the work that they span, whiskers
/// included. Along the meter a visit where it was not read is left out.
HistoryPlot plot_of(const report::Chart& chart, const format::Formatter& formatter,
                    Along along = Along::time);

}  // namespace lapwing::charts

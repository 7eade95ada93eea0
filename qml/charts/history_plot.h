// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/report/report.h"
#include "qml/charts/history_painter.h"
#include "qml/format/formatter.h"

namespace lapwing::charts {

/// The chart in the user's unit, with its axes: readings over the time that they span, whiskers included.
HistoryPlot plot_of(const report::Chart& chart, const format::Formatter& formatter);

}  // namespace lapwing::charts

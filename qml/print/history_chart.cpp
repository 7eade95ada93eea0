// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <QPainter>

#include "qml/charts/history_plot.h"
#include "qml/fonts/typeface.h"
#include "qml/print/blocks.h"
#include "qml/print/styles.h"

namespace lapwing::print {
namespace {

constexpr double chart_height = mm(40);

Pieces chart_pieces(const Wording& wording, const report::Chart& chart, double width) {
    Pieces pieces = typeset(text_of(chart.what), styles::column_head, width);
    charts::HistoryLook look;
    look.ink = styles::body.colour;
    look.quiet = styles::quiet_ink;
    look.paper = Qt::white;
    look.font = QFont(fonts::typeface());
    look.font.setPixelSize(static_cast<int>(styles::small_size));
    look.unit = pt(0.75);
    pieces.push_back({chart_height, [plot = charts::plot_of(chart, wording.formatter()), look, width](
                                        QPainter& painter, QPointF at) {
                          charts::paint_history(painter, QRectF(at, QSizeF(width, chart_height)), plot, look);
                      }});
    return pieces;
}

}  // namespace

void put(Flow& flow, const Wording& wording, const report::Chart& chart) {
    flow.put({{{0.0, chart_pieces(wording, chart, flow.width())}}, mm(1), mm(1)});
}

}  // namespace lapwing::print

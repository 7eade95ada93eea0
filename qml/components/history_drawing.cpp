// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/components/history_drawing.h"

#include <QPainter>

#include "qml/charts/history_painter.h"

namespace lapwing::components {

HistoryDrawing::HistoryDrawing(QQuickItem* parent) : QQuickPaintedItem(parent) {
    connect(this, &HistoryDrawing::changed, this, [this] { update(); });
}

void HistoryDrawing::paint(QPainter* painter) {
    const auto plot = plot_.value<charts::HistoryPlot>();
    charts::HistoryLook look;
    look.ink = ink_;
    look.quiet = quiet_;
    look.paper = paper_;
    look.font = QFont(family_);
    look.font.setPixelSize(text_size_);
    if (picked_ > 0) look.picked = picked_;
    charts::paint_history(*painter, QRectF(0, 0, width(), height()), plot, look);
}

HistoryMark::HistoryMark(QQuickItem* parent) : QQuickPaintedItem(parent) {
    connect(this, &HistoryMark::changed, this, [this] { update(); });
}

void HistoryMark::paint(QPainter* painter) {
    charts::HistoryLook look;
    look.ink = ink_;
    look.paper = ink_;
    look.unit = width() / 14.0;
    painter->setRenderHint(QPainter::Antialiasing);
    charts::paint_history_mark(*painter, QPointF(width() / 2.0, height() / 2.0), line_, look, true);
}

}  // namespace lapwing::components

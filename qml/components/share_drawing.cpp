// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/components/share_drawing.h"

#include <QPainter>

#include "qml/charts/share_painter.h"

namespace lapwing::components {

PatternDrawing::PatternDrawing(QQuickItem* parent) : QQuickPaintedItem(parent) {
    connect(this, &PatternDrawing::changed, this, [this] { update(); });
}

void PatternDrawing::paint(QPainter* painter) {
    charts::paint_path_pattern(*painter, QRectF(0, 0, width(), height()), path_, color_, 1.0);
}

ShareTrack::ShareTrack(QQuickItem* parent) : QQuickPaintedItem(parent) {
    connect(this, &ShareTrack::changed, this, [this] { update(); });
}

void ShareTrack::paint(QPainter* painter) {
    if (mirrored_) {
        painter->translate(width(), 0);
        painter->scale(-1, 1);
    }
    charts::paint_share_track(*painter, QRectF(1, 0, width() - 2, height()), mean_, low_, high_, color_, 1.0);
}

}  // namespace lapwing::components

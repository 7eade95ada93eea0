// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/components/line_drawing.h"

#include <QPainter>
#include <array>

namespace lapwing::components {

namespace {

int numbers_after(QChar word) {
    switch (word.unicode()) {
        case 'M':
        case 'L':
            return 2;
        case 'O':
            return 3;
        case 'Q':
            return 4;
        case 'A':
        case 'B':
            return 5;
        case 'Z':
            return 0;
        default:
            return -1;
    }
}

void add(QPainterPath& path, QChar word, const std::array<qreal, 5>& n) {
    switch (word.unicode()) {
        case 'M':
            return path.moveTo(n[0], n[1]);
        case 'L':
            return path.lineTo(n[0], n[1]);
        case 'O':
            return path.addEllipse(QPointF(n[0], n[1]), n[2], n[2]);
        case 'Q':
            return path.quadTo(n[0], n[1], n[2], n[3]);
        case 'A':
            return path.arcTo(n[0] - n[2], n[1] - n[2], 2 * n[2], 2 * n[2], n[3], n[4]);
        case 'B':
            return path.addRoundedRect(QRectF(n[0], n[1], n[2], n[3]), n[4], n[4]);
        default:
            return path.closeSubpath();
    }
}

}  // namespace

QPainterPath path_from(const QString& words) {
    QPainterPath path;
    const auto parts = QStringView(words).split(u' ', Qt::SkipEmptyParts);
    for (qsizetype i = 0; i < parts.size();) {
        const QChar word = parts[i].size() == 1 ? parts[i][0] : QChar();
        const int count = numbers_after(word);
        if (count < 0 || i + count >= parts.size()) return path;
        std::array<qreal, 5> numbers{};
        for (int k = 0; k < count; ++k) {
            bool ok = false;
            numbers[size_t(k)] = parts[i + 1 + k].toDouble(&ok);
            if (!ok) return path;
        }
        add(path, word, numbers);
        i += 1 + count;
    }
    return path;
}

LineDrawing::LineDrawing(QQuickItem* parent) : QQuickPaintedItem(parent) {
    setAntialiasing(true);
    connect(this, &LineDrawing::changed, this, [this] { update(); });
}

void LineDrawing::paint(QPainter* painter) {
    if (grid_ > 0) painter->scale(width() / grid_, width() / grid_);
    if (!area_.isEmpty()) painter->fillPath(path_from(area_), color_);
    if (line_.isEmpty()) return;
    QPen pen(color_, thickness_, Qt::SolidLine, dashes_.isEmpty() ? Qt::RoundCap : Qt::FlatCap,
             Qt::RoundJoin);
    if (!dashes_.isEmpty()) pen.setDashPattern(dashes_);
    painter->strokePath(path_from(line_), pen);
}

}  // namespace lapwing::components

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/components/picture_painter.h"

#include <QPainterPath>
#include <QtMath>

#include "core/base/stations.h"
#include "qml/components/line_drawing.h"

namespace lapwing::components {
namespace {

// In units of the drawing.
constexpr qreal thick = 2.2, thin = 1.2, arrow_line = 2.8, arrow_head = 10;

/// Parallel lines over a rectangle, rising to the right or falling.
QPainterPath slants(QRectF over, qreal step, bool rising) {
    QPainterPath path;
    for (const qreal x : stations(over.left() - over.height(), over.right(), step)) {
        path.moveTo(x, rising ? over.bottom() : over.top());
        path.lineTo(x + over.height(), rising ? over.top() : over.bottom());
    }
    return path;
}

QPainterPath circles(QRectF over, qreal step, qreal radius) {
    QPainterPath path;
    for (const qreal y : stations(over.top() + step / 2, over.bottom(), step))
        for (const qreal x : stations(over.left() + step / 2, over.right(), step))
            path.addEllipse(QPointF(x, y), radius, radius);
    return path;
}

class Brush {
public:
    Brush(QPainter& painter, const PictureColors& colors) : painter_(painter), colors_(colors) {}

    void draw(const Stroke& stroke) {
        const QPainterPath path = path_from(stroke.path);
        const QString& look = stroke.look;
        if (look == QLatin1String("fine")) return line(path, colors_.quiet, thin);
        if (look == QLatin1String("dashed")) return line(path, colors_.quiet, thin, {5, 4});
        if (look == QLatin1String("air")) return arrow(path, colors_.air, {2.4, 1.6});
        if (look == QLatin1String("motion")) return arrow(path, colors_.ink, {});
        surface(path, look);
        line(path, colors_.ink, thick);
    }

private:
    void line(const QPainterPath& path, const QColor& color, qreal width, const QList<qreal>& dashes = {}) {
        QPen pen(color, width, Qt::SolidLine, dashes.isEmpty() ? Qt::RoundCap : Qt::FlatCap, Qt::RoundJoin);
        if (!dashes.isEmpty()) pen.setDashPattern(dashes);
        painter_.strokePath(path, pen);
    }

    void arrow(const QPainterPath& path, const QColor& color, const QList<qreal>& dashes) {
        if (path.isEmpty()) return;
        // The line ends where the head begins.
        const qreal length = path.length();
        const qreal neck = path.percentAtLength(std::max(0.0, length - arrow_head * 0.8));
        const QPointF tip = path.pointAtPercent(1), base = path.pointAtPercent(neck);
        QPainterPath shaft;
        shaft.moveTo(path.pointAtPercent(0));
        constexpr int pieces = 40;
        for (int i = 1; i <= pieces; ++i)
            shaft.lineTo(path.pointAtPercent(neck * i / pieces));
        line(shaft, color, arrow_line, dashes);
        const QPointF along = tip - base;
        const qreal size = std::max(1e-6, std::hypot(along.x(), along.y()));
        const QPointF side = QPointF(-along.y(), along.x()) / size * (arrow_head * 0.5);
        QPainterPath head(tip);
        head.lineTo(base + side);
        head.lineTo(base - side);
        head.closeSubpath();
        painter_.fillPath(head, color);
    }

    void surface(const QPainterPath& path, const QString& look) {
        if (look == QLatin1String("body")) return painter_.fillPath(path, colors_.body);
        if (look == QLatin1String("hollow")) return painter_.fillPath(path, colors_.ground);
        const QRectF over = path.boundingRect();
        if (look == QLatin1String("metal"))
            return pattern(path, colors_.ground, colors_.quiet, slants(over, 8, true), false);
        if (look == QLatin1String("oil"))
            return pattern(path, colors_.ground, colors_.ink, circles(over, 5, 1.3), true);
        if (look == QLatin1String("rings")) return painter_.fillPath(path, colors_.rings);
        if (look == QLatin1String("intake"))
            return pattern(path, colors_.intake, colors_.inkOnPath, circles(over, 7, 1.3), true);
        if (look == QLatin1String("exhaust"))
            return pattern(path, colors_.exhaust, colors_.inkOnPath, slants(over, 6, true), false);
        if (look == QLatin1String("gasket")) {
            QPainterPath cross = slants(over, 6, true);
            cross.addPath(slants(over, 6, false));
            return pattern(path, colors_.gasket, colors_.inkOnPath, cross, false);
        }
    }

    void pattern(const QPainterPath& path, const QColor& ground, const QColor& ink, const QPainterPath& marks,
                 bool filled) {
        painter_.fillPath(path, ground);
        painter_.save();
        painter_.setClipPath(path, Qt::IntersectClip);
        if (filled)
            painter_.fillPath(marks, ink);
        else
            painter_.strokePath(marks, QPen(ink, 0.9));
        painter_.restore();
    }

    QPainter& painter_;
    const PictureColors& colors_;
};

}  // namespace

void paint_picture(QPainter& painter, const Picture& picture, qreal width, const PictureColors& colors,
                   const QFont& font, qreal markRadius) {
    if (picture.size.width() <= 0 || width <= 0) return;
    const qreal scale = width / picture.size.width();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.save();
    painter.scale(scale, scale);
    Brush brush(painter, colors);
    for (const Stroke& stroke : picture.strokes)
        brush.draw(stroke);
    painter.restore();
    QFont numeral = font;
    numeral.setBold(true);
    numeral.setPixelSize(qRound(markRadius * 1.3));
    painter.setFont(numeral);
    for (const Mark& mark : picture.marks) {
        const QPointF at = mark.at * scale;
        painter.setPen(QPen(colors.ground, 2));
        painter.setBrush(colors.ink);
        painter.drawEllipse(at, markRadius, markRadius);
        painter.setPen(colors.ground);
        const QRectF box(at.x() - markRadius, at.y() - markRadius, 2 * markRadius, 2 * markRadius);
        painter.drawText(box, Qt::AlignCenter, QString::number(mark.number));
    }
}

}  // namespace lapwing::components

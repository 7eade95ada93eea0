// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/charts/bore_painter.h"

#include <QPainter>
#include <QPainterPath>
#include <algorithm>

#include "core/base/stations.h"

namespace lapwing::charts {

using findings::State;

namespace {

/// What stands beside the outline, as a share of the area's width on either side.
constexpr double margin_share = 0.2;

struct Scale {
    QRectF tube;

    [[nodiscard]] double y(double height) const {
        return tube.bottom() - std::clamp(height, 0.0, 1.0) * tube.height();
    }
};

QPen line(const QColor& colour, double width, Qt::PenStyle style = Qt::SolidLine) {
    return {colour, width, style, Qt::FlatCap, Qt::MiterJoin};
}

/// Dashes of the painter's units, whatever the pen's width.
QPen dashes(const QColor& colour, double width, double dash) {
    QPen pen = line(colour, width);
    pen.setDashPattern({dash / width, dash / width});
    return pen;
}

}  // namespace

QColor BoreLook::of(State state) const {
    switch (state) {
        case State::good:
            return good;
        case State::borderline:
            return borderline;
        case State::fault:
            return fault;
        case State::none:
            break;
    }
    return ink;
}

BoreLook paper_look(double stroke) {
    return {QColor("#14181B"), Qt::white, QColor("#D9D9D9"), QColor("#00563F"), QColor("#5E5200"),
            QColor("#8F2D06"), stroke};
}

void paint_band(QPainter& painter, const QRectF& area, const BoreLook& look) {
    painter.save();
    painter.setPen(line(look.ink, look.stroke * 0.6));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(area);
    painter.setClipRect(area, Qt::IntersectClip);
    for (const double y : stations(area.top(), area.bottom() + area.width(), look.stroke * 2.5))
        painter.drawLine(QPointF(area.left(), y), QPointF(area.right(), y - area.width()));
    painter.restore();
}

void paint_notch(QPainter& painter, const QRectF& area, const BoreLook& look) {
    painter.save();
    painter.setPen(Qt::NoPen);
    painter.setBrush(look.ink);
    painter.drawPolygon(
        QPolygonF{QPointF(area.right(), area.center().y()), area.topLeft(), area.bottomLeft()});
    painter.restore();
}

void paint_whisker(QPainter& painter, const QRectF& area, const BoreLook& look) {
    const double x = area.center().x();
    const double cap = std::min(area.width(), look.stroke * 6.0) / 2.0;
    const auto strokes = [&](const QPen& pen) {
        painter.setPen(pen);
        painter.drawLine(QPointF(x, area.top()), QPointF(x, area.bottom()));
        for (double y : {area.top(), area.bottom()})
            painter.drawLine(QPointF(x - cap, y), QPointF(x + cap, y));
    };
    painter.save();
    // A rim of paper keeps the whisker off the piston line.
    strokes(line(look.paper, look.stroke * 2.6));
    strokes(line(look.ink, look.stroke * 0.9));
    painter.restore();
}

void paint_state_mark(QPainter& painter, const QRectF& square, State state, const BoreLook& look) {
    const QColor colour = look.of(state);
    const double stroke = square.width() * 0.13;
    const QRectF inner = square.adjusted(stroke / 2, stroke / 2, -stroke / 2, -stroke / 2);
    painter.save();
    painter.setPen(line(colour, stroke));
    painter.setBrush(Qt::NoBrush);
    switch (state) {
        case State::good:
            painter.setBrush(colour);
            painter.drawEllipse(inner);
            break;
        case State::borderline: {
            painter.drawEllipse(inner);
            painter.setPen(Qt::NoPen);
            painter.setBrush(colour);
            painter.drawPie(inner, 90 * 16, 180 * 16);
            break;
        }
        case State::fault:
            painter.drawPolygon(QPolygonF{QPointF(inner.center().x(), inner.top()),
                                          QPointF(inner.right(), inner.bottom()),
                                          QPointF(inner.left(), inner.bottom())});
            break;
        case State::none:
            painter.setPen(dashes(colour, stroke, square.width() * 0.2));
            painter.drawEllipse(inner);
            break;
    }
    painter.restore();
}

void paint_bore(QPainter& painter, const QRectF& area, const report::Bore& bore, const BoreLook& look) {
    const double margin = area.width() * margin_share;
    const Scale scale{area.adjusted(margin, 0.0, -margin, 0.0)};
    painter.save();
    painter.setBrush(Qt::NoBrush);
    if (!bore.piston) {
        painter.setPen(dashes(look.ink, look.stroke, look.stroke * 3.0));
        painter.drawRect(scale.tube);
    } else {
        const double y = scale.y(*bore.piston);
        painter.fillRect(QRectF(QPointF(scale.tube.left(), y), scale.tube.bottomRight()), look.filled);
        painter.setPen(line(look.of(bore.state.value_or(State::none)), look.stroke * 2.6));
        painter.drawLine(QPointF(scale.tube.left(), y), QPointF(scale.tube.right(), y));
        if (bore.whisker > 0.0)
            paint_whisker(painter,
                          QRectF(QPointF(scale.tube.left(), scale.y(*bore.piston + bore.whisker)),
                                 QPointF(scale.tube.right(), scale.y(*bore.piston - bore.whisker))),
                          look);
        painter.setBrush(Qt::NoBrush);
        painter.setPen(line(look.ink, look.stroke * 1.4));
        painter.drawRect(scale.tube);
    }
    if (bore.band_low && bore.band_high)
        paint_band(painter,
                   QRectF(QPointF(scale.tube.right() + margin * 0.3, scale.y(*bore.band_high)),
                          QPointF(scale.tube.right() + margin * 0.9, scale.y(*bore.band_low))),
                   look);
    if (bore.notch) {
        const double size = margin * 0.9;
        paint_notch(painter,
                    QRectF(scale.tube.left() - size, scale.y(*bore.notch) - size * 0.55, size, size * 1.1),
                    look);
    }
    painter.restore();
}

}  // namespace lapwing::charts

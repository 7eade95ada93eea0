// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/charts/share_painter.h"

#include <QPainter>
#include <algorithm>

#include "core/base/stations.h"

namespace lapwing::charts {
namespace {

QPen pen_of(const QColor& ink, double opacity, double width) {
    QColor colour = ink;
    colour.setAlphaF(static_cast<float>(opacity));
    return {colour, width, Qt::SolidLine, Qt::FlatCap};
}

/// Lines at 45 degrees across the area, which clips them.
void slants(QPainter& painter, const QRectF& area, double step, bool rising) {
    for (const double c : stations(step, area.width() + area.height(), step)) {
        const double x = rising ? area.left() + c : area.right() - c;
        const double lean = rising ? -area.height() : area.height();
        painter.drawLine(QPointF(x, area.top()), QPointF(x + lean, area.bottom()));
    }
}

void circles(QPainter& painter, const QRectF& area, double step, double radius) {
    for (const double y : stations(area.top() + step / 2, area.bottom() - radius, step))
        for (const double x : stations(area.left() + step / 2, area.right() - radius, step))
            painter.drawEllipse(QPointF(x, y), radius, radius);
}

}  // namespace

QColor path_colour(const QString& path) {
    if (path == QLatin1String("rings")) return "#7FB8DD";
    if (path == QLatin1String("intake")) return "#B9A6E8";
    if (path == QLatin1String("exhaust")) return "#F2A0B5";
    if (path == QLatin1String("gasket") || path == QLatin1String("next_cylinder") ||
        path == QLatin1String("coolant"))
        return "#CFC7A8";
    return "#9FD8C0";
}

void paint_path_pattern(QPainter& painter, const QRectF& area, const QString& path, const QColor& ink,
                        double unit) {
    if (path == QLatin1String("rings") || area.isEmpty()) return;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setClipRect(area, Qt::IntersectClip);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(pen_of(ink, 0.45, 1.2 * unit));
    if (path == QLatin1String("intake")) {
        painter.setBrush(pen_of(ink, 0.55, 1).color());
        painter.setPen(Qt::NoPen);
        circles(painter, area, 8 * unit, 1.5 * unit);
    } else if (path == QLatin1String("exhaust")) {
        slants(painter, area, 8 * unit, true);
    } else if (path == QLatin1String("gasket")) {
        slants(painter, area, 7 * unit, true);
        slants(painter, area, 7 * unit, false);
    } else if (path == QLatin1String("next_cylinder")) {
        for (const double x : stations(area.left() + 3 * unit, area.right(), 6 * unit))
            painter.drawLine(QPointF(x, area.top()), QPointF(x, area.bottom()));
    } else if (path == QLatin1String("coolant")) {
        for (const double y : stations(area.top() + 3 * unit, area.bottom(), 6 * unit))
            painter.drawLine(QPointF(area.left(), y), QPointF(area.right(), y));
    } else {
        circles(painter, area, 11 * unit, 3.5 * unit);
    }
    painter.restore();
}

void paint_share_track(QPainter& painter, const QRectF& area, double mean, double low, double high,
                       const QColor& ink, double unit) {
    const double y = area.center().y();
    const auto x = [&](double share) { return area.left() + std::clamp(share, 0.0, 1.0) * area.width(); };
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(pen_of(ink, 0.6, unit));
    painter.drawLine(QPointF(area.left(), y), QPointF(area.right(), y));
    for (const double end : {0.0, 0.5, 1.0})
        painter.drawLine(QPointF(x(end), y - 2 * unit), QPointF(x(end), y + 2 * unit));
    painter.setPen(pen_of(ink, 1.0, 4 * unit));
    painter.drawLine(QPointF(x(low), y), QPointF(std::max(x(high), x(low) + unit), y));
    painter.setPen(pen_of(ink, 1.0, 2 * unit));
    painter.drawLine(QPointF(x(mean), area.top()), QPointF(x(mean), area.bottom()));
    painter.restore();
}

std::vector<QRectF> split_bar(const QRectF& bar, const std::vector<double>& shares, double gap) {
    double all = 0.0;
    double gaps = -gap;
    for (const double share : shares)
        if (share > 0.0) {
            all += share;
            gaps += gap;
        }
    const double room = std::max(0.0, bar.width() - std::max(0.0, gaps));
    std::vector<QRectF> out;
    double x = bar.left();
    for (const double share : shares) {
        const double width = share > 0.0 ? room * share / all : 0.0;
        out.emplace_back(x, bar.top(), width, bar.height());
        if (share > 0.0) x += width + gap;
    }
    return out;
}

}  // namespace lapwing::charts

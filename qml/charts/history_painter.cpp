// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/charts/history_painter.h"

#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "qml/charts/history_layout.h"

namespace lapwing::charts {
namespace {

QPainterPath polygon(QPointF middle, double radius, int corners, double turned) {
    QPainterPath out;
    for (int i = 0; i < corners; ++i) {
        const double angle = turned + 2.0 * std::numbers::pi * i / corners;
        const QPointF at = middle + radius * QPointF(std::sin(angle), -std::cos(angle));
        i == 0 ? out.moveTo(at) : out.lineTo(at);
    }
    out.closeSubpath();
    return out;
}

QPainterPath cross(QPointF middle, double radius, double turned) {
    QPainterPath out;
    for (int i = 0; i < 2; ++i) {
        const double angle = turned + std::numbers::pi / 2.0 * i;
        const QPointF arm = radius * QPointF(std::sin(angle), -std::cos(angle));
        out.moveTo(middle - arm);
        out.lineTo(middle + arm);
    }
    return out;
}

constexpr int shapes = 8;

QPainterPath shape_of(int line, QPointF middle, double radius) {
    using std::numbers::pi;
    QPainterPath round;
    switch (line % shapes) {
        case 0:
            round.addEllipse(middle, 0.9 * radius, 0.9 * radius);
            return round;
        case 1:
            return polygon(middle, 1.15 * radius, 4, pi / 4.0);
        case 2:
            return polygon(middle, 1.2 * radius, 3, 0.0);
        case 3:
            return polygon(middle, 1.15 * radius, 4, 0.0);
        case 4:
            return polygon(middle, 1.2 * radius, 3, pi);
        case 5:
            return cross(middle, radius, pi / 4.0);
        case 6:
            return cross(middle, radius, 0.0);
        default:
            return polygon(middle, 1.1 * radius, 6, 0.0);
    }
}

QPen line_pen(int line, const QColor& ink, double width) {
    static const std::array<QList<qreal>, 4> dashes{QList<qreal>{}, {6, 3}, {2, 3}, {8, 3, 2, 3}};
    QPen pen(ink, width, Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin);
    if (const auto& dash = dashes[static_cast<std::size_t>(line + line / shapes) % dashes.size()];
        !dash.isEmpty())
        pen.setDashPattern(dash);
    return pen;
}

/// Dates below the axis: the first, the last, and what finds room between them.
void paint_times(QPainter& painter, const QRectF& area, const HistoryFrame& frame, const HistoryPlot& plot,
                 const HistoryLook& look) {
    const QFontMetricsF metrics(look.font);
    const double gap = 6.0 * look.unit;
    std::vector<std::size_t> order(plot.times.size());
    for (std::size_t i = 0; i < order.size(); ++i)
        order[i] = i;
    if (order.size() > 2) std::swap(order[1], order.back());
    std::vector<std::pair<double, double>> taken;
    for (const std::size_t i : order) {
        const auto& tick = plot.times[i];
        const double x = frame.x(tick.at);
        painter.setPen(QPen(look.quiet, look.unit));
        painter.drawLine(QPointF(x, frame.inner.bottom()), QPointF(x, frame.inner.bottom() + gap / 2.0));
        const double width = metrics.horizontalAdvance(tick.text);
        const double from = std::max(area.left(), std::min(x - width / 2.0, area.right() - width));
        const bool free = std::ranges::none_of(taken, [&](const auto& other) {
            return from < other.second + gap && other.first < from + width + gap;
        });
        if (!free) continue;
        painter.drawText(QPointF(from, frame.inner.bottom() + gap + metrics.ascent()), tick.text);
        taken.emplace_back(from, from + width);
    }
}

void paint_axes(QPainter& painter, const QRectF& area, const HistoryFrame& frame, const HistoryPlot& plot,
                const HistoryLook& look) {
    const QFontMetricsF metrics(look.font);
    const double gap = 6.0 * look.unit;
    QColor faint = look.quiet;
    faint.setAlphaF(0.35F);
    for (const auto& tick : plot.values) {
        const double y = frame.y(tick.at);
        painter.setPen(QPen(faint, look.unit));
        painter.drawLine(QPointF(frame.inner.left(), y), QPointF(frame.inner.right(), y));
        painter.setPen(look.quiet);
        const double width = metrics.horizontalAdvance(tick.text);
        painter.drawText(QPointF(frame.inner.left() - gap - width, y + 0.35 * metrics.ascent()), tick.text);
    }
    painter.setPen(look.quiet);
    painter.drawText(QPointF(frame.inner.left() - gap - metrics.horizontalAdvance(plot.unit),
                             frame.inner.top() - gap - metrics.descent()),
                     plot.unit);
    paint_times(painter, area, frame, plot, look);
    painter.setPen(QPen(look.quiet, look.unit));
    painter.drawLine(frame.inner.bottomLeft(), frame.inner.bottomRight());
}

void paint_whisker(QPainter& painter, const HistoryFrame& frame, const HistoryPlot::Point& point, double x,
                   double half) {
    const double top = frame.y(point.y + point.u);
    const double bottom = frame.y(point.y - point.u);
    painter.drawLine(QPointF(x, top), QPointF(x, bottom));
    for (const double y : {top, bottom})
        painter.drawLine(QPointF(x - half, y), QPointF(x + half, y));
}

/// What is drawn of one line, quieter where another one is picked.
HistoryLook look_of(const HistoryPlot::Line& line, const HistoryLook& look) {
    HistoryLook out = look;
    if (look.picked && look.picked != line.number) out.ink.setAlphaF(0.45F);
    return out;
}

void paint_mark(QPainter& painter, QPointF middle, double radius, int line, const HistoryLook& look,
                bool filled) {
    painter.setPen(QPen(look.ink, 0.4 * radius));
    painter.setBrush(filled ? look.ink : look.paper);
    painter.drawPath(shape_of(line, middle, radius));
}

/// From a line's end to its name. Where a line ends at an earlier visit its leader is dotted up to the edge.
void paint_leader(QPainter& painter, const HistoryLayout& layout, QPointF end, double until,
                  const QRectF& box, const HistoryLook& look) {
    const QPointF edge(layout.frame.inner.right(), end.y());
    const double width = 0.8 * look.unit;
    painter.setPen(QPen(look.quiet, width, Qt::DotLine));
    const double from = end.x() + 7.0 * look.unit;
    const double solid = std::max(from, until);
    if (from < solid) painter.drawLine(QPointF(from, end.y()), QPointF(solid, end.y()));
    painter.setPen(QPen(look.quiet, width));
    if (solid < edge.x()) painter.drawLine(QPointF(solid, end.y()), edge);
    painter.drawLine(edge, QPointF(box.left() - 2.0 * look.unit, box.center().y()));
}

void paint_leaders(QPainter& painter, const HistoryLayout& layout, const HistoryPlot& plot,
                   const HistoryLook& look) {
    if (!layout.led) return;
    const double last_visit = layout.frame.x(1.0) - layout.frame.free;
    for (const auto& name : layout.names)
        for (const std::size_t i : name.lines)
            paint_leader(painter, layout, layout.frame.at(plot.lines[i].points.back(), i), last_visit,
                         name.box, look);
}

/// The marks and names of the lines, right of the drawing, where none covers another or a reading.
void paint_names(QPainter& painter, const HistoryLayout& layout, const HistoryPlot& plot,
                 const HistoryLook& look) {
    const QFontMetricsF metrics(look.font);
    for (const auto& name : layout.names) {
        double x = name.box.left();
        const double y = name.box.center().y();
        for (const std::size_t i : name.lines) {
            const auto& line = plot.lines[i];
            if (line.name.isEmpty()) continue;
            const double radius = name_mark(look);
            paint_mark(painter, {x + radius, y}, radius, static_cast<int>(i), look_of(line, look), true);
            QFont font = look.font;
            font.setBold(!look.picked || look.picked == line.number);
            painter.setFont(font);
            painter.setPen(look.ink);
            painter.drawText(QPointF(x + 2.0 * radius + 3.0 * look.unit, y + 0.36 * metrics.ascent()),
                             line.name);
            x += name_width(line, look) + between_names(look);
        }
    }
    painter.setFont(look.font);
}

}  // namespace

void paint_history_mark(QPainter& painter, QPointF middle, int line, const HistoryLook& look, bool filled) {
    paint_mark(painter, middle, 5.0 * look.unit, line, look, filled);
}

void paint_history(QPainter& painter, const QRectF& area, const HistoryPlot& plot, const HistoryLook& look) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setFont(look.font);
    const HistoryLayout layout = lay_out(area, plot, look);
    const HistoryFrame& frame = layout.frame;
    paint_axes(painter, area, frame, plot, look);
    paint_leaders(painter, layout, plot, look);
    for (std::size_t i = 0; i < plot.lines.size(); ++i) {
        const auto& line = plot.lines[i];
        const bool quiet = look.picked && look.picked != line.number;
        const HistoryLook own = look_of(line, look);
        painter.setPen(line_pen(static_cast<int>(i), own.ink, (quiet ? 1.2 : 2.0) * look.unit));
        for (std::size_t p = 1; p < line.points.size(); ++p)
            if (!line.points[p].broken && line.points[p].counted && line.points[p - 1].counted)
                painter.drawLine(frame.at(line.points[p - 1], i), frame.at(line.points[p], i));
        painter.setPen(QPen(own.ink, 1.2 * look.unit));
        for (const auto& point : line.points)
            if (!quiet) paint_whisker(painter, frame, point, frame.at(point, i).x(), 3.0 * look.unit);
        for (const auto& point : line.points)
            paint_history_mark(painter, frame.at(point, i), static_cast<int>(i), own, point.counted);
    }
    paint_names(painter, layout, plot, look);
    painter.restore();
}

}  // namespace lapwing::charts

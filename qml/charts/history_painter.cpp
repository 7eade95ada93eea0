// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/charts/history_painter.h"

#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

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
    if (const auto& dash = dashes[static_cast<std::size_t>(line) % dashes.size()]; !dash.isEmpty())
        pen.setDashPattern(dash);
    return pen;
}

/// The drawing's inner rectangle, and where a point of it stands.
struct Frame {
    QRectF inner;

    [[nodiscard]] double x(double share) const { return inner.left() + share * inner.width(); }
    [[nodiscard]] double y(double share) const {
        return inner.bottom() - std::clamp(share, -0.05, 1.05) * inner.height();
    }
    [[nodiscard]] QPointF at(const HistoryPlot::Point& point) const { return {x(point.x), y(point.y)}; }
};

Frame frame_of(const QRectF& area, const HistoryPlot& plot, const HistoryLook& look) {
    const QFontMetricsF metrics(look.font);
    double left = metrics.horizontalAdvance(plot.unit);
    for (const auto& tick : plot.values)
        left = std::max(left, metrics.horizontalAdvance(tick.text));
    double right = 0.0;
    for (const auto& line : plot.lines)
        right = std::max(right, metrics.horizontalAdvance(line.name));
    const double gap = 6.0 * look.unit;
    return {
        area.adjusted(left + gap, metrics.height() + gap, -(right + 3.0 * gap), -(metrics.height() + gap))};
}

/// Dates below the axis: the first, the last, and what finds room between them.
void paint_times(QPainter& painter, const Frame& frame, const HistoryPlot& plot, const HistoryLook& look) {
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
        const double from = std::max(frame.inner.left() - 4.0 * gap,
                                     std::min(x - width / 2.0, frame.inner.right() + 3.0 * gap - width));
        const bool free = std::ranges::none_of(taken, [&](const auto& other) {
            return from < other.second + gap && other.first < from + width + gap;
        });
        if (!free) continue;
        painter.drawText(QPointF(from, frame.inner.bottom() + gap + metrics.ascent()), tick.text);
        taken.emplace_back(from, from + width);
    }
}

void paint_axes(QPainter& painter, const Frame& frame, const HistoryPlot& plot, const HistoryLook& look) {
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
    paint_times(painter, frame, plot, look);
    painter.setPen(QPen(look.quiet, look.unit));
    painter.drawLine(frame.inner.bottomLeft(), frame.inner.bottomRight());
}

void paint_whisker(QPainter& painter, const Frame& frame, const HistoryPlot::Point& point, double half,
                   double shift) {
    const double x = frame.x(point.x) + shift;
    const double top = frame.y(point.y + point.u);
    const double bottom = frame.y(point.y - point.u);
    painter.drawLine(QPointF(x, top), QPointF(x, bottom));
    for (const double y : {top, bottom})
        painter.drawLine(QPointF(x - half, y), QPointF(x + half, y));
}

/// Names at the lines' ends, moved apart where they would cover each other.
void paint_names(QPainter& painter, const Frame& frame, const HistoryPlot& plot, const HistoryLook& look) {
    struct Name {
        const HistoryPlot::Line* line;
        double x;
        double y;
    };
    std::vector<Name> names;
    for (const auto& line : plot.lines)
        if (!line.points.empty())
            names.push_back({&line, frame.x(line.points.back().x), frame.y(line.points.back().y)});
    std::ranges::sort(names, {}, [](const Name& name) { return std::pair(name.x, name.y); });
    const QFontMetricsF metrics(look.font);
    const double least = 0.95 * metrics.height();
    for (std::size_t i = 1; i < names.size(); ++i)
        if (names[i].x == names[i - 1].x) names[i].y = std::max(names[i].y, names[i - 1].y + least);
    // What was pushed below the frame is pushed up again.
    for (std::size_t i = names.size(); i-- > 0;) {
        const bool above = i + 1 < names.size() && names[i].x == names[i + 1].x;
        names[i].y = std::min(names[i].y, above ? names[i + 1].y - least : frame.inner.bottom());
    }
    for (const Name& name : names) {
        QFont font = look.font;
        font.setBold(!look.picked || look.picked == name.line->number);
        painter.setFont(font);
        painter.setPen(look.ink);
        painter.drawText(QPointF(name.x + 12.0 * look.unit, name.y + 0.35 * metrics.ascent()),
                         name.line->name);
    }
    painter.setFont(look.font);
}

}  // namespace

void paint_history_mark(QPainter& painter, QPointF middle, int line, const HistoryLook& look, bool filled) {
    const QPainterPath shape = shape_of(line, middle, 5.0 * look.unit);
    painter.setPen(QPen(look.ink, 2.0 * look.unit));
    painter.setBrush(filled ? look.ink : look.paper);
    painter.drawPath(shape);
}

void paint_history(QPainter& painter, const QRectF& area, const HistoryPlot& plot, const HistoryLook& look) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setFont(look.font);
    const Frame frame = frame_of(area, plot, look);
    paint_axes(painter, frame, plot, look);
    const auto count = static_cast<double>(plot.lines.size());
    for (std::size_t i = 0; i < plot.lines.size(); ++i) {
        const auto& line = plot.lines[i];
        const bool quiet = look.picked && look.picked != line.number;
        HistoryLook own = look;
        if (quiet) own.ink.setAlphaF(0.45F);
        // Whiskers of one visit stand side by side.
        const double shift =
            (static_cast<double>(i) - (count - 1.0) / 2.0) * std::min(3.0, 18.0 / count) * look.unit;
        painter.setPen(line_pen(static_cast<int>(i), own.ink, (quiet ? 1.2 : 2.0) * look.unit));
        for (std::size_t p = 1; p < line.points.size(); ++p)
            if (!line.points[p].broken && line.points[p].counted && line.points[p - 1].counted)
                painter.drawLine(frame.at(line.points[p - 1]) + QPointF(shift, 0.0),
                                 frame.at(line.points[p]) + QPointF(shift, 0.0));
        painter.setPen(QPen(own.ink, 1.2 * look.unit));
        for (const auto& point : line.points) {
            if (!quiet) paint_whisker(painter, frame, point, 3.0 * look.unit, shift);
        }
        for (const auto& point : line.points)
            paint_history_mark(painter, frame.at(point) + QPointF(shift, 0.0), static_cast<int>(i), own,
                               point.counted);
    }
    paint_names(painter, frame, plot, look);
    painter.restore();
}

}  // namespace lapwing::charts

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/charts/history_layout.h"

#include <QFontMetricsF>
#include <algorithm>
#include <cmath>

namespace lapwing::charts {
namespace {

/// So many names in one box read at a glance; more only where there is no room for another box.
constexpr std::size_t few = 4;
/// Ends less apart than this are one to the eye.
constexpr double spot = 1.5;
/// Of the drawing's width, unless there is no other way to name all.
constexpr double names_share = 0.3;

/// Names that share a box, and the mean height of their lines' ends.
struct Group {
    std::vector<std::size_t> lines;
    double y = 0.0;
};

Group together(const Group& one, const Group& other) {
    const auto n = static_cast<double>(one.lines.size());
    const auto m = static_cast<double>(other.lines.size());
    Group out{one.lines, (n * one.y + m * other.y) / (n + m)};
    out.lines.insert(out.lines.end(), other.lines.begin(), other.lines.end());
    return out;
}

double box_width(const std::vector<std::size_t>& lines, const HistoryPlot& plot, const HistoryLook& look) {
    double width = (static_cast<double>(lines.size()) - 1.0) * between_names(look);
    for (const std::size_t line : lines)
        width += name_width(plot.lines[line], look);
    return width;
}

/// Ends that can't be told apart share a box, as long as that is no wider than `widest`; so do neighbours
/// where there are more boxes than rows.
std::vector<Group> grouped(const HistoryFrame& frame, const HistoryPlot& plot, const HistoryLook& look,
                           double widest, std::size_t rows) {
    std::vector<Group> out;
    for (std::size_t i = 0; i < plot.lines.size(); ++i)
        if (const auto& points = plot.lines[i].points; !points.empty())
            out.push_back({{i}, frame.y(points.back().y)});
    std::ranges::stable_sort(out, {}, &Group::y);
    // So many in every box are needed; more may still be where the rows do not come out even.
    std::size_t needed = (out.size() + rows - 1) / rows;
    const auto may_share = [&](const Group& one, const Group& other) {
        const Group both = together(one, other);
        return both.lines.size() <= needed ||
               (both.lines.size() <= few && box_width(both.lines, plot, look) <= widest);
    };
    while (out.size() > 1) {
        auto nearest = out.end();
        for (auto at = out.begin(); at + 1 != out.end(); ++at)
            if (may_share(*at, *(at + 1)) &&
                (nearest == out.end() || (at + 1)->y - at->y < (nearest + 1)->y - nearest->y))
                nearest = at;
        const bool one_spot = nearest != out.end() && (nearest + 1)->y - nearest->y <= spot * look.unit;
        if (!one_spot && out.size() <= rows) break;
        if (nearest == out.end()) {
            ++needed;
            continue;
        }
        *nearest = together(*nearest, *(nearest + 1));
        out.erase(nearest + 1);
    }
    for (Group& group : out)
        std::ranges::sort(group.lines);
    return out;
}

/// Heights as near as can be to the wished ones (which ascend), `least` apart, from `top` to `bottom`.
std::vector<double> spread(const std::vector<Group>& groups, double least, double top, double bottom) {
    struct Block {
        double sum = 0.0;
        std::size_t count = 0;
        [[nodiscard]] double mean() const { return sum / static_cast<double>(count); }
    };
    // Less what the rows above take, the heights need only not to descend: blocks that would are put
    // together.
    std::vector<Block> blocks;
    for (std::size_t i = 0; i < groups.size(); ++i) {
        blocks.push_back({groups[i].y - static_cast<double>(i) * least, 1});
        while (blocks.size() > 1 && blocks[blocks.size() - 2].mean() >= blocks.back().mean()) {
            const Block last = blocks.back();
            blocks.pop_back();
            blocks.back().sum += last.sum;
            blocks.back().count += last.count;
        }
    }
    const double lowest = std::max(top, bottom - (static_cast<double>(groups.size()) - 1.0) * least);
    std::vector<double> out;
    for (const Block& block : blocks)
        for (std::size_t i = 0; i < block.count; ++i)
            out.push_back(std::clamp(block.mean(), top, lowest) + static_cast<double>(out.size()) * least);
    return out;
}

QFont bold(QFont font) {
    font.setBold(true);
    return font;
}

}  // namespace

double HistoryFrame::x(double share) const {
    return inner.left() + free + share * (inner.width() - 2.0 * free);
}

double HistoryFrame::y(double share) const {
    return inner.bottom() - std::clamp(share, -0.05, 1.05) * inner.height();
}

QPointF HistoryFrame::at(const HistoryPlot::Point& point, std::size_t line) const {
    const double shift = static_cast<double>(line) - (static_cast<double>(lines) - 1.0) / 2.0;
    return {x(point.x) + shift * apart, y(point.y)};
}

double name_mark(const HistoryLook& look) {
    return 3.5 * look.unit;
}

double name_width(const HistoryPlot::Line& line, const HistoryLook& look) {
    return 2.0 * name_mark(look) + 3.0 * look.unit +
           QFontMetricsF(bold(look.font)).horizontalAdvance(line.name);
}

double between_names(const HistoryLook& look) {
    return 6.0 * look.unit;
}

HistoryLayout lay_out(const QRectF& area, const HistoryPlot& plot, const HistoryLook& look) {
    const QFontMetricsF metrics(bold(look.font));
    const double gap = 6.0 * look.unit;
    const double row = std::max(metrics.height(), 2.5 * name_mark(look));
    double left = metrics.horizontalAdvance(plot.unit);
    for (const auto& tick : plot.values)
        left = std::max(left, metrics.horizontalAdvance(tick.text));

    HistoryLayout out;
    HistoryFrame& frame = out.frame;
    frame.inner = area.adjusted(left + gap, metrics.height() + gap, 0.0, -(metrics.height() + gap));
    frame.lines = plot.lines.size();
    const auto count = static_cast<double>(std::max<std::size_t>(1, frame.lines));
    frame.apart = std::min(3.0, 18.0 / count) * look.unit;
    frame.free = (count - 1.0) / 2.0 * frame.apart + 7.0 * look.unit;

    const double top = area.top();
    const double bottom = frame.inner.bottom() + gap / 2.0;
    const auto rows = static_cast<std::size_t>(std::max(1.0, std::floor((bottom - top) / row)));
    const auto groups = grouped(frame, plot, look, names_share * area.width(), rows);
    const auto heights = spread(groups, row, top + row / 2.0, bottom - row / 2.0);

    double width = 0.0;
    for (std::size_t i = 0; i < groups.size(); ++i) {
        width = std::max(width, box_width(groups[i].lines, plot, look));
        out.led = out.led || std::abs(heights[i] - groups[i].y) > 2.0 * look.unit;
        for (const std::size_t line : groups[i].lines)
            out.led = out.led || plot.lines[line].points.back().x < 1.0;
    }
    // Leaders fan out between the drawing and the names.
    const double fan = (out.led ? 16.0 : 2.0) * look.unit;
    frame.inner.setRight(area.right() - width - fan);
    for (std::size_t i = 0; i < groups.size(); ++i)
        out.names.push_back({groups[i].lines, QRectF(frame.inner.right() + fan, heights[i] - row / 2.0,
                                                     box_width(groups[i].lines, plot, look), row)});
    return out;
}

}  // namespace lapwing::charts

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <QPainter>
#include <algorithm>
#include <numeric>

#include "core/odds/verdict.h"
#include "qml/charts/share_painter.h"
#include "qml/format/odds_text.h"
#include "qml/print/blocks.h"
#include "qml/print/styles.h"

namespace lapwing::print {
namespace {

constexpr double bar_height = mm(5.5);
constexpr double swatch = mm(3.6);
constexpr double unit = pt(0.75);  ///< one density-independent pixel on paper: 96 to the inch
constexpr double widest_track = mm(42);

QString key_of(findings::Path path) {
    const auto text = word(path);
    return QString::fromUtf8(text.data(), qsizetype(text.size()));
}

/// By itself: a part of the bar that is open.
void paint_outline(QPainter& painter, const QRectF& area) {
    painter.save();
    painter.setPen(QPen(styles::body.colour, pt(0.6)));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(area);
    painter.restore();
}

/// As much of the part is filled as is sure of it.
void paint_part(QPainter& painter, const QRectF& area, const QString& path, double sure) {
    const QRectF filled(area.topLeft(), QSizeF(area.width() * sure, area.height()));
    painter.fillRect(filled, charts::path_colour(path));
    charts::paint_path_pattern(painter, filled, path, styles::body.colour, unit);
    if (sure > 0.0) paint_outline(painter, filled);
    paint_outline(painter, area);
}

Piece bar_piece(const report::Shares& shares, double width) {
    return {bar_height + mm(1.4), [shares, width](QPainter& painter, QPointF at) {
                std::vector<double> drawn;
                for (const report::Share& share : shares.shares)
                    drawn.push_back(share.mean);
                drawn.push_back(std::max(0.0, 1.0 - std::accumulate(drawn.begin(), drawn.end(), 0.0)));
                const auto parts =
                    charts::split_bar(QRectF(at.x(), at.y(), width, bar_height), drawn, mm(0.4));
                for (std::size_t i = 0; i < shares.shares.size(); ++i) {
                    if (parts[i].isEmpty()) continue;
                    const report::Share& share = shares.shares[i];
                    const double sure = odds::drawn_share({share.mean, share.low, share.high});
                    paint_part(painter, parts[i], key_of(share.path), sure / share.mean);
                }
                if (!parts.back().isEmpty()) paint_outline(painter, parts.back());
            }};
}

QString figure_text(const Wording& wording, const report::Share& share) {
    return format::share_line({share.mean, share.low, share.high}, wording.formatter());
}

/// Swatch, name, figures, and the interval on a line of its own scale.
Row legend_row(const Wording& wording, const report::Share& share, double figure_width, const Flow& flow) {
    const auto& format = wording.formatter();
    const double width = flow.width();
    const double track_width = std::min(widest_track, width * 0.22);
    const double figure_x = width - track_width - figure_width;
    const double name_x = swatch + mm(1.6);
    const QString name = format.headed(format.text(odds::name_of(share.path)));
    Row row{{}, 0.0, mm(0.5)};
    row.boxes.push_back({0.0, {{swatch, [path = key_of(share.path)](QPainter& painter, QPointF at) {
                                    paint_part(painter, QRectF(at, QSizeF(swatch, swatch)), path, 1.0);
                                }}}});
    row.boxes.push_back(
        {name_x, typeset(name, styles::scaled(styles::body, flow.type()), figure_x - name_x - mm(1))});
    row.boxes.push_back({figure_x, typeset(figure_text(wording, share),
                                           styles::scaled(styles::body_bold, flow.type()), figure_width)});
    row.boxes.push_back({width - track_width, {{swatch, [share, track_width](QPainter& painter, QPointF at) {
                                                    charts::paint_share_track(
                                                        painter, QRectF(at.x(), at.y(), track_width, swatch),
                                                        share.mean, share.low, share.high,
                                                        styles::body.colour, unit);
                                                }}}});
    return row;
}

}  // namespace

void put(Flow& flow, const Wording& wording, const report::Shares& shares) {
    double figure_width = 0.0;
    for (const report::Share& share : shares.shares)
        figure_width = std::max(figure_width, width_of(figure_text(wording, share),
                                                       styles::scaled(styles::body_bold, flow.type())));
    // The bar and what its parts are called stay together.
    flow.put_with_next({{{0.0, {bar_piece(shares, flow.width())}}}, mm(0.4), 0.0});
    for (const report::Share& share : shares.shares)
        flow.put_with_next(
            legend_row(wording, share, std::min(figure_width + mm(1.5), flow.width() * 0.4), flow));
    QString small;
    if (!shares.under_one_percent.empty()) {
        QStringList names;
        for (const auto path : shares.under_one_percent)
            names << wording.formatter().text(odds::name_of(path));
        small = text_of(report::Label::under_one_percent) + QStringLiteral(": ") +
                names.join(QStringLiteral("; "));
    }
    flow.put({{{0.0, typeset(small, styles::scaled(styles::small, flow.type()), flow.width())}}, 0.0, mm(1)});
}

}  // namespace lapwing::print

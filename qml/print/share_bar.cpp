// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <QPainter>

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
constexpr double indent = mm(24);
constexpr double track_width = mm(42);
constexpr double figure_width = mm(34);

QString key_of(findings::Path path) {
    const auto text = word(path);
    return QString::fromUtf8(text.data(), qsizetype(text.size()));
}

void paint_part(QPainter& painter, const QRectF& area, const QString& path) {
    painter.save();
    painter.fillRect(area, charts::path_colour(path));
    charts::paint_path_pattern(painter, area, path, styles::body.colour, unit);
    painter.setPen(QPen(styles::body.colour, pt(0.6)));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(area);
    painter.restore();
}

Piece bar_piece(const report::Shares& shares, double width) {
    return {bar_height + mm(1.4), [shares, width](QPainter& painter, QPointF at) {
                std::vector<double> means;
                for (const report::Share& share : shares.shares)
                    means.push_back(share.mean);
                const auto parts =
                    charts::split_bar(QRectF(at.x(), at.y(), width, bar_height), means, mm(0.4));
                for (std::size_t i = 0; i < parts.size(); ++i)
                    if (!parts[i].isEmpty()) paint_part(painter, parts[i], key_of(shares.shares[i].path));
            }};
}

/// Swatch, name, figures, and the interval on a line of its own scale.
Row legend_row(const Wording& wording, const report::Share& share, double width) {
    const auto& format = wording.formatter();
    const double figure_x = indent + width - track_width - figure_width;
    const double name_x = indent + swatch + mm(1.6);
    const QString name = format.headed(format.text(odds::name_of(share.path)));
    const odds::Interval interval{share.mean, share.low, share.high};
    Row row{{}, 0.0, mm(0.5)};
    row.boxes.push_back({indent, {{swatch, [path = key_of(share.path)](QPainter& painter, QPointF at) {
                                       paint_part(painter, QRectF(at, QSizeF(swatch, swatch)), path);
                                   }}}});
    row.boxes.push_back({name_x, typeset(name, styles::body, figure_x - name_x - mm(1))});
    row.boxes.push_back(
        {figure_x, typeset(format::share_line(interval, format), styles::body_bold, figure_width - mm(1))});
    row.boxes.push_back({indent + width - track_width,
                         {{swatch, [share](QPainter& painter, QPointF at) {
                               charts::paint_share_track(painter, QRectF(at.x(), at.y(), track_width, swatch),
                                                         share.mean, share.low, share.high,
                                                         styles::body.colour, unit);
                           }}}});
    return row;
}

}  // namespace

void put(Flow& flow, const Wording& wording, const report::Shares& shares) {
    const double width = flow.width() - indent;
    flow.put_with_next({{{indent, {bar_piece(shares, width)}}}, mm(0.6), 0.0});
    for (const report::Share& share : shares.shares)
        flow.put(legend_row(wording, share, width));
    if (!shares.under_one_percent.empty()) {
        QStringList names;
        for (const auto path : shares.under_one_percent)
            names << wording.formatter().text(odds::name_of(path));
        const QString text = text_of(report::Label::under_one_percent) + QStringLiteral(": ") +
                             names.join(QStringLiteral("; "));
        flow.put({{{indent, typeset(text, styles::small, width)}}, 0.0, mm(1.2)});
    }
}

}  // namespace lapwing::print

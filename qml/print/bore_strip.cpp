// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <QPainter>
#include <algorithm>

#include "qml/print/blocks.h"
#include "qml/print/styles.h"

namespace lapwing::print {
namespace {

using findings::State;

constexpr double tube_height = mm(24);
constexpr double widest_pitch = mm(19);
constexpr double narrowest_pitch = mm(12.5);  ///< for strips that share a line
constexpr double strip_gap = mm(9);
constexpr double mark = mm(2.9);

/// The bore with its number above, and its figure and mark below, in a column of its own.
Pieces bore_column(const Wording& wording, const report::Bore& bore, double pitch) {
    const auto centred = [&](const QString& text, Style style) {
        // A figure too wide for its column is set smaller, never over its neighbour.
        const double fits = pitch - mm(0.6);
        const double wide = width_of(text, style);
        if (wide > fits) style.size *= fits / wide;
        return typeset(text, styles::in(style, Qt::AlignHCenter), pitch);
    };
    Pieces pieces =
        centred(wording.formatter().locale().toString(bore.number), styles::scaled(styles::body_bold, 1.2));
    pieces.push_back({tube_height, [bore, pitch](QPainter& painter, QPointF at) {
                          const double width = std::min(mm(9.5), pitch * 0.8);
                          charts::paint_bore(
                              painter, QRectF(at.x() + (pitch - width) / 2.0, at.y(), width, tube_height),
                              bore, styles::bore);
                      }});
    pieces.push_back(gap(mm(0.8)));
    const QString figure = bore.shown ? wording.formatter().valueText(*bore.shown) : QStringLiteral("–");
    for (Piece& piece : centred(figure, styles::column_head))
        pieces.push_back(std::move(piece));
    pieces.push_back({mark + mm(0.4), [state = bore.state, pitch](QPainter& painter, QPointF at) {
                          if (!state) return;
                          charts::paint_state_mark(painter,
                                                   QRectF(at.x() + (pitch - mark) / 2.0, at.y(), mark, mark),
                                                   *state, styles::bore);
                      }});
    return pieces;
}

double pitch_for(double width, std::size_t bores, std::size_t strips) {
    return std::min(widest_pitch,
                    (width - strip_gap * static_cast<double>(strips - 1)) / static_cast<double>(bores));
}

/// One line of strips, each under its test's name.
void put_line(Flow& flow, const Wording& wording, const std::vector<const report::Bores*>& strips) {
    std::size_t bores = 0;
    for (const report::Bores* strip : strips)
        bores += strip->bores.size();
    const double pitch = pitch_for(flow.width(), bores, strips.size());
    Row titles{{}, mm(2), mm(0.6)};
    Row row{{}, 0.0, mm(2)};
    double x = 0.0;
    for (const report::Bores* strip : strips) {
        const double width = pitch * static_cast<double>(strip->bores.size());
        titles.boxes.push_back({x, typeset(text_of(strip->test), styles::column_head,
                                           std::max(width, mm(22)) + strip_gap - mm(2))});
        for (const report::Bore& bore : strip->bores) {
            row.boxes.push_back({x, bore_column(wording, bore, pitch)});
            x += pitch;
        }
        x += std::max(0.0, mm(22) - width) + strip_gap;
    }
    flow.put_with_next(std::move(titles));
    flow.put(std::move(row));
}

/// What the marks beside and in a bore mean: a row of pictures, each with its word.
Piece legend(const Wording& wording) {
    const double height = styles::small.size * 1.28;
    const double size = height * 0.68;
    struct Entry {
        double width;
        QString word;
        std::function<void(QPainter&, const QRectF&)> picture;
    };
    std::vector<Entry> entries;
    for (State state : {State::good, State::borderline, State::fault, State::none})
        entries.push_back(
            {size, wording.formatter().name(state), [state](QPainter& painter, const QRectF& area) {
                 charts::paint_state_mark(painter, area, state, styles::bore);
             }});
    entries.push_back({size, text_of(report::Label::lowest), [](QPainter& painter, const QRectF& area) {
                           charts::paint_notch(painter, area, styles::bore);
                       }});
    entries.push_back({size * 0.7, text_of(report::Label::range), [](QPainter& painter, const QRectF& area) {
                           charts::paint_band(painter, area, styles::bore);
                       }});
    entries.push_back(
        {size, text_of(report::Label::uncertainty_mark),
         [](QPainter& painter, const QRectF& area) { charts::paint_whisker(painter, area, styles::bore); }});
    return {height * 1.1, [=](QPainter& painter, QPointF at) {
                double x = at.x();
                for (const Entry& entry : entries) {
                    entry.picture(painter, QRectF(x, at.y() + (height - size) / 2.0, entry.width, size));
                    x += entry.width + mm(1.2);
                    const QString word = entry.word.left(1).toLower() + entry.word.mid(1);
                    const double width = width_of(word, styles::small);
                    typeset(word, styles::small, width + pt(2)).front().draw(painter, {x, at.y()});
                    x += width + mm(4.2);
                }
            }};
}

}  // namespace

void put(Flow& flow, const Wording& wording, const std::vector<const report::Bores*>& strips) {
    std::size_t bores = 0;
    for (const report::Bores* strip : strips)
        bores += strip->bores.size();
    if (pitch_for(flow.width(), bores, strips.size()) >= narrowest_pitch)
        put_line(flow, wording, strips);
    else
        for (const report::Bores* strip : strips)
            put_line(flow, wording, {strip});
    flow.put({{{0.0, {legend(wording)}}}});
    Pieces notes = typeset(text_of(report::Label::how_bores), styles::small, flow.width());
    flow.put({{{0.0, std::move(notes)}}, mm(0.6), mm(2)});
}

}  // namespace lapwing::print

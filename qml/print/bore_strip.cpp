// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <QPainter>
#include <algorithm>
#include <functional>
#include <utility>

#include "qml/print/blocks.h"
#include "qml/print/styles.h"

namespace lapwing::print {
namespace {

using findings::State;

constexpr double tube_height = mm(24);
constexpr double widest_pitch = mm(19);
constexpr double narrowest_pitch = mm(8.8);  ///< for strips that share a line
constexpr double strip_gap = mm(9);
constexpr double mark = mm(2.9);
constexpr double least_explanation = mm(62);

/// The bore with its number above, and its figure and mark below, in a column of its own.
Pieces bore_column(const Wording& wording, const report::Bore& bore, double pitch) {
    const auto centred = [&](const QString& text, const Style& style) {
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
    const QString figure = bore.shown ? wording.formatter().digits(*bore.shown) : QStringLiteral("–");
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

/// "Dry test, before (bar)": the unit stands here once, so that every column has room for its figure.
QString title_of(const Wording& wording, const report::Bores& strip) {
    QString title = text_of(strip.test);
    if (strip.when) {
        const QString when = text_of(*strip.when);
        title += QStringLiteral(", ") + when.left(1).toLower() + when.mid(1);
    }
    for (const report::Bore& bore : strip.bores)
        if (bore.shown)
            return QStringLiteral("%1 (%2)").arg(title, wording.formatter().unitOf(bore.shown->dimension));
    return title;
}

double pitch_for(double width, std::size_t bores, std::size_t strips) {
    return std::min(widest_pitch,
                    (width - strip_gap * static_cast<double>(strips - 1)) / static_cast<double>(bores));
}

/// A picture with its word.
struct LegendEntry {
    double width;
    QString word;
    std::function<void(QPainter&, const QRectF&)> picture;

    [[nodiscard]] double advance() const { return width + mm(1.2) + width_of(word, styles::small) + mm(4.2); }
};

constexpr double legend_line = styles::small_size * 1.28;
constexpr double legend_picture = legend_line * 0.68;

std::vector<LegendEntry> legend_entries(const Wording& wording) {
    std::vector<LegendEntry> entries;
    for (State state : {State::good, State::borderline, State::fault, State::none})
        entries.push_back(
            {legend_picture, wording.formatter().name(state), [state](QPainter& painter, const QRectF& area) {
                 charts::paint_state_mark(painter, area, state, styles::bore);
             }});
    const auto add = [&](double width, report::Label label, auto paint) {
        // German nouns have their capital wherever they stand.
        const bool small = wording.formatter().locale().language() != QLocale::German;
        const QString word = text_of(label);
        entries.push_back(
            {width, small ? word.left(1).toLower() + word.mid(1) : word,
             [paint](QPainter& painter, const QRectF& area) { paint(painter, area, styles::bore); }});
    };
    add(legend_picture, report::Label::lowest, charts::paint_notch);
    add(legend_picture * 0.7, report::Label::range, charts::paint_band);
    add(legend_picture, report::Label::uncertainty_mark, charts::paint_whisker);
    return entries;
}

/// What the marks beside and in a bore mean.
Pieces legend(const Wording& wording, double width) {
    std::vector<std::vector<LegendEntry>> lines(1);
    double x = 0.0;
    for (LegendEntry& entry : legend_entries(wording)) {
        if (x > 0.0 && x + entry.advance() > width) {
            lines.emplace_back();
            x = 0.0;
        }
        x += entry.advance();
        lines.back().push_back(std::move(entry));
    }
    Pieces pieces;
    for (auto& line : lines)
        pieces.push_back(
            {legend_line * 1.1, [line = std::move(line)](QPainter& painter, QPointF at) {
                 for (const LegendEntry& entry : line) {
                     entry.picture(painter, QRectF(at.x(), at.y() + (legend_line - legend_picture) / 2.0,
                                                   entry.width, legend_picture));
                     const QPointF word = at + QPointF(entry.width + mm(1.2), 0.0);
                     typeset(entry.word, styles::small, entry.advance()).front().draw(painter, word);
                     at.rx() += entry.advance();
                 }
             }});
    return pieces;
}

/// The legend, and what the heights mean.
Pieces explanation(const Wording& wording, double width) {
    Pieces pieces = legend(wording, width);
    pieces.push_back(gap(mm(0.6)));
    for (Piece& piece : typeset(text_of(report::Label::how_bores), styles::small, width))
        pieces.push_back(std::move(piece));
    return pieces;
}

/// One line of strips, each under its test's name; `explain` once it ends before the middle of the page: then
/// the explanation stands beside it. Returns whether it does.
bool put_line(Flow& flow, const Wording& wording, const std::vector<const report::Bores*>& strips,
              bool explain) {
    std::size_t bores = 0;
    for (const report::Bores* strip : strips)
        bores += strip->bores.size();
    const double pitch = pitch_for(flow.width(), bores, strips.size());
    Row titles{{}, mm(1.4), mm(0.6)};
    Row row{{}, 0.0, mm(1.4)};
    double x = 0.0;
    for (const report::Bores* strip : strips) {
        const double width = pitch * static_cast<double>(strip->bores.size());
        titles.boxes.push_back({x, typeset(title_of(wording, *strip), styles::column_head,
                                           std::max(width, mm(22)) + strip_gap - mm(2))});
        for (const report::Bore& bore : strip->bores) {
            row.boxes.push_back({x, bore_column(wording, bore, pitch)});
            x += pitch;
        }
        x += std::max(0.0, mm(22) - width) + strip_gap;
    }
    const bool beside = explain && flow.width() - x > least_explanation;
    if (beside) row.boxes.push_back({x, explanation(wording, flow.width() - x)});
    flow.put_with_next(std::move(titles));
    flow.put(std::move(row));
    return beside;
}

}  // namespace

void put(Flow& flow, Means& means, const std::vector<const report::Bores*>& strips) {
    const Wording& wording = means.wording;
    std::vector<const report::Bores*> line;
    std::size_t bores = 0;
    for (const report::Bores* strip : strips) {
        bores += strip->bores.size();
        if (!line.empty() && pitch_for(flow.width(), bores, line.size() + 1) < narrowest_pitch) {
            put_line(flow, wording, std::exchange(line, {}), false);
            bores = strip->bores.size();
        }
        line.push_back(strip);
    }
    const bool explain = !std::exchange(means.bores_explained, true);
    if (put_line(flow, wording, line, explain) || !explain) return;
    flow.put({{{0.0, explanation(wording, flow.width())}}, 0.0, mm(1.4)});
}

}  // namespace lapwing::print

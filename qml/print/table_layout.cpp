// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <QPainter>
#include <algorithm>
#include <numeric>
#include <optional>

#include "core/base/stations.h"
#include "qml/print/blocks.h"
#include "qml/print/styles.h"

namespace lapwing::print {
namespace {

constexpr double padding = mm(2.2);
/// A word longer than this share of the table is broken: one odd word must not starve the other columns.
constexpr double longest_share = 0.26;
constexpr double least_scale = 0.7;
constexpr double rounding = pt(0.4);
/// No line begins with it.
constexpr QStringView between_lines = u"\u00a0· ";
/// A column of the page is easily turned from one to the next: short tables stay whole there.
constexpr std::size_t whole_in_a_column = 9;

struct Layout {
    double scale = 1.0;            ///< of the type
    std::vector<double> x, width;  ///< of each column's text
};

/// Words of the core start small; a column's head starts with a capital.
QString head_text(const Wording& wording, const report::Column& column) {
    QString text = wording.text(column.head);
    // "14 March 2025", and what the visit is called below it. Days stay whole in cells; a head is narrow.
    if (const auto* at = column.head.empty() ? nullptr : std::get_if<Timestamp>(&column.head.front())) {
        text = wording.formatter().shortDate(*at);
        for (std::size_t i = 1; i < column.head.size(); ++i)
            text += u'\n' + wording.text(column.head[i]);
    }
    if (!text.isEmpty()) text[0] = text[0].toUpper();
    return text;
}

double longest_word(const QString& text, const Style& style) {
    double longest = 0.0;
    for (const QString& word : QString(text).replace(u'\n', u' ').split(u' ', Qt::SkipEmptyParts))
        longest = std::max(longest, width_of(word, style));
    return longest;
}

Style style_of(const report::Cell& cell, std::size_t line) {
    if (cell.peers || line > 0) return styles::small;
    return cell.state ? styles::body_bold : styles::body;
}

/// What a column needs so that no word of it is broken.
double least_width(const Wording& wording, const report::Table& table, std::size_t column, double scale) {
    double least =
        longest_word(head_text(wording, table.columns[column]), styles::scaled(styles::column_head, scale));
    for (const auto& row : table.rows) {
        const report::Cell& cell = row[column];
        for (std::size_t i = 0; i < cell.lines.size(); ++i)
            least = std::max(
                least, longest_word(wording.text(cell.lines[i]), styles::scaled(style_of(cell, i), scale)));
        if (cell.state) {
            const Style style = styles::scaled(styles::small, scale);
            least = std::max(least,
                             longest_word(wording.formatter().name(*cell.state), style) + style.size * 1.25);
        }
    }
    return least + padding + rounding;
}

/// What a column needs so that no cell of it takes another line; its head may have two.
double whole_width(const Wording& wording, const report::Table& table, std::size_t column, double scale) {
    constexpr double two_lines = 0.56;
    double widest = two_lines * width_of(head_text(wording, table.columns[column]),
                                         styles::scaled(styles::column_head, scale));
    for (const auto& row : table.rows) {
        const report::Cell& cell = row[column];
        QStringList rest;
        for (std::size_t i = 0; i < cell.lines.size(); ++i) {
            const QString text = wording.text(cell.lines[i]);
            if (i > 0 && !cell.peers) {
                rest << text;
                continue;
            }
            double width = width_of(text, styles::scaled(style_of(cell, i), scale));
            if (i == 0 && cell.state) {
                const Style style = styles::scaled(styles::small, scale);
                width += style.size * 2.2 + width_of(wording.formatter().name(*cell.state), style);
            }
            widest = std::max(widest, width);
        }
        widest = std::max(widest, width_of(rest.join(between_lines), styles::scaled(styles::small, scale)));
    }
    return widest + padding + rounding;
}

/// By the columns' weights, but none gets less than its least; those given one have that.
std::vector<double> by_weight(const report::Table& table, const std::vector<double>& least, double width,
                              std::vector<std::optional<double>> given) {
    const std::size_t count = table.columns.size();
    std::vector<double> out(count);
    for (bool again = true; again;) {
        again = false;
        double left = width;
        double weights = 0.0;
        for (std::size_t i = 0; i < count; ++i)
            (given[i] ? left : weights) += given[i] ? -*given[i] : table.columns[i].width;
        for (std::size_t i = 0; i < count; ++i) {
            out[i] = given[i] ? *given[i] : left * table.columns[i].width / weights;
            if (!given[i] && out[i] < least[i]) {
                given[i] = least[i];
                again = true;
            }
        }
    }
    return out;
}

/// By weight; but where cells would take more lines than they need, columns give what they have to spare.
std::vector<double> shared_out(const report::Table& table, const std::vector<double>& least,
                               const std::vector<double>& whole, double width) {
    const std::size_t count = table.columns.size();
    std::vector<std::optional<double>> given(count);
    std::vector<double> out = by_weight(table, least, width, given);
    const auto wraps = [&](std::size_t i) { return whole[i] > out[i] + rounding; };
    const auto any_wraps = [&] {
        for (std::size_t i = 0; i < count; ++i)
            if (wraps(i)) return true;
        return false;
    };
    if (!any_wraps()) return out;
    if (const double spare = width - std::accumulate(whole.begin(), whole.end(), 0.0); spare >= 0.0) {
        double weights = 0.0;
        for (const report::Column& column : table.columns)
            weights += column.width;
        for (std::size_t i = 0; i < count; ++i)
            out[i] = whole[i] + spare * table.columns[i].width / weights;
        return out;
    }
    // Narrow ones first: what stands in them is short, and looks broken on two lines.
    constexpr double narrow = 0.14;
    std::vector<std::size_t> order(count);
    std::iota(order.begin(), order.end(), 0U);
    std::ranges::stable_sort(order, {}, [&](std::size_t i) { return whole[i]; });
    double needed = std::accumulate(least.begin(), least.end(), 0.0);
    for (const std::size_t i : order) {
        if (whole[i] > narrow * width || needed + whole[i] - least[i] > width) break;
        needed += whole[i] - least[i];
        given[i] = whole[i];
    }
    out = by_weight(table, least, width, given);
    for (bool again = true; again && any_wraps();) {
        again = false;
        for (std::size_t i = 0; i < count; ++i)
            if (!given[i] && !wraps(i)) {
                given[i] = whole[i];
                again = true;
            }
        if (again) out = by_weight(table, least, width, given);
    }
    return out;
}

/// Shares the width by the columns' weights, but no column gets less than its longest word; only where even
/// that doesn't fit does the type shrink below `type`.
Layout lay_out(const Wording& wording, const report::Table& table, double width, double type) {
    Layout layout;
    const std::size_t count = table.columns.size();
    std::vector<double> least(count);
    const auto fits = [&](double most) {
        for (std::size_t i = 0; i < count; ++i)
            least[i] = std::min(least_width(wording, table, i, layout.scale), most);
        return std::accumulate(least.begin(), least.end(), 0.0) <= width;
    };
    // Rather slightly smaller type than a broken word; words are broken only where they never fit.
    const auto shrunk_to_fit = [&](double least_type, double most) {
        for (const double less : stations(0.0, type - least_type, 0.06)) {
            layout.scale = type - less;
            if (fits(most)) return true;
        }
        return false;
    };
    if (!shrunk_to_fit(type * 0.85, width)) shrunk_to_fit(least_scale, width * longest_share);
    const double needed = std::accumulate(least.begin(), least.end(), 0.0);
    if (needed > width)
        for (double& one : least)
            one *= width / needed;

    std::vector<double> whole(count);
    for (std::size_t i = 0; i < count; ++i)
        whole[i] = std::max(least[i], whole_width(wording, table, i, layout.scale));
    layout.width = shared_out(table, least, whole, width);
    double x = 0.0;
    for (double& one : layout.width) {
        layout.x.push_back(x);
        x += one;
        one -= padding;
    }
    return layout;
}

/// The state's mark and word, on the line of the text before them where there is room.
void put_state(Pieces& pieces, const Wording& wording, findings::State state, double used, double width,
               double scale) {
    const Style style = styles::scaled(styles::small, scale);
    const double x = used + style.size * 0.9;
    const double needed = style.size * 1.25 + width_of(wording.formatter().name(state), style);
    Pieces marked = state_pieces(wording, state, style, pieces.size() == 1 ? needed + mm(1) : width);
    if (pieces.size() != 1 || x + needed > width) {
        for (Piece& piece : marked)
            pieces.push_back(std::move(piece));
        return;
    }
    Piece& line = pieces.front();
    line.draw = [draw = line.draw, beside = marked.front(), x, height = line.height](QPainter& painter,
                                                                                     QPointF at) {
        draw(painter, at);
        beside.draw(painter, at + QPointF(x, (height - beside.height) * 0.7));
    };
}

Pieces cell_pieces(const Wording& wording, const report::Cell& cell, double width, double scale) {
    Pieces pieces;
    const auto add = [&](const QString& text, const Style& style) {
        for (Piece& piece : typeset(text, styles::scaled(style, scale), width))
            pieces.push_back(std::move(piece));
    };
    QStringList rest;
    for (std::size_t i = 0; i < cell.lines.size(); ++i) {
        const QString text = wording.text(cell.lines[i]);
        if (i == 0 || cell.peers)
            add(text, style_of(cell, i));
        else
            rest << text;
        if (i == 0 && cell.state)
            put_state(pieces, wording, *cell.state, width_of(text, styles::scaled(style_of(cell, 0), scale)),
                      width, scale);
    }
    if (cell.lines.empty() && cell.state)
        pieces = state_pieces(wording, *cell.state, styles::scaled(styles::small, scale), width);
    add(rest.join(between_lines), styles::small);
    if (pieces.empty()) add(QStringLiteral("–"), styles::body);
    return pieces;
}

report::Table table_of(const report::Series& series) {
    report::Table table{{{{report::Label::cylinder}, 1.4}}, {}};
    for (const report::Series::Visit& visit : series.visits) {
        report::Line head{visit.at};
        if (!visit.title.empty()) head.emplace_back(report::OwnWords{visit.title});
        table.columns.push_back({std::move(head), 2.0});
    }
    for (const report::Series::Row& row : series.rows) {
        std::vector<report::Cell> cells{{{{row.number}}, std::nullopt}};
        for (std::size_t i = 0; i < row.values.size(); ++i) {
            report::Cell cell{{}, row.states[i]};
            if (row.values[i]) cell.lines.push_back({*row.values[i]});
            cells.push_back(std::move(cell));
        }
        table.rows.push_back(std::move(cells));
    }
    return table;
}

}  // namespace

void put(Flow& flow, const Wording& wording, const report::Table& table) {
    const Layout layout = lay_out(wording, table, flow.width(), flow.type());
    const double pad = mm(0.7) * flow.type();
    Row head{{}, pad, pad, true};
    for (std::size_t i = 0; i < table.columns.size(); ++i)
        head.boxes.push_back(
            {layout.x[i], typeset(head_text(wording, table.columns[i]),
                                  styles::scaled(styles::column_head, layout.scale), layout.width[i])});
    flow.repeat(std::move(head));
    const bool whole = flow.in_columns() && table.rows.size() <= whole_in_a_column;
    // One row alone on a page looks like a slip: the last two stay together.
    const auto* last_but_one = table.rows.size() > 2 ? &table.rows[table.rows.size() - 2] : nullptr;
    for (const auto& cells : table.rows) {
        Row row{{}, pad, pad, true};
        for (std::size_t i = 0; i < cells.size(); ++i)
            row.boxes.push_back({layout.x[i], cell_pieces(wording, cells[i], layout.width[i], layout.scale)});
        if ((whole && &cells != &table.rows.back()) || &cells == last_but_one)
            flow.put_with_next(std::move(row));
        else
            flow.put(std::move(row));
    }
    flow.end_repeat();
    flow.put({{{0.0, {gap(mm(1.2))}}}});
}

void put(Flow& flow, const Wording& wording, const report::Series& series, bool named) {
    if (!named)
        flow.put_with_next({{{0.0, typeset(text_of(series.what),
                                           styles::scaled(styles::body_bold, flow.type()), flow.width())}},
                            mm(1)});
    put(flow, wording, table_of(series));
}

}  // namespace lapwing::print

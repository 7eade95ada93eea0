// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/print/flow.h"

#include <QPainter>
#include <algorithm>
#include <utility>

namespace lapwing::print {
namespace {

constexpr double least_columns_share = 0.12;
constexpr double above_columns = mm(3.6);

bool is_blank(const Row& row) {
    return !row.rule && std::ranges::all_of(row.boxes, [](const Box& box) {
        return std::ranges::all_of(box.pieces, &Piece::blank);
    });
}

}  // namespace

double Row::height() const {
    double tallest = 0.0;
    for (const Box& box : boxes)
        tallest = std::max(tallest, height_of(box.pieces));
    return above + tallest + below;
}

bool Flow::gathered(Order order) {
    if (!whole_ && !gathering_) return false;
    (whole_ ? one_ : gathered_).push_back(std::move(order));
    return true;
}

void Flow::begin_whole(double most) {
    if (!whole_) whole_ = most;
}

void Flow::end_whole() {
    if (!whole_) return;
    const double most = *std::exchange(whole_, std::nullopt) * body_.height();
    auto orders = std::exchange(one_, {});
    double height = 0.0;
    std::size_t last = 0;
    for (std::size_t i = 0; i < orders.size(); ++i)
        std::visit(
            [&]<class One>(const One& one) {
                if constexpr (!std::is_same_v<One, EndRepeat>) {
                    height += one.row.height();
                    last = i;
                }
            },
            orders[i]);
    for (std::size_t i = 0; i < orders.size(); ++i) {
        Order& order = orders[i];
        // What stays whole needs no head again.
        auto* head = height > most ? nullptr : std::get_if<Repeat>(&order);
        auto* row = height > most || i >= last ? nullptr : std::get_if<Put>(&order);
        if (head || row)
            put_with_next(std::move(head ? head->row : row->row));
        else if (height > most || !std::holds_alternative<EndRepeat>(order))
            fill({std::move(order)});
    }
}

void Flow::put_with_next(Row row) {
    if (gathered(PutWithNext{row})) return;
    held_.push_back(std::move(row));
}

void Flow::repeat(Row header) {
    if (gathered(Repeat{header})) return;
    held_.push_back(header);
    header_ = std::move(header);
    header_waits_ = true;
}

void Flow::end_repeat() {
    if (gathered(EndRepeat{})) return;
    header_.reset();
}

void Flow::put(Row row) {
    if (gathered(Put{row})) return;
    // Space below something is none at the top of a column, and begins no page.
    if (held_.empty() && is_blank(row) && (y_ <= top_ || row.height() > room())) return;
    double needed = row.height();
    for (const Row& held : held_)
        needed += held.height();
    while (needed > room() && !at_top_of_page())
        new_column();
    for (const Row& held : std::exchange(held_, {}))
        place(held);
    header_waits_ = false;
    if (row.height() <= room()) return place(row);
    place_in_parts(std::move(row));
}

void Flow::keep_room(double share) {
    if (room() < body_.height() * share && !at_top_of_page()) new_column();
}

void Flow::begin_columns(int count, double between, double type) {
    // Too little is left at a page's foot to be worth reading across.
    keep_room(least_columns_share);
    if (!at_top_of_page()) y_ += above_columns;
    columns_ = count;
    type_ = type;
    between_ = between;
    width_ = (body_.width() - between * (count - 1)) / count;
    column_top_ = top_ = lowest_ = y_;
    gathering_ = true;
}

void Flow::end_columns() {
    gathering_ = false;
    const auto orders = std::exchange(gathered_, {});
    // The lowest foot of the last page that still holds everything, found by halving.
    Flow empty = *this;
    for (auto& page : empty.pages_)
        page.clear();
    const auto tried = [&](int page, double foot) {
        Flow trial = empty;
        trial.short_page_ = page;
        trial.short_bottom_ = foot;
        trial.fill(orders);
        return trial;
    };
    const Flow full = tried(-1, 0.0);
    const int last = full.page_count();
    double over = last == page_count() ? y_ : body_.top();
    double fits = body_.bottom();
    while (fits - over > pt(2)) {
        const double middle = (fits + over) / 2.0;
        const Flow trial = tried(last - 1, middle);
        const bool whole =
            trial.page_count() == last && trial.lowest_ <= middle && trial.parted_ == full.parted_;
        (whole ? fits : over) = middle;
    }
    short_page_ = last - 1;
    short_bottom_ = fits;
    fill(orders);
    columns_ = 1;
    column_ = 0;
    type_ = 1.0;
    short_page_ = -1;
    width_ = body_.width();
    y_ = lowest_;
    column_top_ = top_ = body_.top();
}

void Flow::fill(const std::vector<Order>& orders) {
    for (const Order& order : orders) {
        if (const auto* one = std::get_if<Put>(&order))
            put(one->row);
        else if (const auto* with_next = std::get_if<PutWithNext>(&order))
            put_with_next(with_next->row);
        else if (const auto* header = std::get_if<Repeat>(&order))
            repeat(header->row);
        else
            end_repeat();
    }
}

double Flow::bottom() const {
    return page_count() - 1 == short_page_ ? short_bottom_ : body_.bottom();
}

/// The next column, on the next page after the last one.
void Flow::new_column() {
    if (++column_ >= columns_) {
        column_ = 0;
        pages_.emplace_back();
        column_top_ = lowest_ = body_.top();
    }
    y_ = top_ = column_top_;
    // A header that is still waiting for its first row needs no repeating.
    if (header_ && !header_waits_) {
        place(*header_);
        top_ = y_;
    }
}

void Flow::place(const Row& row) {
    const bool first = y_ <= column_top_;
    Placed placed{QPointF(left(), y_), width_, row};
    if (first) placed.row.above = 0.0;
    y_ += placed.row.height();
    lowest_ = std::max(lowest_, y_);
    pages_.back().push_back(std::move(placed));
}

void Flow::place_in_parts(Row row) {
    ++parted_;
    const double below = std::exchange(row.below, 0.0);
    const bool rule = std::exchange(row.rule, false);
    while (row.height() + below > room()) {
        Row part;
        part.above = row.above;
        bool any = false;
        for (Box& box : row.boxes) {
            Box taken{box.x, {}};
            double left = room() - row.above;
            auto piece = box.pieces.begin();
            for (; piece != box.pieces.end() && piece->height <= left; ++piece)
                left -= piece->height;
            any = any || piece != box.pieces.begin();
            taken.pieces.assign(box.pieces.begin(), piece);
            box.pieces.erase(box.pieces.begin(), piece);
            part.boxes.push_back(std::move(taken));
        }
        // A single piece as tall as a page can't be helped: it is drawn and runs over.
        if (!any && at_top_of_page()) break;
        if (any) place(part);
        row.above = 0.0;
        new_column();
    }
    row.below = below;
    row.rule = rule;
    place(row);
}

void Flow::paint(QPainter& painter, int page) const {
    for (const Placed& placed : pages_[static_cast<std::size_t>(page)]) {
        for (const Box& box : placed.row.boxes) {
            QPointF at = placed.at + QPointF(box.x, placed.row.above);
            for (const Piece& piece : box.pieces) {
                piece.draw(painter, at);
                at.ry() += piece.height;
            }
        }
        if (!placed.row.rule) continue;
        const double y = placed.at.y() + placed.row.height();
        painter.setPen(QPen(QColor("#9A9A9A"), pt(0.4)));
        painter.drawLine(QPointF(placed.at.x(), y), QPointF(placed.at.x() + placed.width, y));
    }
}

}  // namespace lapwing::print

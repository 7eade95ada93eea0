// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/print/flow.h"

#include <QPainter>
#include <algorithm>

namespace lapwing::print {

double Row::height() const {
    double tallest = 0.0;
    for (const Box& box : boxes)
        tallest = std::max(tallest, height_of(box.pieces));
    return above + tallest + below;
}

void Flow::repeat(Row header) {
    put_with_next(header);
    header_ = std::move(header);
}

void Flow::put(Row row) {
    double needed = row.height();
    for (const Row& held : held_)
        needed += held.height();
    if (needed > room() && !at_top()) new_page();
    for (const Row& held : std::exchange(held_, {}))
        place(held);
    if (row.height() <= room()) return place(row);
    place_in_parts(std::move(row));
}

void Flow::new_page() {
    pages_.emplace_back();
    y_ = top_ = body_.top();
    // A header that is still waiting for its first row needs no repeating.
    if (header_ && held_.empty()) {
        place(*header_);
        top_ = y_;
    }
}

void Flow::place(const Row& row) {
    const bool first = y_ <= body_.top();
    Placed placed{QPointF(body_.left(), y_), row};
    if (first) placed.row.above = 0.0;
    y_ += placed.row.height();
    pages_.back().push_back(std::move(placed));
}

void Flow::place_in_parts(Row row) {
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
        if (!any && at_top()) break;
        if (any) place(part);
        row.above = 0.0;
        new_page();
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
        painter.drawLine(QPointF(body_.left(), y), QPointF(body_.right(), y));
    }
}

}  // namespace lapwing::print

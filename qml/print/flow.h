// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QRectF>
#include <QSizeF>
#include <optional>

#include "qml/print/typeset.h"

namespace lapwing::print {

/// One column of a row: what stands in it, from the top.
struct Box {
    double x = 0.0;  ///< from the body's left edge
    Pieces pieces;
};

struct Row {
    std::vector<Box> boxes;
    double above = 0.0;  ///< empty space, given up at the top of a page
    double below = 0.0;
    bool rule = false;  ///< a thin line under it

    [[nodiscard]] double height() const;
};

/// Fills pages from the top with rows that stay whole. A row that is taller than a page is the only one that
/// is taken apart, between its pieces.
class Flow {
public:
    /// @param body of every page, in the page's own coordinates
    explicit Flow(const QRectF& body) : body_(body) { pages_.emplace_back(); }

    [[nodiscard]] double width() const { return body_.width(); }

    void put(Row row);
    /// A row that must not be parted from the next one put.
    void put_with_next(Row row) { held_.push_back(std::move(row)); }
    /// Repeats this row at the top of every page until `end_repeat`.
    void repeat(Row header);
    void end_repeat() { header_.reset(); }

    [[nodiscard]] int page_count() const { return static_cast<int>(pages_.size()); }
    void paint(QPainter& painter, int page) const;

private:
    void new_page();
    void place(const Row& row);
    void place_in_parts(Row row);
    [[nodiscard]] double room() const { return body_.bottom() - y_; }
    [[nodiscard]] bool at_top() const { return y_ <= top_; }

    struct Placed {
        QPointF at;
        Row row;
    };
    QRectF body_;
    std::vector<std::vector<Placed>> pages_;
    std::vector<Row> held_;
    std::optional<Row> header_;
    double y_ = body_.top();
    double top_ = body_.top();  ///< below the repeated header
};

}  // namespace lapwing::print

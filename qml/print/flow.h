// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QRectF>
#include <QSizeF>
#include <optional>
#include <variant>

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

    /// What a row may be as wide as: the body, or one column of it.
    [[nodiscard]] double width() const { return width_; }
    [[nodiscard]] bool in_columns() const { return columns_ > 1; }
    /// What the size of type is to be multiplied by here.
    [[nodiscard]] double type() const { return type_; }

    void put(Row row);
    /// A row that must not be parted from the next one put.
    void put_with_next(Row row);
    /// Rows from here to `end_whole` stay on one page and in one column, unless they are taller than
    /// `most` of a page: then they are parted as ever.
    void begin_whole(double most = 0.45);
    void end_whole();
    /// Begins a new page where less than this share of one is left.
    void keep_room(double share);
    /// Repeats this row at the top of every page or column until `end_repeat`.
    void repeat(Row header);
    void end_repeat();

    /// Rows stand in `count` columns from here to `end_columns`, each filled to the foot of the page before
    /// the next; on the last page they end together. Type is set at `type` of its size.
    void begin_columns(int count, double between, double type);
    void end_columns();

    /// How much of the last page is used, 0 to 1.
    [[nodiscard]] double last_page_share() const { return (y_ - body_.top()) / body_.height(); }
    [[nodiscard]] int page_count() const { return static_cast<int>(pages_.size()); }
    void paint(QPainter& painter, int page) const;

private:
    struct Placed {
        QPointF at;
        double width = 0.0;
        Row row;
    };
    /// What was put while columns are gathered: they can be made even only once all of it is known.
    struct Put {
        Row row;
    };
    struct PutWithNext {
        Row row;
    };
    struct Repeat {
        Row row;
    };
    struct EndRepeat {};
    using Order = std::variant<Put, PutWithNext, Repeat, EndRepeat>;

    /// Whether an order goes to those that are kept for later.
    bool gathered(Order order);
    void fill(const std::vector<Order>& orders);
    void new_column();
    void place(const Row& row);
    void place_in_parts(Row row);
    [[nodiscard]] double bottom() const;
    [[nodiscard]] double room() const { return bottom() - y_; }
    /// Nothing stands above in this column, and a new one would have no more room.
    [[nodiscard]] bool at_top_of_page() const { return y_ <= top_ && column_top_ <= body_.top(); }
    [[nodiscard]] double left() const { return body_.left() + column_ * (width_ + between_); }

    QRectF body_;
    std::vector<std::vector<Placed>> pages_;
    std::vector<Row> held_;
    std::optional<Row> header_;
    bool header_waits_ = false;  ///< it is among those held
    double y_ = body_.top();
    double top_ = body_.top();  ///< below the repeated header
    double width_ = body_.width();
    double between_ = 0.0;
    double type_ = 1.0;
    int columns_ = 1;
    int column_ = 0;
    double column_top_ = body_.top();  ///< of every column on this page
    double lowest_ = body_.top();      ///< where the longest column of this page ends
    int parted_ = 0;                   ///< rows that had to be taken apart
    bool gathering_ = false;
    std::vector<Order> gathered_;
    std::optional<double> whole_;  ///< the share of a page that what is put may take as one
    std::vector<Order> one_;       ///< and what was put
    int short_page_ = -1;          ///< page whose columns end early, at short_bottom_
    double short_bottom_ = 0.0;
};

}  // namespace lapwing::print

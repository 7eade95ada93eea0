// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QColor>
#include <QPointF>
#include <QString>
#include <functional>
#include <vector>

class QPainter;

/// Text broken into lines that can be measured before a page is chosen for them. All lengths are tenths of a
/// point (720 to the inch): fine enough that Qt's whole pixels don't show.
namespace lapwing::print {

constexpr double pt(double points) {
    return points * 10.0;
}
constexpr double mm(double millimetres) {
    return millimetres * 720.0 / 25.4;
}

struct Style {
    double size = pt(9);
    bool bold = false;
    QColor colour = QColor("#14181B");
    Qt::Alignment align = Qt::AlignLeft;
};

/// One thing of a known height that is drawn below the one before it.
struct Piece {
    double height = 0.0;
    std::function<void(QPainter&, QPointF)> draw;  ///< at its top left corner
    bool blank = false;                            ///< nothing but space
};
using Pieces = std::vector<Piece>;

/// The lines of a text, broken to `width`; words longer than it are broken too. No lines for an empty text.
Pieces typeset(const QString& text, const Style& style, double width);
/// The same with its first words in bold: "Leak area" before what is said of it.
Pieces typeset(const QString& lead, const QString& text, const Style& style, double width);
/// Width of a text on one line.
double width_of(const QString& text, const Style& style);
double height_of(const Pieces& pieces);
Piece gap(double height);

}  // namespace lapwing::print

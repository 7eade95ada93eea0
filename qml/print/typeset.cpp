// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/print/typeset.h"

#include <QFont>
#include <QFontMetricsF>
#include <QPainter>
#include <QTextLayout>
#include <algorithm>
#include <cmath>
#include <memory>

#include "qml/fonts/typeface.h"

namespace lapwing::print {
namespace {

constexpr double line_spacing = 1.28;

QFont font_of(const Style& style) {
    // Every figure of B612 is as wide as the others: columns of numbers stand straight without a font
    // feature.
    QFont font(fonts::typeface());
    font.setPixelSize(static_cast<int>(std::lround(style.size)));
    font.setBold(style.bold);
    font.setHintingPreference(QFont::PreferNoHinting);
    font.setKerning(true);
    return font;
}

/// "once run / in": a last line of one short word is no line. But better that than "hos / e", where both
/// words don't fit on one line.
void keep_short_end(QString& text, const Style& style, double width) {
    constexpr qsizetype short_word = 4;
    if (text.endsWith(u' ')) return;
    const qsizetype at = text.lastIndexOf(u' ');
    if (at <= 0 || text.size() - at - 1 > short_word || text.lastIndexOf(u'\n') >= at) return;
    const qsizetype from = std::max(text.lastIndexOf(u' ', at - 1), text.lastIndexOf(u'\n', at - 1)) + 1;
    if (width_of(text.mid(from), style) <= width) text[at] = QChar::Nbsp;
}

/// "6.9– / 12.2 bar": a range is not broken behind its dash.
void keep_ranges(QString& text) {
    constexpr QChar dash(0x2013);
    constexpr QChar word_joiner(0x2060);
    for (qsizetype at = text.indexOf(dash); at >= 0; at = text.indexOf(dash, at + 1))
        if (at > 0 && at + 1 < text.size() && text[at - 1].isDigit() && text[at + 1].isDigit())
            text.insert(at + 1, word_joiner);
}

}  // namespace

Pieces typeset(const QString& text, const Style& style, double width) {
    return typeset(QString(), text, style, width);
}

Pieces typeset(const QString& lead, const QString& text, const Style& style, double width) {
    Pieces pieces;
    QString shown = lead.isEmpty() || text.isEmpty() ? lead + text : lead + QStringLiteral("  ") + text;
    if (shown.isEmpty()) return pieces;
    keep_short_end(shown, style, width);
    keep_ranges(shown);
    shown.replace(QStringLiteral("\r\n"), QStringLiteral("\n")).replace(u'\n', QChar::LineSeparator);
    auto layout = std::make_shared<QTextLayout>(shown, font_of(style));
    QTextOption option(style.align);
    option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    layout->setTextOption(option);
    layout->setCacheEnabled(true);
    if (!lead.isEmpty()) {
        QTextLayout::FormatRange bold{0, static_cast<int>(lead.size()), {}};
        bold.format.setFontWeight(QFont::Bold);
        layout->setFormats({bold});
    }
    layout->beginLayout();
    for (QTextLine line = layout->createLine(); line.isValid(); line = layout->createLine())
        line.setLineWidth(width);
    layout->endLayout();
    const double height = style.size * line_spacing;
    for (int i = 0; i < layout->lineCount(); ++i)
        pieces.push_back({height, [layout, i, height, colour = style.colour](QPainter& painter, QPointF at) {
                              const QTextLine line = layout->lineAt(i);
                              painter.setPen(colour);
                              line.draw(&painter, at + QPointF(0.0, (height - line.height()) / 2.0));
                          }});
    return pieces;
}

double width_of(const QString& text, const Style& style) {
    return QFontMetricsF(font_of(style)).horizontalAdvance(text);
}

double height_of(const Pieces& pieces) {
    double height = 0.0;
    for (const Piece& piece : pieces)
        height += piece.height;
    return height;
}

Piece gap(double height) {
    return {height, [](QPainter&, QPointF) {}, true};
}

}  // namespace lapwing::print

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QColor>
#include <QPainterPath>
#include <QQuickPaintedItem>

namespace lapwing::components {

/// The path of a drawing written as words and numbers, separated by spaces:
///   M x y            move there
///   L x y            line to there
///   Q cx cy x y      curve to x y, drawn towards cx cy
///   A cx cy r a s    part of a circle, from angle a over s degrees, counter-clockwise from three o'clock
///   O cx cy r        circle
///   B x y w h r      box with corners of radius r
///   Z                close
/// Lengths in units of the drawing, y down. What follows a word that is not understood is left out.
QPainterPath path_from(const QString& words);

/// A mark or picture of a few lines, smooth in every scene graph. (Qt Quick's Shape has no smooth edges on a
/// phone unless the whole window is multisampled, and in the software scene graph a Shape outside a clipped
/// list is drawn over its neighbours.)
class LineDrawing : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString line MEMBER line_ NOTIFY changed)
    Q_PROPERTY(QString area MEMBER area_ NOTIFY changed)
    Q_PROPERTY(QColor color MEMBER color_ NOTIFY changed)
    Q_PROPERTY(qreal thickness MEMBER thickness_ NOTIFY changed)
    Q_PROPERTY(QList<qreal> dashes MEMBER dashes_ NOTIFY changed)
    Q_PROPERTY(qreal grid MEMBER grid_ NOTIFY changed)

public:
    explicit LineDrawing(QQuickItem* parent = nullptr);

    void paint(QPainter* painter) override;

signals:
    void changed();

private:
    QString line_;         // drawn with the pen
    QString area_;         // filled
    QColor color_;         // of both
    qreal thickness_ = 2;  // of the pen, in units of the drawing
    QList<qreal> dashes_;  // in thicknesses; none: a solid line
    qreal grid_ = 0;       // units across the item's width; 0: one unit is one pixel
};

}  // namespace lapwing::components

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QColor>
#include <QFont>
#include <QList>
#include <QPainter>
#include <QPointF>
#include <QSizeF>
#include <QString>

namespace lapwing::components {

/// One line or surface of a picture.
struct Stroke {
    /// "outline", "fine" and "dashed" are lines; "body" (whole parts), "metal" (cut through, hatched),
    /// "hollow" and "oil" (dotted) are surfaces; "rings", "intake", "exhaust" and "gasket" are surfaces in
    /// the pattern of that leak path; "air" (dashed) and "motion" are arrows that point to the end of their
    /// path. Any other word is an outline.
    QString look;
    QString path;  ///< in the words of path_from()
};

/// A numbered disc, at a place in units of the picture.
struct Mark {
    int number = 0;
    QPointF at;
};

struct PictureColors {
    QColor ink, quiet, ground, body, air;
    QColor rings, intake, exhaust, gasket, inkOnPath;
};

struct Picture {
    QSizeF size;  ///< of the drawing, in its own units
    QList<Stroke> strokes;
    QList<Mark> marks;
};

/// Draws a picture as wide as `width` device-independent pixels, from the painter's origin. Lines grow with
/// it, discs don't: they are `markRadius` pixels whatever the width, so that their numbers stay readable.
void paint_picture(QPainter& painter, const Picture& picture, qreal width, const PictureColors& colors,
                   const QFont& font, qreal markRadius);

}  // namespace lapwing::components

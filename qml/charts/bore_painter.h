// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QColor>
#include <QRectF>

#include "core/report/report.h"

class QPainter;

namespace lapwing::charts {

/// Colours and strokes of a bore; lengths in the painter's units.
struct BoreLook {
    QColor ink;
    QColor paper;
    QColor filled;  ///< below the piston line
    QColor good, borderline, fault;
    double stroke = 1.0;

    [[nodiscard]] QColor of(findings::State state) const;
};

/// Black on white with the daylight look's state colours, which stay apart from paper in black and white too.
BoreLook paper_look(double stroke);

/// The shape of a state: filled disc, half disc, open triangle, dashed ring.
void paint_state_mark(QPainter& painter, const QRectF& square, findings::State state, const BoreLook& look);

/// The parts of a bore that a legend shows one by one: normal range, lowest limit, uncertainty.
void paint_band(QPainter& painter, const QRectF& area, const BoreLook& look);
void paint_notch(QPainter& painter, const QRectF& area, const BoreLook& look);
void paint_whisker(QPainter& painter, const QRectF& area, const BoreLook& look);

/// The bore's outline fills the middle of `area`; the normal range stands right of it as a hatched band, the
/// lowest limit left of it as a wedge.
void paint_bore(QPainter& painter, const QRectF& area, const report::Bore& bore, const BoreLook& look);

}  // namespace lapwing::charts

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "qml/charts/bore_painter.h"
#include "qml/print/typeset.h"

/// The look of a printed report.
namespace lapwing::print::styles {

inline const QColor quiet_ink("#3A382F");
inline const QColor hairline("#9A9A9A");

inline const Style title{pt(21), true};
inline const Style subtitle{pt(11.5)};
inline const Style heading{pt(12), true};
inline const Style body{pt(9)};
inline const Style body_bold{pt(9), true};
inline const Style label{pt(8.4), false, quiet_ink};
constexpr double small_size = pt(8);
inline const Style small{small_size, false, quiet_ink};
inline const Style column_head{pt(8.2), true};
inline const Style numeral{pt(13), true};
inline const Style running{pt(8), false, quiet_ink};

inline const charts::BoreLook bore = charts::paper_look(pt(0.9));

inline Style in(Style style, Qt::Alignment align) {
    style.align = align;
    return style;
}
inline Style scaled(Style style, double by) {
    style.size *= by;
    return style;
}

}  // namespace lapwing::print::styles

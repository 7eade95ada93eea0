// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "qml/format/formatter.h"

namespace lapwing::format {

/// A change with its sign and its doubt, the same on the screen and on paper: "+0.9 bar ± 0.7". A difference
/// of two shares is counted in points, "−35 points ± 12": "−35 %" would read as a share of the share.
/// A narrow column may break it before the doubt, nowhere else.
QString difference_text(const findings::Figure& figure, const Formatter& format);

}  // namespace lapwing::format

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>
#include <cmath>

namespace lapwing {

/// Minutes and seconds of a voice note: "0:12".
inline QString length_text(double seconds) {
    const int whole = int(std::lround(seconds));
    return QStringLiteral("%1:%2").arg(whole / 60).arg(whole % 60, 2, 10, QLatin1Char('0'));
}

}  // namespace lapwing

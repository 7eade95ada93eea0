// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/format/typed_entry.h"

#include <algorithm>
#include <cmath>

namespace lapwing::format {

int decimalsOfGauge(double fullScale, std::optional<double> division) {
    if (!(fullScale > 0.0)) return 0;
    // Dials are read to a fraction of a division; a hundredth of the scale is what the eye can do at all.
    const double step = std::min(division.value_or(fullScale), fullScale / 100.0);
    return std::clamp(static_cast<int>(std::ceil(-std::log10(step) - 0.301)), 0, 3);
}

QString withoutNoughts(QString digits) {
    while (digits.size() > 1 && digits[0] == u'0' && digits[1] >= u'0' && digits[1] <= u'9')
        digits.remove(0, 1);
    return digits;
}

static Entry placed(QStringView typed, double fullScale, int decimals) {
    Entry out;
    bool own_point = false;
    for (const QChar c : typed) {
        if (c == u',' || c == u'.') {
            own_point = true;
            out.digits += u'.';
        } else {
            out.digits += c;
        }
    }
    const bool plain = std::ranges::all_of(out.digits, [](QChar c) { return c >= u'0' && c <= u'9'; });
    if (own_point || !plain || out.digits.isEmpty() || decimals <= 0 || !(fullScale > 0.0)) return out;
    if (out.digits.toDouble() <= fullScale) return out;
    // One digit at a time from the right, until the value fits the scale; at most two more than the gauge
    // gives, for those who always type two places and one more: a point that stood there must not go away.
    const auto most = std::min<qsizetype>(decimals + 2, out.digits.size() - 1);
    for (qsizetype places = 1; places <= most; ++places) {
        QString placed = out.digits;
        placed.insert(placed.size() - places, u'.');
        if (placed.toDouble() <= fullScale) return Entry{placed, true};
    }
    return out;
}

Entry placePoint(QStringView typed, double fullScale, int decimals) {
    // Only now: they are no reason to place a point elsewhere.
    Entry out = placed(typed, fullScale, decimals);
    out.digits = withoutNoughts(out.digits);
    return out;
}

}  // namespace lapwing::format

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/read_off.h"

#include <algorithm>
#include <cmath>

namespace lapwing {

int decimals_for(double u) {
    return u > 0 ? std::clamp(int(std::ceil(-std::log10(2 * u))), 0, 4) : 2;
}

QString read_off(const Attachment& photo, const format::Formatter& format) {
    QString value = format.typed(*photo.read_value);
    if (!photo.read_uncertainty) return value;
    const double u = photo.read_uncertainty->number();
    return value + QStringLiteral(" ± ") + format.locale().toString(2 * u, 'f', decimals_for(u));
}

}  // namespace lapwing

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/model/visit.h"
#include "qml/format/formatter.h"

namespace lapwing::cli {

/// The units that the visit's own readings were typed in.
inline format::Choice units_of(const Visit& visit) {
    format::Choice out;
    for (const Reading& reading : visit.readings)
        if (const auto& pressure = reading.final ? reading.final : reading.held)
            out.pressure = pressure->unit();
    out.inches = out.pressure == units::psi || out.pressure == units::in_hg;
    return out;
}

}  // namespace lapwing::cli

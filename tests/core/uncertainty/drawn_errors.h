// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/uncertainty/instrument.h"
#include "core/uncertainty/monte_carlo.h"

namespace lapwing::uncertainty {

/// One gauge in one trial (JCGM 101): offset and gain are drawn once and serve all its readings, local error
/// and resolution anew for each.
class DrawnErrors {
public:
    DrawnErrors(const Gauge& gauge, Draws& draws)
        : gauge_(gauge), draws_(draws), offset_(draws.standard_normal()), gain_(draws.standard_normal()) {}

    [[nodiscard]] double moved(double reading_pa) {
        const auto by = errors_at(gauge_, reading_pa);
        return reading_pa + by.offset_pa * offset_ + by.gain_pa * gain_ + draws_.normal(0, by.local_pa) +
               draws_.normal(0, by.resolution_pa);
    }

private:
    const Gauge& gauge_;
    Draws& draws_;
    double offset_;
    double gain_;
};

}  // namespace lapwing::uncertainty

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/base/result.h"
#include "core/physics/atmosphere.h"
#include "core/physics/leak_law.h"

/// Hold test of a closed chamber (a two-stroke's crankcase): pumped up, shut off, read again after a time.
/// The air keeps the shop's temperature over minutes and only leaks, so that
///     V/(R T) dp/dt = -mdot(p):   t = V/(A sqrt(R T)) * integral from end to set of dp / flow(p)
/// Volume and leak stand in one factor, which one hold tells and the same chamber has in every other.
/// Source: continuity, the ideal gas, and the flows of leak_law.h. Not in it: seals that give more or less
/// with pressure, and air that cools after pumping.
namespace lapwing::physics {

struct Hold {
    double set_gauge_pa = 0.0;         ///< at the start; 500 Pa to 1 MPa
    double seconds = 0.0;              ///< 1 to 86,400
    double ambient_pa = sea_level_pa;  ///< station pressure, absolute
};

/// What the same chamber with the same leak holds in another hold, gauge Pa: 0 where it has emptied by then.
/// A hold that lost nothing loses nothing there either. Fails with "hold.set", "hold.seconds" or
/// "hold.ambient" where a hold can't be; with "hold.end" where the end is not within 0 and the set pressure;
/// with "hold.emptied" where nothing was left at the end, so that how fast it went isn't known.
[[nodiscard]] Result<double> held_in_other_hold_gauge_pa(const Hold& read, double end_gauge_pa,
                                                         const Hold& other, LeakLaw law);

}  // namespace lapwing::physics

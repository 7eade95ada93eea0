// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/base/result.h"
#include "core/physics/atmosphere.h"
#include "core/physics/gas.h"
#include "core/physics/leak_law.h"

/// Leak-down (differential pressure) test. Regulated air passes the tester's restrictor into the cylinder and
/// leaves by the leak; both flows are equal and both gases have the shop's temperature, which therefore drops
/// out:
///     A_leak / A_restrictor = p1 psi(p2/p1) / ( p2 psi(p0/p2) ),   p absolute: p1 set, p2 held, p0 ambient
/// Source: continuity and psi() of gas.h. On a hot engine the leak area comes out about 11 % low.
namespace lapwing::physics {

struct TesterPneumatics {
    double set_gauge_pa = 0.0;                ///< with the outlet blocked
    double restrictor_diameter_m = 1.016e-3;  ///< 0.040 in (FAA AC 43.13-1B, bores under 5 in)
    double restrictor_cd = 0.85;              ///< working assumption, repeated in assets/reference
    double ambient_pa = sea_level_pa;         ///< station pressure, absolute

    [[nodiscard]] double set_pa() const { return ambient_pa + set_gauge_pa; }
    [[nodiscard]] double restrictor_area_m2() const {
        return restrictor_cd * circle_area_m2(restrictor_diameter_m);
    }
};

enum class LeakState {
    none,  ///< held equals set: less than the gauge can show. All areas and flows are 0.
    measured,
    wide_open,  ///< held is 0: more than the tester can feed. Areas are infinite; the flow is all the
                ///< restrictor passes.
};

struct Leakdown {
    LeakState state = LeakState::none;
    double leakage = 0.0;        ///< 0..1: the mechanic's number, (set - held) / set in gauge pressures
    double area_ratio = 0.0;     ///< leak over restrictor, effective areas
    double leak_area_m2 = 0.0;   ///< effective
    double leak_hole_m = 0.0;    ///< diameter of the round hole with discharge coefficient 1
    double flow_anr_m3_s = 0.0;  ///< through the leak at the held pressure and 293.15 K, as air ANR
};

/// (set - held) / set, gauge pressures. Fails with "leakdown.set" (not above zero, or above 7 MPa),
/// "leakdown.held_negative" or "leakdown.held_above_set".
[[nodiscard]] Result<double> leakage(double set_gauge_pa, double held_gauge_pa);

/// The leak behind a held pressure. Fails as `leakage` does, and with "leakdown.ambient" or
/// "leakdown.restrictor" where the tester's own numbers are impossible.
[[nodiscard]] Result<Leakdown> leakdown(const TesterPneumatics& tester, double held_gauge_pa);

/// What another tester (set pressure, restrictor, ambient) would hold, gauge Pa, on the same leak. No leak
/// holds the other tester's set pressure, a wide open one holds 0. Fails as `leakdown` does, for either
/// tester.
[[nodiscard]] Result<double> held_on_other_tester_gauge_pa(const TesterPneumatics& from, double held_gauge_pa,
                                                           const TesterPneumatics& to, LeakLaw law);

/// Effective area, m2, of a home-made tester's restrictor, from what it holds on a drilled hole of known
/// diameter put in the cylinder's place. The tester's own restrictor numbers are not looked at. The hole's
/// discharge coefficient is best left as the restrictor's: for alike holes it cancels in the diameter. Fails
/// as `leakdown` does, and with "leakdown.check_hole" when the hole cannot tell (nothing lost, nothing held,
/// or no hole).
[[nodiscard]] Result<double> restrictor_area_by_hole_m2(const TesterPneumatics& tester, double held_gauge_pa,
                                                        double hole_diameter_m, double hole_cd = 0.85);

}  // namespace lapwing::physics

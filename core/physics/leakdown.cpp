// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/physics/leakdown.h"

#include <algorithm>
#include <boost/math/tools/toms748_solve.hpp>
#include <cmath>
#include <cstdint>
#include <limits>

#include "core/base/apart.h"

namespace lapwing::physics {
namespace {

Status check(const TesterPneumatics& tester) {
    if (!(tester.ambient_pa >= 20e3 && tester.ambient_pa <= 120e3)) {
        return fail(
            "leakdown.ambient",
            "An air pressure of {:.6g} hPa is not one a shop can have. Give what the barometer in the "
            "shop shows, "
            "200 to 1200 hPa.",
            tester.ambient_pa / 100.0);
    }
    if (!(tester.restrictor_diameter_m >= 1e-5 && tester.restrictor_diameter_m <= 0.05)) {
        return fail("leakdown.restrictor",
                    "A restrictor of {:.6g} mm cannot be right. Give 0.01 to 50 mm; most are 1 mm.",
                    tester.restrictor_diameter_m * 1e3);
    }
    if (!(tester.restrictor_cd > 0.0 && tester.restrictor_cd <= 1.0)) {
        return fail("leakdown.restrictor",
                    "A restrictor's discharge coefficient of {} cannot be right. Give above 0 up to 1; 0.85 "
                    "is usual.",
                    tester.restrictor_cd);
    }
    return {};
}

/// Flow through the restrictor over sqrt(R T): N. Gauge pressures in, so that small drops keep their digits.
double restrictor_flow(const TesterPneumatics& tester, double held_gauge_pa) {
    const double set_pa = tester.set_pa();
    return tester.restrictor_area_m2() * set_pa * psi_of_drop((tester.set_gauge_pa - held_gauge_pa) / set_pa);
}

}  // namespace

Result<double> leakage(double set_gauge_pa, double held_gauge_pa) {
    if (!(set_gauge_pa > 0.0 && set_gauge_pa <= 7e6)) {
        return fail(
            "leakdown.set",
            "A set pressure of {:.6g} kPa cannot be tested with. Give the gauge pressure with the outlet "
            "blocked, "
            "above 0; 550 kPa (80 psi) is usual.",
            set_gauge_pa / 1e3);
    }
    if (!(held_gauge_pa >= 0.0)) {
        return fail(
            "leakdown.held_negative",
            "A held pressure of {:.6g} kPa is not a gauge reading. Give 0 or more; check that the needle "
            "rests at "
            "zero.",
            held_gauge_pa / 1e3);
    }
    if (!std::isfinite(held_gauge_pa) || is_above(held_gauge_pa, set_gauge_pa)) {
        return fail("leakdown.held_above_set",
                    "The held pressure ({:.6g} kPa) is above the set pressure ({:.6g} kPa). Were the two "
                    "exchanged? If not, "
                    "block the outlet and compare the gauges.",
                    held_gauge_pa / 1e3, set_gauge_pa / 1e3);
    }
    return std::max(0.0, (set_gauge_pa - held_gauge_pa) / set_gauge_pa);
}

Result<Leakdown> leakdown(const TesterPneumatics& tester, double held_gauge_pa) {
    if (auto ok = check(tester); !ok) return tl::unexpected(ok.error());
    const auto lost = leakage(tester.set_gauge_pa, held_gauge_pa);
    if (!lost) return tl::unexpected(lost.error());
    Leakdown out;
    out.leakage = *lost;
    if (held_gauge_pa >= tester.set_gauge_pa) return out;
    const double flow = restrictor_flow(tester, held_gauge_pa);
    out.flow_anr_m3_s = volume_flow_anr(flow / std::sqrt(gas_constant_air * shop_temperature_k));
    if (held_gauge_pa == 0.0) {
        out.state = LeakState::wide_open;
        out.area_ratio = out.leak_area_m2 = out.leak_hole_m = std::numeric_limits<double>::infinity();
        return out;
    }
    out.state = LeakState::measured;
    out.leak_area_m2 = flow / unit_leak_flow(LeakLaw::orifice, tester.ambient_pa, held_gauge_pa);
    out.area_ratio = out.leak_area_m2 / tester.restrictor_area_m2();
    out.leak_hole_m = circle_diameter_m(out.leak_area_m2);
    return out;
}

Result<double> held_on_other_tester_gauge_pa(const TesterPneumatics& from, double held_gauge_pa,
                                             const TesterPneumatics& to, LeakLaw law) {
    const auto here = leakdown(from, held_gauge_pa);
    if (!here) return tl::unexpected(here.error());
    // Asking the other tester about a blocked outlet checks all its numbers.
    if (const auto there = leakdown(to, to.set_gauge_pa); !there) return tl::unexpected(there.error());
    if (here->state == LeakState::none) return to.set_gauge_pa;
    if (here->state == LeakState::wide_open) return 0.0;

    const double conductance =
        restrictor_flow(from, held_gauge_pa) / unit_leak_flow(law, from.ambient_pa, held_gauge_pa);
    const auto surplus = [&](double held) {
        return restrictor_flow(to, held) - conductance * unit_leak_flow(law, to.ambient_pa, held);
    };
    // More held means less flowing in and more out: one root, and the ends bracket it.
    std::uintmax_t iterations = 200;
    const auto bracket = boost::math::tools::toms748_solve(
        surplus, 0.0, to.set_gauge_pa, surplus(0.0), surplus(to.set_gauge_pa),
        boost::math::tools::eps_tolerance<double>(50), iterations);
    return 0.5 * (bracket.first + bracket.second);
}

Result<double> restrictor_area_by_hole_m2(const TesterPneumatics& tester, double held_gauge_pa,
                                          double hole_diameter_m, double hole_cd) {
    TesterPneumatics any_restrictor = tester;
    any_restrictor.restrictor_diameter_m = 1e-3;
    any_restrictor.restrictor_cd = 1.0;
    const auto behind = leakdown(any_restrictor, held_gauge_pa);
    if (!behind) return tl::unexpected(behind.error());
    if (!(hole_diameter_m >= 1e-5 && hole_diameter_m <= 0.05 && hole_cd > 0.0 && hole_cd <= 1.0)) {
        return fail("leakdown.check_hole",
                    "A check hole of {:.6g} mm with discharge coefficient {} cannot be right. Give the "
                    "drill's diameter, "
                    "0.01 to 50 mm, and a coefficient above 0 up to 1.",
                    hole_diameter_m * 1e3, hole_cd);
    }
    if (behind->state != LeakState::measured) {
        return fail("leakdown.check_hole",
                    "Holding {:.6g} kPa of {:.6g} kPa says nothing about the restrictor: the check hole is "
                    "{}. Use a hole of "
                    "about the restrictor's size.",
                    held_gauge_pa / 1e3, tester.set_gauge_pa / 1e3,
                    behind->state == LeakState::none ? "blocked or too small" : "too large");
    }
    return hole_cd * circle_area_m2(hole_diameter_m) / behind->area_ratio;
}

}  // namespace lapwing::physics

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/physics/hold.h"

#include <boost/math/quadrature/gauss_kronrod.hpp>
#include <boost/math/tools/toms748_solve.hpp>
#include <cmath>
#include <cstdint>

namespace lapwing::physics {
namespace {

Status check(const Hold& hold) {
    if (!(hold.set_gauge_pa >= 500.0 && hold.set_gauge_pa <= 1e6))
        return fail(
            "hold.set",
            "A hold test from {:.6g} kPa can't be worked with. Give the pressure that the chamber was "
            "pumped up to, 0.5 to 1000 kPa; 50 kPa is usual for a crankcase.",
            hold.set_gauge_pa / 1e3);
    if (!(hold.seconds >= 1.0 && hold.seconds <= 86'400.0))
        return fail("hold.seconds",
                    "A hold of {:.6g} s can't be worked with. Give the time from shutting off to reading, 1 "
                    "second to 24 hours.",
                    hold.seconds);
    if (!(hold.ambient_pa >= 20e3 && hold.ambient_pa <= 120e3))
        return fail(
            "hold.ambient",
            "An air pressure of {:.6g} hPa is not one a shop can have. Give what the barometer in the "
            "shop shows, 200 to 1200 hPa.",
            hold.ambient_pa / 100.0);
    return {};
}

/// Integral of dp / flow from one gauge pressure up to another.
double time_between(LeakLaw law, double ambient_pa, double low_gauge_pa, double high_gauge_pa) {
    // In the root of the pressure: there the flow through a hole has no kink at its last.
    const auto slowness = [&](double root) {
        return 2.0 * root / unit_leak_flow(law, ambient_pa, root * root);
    };
    constexpr unsigned halvings = 8;
    return boost::math::quadrature::gauss_kronrod<double, 15>::integrate(
        slowness, std::sqrt(low_gauge_pa), std::sqrt(high_gauge_pa), halvings, 1e-10);
}

}  // namespace

Result<double> held_in_other_hold_gauge_pa(const Hold& read, double end_gauge_pa, const Hold& other,
                                           LeakLaw law) {
    for (const Hold* hold : {&read, &other})
        if (auto ok = check(*hold); !ok) return tl::unexpected(ok.error());
    if (!(end_gauge_pa >= 0.0 && end_gauge_pa <= read.set_gauge_pa))
        return fail(
            "hold.end",
            "{:.6g} kPa at the end of a hold that began at {:.6g} kPa can't be: it must lie between 0 "
            "and that. Were the two exchanged?",
            end_gauge_pa / 1e3, read.set_gauge_pa / 1e3);
    if (end_gauge_pa == read.set_gauge_pa) return other.set_gauge_pa;
    if (end_gauge_pa == 0.0)
        return fail("hold.emptied",
                    "Nothing was left at the end of the hold, so how fast it leaked isn't known. Read again "
                    "after a shorter time.");
    const double spent =
        time_between(law, read.ambient_pa, end_gauge_pa, read.set_gauge_pa) * other.seconds / read.seconds;
    if (law == LeakLaw::laminar) {
        // d/dp ln(p / (p + 2 p0)) = 2 p0 / flow
        const double twice = 2.0 * other.ambient_pa;
        const double rest = other.set_gauge_pa / (other.set_gauge_pa + twice) * std::exp(-twice * spent);
        return twice * rest / (1.0 - rest);
    }
    const auto over = [&](double end) {
        return time_between(law, other.ambient_pa, end, other.set_gauge_pa) - spent;
    };
    const double at_zero = over(0.0);
    if (at_zero <= 0.0) return 0.0;
    std::uintmax_t iterations = 200;
    const auto bracket =
        boost::math::tools::toms748_solve(over, 0.0, other.set_gauge_pa, at_zero, -spent,
                                          boost::math::tools::eps_tolerance<double>(40), iterations);
    return 0.5 * (bracket.first + bracket.second);
}

}  // namespace lapwing::physics

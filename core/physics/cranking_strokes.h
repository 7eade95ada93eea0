// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <cstddef>

#include "core/physics/cranking_lanes.h"

/// A test's strokes one after the other, and from cases to lanes and back.
namespace lapwing::physics {

// The records of the inner loop are written field by field before they are read; none is set twice.
// NOLINTBEGIN(cppcoreguidelines-pro-type-member-init)

/// Stroke after stroke of the same cylinders: only the air in the gauge carries over.
template <class R>
class StrokesLanes {
public:
    using Mask = typename PackTraits<R>::Mask;

    /// A stroke whose highest pressure is below this many surroundings needs shorter steps.
    static constexpr double hovers_below = 1.2;

    /// Runs the shut part of the stroke, which is the same every time.
    StrokesLanes(const CrankingConstants<R>& constants, double step_share)
        : of_(constants),
          lanes_(constants, step_share),
          gauge_(constants.ambient / constants.gauge_pa_per_kg) {
        lanes_.run_shut(trace_, PackTraits<R>::all());
        lanes_.top_of(trace_, top_pressure_, top_theta_);
        // Gas that never gets far from its surroundings is pushed and pulled over the edges of both flows.
        const Mask hovers = top_pressure_ < R(hovers_below) * of_.ambient;
        if (!any(hovers)) return;
        lanes_.take_care(hovers);
        lanes_.run_shut(trace_, hovers);
        lanes_.top_of(trace_, top_pressure_, top_theta_);
    }

    /// One more stroke. With a trace, remembers the part with the valve open.
    void next(Trace<R>* open = nullptr) {
        const R threshold = of_.gauge_pa_per_kg * gauge_ + of_.crack;
        const Mask opens = threshold < top_pressure_;
        if (!any(opens)) return;
        CrankingPoint<R> at = lanes_.opened_at(trace_, threshold, top_pressure_, top_theta_, from_);
        at.gauge = gauge_;
        lanes_.run_open(at, opens, top_theta_ - at.theta, open);
        gauge_ = larger(gauge_, select(opens, at.gauge, gauge_));
    }

    [[nodiscard]] R gauge_pa() const { return larger(of_.gauge_pa_per_kg * gauge_ - of_.ambient, R(0.0)); }
    /// Highest pressure of a stroke: with the valve shut, and until it opened when there is a trace from
    /// there.
    [[nodiscard]] R top_pressure() const { return top_pressure_; }
    [[nodiscard]] R top_of(const Trace<R>& open) const {
        R pressure, theta;
        lanes_.top_of(open, pressure, theta);
        return pressure;
    }
    [[nodiscard]] R top_theta() const { return top_theta_; }
    [[nodiscard]] int steps() const { return lanes_.steps(); }
    [[nodiscard]] bool gave_up() const { return lanes_.gave_up(); }

private:
    const CrankingConstants<R>& of_;
    StrokeLanes<R> lanes_;
    Trace<R> trace_;
    R gauge_;  // kg
    R top_pressure_;
    R top_theta_;
    std::size_t from_[PackTraits<R>::width] = {};
};

/// Puffs of up to a pack's width of cases, `strokes` a case. False when one of them does not end.
template <class R>
bool crank_group(const CrankingConstants<double>* cases, std::size_t count, int strokes, double step_share,
                 double* puffs_gauge_pa) {
    constexpr std::size_t width = PackTraits<R>::width;
    CrankingConstants<R> of;
    for (std::size_t i = 0; i < width; ++i) {
        const CrankingConstants<double>& one = cases[i < count ? i : count - 1];
        const auto fill = [&](R CrankingConstants<R>::*to, double CrankingConstants<double>::*value) {
            PackTraits<R>::set_lane(of.*to, i, one.*value);
        };
        fill(&CrankingConstants<R>::piston_area, &CrankingConstants<double>::piston_area);
        fill(&CrankingConstants<R>::bore, &CrankingConstants<double>::bore);
        fill(&CrankingConstants<R>::crank, &CrankingConstants<double>::crank);
        fill(&CrankingConstants<R>::rod, &CrankingConstants<double>::rod);
        fill(&CrankingConstants<R>::clearance, &CrankingConstants<double>::clearance);
        fill(&CrankingConstants<R>::closing, &CrankingConstants<double>::closing);
        fill(&CrankingConstants<R>::opening, &CrankingConstants<double>::opening);
        fill(&CrankingConstants<R>::ambient, &CrankingConstants<double>::ambient);
        fill(&CrankingConstants<R>::ambient_density, &CrankingConstants<double>::ambient_density);
        fill(&CrankingConstants<R>::air, &CrankingConstants<double>::air);
        fill(&CrankingConstants<R>::wall, &CrankingConstants<double>::wall);
        fill(&CrankingConstants<R>::charge, &CrankingConstants<double>::charge);
        fill(&CrankingConstants<R>::heat_per_rad, &CrankingConstants<double>::heat_per_rad);
        fill(&CrankingConstants<R>::leak_per_rad, &CrankingConstants<double>::leak_per_rad);
        fill(&CrankingConstants<R>::check_per_rad, &CrankingConstants<double>::check_per_rad);
        fill(&CrankingConstants<R>::gauge_pa_per_kg, &CrankingConstants<double>::gauge_pa_per_kg);
        fill(&CrankingConstants<R>::crack, &CrankingConstants<double>::crack);
        fill(&CrankingConstants<R>::longest_step, &CrankingConstants<double>::longest_step);
    }
    StrokesLanes<R> lanes(of, step_share);
    for (int stroke = 0; stroke < strokes; ++stroke) {
        lanes.next();
        const R gauge_pa = lanes.gauge_pa();
        for (std::size_t i = 0; i < count; ++i)
            puffs_gauge_pa[i * static_cast<std::size_t>(strokes) + static_cast<std::size_t>(stroke)] =
                PackTraits<R>::lane(gauge_pa, i);
    }
    return !lanes.gave_up();
}

// NOLINTEND(cppcoreguidelines-pro-type-member-init)

}  // namespace lapwing::physics

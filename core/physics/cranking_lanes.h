// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <cstddef>

#include "core/physics/cranking_rates.h"
#include "core/physics/pack.h"

/// Integrates compression strokes, one case a lane; for cranking.cpp and cranking_many*.cpp alone. Lanes
/// share nothing but the loop: each has its own steps, and a lane that has arrived takes steps of no length.
/// Fourth-order Runge-Kutta. The flow through leak and check valve begins and ends as a square root of time,
/// whose vertical edge no polynomial follows; a step that starts or ends on such an edge runs in the root of
/// its angle instead, in which the flow is smooth.
namespace lapwing::physics {

// The records of the inner loop are written field by field before they are read; none is set twice.
// NOLINTBEGIN(cppcoreguidelines-pro-type-member-init)

/// How many angles a stroke's shut part is remembered at, and the least distance between two of them.
inline constexpr std::size_t most_nodes = 400;
inline constexpr double node_distance_rad = 0.02;
/// A stroke usually takes 10 to 30; where the gas hovers about its surroundings, thousands.
inline constexpr int most_steps = 4000000;

/// How long steps are. Chosen so that every stroke's reading stays within 0.1 % or 100 Pa (the worst of 3000
/// drawn cases: three quarters of it) over the range that tests/core/physics draws from.
namespace step_rules {
inline constexpr double longest_rad = 0.07;
inline constexpr double share_of_top = 0.2;      ///< of the angle in which the chamber doubles about TDC
inline constexpr double reach = 1.2;             ///< times stiffness; explicit steps are stable to 2.8
inline constexpr double away_reach = 0.7;        ///< the same for a step that starts on an edge
inline constexpr double away_share = 0.7;        ///< of the longest step, for such a step
inline constexpr double home_reach = 0.3;        ///< for a step that ends on an edge
inline constexpr double home_share = 0.1;        ///< of the longest step
inline constexpr double before_edge = 0.6;       ///< plain steps go this share of the way to an edge
inline constexpr double share_of_window = 0.35;  ///< of the way from the valve's opening to the top
}  // namespace step_rules

/// The shut part of a stroke, which is the same every time, at the angles where steps ended.
template <class R>
struct Trace {
    static constexpr std::size_t width = PackTraits<R>::width;
    struct Node {
        double theta, mass, energy, mass_rate, energy_rate, pressure, pressure_rate;
    };
    Node nodes[width][most_nodes];
    std::size_t count[width] = {};
};

/// What became of mass and energy, summed with the weights of the integration itself.
template <class R>
struct CrankingLedger {
    R leaked{0.0};        ///< kg out by the leak, less what came back
    R work{0.0};          ///< J done by the gas on the piston
    R wall_heat{0.0};     ///< J given to the walls
    R enthalpy_out{0.0};  ///< J carried out by leak and gauge flow, less what came in
};

template <class R>
class StrokeLanes {
public:
    using Traits = PackTraits<R>;
    using Mask = typename Traits::Mask;
    using Rates = CrankingRates<R>;
    using Point = CrankingPoint<R>;

    /// @param step_share length of the steps over the usual
    /// @param ledger     filled when given
    StrokeLanes(const CrankingConstants<R>& constants, double step_share, CrankingLedger<R>* ledger = nullptr)
        : of_(constants), share_(R(step_share)), longest_(constants.longest_step * share_), ledger_(ledger) {}

    [[nodiscard]] int steps() const { return steps_; }
    [[nodiscard]] bool gave_up() const { return steps_ >= most_steps; }

    /// The fresh charge at closing; the gauge's air is the caller's.
    [[nodiscard]] Point charge() const;

    /// From closing with the valve shut until the pressure has passed its top. Returns where it ended. Lanes
    /// outside `running` stay as they are.
    Point run_shut(Trace<R>& trace, Mask running);

    /// Takes steps a quarter as long in these lanes from now on.
    void take_care(Mask lanes) {
        share_ = select(lanes, R(0.25) * share_, share_);
        longest_ = select(lanes, R(0.25) * longest_, longest_);
    }

    /// From `at` with the valve open until it has shut for good; lanes outside `running` stay as they are.
    /// Remembers the way when given a trace.
    /// @param window from here to the top of the shut stroke, rad: the valve may open and shut in less than a
    ///               usual step
    void run_open(Point& at, Mask running, R window, Trace<R>* trace = nullptr);

    /// Highest pressure of a trace and where it was.
    void top_of(const Trace<R>& trace, R& pressure, R& theta) const;

    /// Where the pressure of a trace rises through `threshold`. Only for lanes where it does, below the top.
    /// @param from node to look from, moved on: the thresholds of one case only rise
    [[nodiscard]] Point opened_at(const Trace<R>& trace, R threshold, R top_pressure, R top_theta,
                                  std::size_t (&from)[Traits::width]) const;

private:
    /// How a step runs through its angle: plainly, or in the root of it from or towards an edge.
    struct Step {
        R length;
        R middle;            ///< angle of the middle stages, as a share of the length
        R weight0, weight2;  ///< what the rates at start and end count; those in the middle count 1
    };
    /// Cubic through two nodes with their slopes.
    struct Piece {
        R start, length;
        R mass0, mass1, mass_slope0, mass_slope1;
        R energy0, energy1, energy_slope0, energy_slope1;
        R pressure0, pressure1, pressure_slope0, pressure_slope1;
    };

    template <bool valve_open>
    void run(Point& at, Mask running, R longest, Trace<R>* trace);
    template <bool valve_open>
    [[nodiscard]] Step next_step(const Point& at, const Rates& rates, Mask running, R longest) const;
    template <bool valve_open>
    void advance(Point& at, const Rates& first, const Step& step);
    void remember(Trace<R>& trace, const Point& at, const Rates& rates, Mask running, Mask last) const;
    static void lay(Piece& piece, std::size_t lane, const typename Trace<R>::Node& from,
                    const typename Trace<R>::Node& to);
    [[nodiscard]] Point on(const Piece& piece, R share) const;

    const CrankingConstants<R>& of_;
    R share_;
    R longest_;
    CrankingLedger<R>* ledger_;
    int steps_ = 0;
};

template <class R>
typename StrokeLanes<R>::Point StrokeLanes<R>::charge() const {
    Point at;
    at.place(of_, of_.closing);
    at.mass = of_.charge * at.volume / (R(lane_air::gas_constant) * of_.air);
    at.energy = at.mass * R(lane_air::cv) * of_.air;
    at.gauge = R(0.0);
    return at;
}

template <class R>
template <bool valve_open>
typename StrokeLanes<R>::Step StrokeLanes<R>::next_step(const Point& at, const Rates& rates, Mask running,
                                                        R longest) const {
    // How far the pressure is from the edge where a flow begins, how fast it moves there, and how stiffly the
    // flow pulls it back: d(rate)/d(distance) = pull / (2 sqrt(distance)).
    const R gas_pull = R(lane_air::gamma) * rates.pressure / at.mass;
    const R least = R(0.25 * straight_below) * rates.pressure;  // where the straight part begins to count
    R distance = rates.pressure - of_.ambient;
    R distance_rate = rates.pressure_rate;
    const R upstream = select(distance > R(0.0), rates.density, of_.ambient_density);
    R pull = gas_pull * of_.leak_per_rad * root(R(2.0) * upstream);
    R stiffness = rates.wall_stiffness + R(0.5) * pull / root(larger(magnitude(distance), least));
    R stiffest = rates.wall_stiffness + R(0.5) * pull / root(least);
    if constexpr (valve_open) {
        distance = rates.pressure - of_.gauge_pa_per_kg * at.gauge - of_.crack;
        distance_rate = rates.pressure_rate - of_.gauge_pa_per_kg * rates.gauge;
        pull = (gas_pull + of_.gauge_pa_per_kg) * of_.check_per_rad * root(R(2.0) * rates.density);
        stiffness = stiffness + select(distance < R(-1e-8) * rates.pressure, R(0.0),
                                       R(0.5) * pull / root(larger(distance, least)));
        stiffest = stiffest + R(0.5) * pull / root(least);
    }
    // Explicit steps are stable to 2.8 over the stiffness; half of it is accurate too.
    const R reach = R(step_rules::reach) * share_;
    const R usual = smaller(longest, reach / (stiffness + R(1e-9)));
    // Along the root of the angle the pull is pull / sqrt(rate), the same all the way.
    const R stiff_edge = magnitude(distance_rate) * share_ * share_ / (pull * pull + R(1e-30));
    const R away = smaller(R(step_rules::away_share) * longest,
                           R(step_rules::away_reach * step_rules::away_reach) * stiff_edge);
    const R home = smaller(R(step_rules::home_share) * longest,
                           R(step_rules::home_reach * step_rules::home_reach) * stiff_edge);
    // Steps this short may cross the edge: the flow is straight there.
    const R shortest = smaller(R(1e-3) * share_, reach / (stiffest + R(1e-9)));
    const R since_edge = distance / select(magnitude(distance_rate) > R(1e-9), distance_rate, R(1e-9));
    const Mask at_edge = magnitude(distance) <= R(1e-8) * rates.pressure;
    const Mask leaves = at_edge | ((since_edge >= R(0.0)) & (since_edge < R(0.02) * away));
    const Mask comes = other(leaves) & (since_edge < R(0.0)) & (-since_edge < home);
    Mask flows = pull > R(0.0);
    if constexpr (valve_open) flows = flows & ((leaves & (distance_rate > R(0.0))) | (distance > R(0.0)));
    const Mask starts = flows & leaves & (away > shortest);
    const Mask ends = flows & comes & (-since_edge > shortest);
    R wanted = select(starts, away, select(ends, -since_edge, usual));
    // Plain steps do not cross an edge, and on the side without flow they end on it.
    R before_edge(step_rules::before_edge);
    if constexpr (valve_open) before_edge = select(distance < R(0.0), R(1.0), before_edge);
    const Mask towards =
        other(starts) & other(ends) & other(leaves) & (since_edge < R(0.0)) & (pull > R(0.0));
    wanted = select(towards, smaller(wanted, -since_edge * before_edge), wanted);
    Step step;
    step.length = smaller(larger(wanted, shortest), of_.opening - at.theta);
    step.length = select(running, step.length, R(0.0));
    step.middle = select(starts, R(0.25), select(ends, R(0.75), R(0.5)));
    step.weight0 = select(starts, R(0.0), select(ends, R(2.0), R(1.0)));
    step.weight2 = R(2.0) - step.weight0;
    return step;
}

template <class R>
template <bool valve_open>
void StrokeLanes<R>::advance(Point& at, const Rates& first, const Step& step) {
    const R half = R(0.5) * step.length;
    const R first_half = half * step.weight0;
    Point stage;
    stage.place(of_, at.theta + step.middle * step.length);
    Point end;
    end.place(of_, at.theta + step.length);
    stage.mass = at.mass + first_half * first.mass;
    stage.energy = at.energy + first_half * first.energy;
    stage.gauge = at.gauge + first_half * first.gauge;
    const Rates second = cranking_rates<valve_open>(of_, stage);
    stage.mass = at.mass + half * second.mass;
    stage.energy = at.energy + half * second.energy;
    stage.gauge = at.gauge + half * second.gauge;
    const Rates third = cranking_rates<valve_open>(of_, stage);
    end.mass = at.mass + step.length * third.mass;
    end.energy = at.energy + step.length * third.energy;
    end.gauge = at.gauge + step.length * third.gauge;
    const Rates fourth = cranking_rates<valve_open>(of_, end);

    const R sixth = step.length * R(1.0 / 6.0);
    const R w0 = sixth * step.weight0;
    const R w1 = sixth * R(2.0);
    const R w2 = sixth * step.weight2;
    end.mass = at.mass + w0 * first.mass + w1 * (second.mass + third.mass) + w2 * fourth.mass;
    end.energy = at.energy + w0 * first.energy + w1 * (second.energy + third.energy) + w2 * fourth.energy;
    end.gauge = at.gauge + w0 * first.gauge + w1 * (second.gauge + third.gauge) + w2 * fourth.gauge;
    if (ledger_ != nullptr) {
        const auto book = [&](R& sum, R Rates::*rate) {
            sum = sum + w0 * first.*rate + w1 * (second.*rate + third.*rate) + w2 * fourth.*rate;
        };
        book(ledger_->leaked, &Rates::leaked);
        book(ledger_->work, &Rates::work);
        book(ledger_->wall_heat, &Rates::wall_heat);
        book(ledger_->enthalpy_out, &Rates::enthalpy_out);
    }
    at = end;
}

template <class R>
template <bool valve_open>
void StrokeLanes<R>::run(Point& at, Mask running, R longest, Trace<R>* trace) {
    // From here on a pressure that falls does not rise again before the exhaust opens. Earlier it may: cold
    // walls or a leak can win for a while against a piston still slow.
    const R past_any_second_rise(-0.35);
    while (any(running) && !gave_up()) {
        const Rates rates = cranking_rates<valve_open>(of_, at);
        Mask over = (rates.pressure_rate < R(0.0)) & (at.theta > past_any_second_rise);
        if constexpr (valve_open) {
            // The flow has faded to nothing here, and what comes after the crossing it cannot feel.
            const R beyond = rates.pressure - of_.gauge_pa_per_kg * at.gauge - of_.crack;
            over = over & (beyond <= R(2e-5) * rates.pressure);
        }
        over = over | (at.theta >= of_.opening);
        if (trace != nullptr) remember(*trace, at, rates, running, over);
        running = running & other(over);
        const Step step = next_step<valve_open>(at, rates, running, longest);
        advance<valve_open>(at, rates, step);
        ++steps_;
    }
}

template <class R>
typename StrokeLanes<R>::Point StrokeLanes<R>::run_shut(Trace<R>& trace, Mask running) {
    Point at = charge();
    for (std::size_t i = 0; i < Traits::width; ++i)
        if (Traits::mask_lane(running, i)) trace.count[i] = 0;
    run<false>(at, running, longest_, &trace);
    return at;
}

template <class R>
void StrokeLanes<R>::run_open(Point& at, Mask running, R window, Trace<R>* trace) {
    run<true>(at, running,
              smaller(longest_, larger(R(step_rules::share_of_window) * share_ * window, R(1e-5))), trace);
}

template <class R>
void StrokeLanes<R>::remember(Trace<R>& trace, const Point& at, const Rates& rates, Mask running,
                              Mask last) const {
    for (std::size_t i = 0; i < Traits::width; ++i) {
        if (!Traits::mask_lane(running, i)) continue;
        std::size_t& count = trace.count[i];
        auto& nodes = trace.nodes[i];
        const double theta = Traits::lane(at.theta, i);
        // Steps of a stiff stretch are far shorter than anything in it that a reading could feel.
        const bool close = count > 0 && theta - nodes[count - 1].theta < node_distance_rad;
        if (count >= most_nodes || (close && !Traits::mask_lane(last, i))) continue;
        nodes[count++] = {theta,
                          Traits::lane(at.mass, i),
                          Traits::lane(at.energy, i),
                          Traits::lane(rates.mass, i),
                          Traits::lane(rates.energy, i),
                          Traits::lane(rates.pressure, i),
                          Traits::lane(rates.pressure_rate, i)};
    }
}

template <class R>
void StrokeLanes<R>::lay(Piece& piece, std::size_t lane, const typename Trace<R>::Node& from,
                         const typename Trace<R>::Node& to) {
    const double length = to.theta - from.theta;
    Traits::set_lane(piece.start, lane, from.theta);
    Traits::set_lane(piece.length, lane, length);
    Traits::set_lane(piece.mass0, lane, from.mass);
    Traits::set_lane(piece.mass1, lane, to.mass);
    Traits::set_lane(piece.mass_slope0, lane, from.mass_rate * length);
    Traits::set_lane(piece.mass_slope1, lane, to.mass_rate * length);
    Traits::set_lane(piece.energy0, lane, from.energy);
    Traits::set_lane(piece.energy1, lane, to.energy);
    Traits::set_lane(piece.energy_slope0, lane, from.energy_rate * length);
    Traits::set_lane(piece.energy_slope1, lane, to.energy_rate * length);
    Traits::set_lane(piece.pressure0, lane, from.pressure);
    Traits::set_lane(piece.pressure1, lane, to.pressure);
    Traits::set_lane(piece.pressure_slope0, lane, from.pressure_rate * length);
    Traits::set_lane(piece.pressure_slope1, lane, to.pressure_rate * length);
}

/// Hermite's cubic through two values with their slopes over the whole piece.
template <class R>
LAPWING_INLINE R cubic(R value0, R value1, R slope0, R slope1, R t) {
    const R rise = value1 - value0;
    return value0 + t * (slope0 + t * ((R(3.0) * rise - R(2.0) * slope0 - slope1) +
                                       t * (slope0 + slope1 - R(2.0) * rise)));
}

template <class R>
typename StrokeLanes<R>::Point StrokeLanes<R>::on(const Piece& piece, R share) const {
    Point at;
    at.place(of_, piece.start + share * piece.length);
    at.mass = cubic(piece.mass0, piece.mass1, piece.mass_slope0, piece.mass_slope1, share);
    at.energy = cubic(piece.energy0, piece.energy1, piece.energy_slope0, piece.energy_slope1, share);
    at.gauge = R(0.0);
    return at;
}

template <class R>
void StrokeLanes<R>::top_of(const Trace<R>& trace, R& pressure, R& theta) const {
    Piece piece;
    for (std::size_t i = 0; i < Traits::width; ++i) {
        const auto& nodes = trace.nodes[i];
        std::size_t highest = 0;
        for (std::size_t n = 1; n < trace.count[i]; ++n)
            if (nodes[n].pressure > nodes[highest].pressure) highest = n;
        const std::size_t left = nodes[highest].pressure_rate < 0.0 && highest > 0 ? highest - 1 : highest;
        const std::size_t right = left + 1 < trace.count[i] ? left + 1 : left;
        lay(piece, i, nodes[left], nodes[right]);
    }
    // Where the slope of the pressure's own cubic falls through zero; without such a place the ends stay.
    const R rise = piece.pressure1 - piece.pressure0;
    const R a = piece.pressure_slope0 + piece.pressure_slope1 - R(2.0) * rise;
    const R b = R(3.0) * rise - R(2.0) * piece.pressure_slope0 - piece.pressure_slope1;
    const R under_root = larger(b * b - R(3.0) * a * piece.pressure_slope0, R(0.0));
    const R divisor = root(under_root) - b;
    const R share = piece.pressure_slope0 / select(divisor > R(0.0), divisor, R(1.0));
    const Mask inside = (divisor > R(0.0)) & (share > R(0.0)) & (share < R(1.0));
    const R where = select(inside, share, select(piece.pressure1 > piece.pressure0, R(1.0), R(0.0)));
    const Point at = on(piece, where);
    const R ends = larger(piece.pressure0, piece.pressure1);
    const R between = R(lane_air::gamma - 1.0) * at.energy / at.volume;
    pressure = larger(ends, between);
    theta = at.theta;
}

template <class R>
typename StrokeLanes<R>::Point StrokeLanes<R>::opened_at(const Trace<R>& trace, R threshold, R top_pressure,
                                                         R top_theta,
                                                         std::size_t (&from)[Traits::width]) const {
    Piece piece;
    R share(0.0);
    R most(1.0);
    for (std::size_t i = 0; i < Traits::width; ++i) {
        const auto& nodes = trace.nodes[i];
        const double wanted = Traits::lane(threshold, i);
        std::size_t& n = from[i];
        while (n + 1 < trace.count[i] && nodes[n + 1].pressure < wanted &&
               nodes[n + 1].theta < Traits::lane(top_theta, i))
            ++n;
        const std::size_t next = n + 1 < trace.count[i] ? n + 1 : n;
        lay(piece, i, nodes[n], nodes[next]);
        // Straight to the next node, or to the top where that stands before it.
        const bool top_first = nodes[next].theta > Traits::lane(top_theta, i);
        const double end = top_first ? Traits::lane(top_pressure, i) : nodes[next].pressure;
        const double reach = nodes[next].theta - nodes[n].theta;
        const double far = top_first ? (Traits::lane(top_theta, i) - nodes[n].theta) / reach : 1.0;
        const double rise = end - nodes[n].pressure;
        const double guess = rise > 0.0 ? far * (wanted - nodes[n].pressure) / rise : 0.0;
        Traits::set_lane(share, i, guess > 0.0 ? (guess < far ? guess : far) : 0.0);
        Traits::set_lane(most, i, reach > 0.0 ? far : 0.0);
    }
    Point at = on(piece, share);
    for (int i = 0; i < 4; ++i) {
        const Rates rates = cranking_rates<false>(of_, at);
        const R slope =
            larger(rates.pressure_rate, R(1e-3) * rates.pressure) * larger(piece.length, R(1e-12));
        share = smaller(larger(share + (threshold - rates.pressure) / slope, R(0.0)), most);
        at = on(piece, share);
    }
    at.energy = threshold * at.volume * R(1.0 / (lane_air::gamma - 1.0));
    return at;
}

// NOLINTEND(cppcoreguidelines-pro-type-member-init)

}  // namespace lapwing::physics

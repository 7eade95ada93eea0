// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <memory>
#include <optional>
#include <span>
#include <vector>

#include "core/odds/area_prior.h"
#include "core/odds/evidence.h"
#include "core/odds/fate.h"
#include "core/odds/held_curve.h"

/// The engine as the odds see it: every unknown a standard normal number, and how likely the evidence is
/// given all of them.
namespace lapwing::odds {

/// Places of what all cylinders share.
enum Shared : std::size_t {
    ratio,
    closing,
    heat,
    speed,
    level,  ///< what the cranking model is out by for this engine
    gauge_offset,
    gauge_gain,
    leak_offset,
    leak_gain,
    leak_set,
    restrictor,
    listener,
    shared_count
};

/// Unknowns of a path: its area, and what it is while cranking.
struct PathPlace {
    std::size_t area = 0;
    std::size_t cranking = 0;
    std::size_t map = 0;  ///< in EngineModel::maps
};

class EngineModel {
public:
    /// `surfaces`: as Evidence::surfaces; none: no cranking reading counts.
    EngineModel(const Evidence& evidence, const Assumptions& assumptions,
                std::vector<const CrankSurface*> surfaces);

    /// Places of what one state of a cylinder hangs on.
    struct State {
        std::size_t cylinder = 0;
        std::vector<PathPlace> all;    ///< as CylinderEvidence::paths, then its joints
        std::vector<PathPlace> apart;  ///< of these: which no newer state has; of the newest: no older one
        std::size_t level = 0;         ///< what the cranking model is out by for this cylinder
        std::size_t oil_kept = 0;
        std::size_t oil_seals = 0;
    };

    /// The newest state, and all unknowns of a cylinder.
    struct Cylinder : State {
        std::size_t first = 0;  ///< its unknowns are first to last - 1
        std::size_t last = 0;
        std::vector<PathPlace> own;  ///< `all` without the joints
        std::vector<State> earlier;  ///< as CylinderEvidence::earlier
    };

    /// Everything that follows from the shared unknowns alone.
    struct SharedState {
        std::vector<CrankSurface::Slice> slices;  ///< one a hose
        std::optional<CrankDoubts> slice_at;      ///< what the slices were worked out for
        double level = 1.0;
        /// Of each compression gauge.
        struct GaugeErrors {
            double offset = 0.0, gain = 0.0;
        };
        std::vector<GaugeErrors> gauges;
        /// Of each leak-down tester.
        struct LeakErrors {
            double offset = 0.0, gain = 0.0, set = 0.0;
            double log_restrictor = 0.0;  ///< off its nominal
            double log_air = 0.0;         ///< what is heard of it over what would be
        };
        std::vector<LeakErrors> leak_testers;
        double listener = 0.0;
    };

    [[nodiscard]] std::size_t size() const { return size_; }
    /// What all cylinders share are the unknowns before this place: Shared, then offset and gain of every
    /// compression gauge but the first, then what is not known of every leak-down tester but the first.
    [[nodiscard]] std::size_t shared_end() const { return shared_end_; }
    [[nodiscard]] const std::vector<Cylinder>& cylinders() const { return cylinders_; }
    [[nodiscard]] const std::vector<PathPlace>& joints() const { return joints_; }
    [[nodiscard]] const std::vector<AreaMap>& maps() const { return maps_; }
    [[nodiscard]] const AreaPrior& prior(const PathPlace& at) const { return priors_[at.map]; }
    [[nodiscard]] const Evidence& evidence() const { return evidence_; }
    [[nodiscard]] const Assumptions& assumptions() const { return assumptions_; }
    [[nodiscard]] double static_to_cranking() const { return static_to_cranking_; }
    /// The unknown that a leak-down tester's restrictor hangs on, or the air of one that failed its check.
    [[nodiscard]] std::size_t restrictor_of(std::size_t leak_tester) const {
        return leak_errors_.of(leak_tester) + (restrictor - leak_offset);
    }
    [[nodiscard]] double listener_spread() const { return listener_; }

    void shared(std::span<const double> z, SharedState& out) const;
    /// Whether that one's slice is what these unknowns give.
    [[nodiscard]] bool slice_is_of(std::span<const double> z, const SharedState& at) const;
    /// Log likelihoods: of the readings that stand for the whole engine, and of one cylinder's.
    [[nodiscard]] double engine_likelihood(const SharedState& at) const;
    [[nodiscard]] double cylinder_likelihood(std::span<const double> z, const SharedState& at,
                                             std::size_t cylinder) const {
        return cylinder_likelihood(z, at, cylinder, leaks(z, cylinder));
    }

    [[nodiscard]] double log_area(std::span<const double> z, const PathPlace& at) const {
        return maps_[at.map].log_area(z[at.area]);
    }

    // What readings would be, for predictions.

    struct Leaks {
        double standing_m2 = 0.0;
        double rings_m2 = 0.0;
        double cranking_m2 = 0.0;
        double cranking_rings_m2 = 0.0;
        std::array<double, 16> path_m2{};  ///< as Cylinder::all
    };
    [[nodiscard]] Leaks leaks(std::span<const double> z, const State& state) const;
    [[nodiscard]] Leaks leaks(std::span<const double> z, std::size_t cylinder) const {
        return leaks(z, cylinders_[cylinder]);
    }
    /// For who knows the leaks of the cylinder's newest state already.
    [[nodiscard]] double cylinder_likelihood(std::span<const double> z, const SharedState& at,
                                             std::size_t cylinder, const Leaks& leaks) const;
    /// The same, or nothing once `fate` has no hope left. `m2`: areas, standing and cranking, at the places
    /// of the unknowns that they hang on. `others`: what the change comes to but for this cylinder's
    /// evidence, at most. `exits_first`: they decide, the pressures being about what they were.
    [[nodiscard]] std::optional<double> cylinder_likelihood(std::span<const double> z,
                                                            std::span<const double> m2, const SharedState& at,
                                                            std::size_t cylinder, Fate& fate, double others,
                                                            bool exits_first) const;
    /// As `leaks`, for who has the areas already.
    [[nodiscard]] static Leaks leaks_of(std::span<const double> m2, const State& state);
    /// What a cylinder's evidence is worth at most: the logarithm of its likelihood.
    [[nodiscard]] double most_likely(std::size_t cylinder) const { return most_likely_[cylinder]; }
    /// Share of the rings' leak that oil leaves open.
    [[nodiscard]] double left_open(std::span<const double> z, const State& state, OilSeal seal) const;
    /// A share between nothing and all of it, from its unknown; `slope` by the unknown.
    struct Share {
        double value = 0.0;
        double slope = 0.0;
    };
    [[nodiscard]] Share oil_kept(double z) const;
    [[nodiscard]] Share fresh_oil_leaves(double z) const;
    /// The unknown at which fresh oil leaves this share of the rings' leak; 0 < `share` < 1.
    [[nodiscard]] double z_of_fresh_oil(double share) const;
    [[nodiscard]] CrankSurface::Pair reading(std::span<const double> z, const SharedState& at,
                                             const State& state, const Leaks& leaks,
                                             const CrankEvidence& like) const {
        return reading(z, at, state, leaks, like, level(z, at, state));
    }
    /// What the cranking model reads through the hoses of a reading, no error of a gauge in it yet.
    [[nodiscard]] static CrankSurface::Pair through_hoses(const SharedState& at, const CrankEvidence& like,
                                                          double leak_m2, double oil_m3);
    struct Held {
        double shown_pa = 0.0;
        double noise_pa = 0.0;
    };
    [[nodiscard]] Held held(std::span<const double> z, const SharedState& at, const State& state,
                            const Leaks& leaks, const LeakEvidence& like) const {
        LastLog logarithm;
        return held(z, at, state, leaks, like, logarithm);
    }
    /// Chances of nothing, faint, clear, strong.
    [[nodiscard]] std::array<double, 4> loudness(std::span<const double> z, const SharedState& at,
                                                 const State& state, const Leaks& leaks,
                                                 const ExitEvidence& exit) const;
    [[nodiscard]] bool has_cranking_model() const { return !surfaces_.empty(); }
    /// What a reading of one cylinder scatters by about what its leak gives, as a share of it.
    [[nodiscard]] double cylinder_spread(const CrankEvidence& like) const;
    [[nodiscard]] double crank_noise_pa(double final_pa, const CrankEvidence& like) const;
    [[nodiscard]] double likelihood_held(const Held& predicted, const LeakEvidence& read) const;

private:
    /// The logarithm that was asked for last: air that is measured and heard is mostly the same.
    struct LastLog {
        double of = 1.0, log = 0.0;

        double operator()(double value) {
            if (value != of) {
                of = value;
                log = std::log(value);
            }
            return log;
        }
    };
    /// What a cylinder's readings are of the engine's level.
    [[nodiscard]] double level(std::span<const double> z, const SharedState& at, const State& state) const;
    [[nodiscard]] CrankSurface::Pair reading(std::span<const double> z, const SharedState& at,
                                             const State& state, const Leaks& leaks,
                                             const CrankEvidence& like, double level) const;
    [[nodiscard]] Held held(std::span<const double> z, const SharedState& at, const State& state,
                            const Leaks& leaks, const LeakEvidence& like, LastLog& logarithm) const;
    /// What all exits of a cylinder that were listened to under the same pressure have in common.
    struct Heard {
        HeldCurve::Point point;
        double leak_m2 = 0.0;
        double open = 1.0;        ///< of the rings, left by oil
        double loudest_m2 = 0.0;  ///< the largest path
    };
    [[nodiscard]] Heard heard(std::span<const double> z, const SharedState& at, const State& state,
                              const Leaks& leaks, const ExitEvidence& exit, LastLog& logarithm) const;
    /// Flow in L/min to the power 1/hearing, as it is heard or seen at the exit.
    [[nodiscard]] double odds_heard(const SharedState& at, const State& state, const Leaks& leaks,
                                    const ExitEvidence& exit, const Heard& heard) const;
    /// As `cylinder_likelihood`, of one state.
    struct Most;
    [[nodiscard]] std::optional<double> hopeful_likelihood(std::span<const double> z, const SharedState& at,
                                                           const State& state, const StateReadings& read,
                                                           const Most& most, const Leaks& leaks, Fate& fate,
                                                           double others, bool exits_first) const;
    [[nodiscard]] double state_likelihood(std::span<const double> z, const SharedState& at,
                                          const State& state, const StateReadings& read,
                                          const Leaks& leaks) const;
    struct Thresholds {
        std::array<double, 3> odds{};  ///< flow in L/min to the power 1/hearing
        double slip = 0.0;             ///< chance that a note has nothing to do with the flow
        bool by_ear = true;            ///< masking, cross-talk and the listener's offset apply

        /// Of nothing, faint, clear or strong, where `heard` is the flow to the same power.
        [[nodiscard]] double chance(double heard, std::size_t word) const;
        /// The most that this can be.
        [[nodiscard]] double most(std::size_t word) const;
    };

    /// What a cylinder's readings are worth at most, whatever leaks.
    struct Most {
        double dry = 0.0, wet = 0.0;
        double exits = 0.0;              ///< logarithm
        std::vector<double> exits_left;  ///< product from each exit on; 1 after the last
        double all = 0.0;
    };
    [[nodiscard]] Most most_of(const StateReadings& read) const;
    [[nodiscard]] double most_of(const CrankEvidence& read) const;

    std::size_t add_map(const AreaPrior& prior);
    PathPlace add_path(const AreaPrior& prior);
    void add_earlier(const CylinderEvidence& from, Cylinder& cylinder);
    [[nodiscard]] double likelihood_cranking(const CrankSurface::Pair& predicted, const SharedState& at,
                                             const CrankEvidence& read) const;

    const Evidence& evidence_;
    const Assumptions& assumptions_;
    const std::vector<const CrankSurface*> surfaces_;
    /// Places of what testers of one kind are out by: of the first one among Shared, of the others behind.
    struct ErrorPlaces {
        std::size_t first = 0, each = 0, further = 0;
        [[nodiscard]] std::size_t of(std::size_t tester) const {
            return tester == 0 ? first : further + each * (tester - 1);
        }
        [[nodiscard]] std::size_t end(std::size_t testers) const {
            return further + each * (std::max<std::size_t>(testers, 1) - 1);
        }
    };
    ErrorPlaces gauge_errors_, leak_errors_;
    std::size_t size_ = shared_count;
    std::size_t shared_end_ = shared_count;
    std::vector<Cylinder> cylinders_;
    std::vector<PathPlace> joints_;
    std::vector<AreaPrior> priors_;
    std::vector<AreaMap> maps_;
    std::vector<HeldCurve> curves_;
    std::vector<std::vector<Most>> most_;  ///< of each cylinder's states, the newest first
    std::vector<double> most_likely_;
    std::array<Thresholds, 5> thresholds_{};  ///< by ListenedBy

    // Numbers of the assumptions, looked up once.
    double static_to_cranking_, level_doubt_, cylinder_doubt_, scatter_, first_scatter_, surface_error_,
        first_spread_, leak_repeat_, listener_, hearing_, cross_talk_, masking_, masking_from_;
    double kept_mean_, kept_spread_, seals_mean_, seals_spread_;
    double sound_leak_m2_ = 0.0;  ///< of a cylinder with nothing at fault
};

}  // namespace lapwing::odds

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <cstddef>
#include <optional>
#include <utility>
#include <vector>

#include "core/findings/message.h"
#include "core/findings/reference.h"
#include "core/model/visit.h"
#include "core/odds/assumptions.h"
#include "core/odds/crank_surface.h"

/// What a visit's readings offer as evidence: plain numbers, SI, one list a cylinder.
namespace lapwing::odds {

/// How well oil seals the rings in a reading, as an exponent on the share that fresh oil leaves open.
using OilSeal = double;

/// One cranking reading, the mean of its repeats. Gauge pressures.
struct CrankEvidence {
    double final_pa = 0.0;
    double noise_pa = 0.0;   ///< local error and resolution, standard uncertainty
    double offset_pa = 0.0;  ///< standard uncertainty of what all readings of the gauge share
    double gain = 0.0;       ///< and of what grows with the reading, as a share of it
    std::size_t gauge = 0;   ///< which of Evidence::gauges
    std::size_t hose = 0;    ///< place in Evidence::hoses
    /// Repeats among them that were read through another hose, and their share.
    std::vector<std::pair<std::size_t, double>> other_hoses;
    double apart_pa = 0.0;  ///< of the mean: repeats further apart than usual, other gauges among them
    int repeats = 1;
    std::optional<double> first_pa;
    double oil_put_in_m3 = 0.0;
    OilSeal seal = 0.0;
};

/// One leak-down reading, the mean of its repeats. Gauge pressures.
struct LeakEvidence {
    double set_pa = 0.0;
    double held_pa = 0.0;
    double noise_pa = 0.0;      ///< of held: local error and resolution
    double half_step_pa = 0.0;  ///< a held pressure this close to set may as well be it
    double offset_pa = 0.0;
    double gain = 0.0;        ///< of the held gauge, where set stands on another
    double set_spread = 0.0;  ///< droop unseen, or the supply gauge's own doubt, as a share
    bool one_gauge = true;
    int repeats = 1;
    OilSeal seal = 0.0;
    std::size_t curve = 0;  ///< place in Evidence::curves
};

/// Where the air that is heard at an exit comes from.
struct Source {
    bool joint = false;  ///< then `place` counts Evidence::joints, else the cylinder's own paths
    std::size_t place = 0;
    double share = 1.0;
};

struct ExitEvidence {
    Exit exit = Exit::intake;
    std::optional<int> neighbour;
    Loudness loudness = Loudness::nothing;
    ListenedBy by = ListenedBy::ear;
    std::vector<Source> sources;
    OilSeal seal = 0.0;
    std::size_t curve = 0;
};

/// What is not known of a leak-down tester, beside the errors of its gauges.
struct LeakTester {
    double restrictor_doubt = 0.0;  ///< of its effective area: standard deviation of its logarithm
    /// One that failed its check: of the air that it let through, likewise. Then nothing that it read counts.
    double air_doubt = 0.0;
};

/// Tester, supply and ambient: what a held pressure means.
struct LeakCurve {
    double set_pa = 0.0;  ///< gauge
    double ambient_pa = 0.0;
    double restrictor_m2 = 0.0;  ///< effective
    std::size_t tester = 0;      ///< place in Evidence::leak_testers

    bool operator==(const LeakCurve&) const = default;
};

/// What one state of a cylinder was tested by.
struct StateReadings {
    Tag tag = Tag::as_found;
    std::vector<double> fault_odds;  ///< what clearances say: factor on the odds of each path
    std::optional<CrankEvidence> dry;
    std::optional<CrankEvidence> wet;
    std::vector<LeakEvidence> leaks;
    std::vector<ExitEvidence> exits;

    [[nodiscard]] bool empty() const { return !dry && !wet && leaks.empty() && exits.empty(); }
};

/// A state before something was done to the cylinder. What was done made the parts that it touched new ones,
/// of which this tells nothing; the others are what they were.
struct EarlierState : StateReadings {
    std::vector<bool> same;  ///< by path: still the same part in the state after this one
};

/// A cylinder in its newest state, with what earlier ones tell of it.
struct CylinderEvidence : StateReadings {
    int number = 1;
    std::vector<findings::Path> paths;  ///< its own; joints to neighbours stand apart
    std::vector<std::size_t> joints;    ///< places in Evidence::joints
    std::vector<EarlierState> earlier;  ///< newest first
    std::vector<ExitEvidence> to_hear;  ///< exits that nobody listened at yet
    bool left_out = false;              ///< some of its readings: their tester failed its check
    bool wrong_tdc_suspected = false;   ///< then its leak-down and exits are left out
    /// The valve that was put right after all that was read and heard: nothing was measured in this state.
    std::optional<findings::Path> put_right;
    std::vector<findings::Message> contradictions;
    std::vector<findings::Message> reasons;  ///< what was left out, and why
};

/// How a sound cylinder reads, from the engine's card or an earlier visit.
struct LevelEvidence {
    double final_pa = 0.0;
    double spread = 0.0;  ///< as a share
};

struct Evidence {
    std::vector<CylinderEvidence> cylinders;
    std::vector<std::pair<std::size_t, std::size_t>> joints;  ///< places of the cylinders at each
    std::vector<LeakCurve> curves;
    std::vector<LeakTester> leak_testers;  ///< each has errors of its own
    std::optional<SurfaceRange> cranking;  ///< absent where no cranking reading may be used
    bool compare_only = false;             ///< the level of cranking readings says nothing
    std::size_t gauges = 1;                ///< that cranking readings are from; each has errors of its own
    /// Adapters, hoses and check valves that cranking readings were taken through; the first is that of
    /// `cranking`.
    std::vector<physics::CompressionTester> hoses;
    std::vector<LevelEvidence> levels;
    double bore_m = 0.075;
    /// Scales and noises of readings that were not taken yet, for what a next test would tell.
    CrankEvidence crank_like;
    LeakEvidence leak_like;
    std::vector<findings::Message> reasons;  ///< for the engine as a whole

    [[nodiscard]] bool empty() const;
    /// Of the cranking model, one a hose.
    [[nodiscard]] std::vector<SurfaceRange> surfaces() const;
};

/// `tag`: only readings that carry it; absent: of each cylinder its newest state, and of earlier ones what
/// they tell of the parts that were not touched since (states.h).
Evidence evidence_of(const Dossier& dossier, const Visit& visit, const findings::Reference& reference,
                     const Assumptions& assumptions, std::optional<Tag> tag);

}  // namespace lapwing::odds

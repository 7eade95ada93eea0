// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <array>
#include <cstdint>
#include <map>
#include <optional>
#include <random>
#include <string>
#include <vector>

#include "core/findings/reference.h"
#include "core/model/visit.h"
#include "core/odds/assumptions.h"
#include "core/physics/cranking.h"

/// Drawn engines: leaks, readings and notes as the working assumptions have them, or as a world has them that
/// the assumptions do not know. Own code, apart from core/odds: it draws from the same data file and runs the
/// cranking model itself, no surface and no likelihood.
namespace lapwing::odds::trial {

/// How a world differs from the assumptions. None of it is told to the odds.
struct World {
    std::string name = "as assumed";
    std::map<std::string, double> change;               ///< numbers of odds.json that are otherwise, SI
    double leaks = 1.0;                                 ///< all leak areas times this
    std::optional<std::pair<double, double>> oil_kept;  ///< evenly between the two
    double notes_a_step_off = 0.0;                      ///< chance of each
    double gauge_shows = 1.0;                           ///< of what it should
    double ratio_is = 1.0;                              ///< of what the card says
    bool laminar_rings = false;                         ///< ring gaps pass more the higher the pressure
    bool listened = true;
};

/// Which tests are made. Anything may be left out.
struct Tests {
    bool dry = true;
    bool first_puff = true;
    bool leak_down = true;
    bool wet = true;
    bool exits = true;
    bool staked = false;  ///< then both valves are struck and air goes on again; not after oil
};

struct TrueCylinder {
    std::vector<findings::Path> paths;  ///< own, then next_cylinder
    std::vector<double> area_m2;
    std::vector<double> cranking_share;  ///< while cranking, of the area standing
    double level = 1.0, oil_kept = 0.0, oil_leaves_open = 1.0;
    double leakage = 0.0;  ///< as read, if it was

    [[nodiscard]] double total_m2() const;
    [[nodiscard]] std::size_t largest() const;
};

struct Drawn {
    Dossier dossier;
    std::vector<TrueCylinder> cylinders;
    /// What the gauge would show after this path was put right; another day, the same gauge.
    std::vector<std::vector<double>> after_repair_pa;  ///< by cylinder, by place of the own path
};

/// A water-cooled in-line engine of two or six cylinders with a full card and class 1.6 gauges. The same seed
/// draws the same engine.
Drawn draw(const Assumptions& assumptions, const findings::Reference& reference, const World& world,
           const Tests& tests, std::uint64_t seed, int cylinders = 2);

/// What rules of thumb make of it: place of the path in TrueCylinder::paths, or their number: seals well.
struct RuleOutcome {
    std::size_t loudest = 0;
    std::string loudest_seen;  ///< what the rule goes by, for a table of its hits
    std::string wet_seen;
};
RuleOutcome rules_of_thumb(const Drawn& drawn, std::size_t cylinder);

}  // namespace lapwing::odds::trial

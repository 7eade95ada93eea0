// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <cstdint>
#include <optional>
#include <stop_token>
#include <string>
#include <vector>

#include "core/base/result.h"
#include "core/findings/findings.h"
#include "core/model/visit.h"
#include "core/odds/assumptions.h"

/// Where it leaks: all evidence of a visit together, with honest doubt.
///
/// The leak area of every path of every cylinder, of the joints between neighbours, and what is not known of
/// engine, testers and listener are taken as one joint distribution (assets/reference/odds.json), which the
/// readings narrow by Bayes' rule. Areas are effective areas as in core/physics. Everything here holds under
/// working assumptions that were not yet counted on real engines, and is to be shown as such (`shown`).
namespace lapwing::odds {

class SurfaceCache;  // core/odds/surface_cache.h

/// Mean and 90 % interval.
struct Interval {
    double mean = 0.0;
    double lo = 0.0;
    double hi = 0.0;
};

/// One way out of a cylinder. `next_cylinder` is all its joints to neighbours together.
struct PathOdds {
    findings::Path path = findings::Path::rings;
    Interval share;      ///< of the cylinder's leak, 0 to 1; means add up to 1
    double main = 0.0;   ///< chance that it is the largest path of a cylinder that does not seal well
    double fault = 0.0;  ///< chance that something is wrong with it, however small its share
};

/// Dry reading to expect after one repair, everything else left as it is. Gauge pressure, Pa, on the same
/// gauge in the same shop; `value` is the middle of the chances.
struct AfterRepair {
    findings::Path repair = findings::Path::rings;  ///< gasket: every joint of the head
    double value_pa = 0.0;
    double lo_pa = 0.0;
    double hi_pa = 0.0;
    bool comparable_at_once = true;            ///< a fresh hone must run in first
    Interval part_m2;                          ///< effective leak area of the part as it is, standing still
    Interval sound_m2;                         ///< and as it is when sound
    double rest_m2 = 0.0;                      ///< of everything else, mean
    double now_pa = 0.0;                       ///< what the cylinder reads as it is, mean
    std::vector<findings::DoubtShare> doubts;  ///< what makes the range as wide as it is, the largest first
};

/// What the odds would say under another set of assumptions.
struct UnderOther {
    std::string id;                      ///< in odds.json, "other_assumptions"
    std::string text;                    ///< English
    std::optional<findings::Path> main;  ///< absent: seals well
    double chance = 0.0;
    double effective_samples = 0.0;  ///< that are left of the draws, weighed anew
};

struct CylinderOdds {
    int number = 1;
    bool measured = false;  ///< false: nothing but the assumptions stands behind the numbers
    std::vector<PathOdds> paths;
    double seals_well = 0.0;             ///< with the `main` of all paths it adds up to 1
    Interval leak_area_m2;               ///< effective, standing still
    std::optional<findings::Path> main;  ///< the likeliest outcome; absent: seals well
    double main_chance = 0.0;
    std::vector<UnderOther> under_others;
    bool depends_on_assumptions = false;  ///< the likeliest outcome is another one under one of them
    std::vector<AfterRepair> expected_after;
    std::vector<findings::Message> contradictions;  ///< codes.h; what they name was left out
    std::vector<findings::Message> reasons;         ///< codes.h
    double effective_samples = 0.0;                 ///< of the worst known share or chance
    /// Not to be shown as a verdict: too few effective samples (here or under the others), a contradiction,
    /// a question to be answered first (wrong TDC), or nothing that tells how much leaks. Then nothing that
    /// rests on shares and chances is said either.
    bool unsure = false;

    [[nodiscard]] const PathOdds* path(findings::Path wanted) const;
};

struct NextTest {
    /// Dry, leak-down (listening comes with it), listen (where the air was on already) or wet.
    findings::Action test = findings::Action::dry;
    int cylinder = 1;
    double gain_bits = 0.0;  ///< what it is expected to tell about the main path, in bits
};

struct WhereItLeaks {
    std::vector<CylinderOdds> cylinders;  ///< by number
    std::vector<NextTest> next_tests;     ///< most telling first
    std::vector<findings::Message> reasons;
    std::optional<findings::Message> seals_means;  ///< what "seals well" stands for in the odds
    int assumptions_version = 0;
    std::uint64_t seed = 0;
    double least_effective_samples = 0.0;
    int draws = 0;

    [[nodiscard]] const CylinderOdds* cylinder(int number) const;
};

struct OddsOptions {
    std::uint64_t seed = 0;
    std::optional<Tag> tag;                    ///< as findings::FindingsOptions
    std::stop_token cancel;                    ///< looked at every millisecond or so
    const Assumptions* assumptions = nullptr;  ///< null: the built-in ones
    SurfaceCache* surfaces = nullptr;          ///< saves the fitting where the engine is the same
};

/// The same dossier, visit and seed give the same odds. Takes up to a second or so: not for the thread that
/// draws. Fails with "odds.cancelled", "odds.malformed" (the working assumptions), and as the cranking model
/// does where the engine's card describes an engine that cannot be.
Result<WhereItLeaks> where_it_leaks(const Dossier& dossier, const Visit& visit,
                                    const findings::Reference& reference, const OddsOptions& options = {});

/// A chance as it may be shown until real engines have counted it: rounded to 5 %, never above 95 % nor, once
/// something is possible at all, below 5 %. In per cent.
int shown_percent(double chance);

}  // namespace lapwing::odds

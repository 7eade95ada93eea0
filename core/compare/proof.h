// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <optional>
#include <span>
#include <vector>

#include "core/compare/compare.h"

/// Plan to proof: what a ticked line of a plan foretold, and what was read after it.
namespace lapwing::compare {

enum class Outcome {
    held,            ///< the reading lies within what was foretold
    below,           ///< it is worse
    above,           ///< it is better
    not_measured,    ///< no dry reading since
    not_comparable,  ///< oil on the rings, say
    several,         ///< other lines were ticked for the same cylinder: no single one is proved
};

struct Proof {
    PlanLineId line;
    SessionId foretold_in;
    std::optional<SessionId> read_in;  ///< the first visit with a dry test since; absent: none yet
    int cylinder = 1;
    Timestamp done_at;
    findings::Figure low;  ///< foretold, gauge_pressure
    findings::Figure high;
    std::optional<findings::Figure> reading;  ///< in the terms of the visit that foretold it
    Outcome outcome = Outcome::not_measured;
    findings::Message says;
    std::optional<findings::Message> converted;  ///< what it read as measured, where that was another figure
    /// The reading before the work lay within what was foretold already: this would have held without any
    /// repair, and is left out of the rate however it came out (leaving out hits only would bend the rate).
    bool held_anyway = false;
    std::optional<findings::Message> why_apart;  ///< says so, where it was held against a reading
};

/// Of every line of the dossier that is done, not "leave it", names a cylinder and foretells a reading. In
/// the order of their visits.
std::vector<Proof> proofs_of(const Dossier& dossier, const findings::Reference& reference);

/// What a proof says, one sentence after the other.
std::vector<findings::Message> said_of(const Proof& proof);

/// Those that belong beside two visits held against each other: of work done since the earlier one was
/// opened, and read at the later one first, or not read by then nor since.
std::vector<Proof> proofs_between(std::span<const Proof> proofs, const Visit& before, const Visit& after);

/// How many of the predictions that could be held against a reading held; of those only that the reading
/// before the work would not have met.
struct HitRate {
    int counted = 0;
    int held = 0;
    int apart = 0;        ///< left out: would have held without any repair
    bool enough = false;  ///< as many as the reference data ask for ("repairs-to-count")
    double low = 0.0;     ///< 95 % interval of the share (Wilson's score interval); only where enough
    double high = 0.0;
    findings::Message says;
    std::optional<findings::Message> says_apart;  ///< where any were left out
};

/// Over the proofs of any number of engines.
HitRate hit_rate(std::span<const Proof> proofs, const findings::Reference& reference);

}  // namespace lapwing::compare

namespace lapwing {
LAPWING_WORDS(compare::Outcome, "held", "below", "above", "not measured", "not comparable",
              "several repairs");
}  // namespace lapwing

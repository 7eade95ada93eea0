// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/findings/case.h"
#include "core/findings/crank_way.h"

/// The way of a dry or wet reading from one visit to another, for all who compare visits: before and after,
/// history, and the odds, which learn from earlier visits.
namespace lapwing::findings {

/// What one circumstance makes of a reading.
struct WayStep {
    double by = 1.0;         ///< the factor on the reading
    bool converted = false;  ///< `by` was worked out
    double doubt = 0.0;      ///< of `by`, standard, as a share of the reading; with the correction's sign
    double allowed = 0.0;    ///< standard, as a share: what nobody can work out
    bool noted = true;       ///< at both visits; otherwise the step is the best guess
    bool prevents = false;   ///< there is no way
};

/// One end of the way: a visit and its newest reading that is at stake.
struct WayEnd {
    const Case& at;
    const Reading* newest = nullptr;  ///< null: none was taken
    const Tester* tester = nullptr;   ///< null: not known
    ModelInputs inputs;
};

/// Circumstance by circumstance, in this order: the model's steps start where the one before ended.
class VisitWay {
public:
    VisitWay(const WayEnd& from, const WayEnd& to, ModelRuns& runs);

    [[nodiscard]] WayStep air_pressure() const;
    /// Gauge, hose, check valve and adapter.
    WayStep tester();
    /// Where it is not noted at one end or both: half of what cold walls cost, give or take half.
    WayStep heat();
    [[nodiscard]] WayStep throttle() const;
    [[nodiscard]] WayStep induction() const;
    WayStep speed();
    /// How it was turned and the battery, where a speed is not noted.
    [[nodiscard]] WayStep turning() const;
    WayStep pulls();

private:
    [[nodiscard]] const Conditions& then() const { return from_.at.visit.session.conditions; }
    [[nodiscard]] const Conditions& now() const { return to_.at.visit.session.conditions; }
    [[nodiscard]] WayStep converted(const std::optional<double>& by) const;
    [[nodiscard]] bool timed() const { return then().cranking_speed && now().cranking_speed; }

    const WayEnd& from_;
    const WayEnd& to_;
    const Reference& reference_;
    CrankWay model_;
};

/// What cold walls may have cost a reading of these inputs: nothing where it was noted whether the engine was
/// cold.
WayStep maybe_cold(const ModelInputs& inputs);

}  // namespace lapwing::findings

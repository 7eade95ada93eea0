// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/compare/compare.h"
#include "core/findings/case.h"
#include "core/findings/crank_way.h"
#include "core/physics/leakdown.h"
#include "core/uncertainty/doubtful.h"

/// Readings with what they are doubtful by, and the way from one visit's terms to another's. Internal to this
/// room.
namespace lapwing::compare {

using findings::Case;
using uncertainty::Doubtful;

/// One test of one cylinder at one visit: the mean of its repeats.
struct Measured {
    const Case* at = nullptr;
    TestKind test = TestKind::dry;
    int cylinder = 1;
    std::vector<const Reading*> readings;  ///< never empty
    const Tester* tester = nullptr;        ///< null: not known
    std::string tester_key;                ///< names the sources of error that its readings share
    Doubtful value;                        ///< gauge Pa, or leakage as a share; crankcase: at the end
    findings::Figure shown;
    // Leak-down
    physics::TesterPneumatics pneumatics;
    double held_pa = 0.0;
    /// Crankcase. No time where none was noted.
    std::optional<double> hold_s;
    double set_pa = 0.0;

    [[nodiscard]] const Session& session() const { return at->visit.session; }
    [[nodiscard]] const Reading& newest() const { return *readings.back(); }
    [[nodiscard]] bool leak_down() const { return test == TestKind::leak_down; }
    [[nodiscard]] bool cranking() const { return test == TestKind::dry || test == TestKind::wet; }
};

/// Nothing of an engine's several chambers that were held as one. `set_like_pa`: of leak-down readings at
/// several set pressures those at this one are taken, if there are any.
std::optional<Measured> measured(const Case& at, TestKind test, int cylinder,
                                 std::optional<double> set_like_pa = {});

/// A value in other terms, and what was done on the way.
struct Crossed {
    Doubtful value;
    bool converted = false;
    std::vector<Reason> reasons;  ///< tests and cylinders filled in

    [[nodiscard]] bool prevented() const;
};

/// `from` as `to`'s tester would have shown it under the circumstances of `to`.
Crossed in_terms_of(const Measured& from, const Measured& to, findings::ModelRuns& runs);

// One for each kind of test.
void cross_cranking(const Measured& from, const Measured& to, findings::ModelRuns& runs, Crossed& out);
void cross_leak_down(const Measured& from, const Measured& to, Crossed& out);
void cross_hold(const Measured& from, const Measured& to, Crossed& out);

/// Adds a reason for this cylinder and test.
template <class... Args>
void say_why(Crossed& out, const Measured& of, Treatment treatment, std::string_view code, Args&&... args) {
    out.reasons.push_back(
        {treatment, findings::say(code, std::forward<Args>(args)...), {of.test}, {of.cylinder}});
}

/// `after` less `before`, judged. The sign that is better depends on the test.
Change judged(TestKind test, const Doubtful& before, const Doubtful& after, bool comparable,
              const findings::Reference& reference);

}  // namespace lapwing::compare

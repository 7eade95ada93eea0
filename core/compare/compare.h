// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <array>
#include <optional>
#include <vector>

#include "core/findings/findings.h"
#include "core/model/visit.h"

/// Before and after: two visits to one engine, cylinder by cylinder and test by test. The earlier readings
/// are put into the later visit's terms (its testers, air pressure, cranking) as far as that can be done;
/// what was done, what the doubt was widened for and what stands in the way is said.
namespace lapwing::compare {

enum class Verdict { not_measured, better_beyond_doubt, better, no_real_change, worse, not_comparable };

/// What became of a circumstance that was not the same twice.
enum class Treatment {
    corrected,  ///< the earlier readings were converted
    allowed,    ///< the doubt is wider for it
    not_noted,  ///< taken as alike
    prevents,   ///< not comparable
};

struct Reason {
    Treatment treatment = Treatment::corrected;
    findings::Message message;         ///< codes.h
    std::vector<TestKind> tests;       ///< that it speaks of
    findings::CylinderList cylinders;  ///< that it speaks of
};

/// The tests that are compared, in the order in which they are shown.
inline constexpr std::array compared_tests{TestKind::dry, TestKind::leak_down, TestKind::wet,
                                           TestKind::crankcase};

/// One test of one cylinder in one visit. dry, wet and crankcase (what was left at the end of the hold):
/// gauge_pressure; leak-down: share.
struct Measure {
    findings::Figure as_measured;  ///< by its own tester
    findings::Figure compared;     ///< in the later visit's terms
    bool converted = false;
    int repeats = 1;
    Tag tag = Tag::as_found;
    std::optional<findings::Figure>
        leak_area;  ///< leak-down; absent where it is larger than the tester tells
};

struct Change {
    std::optional<Measure> before;
    std::optional<Measure> after;
    /// After less before, with what does not cancel; pressure_difference or share. Absent unless both are
    /// there.
    std::optional<findings::Derived> difference;
    double u = 0.0;  ///< standard uncertainty of the difference, SI
    Verdict verdict = Verdict::not_measured;
    bool beyond_doubt = false;  ///< also of a worse one
};

/// Absent: the test was done at neither visit.
struct CylinderChange {
    int number = 1;
    std::optional<Change> dry;
    std::optional<Change> wet;
    std::optional<Change> leak_down;
    std::optional<Change> crankcase;  ///< of its own chamber

    [[nodiscard]] const Change* of(TestKind test) const;
};

struct Comparison {
    std::vector<CylinderChange> cylinders;  ///< by number
    std::vector<Reason> reasons;            ///< what prevents first

    /// Nothing stands in the way of any cylinder's tests.
    [[nodiscard]] bool comparable() const;
};

/// A visit, and whether only its readings of one tag are meant ("as found" against "after clearance
/// adjustment" of the same visit); absent: of each cylinder and test the newest tag's.
struct Side {
    const Visit* visit = nullptr;
    std::optional<Tag> tag;
};

/// Pure. The visits are of the dossier's engine, their testers in the dossier.
Comparison compare(const Dossier& dossier, const Side& before, const Side& after,
                   const findings::Reference& reference);

}  // namespace lapwing::compare

namespace lapwing {
LAPWING_WORDS(compare::Verdict, "not measured", "better beyond doubt", "better", "no real change", "worse",
              "not comparable");
LAPWING_WORDS(compare::Treatment, "corrected", "allowed for", "not noted", "not comparable");
}  // namespace lapwing

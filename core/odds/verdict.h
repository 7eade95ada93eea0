// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <string_view>
#include <vector>

#include "core/odds/assumptions.h"
#include "core/odds/where_it_leaks.h"

/// What a person is told of the odds, as codes (codes.h): chances are rounded as `shown_percent` has it.
namespace lapwing::odds {

/// Whether a message of this code is among them.
bool says(const std::vector<findings::Message>& messages, std::string_view code);

/// Whether there are shares and chances to show: something was measured, and no contradiction, question or
/// want of samples stands before a verdict.
bool has_verdict(const CylinderOdds& cylinder);

/// The one plain sentence. Where a cylinder that may leak was not listened to it says that, and no odds. Of a
/// valve whose clearance is not recorded it asks for that; where no outcome is likely enough (named-from in
/// assets/reference/assumptions.json) it names the two likeliest; without a verdict it says why there is
/// none.
findings::Message headline_of(const CylinderOdds& cylinder, const findings::Reference& reference);

/// The same without a percentage, for who reads the report and not the odds. A share of the leak beside the
/// odds of there being one would be two figures that seem to contradict each other. It has the likeliest
/// answer even where nobody listened: `turned_by` says that then.
findings::Message in_words(const CylinderOdds& cylinder, const findings::Reference& reference);
/// What most of all may turn the sentence of `in_words` round, in one short sentence that names no cylinder:
/// that nobody listened or no air was put on, that a rule of thumb (`points_at`) or other assumptions have
/// another answer that it does not name. Nothing where there is no such thing.
std::optional<findings::Message> turned_by(const CylinderOdds& cylinder,
                                           const std::optional<findings::Path>& points_at,
                                           const findings::Reference& reference);
/// Whether `in_words` or `turned_by` has said the same, in the words of the odds.
bool said_in_words(const findings::Message& reason);
/// "likely:very", "likely:likely", "likely:more" or "likely:even" (assets/reference/assumptions.json:
/// likely-very, likely, likely-more).
findings::Word likelihood_word(double chance, const findings::Reference& reference);

/// What the odds come to if the plain sentence does not say it; then contradictions and reasons, but for what
/// that says already.
std::vector<findings::Message> said_beside(const CylinderOdds& cylinder,
                                           const findings::Reference& reference);

/// What "seals well" stands for: a leakage on one tester, whatever the bands of others call good.
findings::Message seals_means(const Assumptions& assumptions);

/// Why the odds and the rules of thumb name different paths; nothing where they agree, where no rule names a
/// path, or without a verdict.
std::optional<findings::Message> beside_rules(const findings::CylinderFindings& rules,
                                              const CylinderOdds& cylinder);

/// What a test is expected to tell, in words; nothing for one that hardly tells anything
/// (assets/reference/assumptions.json: tells-much, tells-some, tells-little, in bits).
std::optional<findings::Message> worth_of(const NextTest& test, const findings::Reference& reference);

/// The tests that would settle something, the most telling first: of the cylinders that are suspected or not
/// measured, where there are any. What a healthy cylinder might still tell decides nothing about a leaking
/// one, however many bits it has; what likely seals
/// well (assets/reference/assumptions.json: likely) is settled.
std::vector<NextTest> settling_tests(const WhereItLeaks& leaks, const findings::Reference& reference);

/// The rules' next steps. Where they begin with a test of one cylinder, and a test of another cylinder in the
/// same state or one that spares it the oil would tell more, that comes first. Where they have none, a test
/// that would settle something; and where somebody listened and read nothing, the leak-down to read. Where
/// only the odds find that readings don't fit together, the one that fits worst is taken again before
/// anything but checks of testers.
std::vector<findings::NextStep> steps_by_worth(const findings::Findings& rules, const WhereItLeaks& leaks,
                                               const findings::Reference& reference);

/// Whether what a repair of this path should bring is worth saying: it may well be at fault
/// (assets/reference/assumptions.json: repair-from).
bool worth_repairing(const PathOdds& path, const findings::Reference& reference);
/// The reading to expect after a repair that is worth saying; null where there is none. The coolant side
/// comes with the gasket.
const AfterRepair* expected_after(const CylinderOdds& cylinder, const PathOdds& path,
                                  const findings::Reference& reference);
/// Paths by their share, the largest first.
std::vector<const PathOdds*> by_share(const CylinderOdds& cylinder);

/// The interval to show beside a share: widened to the mean where a rare large fault draws that out of it.
Interval shown_interval(const Interval& share);
/// How much of a share's part of the bar is filled: what nine cases of ten have at the least. The rest of it
/// stays open, so that a share of which little is known does not look like a sure one.
double drawn_share(const Interval& share);
/// A chance as a figure for a sentence, rounded by `shown_percent`.
findings::Figure shown_chance(double chance);
/// A share in whole per cent: more digits than that say nothing.
findings::Figure shown_share(double share);

/// The word for an outcome in a sentence: a path, or "outcome:seals_well".
findings::Word outcome_word(std::optional<findings::Path> path);
/// A path's name in a list, without an article: "leak:rings".
findings::Word name_of(findings::Path path);

}  // namespace lapwing::odds

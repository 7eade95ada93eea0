// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/findings/case.h"

/// Readings of one cylinder that can't all be right, whatever leaks: one of them is a slip, of the hand, the
/// hose or the crank. They are named before any verdict, and the odds leave the same ones out.
namespace lapwing::findings {

enum class Misfit {
    held_nothing,      ///< the leak-down held nothing at all
    built_nothing,     ///< the dry test built up nothing, and the leak-down held air
    wet_below_dry,     ///< oil can't lower a reading
    wet_far_above,     ///< nor double it, where there was something to double
    loud_but_tight,    ///< hardly anything is lost, and it is heard strongly at several exits
    silent_but_leaks,  ///< much is lost, and nothing is heard at any large exit
    dry_apart,         ///< repeats of the dry test are wildly apart
    held_apart,        ///< repeats of the leak-down are
};

/// The test to be done again.
TestKind again(Misfit misfit);

/// The cylinder's tests and nothing else of its findings: of one tag where the case asks for one.
CylinderFindings tested(const Case& at, int cylinder);

/// A reading that can't be told from a needle at rest, or is next to nothing beside what the engine reads.
bool builds_nothing(const Case& at, const Cranking& dry);

/// Looks at dry, leak-down, wet and exits alone; at most one for the air and one for the oil.
std::vector<Misfit> misfits_of(const Case& at, const CylinderFindings& cylinder);

/// Whether the leak-down may have been done at the wrong TDC: it held very little, and either air came out at
/// intake and exhaust; or the dry test says that the cylinder seals far better; or it was done once only, and
/// nobody listened closely enough to know that the valves were shut.
bool tdc_in_question(const Case& at, const CylinderFindings& cylinder);

}  // namespace lapwing::findings

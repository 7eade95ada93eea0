// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/findings/case.h"
#include "core/odds/evidence.h"

namespace lapwing::odds {

/// Names evidence of one cylinder that cannot all be right and takes it out, so that no confident share is
/// built on it; likewise what a suspected wrong TDC makes worthless.
void sort_out_contradictions(const findings::Case& state, CylinderEvidence& cylinder);

}  // namespace lapwing::odds

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/workflow/command.h"

namespace lapwing::workflow {

/// Keeps one valve's clearance ("clearance.keep"; args: cylinder, side). Measuring the same valve again
/// replaces the entry that stood until then; both are kept.
Intent keep_clearance(const Clearance& clearance);

/// Takes an entry out, undo apart ("clearance.remove"). Refused while a later one replaces it.
Intent remove_clearance(ClearanceId id);

}  // namespace lapwing::workflow

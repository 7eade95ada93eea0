// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/findings/findings.h"

namespace lapwing::findings {

/// A decompressor was at work while cranking: its readings are held against no limit, so none is drawn beside
/// them.
bool held_against_no_limit(const Findings& findings);

}  // namespace lapwing::findings

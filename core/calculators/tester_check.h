// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <optional>

#include "core/findings/derivation.h"
#include "core/findings/reference.h"
#include "core/model/tester.h"

namespace lapwing::calculators {

/// What the figures of a self-check come to, in one sentence with its derivation, and whether they pass. The
/// person who did the check has the last word.
struct CheckSays {
    findings::Remark remark;
    bool passes = true;
};

/// Nothing while figures are missing, for a check that has none, and where they can't be worked with.
std::optional<CheckSays> check_says(const Tester& tester, const TesterCheck& check,
                                    const findings::Reference& reference);

}  // namespace lapwing::calculators

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <optional>

#include "core/findings/reference.h"
#include "core/model/tester.h"

/// What the checks of a tester say of a reading, by when they were made. One that it failed counts where it
/// is the last before the reading, or the last within a day after it: the tester may have broken meanwhile.
/// What a tester passed or failed long after says nothing of the reading.
namespace lapwing::findings {

/// Whether a check of this kind speaks against what was read then.
bool speaks_against(const Tester& tester, TesterCheckKind kind, Timestamp read_at,
                    const Reference& reference);

/// The kind of a check that does. A needle off zero of which it is known how far is no reason for doubt: that
/// is reckoned with.
std::optional<TesterCheckKind> fails_at(const Tester& tester, Timestamp read_at, const Reference& reference);

/// Whether any check of this kind, passed or failed, speaks of what was read then.
bool is_checked(const Tester& tester, TesterCheckKind kind, Timestamp read_at, const Reference& reference);

}  // namespace lapwing::findings

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/findings/case.h"

namespace lapwing::findings {

/// Dry or leak-down readings of the tag that counts that were taken over oiled rings, where the cylinder was
/// read before the oil too. Oil helps rings to seal: a mean of both would be neither state, so they are not
/// `counted`. Oldest first.
std::vector<const Reading*> after_oil(const Case& at, TestKind test, int cylinder);

}  // namespace lapwing::findings

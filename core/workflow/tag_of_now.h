// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/workflow/needs.h"

namespace lapwing::workflow {

/// Work on the cylinder that the plan of that visit has ticked from then on, before `until_ms`.
bool worked_on(const Visit& visit, int cylinder, std::int64_t since_ms, std::int64_t until_ms);

/// What came just before that which is read or heard at this cylinder now: what its clearances tell, or work
/// that was ticked in a plan after the session before this one was begun and before this one was: what is
/// ticked later does not split a session.
Result<Tag> tag_of_now(const Now& now, const Visit& visit, int cylinder);

}  // namespace lapwing::workflow

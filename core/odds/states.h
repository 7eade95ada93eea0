// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <cstdint>
#include <vector>

#include "core/findings/reference.h"
#include "core/model/visit.h"

/// What was done to a cylinder between its readings, and which of its parts that touched. Internal to this
/// room.
namespace lapwing::odds {

/// A state that a cylinder was tested in: all that carries one tag.
struct TestedState {
    Tag tag = Tag::as_found;
    std::int64_t newest_ms = 0;
};
/// Newest first.
std::vector<TestedState> states_of(const Visit& visit, int cylinder);

/// Nothing that was known before stands for what is there now: a repair, or tags out of order.
bool anything_changes(Tag done);

/// The visit with clearances as they were found.
Visit before_adjustment(Visit visit);

}  // namespace lapwing::odds

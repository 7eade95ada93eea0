// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/findings/case.h"

/// What was done to a cylinder between its readings. "As found" is kept apart from what was read and heard
/// after an adjustment, staking, an oil soak or running: the parts that were touched are new ones.
namespace lapwing::findings {

/// Whether what a tag says was done made another part of this one. Joints between neighbours are touched by
/// none of what leaves anything as it was.
bool touches(Tag done, Path path, const Visit& visit, int cylinder);

/// What is read or heard now and called as found: after a clearance of that cylinder was changed it is not.
Tag tag_now(const Visit& visit, int cylinder);

/// Whether a valve of that side had too little clearance and was put right after what carries this tag and
/// was recorded at this moment. As found is always before: who tested after it says so.
bool put_right_since(const Case& at, int cylinder, ValveSide side, Tag tag, Timestamp when);
bool put_right_since(const Case& at, int cylinder, Tag tag, Timestamp when);

/// Whether the cylinder is in another state now than when this was recorded: a valve was put right, or
/// something newer carries another tag. Never where only one tag is asked for.
bool superseded(const Case& at, int cylinder, Tag tag, Timestamp when);

/// Exits as they count, loudest first. What was heard in an earlier state counts for the parts that nobody
/// touched since, as long as the loudest is one of them: else it masked what is left.
struct ExitsNow {
    std::vector<Heard> heard;
    std::vector<Heard> earlier;  ///< where nothing counts: what was heard in the earlier state
    Tag earlier_tag = Tag::as_found;
};
ExitsNow exits_now(const Case& at, int cylinder);

/// The dry reading counts for what the cylinder is now: not where a leak-down came after what was done, and
/// the dry test before it.
bool dry_counts(const CylinderFindings& cylinder);

}  // namespace lapwing::findings

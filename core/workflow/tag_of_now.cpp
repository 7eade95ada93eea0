// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/workflow/tag_of_now.h"

#include <algorithm>

#include "core/findings/touched.h"

namespace lapwing::workflow {
namespace {

/// The newest session of before this one; nothing where there is none.
Result<std::optional<Visit>> visit_before(const Now& now, const Session& session) {
    const auto sessions = now.library.sessions(session.engine);
    if (!sessions) return tl::unexpected(sessions.error());
    const Session* newest = nullptr;
    for (const Session& other : *sessions)
        if (other.id != session.id && other.opened_at < session.opened_at &&
            (!newest || newest->opened_at < other.opened_at))
            newest = &other;
    if (!newest) return std::nullopt;
    return now.library.visit(newest->id);
}

}  // namespace

bool worked_on(const Visit& visit, int cylinder, std::int64_t since_ms) {
    return std::ranges::any_of(visit.plan, [&](const PlanLine& line) {
        return line.done_at && line.option != PlanOption::leave &&
               line.cylinder.value_or(cylinder) == cylinder && line.done_at->unix_ms >= since_ms;
    });
}

Result<Tag> tag_of_now(const Now& now, const Visit& visit, int cylinder) {
    if (const Tag tag = findings::tag_now(visit, cylinder); tag != Tag::as_found) return tag;
    const auto earlier = visit_before(now, visit.session);
    if (!earlier) return tl::unexpected(earlier.error());
    const bool worked = *earlier && worked_on(**earlier, cylinder, (*earlier)->session.opened_at.unix_ms);
    return worked ? Tag::after_repair : Tag::as_found;
}

}  // namespace lapwing::workflow

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/workflow/tag_of_now.h"

#include <algorithm>
#include <vector>

#include "core/findings/touched.h"

namespace lapwing::workflow {
namespace {

/// Plans further back are done with.
constexpr std::size_t plans_looked_through = 3;

/// The newest sessions of before this one, newest first.
Result<std::vector<Session>> sessions_before(const Now& now, const Session& session) {
    auto sessions = now.library.sessions(session.engine);
    if (!sessions) return tl::unexpected(sessions.error());
    std::erase_if(*sessions, [&](const Session& other) {
        return other.id == session.id || !(other.opened_at < session.opened_at);
    });
    std::ranges::stable_sort(*sessions,
                             [](const Session& a, const Session& b) { return b.opened_at < a.opened_at; });
    if (sessions->size() > plans_looked_through) sessions->resize(plans_looked_through);
    return *sessions;
}

}  // namespace

bool worked_on(const Visit& visit, int cylinder, std::int64_t since_ms, std::int64_t until_ms) {
    return std::ranges::any_of(visit.plan, [&](const PlanLine& line) {
        return line.done_at && line.option != PlanOption::leave &&
               line.cylinder.value_or(cylinder) == cylinder && line.done_at->unix_ms >= since_ms &&
               line.done_at->unix_ms < until_ms;
    });
}

Result<Tag> tag_of_now(const Now& now, const Visit& visit, int cylinder) {
    if (const Tag tag = findings::tag_now(visit, cylinder); tag != Tag::as_found) return tag;
    const auto earlier = sessions_before(now, visit.session);
    if (!earlier) return tl::unexpected(earlier.error());
    for (const Session& session : *earlier) {
        const auto planned = now.library.visit(session.id);
        if (!planned) return tl::unexpected(planned.error());
        if (*planned && worked_on(**planned, cylinder, earlier->front().opened_at.unix_ms,
                                  visit.session.opened_at.unix_ms))
            return Tag::after_repair;
    }
    return Tag::as_found;
}

}  // namespace lapwing::workflow

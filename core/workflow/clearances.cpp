// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/workflow/clearances.h"

#include <algorithm>

#include "core/workflow/needs.h"
#include "core/workflow/requests.h"

namespace lapwing::workflow {

Intent keep_clearance(const Clearance& clearance) {
    return [clearance](const Now& now) -> Result<Command> {
        const auto visit = need_visit(now, clearance.session);
        if (!visit) return tl::unexpected(visit.error());
        if (auto there = check_cylinder(now, visit->session, clearance.cylinder); !there)
            return tl::unexpected(there.error());
        Clearance fresh = clearance;
        complete(fresh, fresh.at, now);
        for (const auto* old : standing(visit->clearances, fresh.cylinder)) {
            if (old->side != fresh.side || old->valve != fresh.valve || old->id == fresh.id) continue;
            fresh.replaces = old->id;
            // "Left" is often entered after adjusting, on its own: what was found is still true.
            if (!fresh.found) fresh.found = old->found;
        }
        std::vector<std::string> args{std::to_string(fresh.cylinder), std::string(word(fresh.side))};
        return with_ticks(put_checked("clearance.keep", std::move(args), fresh),
                          [&] { return ticked_by(now, *visit, fresh); });
    };
}

Intent remove_clearance(ClearanceId id) {
    return [id](const Now& now) -> Result<Command> {
        const auto old = need<Clearance>(now, id.uuid);
        if (!old) return tl::unexpected(old.error());
        const auto visit = need_visit(now, old->session);
        if (!visit) return tl::unexpected(visit.error());
        if (std::ranges::any_of(visit->clearances,
                                [&](const Clearance& later) { return later.replaces == id; }))
            return fail("clearance.kept_again",
                        "This valve was measured again later. Take the later entry out first.");
        return Command{"clearance.remove",
                       {std::to_string(old->cylinder), std::string(word(old->side))},
                       {Remove{RecordKind::clearance, id.uuid}}};
    };
}

}  // namespace lapwing::workflow

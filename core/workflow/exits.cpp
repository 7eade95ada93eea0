// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/workflow/exits.h"

#include <algorithm>

#include "core/workflow/needs.h"
#include "core/workflow/requests.h"
#include "core/workflow/tag_of_now.h"

namespace lapwing::workflow {
namespace {

bool same_place(const ExitNote& a, const ExitNote& b) {
    return a.cylinder == b.cylinder && a.exit == b.exit && a.neighbour == b.neighbour && a.tag == b.tag;
}

bool says_the_same(const ExitNote& a, const ExitNote& b) {
    return same_place(a, b) && a.loudness == b.loudness && a.by == b.by && a.reading == b.reading &&
           a.note == b.note;
}

}  // namespace

Intent keep_exit(const ExitNote& note) {
    return [note](const Now& now) -> Result<Command> {
        const auto visit = need_visit(now, note.session);
        if (!visit) return tl::unexpected(visit.error());
        ExitNote fresh = note;
        // The crankcase test of a whole engine listens at no cylinder in particular.
        if (fresh.cylinder != 0)
            if (auto there = check_cylinder(now, visit->session, fresh.cylinder); !there)
                return tl::unexpected(there.error());
        if (fresh.tag == Tag::as_found && fresh.at == Timestamp{}) {
            const auto tag = tag_of_now(now, *visit, fresh.cylinder);
            if (!tag) return tl::unexpected(tag.error());
            fresh.tag = *tag;
        }
        complete(fresh, fresh.at, now);
        Command command{"exit.keep", {std::to_string(fresh.cylinder), std::string(word(fresh.exit))}, {}};
        for (const auto* standing_note : standing(visit->exits, fresh.cylinder)) {
            if (!same_place(*standing_note, fresh)) continue;
            if (says_the_same(*standing_note, fresh)) return command;
            fresh.replaces = standing_note->id;
        }
        return with_ticks(put_checked(std::move(command.name), std::move(command.args), fresh),
                          [&] { return ticked_by(now, *visit, fresh); });
    };
}

Intent remove_exit(ExitNoteId id) {
    return [id](const Now& now) -> Result<Command> {
        const auto old = need<ExitNote>(now, id.uuid);
        if (!old) return tl::unexpected(old.error());
        const auto visit = need_visit(now, old->session);
        if (!visit) return tl::unexpected(visit.error());
        if (std::ranges::any_of(visit->exits, [&](const ExitNote& later) { return later.replaces == id; }))
            return fail("exit.kept_again",
                        "This exit was listened at again later. Take the later entry out first.");
        return Command{"exit.remove",
                       {std::to_string(old->cylinder), std::string(word(old->exit))},
                       {Remove{RecordKind::exit_note, id.uuid}}};
    };
}

}  // namespace lapwing::workflow

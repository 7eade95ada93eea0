// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/workflow/bring_in.h"

#include "core/workflow/desk.h"
#include "core/workflow/needs.h"

namespace lapwing::workflow {
namespace {

/// Whether `incoming` says nothing that `here` doesn't. Owners are left out of files unless the sender ticks
/// them, so an engine that comes back without its owner is still the same engine.
bool same(const Record& here, const Record& incoming) {
    if (here == incoming) return true;
    const auto* mine = std::get_if<Engine>(&here);
    const auto* theirs = std::get_if<Engine>(&incoming);
    if (mine == nullptr || theirs == nullptr || theirs->owner != Owner{}) return false;
    Engine with_owner = *theirs;
    with_owner.owner = mine->owner;
    return with_owner == *mine;
}

}  // namespace

int Preview::total(const std::map<RecordKind, int>& counts) {
    int sum = 0;
    for (const auto& [kind, count] : counts)
        sum += count;
    return sum;
}

Preview preview(const Desk& desk, const Dossier& dossier) {
    Preview preview;
    for (const auto& record : records_of(dossier)) {
        const auto kind = kind_of(record);
        const auto here = desk.record(kind, id_of(record));
        if (!here)
            ++preview.added[kind];
        else if (same(*here, record))
            ++preview.same[kind];
        else
            ++preview.different[kind];
    }
    preview.new_engine = preview.added.contains(RecordKind::engine);
    return preview;
}

Intent bring_in(Dossier dossier) {
    return [dossier = std::move(dossier)](const Now& now) -> Result<Command> {
        Command command{"dossier.bring_in", {dossier.engine.name}, {}};
        for (auto& record : records_of(dossier)) {
            const auto kind = kind_of(record);
            const auto here = now.library.record(kind, id_of(record));
            if (!here) return tl::unexpected(here.error());
            if (!*here)
                command.edits.emplace_back(Put{std::move(record)});
            else if (!same(**here, record))
                return fail(
                    "bring_in.different",
                    "The {} {} is in the library already, with other contents. Nothing was brought in. "
                    "Change one of the two back, or keep the file beside the library.",
                    word(kind), id_of(record).text());
        }
        command.args.push_back(std::to_string(command.edits.size()));
        return command;
    };
}

}  // namespace lapwing::workflow

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/workflow/bring_in.h"

#include <algorithm>
#include <functional>
#include <set>

#include "core/record/merge.h"
#include "core/record/walk.h"
#include "core/workflow/desk.h"
#include "core/workflow/needs.h"

namespace lapwing::workflow {
namespace {

struct Arrived {
    Arrival arrival = Arrival::same;
    std::optional<Record> here;
    Record incoming;
    Record merged;
};

/// Holds a dossier against the library, record by record, parents first.
class Comparing {
public:
    Comparing(const store::Queries& library, RemovedHere removed) : library_(library), removed_(removed) {}

    /// One at a time: `take` keeps of each what it needs.
    Status all_of(const Dossier& dossier, const std::function<void(Arrived)>& take) {
        const auto engine = library_.engine(dossier.engine.id);
        if (!engine) return tl::unexpected(engine.error());
        // Someone who opens the file of an engine that was taken out wants it back, not half of it.
        if (!*engine) removed_ = RemovedHere::come_back;
        return each_record(dossier, [&](Record record) -> Status {
            auto one = compare(std::move(record));
            if (!one) return tl::unexpected(one.error());
            take(std::move(*one));
            return {};
        });
    }

private:
    Result<Arrived> compare(Record incoming) {
        auto here = library_.record(kind_of(incoming), id_of(incoming));
        if (!here) return tl::unexpected(here.error());
        Arrived one{Arrival::added, std::move(*here), incoming, incoming};
        if (!one.here) {
            const auto left_out = stays_out(incoming);
            if (!left_out) return tl::unexpected(left_out.error());
            if (*left_out) {
                one.arrival = Arrival::removed_here;
                left_out_.insert(id_of(incoming));
            }
            return one;
        }
        one.incoming = with_owner_of(std::move(incoming), *one.here);
        auto merged = merge(*one.here, one.incoming);
        if (!merged) return tl::unexpected(merged.error());
        one.merged = std::move(*merged);
        if (in_conflict(one.merged) && versions(one.merged).size() > versions(*one.here).size())
            one.arrival = Arrival::conflict;
        else
            one.arrival = same_content(one.merged, *one.here) ? Arrival::same : Arrival::newer;
        return one;
    }

    Result<bool> stays_out(const Record& incoming) const {
        if (left_out_.contains(parent_of(incoming))) return true;
        // A session needs its testers to be understood.
        if (removed_ == RemovedHere::come_back || kind_of(incoming) == RecordKind::tester) return false;
        return library_.was_removed(id_of(incoming));
    }

    const store::Queries& library_;
    RemovedHere removed_;
    std::set<Uuid> left_out_;
};

std::map<RecordKind, int>& counts_of(Preview& preview, Arrival arrival) {
    switch (arrival) {
        case Arrival::added:
            return preview.added;
        case Arrival::newer:
            return preview.newer;
        case Arrival::conflict:
            return preview.conflicts;
        case Arrival::removed_here:
            return preview.removed_here;
        case Arrival::same:
            break;
    }
    return preview.same;
}

}  // namespace

int Preview::total(const std::map<RecordKind, int>& counts) {
    int sum = 0;
    for (const auto& [kind, count] : counts)
        sum += count;
    return sum;
}

Preview preview(const Desk& desk, const Dossier& dossier, RemovedHere removed) {
    Preview preview;
    const auto take = [&](Arrived one) {
        ++counts_of(preview, one.arrival)[kind_of(one.incoming)];
        if (one.arrival == Arrival::newer || one.arrival == Arrival::conflict)
            preview.differences.push_back({one.arrival, std::move(*one.here), std::move(one.incoming)});
        if (one.arrival == Arrival::added) preview.new_records.push_back(std::move(one.incoming));
    };
    const auto seen = desk.look<bool>([&](const store::Queries& library) -> Result<bool> {
        return Comparing(library, removed).all_of(dossier, take).map([] { return true; });
    });
    if (!seen) {
        preview = {};
        preview.refusal = seen.error();
        return preview;
    }
    preview.new_engine = preview.added.contains(RecordKind::engine);
    return preview;
}

Intent bring_in(Dossier dossier, RemovedHere removed) {
    return [dossier = std::move(dossier), removed](const Now& now) -> Result<Command> {
        Command command{"dossier.bring_in", {dossier.engine.name}, {}, true};
        command.edits.reserve(count_records(dossier));
        const auto seen = Comparing(now.library, removed).all_of(dossier, [&](Arrived one) {
            if (one.arrival != Arrival::removed_here && one.here != one.merged)
                command.edits.emplace_back(Put{std::move(one.merged)});
        });
        if (!seen) return tl::unexpected(seen.error());
        command.args.push_back(std::to_string(command.edits.size()));
        return command;
    };
}

std::vector<Record> conflicts(const Dossier& dossier) {
    auto records = records_of(dossier);
    std::erase_if(records, [](const Record& record) { return !in_conflict(record); });
    return records;
}

Intent settle(RecordKind kind, Uuid id, std::size_t chosen) {
    return [=](const Now& now) -> Result<Command> {
        const auto record = now.library.record(kind, id);
        if (!record) return tl::unexpected(record.error());
        const auto library = now.library.library_id();
        if (!library) return tl::unexpected(library.error());
        if (!*record || !in_conflict(**record) || chosen >= versions(**record).size())
            return fail("record.no_choice",
                        "There is no choice to make for this {} any more. Go back and look again.",
                        word(kind));
        return Command{"record.settle",
                       {std::string(word(kind))},
                       {Put{settled(**record, chosen, *library, now.clock.now())}},
                       true};
    };
}

}  // namespace lapwing::workflow

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/record/merge.h"

#include <map>
#include <nlohmann/json.hpp>

#include "core/exchange/whereabouts.h"
#include "platform/cli/dossier_file.h"
#include "platform/cli/verbs.h"

namespace lapwing::cli {
namespace {

/// The newest moment at which anything in the dossier was changed or recorded: the merged file is dated by
/// what is in it, so that the same two files always make the same one.
Timestamp newest(const Dossier& dossier) {
    Timestamp last = dossier.engine.made_at;
    const auto look = [&](Timestamp at) {
        if (at.unix_ms > last.unix_ms) last = at;
    };
    for (const auto& record : records_of(dossier))
        std::visit(
            [&](const auto& value) {
                for (const auto& revision : value.lineage.revisions)
                    look(revision.at);
                if constexpr (requires { value.taken_at; })
                    look(value.taken_at);
                else if constexpr (requires { value.at; })
                    look(value.at);
                else if constexpr (requires { value.opened_at; })
                    look(value.opened_at);
            },
            record);
    return last;
}

Outcome run(Arguments& arguments) {
    auto one = exchange::read_session_file(arguments.operand(0), scratch_folder());
    if (!one) return refused(one.error());
    auto other = exchange::read_session_file(arguments.operand(1), scratch_folder());
    if (!other) return refused(other.error());

    const Record mine = one->dossier.engine;
    const Record theirs = other->dossier.engine;
    one->dossier.engine = std::get<Engine>(with_owner_of(mine, theirs));
    other->dossier.engine = std::get<Engine>(with_owner_of(theirs, mine));
    auto merged = merge(one->dossier, other->dossier);
    if (!merged) return refused(merged.error());

    std::map<std::string, std::filesystem::path> files;
    for (const auto* incoming : {&*one, &*other})
        for (const auto& attachment : incoming->attachments)
            files.emplace(attachment.sha256, attachment.file);
    exchange::Outgoing outgoing;
    outgoing.dossier = *merged;
    outgoing.with_owner = true;  // whatever the two files held of it was ticked by their senders
    outgoing.at = newest(*merged);
    outgoing.stored_at = [&](const Attachment& attachment) {
        const auto found = files.find(attachment.sha256);
        return found == files.end() ? std::filesystem::path{} : found->second;
    };
    const auto written = exchange::write_session_file(arguments.text("-o"), outgoing);
    if (!written) return wrong_use(written.error().english);
    std::vector<std::string> missing;
    for (const auto& gap : *written)
        missing.push_back(exchange::text_of(gap));
    std::vector<std::string> whereabouts;
    for (const auto& photo : exchange::whereabouts_of(*merged, outgoing.stored_at))
        whereabouts.push_back(exchange::text_of(photo));

    std::size_t open = 0;
    for (const auto& record : records_of(*merged))
        if (in_conflict(record)) ++open;
    if (arguments.json())
        fmt::print("{}\n", nlohmann::ordered_json{{"visits", merged->visits.size()},
                                                  {"conflicts", open},
                                                  {"missing", missing},
                                                  {"whereabouts", whereabouts}}
                               .dump());
    else
        fmt::print("{}: {} visits, {} records changed on both sides.\n", merged->engine.name,
                   merged->visits.size(), open);
    for (const auto& gap : arguments.json() ? std::vector<std::string>{} : missing)
        fmt::print("Missing from both files: {}.\n", gap);
    for (const auto& photo : arguments.json() ? std::vector<std::string>{} : whereabouts)
        fmt::print("Tells where it was taken: {}.\n", photo);
    return Exit::done;
}

}  // namespace

Verb merge_verb() {
    return {
        "merge",
        "brings two session files of one engine together",
        {"A", "B"},
        {{"-o", "OUT", "where to", true}, json_option},
        "OUT holds every record of both. Where both sides changed the same record it keeps both versions for "
        "a person to choose from. The order of A and B doesn't matter. OUT is not signed and holds no "
        "report. Keys: visits, conflicts, missing (photos and voice notes that neither file holds), "
        "whereabouts "
        "(photos that tell where they were taken).",
        run};
}

}  // namespace lapwing::cli

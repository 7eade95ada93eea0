// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/workflow/full_backup.h"

#include <future>
#include <optional>
#include <set>

#include "core/record/merge.h"
#include "core/store/attachment_files.h"
#include "core/workflow/bring_in.h"
#include "core/workflow/hand_over.h"

namespace lapwing::workflow {
namespace {

Result<Step> run_and_wait(Desk& desk, Intent intent) {
    std::promise<Result<Step>> answer;
    desk.run(std::move(intent), [&](Result<Step> step) { answer.set_value(std::move(step)); });
    return answer.get_future().get();
}

/// Testers that no session names come with no dossier.
Intent bring_in_testers(std::vector<Tester> testers) {
    return [testers = std::move(testers)](const Now& now) -> Result<Command> {
        Command command{"tester.add", {}, {}, true};
        for (const auto& tester : testers) {
            auto here = now.library.tester(tester.id);
            if (!here) return tl::unexpected(here.error());
            if (!*here) command.edits.emplace_back(Put{tester});
        }
        command.args = {std::to_string(command.edits.size())};
        return command;
    };
}

}  // namespace

Result<std::vector<exchange::Gap>> back_up(const Desk& desk, const std::filesystem::path& target,
                                           const Progress& progress) {
    exchange::BackupOrder order;
    for (const auto& engine : desk.engines())
        order.engines.push_back({engine.id, engine.name});
    order.rest.testers = desk.testers();
    for (const auto& key : desk.named_keys())
        order.rest.keys.push_back({key.public_key, key.name, key.since});
    order.at = desk.clock().now();
    auto key = signing_key(desk);
    if (!key) return tl::unexpected(key.error());
    order.engine = [&](EngineId id) {
        return desk.dossier(id).map([&](Dossier dossier) {
            exchange::Outgoing outgoing;
            outgoing.dossier = std::move(dossier);
            outgoing.with_owner = true;
            outgoing.stored_at = [&](const Attachment& one) { return desk.files().path(one.sha256); };
            outgoing.at = order.at;
            outgoing.key = &*key;
            return outgoing;
        });
    };
    return exchange::write_backup(target, order, progress);
}

Status keep_files(const Desk& desk, const exchange::Incoming& incoming) {
    for (const auto& attachment : incoming.attachments)
        if (auto kept = desk.files().adopt(attachment.file, attachment.sha256); !kept) return kept;
    return {};
}

Result<Restored> restore(Desk& desk, const std::filesystem::path& file, const std::filesystem::path& scratch,
                         const Progress& progress, const TrustedKeys& trusted) {
    // Checking reads as much as bringing in: half of the way each.
    std::size_t all = 0;
    const auto backup = exchange::BackupReader::open(file, scratch, [&](std::size_t done, std::size_t of) {
        all = of;
        return progress(done, 2 * of);
    });
    if (!backup) return tl::unexpected(backup.error());
    return restore(
        desk, *backup,
        [&](std::size_t done, std::size_t of) {
            return progress(all + (of > 0 ? all * done / of : 0), 2 * all);
        },
        trusted);
}

Result<Restored> restore(Desk& desk, const exchange::BackupReader& backup, const Progress& progress,
                         const TrustedKeys& trusted) {
    Restored out{0, backup.of(), false, backup.damaged(), {}};
    std::optional<EngineId> last;
    for (std::size_t part = 0; part < backup.parts(); ++part) {
        auto incoming = backup.part(part);
        if (!incoming) return tl::unexpected(incoming.error());
        const auto engine = incoming->dossier.engine.id;
        if (last && last != engine) ++out.engines;
        if (!progress(out.engines, backup.engines())) {
            out.stopped = true;
            return out;
        }
        last = engine;
        if (auto kept = keep_files(desk, *incoming); !kept) return tl::unexpected(kept.error());
        const auto gaps = exchange::gaps_of(incoming->dossier);
        out.gaps.insert(out.gaps.end(), gaps.begin(), gaps.end());
        auto done = run_and_wait(desk, bring_in(std::move(incoming->dossier), RemovedHere::come_back));
        if (!done) return tl::unexpected(done.error());
    }
    if (last) ++out.engines;
    if (auto done = run_and_wait(desk, bring_in_testers(backup.rest().testers)); !done)
        return tl::unexpected(done.error());
    for (const auto& key : backup.rest().keys)
        if (trusted.contains(key.public_key) && desk.name_of_key(key.public_key).empty())
            desk.name_key(key.public_key, key.name, {}, key.since);
    desk.flush();
    return out;
}

Result<BackupPreview> preview(const Desk& desk, const exchange::BackupReader& backup,
                              const Progress& progress) {
    BackupPreview out;
    std::set<TesterId> named;
    std::optional<Dossier> engine;
    const auto show = [&] {
        if (!engine) return;
        auto one = preview(desk, *engine, RemovedHere::come_back);
        for (const auto& tester : engine->testers)
            named.insert(tester.id);
        // Counts are all that a person is told of a whole library.
        one.differences.clear();
        one.new_records.clear();
        out.engines.push_back({engine->engine.name, std::move(one)});
    };
    for (std::size_t part = 0; part < backup.parts(); ++part) {
        if (!progress(out.engines.size(), backup.engines())) return fail("backup.stopped", "Stopped.");
        const auto incoming = backup.part(part);
        if (!incoming) return tl::unexpected(incoming.error());
        const auto gaps = exchange::gaps_of(incoming->dossier);
        out.gaps.insert(out.gaps.end(), gaps.begin(), gaps.end());
        const auto photos = exchange::whereabouts_of(*incoming);
        out.whereabouts.insert(out.whereabouts.end(), photos.begin(), photos.end());
        if (engine && engine->engine.id == incoming->dossier.engine.id) {
            auto both = merge(*engine, incoming->dossier);
            if (!both) return tl::unexpected(both.error());
            engine = std::move(*both);
            continue;
        }
        show();
        engine = incoming->dossier;
    }
    show();
    for (const auto& tester : backup.rest().testers)
        if (!named.contains(tester.id) && !desk.record(RecordKind::tester, tester.id.uuid)) ++out.new_testers;
    for (const auto& key : backup.rest().keys)
        if (const auto here = desk.name_of_key(key.public_key); here != key.name)
            out.keys.push_back({key, here});
    return out;
}

}  // namespace lapwing::workflow

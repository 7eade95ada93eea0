// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/record/merge.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>

#include "core/base/sha256.h"

namespace lapwing {
namespace {

using Revisions = std::vector<Revision>;

Lineage& lineage_of(Record& record) {
    return std::visit([](auto& value) -> Lineage& { return value.lineage; }, record);
}
const Lineage& lineage_of(const Record& record) {
    return std::visit([](const auto& value) -> const Lineage& { return value.lineage; }, record);
}

Record without_lineage(Record record) {
    lineage_of(record) = {};
    return record;
}

/// One version and the text that it is told apart by.
struct Version {
    Record record;
    std::string text;

    explicit Version(Record from) : record(std::move(from)) {
        lineage_of(record).other_versions.clear();
        text = to_json(record);
    }
    [[nodiscard]] const Revisions& revisions() const { return lineage_of(record).revisions; }
};

/// Every change that `one` knows, `other` knows too. Both lists are sorted by library.
bool is_contained(const Revisions& one, const Revisions& other) {
    auto at = other.begin();
    return std::ranges::all_of(one, [&](const Revision& revision) {
        while (at != other.end() && at->library < revision.library)
            ++at;
        return at != other.end() && at->library == revision.library && at->at.unix_ms >= revision.at.unix_ms;
    });
}

bool came_after(const Version& later, const Version& earlier) {
    return is_contained(earlier.revisions(), later.revisions()) &&
           !is_contained(later.revisions(), earlier.revisions());
}

std::int64_t last_change_ms(const Revisions& revisions) {
    std::int64_t last = 0;
    for (const auto& revision : revisions)
        last = std::max(last, revision.at.unix_ms);
    return last;
}

std::vector<Version> versions_in(const Record& record) {
    std::vector<Version> out;
    out.emplace_back(record);
    for (const auto& text : lineage_of(record).other_versions)
        if (auto other = record_from_json(kind_of(record), text)) out.emplace_back(std::move(*other));
    return out;
}

/// Those that no other came after, each once, the one to show first.
void keep_latest(std::vector<Version>& all) {
    std::ranges::sort(all, [](const Version& a, const Version& b) {
        const auto a_ms = last_change_ms(a.revisions());
        const auto b_ms = last_change_ms(b.revisions());
        return a_ms != b_ms ? a_ms > b_ms : a.text > b.text;
    });
    const auto same = [](const Version& a, const Version& b) { return a.text == b.text; };
    all.erase(std::unique(all.begin(), all.end(), same), all.end());
    std::vector<Version> kept;
    for (const auto& version : all)
        if (std::ranges::none_of(all, [&](const Version& other) { return came_after(other, version); }))
            kept.push_back(version);
    all = std::move(kept);
}

Record assembled(const std::vector<Version>& all) {
    Record record = all.front().record;
    for (std::size_t i = 1; i < all.size(); ++i)
        lineage_of(record).other_versions.push_back(all[i].text);
    return record;
}

void join(Revisions& into, const Revisions& from) {
    for (const auto& revision : from) {
        const auto at = std::ranges::lower_bound(into, revision.library, {}, &Revision::library);
        if (at == into.end() || at->library != revision.library)
            into.insert(at, revision);
        else if (at->at.unix_ms < revision.at.unix_ms)
            at->at = revision.at;
    }
}

/// A clock that was set back must not make a change look older than what it changed.
void mark(Revisions& revisions, Uuid library, Timestamp now) {
    now.unix_ms = std::max(now.unix_ms, last_change_ms(revisions) + 1);
    join(revisions, {{library, now}});
}

/// A name of its own for what one library changes beside an unsettled version that it made before: the same
/// change has the same name (a UUID version 8, RFC 9562).
Uuid branch_of(Uuid library, const std::string& before) {
    const auto sum = sha256_hex(library.text() + before);
    const auto hex = fmt::format("{:.8}-{:.4}-8{:.3}-8{:.3}-{:.12}", sum, sum.substr(8), sum.substr(13),
                                 sum.substr(17), sum.substr(20));
    return Uuid::parse(hex).value_or(library);
}

}  // namespace

Result<Record> merge(const Record& one, const Record& other) {
    if (kind_of(one) != kind_of(other) || id_of(one) != id_of(other))
        return fail("merge.other_record",
                    "Two different records have the id {}: one of the files was not written by this app.",
                    id_of(one).text());
    if (parent_of(one) != parent_of(other))
        return fail(
            "merge.moved",
            "The {} {} belongs to another {} in the file than here. Nothing was changed: do not trust "
            "the file.",
            word(kind_of(one)), id_of(one).text(),
            kind_of(one) == RecordKind::session ? "engine" : "session");
    if (one == other) return one;
    auto all = versions_in(one);
    for (auto& version : versions_in(other))
        all.push_back(std::move(version));
    keep_latest(all);
    if (all.size() > most_other_versions + 1)
        return fail("merge.too_many_versions",
                    "The {} {} would have {} versions: at most {} are kept. Choose between those that are "
                    "here, then bring the file in again.",
                    word(kind_of(one)), id_of(one).text(), all.size(), most_other_versions + 1);
    return assembled(all);
}

Result<Dossier> merge(const Dossier& one, const Dossier& other) {
    if (one.engine.id != other.engine.id)
        return fail("merge.other_engine",
                    "The files are of two engines, {} and {}: only files of the same engine can be merged.",
                    one.engine.name, other.engine.name);
    std::map<Uuid, Record> records;
    for (const auto* dossier : {&one, &other})
        for (auto& record : records_of(*dossier)) {
            const auto [at, is_new] = records.try_emplace(id_of(record), record);
            if (is_new) continue;
            auto both = merge(at->second, record);
            if (!both) return tl::unexpected(both.error());
            at->second = std::move(*both);
        }
    std::vector<Record> all;
    all.reserve(records.size());
    for (auto& [id, record] : records)
        all.push_back(std::move(record));
    return dossier_of(std::move(all));
}

bool same_content(const Record& one, const Record& other) {
    return one == other || without_lineage(one) == without_lineage(other);
}

std::vector<Record> versions(const Record& record) {
    std::vector<Record> out;
    for (auto& version : versions_in(record))
        if (std::ranges::none_of(out, [&](const Record& seen) { return same_content(seen, version.record); }))
            out.push_back(std::move(version.record));
    return out;
}

bool in_conflict(const Record& record) {
    return !lineage_of(record).other_versions.empty() && versions(record).size() > 1;
}

Record changed(const Record& before, Record after, Uuid library, Timestamp now) {
    lineage_of(after) = lineage_of(before);
    if (after == before) return after;
    Revisions known;
    std::vector<Version> left;
    for (auto& version : versions_in(before)) {
        if (same_content(version.record, before))
            join(known, version.revisions());  // the same change, made on another side as well
        else
            left.push_back(std::move(version));
    }
    auto& lineage = lineage_of(after);
    lineage.other_versions.clear();
    for (const auto& version : left)
        lineage.other_versions.push_back(version.text);
    lineage.revisions = known;
    mark(lineage.revisions, library, now);
    // A version of this same library that still waits to be chosen would seem to have been followed.
    const bool hides = std::ranges::any_of(
        left, [&](const Version& version) { return is_contained(version.revisions(), lineage.revisions); });
    if (hides) {
        lineage.revisions = known;
        mark(lineage.revisions, branch_of(library, to_json(before)), now);
    }
    return after;
}

Record settled(const Record& record, std::size_t chosen, Uuid library, Timestamp now) {
    auto all = versions(record);
    Record out = std::move(all.at(chosen));
    auto& lineage = lineage_of(out);
    for (const auto& version : versions_in(record))
        join(lineage.revisions, version.revisions());
    mark(lineage.revisions, library, now);
    return out;
}

Record with_owner_of(Record incoming, const Record& here) {
    const auto* known = std::get_if<Engine>(&here);
    if (known == nullptr || known->owner == Owner{} || !std::holds_alternative<Engine>(incoming))
        return incoming;
    auto all = versions_in(incoming);
    std::vector<Version> filled;
    for (auto& version : all) {
        auto& engine = std::get<Engine>(version.record);
        if (engine.owner != Owner{}) return incoming;
        engine.owner = known->owner;
        filled.emplace_back(std::move(version.record));
    }
    keep_latest(filled);
    return assembled(filled);
}

}  // namespace lapwing

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <fstream>
#include <map>
#include <nlohmann/json.hpp>

#include "core/base/atomic_file.h"
#include "core/base/sha256.h"
#include "core/exchange/backup_file.h"
#include "core/exchange/bag.h"
#include "core/record/record.h"

namespace lapwing::exchange {
namespace {

namespace fs = std::filesystem;

tl::unexpected<Error> not_a_backup(std::string_view why) {
    return fail("backup.none", "The file is no backup that Lapwing made ({}). Choose another file.", why);
}

tl::unexpected<Error> stopped() {
    return fail("backup.stopped", "Stopped while the backup was being checked. Nothing was changed.");
}

std::string text_in(const nlohmann::ordered_json& object, const char* name) {
    const auto found = object.find(name);
    return found != object.end() && found->is_string() ? found->get<std::string>() : std::string{};
}

Result<BackupRest> read_rest(const std::string& text) {
    // What nests deeper than any record is dropped: writing it again would use up the stack.
    const auto not_too_deep = [](int depth, auto, const auto&) { return depth <= deepest_json; };
    const auto json = nlohmann::ordered_json::parse(text, not_too_deep, false);
    if (!json.is_object() || text_in(json, "format") != "lapwing-backup")
        return not_a_backup("its backup.json");
    const auto version = text_in(json, "version");
    if (!version.starts_with("1."))
        return fail("backup.version",
                    "This backup was made by a newer Lapwing (its version is {}; this one reads 1.x). Update "
                    "Lapwing to restore it.",
                    version);
    BackupRest rest;
    if (const auto testers = json.find("testers"); testers != json.end() && testers->is_array())
        for (const auto& one : *testers) {
            auto tester = record_from_json(RecordKind::tester, one.dump());
            if (!tester) return tl::unexpected(tester.error());
            rest.testers.push_back(std::get<Tester>(std::move(*tester)));
        }
    if (const auto keys = json.find("known_keys"); keys != json.end() && keys->is_array())
        for (const auto& one : *keys) {
            NamedKey key{text_in(one, "public_key"), text_in(one, "name")};
            if (!fingerprint(key.public_key).empty() && !key.name.empty() && key.name.size() <= 500)
                rest.keys.push_back(std::move(key));
        }
    return rest;
}

}  // namespace

Limits backup_limits() {
    Limits limits;
    limits.packed_bytes = std::uint64_t{64} << 30;
    limits.unpacked_bytes = std::uint64_t{64} << 30;
    limits.entries = 2'000'000;
    return limits;
}

Result<BackupReader> BackupReader::open(const fs::path& file, const fs::path& staging_parent,
                                        const Progress& progress) {
    auto archive = Archive::open(file, backup_limits());
    if (!archive) return tl::unexpected(archive.error());
    BackupReader reader(std::move(*archive), staging_parent);
    if (auto sound = reader.check(progress); !sound) return tl::unexpected(sound.error());
    return reader;
}

Status BackupReader::check(const Progress& progress) {
    std::map<std::string, const Entry*> files;
    std::string top;
    for (const auto& entry : archive_->entries())
        if (entry.path == "bagit.txt" || entry.path.ends_with("/bagit.txt"))
            top = entry.path.substr(0, entry.path.size() - std::string_view("bagit.txt").size());
    for (const auto& entry : archive_->entries())
        if (entry.path.starts_with(top)) files.emplace(entry.path.substr(top.size()), &entry);

    std::map<std::string, std::string> texts;
    for (const auto* name : {"bagit.txt", "manifest-sha256.txt", "data/backup.json"}) {
        const auto found = files.find(name);
        if (found == files.end()) return not_a_backup(fmt::format("it has no {}", name));
        auto text = archive_->read_text(*found->second, longest_json);
        if (!text) return tl::unexpected(text.error());
        texts[name] = std::move(*text);
    }
    if (auto declared = check_declaration(texts["bagit.txt"]); !declared) return declared;
    const auto lines = parse_manifest(texts["manifest-sha256.txt"], "manifest-sha256.txt");
    if (!lines) return tl::unexpected(lines.error());
    std::map<std::string, std::string> sums;
    for (const auto& line : *lines)
        sums[line.path] = line.checksum;

    for (const auto& [path, entry] : files)
        if (path.starts_with("data/engines/")) engines_.push_back(entry);
    std::size_t seen = 0;
    std::size_t engines_done = 0;
    for (const auto& [path, entry] : files) {
        if (!path.starts_with("data/")) continue;
        if (!sums.contains(path))
            return fail("bag.unlisted_file", "\"{}\" stands in the file and not in {}: someone added it.",
                        path, "manifest-sha256.txt");
        ++seen;
        Sha256 sum;
        const auto read = archive_->read(*entry, [&](std::string_view piece) -> Status {
            sum.add(piece);
            return progress(engines_done, engines_.size()) ? Status{} : stopped();
        });
        if (!read) return read;
        if (sum.hex() != sums[path])
            return fail(
                "bag.checksum",
                "\"{}\" in the file is not as it was packed: it was damaged or changed on its way. Use "
                "another copy of the backup.",
                path);
        if (!path.starts_with("data/engines/")) continue;
        if (auto whole = engine(engines_done); !whole) return tl::unexpected(whole.error());
        ++engines_done;
    }
    if (seen != sums.size())
        return fail("bag.missing_file", "The backup lacks {} of its files. Use another copy of it.",
                    sums.size() - seen);
    auto rest = read_rest(texts["data/backup.json"]);
    if (!rest) return tl::unexpected(rest.error());
    rest_ = std::move(*rest);
    return {};
}

Result<Incoming> BackupReader::engine(std::size_t number) const {
    auto staging = Staging::make(staging_parent_);
    if (!staging) return tl::unexpected(staging.error());
    const auto file = staging->folder() / "engine.lapwing";
    std::ofstream out(file, std::ios::binary);
    const auto copied = archive_->read(*engines_.at(number), [&](std::string_view piece) -> Status {
        out.write(piece.data(), static_cast<std::streamsize>(piece.size()));
        return out ? Status{} : Status(file_error(ENOSPC, file));
    });
    out.close();
    if (!copied) return tl::unexpected(copied.error());
    return read_session_file(file, staging_parent_);
}

}  // namespace lapwing::exchange

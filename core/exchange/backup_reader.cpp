// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <algorithm>
#include <map>
#include <nlohmann/json.hpp>
#include <set>

#include "core/base/atomic_file.h"
#include "core/base/sha256.h"
#include "core/exchange/backup_file.h"
#include "core/exchange/bag.h"
#include "core/exchange/file_sink.h"
#include "core/record/json_text.h"
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

constexpr std::string_view payload_folder = "data/";
constexpr std::string_view engines_folder = "data/engines/";
constexpr const char* rest_path = "data/backup.json";

/// The engine that a session file of the backup belongs to: its id, as the file's name begins.
std::string engine_of(std::string_view path) {
    if (!path.starts_with(engines_folder)) return {};
    const auto name = path.substr(engines_folder.size());
    return std::string(name.substr(0, name.find_first_of("_.")));
}

/// Trouble of this device's own, and the wish to stop, say nothing about the backup.
bool is_of_this_device(const Error& error) {
    return error.code == "backup.stopped" || error.code.starts_with("file.");
}

/// `names` takes what the backup calls the engines in it.
Result<BackupRest> read_rest(const std::string& text, std::map<std::string, std::string>& names) {
    if (!check_json_text(text)) return not_a_backup("its backup.json");
    const auto json = nlohmann::ordered_json::parse(text);
    if (!json.is_object() || text_in(json, "format") != "lapwing-backup")
        return not_a_backup("its backup.json");
    const auto version = text_in(json, "version");
    if (!version.starts_with("1."))
        return fail("backup.version",
                    "This backup was made by a newer Lapwing (its version is {}; this one reads 1.x). Update "
                    "Lapwing to restore it.",
                    version);
    BackupRest rest;
    if (const auto contents = json.find("contents"); contents != json.end() && contents->is_array())
        for (const auto& one : *contents)
            names[text_in(one, "file")] = text_in(one, "engine");
    if (const auto testers = json.find("testers"); testers != json.end() && testers->is_array())
        for (const auto& one : *testers) {
            auto tester = record_from_json(RecordKind::tester, one.dump());
            if (!tester) return tl::unexpected(tester.error());
            rest.testers.push_back(std::get<Tester>(std::move(*tester)));
        }
    if (const auto keys = json.find("known_keys"); keys != json.end() && keys->is_array())
        for (const auto& one : *keys) {
            NamedKey key{text_in(one, "public_key"), text_in(one, "name")};
            if (const auto since = parse_rfc3339(text_in(one, "since"))) key.since = *since;
            // One key, one name: what is shown is what is taken.
            const bool again = std::ranges::any_of(
                rest.keys, [&](const NamedKey& other) { return other.public_key == key.public_key; });
            if (!again && !fingerprint(key.public_key).empty() && !key.name.empty() && key.name.size() <= 500)
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
    for (const auto* name : {"bagit.txt", "manifest-sha256.txt"}) {
        const auto found = files.find(name);
        if (found == files.end()) return not_a_backup(fmt::format("it has no {}", name));
        auto text = archive_->read_text(*found->second, longest_json);
        if (!text) return tl::unexpected(text.error());
        texts[name] = std::move(*text);
    }
    if (auto declared = check_declaration(texts["bagit.txt"]); !declared) return declared;
    const auto lines = parse_manifest(texts["manifest-sha256.txt"], "manifest-sha256.txt");
    if (!lines) return tl::unexpected(lines.error());
    Sums sums;
    for (const auto& line : *lines)
        sums[line.path] = line.checksum;

    const auto rest = files.find(rest_path);
    if (rest == files.end()) return not_a_backup(fmt::format("it has no {}", rest_path));
    const auto rest_whole = check_sum(rest->first, *rest->second, sums, [] { return true; });
    if (rest_whole) {
        const auto text = archive_->read_text(*rest->second, longest_json);
        if (!text) return tl::unexpected(text.error());
        auto read = read_rest(*text, names_);
        if (!read) return tl::unexpected(read.error());
        rest_ = std::move(*read);
    } else {
        // Testers and the names of keys: the engines do without.
        damaged_.push_back({{}, false, rest_whole.error()});
    }
    return check_engines(files, sums, progress);
}

/// The engines one by one: one that is damaged doesn't take the others with it.
Status BackupReader::check_engines(const Files& files, const Sums& sums, const Progress& progress) {
    std::set<std::string> told;
    for (const auto& [path, entry] : files)
        told.insert(engine_of(path));
    for (const auto& [path, sum] : sums)
        told.insert(engine_of(path));
    told.erase(std::string{});
    of_ = told.size();
    std::map<std::string, std::string> whole;  // their names

    std::vector<std::pair<std::string, Damaged>> damaged;
    const auto hurt = [&](const std::string& path, Error why) {
        const auto named = names_.find(path);
        std::string name = named == names_.end() ? std::string{} : named->second;
        // A file that someone put in, or that belongs to nothing known, is called as it is.
        if (name.empty() && engine_of(path).empty()) name = path;
        damaged.emplace_back(engine_of(path), Damaged{std::move(name), false, std::move(why)});
    };
    const auto go_on = [&] { return progress(std::min(whole.size() + damaged.size(), of_), of_); };
    for (const auto& [path, entry] : files) {
        if (!path.starts_with(payload_folder) || path == rest_path) continue;
        auto sound = check_sum(path, *entry, sums, go_on);
        if (sound && path.starts_with(engines_folder)) {
            auto incoming = unpack(*entry);
            if (incoming) {
                whole[engine_of(path)] = incoming->dossier.engine.name;
                parts_.push_back(entry);
            } else {
                sound = tl::unexpected(incoming.error());
            }
        }
        if (sound) continue;
        if (is_of_this_device(sound.error())) return sound;
        hurt(path, sound.error());
    }
    for (const auto& [path, sum] : sums)
        if (path.starts_with(payload_folder) && !files.contains(path))
            hurt(path, fail("bag.missing_file", "\"{}\" is missing from the backup.", path).value());

    engines_ = whole.size();
    for (auto& [engine, one] : damaged) {
        one.partly = whole.contains(engine);
        if (one.engine.empty()) one.engine = one.partly ? whole[engine] : engine;
        damaged_.push_back(std::move(one));
    }
    if (engines_ == 0 && !damaged_.empty()) return tl::unexpected(damaged_.back().why);
    return {};
}

/// Whether an entry's bytes are those of its line in the list of checksums.
Status BackupReader::check_sum(const std::string& path, const Entry& entry, const Sums& sums,
                               const std::function<bool()>& go_on) const {
    const auto told = sums.find(path);
    if (told == sums.end())
        return fail("bag.unlisted_file", "\"{}\" stands in the file and not in {}: someone added it.", path,
                    "manifest-sha256.txt");
    Sha256 sum;
    auto read = archive_->read(entry, [&](std::string_view piece) -> Status {
        sum.add(piece);
        return go_on() ? Status{} : stopped();
    });
    if (!read || sum.hex() == told->second) return read;
    return fail("bag.checksum",
                "\"{}\" in the file is not as it was packed: it was damaged or changed on its way. Use "
                "another copy of the backup.",
                path);
}

Result<Incoming> BackupReader::part(std::size_t number) const {
    return unpack(*parts_.at(number));
}

Result<Incoming> BackupReader::unpack(const Entry& entry) const {
    auto staging = Staging::make(staging_parent_);
    if (!staging) return tl::unexpected(staging.error());
    const auto file = staging->folder() / "engine.lapwing";
    FileSink out(file);
    if (auto copied = archive_->read(entry, [&](std::string_view piece) { return out.write(piece); });
        !copied)
        return tl::unexpected(copied.error());
    // A storage that is full may tell only now; what it cut short must not pass for a damaged backup.
    if (auto closed = out.close(); !closed) return tl::unexpected(closed.error());
    return read_session_file(file, staging_parent_);
}

}  // namespace lapwing::exchange

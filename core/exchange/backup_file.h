// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <filesystem>
#include <functional>
#include <map>
#include <memory>
#include <string>
#include <vector>

#include "core/exchange/session_file.h"

/// A backup of everything: one bag (BagIt 1.0, RFC 8493) in a ZIP archive, with one session file an engine in
/// data/engines (several for an engine that is larger than a session file may be) and what belongs to none of
/// them in data/backup.json. Both ways hold one engine at a time, so that memory does not grow with the
/// library.
namespace lapwing::exchange {

inline constexpr std::string_view backup_file_ending = ".lapwing-backup";

/// Called before each engine with how many are done, and while bytes move; false stops the work
/// ("backup.stopped").
using Progress = std::function<bool(std::size_t done, std::size_t of)>;

struct NamedKey {
    std::string public_key;
    std::string name;
    std::optional<Timestamp> since = {};  ///< known where the backup was made

    bool operator==(const NamedKey&) const = default;
};

/// What a backup holds beside the engines.
struct BackupRest {
    std::vector<Tester> testers;  ///< all of them, also those that no session names
    std::vector<NamedKey> keys;

    bool operator==(const BackupRest&) const = default;
};

struct BackupOrder {
    struct One {
        EngineId id;
        std::string name;  ///< so that a reader can say what is damaged
    };
    std::vector<One> engines;
    std::function<Result<Outgoing>(EngineId)> engine;  ///< asked for one after the other
    BackupRest rest;
    Timestamp at;
    std::string software = "Lapwing";
    Limits limits = {};  ///< of each session file in it
};

/// Writes the backup whole or not at all; photos and voice notes that are lost don't stop it and are handed
/// back. Beside `target` it needs room for the largest engine once more.
Result<std::vector<Gap>> write_backup(const std::filesystem::path& target, const BackupOrder& order,
                                      const Progress& progress);

/// How much a backup may ask for.
Limits backup_limits();

/// A part of a backup that is not as it was packed.
struct Damaged {
    std::string engine;   ///< its name; empty for what belongs to no engine
    bool partly = false;  ///< other session files of this engine are whole
    Error why;

    bool operator==(const Damaged&) const = default;
};

/// A backup of which every byte was checked.
class BackupReader {
public:
    /// Checks the whole file: structure, checksums, and every session file in it as read_session_file does,
    /// one at a time in a folder under `staging_parent` that goes again. Engines that are damaged are left
    /// out and told by `damaged`; a backup of which nothing can be used is an error, one sentence.
    static Result<BackupReader> open(const std::filesystem::path& file,
                                     const std::filesystem::path& staging_parent, const Progress& progress);

    /// Engines that can be brought in, and how many the backup should hold.
    [[nodiscard]] std::size_t engines() const { return engines_; }
    [[nodiscard]] std::size_t of() const { return of_; }
    [[nodiscard]] const std::vector<Damaged>& damaged() const { return damaged_; }
    [[nodiscard]] const BackupRest& rest() const { return rest_; }

    /// Session files that are whole; those of one engine follow each other.
    [[nodiscard]] std::size_t parts() const { return parts_.size(); }
    /// The session file at that place, unpacked and checked.
    Result<Incoming> part(std::size_t number) const;

private:
    BackupReader(Archive archive, std::filesystem::path staging_parent)
        : archive_(std::make_unique<Archive>(std::move(archive))),
          staging_parent_(std::move(staging_parent)) {}
    using Files = std::map<std::string, const Entry*>;
    using Sums = std::map<std::string, std::string>;
    Status check(const Progress& progress);
    Status check_engines(const Files& files, const Sums& sums, const Progress& progress);
    Status check_sum(const std::string& path, const Entry& entry, const Sums& sums,
                     const std::function<bool()>& go_on) const;
    Result<Incoming> unpack(const Entry& entry) const;

    std::unique_ptr<Archive> archive_;
    std::filesystem::path staging_parent_;
    std::vector<const Entry*> parts_;
    std::map<std::string, std::string> names_;  ///< engines by their paths, as backup.json tells them
    std::vector<Damaged> damaged_;
    std::size_t engines_ = 0;
    std::size_t of_ = 0;
    BackupRest rest_;
};

}  // namespace lapwing::exchange

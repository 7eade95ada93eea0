// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <filesystem>
#include <functional>
#include <memory>
#include <string>
#include <vector>

#include "core/exchange/session_file.h"

/// A backup of everything: one bag (BagIt 1.0, RFC 8493) in a ZIP archive, with one session file an engine in
/// data/engines and what belongs to none of them in data/backup.json. Both ways hold one engine at a time, so
/// that memory does not grow with the library.
namespace lapwing::exchange {

inline constexpr std::string_view backup_file_ending = ".lapwing-backup";

/// Called before each engine with how many are done, and while bytes move; false stops the work
/// ("backup.stopped").
using Progress = std::function<bool(std::size_t done, std::size_t of)>;

struct NamedKey {
    std::string public_key;
    std::string name;

    bool operator==(const NamedKey&) const = default;
};

/// What a backup holds beside the engines.
struct BackupRest {
    std::vector<Tester> testers;  ///< all of them, also those that no session names
    std::vector<NamedKey> keys;

    bool operator==(const BackupRest&) const = default;
};

struct BackupOrder {
    std::vector<EngineId> engines;
    std::function<Result<Outgoing>(EngineId)> engine;  ///< asked for one after the other
    BackupRest rest;
    Timestamp at;
    std::string software = "Lapwing";
};

/// Writes the backup whole or not at all. Beside `target` it needs room for the largest engine once more.
Status write_backup(const std::filesystem::path& target, const BackupOrder& order, const Progress& progress);

/// How much a backup may ask for.
Limits backup_limits();

/// A backup of which every byte was checked.
class BackupReader {
public:
    /// Checks the whole file: structure, checksums, and every session file in it as read_session_file does,
    /// one at a time in a folder under `staging_parent` that goes again. Any fault is one sentence.
    static Result<BackupReader> open(const std::filesystem::path& file,
                                     const std::filesystem::path& staging_parent, const Progress& progress);

    [[nodiscard]] std::size_t engines() const { return engines_.size(); }
    [[nodiscard]] const BackupRest& rest() const { return rest_; }
    /// The session file at that place, unpacked and checked.
    Result<Incoming> engine(std::size_t number) const;

private:
    BackupReader(Archive archive, std::filesystem::path staging_parent)
        : archive_(std::make_unique<Archive>(std::move(archive))),
          staging_parent_(std::move(staging_parent)) {}
    Status check(const Progress& progress);

    std::unique_ptr<Archive> archive_;
    std::filesystem::path staging_parent_;
    std::vector<const Entry*> engines_;
    BackupRest rest_;
};

}  // namespace lapwing::exchange

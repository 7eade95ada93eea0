// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <filesystem>
#include <set>

#include "core/exchange/backup_file.h"
#include "core/exchange/whereabouts.h"
#include "core/workflow/bring_in.h"
#include "core/workflow/desk.h"

namespace lapwing::workflow {

using exchange::Progress;

/// Everything that is in the library as one file, owners' names and contacts too. Runs on the caller's
/// thread, which should not be the screen's. The names of this library's own signing key and its secret stay
/// here. Photos and voice notes whose files are lost or damaged here don't stop it: they are handed back.
Result<std::vector<exchange::Gap>> back_up(const Desk& desk, const std::filesystem::path& target,
                                           const Progress& progress);

struct Restored {
    std::size_t engines = 0;  ///< brought in, or found to be here already
    std::size_t of = 0;       ///< in the backup; more than `engines` when it was stopped, or some are damaged
    bool stopped = false;
    std::vector<exchange::Damaged> damaged;  ///< what of the backup could not be brought in
    std::vector<exchange::Gap> gaps;         ///< what the backup itself lacked already
};

/// Public keys whose names a person wants to take over from a backup. A backup carries no signature of its
/// own: a name in it is worth no more than the way it came, so none is taken unasked.
using TrustedKeys = std::set<std::string>;

/// Merges a backup into the library, which may hold anything already; `scratch` is a folder for unpacking,
/// best on the library's own storage. The whole file is checked first: until that is done nothing is changed.
/// Then each engine is one step. Stopping in between leaves whole engines; doing it again brings in the rest.
/// Records that were taken out here come back. Of a damaged backup the engines that are whole come in. A name
/// that a key has here stays, whatever the backup calls it.
Result<Restored> restore(Desk& desk, const std::filesystem::path& file, const std::filesystem::path& scratch,
                         const Progress& progress, const TrustedKeys& trusted = {});

/// The same with a backup that was checked already: nothing is read twice.
Result<Restored> restore(Desk& desk, const exchange::BackupReader& backup, const Progress& progress,
                         const TrustedKeys& trusted = {});

/// What restoring a checked backup would do, engine by engine.
struct BackupPreview {
    struct One {
        std::string engine;
        Preview preview;
    };
    struct Key {
        exchange::NamedKey key;
        std::string here;  ///< what it is called here; empty when it has no name here
    };
    std::vector<One> engines;
    std::vector<Key> keys;            ///< that this library doesn't know, or calls otherwise
    std::size_t new_testers = 0;      ///< that no session names
    std::vector<exchange::Gap> gaps;  ///< photos and voice notes that were lost before the backup was made
    std::vector<exchange::Whereabouts> whereabouts;  ///< photos that tell where they were taken
};
/// Unpacks one engine at a time; fails with "backup.stopped" when `progress` says so.
Result<BackupPreview> preview(const Desk& desk, const exchange::BackupReader& backup,
                              const Progress& progress);

/// Stores the photos and voice notes of a file that was read; its records may then be brought in.
Status keep_files(const Desk& desk, const exchange::Incoming& incoming);

}  // namespace lapwing::workflow

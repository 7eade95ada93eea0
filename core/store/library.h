// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <memory>
#include <span>
#include <string>
#include <vector>

#include "core/store/backup.h"
#include "core/store/folder.h"
#include "core/store/journal.h"
#include "core/store/queries.h"
#include "core/store/schema.h"

namespace lapwing::store {

/// A library opened for writing. One thread at a time; readers use a `Reader` beside it.
class Library {
public:
    /// Opens or makes the library in `folder`, brought up to the last of `list` after a backup. After an
    /// unclean end the whole file is checked first. Errors: "store.in_use", "store.newer_version",
    /// "store.not_ours", "store.read_only", "store.full", "store.damaged" (the file is left as it is: see
    /// open_or_restore).
    static Result<std::unique_ptr<Library>> open(const std::filesystem::path& folder, const Clock& clock,
                                                 const std::vector<Migration>& list = migrations());

    /// Closes; only an undamaged library is marked as closed properly.
    ~Library();
    Library(const Library&) = delete;
    Library& operator=(const Library&) = delete;

    /// The last end was not a proper one, and the check found nothing wrong.
    [[nodiscard]] bool was_checked() const { return was_checked_; }
    [[nodiscard]] const Places& places() const { return places_; }
    [[nodiscard]] const Queries& queries() const { return queries_; }
    /// Someone else (a reader) met damage: the next opening has to look closer.
    void suspect_damage() { suspected_ = true; }

    // See core/store/journal.h. `info` needs name, args and time.
    Result<Outcome> apply(Step info, std::span<const Edit> edits);
    Result<Outcome> undo(std::int64_t number);
    Result<Outcome> redo(std::int64_t number);

    struct Draft {
        std::string key;
        std::string text;  ///< empty: drop it
    };
    /// Not part of the journal. Doesn't wait for the storage: a crash of the program costs nothing, a power
    /// cut perhaps the last moment's drafts.
    Status keep_drafts(std::span<const Draft> drafts);

    /// Gives the owner of a signing key a name; empty: forgets them. A key that is named already keeps since
    /// when it is. Not part of the journal.
    Status name_key(const std::string& public_key, const std::string& name, Timestamp since);

    /// Starts the daily backup if one is due and the library was last closed properly; else null.
    Result<std::unique_ptr<BackupJob>> start_due_backup();

    friend struct Opening;

private:
    Library(Places places, std::unique_ptr<FolderLock> lock, std::unique_ptr<Connection> connection,
            const Clock& clock);

    Places places_;
    std::unique_ptr<FolderLock> lock_;
    std::unique_ptr<Connection> connection_;
    Queries queries_;
    const Clock& clock_;
    bool was_checked_ = false;
    std::atomic<bool> suspected_ = false;
};

struct OpenedLibrary {
    std::unique_ptr<Library> library;
    /// Sentences for a person: "store.was_checked"; "store.restored", "store.started_anew"; and these two for
    /// a file that was gone, "store.restored_lost", "store.started_anew_lost".
    std::vector<Error> told;
};

/// Like Library::open, but a damaged library is set aside (renamed, never deleted) and the last good backup,
/// or failing that an empty library, takes its place. `told` says so.
Result<OpenedLibrary> open_or_restore(const std::filesystem::path& folder, const Clock& clock,
                                      const std::vector<Migration>& list = migrations());

/// A second connection for reading only, beside an open Library. One thread at a time.
class Reader {
public:
    static Result<std::unique_ptr<Reader>> open(const Places& places);
    [[nodiscard]] const Queries& queries() const { return queries_; }

private:
    explicit Reader(std::unique_ptr<Connection> connection)
        : connection_(std::move(connection)), queries_(*connection_) {}
    std::unique_ptr<Connection> connection_;
    Queries queries_;
};

}  // namespace lapwing::store

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "core/store/queries.h"
#include "core/store/recordings.h"
#include "core/store/sweep.h"
#include "core/workflow/command.h"

namespace lapwing::workflow {

class Desk;

struct Opened {
    std::unique_ptr<Desk> desk;
    /// What happened on opening and a person should read: an unclean end that was checked, a damaged library
    /// that was set aside, the backup that stands in for it. Usually empty.
    std::vector<Error> told;
};

/// The one door to the library. Writing happens on the desk's own thread, in the order asked for; reading on
/// the caller's thread through a connection of its own, so that neither waits for the other. All members may
/// be called from any thread.
///
/// Promise: once `Done` was called with a step, what it did survives the end of the process and of the power.
class Desk {
public:
    /// Called on the writer thread, after the commit (or with why there was none).
    using Done = std::function<void(Result<Step>)>;

    /// Opens or makes the library in `folder`; `clock` has to outlive the desk. Fails with a sentence when
    /// another Lapwing has it open, when it is from a newer version, or when the folder can't be written.
    static Result<Opened> open(const std::filesystem::path& folder, const Clock& clock);

    /// Commits what is queued, then closes.
    ~Desk();
    Desk(const Desk&) = delete;
    Desk& operator=(const Desk&) = delete;

    void run(Command command, Done done = {});
    void run(Intent intent, Done done = {});

    /// Puts every record that the step touched back as it was before. Refused with a sentence when one of
    /// them was changed since, or when something recorded since hangs on it.
    void undo(std::int64_t step, Done done = {});
    /// Does an undone step again (not the pad's Redo, which is redo_reading), under the same condition.
    void redo(std::int64_t step, Done done = {});

    std::optional<Step> last_step() const;    ///< what "Undo" would undo
    std::optional<Step> last_undone() const;  ///< what "Undo" of an undo would do again
    std::vector<Step> steps() const;          ///< newest first, at most 200, undone ones included

    /// Half-typed digits and the pad's place: cheap enough for every key. Only the last text of a key that is
    /// waiting gets written, and commands go first. Empty text drops the draft. `done` is called on the
    /// writer thread when this text or a later one of the key is stored. Survives the end of the process; a
    /// power cut may cost the last moment's typing.
    void keep_draft(std::string key, std::string text, std::function<void()> done = {});
    /// The text kept last, stored yet or not; empty when there is none.
    std::string draft(const std::string& key) const;

    std::vector<EngineSummary> engines() const;  ///< the one worked on last first
    std::optional<Engine> engine(EngineId id) const;
    std::vector<Tester> testers() const;               ///< by name
    std::vector<Session> sessions(EngineId id) const;  ///< newest first
    std::optional<Session> session(SessionId id) const;
    std::optional<Visit> visit(SessionId id) const;
    Result<Dossier> dossier(EngineId id) const;  ///< whole history and the testers used
    std::optional<EngineId> engine_of(SessionId id) const;
    std::vector<Note> requests(EngineId id) const;  ///< tests asked for in any of its sessions
    std::optional<Record> record(RecordKind kind, Uuid id) const;
    /// Photos and voice notes against their files, and what takes up room. Looks at every file: not for the
    /// UI thread.
    Result<store::Sweep> sweep() const;

    /// Several reads at one go, on the caller's thread; the error is the read's own.
    template <class T>
    Result<T> look(const std::function<Result<T>(const store::Queries&)>& ask) const {
        std::optional<Result<T>> out;
        look([&](const store::Queries& library) { out = ask(library); });
        return std::move(*out);
    }

    /// What the person here calls whoever signs with this key (see exchange/signature.h); empty when unknown.
    std::string name_of_key(const std::string& public_key) const;
    std::vector<store::Queries::NamedKey> named_keys() const;  ///< by name
    /// Names the owner of a key; an empty name forgets them. `done` is called on the writer thread. `since`
    /// when it is known, for a key that has no name here; now if it is not said.
    void name_key(std::string public_key, std::string name, std::function<void(Status)> done = {},
                  std::optional<Timestamp> since = {});

    /// Called on the writer thread after each commit and before its Done. Register before the first command;
    /// the listener has to outlive the desk.
    void listen(std::function<void(const Change&)> listener);
    /// Called when a read fails (on the thread that asked; the read itself comes back empty), and on the
    /// writer thread when a draft or a backup can't be stored.
    void on_trouble(std::function<void(const Error&)> listener);

    /// Waits until everything queued so far is committed, drafts too.
    void flush();

    const Clock& clock() const;
    const std::filesystem::path& folder() const;
    /// The bytes of photos and voice notes: store them here first, then keep the record that names them.
    const store::AttachmentFiles& files() const;
    /// Where sound lies until its voice note is kept.
    store::Recordings recordings() const;

    template <class RecordId>
    RecordId make_id() const {
        return RecordId::make(clock());
    }

private:
    struct Parts;
    void look(const std::function<void(const store::Queries&)>& ask) const;
    explicit Desk(std::unique_ptr<Parts> parts);
    std::unique_ptr<Parts> parts_;
};

}  // namespace lapwing::workflow

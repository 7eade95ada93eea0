// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <condition_variable>
#include <deque>
#include <functional>
#include <map>
#include <mutex>
#include <optional>
#include <string>
#include <thread>
#include <vector>

#include "core/store/attachment_files.h"
#include "core/store/library.h"
#include "core/workflow/desk.h"

namespace lapwing::workflow {

/// The desk's writing hand: the only thread that touches the writer connection. Commands go in the order they
/// came; drafts when no command waits; a due backup in small bites when nothing else does.
class Writer {
public:
    Writer(std::unique_ptr<store::Library> library, const Clock& clock);
    ~Writer();
    /// Does what is queued and stops.
    void close();
    Writer(const Writer&) = delete;
    Writer& operator=(const Writer&) = delete;

    void run(Intent intent, Desk::Done done);
    void undo(std::int64_t step, Desk::Done done);
    void redo(std::int64_t step, Desk::Done done);

    void keep_draft(std::string key, std::string text, std::function<void()> done);
    /// The text that waits to be stored, if one does.
    std::optional<std::string> waiting_draft(const std::string& key) const;

    void name_key(std::string public_key, std::string name, std::optional<Timestamp> since,
                  std::function<void(Status)> done);

    void flush();

    void listen(std::function<void(const Change&)> listener);
    /// Trouble that no Done can report: a draft or a backup that couldn't be stored.
    void on_trouble(std::function<void(const Error&)> listener);
    void suspect_damage() { library_->suspect_damage(); }

    const store::AttachmentFiles& files() const { return files_; }
    const store::Places& places() const { return library_->places(); }

private:
    struct Draft {
        std::string text;
        std::vector<std::function<void()>> done;
    };
    using Drafts = std::map<std::string, Draft>;
    using Job = std::function<void()>;

    Status mark_changes(Command& command) const;
    void post(Job job);
    void loop(const std::stop_token& stop);
    void write_waiting_drafts();
    void back_up_a_little();
    void finish(Result<store::Outcome> outcome, const Desk::Done& done);
    void tell_trouble(const Error& error);

    std::unique_ptr<store::Library> library_;
    store::AttachmentFiles files_;
    const Clock& clock_;

    mutable std::mutex mutex_;  ///< guards what stands below, down to the listeners
    std::condition_variable_any wake_;
    std::deque<Job> jobs_;
    Drafts waiting_;  ///< not given to the library yet
    Drafts in_hand_;  ///< being stored, or refused by the storage and tried again with the next one
    bool drafts_refused_ = false;  ///< don't try again before something changes
    std::vector<std::function<void(const Change&)>> listeners_;
    std::vector<std::function<void(const Error&)>> trouble_listeners_;

    std::unique_ptr<store::BackupJob> backup_;  ///< the writer thread's own
    bool may_back_up_ = true;                   ///< likewise; once an opening
    std::jthread thread_;                       ///< last: everything else has to outlive it
};

}  // namespace lapwing::workflow

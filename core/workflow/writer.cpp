// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/workflow/writer.h"

#include <algorithm>
#include <future>
#include <iterator>

#include "core/record/merge.h"

namespace lapwing::workflow {
namespace {

/// Pages copied in one bite: a few hundred kilobytes, some milliseconds.
constexpr int backup_bite = 64;

}  // namespace

Writer::Writer(std::unique_ptr<store::Library> library, const Clock& clock)
    : library_(std::move(library)),
      files_(library_->places().attachments()),
      clock_(clock),
      thread_([this](const std::stop_token& stop) { loop(stop); }) {}

Writer::~Writer() {
    close();
}

void Writer::close() {
    if (!thread_.joinable()) return;
    {
        const std::lock_guard lock(mutex_);
        drafts_refused_ = false;  // one last try
    }
    thread_.request_stop();
    thread_.join();
}

void Writer::post(Job job) {
    {
        const std::lock_guard lock(mutex_);
        jobs_.push_back(std::move(job));
    }
    wake_.notify_one();
}

void Writer::run(Intent intent, Desk::Done done) {
    post([this, intent = std::move(intent), done = std::move(done)] {
        auto command = intent(Now{library_->queries(), files_, clock_});
        if (command && !command->keeps_lineage)
            if (auto marked = mark_changes(*command); !marked) command = tl::unexpected(marked.error());
        if (!command) {
            if (done) done(tl::unexpected(command.error()));
            return;
        }
        Step info;
        info.name = std::move(command->name);
        info.args = std::move(command->args);
        info.at = clock_.now();
        info.part_of_last = command->part_of_last;
        finish(library_->apply(std::move(info), command->edits), done);
    });
}

Status Writer::mark_changes(Command& command) const {
    const auto library = library_->queries().library_id();
    if (!library) return tl::unexpected(library.error());
    for (auto& edit : command.edits) {
        auto* put = std::get_if<Put>(&edit);
        if (put == nullptr) continue;
        const auto before = library_->queries().record(kind_of(put->record), id_of(put->record));
        // One that can't be read any more can still be replaced.
        if (before && *before)
            put->record = changed(**before, std::move(put->record), *library, clock_.now());
    }
    return {};
}

void Writer::name_key(std::string public_key, std::string name, std::optional<Timestamp> since,
                      std::function<void(Status)> done) {
    post([this, public_key = std::move(public_key), name = std::move(name), since, done = std::move(done)] {
        const auto status = library_->name_key(public_key, name, since.value_or(clock_.now()));
        if (done) done(status);
    });
}

void Writer::undo(std::int64_t step, Desk::Done done) {
    post([this, step, done = std::move(done)] { finish(library_->undo(step), done); });
}

void Writer::redo(std::int64_t step, Desk::Done done) {
    post([this, step, done = std::move(done)] { finish(library_->redo(step), done); });
}

void Writer::finish(Result<store::Outcome> outcome, const Desk::Done& done) {
    if (!outcome) {
        if (done) done(tl::unexpected(outcome.error()));
        return;
    }
    std::vector<std::function<void(const Change&)>> listeners;
    {
        const std::lock_guard lock(mutex_);
        drafts_refused_ = false;  // the storage takes writes again
        listeners = listeners_;
    }
    if (!outcome->change.kinds.empty())
        for (const auto& listener : listeners)
            listener(outcome->change);
    if (done) done(std::move(outcome->step));
}

void Writer::keep_draft(std::string key, std::string text, std::function<void()> done) {
    {
        const std::lock_guard lock(mutex_);
        auto& draft = waiting_[std::move(key)];
        draft.text = std::move(text);
        if (done) draft.done.push_back(std::move(done));
        drafts_refused_ = false;
    }
    wake_.notify_one();
}

std::optional<std::string> Writer::waiting_draft(const std::string& key) const {
    const std::lock_guard lock(mutex_);
    for (const auto* drafts : {&waiting_, &in_hand_})
        if (const auto found = drafts->find(key); found != drafts->end()) return found->second.text;
    return std::nullopt;
}

void Writer::flush() {
    // Asked for on the writer thread itself (in a Done), waiting would never end.
    if (std::this_thread::get_id() == thread_.get_id()) return;
    std::promise<void> reached;
    post([&] {
        write_waiting_drafts();
        reached.set_value();
    });
    reached.get_future().wait();
}

void Writer::listen(std::function<void(const Change&)> listener) {
    const std::lock_guard lock(mutex_);
    listeners_.push_back(std::move(listener));
}

void Writer::on_trouble(std::function<void(const Error&)> listener) {
    const std::lock_guard lock(mutex_);
    trouble_listeners_.push_back(std::move(listener));
}

void Writer::tell_trouble(const Error& error) {
    std::vector<std::function<void(const Error&)>> listeners;
    {
        const std::lock_guard lock(mutex_);
        listeners = trouble_listeners_;
    }
    for (const auto& listener : listeners)
        listener(error);
}

void Writer::loop(const std::stop_token& stop) {
    std::unique_lock lock(mutex_);
    while (true) {
        const auto drafts_wait = [this] {
            return !drafts_refused_ && !(waiting_.empty() && in_hand_.empty());
        };
        if (!may_back_up_) wake_.wait(lock, stop, [&] { return !jobs_.empty() || drafts_wait(); });
        if (!jobs_.empty()) {
            {
                const Job job = std::move(jobs_.front());
                jobs_.pop_front();
                lock.unlock();
                job();
            }
            lock.lock();
        } else if (drafts_wait()) {
            lock.unlock();
            write_waiting_drafts();
            lock.lock();
        } else if (stop.stop_requested()) {
            break;
        } else if (may_back_up_) {
            lock.unlock();
            back_up_a_little();
            lock.lock();
        }
    }
    backup_.reset();
}

void Writer::write_waiting_drafts() {
    std::vector<store::Library::Draft> drafts;
    {
        const std::lock_guard lock(mutex_);
        for (auto& [key, draft] : waiting_) {
            auto& held = in_hand_[key];
            held.text = std::move(draft.text);
            std::ranges::move(draft.done, std::back_inserter(held.done));
        }
        waiting_.clear();
        for (const auto& [key, draft] : in_hand_)
            drafts.push_back({key, draft.text});
    }
    if (drafts.empty()) return;
    if (const auto status = library_->keep_drafts(drafts); !status) {
        {
            const std::lock_guard lock(mutex_);
            drafts_refused_ = waiting_.empty();
        }
        tell_trouble(status.error());
        return;
    }
    Drafts stored;
    {
        const std::lock_guard lock(mutex_);
        stored.swap(in_hand_);
    }
    for (const auto& [key, draft] : stored)
        for (const auto& done : draft.done)
            done();
}

void Writer::back_up_a_little() {
    if (!backup_) {
        auto started = library_->start_due_backup();
        if (!started) {
            may_back_up_ = false;
            return tell_trouble(started.error());
        }
        backup_ = std::move(*started);
        may_back_up_ = backup_ != nullptr;
        return;
    }
    const auto finished = backup_->step(backup_bite);
    if (finished && !*finished) return;
    backup_.reset();
    may_back_up_ = false;
    if (finished)
        store::thin_out_backups(library_->places(), clock_.now());
    else
        tell_trouble(finished.error());
}

}  // namespace lapwing::workflow

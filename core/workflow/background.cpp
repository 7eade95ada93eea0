// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/workflow/background.h"

namespace lapwing::workflow {

Background::Background() : thread_([this](const std::stop_token& closing) { loop(closing); }) {}

Background::~Background() {
    cancel();
    thread_.request_stop();
    thread_.join();
}

void Background::post(Task task) {
    {
        const std::lock_guard lock(mutex_);
        running_.request_stop();
        next_ = std::move(task);
    }
    wake_.notify_one();
}

void Background::cancel() {
    const std::lock_guard lock(mutex_);
    running_.request_stop();
    next_.reset();
    idle_.notify_all();
}

void Background::wait() {
    std::unique_lock lock(mutex_);
    idle_.wait(lock, [this] { return !busy_ && !next_; });
}

void Background::loop(const std::stop_token& closing) {
    std::unique_lock lock(mutex_);
    while (wake_.wait(lock, closing, [this] { return next_.has_value(); })) {
        running_ = std::stop_source();
        busy_ = true;
        {
            const Task task = std::move(*next_);
            next_.reset();
            const auto stop = running_.get_token();
            lock.unlock();
            task(stop);
        }
        lock.lock();
        busy_ = false;
        idle_.notify_all();
    }
}

}  // namespace lapwing::workflow

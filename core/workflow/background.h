// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <condition_variable>
#include <functional>
#include <mutex>
#include <optional>
#include <stop_token>
#include <thread>

namespace lapwing::workflow {

/// A thread for work of which only the latest request matters: findings after every reading. Asking again
/// drops a request that waits and tells the running one, by its stop token, to give up.
class Background {
public:
    Background();
    ~Background();  ///< gives up what runs and waits for it to notice
    Background(const Background&) = delete;
    Background& operator=(const Background&) = delete;

    /// Runs `work` on the thread and hands its result to `deliver` there, unless something else was asked for
    /// or `cancel` was called in the meantime: after either returns, no older result is delivered any more.
    /// `deliver` may ask again. `work` should look at its stop token at least every few milliseconds.
    template <class T>
    void ask(std::function<T(const std::stop_token&)> work, std::function<void(T)> deliver) {
        post([this, work = std::move(work), deliver = std::move(deliver)](const std::stop_token& stop) {
            T result = work(stop);
            const std::lock_guard lock(mutex_);
            if (!stop.stop_requested()) deliver(std::move(result));
        });
    }
    void cancel();
    /// Waits until nothing runs or waits.
    void wait();

private:
    using Task = std::function<void(const std::stop_token&)>;
    void post(Task task);
    void loop(const std::stop_token& closing);

    std::recursive_mutex mutex_;  ///< recursive: held while delivering, when asking again is allowed
    std::condition_variable_any wake_;
    std::condition_variable_any idle_;
    std::optional<Task> next_;
    std::stop_source running_;
    bool busy_ = false;
    std::jthread thread_;  ///< last: it uses the others
};

}  // namespace lapwing::workflow

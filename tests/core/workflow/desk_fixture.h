// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <atomic>
#include <chrono>
#include <future>

#include "core/workflow/desk.h"
#include "tests/core/store/sample.h"

namespace lapwing::workflow {

/// A clock that a test moves while the writer thread looks at it.
class MovedClock final : public Clock {
public:
    [[nodiscard]] Timestamp now() const override { return {unix_ms_, sample::clock().now().offset_min}; }
    void move_by(std::chrono::milliseconds by) { unix_ms_ += by.count(); }

private:
    std::atomic<std::int64_t> unix_ms_ = sample::clock().now().unix_ms;
};

/// A desk in a folder of its own, with waiting forms of its doors.
class DeskTest : public testing::Test {
protected:
    sample::Folder folder;
    MovedClock clock;
    std::unique_ptr<Desk> desk = open();

    std::unique_ptr<Desk> open() {
        auto opened = Desk::open(folder.path(), clock);
        EXPECT_TRUE(opened) << sample::why(opened);
        return std::move(opened->desk);
    }
    void reopen() {
        desk.reset();
        desk = open();
    }

    template <class Ask>
    static Result<Step> wait(Ask&& ask) {
        std::promise<Result<Step>> answer;
        ask([&](Result<Step> step) { answer.set_value(std::move(step)); });
        return answer.get_future().get();
    }
    template <class Wish>
    Result<Step> run(Wish wish) {
        clock.move_by(std::chrono::seconds(1));
        return wait([&](Desk::Done done) { desk->run(std::move(wish), std::move(done)); });
    }
    Result<Step> undo(std::int64_t step) {
        return wait([&](Desk::Done done) { desk->undo(step, std::move(done)); });
    }
    Result<Step> redo(std::int64_t step) {
        return wait([&](Desk::Done done) { desk->redo(step, std::move(done)); });
    }
};

}  // namespace lapwing::workflow

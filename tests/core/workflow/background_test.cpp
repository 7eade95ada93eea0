// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/workflow/background.h"

#include <gtest/gtest.h>

#include <atomic>
#include <chrono>
#include <thread>

namespace lapwing::workflow {
namespace {

using namespace std::chrono_literals;

TEST(Background, DeliversOnItsOwnThread) {
    Background background;
    std::thread::id where;
    int got = 0;
    background.ask<int>([](const std::stop_token&) { return 7; },
                        [&](int value) {
                            got = value;
                            where = std::this_thread::get_id();
                        });
    background.wait();
    EXPECT_EQ(got, 7);
    EXPECT_NE(where, std::this_thread::get_id());
}

TEST(Background, DeliversOnlyTheLatest) {
    Background background;
    std::vector<int> delivered;
    std::atomic<int> worked = 0;
    for (int i = 0; i < 50; ++i)
        background.ask<int>(
            [&, i](const std::stop_token& stop) {
                ++worked;
                for (int wait = 0; wait < 20 && !stop.stop_requested(); ++wait)
                    std::this_thread::sleep_for(1ms);
                return i;
            },
            [&](int value) { delivered.push_back(value); });
    background.wait();
    EXPECT_EQ(delivered, std::vector<int>{49});
    EXPECT_LT(worked, 50);
}

TEST(Background, DeliversNothingAfterCancel) {
    Background background;
    std::atomic<bool> started = false;
    std::atomic<bool> delivered = false;
    background.ask<int>(
        [&](const std::stop_token& stop) {
            started = true;
            while (!stop.stop_requested())
                std::this_thread::sleep_for(1ms);
            return 0;
        },
        [&](int) { delivered = true; });
    while (!started)
        std::this_thread::sleep_for(1ms);
    background.cancel();
    background.wait();
    EXPECT_FALSE(delivered);
}

TEST(Background, LetsADeliveryAskAgain) {
    Background background;
    std::atomic<int> rounds = 0;
    std::function<void(int)> again = [&](int value) {
        ++rounds;
        if (value > 0) background.ask<int>([value](const std::stop_token&) { return value - 1; }, again);
    };
    background.ask<int>([](const std::stop_token&) { return 3; }, again);
    background.wait();
    EXPECT_EQ(rounds, 4);
}

TEST(Background, EndsWhileSomethingRuns) {
    std::atomic<bool> delivered = false;
    {
        Background background;
        background.ask<int>(
            [](const std::stop_token& stop) {
                while (!stop.stop_requested())
                    std::this_thread::sleep_for(1ms);
                return 0;
            },
            [&](int) { delivered = true; });
        std::this_thread::sleep_for(5ms);
    }
    EXPECT_FALSE(delivered);
}

}  // namespace
}  // namespace lapwing::workflow

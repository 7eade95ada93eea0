// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <string>
#include <utility>
#include <vector>

#include "core/findings/case.h"
#include "core/odds/evidence.h"

/// What readings share: the gauges, hoses and leak-down testers that they were taken with. Internal to this
/// room.
namespace lapwing::odds {

/// Gives each a place in the evidence, by the order in which it was met first.
class TestersUsed {
public:
    /// @param whole the engine with what its card lacks guessed
    TestersUsed(const findings::Case& at, const Engine& whole, const Assumptions& assumptions, Evidence& out)
        : at_(at), whole_(whole), assumptions_(assumptions), out_(out) {}

    /// Null, one that is not known, is a gauge too.
    std::size_t gauge(const Tester* gauge);

    /// Of what a reading was taken through; only where there is a cranking model. What that can't have counts
    /// as the first.
    std::size_t hose(const Tester* gauge, const std::string& adapter);

    /// Of a leak-down tester (null: not known) at a set pressure above 0, Pa.
    /// @param failed nobody knows how much air the tester let through
    std::size_t curve(double set_pa, const Tester* tester, bool failed = false);

private:
    const findings::Case& at_;
    const Engine& whole_;
    const Assumptions& assumptions_;
    Evidence& out_;
    std::vector<const Tester*> gauges_;
    std::vector<std::pair<const Tester*, bool>> leak_testers_;  ///< whether it failed its check
};

}  // namespace lapwing::odds

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/workflow/desk.h"
#include "qml/viewmodels/step_place.h"

namespace lapwing {

/// Where a test is done that the engine had before or that somebody asks for: readings taken under other
/// conditions belong in a session of their own.
struct Again {
    std::optional<SessionId> in;  ///< a session that is open for it; absent: a new one
    bool ask = false;             ///< throttle and heat are to be looked at and noted first
};

/// @param from the session that the test is asked in
/// @param other it is to be done under other conditions than those of `from`
Again again(const workflow::Desk& desk, EngineId engine, SessionId from, TestKind test,
            std::optional<int> cylinder, bool other);

/// The page for it: the pad of the session that is open for it, or the page that looks at the conditions.
StepPlace place_again(const workflow::Desk& desk, EngineId engine, SessionId from, TestKind test,
                      std::optional<int> cylinder);

}  // namespace lapwing

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <stdexcept>
#include <string>

#include "core/workflow/desk.h"

namespace lapwing::test {

/// Fills a library with made-up engines, without the interface. Throws when the library refuses: a test whose
/// stock is wrong has nothing to say.
class Stock {
public:
    explicit Stock(workflow::Desk& desk) : desk_(desk) {}

    EngineId engine(const std::string& name, int cylinders);
    SessionId session(EngineId engine, const std::string& title);
    TesterId tester(TesterKind kind, const std::string& name, const std::string& bar);
    /// Dry test, leak-down with one exit each, and a wet test of the first cylinder; the last cylinder is
    /// bad.
    void readings(SessionId session, int cylinders);
    void clearance(SessionId session, int cylinder, const std::string& found_mm);
    /// A line of the plan with everything on it.
    PlanLineId plan_line(SessionId session, PlanOption option, const std::string& work);
    /// A photo or voice note of the session that holds these bytes.
    AttachmentId attachment(SessionId session, AttachmentKind kind, std::string_view bytes);

    workflow::Step run(workflow::Intent intent);

private:
    workflow::Desk& desk_;
};

}  // namespace lapwing::test

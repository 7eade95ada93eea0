// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <vector>

#include "platform/cli/arguments.h"

/// One function a verb, each in a file of its name.
namespace lapwing::cli {

Verb sums_leak();
Verb sums_law();
Verb sums_crank();
Verb sums_healthy();
Verb sums_oil();
Verb sums_hose();
Verb sums_turning();
Verb sums_altitude();
Verb sums_torque();
Verb sums_unit();
Verb needle_verb();
Verb check_verb();
Verb findings_verb();
Verb compare_verb();
Verb history_verb();
Verb report_verb();
Verb csv_verb();
Verb demo_verb();
Verb merge_verb();

std::vector<Verb> all_verbs();

inline constexpr Option json_option{"--json", "", "one JSON object in SI and nothing else"};

}  // namespace lapwing::cli

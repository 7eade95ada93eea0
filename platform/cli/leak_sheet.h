// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/calculators/calculators.h"
#include "core/uncertainty/instrument.h"
#include "platform/cli/arguments.h"

namespace lapwing::cli {

/// The options that describe a leak-down tester.
std::vector<Option> tester_options();
/// The gauges' class as it stands on their dials: EN 837-1 "1.6", ASME B40.100 "B".
tl::expected<uncertainty::AccuracyClass, Failure> read_class(Arguments& arguments, double assumed_percent);
/// --gauges two: the set pressure has a gauge of its own.
bool two_gauges(Arguments& arguments);

/// --set and --held with that tester in that shop, as the app's calculators take them, which say what all
/// that is doubtful comes to. Both must be given.
calculators::Worksheet leak_sheet(Arguments& arguments, const findings::Reference& reference);

/// Which of it was not given.
std::vector<std::string> assumed_of(const Arguments& arguments);

/// The number of one line of an answer; null where it has none.
const findings::Derived* line_of(const calculators::Answer& answer, std::string_view name);
/// Its standard uncertainty; 0 where none is known.
double u_of(const tl::expected<calculators::Answer, Error>& answer, std::string_view name);

}  // namespace lapwing::cli

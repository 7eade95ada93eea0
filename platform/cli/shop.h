// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <vector>

#include "core/findings/reference.h"
#include "platform/cli/arguments.h"

namespace lapwing::cli {

/// --altitude and --ambient: which air the shop stands in.
std::vector<Option> shop_options();
/// Station pressure, Pa absolute; the standard atmosphere's at sea level when neither was given.
tl::expected<double, Failure> read_shop_pa(Arguments& arguments);

/// What that pressure may be out by, standard, as a share of it: a barometer's error, else the weather's; 0
/// where neither was given.
double shop_doubt(const Arguments& arguments, const findings::Reference& reference);

/// Options of one list after those of another.
std::vector<Option> joined(std::vector<Option> first, const std::vector<Option>& second);

}  // namespace lapwing::cli

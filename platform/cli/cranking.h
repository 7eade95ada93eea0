// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <vector>

#include "core/physics/cranking.h"
#include "platform/cli/arguments.h"

namespace lapwing::cli {

/// The options that describe engine, tester and starter to the cranking model; those of the shop are among
/// them.
std::vector<Option> cranking_options();
tl::expected<physics::CrankingCase, Failure> read_cranking(Arguments& arguments);

/// Unit of the first pressure on the command line, else bar: the one that the answer is shown in.
Unit<PressureTag> pressure_unit(Arguments& arguments, std::initializer_list<std::string_view> names);

inline constexpr Option unit_option{"--unit", "UNIT",
                                    "pressure unit of the table: bar (default), psi, kPa, kgf/cm2 ..."};
tl::expected<Unit<PressureTag>, Failure> read_unit(Arguments& arguments);

}  // namespace lapwing::cli

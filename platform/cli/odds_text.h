// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/odds/where_it_leaks.h"
#include "qml/format/formatter.h"

/// Where it leaks, as lines on standard output.
namespace lapwing::cli {

/// One cylinder: sentence, shares with their intervals, chances, readings to expect, contradictions, reasons.
void print_odds(const findings::CylinderFindings& rules, const odds::CylinderOdds& of,
                const format::Formatter& format, const findings::Reference& reference);

/// What the odds say of the whole engine, which tests would tell most, and what they rest on.
void print_odds_of_engine(const odds::WhereItLeaks& leaks, const format::Formatter& format,
                          const findings::Reference& reference);

}  // namespace lapwing::cli

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/odds/where_it_leaks.h"
#include "core/report/report.h"

namespace lapwing::report {

/// Where it leaks, for who owns the engine: one plain sentence a cylinder, the leaking ones first, with the
/// first answer, how sure it is in words, and what may turn it round; cylinders of which the same is to be
/// said in one. Then what repairs should bring, and in a paragraph of its own what a mechanic asks. Empty
/// where nothing was measured.
std::vector<Block> leaks_for_owner(const findings::Findings& found, const odds::WhereItLeaks& leaks,
                                   const findings::Reference& reference);

/// Whether two cylinders were tested alike and read the same within their doubt, with nothing louder at any
/// exit of the first than of the second.
bool reads_alike(const findings::CylinderFindings& one, const findings::CylinderFindings& other);

/// What this visit read makes nothing sound in which air found a leak before.
bool left_open(const odds::CylinderOdds& odds, const findings::Findings& found,
               const findings::Reference& reference);

/// What repairs of parts that may well be at fault should bring.
void add_repairs(Facts& to, const odds::CylinderOdds& odds, const findings::Reference& reference,
                 bool name_cylinder);

}  // namespace lapwing::report

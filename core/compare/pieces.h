// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/compare/measured.h"

/// What comparing and history share. Internal to this room.
namespace lapwing::compare {

Measure measure_of(const Measured& of, const Doubtful& compared, bool converted);

/// One sentence for all the cylinders and tests that it holds for.
void add_reasons(std::vector<Reason>& all, const std::vector<Reason>& more);

}  // namespace lapwing::compare

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/physics/cranking.h"
#include "core/physics/cranking_strokes.h"

/// From a case to the kernel; for cranking*.cpp alone.
namespace lapwing::physics {

/// Only for a case that passed `check`.
[[nodiscard]] CrankingConstants<double> constants_of(const CrankingCase& of);

/// Fails with "cranking.accuracy".
[[nodiscard]] Status check(const CrankingAccuracy& accuracy);

/// What to say when the strokes of a case do not end.
[[nodiscard]] tl::unexpected<Error> endless();

/// crank_group in two and four lanes, the latter only on a processor with AVX2.
[[nodiscard]] bool crank_two(const CrankingConstants<double>* cases, std::size_t count, int strokes,
                             double step_share, double* puffs_gauge_pa);
[[nodiscard]] bool crank_four(const CrankingConstants<double>* cases, std::size_t count, int strokes,
                              double step_share, double* puffs_gauge_pa);

}  // namespace lapwing::physics

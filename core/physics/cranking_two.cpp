// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/physics/cranking_setup.h"

// Two lanes: SSE2 and NEON are part of every 64-bit processor of their kind.
namespace lapwing::physics {

bool crank_two(const CrankingConstants<double>* cases, std::size_t count, int strokes, double step_share,
               double* puffs_gauge_pa) {
    return crank_group<Pack<2>>(cases, count, strokes, step_share, puffs_gauge_pa);
}

}  // namespace lapwing::physics

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// Whatever brings code of its own is included before the processor is named: nothing of it may be compiled
// for AVX2 and then serve the rest of the program.
#include <cmath>
#include <cstddef>

#include "core/physics/cranking.h"

#if defined(__x86_64__) && defined(__GNUC__)
#include <immintrin.h>
#if defined(__clang__)
#pragma clang attribute push(__attribute__((target("avx2"))), apply_to = function)
#else
#pragma GCC target("avx2")
#endif
#define LAPWING_FOUR_LANES 1
#endif

#include "core/physics/cranking_setup.h"

namespace lapwing::physics {

#if defined(LAPWING_FOUR_LANES)
bool crank_four(const CrankingConstants<double>* cases, std::size_t count, int strokes, double step_share,
                double* puffs_gauge_pa) {
    return crank_group<Pack<4>>(cases, count, strokes, step_share, puffs_gauge_pa);
}
#else
bool crank_four(const CrankingConstants<double>*, std::size_t, int, double, double*) {
    return false;
}
#endif

}  // namespace lapwing::physics

#if defined(LAPWING_FOUR_LANES) && defined(__clang__)
#pragma clang attribute pop
#endif

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <bit>
#include <cmath>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <random>

#include "core/odds/where_it_leaks.h"
#include "tests/odds/world.h"

/// odds_figures [NUDGE]: every figure that is shown of some drawn engines, for processors.py to compare.
/// `NUDGE` moves every working assumption by this share of itself, up and down by turns: as another C library
/// moves the last digits of what is worked out.
namespace lapwing::odds::trial {
namespace {

/// Of what this C library's functions give on this processor, to the last bit.
std::uint64_t library_bits() {
    std::uint64_t out = 0;
    for (int i = 0; i < 20000; ++i) {
        volatile double x = 1e-3 + 1e-3 * i;
        for (const double value : {std::exp(-x), std::log(x), std::cos(x), std::pow(x, 1.3)})
            out = 1099511628211ULL * out + std::bit_cast<std::uint64_t>(value);
    }
    return out;
}

void show(const WhereItLeaks& odds) {
    for (const CylinderOdds& cylinder : odds.cylinders) {
        std::printf("chance %.9f\n", cylinder.seals_well);
        for (const PathOdds& path : cylinder.paths)
            std::printf("chance %.9f\nchance %.9f\nchance %.9f\nchance %.9f\nchance %.9f\n", path.share.mean,
                        path.share.lo, path.share.hi, path.main, path.fault);
        for (const UnderOther& other : cylinder.under_others)
            std::printf("chance %.9f\n", other.chance);
        for (const AfterRepair& after : cylinder.expected_after)
            std::printf("bar %.9f\nbar %.9f\nbar %.9f\n", 1e-5 * after.value_pa, 1e-5 * after.lo_pa,
                        1e-5 * after.hi_pa);
    }
    for (const NextTest& test : odds.next_tests)
        std::printf("bits %.9f\n", test.gain_bits);
}

int run(double nudge) {
    const Assumptions assumptions = *built_in_assumptions();
    const auto reference = *findings::built_in_reference();
    Assumptions nudged = assumptions;
    double sign = 1.0;
    for (const auto& number : assumptions.numbers) {
        nudged.set(number.id, assumptions.at(number.id) * (1.0 + sign * nudge));
        sign = -sign;
    }
    std::printf("library %016llx\n", static_cast<unsigned long long>(library_bits()));
    constexpr std::uint64_t engines = 8;
    for (std::uint64_t engine = 1; engine <= engines; ++engine) {
        std::mt19937_64 pick(engine);
        const auto made = [&](unsigned of_ten) { return pick() % 10 < of_ten; };
        const Tests tests{made(9), made(5), made(8), made(5), made(7)};
        const Drawn drawn = draw(assumptions, reference, {}, tests, 5000 + engine);
        OddsOptions options;
        options.seed = engine;
        options.assumptions = &nudged;
        const auto odds = where_it_leaks(drawn.dossier, drawn.dossier.visits.front(), reference, options);
        if (!odds) return 1;
        show(*odds);
    }
    return 0;
}

}  // namespace
}  // namespace lapwing::odds::trial

int main(int count, char** words) {
    return lapwing::odds::trial::run(count > 1 ? std::strtod(words[1], nullptr) : 0.0);
}

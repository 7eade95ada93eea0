// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/physics/cranking_many.h"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

#include "core/physics/cranking_setup.h"

namespace lapwing::physics {

namespace {

tl::unexpected<Error> named(std::size_t of_case, Error error) {
    error.english = fmt::format("Case {}: {}", of_case + 1, error.english);
    return tl::unexpected(std::move(error));
}

bool has_four() {
#if defined(__x86_64__) && defined(__GNUC__)
    return __builtin_cpu_supports("avx2") != 0;
#else
    return false;
#endif
}

using Group = bool (*)(const CrankingConstants<double>*, std::size_t, int, double, double*);

}  // namespace

bool available(Lanes lanes) {
    return lanes != Lanes::four || has_four();
}

Status crank_many_into(std::span<const CrankingCase> cases, std::span<double> puffs_gauge_pa,
                       const CrankingAccuracy& accuracy, Lanes lanes) {
    if (auto ok = check(accuracy); !ok) return ok;
    if (!available(lanes))
        return fail("cranking.lanes",
                    "This processor cannot run four cases side by side. Ask for the widest.");
    if (cases.empty()) return {};
    const int strokes = cases.front().strokes;
    for (std::size_t i = 0; i < cases.size(); ++i) {
        if (auto ok = check(cases[i]); !ok) return named(i, ok.error());
        if (cases[i].strokes != strokes) {
            return fail("cranking.many",
                        "Case {} has {} strokes and the first has {}. Give all cases the same number.", i + 1,
                        cases[i].strokes, strokes);
        }
    }
    const std::size_t row = static_cast<std::size_t>(strokes);
    if (puffs_gauge_pa.size() != cases.size() * row) {
        return fail("cranking.many", "{} readings do not fit {} cases of {} strokes. Give room for {}.",
                    puffs_gauge_pa.size(), cases.size(), strokes, cases.size() * row);
    }
    if (lanes == Lanes::widest) lanes = has_four() ? Lanes::four : Lanes::two;
    const std::size_t width = lanes == Lanes::four ? 4 : lanes == Lanes::two ? 2 : 1;
    const Group group = lanes == Lanes::four  ? crank_four
                        : lanes == Lanes::two ? crank_two
                                              : crank_group<double>;
    CrankingConstants<double> together[4];
    for (std::size_t first = 0; first < cases.size(); first += width) {
        const std::size_t count = std::min(width, cases.size() - first);
        for (std::size_t i = 0; i < count; ++i)
            together[i] = constants_of(cases[first + i]);
        double* const puffs = puffs_gauge_pa.data() + first * row;
        if (group(together, count, strokes, accuracy.step_share, puffs)) continue;
        // A stroke that does not end stops its whole group: run them one by one to name it and keep the rest.
        for (std::size_t i = 0; i < count; ++i) {
            if (!crank_group<double>(together + i, 1, strokes, accuracy.step_share, puffs + i * row))
                return named(first + i, endless().value());
        }
    }
    return {};
}

Result<ManyReadings> crank_many(std::span<const CrankingCase> cases, const CrankingAccuracy& accuracy,
                                Lanes lanes) {
    ManyReadings out;
    out.strokes = cases.empty() ? 0 : static_cast<std::size_t>(std::max(cases.front().strokes, 0));
    out.puffs_gauge_pa.resize(cases.size() * out.strokes);
    if (auto ok = crank_many_into(cases, out.puffs_gauge_pa, accuracy, lanes); !ok)
        return tl::unexpected(ok.error());
    return out;
}

}  // namespace lapwing::physics

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/odds/surface_cache.h"

#include <algorithm>
#include <array>

namespace lapwing::odds {
namespace {

bool same(const SurfaceRange& a, const SurfaceRange& b) {
    const auto numbers = [](const SurfaceRange& of) {
        const physics::CrankingCase& middle = of.middle;
        return std::array{of.ratio_spread,
                          of.closing_spread_rad,
                          of.heat_spread,
                          of.speed_spread,
                          of.largest_oil_m3,
                          middle.crank.bore_m,
                          middle.crank.stroke_m,
                          middle.crank.rod_m,
                          middle.compression_ratio,
                          static_cast<double>(middle.ratio_kind),
                          middle.closing_after_bdc_rad,
                          middle.opening_before_bdc_rad,
                          middle.speed_rad_s,
                          middle.ambient_pa,
                          middle.air_k,
                          middle.wall_k,
                          middle.fill,
                          middle.heat_w_m2k,
                          static_cast<double>(middle.strokes)};
    };
    return numbers(a) == numbers(b) && a.middle.tester == b.middle.tester;
}

}  // namespace

Result<std::shared_ptr<const CrankSurface>> SurfaceCache::surface(const SurfaceRange& range) {
    {
        const std::lock_guard lock(mutex_);
        const auto found =
            std::ranges::find_if(known_, [&](const auto& one) { return same(one->range(), range); });
        if (found != known_.end()) return *found;
    }
    // The lock is not held over the fit: two threads that ask for the same at once both work it out.
    auto fitted = CrankSurface::fit(range);
    if (!fitted) return tl::unexpected(fitted.error());
    auto made = std::make_shared<const CrankSurface>(std::move(*fitted));
    constexpr std::size_t enough = 8;
    const std::lock_guard lock(mutex_);
    if (known_.size() == enough) known_.pop_front();
    known_.push_back(made);
    return made;
}

}  // namespace lapwing::odds

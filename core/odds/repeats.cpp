// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/odds/repeats.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "core/findings/instruments.h"
#include "core/odds/evidence_parts.h"

namespace lapwing::odds {

double mean(const std::vector<const Reading*>& readings, std::optional<TypedPressure> Reading::*field) {
    double sum = 0.0;
    for (const Reading* reading : readings)
        sum += (reading->*field)->si();
    return sum / static_cast<double>(readings.size());
}

double coarsest(const std::vector<const Reading*>& readings, std::optional<TypedPressure> Reading::*field) {
    double out = 0.0;
    for (const Reading* reading : readings)
        out = std::max(out, step_pa(*reading, field));
    return out;
}

double further_apart(const std::vector<const Reading*>& readings,
                     std::optional<TypedPressure> Reading::*field, double usual_pa, const Through& through) {
    std::map<std::size_t, std::vector<const Reading*>> alike;
    for (const Reading* reading : readings)
        alike[through ? through(reading) : 0].push_back(reading);
    const auto count = static_cast<double>(readings.size());
    const double free = count - static_cast<double>(alike.size());
    if (!(free > 0.0)) return 0.0;
    double squares = 0.0;
    for (const auto& [place, group] : alike) {
        const double middle = mean(group, field);
        for (const Reading* reading : group)
            squares += std::pow((reading->*field)->si() - middle, 2);
    }
    return std::sqrt(std::max(squares / free - 4.0 * usual_pa * usual_pa, 0.0) / count);
}

std::vector<std::pair<std::size_t, double>> other_shares(const std::vector<const Reading*>& readings,
                                                         std::size_t own, const Through& through) {
    std::map<std::size_t, double> shares;
    for (const Reading* reading : readings)
        if (const std::size_t place = through(reading); place != own)
            shares[place] += 1.0 / static_cast<double>(readings.size());
    return {shares.begin(), shares.end()};
}

void widen_by_other_gauges(const findings::Case& state, const std::vector<const Reading*>& readings,
                           double step_pa, CrankEvidence& mean) {
    const auto gauge = [&](const Reading* reading) {
        return findings::tester_of(state, reading->test, reading->tester);
    };
    std::vector<const Tester*> gauges;
    for (const Reading* reading : readings)
        if (std::ranges::find(gauges, gauge(reading)) == gauges.end()) gauges.push_back(gauge(reading));
    if (gauges.size() < 2) return;
    const auto share = [&](const Tester* of) {
        return static_cast<double>(std::ranges::count(readings, of, gauge)) /
               static_cast<double>(readings.size());
    };
    const Tester* own = gauge(readings.back());
    mean.offset_pa *= share(own);
    mean.gain *= share(own);
    for (const Tester* other : gauges) {
        if (other == own) continue;
        const CrankEvidence on = crank_evidence(other, mean.final_pa, step_pa, state.reference);
        mean.apart_pa =
            std::hypot(mean.apart_pa, share(other) * on.offset_pa, share(other) * on.gain * mean.final_pa);
    }
}

}  // namespace lapwing::odds

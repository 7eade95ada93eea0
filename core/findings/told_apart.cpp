// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/findings/told_apart.h"

#include <array>
#include <cmath>
#include <utility>

namespace lapwing::findings {

bool lies_close(const Reference& reference, double distance, double level) {
    return std::abs(distance) <= reference.assumed("near-limit") * level;
}

Word what_narrows(const std::vector<DoubtShare>& doubts) {
    static constexpr auto ways = std::to_array<std::pair<std::string_view, std::string_view>>({
        {"doubt:gauge", "narrow:gauge"},
        {"doubt:resolution", "narrow:resolution"},
        {"doubt:restrictor", "narrow:restrictor"},
        {"doubt:droop", "narrow:droop"},
        {"doubt:air_pressure", "narrow:air_pressure"},
        {"doubt:model", "narrow:conditions"},
    });
    if (!doubts.empty())
        for (const auto& [part, way] : ways)
            if (doubts.front().of.code == part) return Word{std::string(way)};
    return Word{"narrow:repeat"};
}

Word what_narrows(const Derived& number, const Figure& limit) {
    if (limit.u95.value_or(0.0) > number.figure.u95.value_or(0.0)) return Word{"narrow:air_pressure"};
    return what_narrows(number.from.doubts);
}

}  // namespace lapwing::findings

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/findings/reference.h"

#include <algorithm>

#include "core/base/apart.h"

namespace lapwing::findings {
namespace {

template <class T>
const T* with_id(const std::vector<T>& list, std::string_view id) {
    const auto at = std::ranges::find(list, id, &T::id);
    return at == list.end() ? nullptr : &*at;
}

/// SI value of "25 %" or "11.8 V": whichever dimension knows the unit.
template <class... Tags>
double si_of(double value, std::string_view unit) {
    double si = value;
    (void)((Unit<Tags>::find(unit) ? (si = Unit<Tags>::find(unit)->quantity(value).si(), true) : false) ||
           ...);
    return si;
}

}  // namespace

State LeakageBand::judge(double leakage) const {
    if (!is_above(leakage, good)) return State::good;
    return is_above(leakage, borderline) ? State::fault : State::borderline;
}

const LeakageBand& Reference::deciding_band() const {
    return *std::ranges::find_if(leakage, &LeakageBand::gives_state);
}

const LeakageBand* Reference::band(std::string_view id) const {
    return with_id(leakage, id);
}

const SpreadRule* Reference::spread_rule(std::string_view id) const {
    return with_id(spread, id);
}

const Assumption* Reference::assumption(std::string_view id) const {
    return with_id(assumptions, id);
}

double Reference::assumed(std::string_view id) const {
    const Assumption* found = assumption(id);
    return found ? si_of<RatioTag, PressureTag, LengthTag, VoltageTag, AreaTag, VolumeTag, AngleTag,
                         RotationTag, TemperatureTag>(found->value, found->unit)
                 : 0.0;
}

uncertainty::ErrorShares Reference::error_shares() const {
    return {assumed("gauge-offset"), assumed("gauge-gain")};
}

std::optional<Path> Reference::path_of(Exit exit, StrokeCycle cycle) const {
    const auto at = std::ranges::find(exits, exit, &ExitPath::exit);
    if (at == exits.end()) return std::nullopt;
    return cycle == StrokeCycle::four ? at->four_stroke : at->two_stroke;
}

const PrepareReason* Reference::prepare_reason(PrepareStep step) const {
    const auto at = std::ranges::find(prepare, step, &PrepareReason::step);
    return at == prepare.end() ? nullptr : &*at;
}

std::vector<const Caution*> Reference::cautions_at(std::string_view place) const {
    std::vector<const Caution*> out;
    for (const Caution& caution : cautions)
        if (std::ranges::find(caution.places, place) != caution.places.end()) out.push_back(&caution);
    return out;
}

Result<Reference> built_in_reference() {
    return read_reference(built_in_texts());
}

}  // namespace lapwing::findings

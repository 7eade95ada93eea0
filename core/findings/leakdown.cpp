// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <algorithm>
#include <cmath>

#include "core/findings/instruments.h"
#include "core/findings/leak_sums.h"
#include "core/findings/touched.h"

namespace lapwing::findings {
namespace {

/// Mean set and held of repeats, null-safe in the tester.
std::optional<HeldOfSet> shown_of(const Case& at, const std::vector<const Reading*>& readings) {
    return held_of_set(at, tester_of(at, TestKind::leak_down, readings.back()->tester), readings);
}

void add_bands(const Case& at, LeakDown& out, const HeldOfSet& shown) {
    const Reference& reference = at.reference;
    struct Done {
        Pressure set;
        Length restrictor;
        std::optional<LeakageOn> on;
    };
    std::vector<Done> done;  // most bands share one tester
    for (const LeakageBand& band : reference.leakage) {
        const Length restrictor = band.restrictor_by_bore
                                      ? Length::from_si(usual_restrictor_m(at.engine, reference))
                                      : band.restrictor;
        auto known = std::ranges::find_if(
            done, [&](const Done& one) { return one.set == band.set && one.restrictor == restrictor; });
        if (known == done.end()) {
            done.push_back({band.set, restrictor, leakage_on(shown, band.set, restrictor)});
            known = std::prev(done.end());
        }
        if (const auto& on = known->on)
            out.bands.push_back({band.id, band.judge(on->leakage), on->leakage, on->u95, on->own_u95});
    }
}

}  // namespace

std::optional<LeakDown> leak_down_of(const Case& at, int cylinder) {
    const auto readings = at_one_set_pressure(at, cylinder, false);
    if (readings.empty()) return std::nullopt;
    const auto shown = shown_of(at, readings);
    if (!shown) return std::nullopt;
    LeakDown out;
    out.set = shown->set;
    out.held = shown->held;
    out.leakage = shown->leakage;
    out.repeats = static_cast<int>(readings.size());
    out.tag = readings.back()->tag;
    out.superseded = superseded(at, cylinder, out.tag, readings.back()->taken_at);
    out.oiled = readings.back()->oiled;
    for (const Reading* reading : readings)
        out.readings.push_back(reading->id);
    if (auto makers = on_makers_tester(at, *shown)) out.on_testers.push_back(std::move(*makers));
    for (const ReferenceTester& reference : at.reference.testers)
        if (auto converted = on_tester(at, *shown, reference.set, reference.restrictor))
            out.on_testers.push_back(std::move(*converted));
    out.state = judge_leak(at, *shown, out.on_testers, out.why);
    LeakSizes sizes = leak_sizes(*shown);
    out.leak_area = std::move(sizes.area);
    out.leak_hole = std::move(sizes.hole);
    out.flow = std::move(sizes.flow);
    add_bands(at, out, *shown);
    out.bands_say = bands_say(out.bands, at.reference);
    if (const auto others = at_one_set_pressure(at, cylinder, true); !others.empty()) {
        const Tester* tester = tester_of(at, TestKind::leak_down, readings.back()->tester);
        const bool same = tester == tester_of(at, TestKind::leak_down, others.back()->tester);
        if (const auto other = shown_of(at, others)) {
            // Not a repeat: another pressure presses the rings otherwise, so it is said, not counted in.
            out.why.push_back(
                remark("why.leak_other_set", other->set.figure, other->held.figure, other->leakage.figure));
            out.why.back().from = {other->leakage.from};
            if (same) out.law = leak_law(at, tester, *shown, *other);
        }
    }
    return out;
}

}  // namespace lapwing::findings

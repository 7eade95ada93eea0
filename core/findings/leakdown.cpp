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

/// What these readings, all at one set pressure, say.
std::optional<LeakDown> judged(const Case& at, int cylinder, const std::vector<const Reading*>& readings) {
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
    return out;
}

/// Doubt of a leak's area that another reading of the same tester does not share, as a share of it.
double own_doubt(const Derived& area) {
    double own = 1.0;
    for (const DoubtShare& part : area.from.doubts)
        if (part.of.code == "doubt:restrictor") own -= part.share;
    return area.figure.u95.value_or(0.0) * std::sqrt(std::max(0.0, own)) / area.figure.si;
}

/// The leak's size by both readings of one tester: too far apart for one leak, whatever its law.
bool sizes_differ(const Case& at, const LeakDown& one, const LeakDown& other) {
    if (!one.leak_area || !other.leak_area) return false;
    const Derived &a = *one.leak_area, &b = *other.leak_area;
    if (!(a.figure.si > 0.0) || !(b.figure.si > 0.0)) return false;
    const double doubt = std::hypot(own_doubt(a), own_doubt(b));
    return std::abs(std::log(a.figure.si / b.figure.si)) >
           std::log(at.reference.assumed("leak-sizes-apart")) + doubt;
}

}  // namespace

std::optional<LeakDown> leak_down_of(const Case& at, int cylinder) {
    auto readings = at_one_set_pressure(at, cylinder, false);
    auto out = judged(at, cylinder, readings);
    if (!out) return std::nullopt;
    auto others = at_one_set_pressure(at, cylinder, true);
    auto other = judged(at, cylinder, others);
    if (!other) return out;
    // A fault found at one set pressure is not undone by a look at another one.
    if (other->state > out->state) {
        std::swap(readings, others);
        std::swap(out, other);
    }
    // Not a repeat: another pressure presses the rings otherwise, so it is said, not counted in.
    out->why.push_back(
        remark("why.leak_other_set", other->set.figure, other->held.figure, other->leakage.figure));
    out->why.back().from = {other->leakage.from};
    const Tester* tester = tester_of(at, TestKind::leak_down, readings.back()->tester);
    if (tester == tester_of(at, TestKind::leak_down, others.back()->tester)) {
        out->law = leak_law(at, tester, *shown_of(at, readings), *shown_of(at, others));
        if (sizes_differ(at, *out, *other)) out->does_not_fit = {other->set, other->leakage};
    }
    return out;
}

}  // namespace lapwing::findings

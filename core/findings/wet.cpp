// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <algorithm>
#include <cmath>

#include "core/findings/instruments.h"

namespace lapwing::findings {

Derived rise_of(const Case& at, const Cranking& before, const Cranking& after, const Gauge* dial) {
    const Figure& dry = before.final.figure;
    const Figure& wet = after.final.figure;
    const auto gauge = instrument_of(dial, std::max(dry.si, wet.si), 0.0, at.reference).gauge;
    Derived rise;
    const double by_gauge = u95_quotient(gauge, wet.si, dry.si);
    const double by_scatter = with_scatter(0.0, wet.si, after.scatter_u95, dry.si, before.scatter_u95);
    rise.figure = figure(Dimension::share, wet.si / dry.si - 1.0, std::hypot(by_gauge, by_scatter));
    rise.from.doubts = doubt_shares({{"gauge", by_gauge}, {"scatter", by_scatter}});
    rise.from.title = Word{"from:rise"};
    rise.from.symbols = "p_wet / p_dry − 1";
    rise.from.inputs = {input("wet", "p_wet", wet), input("dry", "p_dry", dry)};
    rise.from.source = source_of(at.reference.wet.basis);
    return rise;
}

std::optional<Wet> wet_of(const Case& at, int cylinder, const std::optional<Cranking>& dry) {
    auto reading = cranking_of(at, TestKind::wet, cylinder);
    if (!reading) return std::nullopt;
    Wet out;
    out.reading = std::move(*reading);
    if (at.engine.fuel != Fuel::diesel)
        if (const auto model = model_of(at, TestKind::wet, cylinder)) out.volume_rise = model->oil_rise;
    // Between two states more than the oil has changed.
    if (!dry || dry->tag != out.reading.tag || !(dry->final.figure.si > 0.0)) return out;
    const Tester* tester = tester_of(at, TestKind::wet, {});
    out.rise = rise_of(at, *dry, out.reading, tester ? &tester->gauge : nullptr);
    return out;
}

}  // namespace lapwing::findings

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <algorithm>

#include "core/findings/instruments.h"
#include "core/physics/atmosphere.h"

namespace lapwing::findings {
namespace {

std::optional<Derived> mean_first(const Case& at, std::vector<const Reading*> readings, const Gauge* dial) {
    std::erase_if(readings, [](const Reading* reading) { return !reading->first; });
    if (readings.empty()) return std::nullopt;
    return mean_of(at, readings, &Reading::first, dial);
}

/// What makers ask of such an engine in general; scaled to the shop like a limit.
const TypicalCranking* typical_of(const Case& at) {
    for (const TypicalCranking& range : at.reference.typical_cranking)
        if (range.fuel == at.engine.fuel && (!range.per_compression_ratio || at.engine.compression_ratio))
            return &range;
    return nullptr;
}

void judge_by_typical(const Case& at, Cranking& reading) {
    // Trapped ratios of two-strokes don't follow the rule, which is for geometric ones.
    const TypicalCranking* range = at.two_stroke() ? nullptr : typical_of(at);
    if (!range) return;
    const double ratio = range->per_compression_ratio ? at.engine.compression_ratio->value.si() : 1.0;
    const double scale = ratio * at.site.ambient_pa / physics::sea_level_pa;
    const Figure low = figure(Dimension::gauge_pressure, range->low.si() * scale);
    const Figure high = figure(Dimension::gauge_pressure, range->high.si() * scale);
    const bool below = reading.final.figure.si < low.si;
    reading.state = below ? State::borderline : State::good;
    Remark why = remark(below ? "why.below_typical" : "why.within_typical", reading.final.figure, low, high);
    Derivation from;
    from.title = Word{"from:typical"};
    from.symbols = range->per_compression_ratio ? "ε × (17 … 21 psi) × p / p₀" : "";
    if (range->per_compression_ratio)
        from.inputs.push_back(input("compression_ratio", "ε",
                                    figure_of(at.engine.compression_ratio->value, Dimension::number)));
    from.inputs.insert(from.inputs.end(), at.site.inputs.begin(), at.site.inputs.end());
    from.source = source_of(range->basis);
    why.from.push_back(std::move(from));
    reading.why.push_back(std::move(why));
}

}  // namespace

std::optional<Cranking> cranking_of(const Case& at, TestKind test, int cylinder) {
    auto readings = counted(at, test, cylinder);
    std::erase_if(readings, [](const Reading* reading) { return !reading->final; });
    if (readings.empty()) return std::nullopt;
    const Tester* tester = tester_of(at, test, readings.back()->tester);
    const Gauge* dial = tester ? &tester->gauge : nullptr;
    Cranking out;
    out.final = mean_of(at, readings, &Reading::final, dial);
    out.repeats = static_cast<int>(readings.size());
    out.tag = readings.back()->tag;
    out.oiled = readings.back()->oiled;
    for (const Reading* reading : readings)
        out.readings.push_back(reading->id);
    out.first = mean_first(at, readings, dial);
    if (out.first && out.final.figure.si > 0.0) {
        const double first = out.first->figure.si;
        const double final = out.final.figure.si;
        const auto gauge = instrument_of(dial, final, readings.back()->final->step_si(), at.reference).gauge;
        Derived share;
        share.figure = figure(Dimension::share, first / final, u95_quotient(gauge, first, final));
        share.from.title = Word{"from:first_share"};
        share.from.symbols = "p₁ / p";
        share.from.inputs = {input("first", "p₁", out.first->figure), input("final", "p", out.final.figure)};
        share.from.source = say("source.typed");
        out.first_share = std::move(share);
    }
    return out;
}

void judge_by_limits(const Case& at, Cranking& reading) {
    const Limits& limits = at.limits;
    const Figure& final = reading.final.figure;
    const double doubt = final.u95.value_or(0.0);
    const auto because = [&](std::string_view code, const Derived& limit) {
        Remark why = remark(code, final, limit.figure);
        why.from = {reading.final.from, limit.from};
        reading.why.push_back(std::move(why));
    };
    if (at.decompressor_works()) return;  // its readings compare cylinders only
    if (!limits.lowest && !limits.low) {
        judge_by_typical(at, reading);
        return;
    }
    // The state follows the numbers as read, so that a manual's verdict stays the manual's verdict; what the
    // gauge can't tell apart is said beside it, and a pass by less than the gauge's doubt is borderline.
    reading.state = State::good;
    if (limits.lowest) {
        const double above = final.si - limits.lowest->figure.si;
        if (above < 0.0) {
            reading.state = State::fault;
            because("why.below_lowest", *limits.lowest);
        } else if (above < doubt) {
            reading.state = State::borderline;
        }
        if (std::abs(above) < doubt) because("why.close_to_lowest", *limits.lowest);
    }
    if (limits.low && final.si < limits.low->figure.si && reading.state != State::fault) {
        reading.state = State::borderline;
        because("why.below_low", *limits.low);
    }
    if (limits.high && final.si > limits.high->figure.si) because("why.above_high", *limits.high);
    if (reading.why.empty())
        because(limits.low ? "why.in_range" : "why.above_lowest", limits.low ? *limits.low : *limits.lowest);
}

}  // namespace lapwing::findings

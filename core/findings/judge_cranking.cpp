// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <algorithm>
#include <cmath>

#include "core/findings/case.h"
#include "core/physics/atmosphere.h"

namespace lapwing::findings {
namespace {

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
    if (reading.state == State::none) reading.state = below ? State::borderline : State::good;
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

/// Without a factory figure a reading can be doubtful at most, never a fault: the model is not counted on
/// real engines, and makers differ.
void judge_by_expectation(const Case& at, Cranking& reading, const ModelFacts* model) {
    if (throttle_closed(at.visit.session, at.engine)) {
        reading.why.push_back(remark("why.throttle_closed"));
        return;
    }
    if (model && model->healthy) {
        const DerivedRange& expected = *model->healthy;
        const Figure& final = reading.final.figure;
        const bool below = final.si < expected.low.si;
        const bool above = final.si - final.u95.value_or(0.0) > expected.high.si;
        reading.state = below ? State::borderline : State::good;
        Remark why = remark(below   ? "why.below_expected"
                            : above ? "why.above_expected"
                                    : "why.within_expected",
                            final, expected.low, expected.high);
        why.from = {reading.final.from, expected.from};
        reading.why.push_back(std::move(why));
        reading.expected = expected;
    } else if (model && model->inputs.silence == ModelSilence::none) {
        reading.why.push_back(model->healthy_says);
    }
    judge_by_typical(at, reading);
}

}  // namespace

void judge_by_limits(const Case& at, Cranking& reading, const ModelFacts* model) {
    const Limits& limits = at.limits;
    const Figure& final = reading.final.figure;
    const double doubt = final.u95.value_or(0.0);
    const auto because = [&](std::string_view code, const Derived& limit) {
        Remark why = remark(code, final, limit.figure);
        why.from = {reading.final.from, limit.from};
        reading.why.push_back(std::move(why));
    };
    if (at.decompressor_works()) {
        reading.why.push_back(remark("why.decompressor"));
        return;
    }
    if (!limits.lowest && !limits.low) {
        judge_by_expectation(at, reading, model);
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

void judge_dry(const Case& at, int cylinder, Cranking& reading) {
    const auto model = model_of(at, TestKind::dry, cylinder);
    judge_by_limits(at, reading, model ? &*model : nullptr);
    if (!model || !model->hose_loss) return;
    Derived without;
    const Figure& final = reading.final.figure;
    without.figure = figure(Dimension::gauge_pressure, final.si * model->hose_correction);
    if (final.u95) without.figure.u95 = *final.u95 * model->hose_correction;
    without.from = model->hose_loss->from;
    without.from.title = Word{"from:without_hose"};
    without.from.inputs.insert(without.from.inputs.begin(), input("reading", "p", final));
    reading.without_hose = std::move(without);
}

}  // namespace lapwing::findings

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <algorithm>
#include <cmath>

#include "core/base/apart.h"
#include "core/findings/case.h"
#include "core/findings/instruments.h"
#include "core/findings/told_apart.h"
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

void judge_by_typical(const Case& at, Cranking& reading, bool lowered) {
    // Trapped ratios of two-strokes don't follow the rule, which is for geometric ones.
    const TypicalCranking* range = at.two_stroke() ? nullptr : typical_of(at);
    if (!range) return;
    const double ratio = range->per_compression_ratio ? at.engine.compression_ratio->value.si() : 1.0;
    const double scale = ratio * at.site.ambient_pa / physics::sea_level_pa;
    const auto scaled = [&](Pressure of) {
        const double here = of.si() * scale;
        return figure(Dimension::gauge_pressure, here, at.site.doubt * here);
    };
    const Figure low = scaled(range->low);
    const Figure high = scaled(range->high);
    const bool below = is_below(reading.final.figure.si, low.si);
    if (reading.state == State::none) reading.state = below ? State::borderline : State::good;
    // Makers differ, but not by half; a decompressor that nobody knows of does that.
    const bool perhaps_decompressor =
        at.engine.decompressor == Decompressor::unknown && at.engine.cylinders.size() == 1;
    const char* far = at.engine.fuel == Fuel::diesel ? "far-below-usual-diesel" : "far-below-usual";
    const bool far_below = reading.final.figure.si < at.reference.assumed(far) * low.si;
    // Cold and a weak battery take more off than lies between the worst that one maker allows and that line.
    const auto& conditions = at.visit.session.conditions;
    const bool cranked_badly =
        at.engine.fuel == Fuel::diesel &&
        (conditions.heat == EngineHeat::cold || battery_weak(conditions, at.reference) ||
         reading.final.figure.si + reading.final.figure.u95.value_or(0.0) >=
             at.reference.assumed(far) * low.si);
    const bool fault = far_below && !lowered && !cranked_badly && !perhaps_decompressor;
    if (fault) reading.state = State::fault;
    Remark why = remark(fault   ? "why.far_below_typical"
                        : below ? "why.below_typical"
                                : "why.within_typical",
                        reading.final.figure, low, high);
    Derivation from;
    from.title = Word{"from:typical"};
    from.symbols = range->per_compression_ratio ? "ε × (17 … 21 psi) × p / p₀" : "(p_low … p_high) × p / p₀";
    if (range->per_compression_ratio)
        from.inputs.push_back(input("compression_ratio", "ε",
                                    figure_of(at.engine.compression_ratio->value, Dimension::number)));
    from.inputs.insert(from.inputs.end(), at.site.inputs.begin(), at.site.inputs.end());
    from.source = source_of(range->basis);
    why.from.push_back(std::move(from));
    reading.why.push_back(std::move(why));
}

/// Without a factory figure a reading can be doubtful at most: the model is not counted on real engines, and
/// makers differ. Only one far below what any of them asks for is a fault.
/// @param lowered by something, who knows how much
void judge_by_expectation(const Case& at, Cranking& reading, const ModelFacts* model, bool lowered) {
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
    judge_by_typical(at, reading, lowered);
}

}  // namespace

namespace {

/// The reading as a factory limit means it: warm engine, cranked well, throttle open, check valve at the plug
/// hole.
std::optional<Derived> as_a_limit_means_it(const Cranking& reading, const ModelFacts* model) {
    if (!model || !model->correction) return std::nullopt;
    const Correction& by = *model->correction;
    const Figure& final = reading.final.figure;
    Derived out{figure(Dimension::gauge_pressure, final.si * by.factor,
                       std::hypot(final.u95.value_or(0.0) * by.factor, final.si * by.u95)),
                by.from.front()};
    out.from.title = Word{"from:put_right"};
    out.from.symbols = "p k";
    out.from.doubts =
        doubt_shares({{"reading", final.u95.value_or(0.0) * by.factor}, {"model", final.si * by.u95}});
    out.from.inputs.insert(out.from.inputs.begin(),
                           {input("reading", "p", final),
                            input("put_right", "k", figure(Dimension::number, by.factor, by.u95))});
    return out;
}

/// The model would put the reading right, but is still at work.
bool still_to_come(const Case& at, const Tester* tester, const ModelFacts* model) {
    return !model && below_par(model_inputs(at.engine, at.visit.session, at.reference, tester));
}

}  // namespace

std::optional<std::string_view> lowered_by_who_knows(const Case& at, const Tester* tester) {
    if (throttle_closed(at.visit.session, at.engine)) return "why.lowered_throttle";
    if (tester && tester->check_valve_at == CheckValveAt::gauge_end) return "why.lowered_hose";
    return std::nullopt;
}

void judge_by_limits(const Case& at, Cranking& reading, const ModelFacts* model, const Tester* tester) {
    const Limits& limits = at.limits;
    reading.put_right = as_a_limit_means_it(reading, model);
    if (at.decompressor_works()) {
        reading.why.push_back(remark("why.decompressor"));
        return;
    }
    if (!limits.lowest && !limits.low) {
        judge_by_expectation(at, reading, model, lowered_by_who_knows(at, tester).has_value());
        return;
    }
    const bool put_right = reading.put_right.has_value();
    const Derived& judged = put_right ? *reading.put_right : reading.final;
    const Figure& final = judged.figure;
    const auto because = [&](std::string_view code, const Derived& limit) {
        Remark why = remark(code, final, limit.figure);
        why.from = {judged.from, limit.from};
        reading.why.push_back(std::move(why));
    };
    // The state follows the numbers as read, so that a manual's verdict stays the manual's verdict; what the
    // gauge can't tell apart is said beside it, and a pass by less than the gauge's doubt is borderline. A
    // reading that had to be put right first is below a limit only where the doubt of that leaves no other
    // way.
    reading.state = State::good;
    if (limits.lowest) {
        const double above = final.si - limits.lowest->figure.si;
        // The limit's own doubt is that of the air pressure it was scaled by.
        const double doubt = std::hypot(final.u95.value_or(0.0), limits.lowest->figure.u95.value_or(0.0));
        const bool close = std::abs(above) < doubt;
        if (is_below(final.si, limits.lowest->figure.si) && !(put_right && close)) {
            reading.state = State::fault;
            because("why.below_lowest", *limits.lowest);
        } else if (is_below(final.si, limits.lowest->figure.si + doubt)) {
            reading.state = State::borderline;
        }
        if (close && lies_close(at.reference, above, limits.lowest->figure.si)) {
            because(put_right ? "why.put_right_close" : "why.close_to_lowest", *limits.lowest);
        } else if (close) {
            Remark why = remark("why.unsure_of_lowest", final, limits.lowest->figure,
                                figure(Dimension::pressure_difference, doubt),
                                what_narrows(judged, limits.lowest->figure));
            why.from = {judged.from, limits.lowest->from};
            reading.why.push_back(std::move(why));
        }
    }
    if (limits.low && is_below(final.si, limits.low->figure.si) && reading.state != State::fault) {
        reading.state = State::borderline;
        because("why.below_low", *limits.low);
    }
    if (limits.high && is_above(reading.final.figure.si, limits.high->figure.si)) {
        reading.state = worse(reading.state, State::borderline);
        reading.why.push_back({say("why.above_high", reading.final.figure, limits.high->figure),
                               {reading.final.from, limits.high->from}});
    }
    if (reading.why.empty())
        because(limits.low ? "why.in_range" : "why.above_lowest", limits.low ? *limits.low : *limits.lowest);
    if (put_right) {
        const auto& from = model->correction->from;
        const bool hose_alone = from.size() == 1 && from.front().title.code == "from:hose_loss";
        Remark said =
            remark(hose_alone ? "why.put_right_hose" : "why.put_right", reading.final.figure, final);
        said.from = model->correction->from;
        reading.why.insert(reading.why.begin(), std::move(said));
    } else if (reading.state == State::fault && still_to_come(at, tester, model)) {
        reading.state = State::none;
    } else if (const auto lowered = lowered_by_who_knows(at, tester);
               lowered && reading.state == State::fault) {
        reading.state = State::borderline;
        reading.why.push_back(remark(*lowered));
    }
}

Derived without_hose(const Cranking& reading, const ModelFacts& model) {
    const Figure& final = reading.final.figure;
    const double correction = model.hose_correction;
    Derived without;
    // Of 1 / (1 − loss) the doubt is that of the loss over (1 − loss)².
    without.figure =
        figure(Dimension::gauge_pressure, final.si * correction,
               std::hypot(final.u95.value_or(0.0) * correction,
                          final.si * model.hose_loss->figure.u95.value_or(0.0) * correction * correction));
    without.from = model.hose_loss->from;
    without.from.title = Word{"from:without_hose"};
    without.from.symbols = "p / (1 − loss)";
    without.from.doubts = doubt_shares(
        {{"reading", final.u95.value_or(0.0) * correction},
         {"model", final.si * model.hose_loss->figure.u95.value_or(0.0) * correction * correction}});
    without.from.inputs.insert(
        without.from.inputs.begin(),
        {input("reading", "p", final), input("hose_loss", "loss", model.hose_loss->figure)});
    return without;
}

void judge_dry(const Case& at, int cylinder, Cranking& reading) {
    const auto model = model_of(at, TestKind::dry, cylinder);
    const auto readings = counted(at, TestKind::dry, cylinder);
    judge_by_limits(at, reading, model ? &*model : nullptr,
                    tester_of(at, TestKind::dry, readings.back()->tester));
    if (model && model->hose_loss) reading.without_hose = without_hose(reading, *model);
}

}  // namespace lapwing::findings

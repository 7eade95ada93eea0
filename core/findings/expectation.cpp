// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/findings/case.h"

namespace lapwing::findings {
namespace {

bool has_limits(const Case& at) {
    return at.limits.low || at.limits.lowest;
}

ModelInputs asked(const Case& at, const Tester* tester, const std::string& adapter,
                  const std::optional<TypedVolume>& oil) {
    return model_inputs(at.engine, at.visit.session, at.reference, tester, adapter, oil);
}

}  // namespace

std::optional<Remark> still_rising(const Case& at, int pulls, const ModelFacts* model) {
    if (pulls < 1) return std::nullopt;
    if (model && !model->reached.empty()) {
        const auto after = static_cast<std::size_t>(pulls) - 1;
        if (after >= model->reached.size()) return std::nullopt;
        const Derived& shown = model->reached[after];
        if (1.0 - shown.figure.si <= at.reference.assumed("still-rising")) return std::nullopt;
        Remark out = remark("fact.still_rising", pulls, shown.figure);
        out.from = {shown.from};
        return out;
    }
    const auto* makers = at.reference.assumption("least-pulls");
    if (pulls >= static_cast<int>(at.reference.assumed("least-pulls"))) return std::nullopt;
    Remark out = remark("fact.few_pulls", pulls, static_cast<int>(at.reference.assumed("least-pulls")));
    Derivation from;
    from.title = Word{"from:pulls"};
    from.source = source_of(makers->basis);
    out.from = {std::move(from)};
    return out;
}

std::optional<ModelFacts> model_of(const Case& at, TestKind test, int cylinder) {
    if (!at.options.models) return std::nullopt;
    if (!at.options.beside && test != TestKind::dry) return std::nullopt;
    const auto readings = counted(at, test, cylinder);
    if (readings.empty()) return std::nullopt;
    const Reading& newest = *readings.back();
    const auto inputs = asked(at, tester_of(at, test, newest.tester), newest.adapter, newest.oil_volume);
    if (at.options.beside || !has_limits(at)) return at.options.models->facts(inputs);
    // With limits a state rests on the model only where the reading has to be put right first.
    if (!below_par(inputs)) return std::nullopt;
    return at.options.models->correction(inputs);
}

std::optional<ModelFacts> model_of_visit(const Case& at) {
    if (!at.options.models || !at.options.beside) return std::nullopt;
    for (const TestKind test : {TestKind::dry, TestKind::wet})
        for (const int number : numbers_in_order(at.engine))
            if (auto model = model_of(at, test, number)) return model;
    return at.options.models->facts(asked(at, tester_of(at, TestKind::dry, {}), {}, {}));
}

std::vector<Remark> expectation_of(const Case& at) {
    std::vector<Remark> out;
    const auto model = model_of_visit(at);
    if (!model) return out;
    // A working decompressor silences the factory limits as well.
    if (!has_limits(at) || model->inputs.silence == ModelSilence::decompressor)
        out.push_back(model->healthy_says);
    if (model->released) {
        out.push_back(remark("model.released", model->released->low, model->released->high));
        out.back().from = {model->released->from};
    }
    if (at.visit.session.conditions.induction == Induction::off) out.push_back(remark("model.induction_off"));
    return out;
}

}  // namespace lapwing::findings

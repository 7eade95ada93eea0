// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/findings/case.h"

namespace lapwing::findings {
namespace {

bool has_limits(const Case& at) {
    return at.limits.low || at.limits.lowest;
}

ModelFacts asked(const Case& at, const Tester* tester, const std::string& adapter,
                 const std::optional<TypedVolume>& oil) {
    return at.options.models->facts(
        model_inputs(at.engine, at.visit.session, at.reference, tester, adapter, oil));
}

}  // namespace

std::optional<ModelFacts> model_of(const Case& at, TestKind test, int cylinder) {
    if (!at.options.models) return std::nullopt;
    if (!at.options.beside && test != TestKind::dry) return std::nullopt;
    const auto readings = counted(at, test, cylinder);
    if (readings.empty()) return std::nullopt;
    const Reading& newest = *readings.back();
    // With limits a state rests on the model only where the reading has to be put right first.
    if (!at.options.beside && has_limits(at) &&
        !below_par(model_inputs(at.engine, at.visit.session, at.reference, tester_of(at, test, newest.tester),
                                newest.adapter, newest.oil_volume)))
        return std::nullopt;
    return asked(at, tester_of(at, test, newest.tester), newest.adapter, newest.oil_volume);
}

std::optional<ModelFacts> model_of_visit(const Case& at) {
    if (!at.options.models || !at.options.beside) return std::nullopt;
    for (const TestKind test : {TestKind::dry, TestKind::wet})
        for (const int number : numbers_in_order(at.engine))
            if (auto model = model_of(at, test, number)) return model;
    return asked(at, tester_of(at, TestKind::dry, {}), {}, {});
}

std::vector<Remark> expectation_of(const Case& at) {
    std::vector<Remark> out;
    const auto model = model_of_visit(at);
    if (!model) return out;
    // A working decompressor silences the factory limits as well.
    if (!has_limits(at) || model->inputs.silence == ModelSilence::decompressor)
        out.push_back(model->healthy_says);
    if (at.visit.session.conditions.induction == Induction::off) out.push_back(remark("model.induction_off"));
    return out;
}

}  // namespace lapwing::findings

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/odds/levels.h"

#include <algorithm>
#include <cmath>

#include "core/findings/crank_way.h"

namespace lapwing::odds {
namespace {

using findings::Case;

constexpr double rectangular = 1.7320508075688772;  // half width over standard deviation, JCGM 100, 4.3.7

/// A factor on a reading, with its doubt as a share (standard).
struct Factor {
    double by = 1.0;
    double doubt = 0.0;

    void widen(double more) { doubt = std::sqrt(doubt * doubt + more * more); }
    void take(const std::optional<double>& step, double doubt_of_step) {
        if (!step) return;
        by *= *step;
        widen(doubt_of_step * (*step - 1.0));
    }
};

/// What cold walls cost where nobody noted whether the engine was cold: half of it, give or take half.
Factor maybe_cold(const findings::ModelInputs& inputs) {
    Factor out;
    if (!inputs.may_be_warm_k) return out;
    findings::ModelInputs warm = inputs;
    warm.wall_k = *inputs.may_be_warm_k;
    findings::ModelRuns runs;
    const auto cold = findings::CrankWay(warm, inputs, runs).heat();
    if (!cold) return out;
    const double half = 0.5 * (1.0 - *cold);
    out.by = 1.0 - half;
    out.doubt = half / rectangular;
    return out;
}

/// From what a factory limit means (warm engine, cranked well, throttle open, check valve at the plug hole,
/// a core made for gauges) to this visit's readings.
Factor from_factory(const findings::ModelInputs& inputs) {
    Factor out = maybe_cold(inputs);
    if (!findings::below_par(inputs)) return out;
    const auto facts = findings::model_facts(inputs);
    if (!facts.correction) return out;
    out.by /= facts.correction->factor;
    out.widen(0.5 * facts.correction->u95 / facts.correction->factor);
    return out;
}

/// From an earlier visit's reading to this visit; nothing where the two can't be compared.
class FromEarlier {
public:
    FromEarlier(const Case& now, const findings::ModelInputs& inputs, const Reading* newest)
        : now_(now), inputs_(inputs), newest_(newest) {}

    std::optional<Factor> way(const Case& then, const Reading& reading) {
        const Session& was = then.visit.session;
        const Session& is = now_.visit.session;
        const auto& reference = now_.reference;
        if (then.decompressor_works() || findings::throttle_closed(was, then.engine) ||
            findings::oil_on_rings(then.visit, reading) == findings::OnRings::oiled)
            return std::nullopt;
        const CrankedBy turns = newest_ ? findings::cranked_by(is, *newest_) : is.conditions.cranked_by;
        if (!findings::may_be_turned_alike(findings::cranked_by(was, reading), turns)) return std::nullopt;

        const Tester* tester = findings::tester_of(then, TestKind::dry, reading.tester);
        const auto inputs = findings::model_inputs(then.engine, was, reference, tester, reading.adapter);
        findings::CrankWay model(inputs, inputs_, runs_);
        const double doubt = reference.assumed("correction-doubt");
        Factor out;
        out.by = now_.site.ambient_pa / then.site.ambient_pa;
        out.take(model.tester(), doubt);
        const Tester* used =
            findings::tester_of(now_, TestKind::dry, newest_ ? newest_->tester : std::nullopt);
        if (!tester || tester != used) {
            const bool known = tester && used && tester->hose_volume && used->hose_volume;
            if (!known) out.widen(reference.assumed("other-gauge-doubt"));
        }
        heat(inputs, was.conditions.heat, is.conditions.heat, model, out);
        const auto off = [](const Session& of) { return of.conditions.induction == Induction::off; };
        if (off(was) != off(is)) out.widen(reference.assumed("induction-off-doubt"));
        if (was.conditions.cranking_speed && is.conditions.cranking_speed)
            out.take(model.speed(), doubt);
        else if (findings::battery_weak(was.conditions, reference) !=
                 findings::battery_weak(is.conditions, reference))
            out.widen(reference.assumed("weak-battery-doubt"));
        return out;
    }

private:
    /// What is not noted is cold to the model; it may have been warm.
    void heat(const findings::ModelInputs& inputs, EngineHeat was, EngineHeat is, findings::CrankWay& model,
              Factor& out) const {
        if (was == is) {
            // Neither noted: one of the two may have been warm.
            if (was == EngineHeat::unknown) {
                out.widen(maybe_cold(inputs).doubt);
                out.widen(maybe_cold(inputs_).doubt);
            }
            return;
        }
        out.take(model.heat(), now_.reference.assumed("correction-doubt"));
        if (was == EngineHeat::unknown) {
            const Factor then = maybe_cold(inputs);
            out.by *= then.by;
            out.widen(then.doubt);
        }
        if (is == EngineHeat::unknown) {
            const Factor now = maybe_cold(inputs_);
            out.by /= now.by;
            out.widen(now.doubt);
        }
    }

    const Case& now_;
    const findings::ModelInputs& inputs_;
    const Reading* newest_;
    findings::ModelRuns runs_;
};

void add_earlier_visits(const Case& at, const findings::ModelInputs& inputs, const Reading* newest,
                        const Assumptions& assumptions, std::vector<LevelEvidence>& out) {
    FromEarlier from(at, inputs, newest);
    double sum = 0.0;
    double weights = 0.0;
    int count = 0;
    for (const Visit& earlier : at.dossier.visits) {
        if (earlier.session.opened_at.unix_ms >= at.visit.session.opened_at.unix_ms) continue;
        const Case then = findings::case_of(at.dossier, earlier, at.reference, {});
        for (const int number : numbers_in_order(at.engine)) {
            const auto leak = findings::leak_down_of(then, number);
            const auto dry = findings::cranking_of(then, TestKind::dry, number);
            if (!leak || !dry || leak->state != findings::State::good || leak->tag != dry->tag) continue;
            const auto readings = findings::counted(then, TestKind::dry, number);
            const auto way = from.way(then, *readings.back());
            if (!way) continue;
            const double usual = assumptions.at("earlier-visit-doubt");
            const double weight = 1.0 / (usual * usual + way->doubt * way->doubt);
            sum += weight * dry->final.figure.si * way->by;
            weights += weight;
            ++count;
        }
    }
    // However many they are, what they are doubtful by they have in common.
    if (count > 0) out.push_back({sum / weights, std::sqrt(count / weights)});
}

}  // namespace

const Reading* newest_cranking(const Case& at) {
    for (const TestKind test : {TestKind::dry, TestKind::wet}) {
        const Reading* newest = nullptr;
        for (const int number : numbers_in_order(at.engine))
            for (const Reading* reading : findings::counted(at, test, number))
                if (!newest || reading->taken_at.unix_ms > newest->taken_at.unix_ms) newest = reading;
        if (newest) return newest;
    }
    return nullptr;
}

std::vector<LevelEvidence> levels_of(const Case& at, const findings::ModelInputs& inputs,
                                     const Reading* newest, const Assumptions& assumptions) {
    std::vector<LevelEvidence> out;
    if (at.limits.low && at.limits.high) {
        const double low = at.limits.low->figure.si;
        const double high = at.limits.high->figure.si;
        const double middle = 0.5 * (low + high);
        constexpr double ninety = 1.645;
        Factor here = from_factory(inputs);
        here.widen(0.5 * (high - low) / (ninety * middle));
        here.widen(assumptions.at("card-range-doubt"));
        out.push_back({middle * here.by, here.doubt});
    }
    add_earlier_visits(at, inputs, newest, assumptions, out);
    return out;
}

}  // namespace lapwing::odds

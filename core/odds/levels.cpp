// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/odds/levels.h"

#include <algorithm>
#include <cmath>

#include "core/findings/visit_way.h"

namespace lapwing::odds {
namespace {

using findings::Case;
using findings::WayStep;

/// A factor on a reading, with its doubt as a share (standard).
struct Factor {
    double by = 1.0;
    double doubt = 0.0;

    void widen(double more) { doubt = std::sqrt(doubt * doubt + more * more); }
    void take(const WayStep& step) {
        by *= step.by;
        widen(step.doubt);
        widen(step.allowed);
    }
};

/// From what a factory limit means (warm engine, cranked well, throttle open, check valve at the plug hole,
/// a core made for gauges) to this visit's readings.
Factor from_factory(const findings::ModelInputs& inputs) {
    Factor out;
    out.take(findings::maybe_cold(inputs));
    if (!findings::below_par(inputs)) return out;
    const auto facts = findings::model_facts(inputs);
    if (!facts.correction) return out;
    out.by /= facts.correction->factor;
    out.widen(0.5 * facts.correction->u95 / facts.correction->factor);
    return out;
}

/// From an earlier visit's reading to this visit; nothing where the two can't be compared, or where that one
/// does not tell what a sound cylinder reads.
std::optional<Factor> from_earlier(const Case& then, const Reading& reading, const findings::WayEnd& now,
                                   findings::ModelRuns& runs) {
    const Session& was = then.visit.session;
    if (then.decompressor_works() || findings::throttle_closed(was, then.engine) ||
        findings::oil_on_rings(then.visit, reading) == findings::OnRings::oiled)
        return std::nullopt;
    const Tester* tester = findings::tester_of(then, TestKind::dry, reading.tester);
    const findings::WayEnd from{
        then, &reading, tester,
        findings::model_inputs(then.engine, was, then.reference, tester, reading.adapter)};
    findings::VisitWay way(from, now, runs);
    Factor out;
    for (const WayStep& step :
         {way.air_pressure(), way.tester(), way.heat(), way.induction(), way.speed(), way.turning()}) {
        if (step.prevents) return std::nullopt;
        out.take(step);
    }
    return out;
}

void add_earlier_visits(const Case& at, const findings::ModelInputs& inputs, const Reading* newest,
                        const Assumptions& assumptions, std::vector<LevelEvidence>& out) {
    const findings::WayEnd now{
        at, newest, findings::tester_of(at, TestKind::dry, newest ? newest->tester : std::nullopt), inputs};
    findings::ModelRuns runs;
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
            const auto way = from_earlier(then, *readings.back(), now, runs);
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

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/findings/visit_way.h"

#include <cmath>

namespace lapwing::findings {
namespace {

constexpr double rectangular = 1.7320508075688772;  // half width over standard deviation, JCGM 100, 4.3.7

CrankedBy turned(const WayEnd& end) {
    const Session& session = end.at.visit.session;
    return end.newest ? cranked_by(session, *end.newest) : session.conditions.cranked_by;
}

}  // namespace

WayStep maybe_cold(const ModelInputs& inputs) {
    WayStep out;
    if (!inputs.may_be_warm_k) return out;
    ModelInputs warm = inputs;
    warm.wall_k = *inputs.may_be_warm_k;
    ModelRuns runs;
    const auto cold = CrankWay(warm, inputs, runs).heat();
    if (!cold) return out;
    const double half = 0.5 * (1.0 - *cold);
    out.by = 1.0 - half;
    out.converted = true;
    out.doubt = half / rectangular;
    return out;
}

VisitWay::VisitWay(const WayEnd& from, const WayEnd& to, ModelRuns& runs)
    : from_(from), to_(to), reference_(to.at.reference), model_(from.inputs, to.inputs, runs) {}

WayStep VisitWay::converted(const std::optional<double>& by) const {
    WayStep out;
    if (!by) return out;
    out.by = *by;
    out.converted = true;
    out.doubt = reference_.assumed("correction-doubt") * (*by - 1.0);
    return out;
}

WayStep VisitWay::air_pressure() const {
    WayStep out;
    out.by = to_.at.site.ambient_pa / from_.at.site.ambient_pa;
    out.converted = true;
    out.noted = to_.at.site.known && from_.at.site.known;
    return out;
}

WayStep VisitWay::tester() {
    WayStep out = converted(model_.tester());
    out.noted = from_.tester && to_.tester;
    const bool sized = out.noted && out.converted && from_.tester->hose_volume && to_.tester->hose_volume;
    if (!sized && !(out.noted && from_.tester == to_.tester))
        out.allowed = reference_.assumed("other-gauge-doubt");
    return out;
}

WayStep VisitWay::heat() {
    const bool was = then().heat != EngineHeat::unknown;
    const bool is = now().heat != EngineHeat::unknown;
    WayStep out;
    if (then().heat != now().heat) {
        // What is not noted is cold to the model; it may have been warm.
        out = converted(model_.heat());
        out.prevents = was && is && !out.converted;
    }
    out.noted = was && is;
    if (!was) {
        const WayStep cold = maybe_cold(from_.inputs);
        if (is) out.by *= cold.by;
        out.doubt = std::hypot(out.doubt, cold.doubt);
    }
    if (!is) {
        const WayStep cold = maybe_cold(to_.inputs);
        if (was) out.by /= cold.by;
        out.doubt = std::hypot(out.doubt, cold.doubt);
    }
    return out;
}

WayStep VisitWay::throttle() const {
    WayStep out;
    out.prevents = throttle_closed(from_.at.visit.session, from_.at.engine) !=
                   throttle_closed(to_.at.visit.session, to_.at.engine);
    const auto noted = [](const Conditions& at) {
        return at.induction == Induction::off || at.throttle != Throttle::unknown;
    };
    out.noted = noted(then()) == noted(now()) || from_.at.engine.fuel == Fuel::diesel;
    return out;
}

WayStep VisitWay::induction() const {
    WayStep out;
    const auto off = [](const Conditions& at) { return at.induction == Induction::off; };
    if (off(then()) != off(now())) out.allowed = reference_.assumed("induction-off-doubt");
    return out;
}

WayStep VisitWay::speed() {
    if (timed()) return converted(model_.speed());
    WayStep out;
    out.noted = !then().cranking_speed && !now().cranking_speed;
    return out;
}

WayStep VisitWay::turning() const {
    WayStep out;
    if (timed()) return out;
    out.prevents = !may_be_turned_alike(turned(from_), turned(to_));
    if (battery_weak(then(), reference_) != battery_weak(now(), reference_))
        out.allowed = reference_.assumed("weak-battery-doubt");
    return out;
}

WayStep VisitWay::pulls() {
    if (!from_.newest || !to_.newest) return {};
    const auto& was = from_.newest->pulls;
    const auto& is = to_.newest->pulls;
    if (!was || !is || *was == *is || *was < 1 || *is < 1) return {};
    return converted(model_.pulls(*was, *is));
}

}  // namespace lapwing::findings

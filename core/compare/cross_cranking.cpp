// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <algorithm>
#include <cmath>

#include "core/compare/measured.h"
#include "core/findings/crank_way.h"

namespace lapwing::compare {
namespace {

using findings::Dimension;
using findings::Figure;

Figure size_of(double factor) {
    return findings::figure(Dimension::share, std::abs(factor - 1.0));
}

/// The way of one cranking reading, circumstance by circumstance, and what is to be said of each.
class Way {
public:
    Way(const Measured& from, const Measured& to, findings::ModelRuns& runs, Crossed& out)
        : from_(from),
          to_(to),
          reference_(from.at->reference),
          model_(model_of(from), model_of(to), runs),
          out_(out) {}

    void go() {
        air_pressure();
        gauge();
        heat();
        breathing();
        speed();
        pulls();
        oil();
        if (from_.at->decompressor_works() != to_.at->decompressor_works())
            say_why(out_, to_, Treatment::prevents, "compare.decompressor");
    }

private:
    [[nodiscard]] static findings::ModelInputs model_of(const Measured& of) {
        return findings::model_inputs(of.at->engine, of.session(), of.at->reference, of.tester,
                                      of.newest().adapter);
    }
    [[nodiscard]] const Conditions& then() const { return from_.session().conditions; }
    [[nodiscard]] const Conditions& now() const { return to_.session().conditions; }

    void multiply(double factor) {
        out_.value = out_.value.through(out_.value.value * factor, factor);
        out_.converted = true;
    }
    void widen(const std::string& source, double share) {
        out_.value.by_source(source + ' ' + from_.session().id.text(), share * out_.value.value);
    }

    /// Takes a factor of the model's, with its doubt.
    void correct(const std::string& source, double by) {
        multiply(by);
        widen(source, reference_.assumed("correction-doubt") * (by - 1.0));
    }

    void air_pressure() {
        const findings::Site& site = from_.at->site;
        const findings::Site& other = to_.at->site;
        if (!site.known || !other.known) {
            if (&from_.at->visit != &to_.at->visit)
                say_why(out_, to_, Treatment::not_noted, "compare.altitude_unknown");
            return;
        }
        const double by = other.ambient_pa / site.ambient_pa;
        if (std::abs(by - 1.0) < not_worth_a_word) return;
        multiply(by);
        say_why(out_, to_, Treatment::corrected, "compare.air_pressure",
                findings::figure(Dimension::station_pressure, site.ambient_pa),
                findings::figure(Dimension::station_pressure, other.ambient_pa));
    }

    void gauge() {
        if (!from_.tester || !to_.tester) {
            if (&from_.at->visit != &to_.at->visit)
                say_why(out_, to_, Treatment::not_noted, "compare.tester_unknown",
                        findings::word_of(to_.test));
            return;
        }
        const bool same = from_.tester == to_.tester;
        const auto by = model_.tester();
        const bool changes = by && std::abs(*by - 1.0) >= not_worth_a_word;
        if (same) {
            if (!changes) return;
            correct("adapter", *by);
            say_why(out_, to_, Treatment::corrected, "compare.adapter", size_of(*by));
            return;
        }
        const bool known = by && from_.tester->hose_volume && to_.tester->hose_volume;
        const std::string& was = from_.tester->name;
        const std::string& is = to_.tester->name;
        if (by) correct("gauge", *by);
        if (known) {
            say_why(out_, to_, Treatment::corrected, "compare.gauge", was, is, size_of(*by));
            return;
        }
        const double doubt = reference_.assumed("other-gauge-doubt");
        widen("other gauge", doubt);
        say_why(out_, to_, Treatment::allowed, "compare.gauge_as_it_is", was, is,
                findings::figure(Dimension::share, doubt));
    }

    void heat() {
        if (then().heat == EngineHeat::unknown || now().heat == EngineHeat::unknown) {
            if (then().heat != now().heat) say_why(out_, to_, Treatment::not_noted, "compare.heat_unknown");
            return;
        }
        if (then().heat == now().heat) return;
        const auto by = model_.heat();
        const auto was = findings::word_of(then().heat);
        const auto is = findings::word_of(now().heat);
        if (!by) {
            say_why(out_, to_, Treatment::prevents, "compare.heat_no_model", was, is);
            return;
        }
        correct("heat", *by);
        say_why(out_, to_, Treatment::corrected, "compare.heat", was, is, size_of(*by));
    }

    /// Throttle and induction: what the cylinder can draw in.
    void breathing() {
        const bool closed = findings::throttle_closed(from_.session(), from_.at->engine);
        const bool closed_now = findings::throttle_closed(to_.session(), to_.at->engine);
        if (closed != closed_now) {
            say_why(out_, to_, Treatment::prevents, "compare.throttle");
            return;
        }
        const auto off = [](const Conditions& at) { return at.induction == Induction::off; };
        const auto noted = [&](const Conditions& at) { return off(at) || at.throttle != Throttle::unknown; };
        if (noted(then()) != noted(now()) && from_.at->engine.fuel != Fuel::diesel)
            say_why(out_, to_, Treatment::not_noted, "compare.throttle_unknown");
        if (off(then()) == off(now())) return;
        const double doubt = reference_.assumed("induction-off-doubt");
        widen("induction", doubt);
        say_why(out_, to_, Treatment::allowed, "compare.induction",
                findings::figure(Dimension::share, doubt));
    }

    void speed() {
        if (&from_.at->visit == &to_.at->visit) return;
        const auto& was = then().cranking_speed;
        const auto& is = now().cranking_speed;
        if (was && is) {
            const auto by = model_.speed();
            if (!by || std::abs(*by - 1.0) < not_worth_a_word) return;
            const auto rpm = [](const TypedRotation& speed) {
                return static_cast<int>(std::lround(units::rpm.number(speed.value())));
            };
            correct("speed", *by);
            say_why(out_, to_, Treatment::corrected, "compare.speed", rpm(*was), rpm(*is), size_of(*by));
            return;
        }
        const CrankedBy turned = findings::cranked_by(from_.session(), from_.newest());
        const CrankedBy turns = findings::cranked_by(to_.session(), to_.newest());
        if (!findings::may_be_turned_alike(turned, turns)) {
            say_why(out_, to_, Treatment::prevents, "compare.cranked_by", findings::word_of(turned),
                    findings::word_of(turns));
            return;
        }
        if (was || is) say_why(out_, to_, Treatment::not_noted, "compare.speed_unknown");
        if (findings::battery_weak(then(), reference_) == findings::battery_weak(now(), reference_)) return;
        const double doubt = reference_.assumed("weak-battery-doubt");
        widen("battery", doubt);
        say_why(out_, to_, Treatment::allowed, "compare.battery", findings::figure(Dimension::share, doubt));
    }

    void pulls() {
        const auto& was = from_.newest().pulls;
        const auto& is = to_.newest().pulls;
        if (!was || !is || *was == *is || *was < 1 || *is < 1) return;
        const auto by = model_.pulls(*was, *is);
        if (!by || std::abs(*by - 1.0) < not_worth_a_word) return;
        correct("pulls", *by);
        say_why(out_, to_, Treatment::corrected, "compare.pulls", *was, *is, size_of(*by));
    }

    void oil() {
        if (to_.test == TestKind::wet) return oil_amount();
        using findings::OnRings;
        const OnRings was = findings::oil_on_rings(from_.at->visit, from_.newest());
        const OnRings is = findings::oil_on_rings(to_.at->visit, to_.newest());
        if ((was == OnRings::oiled) != (is == OnRings::oiled))
            say_why(out_, to_, Treatment::prevents, "compare.oil");
        else if (is == OnRings::unknown && to_.newest().tag == Tag::after_repair)
            say_why(out_, to_, Treatment::not_noted, "compare.oil_unknown");
    }
    void oil_amount() {
        const auto& was = from_.newest().oil_volume;
        const auto& is = to_.newest().oil_volume;
        if (!was || !is) {
            say_why(out_, to_, Treatment::not_noted, "compare.oil_amount_unknown");
            return;
        }
        if (std::abs(was->si() - is->si()) > reference_.assumed("oil-alike") * is->si())
            say_why(out_, to_, Treatment::prevents, "compare.oil_amount",
                    findings::figure(Dimension::volume, was->si()),
                    findings::figure(Dimension::volume, is->si()));
    }

    static constexpr double not_worth_a_word = 1e-3;

    const Measured& from_;
    const Measured& to_;
    const findings::Reference& reference_;
    findings::CrankWay model_;
    Crossed& out_;
};

}  // namespace

void cross_cranking(const Measured& from, const Measured& to, findings::ModelRuns& runs, Crossed& out) {
    Way(from, to, runs, out).go();
}

}  // namespace lapwing::compare

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <algorithm>
#include <cmath>

#include "core/compare/measured.h"
#include "core/findings/visit_way.h"

namespace lapwing::compare {
namespace {

using findings::Dimension;
using findings::Figure;
using findings::WayStep;

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
          here_(end_of(from, to)),
          there_(end_of(to, from)),
          way_(here_, there_, runs),
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
    /// An adapter that was not noted, with the tester that `other` was read on, is taken to be the same.
    [[nodiscard]] static findings::WayEnd end_of(const Measured& of, const Measured& other) {
        const std::string& noted = of.newest().adapter;
        const bool as_there = noted.empty() && of.tester && of.tester == other.tester;
        return {*of.at, &of.newest(), of.tester,
                findings::model_inputs(of.at->engine, of.session(), of.at->reference, of.tester,
                                       as_there ? other.newest().adapter : noted)};
    }
    [[nodiscard]] const Conditions& then() const { return from_.session().conditions; }
    [[nodiscard]] const Conditions& now() const { return to_.session().conditions; }
    [[nodiscard]] bool one_visit() const { return &from_.at->visit == &to_.at->visit; }

    void multiply(double factor) {
        out_.value = out_.value.through(out_.value.value * factor, factor);
        out_.converted = true;
    }
    void widen(const std::string& source, double share) {
        out_.value.by_source(source + ' ' + from_.session().id.text(), share * out_.value.value);
    }

    /// Takes a factor of the model's, with its doubt.
    void correct(const std::string& source, const WayStep& step) {
        multiply(step.by);
        widen(source, step.doubt);
    }

    void allow(const std::string& source, std::string_view code, double share) {
        widen(source, share);
        say_why(out_, to_, Treatment::allowed, code, findings::figure(Dimension::share, share));
    }

    static bool worth_a_word(const WayStep& step) {
        constexpr double least = 1e-3;
        return step.converted && std::abs(step.by - 1.0) >= least;
    }

    void air_pressure() {
        const WayStep step = way_.air_pressure();
        if (!step.noted) {
            if (!one_visit()) say_why(out_, to_, Treatment::not_noted, "compare.altitude_unknown");
            return;
        }
        if (!worth_a_word(step)) return;
        multiply(step.by);
        say_why(out_, to_, Treatment::corrected, "compare.air_pressure",
                findings::figure(Dimension::station_pressure, from_.at->site.ambient_pa),
                findings::figure(Dimension::station_pressure, to_.at->site.ambient_pa));
    }

    void gauge() {
        const WayStep step = way_.tester();
        if (!step.noted) {
            if (!one_visit())
                say_why(out_, to_, Treatment::not_noted, "compare.tester_unknown",
                        findings::word_of(to_.test));
            return;
        }
        if (from_.tester == to_.tester) {
            if (!worth_a_word(step)) return;
            correct("adapter", step);
            say_why(out_, to_, Treatment::corrected, "compare.adapter", size_of(step.by));
            return;
        }
        const std::string& was = from_.tester->name;
        const std::string& is = to_.tester->name;
        if (step.converted) correct("gauge", step);
        if (!(step.allowed > 0.0)) {
            say_why(out_, to_, Treatment::corrected, "compare.gauge", was, is, size_of(step.by));
            return;
        }
        widen("other gauge", step.allowed);
        say_why(out_, to_, Treatment::allowed, "compare.gauge_as_it_is", was, is,
                findings::figure(Dimension::share, step.allowed));
    }

    void heat() {
        const WayStep step = way_.heat();
        if (!step.noted) {
            if (!one_visit()) say_why(out_, to_, Treatment::not_noted, "compare.heat_unknown");
            return;
        }
        if (then().heat == now().heat) return;
        const auto was = findings::word_of(then().heat);
        const auto is = findings::word_of(now().heat);
        if (step.prevents) {
            say_why(out_, to_, Treatment::prevents, "compare.heat_no_model", was, is);
            return;
        }
        correct("heat", step);
        say_why(out_, to_, Treatment::corrected, "compare.heat", was, is, size_of(step.by));
    }

    /// Throttle and induction: what the cylinder can draw in.
    void breathing() {
        const WayStep throttle = way_.throttle();
        if (throttle.prevents) {
            say_why(out_, to_, Treatment::prevents, "compare.throttle");
            return;
        }
        if (!throttle.noted || (throttle_never_noted() && !one_visit()))
            say_why(out_, to_, Treatment::not_noted, "compare.throttle_unknown");
        const WayStep induction = way_.induction();
        if (induction.allowed > 0.0) allow("induction", "compare.induction", induction.allowed);
    }

    /// Neither visit tells: it may have been open at one and shut at the other.
    [[nodiscard]] bool throttle_never_noted() const {
        const auto unknown = [](const Conditions& at) {
            return at.induction != Induction::off && at.throttle == Throttle::unknown;
        };
        return from_.at->engine.fuel != Fuel::diesel && unknown(then()) && unknown(now());
    }

    void speed() {
        if (one_visit()) return;
        const auto& was = then().cranking_speed;
        const auto& is = now().cranking_speed;
        const WayStep step = way_.speed();
        if (was && is) {
            if (!worth_a_word(step)) return;
            const auto rpm = [](const TypedRotation& speed) {
                return static_cast<int>(std::lround(units::rpm.number(speed.value())));
            };
            correct("speed", step);
            say_why(out_, to_, Treatment::corrected, "compare.speed", rpm(*was), rpm(*is), size_of(step.by));
            return;
        }
        const WayStep turning = way_.turning();
        if (turning.prevents) {
            say_why(out_, to_, Treatment::prevents, "compare.cranked_by",
                    findings::word_of(findings::cranked_by(from_.session(), from_.newest())),
                    findings::word_of(findings::cranked_by(to_.session(), to_.newest())));
            return;
        }
        if (!step.noted) say_why(out_, to_, Treatment::not_noted, "compare.speed_unknown");
        if (turning.allowed > 0.0) allow("battery", "compare.battery", turning.allowed);
    }

    void pulls() {
        const WayStep step = way_.pulls();
        if (!worth_a_word(step)) return;
        correct("pulls", step);
        say_why(out_, to_, Treatment::corrected, "compare.pulls", *from_.newest().pulls, *to_.newest().pulls,
                size_of(step.by));
    }

    void oil() {
        if (to_.test == TestKind::wet) return oil_amount();
        using findings::OnRings;
        const OnRings was = findings::oil_on_rings(from_.at->visit, from_.newest());
        const OnRings is = findings::oil_on_rings(to_.at->visit, to_.newest());
        if ((was == OnRings::oiled) != (is == OnRings::oiled))
            say_why(out_, to_, Treatment::prevents,
                    was == OnRings::oiled ? "compare.oil_earlier" : "compare.oil_later");
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

    const Measured& from_;
    const Measured& to_;
    const findings::Reference& reference_;
    const findings::WayEnd here_, there_;
    findings::VisitWay way_;
    Crossed& out_;
};

}  // namespace

void cross_cranking(const Measured& from, const Measured& to, findings::ModelRuns& runs, Crossed& out) {
    Way(from, to, runs, out).go();
}

}  // namespace lapwing::compare

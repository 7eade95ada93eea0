// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/findings/pad.h"

#include <algorithm>
#include <cmath>

#include "core/base/apart.h"
#include "core/findings/instruments.h"
#include "core/findings/leak_sums.h"
#include "core/findings/pad_facts.h"

namespace lapwing::findings {
namespace {

Reading reading_of(const PadEntry& entry) {
    Reading out;
    out.test = entry.test;
    out.cylinder = entry.cylinder;
    out.first = entry.first;
    out.final = entry.final;
    out.set = entry.set;
    out.held = entry.held;
    out.dial_loss = entry.dial_loss;
    return out;
}

/// What is typed as a test of its own: the cylinder's earlier readings only show how it repeats.
Cranking typed_cranking(const Case& at, const PadEntry& entry, const Gauge* dial) {
    const Reading reading = reading_of(entry);
    constexpr int none_left_out = 0;
    const auto mean = [&](std::optional<TypedPressure> Reading::*field, double& scatter) {
        const double pa = (reading.*field)->si();
        const auto usual = usual_scatter(at, entry.test, field, none_left_out, pa);
        scatter = scatter_u95({pa}, usual);
        return mean_of(at, {&reading}, field, dial, usual);
    };
    Cranking out;
    out.final = mean(&Reading::final, out.scatter_u95);
    if (reading.first) out.first = mean(&Reading::first, out.first_scatter_u95);
    return out;
}

class Judge {
public:
    Judge(const Case& at, const PadEntry& entry, const ModelFacts* model)
        : at_(at), entry_(entry), model_(model), tester_(tester_of(at, entry.test, entry.tester)) {}

    PadJudgement run() {
        for (const auto* value : {&entry_.first, &entry_.final, &entry_.set, &entry_.held})
            if (*value) ask_scale(**value, value == &entry_.set);
        switch (entry_.test) {
            case TestKind::dry:
            case TestKind::wet:
                cranking();
                break;
            case TestKind::leak_down:
                leak_down();
                break;
            case TestKind::crankcase:
                crankcase();
                break;
        }
        return std::move(out_);
    }

private:
    [[nodiscard]] const Gauge* dial() const { return tester_ ? &tester_->gauge : nullptr; }

    /// By the gauge's doubt alone.
    [[nodiscard]] Derived as_typed(const TypedPressure& value) const {
        Reading reading;
        reading.held = value;
        return mean_of(at_, {&reading}, &Reading::held, dial(), {});
    }

    template <class... Args>
    void ask(std::string_view code, Args&&... args) {
        out_.questions.push_back(remark(code, std::forward<Args>(args)...));
    }

    void ask_scale(const TypedPressure& value, bool is_set) {
        if (value.si() < 0.0) ask("pad.negative");
        if (!tester_) return;
        const Gauge& gauge = is_set && tester_->supply_gauge ? *tester_->supply_gauge : tester_->gauge;
        if (is_above(value.si(), gauge.full_scale.si()))
            ask("pad.over_scale", figure_of(value), figure_of(gauge.full_scale));
    }

    /// What this cylinder can be expected to show: the middle of the others' readings, else the limits.
    [[nodiscard]] std::optional<double> expected() const {
        std::vector<double> others;
        for (const Reading& reading : at_.visit.readings)
            if (reading.test == entry_.test && reading.final &&
                (reading.cylinder != entry_.cylinder || entry_.test == TestKind::wet))
                others.push_back(reading.final->si());
        if (!others.empty()) {
            const auto middle = others.begin() + static_cast<std::ptrdiff_t>(others.size() / 2);
            std::ranges::nth_element(others, middle);
            return *middle;
        }
        for (const auto* limit : {&at_.limits.low, &at_.limits.lowest, &at_.limits.high})
            if (*limit) return (*limit)->figure.si;
        return std::nullopt;
    }

    void ask_slip(const TypedPressure& value) {
        const auto usual = expected();
        if (!usual || !(*usual > 0.0)) return;
        const double factor = at_.reference.assumed("slip-factor");
        const Figure other = figure(Dimension::gauge_pressure, *usual);
        if (value.si() > factor * *usual) ask("pad.slip_high", figure_of(value), other);
        // A low reading may be a dead cylinder; it looks like a slip where ten times as much would fit.
        const double fits = at_.reference.assumed("slip-fits");
        const double moved = 10.0 * value.si();
        if (value.si() < *usual / factor && moved > *usual / fits && moved < fits * *usual)
            ask("pad.slip_low", figure_of(value), other);
    }

    /// What the factory calls normal needs no second look, whatever the cylinder before it read.
    [[nodiscard]] bool is_in_range(double pa) const {
        const auto& least = at_.limits.low ? at_.limits.low : at_.limits.lowest;
        const auto& most = at_.limits.high;
        return least && most && !is_below(pa, least->figure.si) && !is_above(pa, most->figure.si);
    }

    /// What dials are marked in beside each other.
    void look_for_other_unit(const TypedPressure& value, double usual_pa, const Gauge* gauge) {
        if (entry_.struck.empty() || !(value.si() > 0.0) || !(usual_pa > 0.0)) return;
        const double apart = std::log(at_.reference.assumed("other-unit-apart"));
        const auto far = [&](double pa) { return std::abs(std::log(pa / usual_pa)); };
        if (far(value.si()) < apart) return;
        double nearest = apart;
        for (const auto unit : {units::bar, units::psi, units::kpa}) {
            if (unit == value.unit()) continue;
            const auto other = TypedPressure::make(entry_.struck, unit);
            if (!other || !(other->si() > 0.0) || far(other->si()) >= nearest) continue;
            if (gauge && is_above(other->si(), gauge->full_scale.si())) continue;
            nearest = far(other->si());
            out_.other_unit = *other;
        }
    }

    void ask_oil() {
        if (at_.engine.fuel == Fuel::diesel)
            ask("pad.diesel_wet");
        else if (model_ && model_->oil_fill &&
                 model_->oil_fill->figure.si >= at_.reference.assumed("oil-most-of-chamber")) {
            ask("pad.oil_locks", figure(Dimension::volume, model_->inputs.oil_m3), model_->oil_fill->figure);
            out_.questions.back().from = {model_->oil_fill->from};
        } else if (const double much = at_.reference.assumed("oil-much");
                   entry_.oil_volume && is_above(entry_.oil_volume->si(), much)) {
            const auto in_ml = [](double m3) {
                return Figure{Dimension::volume, m3, {}, fmt::format("{:g}", 1e6 * m3), "ml"};
            };
            ask("pad.much_oil", in_ml(entry_.oil_volume->si()), in_ml(much));
        }
    }

    void cranking() {
        if (entry_.test == TestKind::wet) ask_oil();
        if (!entry_.final) {
            add_cranking_facts(at_, entry_, nullptr, dial(), model_, out_.facts);
            return;
        }
        Cranking reading = typed_cranking(at_, entry_, dial());
        add_cranking_facts(at_, entry_, &reading, dial(), model_, out_.facts);
        out_.value = reading.final;
        // Even a cylinder without a valve moves the needle a little; a pull that was forgotten doesn't.
        if (entry_.final->si() == 0.0) ask("pad.zero");
        look_for_other_unit(
            *entry_.final,
            expected().value_or(at_.reference.assumed(
                at_.engine.fuel == Fuel::diesel ? "usual-cranking-diesel" : "usual-cranking")),
            dial());
        if (is_in_range(entry_.final->si())) out_.other_unit.reset();
        // One question about the same digits.
        if (!out_.other_unit) ask_slip(*entry_.final);
        if (entry_.first && entry_.first->si() > entry_.final->si())
            ask("pad.first_over_final", figure_of(*entry_.first), figure_of(*entry_.final));
        if (entry_.test == TestKind::dry) {
            judge_by_limits(at_, reading, model_, tester_);
            out_.state = reading.state;
            return;
        }
        const auto dry = cranking_of(at_, TestKind::dry, entry_.cylinder);
        if (!dry || !(dry->final.figure.si > 0.0)) return;
        out_.rise = rise_of(at_, *dry, reading, dial());
        const double doubt =
            std::hypot(reading.final.figure.u95.value_or(0.0), dry->final.figure.u95.value_or(0.0));
        if (entry_.final->si() > 0.0 && entry_.final->si() < dry->final.figure.si - doubt)
            ask("pad.wet_below_dry", figure_of(*entry_.final), dry->final.figure);
    }

    void leak_down() {
        if (entry_.set) {
            const bool known = tester_ && tester_->set_pressure;
            look_for_other_unit(*entry_.set,
                                known ? tester_->set_pressure->si() : at_.reference.assumed("usual-set"),
                                tester_ && tester_->supply_gauge ? &*tester_->supply_gauge : dial());
        }
        if (!entry_.held) return;
        out_.value = as_typed(*entry_.held);
        std::optional<TypedPressure> set = entry_.set;
        if (!set && tester_) set = tester_->set_pressure;
        if (!set) {
            ask("pad.no_set");
            return;
        }
        if (is_above(entry_.held->si(), set->si())) {
            ask("pad.held_over_set", figure_of(*entry_.held), figure_of(*set));
            return;
        }
        const double noticeably = at_.reference.assumed("set-differs");
        if (entry_.set && tester_ && tester_->set_pressure &&
            std::abs(set->si() - tester_->set_pressure->si()) > noticeably * tester_->set_pressure->si() &&
            at_.visit.session.conditions.crank_held_by != CrankHeldBy::low_pressure)
            ask("pad.set_differs", figure_of(*set), figure_of(*tester_->set_pressure));
        Reading reading = reading_of(entry_);
        reading.set = set;
        const auto shown = held_of_set(at_, tester_, {&reading});
        if (!shown) return;
        out_.value = shown->held;
        out_.leakage = shown->leakage;
        out_.leakage_own_u95 = shown->own_u95;
        out_.leak_hole = leak_sizes(*shown).hole;
        const LeakageBand& band = at_.reference.deciding_band();
        out_.converted = on_tester(at_, *shown, band.set, band.restrictor);
        std::vector<OnTester> testers;
        if (out_.converted) testers.push_back(*out_.converted);
        std::vector<Remark> why;
        out_.state = judge_leak(at_, *shown, testers, why);
        if (!at_.two_stroke() && entry_.held->si() < at_.reference.assumed("very-low-held") * set->si())
            ask("pad.very_low_held");
        const auto gauge =
            instrument_of(dial(), set->si(), step_pa(reading, &Reading::held), at_.reference).gauge;
        const double lost = set->si() - entry_.held->si();
        if (lost > 0.0 && lost <= u95_difference(gauge, set->si(), entry_.held->si()))
            ask("pad.within_gauge", figure(Dimension::pressure_difference, lost));
    }

    void crankcase() {
        const double most = at_.reference.assumed("crankcase-set-most");
        if (entry_.set && entry_.set->si() > most)
            ask("pad.crankcase_high", figure_of(*entry_.set), figure(Dimension::gauge_pressure, most));
        if (!entry_.held) return;
        out_.value = as_typed(*entry_.held);
        if (entry_.set && is_above(entry_.held->si(), entry_.set->si()))
            ask("pad.held_over_set", figure_of(*entry_.held), figure_of(*entry_.set));
        out_.state = judge_crankcase(at_.engine.crankcase, out_.value->figure, entry_.hold).state;
    }

    const Case& at_;
    const PadEntry& entry_;
    const ModelFacts* model_;
    const Tester* tester_;
    PadJudgement out_;
};

}  // namespace

ModelInputs model_inputs(const Dossier& dossier, const Visit& visit, const Reference& reference,
                         const PadEntry& entry) {
    const Case at = case_of(dossier, visit, reference, {});
    return model_inputs(dossier.engine, visit.session, reference, tester_of(at, entry.test, entry.tester),
                        entry.adapter, entry.oil_volume);
}

PadJudgement judge_entry(const Dossier& dossier, const Visit& visit, const Reference& reference,
                         const PadEntry& entry, const ModelFacts* model) {
    const Case at = case_of(dossier, visit, reference, {});
    return Judge(at, entry, model).run();
}

}  // namespace lapwing::findings

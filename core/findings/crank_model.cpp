// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/findings/crank_model.h"

#include <algorithm>
#include <cmath>

#include "core/findings/case.h"
#include "core/physics/cranking_effects.h"
#include "core/physics/cranking_estimates.h"

namespace lapwing::findings {
namespace {

Message model_source() {
    return say("source.physics",
               std::string("cranking model, one zone, with the tester's check valve and volumes"));
}

Derivation derivation(const ModelInputs& inputs, std::string_view title, std::string symbols = {}) {
    Derivation out;
    out.title = Word{"from:" + std::string(title)};
    out.symbols = std::move(symbols);
    out.inputs = inputs.inputs;
    out.source = model_source();
    out.notes = inputs.notes;
    return out;
}

/// Runs the model for one set of inputs, fact by fact. A fact that the model refuses is left out.
class Work {
public:
    explicit Work(const ModelInputs& inputs) : inputs_(inputs), at_(cranking_case(inputs)) {
        at_.speed_rad_s *= inputs.speed_dip;
    }

    ModelFacts run() {
        out_.inputs = inputs_;
        add_oil_fill();
        if (!add_healthy()) return std::move(out_);
        add_first_share();
        add_oil();
        add_hose();
        add_circumstances();
        add_correction();
        return std::move(out_);
    }

private:
    bool add_healthy() {
        const auto reading = physics::healthy_reading(at_, inputs_.site_pa, inputs_.closing_doubt_rad);
        if (!reading) {
            const bool ratio = reading.error().code == "healthy.compression_ratio";
            out_.healthy_says =
                ratio ? remark("model.above_ratio", figure(Dimension::number, inputs_.compression_ratio))
                      : remark("model.refused", reading.error().english);
            return false;
        }
        // Independent doubts add as their squares do. Makers' ranges grow in proportion to the compression
        // ratio, and so does its doubt.
        const double middle = reading->gauge_pa;
        const double others = middle * std::hypot(2.0 * inputs_.own_doubt, inputs_.compression_ratio_doubt /
                                                                               inputs_.compression_ratio);
        const double twice = 2.0 * inputs_.speed_doubt;
        const double slower = middle - healthy_at(at_.speed_rad_s / (1.0 + twice), at_.wall_k, middle);
        const double faster = healthy_at(at_.speed_rad_s * (1.0 + twice), at_.wall_k, middle) - middle;
        // Cold or warm is not a doubt to either side: what is not noted may only have been warm.
        const double warmer = inputs_.may_be_warm_k
                                  ? healthy_at(at_.speed_rad_s, *inputs_.may_be_warm_k, middle) - middle
                                  : 0.0;
        DerivedRange range;
        range.low = figure(Dimension::gauge_pressure,
                           middle - std::hypot(middle - reading->low_gauge_pa, others, slower));
        range.high = figure(Dimension::gauge_pressure,
                            middle + warmer + std::hypot(reading->high_gauge_pa - middle, others, faster));
        range.from = derivation(inputs_, "healthy");
        out_.healthy_says = remark("model.healthy", range.low, range.high);
        out_.healthy_says.from = {range.from};
        out_.healthy = std::move(range);
        return true;
    }

    /// `otherwise` where the model refuses so slow an engine.
    [[nodiscard]] double healthy_at(double speed_rad_s, double wall_k, double otherwise) const {
        physics::CrankingCase changed = at_;
        changed.speed_rad_s = speed_rad_s;
        changed.wall_k = wall_k;
        const auto reading = physics::healthy_reading(changed, inputs_.site_pa, 0.0);
        return reading ? reading->gauge_pa : otherwise;
    }

    void add_oil_fill() {
        out_.oil_fill = Derived{figure(Dimension::share, inputs_.oil_m3 / chamber_m3(inputs_)),
                                derivation(inputs_, "oil_fill", "V / V_c")};
        auto& inputs = out_.oil_fill->from.inputs;
        inputs.insert(inputs.begin(), inputs_.oil_inputs.front());
        auto& notes = out_.oil_fill->from.notes;
        notes = inputs_.oil_notes;
    }

    void add_first_share() {
        const auto reading = physics::crank(at_);
        if (!reading || !(reading->last_gauge_pa > 0.0)) return;
        out_.healthy_first_share =
            Derived{figure(Dimension::share, reading->puffs_gauge_pa.front() / reading->last_gauge_pa),
                    derivation(inputs_, "healthy_first_share", "p₁ / p")};
    }

    void add_oil() {
        const auto effect =
            physics::oil_volume_effect(at_, inputs_.oil_m3, inputs_.oil_kept_least, inputs_.oil_kept_most);
        if (!effect || !(effect->dry_gauge_pa > 0.0)) return;
        DerivedRange range;
        range.low = figure(Dimension::share, effect->low_gauge_pa / effect->dry_gauge_pa - 1.0);
        range.high = figure(Dimension::share, effect->high_gauge_pa / effect->dry_gauge_pa - 1.0);
        range.from = derivation(inputs_, "oil_rise", "p(V_c − k V) / p(V_c) − 1");
        range.from.inputs.insert(range.from.inputs.begin(), inputs_.oil_inputs.begin(),
                                 inputs_.oil_inputs.end());
        range.from.notes.insert(range.from.notes.begin(), inputs_.oil_notes.begin(), inputs_.oil_notes.end());
        out_.oil_rise = std::move(range);
    }

    void add_hose() {
        if (!(at_.tester.before_valve_m3() > 0.0)) return;
        const auto effect = physics::hose_effect(at_);
        if (!effect || !(effect->without_gauge_pa > 0.0)) return;
        out_.hose_correction = effect->correction;
        out_.hose_loss = loss(1.0 - effect->shown_gauge_pa / effect->without_gauge_pa, "hose_loss", {});
        out_.hose_loss->from.symbols = "1 − p_with / p_without";
    }

    /// What is lost of a reading, with the model's own doubt of it.
    [[nodiscard]] Derived loss(double share, std::string_view title, std::vector<Input> more) const {
        Derived out{figure(Dimension::share, share, 2.0 * inputs_.correction_doubt * std::abs(share)),
                    derivation(inputs_, title, "1 − p / p′")};
        out.from.inputs.insert(out.from.inputs.begin(), more.begin(), more.end());
        return out;
    }

    void add_circumstances() {
        if (inputs_.throttle_fill_least && inputs_.throttle_fill_most) add_throttle();
        if (inputs_.slow_speed_rad_s) {
            // The mean speeds: both dip alike.
            const auto slow =
                physics::speed_effect(cranking_case(inputs_), *inputs_.slow_speed_rad_s,
                                      {inputs_.speed_dip, inputs_.speed_dip * inputs_.speed_dip_doubt});
            if (slow && slow->usual_gauge_pa > 0.0)
                out_.slow_loss =
                    loss(1.0 - slow->ratio(), "slow_loss",
                         {input("slow_speed", "", figure(Dimension::speed, *inputs_.slow_speed_rad_s))});
        }
        if (inputs_.warm_wall_k) {
            const auto warm = physics::wall_effect(at_, *inputs_.warm_wall_k);
            if (warm && warm->usual_gauge_pa > 0.0)
                out_.cold_loss =
                    loss(1.0 - 1.0 / warm->ratio(), "cold_loss",
                         {input("warm_walls", "", figure(Dimension::temperature, *inputs_.warm_wall_k))});
        }
        if (inputs_.easy_crack_pa) {
            physics::CrankingCase easy = at_;
            easy.tester.crack_pa = *inputs_.easy_crack_pa;
            const auto as_it_was = physics::crank(at_);
            const auto better = physics::crank(easy);
            if (as_it_was && better && better->last_gauge_pa > 0.0)
                out_.core_loss = loss(
                    1.0 - as_it_was->last_gauge_pa / better->last_gauge_pa, "core_loss",
                    {input("easy_valve", "", figure(Dimension::pressure_difference, easy.tester.crack_pa))});
        }
    }

    void add_throttle() {
        const auto effect =
            physics::throttle_effect(at_, *inputs_.throttle_fill_least, *inputs_.throttle_fill_most);
        if (!effect || !(effect->usual_gauge_pa > 0.0)) return;
        DerivedRange range{figure(Dimension::share, 1.0 - effect->high_gauge_pa / effect->usual_gauge_pa),
                           figure(Dimension::share, 1.0 - effect->low_gauge_pa / effect->usual_gauge_pa),
                           derivation(inputs_, "throttle_loss", "1 − p / p′")};
        const std::vector<Input> fills{
            input("fill_least", "", figure(Dimension::share, *inputs_.throttle_fill_least)),
            input("fill_most", "", figure(Dimension::share, *inputs_.throttle_fill_most))};
        range.from.inputs.insert(range.from.inputs.begin(), fills.begin(), fills.end());
        out_.throttle_loss = std::move(range);
    }

    /// Losses act one after the other, so their factors multiply and their doubts, as shares, add as squares
    /// do.
    void add_correction() {
        Correction all;
        double doubt = 0.0;
        const auto take = [&](double share, double share_u95, const Derivation& from) {
            if (!(share < 1.0)) return;
            all.factor /= 1.0 - share;
            doubt = std::hypot(doubt, share_u95 / (1.0 - share));
            all.from.push_back(from);
        };
        for (const auto* one : {&out_.hose_loss, &out_.slow_loss, &out_.cold_loss, &out_.core_loss})
            if (*one) take((*one)->figure.si, (*one)->figure.u95.value_or(0.0), (*one)->from);
        if (const auto& throttle = out_.throttle_loss)
            take(0.5 * (throttle->low.si + throttle->high.si), 0.5 * (throttle->high.si - throttle->low.si),
                 throttle->from);
        all.u95 = doubt * all.factor;
        if (!all.from.empty()) out_.correction = std::move(all);
    }

    const ModelInputs& inputs_;
    physics::CrankingCase at_;  ///< at the speed that counts, near top dead centre
    ModelFacts out_;
};

Remark why_silent(const ModelInputs& inputs) {
    if (inputs.silence == ModelSilence::decompressor) return remark("model.decompressor");
    // One sentence names at most three things; which ones decides the order of the card.
    const auto& missing = inputs.missing;
    if (missing.size() == 1) return remark("model.missing_one", missing[0]);
    if (missing.size() == 2) return remark("model.missing_two", missing[0], missing[1]);
    return remark("model.missing_three", missing[0], missing[1], missing[2]);
}

}  // namespace

ModelFacts model_facts(const ModelInputs& inputs) {
    if (inputs.silence == ModelSilence::none) return Work(inputs).run();
    ModelFacts out;
    out.inputs = inputs;
    out.healthy_says = why_silent(inputs);
    return out;
}

std::optional<ModelFacts> ModelCache::known(const ModelInputs& inputs) const {
    const std::lock_guard lock(mutex_);
    const auto found = std::ranges::find(known_, inputs, &ModelFacts::inputs);
    return found == known_.end() ? std::nullopt : std::optional(*found);
}

ModelFacts ModelCache::facts(const ModelInputs& inputs) {
    if (auto found = known(inputs)) return std::move(*found);
    // The lock is not held over the sums: two threads that ask for the same at once both work it out.
    ModelFacts made = model_facts(inputs);
    constexpr std::size_t enough = 16;
    const std::lock_guard lock(mutex_);
    if (known_.size() == enough) known_.pop_front();
    known_.push_back(made);
    return made;
}

}  // namespace lapwing::findings

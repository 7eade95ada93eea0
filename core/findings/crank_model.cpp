// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/findings/crank_model.h"

#include <algorithm>
#include <cmath>

#include "core/findings/case.h"
#include "core/findings/instruments.h"
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
        add_pulls();
        add_oil();
        return run_correction();
    }

    ModelFacts run_correction() {
        out_.inputs = inputs_;
        add_hose();
        add_circumstances();
        add_correction();
        return std::move(out_);
    }

    ModelFacts run_released() {
        out_.inputs = inputs_;
        out_.healthy_says = remark("model.decompressor");
        const auto effect =
            physics::decompressor_effect(at_, *inputs_.released_least_rad, *inputs_.released_most_rad);
        if (!effect) return std::move(out_);
        DerivedRange range{figure(Dimension::gauge_pressure, effect->low_gauge_pa),
                           figure(Dimension::gauge_pressure, effect->high_gauge_pa),
                           derivation(inputs_, "released", "p(φ_d)")};
        range.from.inputs.insert(
            range.from.inputs.begin(),
            {input("released_least", "φ_d", figure(Dimension::angle, *inputs_.released_least_rad)),
             input("released_most", "φ_d", figure(Dimension::angle, *inputs_.released_most_rad))});
        range.from.parts = range_parts(Dimension::pressure_difference,
                                       {{"released", effect->high_gauge_pa - effect->low_gauge_pa}});
        out_.released = std::move(range);
        return std::move(out_);
    }

private:
    bool add_healthy() {
        // Makers' ranges grow in proportion to the compression ratio, and so does its doubt; readings go in
        // proportion to the air pressure.
        const double by_model = 2.0 * inputs_.own_doubt;
        const double by_ratio = inputs_.compression_ratio_doubt / inputs_.compression_ratio;
        const double by_air = inputs_.site_doubt;
        const auto reading =
            physics::healthy_band(at_, inputs_.site_pa,
                                  {inputs_.closing_doubt_rad, std::hypot(by_model, by_ratio, by_air),
                                   2.0 * inputs_.speed_doubt, inputs_.may_be_warm_k});
        if (!reading) {
            const bool ratio = reading.error().code == "healthy.compression_ratio";
            out_.healthy_says =
                ratio ? remark("model.above_ratio", figure(Dimension::number, inputs_.compression_ratio))
                      : remark("model.refused", reading.error().english);
            return false;
        }
        DerivedRange range;
        range.low = figure(Dimension::gauge_pressure, reading->low_gauge_pa);
        range.high = figure(Dimension::gauge_pressure, reading->high_gauge_pa);
        range.from = derivation(inputs_, "healthy", "p(V, φ, n, T) at p₀ × p / p₀");
        const double middle = reading->gauge_pa;
        range.from.parts =
            range_parts(Dimension::pressure_difference, {{"closing", 2.0 * reading->by_closing_pa},
                                                         {"model", 2.0 * by_model * middle},
                                                         {"ratio", 2.0 * by_ratio * middle},
                                                         {"air_pressure", 2.0 * by_air * middle},
                                                         {"speed", 2.0 * reading->by_speed_pa},
                                                         {"warmth", reading->by_warmth_pa}});
        out_.healthy_says = remark("model.healthy", range.low, range.high);
        out_.healthy_says.from = {range.from};
        out_.healthy = std::move(range);
        return true;
    }

    void add_oil_fill() {
        const double fill = inputs_.oil_m3 / chamber_m3(inputs_);
        // The chamber is what the swept volume leaves: V / (ε − 1).
        const double by_ratio =
            fill * inputs_.compression_ratio_doubt / std::max(inputs_.compression_ratio - 1.0, 0.1);
        const double by_oil = fill * inputs_.oil_doubt;
        out_.oil_fill = Derived{figure(Dimension::share, fill, std::hypot(by_oil, by_ratio)),
                                derivation(inputs_, "oil_fill", "V / V_c")};
        auto& inputs = out_.oil_fill->from.inputs;
        inputs.insert(inputs.begin(), inputs_.oil_inputs.front());
        auto& notes = out_.oil_fill->from.notes;
        notes = inputs_.oil_notes;
        out_.oil_fill->from.doubts = doubt_shares({{"oil", by_oil}, {"ratio", by_ratio}});
    }

    void add_pulls() {
        const auto reading = physics::crank(at_);
        if (!reading || !(reading->last_gauge_pa > 0.0) || !(reading->limit_gauge_pa > 0.0)) return;
        const double first = reading->puffs_gauge_pa.front() / reading->last_gauge_pa;
        out_.healthy_first_share = Derived{figure(Dimension::share, first, inputs_.first_share_doubt * first),
                                           derivation(inputs_, "healthy_first_share", "p₁ / p")};
        out_.healthy_first_share->from.doubts = {{Word{"doubt:model"}, 1.0}};
        for (const double puff : reading->puffs_gauge_pa) {
            const double missing = std::max(0.0, 1.0 - puff / reading->limit_gauge_pa);
            out_.reached.push_back(
                {figure(Dimension::share, 1.0 - missing, 2.0 * inputs_.correction_doubt * missing),
                 derivation(inputs_, "reached", "p_k / p_∞")});
            out_.reached.back().from.doubts = {{Word{"doubt:model"}, 1.0}};
        }
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
        range.from.parts = range_parts(Dimension::share, {{"oil_kept", range.high.si - range.low.si}});
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
        out.from.doubts = {{Word{"doubt:model"}, 1.0}};
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
        range.from.parts = range_parts(Dimension::share, {{"throttle", range.high.si - range.low.si}});
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
    if (inputs.released_least_rad) return Work(inputs).run_released();
    ModelFacts out;
    out.inputs = inputs;
    out.healthy_says = why_silent(inputs);
    return out;
}

ModelFacts model_correction(const ModelInputs& inputs) {
    if (inputs.silence == ModelSilence::none) return Work(inputs).run_correction();
    ModelFacts out;
    out.inputs = inputs;
    return out;
}

std::optional<ModelFacts> ModelCache::known(const ModelInputs& inputs) const {
    const std::lock_guard lock(mutex_);
    const auto found = std::ranges::find(known_, inputs, &ModelFacts::inputs);
    return found == known_.end() ? std::nullopt : std::optional(*found);
}

namespace {

// The lock is not held over the sums: two threads that ask for the same at once both work it out.
void keep(std::deque<ModelFacts>& among, const ModelFacts& made, std::size_t enough) {
    if (among.size() == enough) among.pop_front();
    among.push_back(made);
}

}  // namespace

ModelFacts ModelCache::facts(const ModelInputs& inputs) {
    if (auto found = known(inputs)) return std::move(*found);
    ModelFacts made = model_facts(inputs);
    const std::lock_guard lock(mutex_);
    keep(known_, made, enough);
    return made;
}

ModelFacts ModelCache::correction(const ModelInputs& inputs) {
    if (auto found = known(inputs)) return std::move(*found);
    {
        const std::lock_guard lock(mutex_);
        const auto found = std::ranges::find(corrections_, inputs, &ModelFacts::inputs);
        if (found != corrections_.end()) return *found;
    }
    ModelFacts made = model_correction(inputs);
    const std::lock_guard lock(mutex_);
    keep(corrections_, made, enough);
    return made;
}

}  // namespace lapwing::findings

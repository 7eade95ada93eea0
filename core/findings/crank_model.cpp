// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/findings/crank_model.h"

#include <algorithm>
#include <cmath>

#include "core/findings/case.h"
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
    explicit Work(const ModelInputs& inputs) : inputs_(inputs), at_(cranking_case(inputs)) {}

    ModelFacts run() {
        out_.inputs = inputs_;
        if (!add_healthy()) return std::move(out_);
        add_first_share();
        add_oil();
        add_hose();
        add_circumstances();
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
        const double others = middle * std::hypot(inputs_.own_doubt, inputs_.compression_ratio_doubt /
                                                                         inputs_.compression_ratio);
        DerivedRange range;
        range.low =
            figure(Dimension::gauge_pressure, middle - std::hypot(middle - reading->low_gauge_pa, others));
        range.high =
            figure(Dimension::gauge_pressure, middle + std::hypot(reading->high_gauge_pa - middle, others));
        range.from = derivation(inputs_, "healthy");
        out_.healthy_says = remark("model.healthy", range.low, range.high);
        out_.healthy_says.from = {range.from};
        out_.healthy = std::move(range);
        return true;
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
        out_.hose_loss =
            Derived{figure(Dimension::share, 1.0 - effect->shown_gauge_pa / effect->without_gauge_pa),
                    derivation(inputs_, "hose_loss", "1 − p_with / p_without")};
    }

    /// What is lost of `better`'s reading by standing as the visit did.
    [[nodiscard]] std::optional<double> lost(const physics::CrankingCase& as_it_was,
                                             const physics::CrankingCase& better) const {
        const auto worse = physics::crank(as_it_was);
        const auto best = physics::crank(better);
        if (!worse || !best || !(best->last_gauge_pa > 0.0)) return std::nullopt;
        return 1.0 - worse->last_gauge_pa / best->last_gauge_pa;
    }

    [[nodiscard]] std::optional<Derived> loss(const physics::CrankingCase& as_it_was,
                                              const physics::CrankingCase& better, std::string_view title,
                                              std::vector<Input> more) const {
        const auto share = lost(as_it_was, better);
        if (!share) return std::nullopt;
        Derived out{figure(Dimension::share, *share), derivation(inputs_, title)};
        out.from.inputs.insert(out.from.inputs.begin(), more.begin(), more.end());
        return out;
    }

    void add_circumstances() {
        if (inputs_.throttle_fill_least && inputs_.throttle_fill_most) add_throttle();
        if (inputs_.slow_speed_rad_s) {
            physics::CrankingCase slow = at_;
            slow.speed_rad_s = *inputs_.slow_speed_rad_s;
            out_.slow_loss = loss(slow, at_, "slow_loss",
                                  {input("slow_speed", "", figure(Dimension::speed, slow.speed_rad_s))});
        }
        if (inputs_.warm_wall_k) {
            physics::CrankingCase warm = at_;
            warm.wall_k = *inputs_.warm_wall_k;
            out_.cold_loss = loss(at_, warm, "cold_loss",
                                  {input("warm_walls", "", figure(Dimension::temperature, warm.wall_k))});
        }
        if (inputs_.easy_crack_pa) {
            physics::CrankingCase easy = at_;
            easy.tester.crack_pa = *inputs_.easy_crack_pa;
            out_.core_loss =
                loss(at_, easy, "core_loss",
                     {input("easy_valve", "", figure(Dimension::pressure_difference, easy.tester.crack_pa))});
        }
    }

    void add_throttle() {
        const auto with_fill = [&](double fill) {
            physics::CrankingCase starved = at_;
            starved.fill = fill;
            return lost(starved, at_);
        };
        const auto most = with_fill(*inputs_.throttle_fill_least);
        const auto least = with_fill(*inputs_.throttle_fill_most);
        if (!most || !least) return;
        DerivedRange range{figure(Dimension::share, *least), figure(Dimension::share, *most),
                           derivation(inputs_, "throttle_loss")};
        const std::vector<Input> fills{
            input("fill_least", "", figure(Dimension::share, *inputs_.throttle_fill_least)),
            input("fill_most", "", figure(Dimension::share, *inputs_.throttle_fill_most))};
        range.from.inputs.insert(range.from.inputs.begin(), fills.begin(), fills.end());
        out_.throttle_loss = std::move(range);
    }

    const ModelInputs& inputs_;
    const physics::CrankingCase at_;
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

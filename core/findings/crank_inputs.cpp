// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <algorithm>
#include <cctype>
#include <cmath>

#include "core/findings/case.h"
#include "core/findings/crank_model.h"

namespace lapwing::findings {
namespace {

/// Fills the inputs part by part, naming every guess.
class Collect {
public:
    Collect(const Engine& engine, const Session& session, const Reference& reference)
        : engine_(engine), session_(session), reference_(reference) {}

    ModelInputs run(const Tester* tester, const std::string& adapter, const std::optional<TypedVolume>& oil) {
        const bool released = decompressor_works(engine_, session_);
        add_cylinder();
        if (!out_.missing.empty())
            return silent(released ? ModelSilence::decompressor : ModelSilence::data_missing);
        add_closing();
        add_circumstances();
        add_tester(tester, adapter);
        add_oil(oil);
        out_.own_doubt = reference_.assumed("model-doubt");
        out_.correction_doubt = reference_.assumed("correction-doubt");
        out_.first_share_doubt = reference_.assumed("first-share-doubt");
        if (released) {
            out_.silence = ModelSilence::decompressor;
            out_.released_least_rad = reference_.assumed("decompressor-closing-least");
            out_.released_most_rad = reference_.assumed("decompressor-closing-most");
        }
        note("note.model_doubt", figure(Dimension::share, 2.0 * out_.own_doubt));
        note("note.model_leaves_out");
        return std::move(out_);
    }

private:
    ModelInputs silent(ModelSilence why) {
        ModelInputs out;
        out.silence = why;
        out.missing = std::move(out_.missing);
        return out;
    }

    template <class... Args>
    void note(std::string_view code, Args&&... args) {
        out_.notes.push_back(say(code, std::forward<Args>(args)...));
    }

    double needed(const std::optional<Sourced<TypedLength>>& value, std::string_view name,
                  const char* symbol) {
        if (!value) {
            out_.missing.push_back(Word{"input:" + std::string(name)});
            return 0.0;
        }
        out_.inputs.push_back(Input{Word{"input:" + std::string(name)}, symbol, figure_of(value->value)});
        return value->value.si();
    }

    void add_cylinder() {
        out_.bore_m = needed(engine_.bore, "bore", "B");
        out_.stroke_m = needed(engine_.stroke, "stroke", "S");
        if (engine_.rod) {
            out_.rod_m = needed(engine_.rod, "rod", "l");
        } else {
            const double of_stroke = reference_.assumed("rod-over-stroke");
            out_.rod_m = of_stroke * out_.stroke_m;
            out_.inputs.push_back(input("rod", "l", figure(Dimension::length, out_.rod_m)));
            note("note.rod_guessed", figure(Dimension::number, of_stroke));
        }
        out_.trapped_ratio = engine_.cycle == StrokeCycle::two;
        if (!engine_.compression_ratio) {
            out_.missing.push_back(Word{"input:compression_ratio"});
            return;
        }
        const Figure ratio = figure_of(engine_.compression_ratio->value, Dimension::number);
        out_.compression_ratio = ratio.si;
        out_.inputs.push_back(input("compression_ratio", "ε", ratio));
        if (engine_.compression_ratio->origin == Origin::guessed) {
            out_.compression_ratio_doubt = reference_.assumed("guessed-ratio-doubt");
            note("note.ratio_guessed", figure(Dimension::number, out_.compression_ratio_doubt));
        }
    }

    void add_closing() {
        const bool two = engine_.cycle == StrokeCycle::two;
        const auto& stated = two ? engine_.exhaust_port_closing : engine_.valves.intake_closing;
        if (!stated) {
            out_.closing_rad = reference_.assumed(two ? "port-closing" : "intake-closing");
            out_.closing_doubt_rad = reference_.assumed("closing-doubt");
            note(two ? "note.port_closing_assumed" : "note.closing_assumed",
                 figure(Dimension::angle, out_.closing_rad),
                 figure(Dimension::angle, out_.closing_doubt_rad));
        } else {
            out_.closing_rad = stated->value.si();
            out_.closing_doubt_rad = reference_.assumed("closing-known-doubt");
            if (!two) add_lift(engine_.valves.intake_closing_at);
        }
        if (!two && engine_.valves.timing == ValveTiming::variable) {
            out_.closing_doubt_rad =
                std::max(out_.closing_doubt_rad, reference_.assumed("variable-timing-doubt"));
            note("note.timing_variable", figure(Dimension::angle, out_.closing_doubt_rad));
        }
        out_.inputs.push_back(input(two ? "port_closing" : "intake_closing", "φ",
                                    figure(Dimension::angle, out_.closing_rad, out_.closing_doubt_rad)));
    }

    /// A valve that closes "at 1 mm lift" touches its seat later.
    void add_lift(TimingAt quoted_at) {
        if (quoted_at == TimingAt::seat) return;
        const double least = reference_.assumed("lift-to-seat-least");
        const double most = reference_.assumed("lift-to-seat-most");
        const double from = quoted_at == TimingAt::unknown ? 0.0 : least;
        out_.closing_rad += (from + most) / 2.0;
        out_.closing_doubt_rad += (most - from) / 2.0;
        note(quoted_at == TimingAt::unknown ? "note.closing_lift_unknown" : "note.closing_at_lift",
             figure(Dimension::angle, least), figure(Dimension::angle, most));
    }

    void add_circumstances() {
        const Conditions& conditions = session_.conditions;
        const Site site = site_of(engine_, session_, reference_);
        out_.site_pa = site.ambient_pa;
        out_.site_doubt = site.doubt;
        out_.inputs.insert(out_.inputs.end(), site.inputs.begin(), site.inputs.end());
        if (!site.known) note("note.altitude_unknown");

        out_.speed_rad_s = reference_.assumed("cranking-speed");
        if (conditions.cranking_speed) out_.speed_rad_s = conditions.cranking_speed->si();
        out_.speed_dip = reference_.assumed("speed-dip");
        out_.speed_dip_doubt = reference_.assumed("speed-dip-doubt");
        const double mean_doubt =
            reference_.assumed(conditions.cranking_speed ? "speed-known-doubt" : "speed-unknown-doubt");
        out_.speed_doubt = std::hypot(out_.speed_dip_doubt, mean_doubt);
        if (!conditions.cranking_speed)
            note("note.speed_assumed", figure(Dimension::share, 2.0 * mean_doubt));
        out_.inputs.push_back(input(
            "speed", "n", figure(Dimension::speed, out_.speed_rad_s, 2.0 * mean_doubt * out_.speed_rad_s)));
        note("note.speed_dip", figure(Dimension::share, out_.speed_dip));

        // Both ends of the cold-engine rule stand at fixed temperatures, so that two cold days compare.
        const double cold = physics::shop_temperature_k;
        const double warm = conditions.coolant && conditions.heat == EngineHeat::warm
                                ? conditions.coolant->si()
                                : reference_.assumed("warm-wall");
        out_.air_k = conditions.air ? conditions.air->si() : cold;
        out_.wall_k = conditions.heat == EngineHeat::warm ? warm : cold;
        if (conditions.heat == EngineHeat::cold) out_.warm_wall_k = warm;
        if (conditions.heat == EngineHeat::unknown) {
            out_.may_be_warm_k = warm;
            note("note.heat_unknown");
        }
        out_.inputs.push_back(input("walls", "T", figure(Dimension::temperature, out_.wall_k)));

        if (throttle_closed(session_, engine_)) {
            out_.throttle_fill_least = reference_.assumed("closed-throttle-fill-least");
            out_.throttle_fill_most = reference_.assumed("closed-throttle-fill-most");
        }
        if (battery_weak(conditions, reference_) && !conditions.cranking_speed)
            out_.slow_speed_rad_s = reference_.assumed("weak-battery-speed");
    }

    void add_tester(const Tester* tester, const std::string& adapter) {
        out_.hose_m3 = reference_.assumed("hose-volume");
        out_.crack_pa = reference_.assumed("valve-core-low-pressure");
        if (!tester) {
            note("note.gauge_assumed", figure(Dimension::volume, out_.hose_m3));
            return;
        }
        if (tester->hose_volume)
            out_.hose_m3 = tester->hose_volume->si();
        else
            note("note.hose_assumed", figure(Dimension::volume, out_.hose_m3));
        out_.valve_at_gauge = tester->check_valve_at == CheckValveAt::gauge_end;
        if (tester->check_valve_at == CheckValveAt::unknown) note("note.valve_place_assumed");
        out_.inputs.push_back(input(out_.valve_at_gauge ? "hose_before_valve" : "hose", "",
                                    figure(Dimension::volume, out_.hose_m3)));
        if (tester->check_valve_core == CheckValveCore::tyre) {
            out_.easy_crack_pa = out_.crack_pa;
            out_.crack_pa = reference_.assumed("valve-core-tyre");
            out_.inputs.push_back(
                input("valve_opens_at", "", figure(Dimension::pressure_difference, out_.crack_pa)));
        }
        const Adapter* used = adapter_in_use(*tester, adapter);
        if (!used || !used->volume) return;
        out_.fitting_m3 = used->volume->si();
        out_.inputs.push_back(input("adapter", "", figure(Dimension::volume, out_.fitting_m3)));
    }

    /// The adapter that was named with the reading. Where none was, the tester's only one for the thread of
    /// the engine's plugs: that one is for this engine. Null: none, or not known.
    [[nodiscard]] const Adapter* adapter_in_use(const Tester& tester, const std::string& named) const {
        const auto& all = tester.adapters;
        if (!named.empty()) {
            const auto used = std::ranges::find(all, named, &Adapter::name);
            return used == all.end() ? nullptr : &*used;
        }
        if (engine_.plug_thread.empty()) return nullptr;
        const auto fits = [&](const Adapter& one) {
            return thread_key(one.thread) == thread_key(engine_.plug_thread);
        };
        const auto first = std::ranges::find_if(all, fits);
        if (first == all.end() || std::any_of(first + 1, all.end(), fits)) return nullptr;
        return &*first;
    }

    /// "m12 x 1,25" and "M12x1.25" are one thread.
    static std::string thread_key(const std::string& thread) {
        std::string key;
        for (const char c : thread)
            if (c != ' ')
                key += c == ',' ? '.' : static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
        return key;
    }

    void add_oil(const std::optional<TypedVolume>& oil) {
        out_.oil_kept_least = reference_.assumed("oil-kept-least");
        out_.oil_kept_most = reference_.assumed("oil-kept-most");
        if (oil) {
            out_.oil_m3 = oil->si();
        } else {
            const double swept_m3 = physics::pi / 4.0 * out_.bore_m * out_.bore_m * out_.stroke_m;
            const bool small = swept_m3 < reference_.assumed("small-cylinder");
            out_.oil_m3 = std::min(reference_.assumed(small ? "oil-put-in-small" : "oil-put-in"),
                                   reference_.assumed("oil-assumed-of-chamber") * chamber_m3(out_));
            out_.oil_notes.push_back(say("note.oil_assumed", figure(Dimension::volume, out_.oil_m3)));
        }
        out_.oil_doubt = reference_.assumed("oil-alike");
        out_.oil_inputs = {
            input("oil", "V", figure(Dimension::volume, out_.oil_m3, out_.oil_doubt * out_.oil_m3)),
            input("oil_kept_least", "", figure(Dimension::share, out_.oil_kept_least)),
            input("oil_kept_most", "", figure(Dimension::share, out_.oil_kept_most))};
    }

    const Engine& engine_;
    const Session& session_;
    const Reference& reference_;
    ModelInputs out_;
};

}  // namespace

ModelInputs model_inputs(const Engine& engine, const Session& session, const Reference& reference,
                         const Tester* tester, const std::string& adapter,
                         const std::optional<TypedVolume>& oil) {
    return Collect(engine, session, reference).run(tester, adapter, oil);
}

double chamber_m3(const ModelInputs& inputs) {
    const physics::SliderCrank crank{inputs.bore_m, inputs.stroke_m, inputs.rod_m};
    return inputs.trapped_ratio
               ? physics::trapped_clearance_volume_m3(crank, inputs.compression_ratio, inputs.closing_rad)
               : physics::clearance_volume_m3(crank, inputs.compression_ratio);
}

bool below_par(const ModelInputs& inputs) {
    const bool before_valve = inputs.fitting_m3 > 0.0 || (inputs.valve_at_gauge && inputs.hose_m3 > 0.0);
    return inputs.silence == ModelSilence::none &&
           (before_valve || inputs.throttle_fill_least || inputs.slow_speed_rad_s || inputs.warm_wall_k ||
            inputs.easy_crack_pa);
}

physics::CrankingCase cranking_case(const ModelInputs& inputs) {
    physics::CrankingCase out;
    out.crank = {inputs.bore_m, inputs.stroke_m, inputs.rod_m};
    out.compression_ratio = inputs.compression_ratio;
    out.ratio_kind = inputs.trapped_ratio ? physics::CompressionRatioKind::trapped
                                          : physics::CompressionRatioKind::geometric;
    out.closing_after_bdc_rad = inputs.closing_rad;
    out.speed_rad_s = inputs.speed_rad_s;
    out.ambient_pa = inputs.site_pa;
    out.air_k = inputs.air_k;
    out.wall_k = inputs.wall_k;
    out.tester.fitting_m3 = inputs.fitting_m3;
    out.tester.hose_m3 = inputs.hose_m3;
    out.tester.check_valve =
        inputs.valve_at_gauge ? physics::CheckValvePlace::gauge : physics::CheckValvePlace::plug;
    out.tester.crack_pa = inputs.crack_pa;
    return out;
}

}  // namespace lapwing::findings

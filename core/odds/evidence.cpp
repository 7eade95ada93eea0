// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/odds/evidence.h"

#include <algorithm>
#include <cmath>
#include <numeric>

#include "core/findings/case.h"
#include "core/findings/crank_model.h"
#include "core/findings/firing.h"
#include "core/findings/leak_sums.h"
#include "core/findings/tester_checks.h"
#include "core/findings/touched.h"
#include "core/odds/contradictions.h"
#include "core/odds/evidence_parts.h"
#include "core/odds/levels.h"
#include "core/odds/repeats.h"
#include "core/odds/states.h"
#include "core/odds/testers_used.h"

namespace lapwing::odds {
namespace {

using findings::Case;
using findings::Path;
using findings::say;

/// Puts a visit's evidence together, cylinder by cylinder.
class Collect {
public:
    Collect(const Dossier& dossier, const Visit& visit, const findings::Reference& reference,
            const Assumptions& assumptions, std::optional<Tag> tag)
        : dossier_(dossier),
          visit_(visit),
          reference_(reference),
          assumptions_(assumptions),
          engine_(dossier.engine),
          at_(findings::case_of(dossier, visit, reference, {tag})),
          whole_(dossier.engine),
          testers_(at_, whole_, assumptions, out_),
          sources_{engine_, reference, assumptions, out_} {}

    Evidence run() {
        const std::vector<int> numbers = numbers_in_order(engine_);
        const auto place = [&](int number) {
            return static_cast<std::size_t>(std::ranges::find(numbers, number) - numbers.begin());
        };
        for (const auto& [a, b] : findings::neighbours(engine_))
            out_.joints.emplace_back(place(a), place(b));
        add_model();
        for (const int number : numbers)
            add_cylinder(number);
        if (out_.cranking && !out_.compare_only) out_.levels = levels_of(at_, inputs_, newest_, assumptions_);
        add_likes();
        return std::move(out_);
    }

private:
    // The cranking model.

    void add_model() {
        if (engine_.bore) out_.bore_m = engine_.bore->value.si();
        if (at_.decompressor_works()) {
            out_.reasons.push_back(say("odds.decompressor"));
            return;
        }
        newest_ = newest_cranking(at_);
        const Tester* gauge =
            findings::tester_of(at_, TestKind::dry, newest_ ? newest_->tester : std::nullopt);
        testers_.gauge(gauge);
        Engine& whole = whole_;
        std::vector<findings::Arg> missing;
        for (const auto& [there, what] :
             {std::pair{whole.bore.has_value(), "input:bore"},
              std::pair{whole.stroke.has_value(), "input:stroke"},
              std::pair{whole.compression_ratio.has_value(), "input:compression_ratio"}})
            if (!there) missing.emplace_back(findings::Word{what});
        const auto fill = [&](std::optional<Sourced<TypedLength>>& size, const char* id) {
            if (!size)
                size = Sourced<TypedLength>{
                    TypedLength::from(Length::from_si(assumptions_.at(id)), units::mm, 1),
                    Origin::guessed,
                    {}};
        };
        fill(whole.bore, "bore-unknown");
        fill(whole.stroke, "stroke-unknown");
        const double highest = assumptions_.at("ratio-highest");
        if (!whole.compression_ratio)
            whole.compression_ratio = Sourced<TypedRatio>{
                TypedRatio::from(
                    Ratio::from_si(whole.fuel == Fuel::diesel ? highest : assumptions_.at("ratio-unknown")),
                    units::one, 1),
                Origin::guessed,
                {}};
        inputs_ = findings::model_inputs(whole, visit_.session, reference_, gauge,
                                         newest_ ? newest_->adapter : std::string());
        SurfaceRange range;
        range.middle = findings::cranking_case(inputs_);
        range.middle.heat_w_m2k = assumptions_.at("heat");
        range.middle.speed_rad_s *= assumptions_.at("speed-dip");
        if (range.middle.compression_ratio > highest) {
            range.middle.compression_ratio = highest;
            out_.compare_only = true;
            out_.reasons.push_back(say("odds.compare_only_ratio", static_cast<int>(std::lround(highest))));
        } else if (!missing.empty()) {
            out_.compare_only = true;
            constexpr const char* codes[] = {"odds.compare_only_data", "odds.compare_only_data_two",
                                             "odds.compare_only_data_three"};
            out_.reasons.push_back({codes[missing.size() - 1], missing});
        }
        if (inputs_.throttle_fill_least && inputs_.throttle_fill_most) {
            range.middle.fill = 0.5 * (*inputs_.throttle_fill_least + *inputs_.throttle_fill_most);
            out_.compare_only = true;
            out_.reasons.push_back(say("odds.compare_only_throttle"));
        }
        const bool guessed = whole.compression_ratio->origin == Origin::guessed;
        range.ratio_spread = assumptions_.at(guessed ? "ratio-guessed-doubt" : "ratio-known-doubt");
        range.closing_spread_rad = 0.5 * inputs_.closing_doubt_rad;  // of two standard deviations
        range.heat_spread = assumptions_.at("heat-doubt");
        const bool timed = visit_.session.conditions.cranking_speed.has_value();
        range.speed_spread = std::hypot(assumptions_.at("speed-dip-doubt"),
                                        assumptions_.at(timed ? "speed-known-doubt" : "speed-unknown-doubt"));
        if (const auto fine = physics::check(range.middle); !fine) {
            out_.reasons.push_back(say("odds.no_cranking_model", fine.error().english));
            return;
        }
        oil_usual_m3_ = inputs_.oil_m3;
        out_.cranking = range;
        out_.hoses = {range.middle.tester};
    }

    /// More oil than a share of the smallest chamber that the doubts allow is not reckoned with: it would
    /// lock the engine.
    [[nodiscard]] double oil_that_fits(double oil_m3) const {
        constexpr double reach = CrankDoubts::reach;
        double chamber = 1.0;
        for (const double closing : {-reach, reach}) {
            const auto at = out_.cranking->at({reach, closing, 0.0, 0.0}, 0.0, 0.0);
            chamber = std::min(chamber, at.ratio_kind == physics::CompressionRatioKind::geometric
                                            ? physics::clearance_volume_m3(at.crank, at.compression_ratio)
                                            : physics::trapped_clearance_volume_m3(
                                                  at.crank, at.compression_ratio, at.closing_after_bdc_rad));
        }
        return std::min(oil_m3, assumptions_.at("oil-of-chamber") * chamber);
    }

    // One cylinder.

    void add_cylinder(int number) {
        CylinderEvidence cylinder;
        cylinder.number = number;
        for (std::size_t joint = 0; joint < out_.joints.size(); ++joint)
            if (out_.joints[joint].first == out_.cylinders.size() ||
                out_.joints[joint].second == out_.cylinders.size())
                cylinder.joints.push_back(joint);
        std::vector<TestedState> states = states_of(visit_, number);
        if (!at_.options.tag) cylinder.put_right = put_right_since(states, number);
        // A state that nothing was measured in yet.
        if (cylinder.put_right)
            states.insert(states.begin(), {Tag::after_adjustment, states.front().newest_ms});
        const Tag newest = states.empty() ? Tag::as_found : states.front().tag;
        cylinder.tag = at_.options.tag.value_or(newest);
        add_paths(cylinder);
        cylinder.fault_odds = clearance_odds(of_visit(visit_), cylinder, assumptions_);
        read(cylinder);
        if (!at_.options.tag) add_earlier(states, cylinder);
        out_.cylinders.push_back(std::move(cylinder));
    }

    [[nodiscard]] std::optional<Path> put_right_since(const std::vector<TestedState>& states,
                                                      int number) const {
        if (states.empty() ||
            std::ranges::find(states, Tag::after_adjustment, &TestedState::tag) != states.end())
            return std::nullopt;
        Timestamp when;
        when.unix_ms = states.front().newest_ms;
        for (const auto& [side, path] :
             {std::pair(ValveSide::exhaust, Path::exhaust), std::pair(ValveSide::intake, Path::intake)})
            if (findings::put_right_since(at_, number, side, states.front().tag, when)) return path;
        return std::nullopt;
    }

    /// The readings of the cylinder that carry its tag.
    void read(CylinderEvidence& cylinder) {
        const Case state = findings::case_of(dossier_, visit_, reference_, {cylinder.tag});
        if (out_.cranking) {
            cylinder.dry = cranking(state, TestKind::dry, cylinder);
            if (engine_.fuel == Fuel::petrol) cylinder.wet = cranking(state, TestKind::wet, cylinder);
        }
        const Tester* failed = add_leaks(state, cylinder);
        add_exits(state, failed, cylinder);
        sort_out_contradictions(state, cylinder);
    }

    void add_earlier(const std::vector<TestedState>& states, CylinderEvidence& cylinder) {
        std::vector<bool> same(cylinder.paths.size(), true);  // as in the state that was taken up last
        bool ran = false;
        bool apart = false;
        std::vector<double> odds = cylinder.fault_odds;
        for (std::size_t i = 1; i < states.size(); ++i) {
            const Tag done = states[i - 1].tag;
            for (std::size_t path = 0; path < same.size(); ++path)
                same[path] =
                    same[path] && !findings::touches(done, cylinder.paths[path], visit_, cylinder.number);
            ran = ran || done == Tag::after_running;
            if (done == Tag::after_adjustment)
                odds = clearance_odds(of_visit(before_adjustment(visit_)), cylinder, assumptions_);
            apart = apart || anything_changes(done);
            if (apart) break;
            CylinderEvidence then;
            then.number = cylinder.number;
            then.tag = states[i].tag;
            then.paths = cylinder.paths;
            then.joints = cylinder.joints;
            read(then);
            if (ran) {  // its conditions are noted once for the visit, and running warmed it
                then.dry.reset();
                then.wet.reset();
            }
            apart = !then.contradictions.empty() || then.wrong_tdc_suspected;
            if (apart || then.empty()) continue;
            EarlierState state{std::move(then), same};
            state.fault_odds = odds;
            cylinder.earlier.push_back(std::move(state));
            same.assign(same.size(), true);
        }
        const auto newest = findings::word_of(cylinder.tag);
        if (apart) cylinder.reasons.push_back(say("odds.earlier_state_apart", cylinder.number, newest));
        if (cylinder.earlier.empty()) return;
        cylinder.reasons.push_back(say("odds.earlier_state_shared", cylinder.number, newest));
        if (ran) cylinder.reasons.push_back(say("odds.earlier_state_ran", cylinder.number));
    }

    void add_paths(CylinderEvidence& cylinder) const {
        std::vector<Path>& paths = cylinder.paths;
        paths = {Path::rings};
        if (!at_.two_stroke()) paths.insert(paths.end(), {Path::intake, Path::exhaust});
        paths.push_back(Path::gasket);
        if (engine_.cooling != Cooling::air) paths.push_back(Path::coolant);
        if (engine_.decompressor == Decompressor::manual || engine_.decompressor == Decompressor::automatic)
            paths.push_back(Path::decompressor);
    }

    [[nodiscard]] Case of_visit(const Visit& visit) const {
        return findings::case_of(dossier_, visit, reference_, {});
    }

    [[nodiscard]] OilSeal seal_of(Oiled oiled) const {
        if (oiled == Oiled::fresh) return 1.0;
        return oiled == Oiled::before ? assumptions_.at("oil-before") : 0.0;
    }

    /// How far off a tester is that failed its check nobody knows. The last of those whose readings went.
    const Tester* leave_out_failed(const Case& state, TestKind test, std::vector<const Reading*>& readings,
                                   CylinderEvidence& cylinder) {
        const Tester* left_out = nullptr;
        std::erase_if(readings, [&](const Reading* reading) {
            const Tester* tester = findings::tester_of(state, test, reading->tester);
            const auto failed =
                tester ? findings::fails_at(*tester, reading->taken_at, reference_) : std::nullopt;
            if (!failed) return false;
            place_among(out_.reasons, say("odds.tester_failed", tester->name, findings::word_of(*failed)));
            cylinder.left_out = true;
            left_out = tester;
            return true;
        });
        return left_out;
    }

    std::optional<CrankEvidence> cranking(const Case& state, TestKind test, CylinderEvidence& cylinder) {
        auto readings = findings::counted(state, test, cylinder.number);
        std::erase_if(readings, [](const Reading* reading) { return !reading->final; });
        leave_out_failed(state, test, readings, cylinder);
        if (readings.empty()) return std::nullopt;
        const Reading& last = *readings.back();
        const Tester* tester = findings::tester_of(state, test, last.tester);
        const double final_pa = mean(readings, &Reading::final);
        const double step_pa = coarsest(readings, &Reading::final);
        CrankEvidence out = crank_evidence(tester, final_pa, step_pa, reference_);
        out.gauge = testers_.gauge(tester);
        const auto through = [&](const Reading* reading) {
            return testers_.hose(findings::tester_of(state, test, reading->tester), reading->adapter);
        };
        out.hose = through(&last);
        out.other_hoses = other_shares(readings, out.hose, through);
        out.apart_pa =
            further_apart(readings, &Reading::final,
                          std::hypot(out.noise_pa, assumptions_.at("reading-scatter") * final_pa), through);
        out.repeats = static_cast<int>(readings.size());
        widen_by_other_gauges(state, readings, step_pa, out);
        std::vector<const Reading*> firsts = readings;
        std::erase_if(firsts, [](const Reading* reading) { return !reading->first; });
        // Through several hoses the first puffs' mean is that of the final readings only where all have one.
        if (!firsts.empty() && (out.other_hoses.empty() || firsts.size() == readings.size()))
            out.first_pa = mean(firsts, &Reading::first);
        out.seal = seal_of(last.oiled);
        if (test == TestKind::wet) {
            out.seal = 1.0;
            out.oil_put_in_m3 = oil_that_fits(last.oil_volume ? last.oil_volume->si() : oil_usual_m3_);
            out_.cranking->largest_oil_m3 = std::max(out_.cranking->largest_oil_m3, out.oil_put_in_m3);
        }
        return out;
    }

    // Leak-down.

    /// The tester that failed its check where nothing that was read of this cylinder's air counts any more.
    const Tester* add_leaks(const Case& state, CylinderEvidence& cylinder) {
        auto readings = findings::counted(state, TestKind::leak_down, cylinder.number);
        std::erase_if(readings, [](const Reading* reading) {
            return !reading->set || !reading->held || !(reading->set->si() > 0.0) ||
                   reading->held->si() > reading->set->si();
        });
        const Tester* failed = leave_out_failed(state, TestKind::leak_down, readings, cylinder);
        if (!readings.empty()) failed = nullptr;
        const auto on = [&](const Reading* reading) {
            return findings::tester_of(state, TestKind::leak_down, reading->tester);
        };
        while (!readings.empty()) {
            const Reading* first = readings.front();
            const double set = first->set->si();
            std::vector<const Reading*> group;
            for (const Reading* reading : readings)
                if (findings::same_set_pressure(reading->set->si(), set, reference_) &&
                    reading->oiled == first->oiled && on(reading) == on(first))
                    group.push_back(reading);
            std::erase_if(readings,
                          [&](const Reading* one) { return std::ranges::find(group, one) != group.end(); });
            const Tester* tester = on(first);
            const double set_pa = mean(group, &Reading::set);
            LeakEvidence leak = leak_evidence(tester, set_pa, mean(group, &Reading::held),
                                              coarsest(group, &Reading::held), reference_);
            leak.repeats = static_cast<int>(group.size());
            // A leak that comes out another time moves what is held by half of that at the most.
            const double usual = std::hypot(leak.noise_pa, 0.5 * assumptions_.at("leak-repeat") * set_pa);
            leak.noise_pa = std::hypot(leak.noise_pa, further_apart(group, &Reading::held, usual));
            leak.seal = seal_of(group.back()->oiled);
            leak.curve = testers_.curve(set_pa, tester);
            cylinder.leaks.push_back(leak);
        }
        return failed;
    }

    // Exits.

    /// `failed`: the tester whose air was heard, where it failed its check. Where that air came out it tells
    /// all the same.
    void add_exits(const Case& state, const Tester* failed, CylinderEvidence& cylinder) {
        const Tester* tester = findings::tester_of(state, TestKind::leak_down, {});
        for (const ExitNote* note : standing(visit_.exits, cylinder.number))
            if (!failed && cylinder.leaks.empty() && note->tag == cylinder.tag && tester &&
                findings::fails_at(*tester, note->at, reference_))
                failed = tester;
        const auto with_air = [&](ExitEvidence exit, const Tester* off) {
            exit.curve = cylinder.leaks.empty() ? testers_.curve(assumptions_.at("listen-set"),
                                                                 off ? off : tester, off != nullptr)
                                                : cylinder.leaks.back().curve;
            exit.seal = cylinder.leaks.empty() ? 0.0 : cylinder.leaks.back().seal;
            return exit;
        };
        // What else than the joint lets air into a neighbour's plug hole.
        const auto other_way = [&](int neighbour) -> std::string_view {
            if (findings::companions(engine_, reference_, cylinder.number, neighbour))
                return "odds.companion";
            const auto there =
                findings::neighbour_while_tested(engine_, reference_, cylinder.number, neighbour);
            return there.by_intake || there.by_exhaust ? "odds.neighbour_open" : "";
        };
        std::vector<std::pair<Exit, std::optional<int>>> heard_at;
        for (const findings::Heard& heard : findings::exits_of(state, cylinder.number)) {
            heard_at.emplace_back(heard.exit, heard.neighbour);
            ExitEvidence exit{heard.exit, heard.neighbour, heard.loudness, heard.by,
                              exit_sources(sources_, cylinder, heard.exit, heard.neighbour)};
            if (exit.sources.empty()) continue;
            if (exit.neighbour && heard.loudness != Loudness::nothing)
                if (const auto code = other_way(*exit.neighbour); !code.empty())
                    cylinder.reasons.push_back(say(code, cylinder.number, *exit.neighbour));
            cylinder.exits.push_back(with_air(std::move(exit), failed));
        }
        if (failed && !cylinder.exits.empty())
            place_among(out_.reasons, say("odds.heard_failed", failed->name));
        const auto could_hear = [&](Exit exit, std::optional<int> neighbour, ListenedBy by) {
            if (std::ranges::find(heard_at, std::pair(exit, neighbour)) != heard_at.end()) return;
            ExitEvidence next{exit, neighbour, Loudness::nothing, by,
                              exit_sources(sources_, cylinder, exit, neighbour)};
            if (!next.sources.empty()) cylinder.to_hear.push_back(with_air(std::move(next), nullptr));
        };
        for (const Exit exit : {Exit::intake, Exit::exhaust, Exit::breather, Exit::decompressor})
            could_hear(exit, {}, ListenedBy::ear);
        could_hear(Exit::joint, {}, ListenedBy::soapy_water);
        could_hear(Exit::coolant, {}, ListenedBy::bubbles);
        const auto numbers = numbers_in_order(engine_);
        for (const std::size_t joint : cylinder.joints) {
            const auto& [a, b] = out_.joints[joint];
            could_hear(Exit::next_plug_hole, numbers[a == out_.cylinders.size() ? b : a], ListenedBy::ear);
        }
    }

    /// What readings would be like that were not taken: on the session's testers, at the usual pressures.
    void add_likes() {
        double high = 0.0;
        for (const CylinderEvidence& cylinder : out_.cylinders)
            if (cylinder.dry) high = std::max(high, cylinder.dry->final_pa);
        const double step_pa = assumptions_.at("step-usual");
        const Tester* gauge = findings::tester_of(at_, TestKind::dry, {});
        out_.crank_like =
            crank_evidence(gauge, high > 0.0 ? high : assumptions_.at("reading-usual"), step_pa, reference_);
        if (out_.cranking) {
            out_.crank_like.gauge = testers_.gauge(gauge);
            out_.crank_like.hose = testers_.hose(gauge, newest_ ? newest_->adapter : std::string());
            out_.crank_like.oil_put_in_m3 = oil_that_fits(oil_usual_m3_);
        }
        const Tester* tester = findings::tester_of(at_, TestKind::leak_down, {});
        const double set =
            tester && tester->set_pressure ? tester->set_pressure->si() : assumptions_.at("listen-set");
        out_.leak_like = leak_evidence(tester, set, assumptions_.at("held-usual") * set, step_pa, reference_);
        out_.leak_like.curve = testers_.curve(set, tester);
        if (out_.cranking && engine_.fuel == Fuel::petrol)
            out_.cranking->largest_oil_m3 =
                std::max(out_.cranking->largest_oil_m3, out_.crank_like.oil_put_in_m3);
    }

    const Dossier& dossier_;
    const Visit& visit_;
    const findings::Reference& reference_;
    const Assumptions& assumptions_;
    const Engine& engine_;
    const Case at_;
    const Reading* newest_ = nullptr;  ///< cranking reading
    Engine whole_;                     ///< what the card lacks guessed
    findings::ModelInputs inputs_;
    double oil_usual_m3_ = 0.0;
    Evidence out_;
    TestersUsed testers_;
    const SourceContext sources_;
};

}  // namespace

bool Evidence::empty() const {
    return std::ranges::all_of(cylinders, &CylinderEvidence::StateReadings::empty);
}

std::vector<SurfaceRange> Evidence::surfaces() const {
    std::vector<SurfaceRange> out;
    if (!cranking) return out;
    for (const physics::CompressionTester& hose : hoses) {
        out.push_back(*cranking);
        out.back().middle.tester = hose;
    }
    return out;
}

Evidence evidence_of(const Dossier& dossier, const Visit& visit, const findings::Reference& reference,
                     const Assumptions& assumptions, std::optional<Tag> tag) {
    return Collect(dossier, visit, reference, assumptions, tag).run();
}

}  // namespace lapwing::odds

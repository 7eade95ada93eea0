// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/odds/world.h"

#include <algorithm>
#include <cmath>
#include <numeric>

#include "core/base/clock.h"
#include "core/findings/misfits.h"
#include "core/physics/leakdown.h"

namespace lapwing::odds::trial {
namespace {

using findings::Path;

constexpr double bore_m = 0.078;
constexpr double card_ratio = 9.0;
constexpr double span_pa = 16e5;
constexpr double leak_span_pa = 7e5;
constexpr double set_pa = 5.5e5;
constexpr double gauge_class = 0.016;
constexpr double hose_m3 = 12e-6;
constexpr double oil_put_in_m3 = 5e-6;
constexpr double restrictor_m = 1.0e-3;

double logistic(double x) {
    return 1.0 / (1.0 + std::exp(-x));
}
double logit(double p) {
    return std::log(p / (1.0 - p));
}

class Drawing {
public:
    Drawing(const Assumptions& assumptions, const findings::Reference& reference, const World& world,
            const Tests& tests, std::uint64_t seed, int cylinders)
        : assumptions_(assumptions),
          reference_(reference),
          world_(world),
          tests_(tests),
          count_(cylinders),
          random_(seed) {
        for (const auto& [id, value] : world.change)
            assumptions_.set(id, value);
    }

    Drawn run() {
        card();
        shared();
        for (int number = 1; number < count_; ++number)
            joints_.push_back(joint(false));
        for (int number = 1; number <= count_; ++number)
            cylinder(number);
        for (int number = 1; number <= count_; ++number) {
            readings(number);
            if (tests_.staked) stake(number);
            after_repairs(number);
        }
        return std::move(out_);
    }

private:
    double n() { return normal_(random_); }
    double u() { return uniform_(random_); }
    double at(const std::string& id) const { return assumptions_.at(id); }

    template <class Tag>
    static Typed<Tag> typed(double si, Unit<Tag> unit, int decimals) {
        return Typed<Tag>::from(Quantity<Tag>::from_si(si), unit, decimals);
    }

    void card() {
        Engine& engine = out_.dossier.engine;
        engine.name = "Trial engine";
        for (int number = 1; number <= count_; ++number) {
            Cylinder one;
            one.number = number;
            one.column = number - 1;
            engine.cylinders.push_back(one);
        }
        engine.cooling = Cooling::liquid;
        engine.valves.adjuster = Adjuster::hydraulic;
        engine.decompressor = Decompressor::none;
        engine.bore = {typed(bore_m, units::mm, 1), Origin::manual, {}};
        engine.stroke = {typed(0.070, units::mm, 1), Origin::manual, {}};
        engine.rod = {typed(0.130, units::mm, 1), Origin::manual, {}};
        engine.compression_ratio = {typed(card_ratio, units::one, 1), Origin::manual, {}};
        engine.valves.intake_closing = {typed(60.0 * physics::degree, units::deg, 0), Origin::manual, {}};
        engine.valves.intake_closing_at = TimingAt::seat;
        companions_ = u() < 0.5;
        engine.firing_order = {1, 2};
        if (count_ == 6)
            engine.firing_order = {1, 5, 3, 6, 2, 4};
        else if (!companions_)
            engine.firing_intervals = {typed(180.0 * physics::degree, units::deg, 0),
                                       typed(540.0 * physics::degree, units::deg, 0)};
        Visit visit;
        visit.session.conditions.station_pressure = typed(101325.0, units::hpa, 2);
        visit.session.conditions.cranking_speed = typed(250.0 * physics::per_minute, units::rpm, 0);
        visit.session.conditions.heat = EngineHeat::cold;
        visit.session.conditions.throttle = Throttle::held_open;
        const auto gauge = [&](double full_scale) {
            Gauge dial;
            dial.full_scale = typed(full_scale, units::bar, 0);
            dial.scheme = AccuracyScheme::en_837_1;
            dial.accuracy = "1.6";
            return dial;
        };
        Tester compression;
        compression.id = TesterId::make(clock_);
        compression.name = "Compression gauge";
        compression.gauge = gauge(span_pa);
        compression.hose_volume = typed(hose_m3, units::cm3, 0);
        compression.check_valve_at = CheckValveAt::chamber_end;
        compression.check_valve_core = CheckValveCore::low_pressure;
        Tester leak;
        leak.id = TesterId::make(clock_);
        leak.kind = TesterKind::leak_down;
        leak.name = "Leak-down tester";
        leak.gauge = gauge(leak_span_pa);
        leak.restrictor = typed(restrictor_m, units::mm, 1);
        visit.session.compression_gauge = compression.id;
        visit.session.leak_down_tester = leak.id;
        out_.dossier.testers = {compression, leak};
        out_.dossier.visits = {visit};
    }

    /// Standard uncertainty of the class, divided as assets/reference has it (EN 837-1, JCGM 100 4.3.7).
    struct GaugeErrors {
        double offset, gain_at_span, local;
    };
    GaugeErrors gauge_errors(double span) const {
        const double whole = gauge_class * span / std::sqrt(3.0);
        const auto shares = reference_.error_shares();
        return {std::sqrt(shares.offset) * whole, std::sqrt(shares.gain) * whole,
                std::sqrt(1.0 - shares.offset - shares.gain) * whole};
    }
    /// What is local fills up what the gain does not yet take at this place of the scale.
    double local_error(const GaugeErrors& errors, double reading, double span) const {
        const double gain = errors.gain_at_span * reading / span;
        const double whole = gauge_class * span / std::sqrt(3.0);
        return std::sqrt(std::max(whole * whole - errors.offset * errors.offset - gain * gain, 0.0));
    }

    void shared() {
        const auto clamp = [](double z) { return std::clamp(z, -3.3, 3.3); };
        case_.crank = {bore_m, 0.070, 0.130};
        const double ratio = 1.0 + (card_ratio - 1.0) * std::exp(at("ratio-known-doubt") * clamp(n()));
        case_.compression_ratio = ratio * world_.ratio_is;
        case_.closing_after_bdc_rad =
            60.0 * physics::degree + 0.5 * reference_.assumed("closing-known-doubt") * clamp(n());
        case_.heat_w_m2k = at("heat") * std::exp(at("heat-doubt") * clamp(n()));
        case_.speed_rad_s = 250.0 * physics::per_minute * at("speed-dip") *
                            std::exp(std::hypot(at("speed-dip-doubt"), at("speed-known-doubt")) * clamp(n()));
        case_.tester.hose_m3 = hose_m3;
        level_ = std::exp(at("level-doubt") * n());
        const auto compression = gauge_errors(span_pa);
        offset_pa_ = compression.offset * n();
        gain_ = compression.gain_at_span / span_pa * n();
        const auto leak = gauge_errors(leak_span_pa);
        leak_offset_pa_ = leak.offset * n();
        droop_ = reference_.assumed("droop") / std::sqrt(3.0) * n();
        restrictor_m2_ = reference_.assumed("restrictor-cd") * physics::circle_area_m2(restrictor_m) *
                         std::exp(0.5 * std::log(1.0 + 2.0 * reference_.assumed("restrictor-doubt")) * n());
        listener_ = at("listener") * n();
    }

    double area(Path path, bool sound = false) {
        const std::string name(word(path));
        const bool fault = !sound && u() < at(name + "-fault");
        const std::string kind = fault ? "-leaking" : "-sound";
        return world_.leaks * at(name + kind) * bore_m / at("area-bore") *
               std::exp(at(name + kind + "-spread") * n());
    }
    double cranking_share() { return std::exp(at("static-to-cranking") * n()); }

    /// Between two neighbours: one hole for both.
    struct Joint {
        double area_m2 = 0.0, cranking_share = 1.0;
    };
    Joint joint(bool sound) {
        const double m2 = area(Path::next_cylinder, sound);
        return {m2, cranking_share()};
    }
    /// Places in `joints_` of those beside a cylinder.
    [[nodiscard]] std::vector<std::size_t> joints_of(int number) const {
        std::vector<std::size_t> out;
        if (number > 1) out.push_back(static_cast<std::size_t>(number) - 2);
        if (number < count_) out.push_back(static_cast<std::size_t>(number) - 1);
        return out;
    }
    static void put_joints(TrueCylinder& one, const std::vector<Joint>& joints) {
        double standing = 0.0, cranking = 0.0;
        for (const Joint& each : joints) {
            standing += each.area_m2;
            cranking += each.area_m2 * each.cranking_share;
        }
        one.area_m2.back() = standing;
        one.cranking_share.back() = cranking / standing;
    }
    /// In an in-line six 3 and 4 stand at top dead centre together, 1 and 6, 2 and 5 are no neighbours.
    [[nodiscard]] bool companions(int number, int neighbour) const {
        return count_ == 2 ? companions_ : count_ == 6 && number + neighbour == 7;
    }

    void cylinder(int number) {
        TrueCylinder one;
        for (const Path path : {Path::rings, Path::intake, Path::exhaust, Path::gasket, Path::coolant}) {
            one.paths.push_back(path);
            one.area_m2.push_back(area(path));
            one.cranking_share.push_back(cranking_share());
        }
        one.paths.push_back(Path::next_cylinder);
        one.area_m2.push_back(0.0);
        one.cranking_share.push_back(1.0);
        std::vector<Joint> beside;
        for (const std::size_t place : joints_of(number))
            beside.push_back(joints_[place]);
        put_joints(one, beside);
        one.level = std::exp(at("cylinder-doubt") * n());
        one.oil_kept = world_.oil_kept
                           ? world_.oil_kept->first + (world_.oil_kept->second - world_.oil_kept->first) * u()
                           : logistic(logit(at("oil-kept")) + at("oil-kept-spread") * n());
        one.oil_leaves_open = logistic(logit(at("oil-seals")) + at("oil-seals-spread") * n());
        out_.cylinders.push_back(std::move(one));
    }

    /// A gap passes k (p^2 - p0^2), so that its effective area grows with the pressure; the area drawn is
    /// that at the leak-down test's usual held pressure.
    double laminar(double gauge_pa) const {
        if (!world_.laminar_rings) return 1.0;
        const auto over_orifice = [](double gauge) {
            const double p = gauge + physics::sea_level_pa;
            return (p * p - physics::sea_level_pa * physics::sea_level_pa) /
                   (p * physics::psi(physics::sea_level_pa / p));
        };
        return over_orifice(gauge_pa) / over_orifice(4.5e5);
    }

    struct Puffs {
        double first = 0.0, final = 0.0;
    };
    Puffs crank(const TrueCylinder& one, bool wet) const {
        physics::CrankingCase now = case_;
        double leak = 0.0;
        for (std::size_t path = 0; path < one.paths.size(); ++path)
            leak += one.area_m2[path] * one.cranking_share[path] *
                    (path == 0 ? laminar(7e5) * (wet ? one.oil_leaves_open : 1.0) : 1.0);
        now.leak_m2 = leak;
        if (wet) now.oil_m3 = oil_put_in_m3 * one.oil_kept;
        const auto reading = physics::crank(now);
        if (!reading) return {};
        const double level = level_ * one.level;
        return {reading->puffs_gauge_pa.front() * level, reading->last_gauge_pa * level};
    }

    double shown(double true_pa, double scatter) {
        const double wanted = true_pa * (1.0 + gain_) * world_.gauge_shows + offset_pa_;
        const double local = local_error(gauge_errors(span_pa), std::max(true_pa, 0.0), span_pa);
        return std::max(wanted + local * n() + scatter * true_pa * n(), 0.0);
    }

    Reading& add(TestKind test, int number) {
        Reading reading;
        reading.id = ReadingId::make(clock_);
        reading.test = test;
        reading.cylinder = number;
        clock_.move_by(std::chrono::seconds(60));
        reading.taken_at = clock_.now();
        reading.oiled = Oiled::no;
        reading.tag = tag_;
        auto& readings = out_.dossier.visits.front().readings;
        readings.push_back(reading);
        return readings.back();
    }

    void readings(int number) {
        TrueCylinder& one = out_.cylinders[static_cast<std::size_t>(number - 1)];
        if (tests_.dry) {
            const Puffs puffs = crank(one, false);
            Reading& reading = add(TestKind::dry, number);
            reading.final = typed(shown(puffs.final, at("reading-scatter")), units::bar, 2);
            if (tests_.first_puff)
                reading.first = typed(shown(puffs.first, at("first-scatter")), units::bar, 2);
        }
        if (tests_.leak_down) leak_down(number, one);
        if (tests_.exits && world_.listened) exits(number, one);
        find_tdc_again(number, one);
        if (tests_.wet) {
            Reading& reading = add(TestKind::wet, number);
            reading.final = typed(shown(crank(one, true).final, at("reading-scatter")), units::bar, 2);
            reading.oil_volume = typed(oil_put_in_m3, units::ml, 0);
            reading.oiled = Oiled::fresh;
        }
    }

    double true_held(double leak_m2) const {
        double low = 0.0;
        double high = set_pa;
        for (int i = 0; i < 60; ++i) {
            const double held = 0.5 * (low + high);
            const double p0 = physics::sea_level_pa;
            const double in = physics::nozzle_flow(restrictor_m2_, p0 + set_pa, 293.15, p0 + held);
            const double out = physics::nozzle_flow(leak_m2, p0 + held, 293.15, p0);
            (in > out ? low : high) = held;
        }
        return 0.5 * (low + high);
    }

    void leak_down(int number, TrueCylinder& one) {
        // Rings settle elsewhere each time.
        const double leak = one.total_m2() * std::exp(at("leak-repeat") * n());
        const double held = true_held(leak);
        const double lost = 1.0 - held / set_pa;
        const double local =
            local_error(gauge_errors(leak_span_pa), held, leak_span_pa) * std::hypot(1.0, held / set_pa);
        const double read = held * (1.0 + droop_ * lost) + leak_offset_pa_ * lost + local * n();
        Reading& reading = add(TestKind::leak_down, number);
        reading.set = typed(set_pa, units::bar, 2);
        reading.held = typed(std::clamp(read, 0.0, set_pa), units::bar, 2);
        one.leakage = 1.0 - reading.held->si() / set_pa;
    }

    /// Whoever is asked whether a very low held pressure was read at the right TDC turns the crank there and
    /// reads once more: it was right all the time.
    void find_tdc_again(int number, TrueCylinder& one) {
        const Visit& visit = out_.dossier.visits.front();
        findings::FindingsOptions options;
        options.tag = tag_;
        const findings::Case at = findings::case_of(out_.dossier, visit, reference_, options);
        if (findings::tdc_in_question(at, findings::tested(at, number))) leak_down(number, one);
    }

    void exits(int number, const TrueCylinder& one) {
        const double leak = one.total_m2();
        const double held = true_held(leak);
        constexpr double litres_a_minute = 60e3;
        const double flow_m2 =
            litres_a_minute * physics::volume_flow_anr(physics::nozzle_flow(1.0, physics::sea_level_pa + held,
                                                                            293.15, physics::sea_level_pa));
        const double loudest = *std::ranges::max_element(one.area_m2);
        const auto note = [&](Exit exit, double area, ListenedBy by, const char* method,
                              std::optional<int> neighbour = {}) {
            double flow = area * flow_m2;
            if (by == ListenedBy::ear) {
                const double here = area + at("cross-talk") * leak;
                flow = here * flow_m2 * std::exp(listener_);
                const double lead = loudest / here / at("masking-from");
                if (lead > 1.0) flow *= std::pow(lead, -at("masking"));
            }
            const double noise = logit(std::clamp(u(), 1e-12, 1.0 - 1e-12)) * at("hearing");
            int level = 0;
            for (const char* words : {"-faint", "-clear", "-strong"})
                if (std::log(std::max(flow, 1e-12)) + noise >
                    std::log(at(method + std::string(words)) * litres_a_minute))
                    ++level;
            if (u() < at(by == ListenedBy::ear ? "slip" : "slip-seen")) level = static_cast<int>(u() * 4.0);
            if (u() < world_.notes_a_step_off) level = std::clamp(level + (u() < 0.5 ? -1 : 1), 0, 3);
            ExitNote heard;
            heard.id = ExitNoteId::make(clock_);
            heard.cylinder = number;
            heard.exit = exit;
            heard.loudness = static_cast<Loudness>(level);
            heard.by = by;
            heard.neighbour = neighbour;
            heard.tag = tag_;
            heard.at = clock_.now();
            out_.dossier.visits.front().exits.push_back(heard);
        };
        const auto of = [&](Path path) {
            return one
                .area_m2[static_cast<std::size_t>(std::ranges::find(one.paths, path) - one.paths.begin())];
        };
        note(Exit::breather, of(Path::rings), ListenedBy::ear, "ear");
        note(Exit::intake, of(Path::intake), ListenedBy::ear, "ear");
        note(Exit::exhaust, of(Path::exhaust), ListenedBy::ear, "ear");
        note(Exit::joint, of(Path::gasket), ListenedBy::soapy_water, "soapy-water");
        note(Exit::coolant, of(Path::coolant), ListenedBy::bubbles, "bubbles");
        for (const std::size_t place : joints_of(number)) {
            const int neighbour = static_cast<int>(place) + (static_cast<int>(place) + 1 == number ? 2 : 1);
            const double through_valves = companions(number, neighbour)
                                              ? at("companion-talk") * (of(Path::intake) + of(Path::exhaust))
                                              : 0.0;
            note(Exit::next_plug_hole, joints_[place].area_m2 + through_valves, ListenedBy::ear, "ear",
                 neighbour);
        }
    }

    /// Valves that were struck leak as any valve may. Air goes on again, over rings that are as they were.
    void stake(int number) {
        TrueCylinder& one = out_.cylinders[static_cast<std::size_t>(number - 1)];
        for (const Path valve : {Path::intake, Path::exhaust}) {
            const auto place =
                static_cast<std::size_t>(std::ranges::find(one.paths, valve) - one.paths.begin());
            one.area_m2[place] = area(valve);
            one.cranking_share[place] = cranking_share();
        }
        tag_ = Tag::after_staking;
        leak_down(number, one);
        if (tests_.exits && u() < 0.5) exits(number, one);
        find_tdc_again(number, one);
        tag_ = Tag::as_found;
    }

    void after_repairs(int number) {
        const TrueCylinder& one = out_.cylinders[static_cast<std::size_t>(number - 1)];
        std::vector<double> shown_pa;
        for (std::size_t path = 0; path < one.paths.size(); ++path) {
            if (one.paths[path] == Path::coolant || one.paths[path] == Path::next_cylinder) continue;
            TrueCylinder repaired = one;
            for (std::size_t other = 0; other < one.paths.size(); ++other) {
                const bool head =
                    one.paths[path] == Path::gasket &&
                    (one.paths[other] == Path::coolant || one.paths[other] == Path::next_cylinder);
                if (other != path && !head) continue;
                if (one.paths[other] == Path::next_cylinder) {
                    std::vector<Joint> beside(joints_of(number).size());
                    for (Joint& each : beside)
                        each = joint(true);
                    put_joints(repaired, beside);
                    continue;
                }
                repaired.area_m2[other] = area(one.paths[other], true);
                repaired.cranking_share[other] = cranking_share();
            }
            const double another_day = crank(repaired, false).final * std::exp(at("day-scatter") * n());
            shown_pa.push_back(shown(another_day, at("reading-scatter")));
        }
        out_.after_repair_pa.push_back(std::move(shown_pa));
    }

    Assumptions assumptions_;
    const findings::Reference& reference_;
    const World& world_;
    const Tests& tests_;
    int count_;
    std::vector<Joint> joints_;
    std::mt19937_64 random_;
    std::normal_distribution<double> normal_;
    std::uniform_real_distribution<double> uniform_;
    FixedClock clock_{Timestamp{1'773'480'600'000, 60}};
    Tag tag_ = Tag::as_found;
    bool companions_ = false;
    physics::CrankingCase case_;
    double level_ = 1.0, offset_pa_ = 0.0, gain_ = 0.0, leak_offset_pa_ = 0.0, droop_ = 0.0,
           restrictor_m2_ = 0.0, listener_ = 0.0;
    Drawn out_;
};

}  // namespace

double TrueCylinder::total_m2() const {
    return std::accumulate(area_m2.begin(), area_m2.end(), 0.0);
}

std::size_t TrueCylinder::largest() const {
    return static_cast<std::size_t>(std::ranges::max_element(area_m2) - area_m2.begin());
}

Drawn draw(const Assumptions& assumptions, const findings::Reference& reference, const World& world,
           const Tests& tests, std::uint64_t seed, int cylinders) {
    return Drawing(assumptions, reference, world, tests, seed, cylinders).run();
}

RuleOutcome rules_of_thumb(const Drawn& drawn, std::size_t cylinder) {
    const TrueCylinder& one = drawn.cylinders[cylinder];
    const Visit& visit = drawn.dossier.visits.front();
    const int number = static_cast<int>(cylinder) + 1;
    RuleOutcome out;
    const std::size_t seals_well = one.paths.size();
    out.loudest = seals_well;
    out.loudest_seen = out.wet_seen = "not made";
    Loudness most = Loudness::nothing;
    const std::map<Exit, Path> means{
        {Exit::breather, Path::rings},  {Exit::intake, Path::intake},
        {Exit::exhaust, Path::exhaust}, {Exit::joint, Path::gasket},
        {Exit::coolant, Path::coolant}, {Exit::next_plug_hole, Path::next_cylinder}};
    for (const ExitNote& note : visit.exits) {
        if (note.cylinder != number) continue;
        if (out.loudest_seen == "not made") out.loudest_seen = "nothing";
        if (note.loudness <= most) continue;
        most = note.loudness;
        const Path path = means.at(note.exit);
        out.loudest = static_cast<std::size_t>(std::ranges::find(one.paths, path) - one.paths.begin());
        out.loudest_seen = std::string(word(path)) + " " + std::string(word(note.loudness));
    }
    constexpr double tight = 0.10;
    const bool seals = one.leakage < tight && latest(visit.readings, TestKind::leak_down, number);
    if (seals) {
        out.loudest = seals_well;
        out.loudest_seen = "tight";
    }
    const Reading* dry = latest(visit.readings, TestKind::dry, number);
    const Reading* wet = latest(visit.readings, TestKind::wet, number);
    if (dry && wet && dry->final->si() > 0.0) {
        constexpr double rise = 0.10;  // Ford Probe 1997; GM 2006
        out.wet_seen = seals                                                 ? "tight"
                       : wet->final->si() >= (1.0 + rise) * dry->final->si() ? "rises"
                                                                             : "does not rise";
    }
    return out;
}

}  // namespace lapwing::odds::trial

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "assets/demo/make/workshop.h"

#include <algorithm>
#include <cmath>

#include "assets/demo/make/typed.h"
#include "core/physics/atmosphere.h"

namespace lapwing::demo {
namespace {

// The stories' own inventions: how leaks behave that the models don't describe.
constexpr double rings_moving = 1.35;  ///< leak while cranking over the leak at rest
constexpr double others_moving = 1.6;
constexpr double oil_kept = 0.15;     ///< share of the oil that stays in the chamber
constexpr double rings_oiled = 0.45;  ///< what oil leaves of the rings' leak
constexpr double dip_at_top = 0.85;   ///< speed near top dead centre over the speed noted
constexpr double speed_scatter = 0.02;
constexpr double reading_scatter = 0.005;
constexpr int pulls = 8;
constexpr uncertainty::ErrorShares gauge_errors{.offset = 0.4, .gain = 0.2};
/// Flow in L/min ANR from which an ear at a hose hears something, hears it clearly, hears it strongly.
constexpr double faint_from = 1.0;
constexpr double clear_from = 18.0;
constexpr double strong_from = 30.0;

double area_at_rest(const std::vector<Way>& ways) {
    double out = 0.0;
    for (const Way& way : ways)
        out += way.area.si();
    return out;
}

double area_while_cranking(const std::vector<Way>& ways, bool oiled) {
    double out = 0.0;
    for (const Way& way : ways) {
        if (way.exit == Exit::breather)
            out += way.area.si() * rings_moving * (oiled ? rings_oiled : 1.0);
        else
            out += way.area.si() * others_moving;
    }
    return out;
}

uncertainty::Gauge instrument(const Gauge& gauge) {
    uncertainty::Gauge out;
    out.span_pa = gauge.full_scale.si();
    out.accuracy = uncertainty::en837_class(digits_value(gauge.accuracy)).value();
    out.readable_step_pa = gauge.division->si() / 2.0;
    out.shares = gauge_errors;
    return out;
}

Loudness loudness_of(double litres_per_minute) {
    if (litres_per_minute >= strong_from) return Loudness::strong;
    if (litres_per_minute >= clear_from) return Loudness::clear;
    return litres_per_minute >= faint_from ? Loudness::faint : Loudness::nothing;
}

ListenedBy way_of_listening(Exit exit) {
    switch (exit) {
        case Exit::joint:
            return ListenedBy::soapy_water;
        case Exit::coolant:
            return ListenedBy::bubbles;
        case Exit::breather:
            return ListenedBy::hand;
        default:
            return ListenedBy::hose;
    }
}

}  // namespace

Workshop::Workshop(std::uint64_t seed, const Engine& engine)
    : engine_(engine),
      id_draws_(seed, 0),
      draws_(seed, 1),
      gauge_needle_{draws_.standard_normal(), draws_.standard_normal()},
      held_needle_{draws_.standard_normal(), draws_.standard_normal()} {}

Uuid Workshop::id() {
    const auto drawn = [&](unsigned bits) {
        return static_cast<std::uint64_t>(std::ldexp(id_draws_.uniform(), static_cast<int>(bits)));
    };
    const auto ms = static_cast<std::uint64_t>(now().unix_ms);
    return Uuid::parse(fmt::format("{:08x}-{:04x}-7{:03x}-{:04x}-{:06x}{:06x}", ms >> 16U, ms & 0xffffU,
                                   ++ids_made_, 0x8000U | drawn(14), drawn(24), drawn(24)))
        .value();
}

Tester Workshop::compression_gauge(std::string name, Adapter adapter) {
    Tester out;
    out.id = TesterId{id()};
    out.made_at = now();
    out.kind = TesterKind::compression_gauge;
    out.name = std::move(name);
    out.gauge.full_scale = pressure("16bar");
    out.gauge.scheme = AccuracyScheme::en_837_1;
    out.gauge.accuracy = "1.6";
    out.gauge.division = pressure("0.2bar");
    out.gauge.zero_at_rest = pressure("0.0bar");
    out.gauge.sweep = angle("270deg");
    out.hose_volume = volume("12cm3");
    out.check_valve_at = CheckValveAt::chamber_end;
    out.check_valve_core = CheckValveCore::low_pressure;
    out.adapters.push_back(std::move(adapter));
    out.checks.push_back(
        {TesterCheckKind::zero_at_rest, now(), CheckResult::passed, {}, pressure("0.0bar"), {}, ""});
    out.checks.push_back({TesterCheckKind::holds_after_cranking,
                          now(),
                          CheckResult::passed,
                          {},
                          {},
                          {},
                          "Needle stood still for a minute."});
    return gauge_ = out;
}

Tester Workshop::leak_down_tester(std::string name) {
    Tester out;
    out.id = TesterId{id()};
    out.made_at = now();
    out.kind = TesterKind::leak_down;
    out.name = std::move(name);
    out.home_made = true;
    out.gauge.full_scale = pressure("10bar");
    out.gauge.scheme = AccuracyScheme::en_837_1;
    out.gauge.accuracy = "1.6";
    out.gauge.division = pressure("0.1bar");
    out.gauge.zero_at_rest = pressure("0.00bar");
    out.gauge.sweep = angle("270deg");
    out.supply_gauge = out.gauge;
    out.set_pressure = pressure("5.5bar");
    out.restrictor = length("1.0mm");
    out.restrictor_length = length("3mm");
    out.checks.push_back({TesterCheckKind::outlet_blocked,
                          now(),
                          CheckResult::passed,
                          pressure("5.50bar"),
                          pressure("5.50bar"),
                          {},
                          ""});
    return leak_down_ = out;
}

Visit Workshop::open(const Tester& gauge, const Tester& leak_down, std::string title) {
    Visit out;
    out.session.id = SessionId{id()};
    out.session.engine = engine_.id;
    out.session.opened_at = now();
    out.session.title = std::move(title);
    out.session.compression_gauge = gauge.id;
    out.session.leak_down_tester = leak_down.id;
    return out;
}

Day Workshop::day_of(const Visit& visit) const {
    const Conditions& conditions = visit.session.conditions;
    Day out;
    out.ambient_pa = physics::standard_pressure_pa(conditions.altitude->si()).value();
    out.air_k = conditions.air->si();
    out.wall_k = conditions.heat == EngineHeat::warm ? units::deg_c.quantity(80.0).si() : out.air_k;
    return out;
}

double Workshop::read(const Gauge& gauge, const Needle& needle, double true_pa) {
    const auto instrument_here = instrument(gauge);
    const auto errors = uncertainty::errors_at(instrument_here, true_pa);
    const double shown = true_pa + needle.offset * errors.offset_pa + needle.gain * errors.gain_pa +
                         draws_.normal(0.0, errors.local_pa);
    const double step = instrument_here.readable_step_pa;
    return std::max(0.0, std::round(shown / step) * step);
}

Reading Workshop::cranked(const Visit& visit, const std::vector<Way>& ways, const TypedVolume* oil) {
    const Day day = day_of(visit);
    physics::CrankingCase of;
    of.crank = {engine_.bore->value.si(), engine_.stroke->value.si(), engine_.rod->value.si()};
    of.compression_ratio = engine_.compression_ratio->value.si();
    of.closing_after_bdc_rad = engine_.valves.intake_closing->value.si();
    of.opening_before_bdc_rad = engine_.valves.exhaust_opening->value.si();
    of.speed_rad_s =
        dip_at_top * visit.session.conditions.cranking_speed->si() * draws_.normal(1.0, speed_scatter);
    of.ambient_pa = day.ambient_pa;
    of.air_k = day.air_k;
    of.wall_k = day.wall_k;
    of.leak_m2 = area_while_cranking(ways, oil != nullptr);
    if (oil) of.oil_m3 = oil_kept * oil->si();
    of.tester.hose_m3 = gauge_.hose_volume->si();
    of.tester.fitting_m3 = gauge_.adapters.front().volume->si();
    of.strokes = pulls;
    const auto reading = physics::crank(of).value();

    Reading out;
    out.id = ReadingId{id()};
    out.session = visit.session.id;
    out.test = oil ? TestKind::wet : TestKind::dry;
    out.taken_at = now();
    out.tester = gauge_.id;
    out.adapter = gauge_.adapters.front().name;
    out.pulls = pulls;
    out.cranked_by = visit.session.conditions.cranked_by;
    const double scatter = draws_.normal(1.0, reading_scatter);
    const auto written = [&](double true_pa) {
        const double shown = read(gauge_.gauge, gauge_needle_, true_pa * scatter);
        return TypedPressure::from(Pressure::from_si(shown), units::bar, 1);
    };
    out.first = written(reading.puffs_gauge_pa.front());
    out.final = written(reading.last_gauge_pa);
    return out;
}

void Workshop::dry_test(Visit& visit, const Truth& truth, Tag tag) {
    std::vector<int> order = numbers_in_order(engine_);
    order.push_back(order.front());
    for (const int number : order) {
        Reading reading = cranked(visit, truth.at(number), nullptr);
        reading.cylinder = number;
        reading.tag = tag;
        reading.oiled = Oiled::no;
        if (!visit.readings.empty() && number == order.front())
            reading.note = "Again at the end, against a tiring battery.";
        visit.readings.push_back(std::move(reading));
        wait_minutes(4);
    }
}

double Workshop::held_pa(const Visit& visit, double area_m2) const {
    physics::TesterPneumatics tester;
    tester.set_gauge_pa = leak_down_.set_pressure->si();
    tester.restrictor_diameter_m = leak_down_.restrictor->si();
    tester.ambient_pa = day_of(visit).ambient_pa;
    double low = 0.0;
    double high = tester.set_gauge_pa;
    // The more is held, the smaller the leak.
    for (int halving = 0; halving < 60; ++halving) {
        const double middle = (low + high) / 2.0;
        const auto leak = physics::leakdown(tester, middle).value();
        (leak.leak_area_m2 > area_m2 ? low : high) = middle;
    }
    return (low + high) / 2.0;
}

void Workshop::leak_down_test(Visit& visit, const Truth& truth, Tag tag) {
    for (const int number : numbers_in_order(engine_)) {
        const auto& ways = truth.at(number);
        const double held = held_pa(visit, area_at_rest(ways));
        Reading reading;
        reading.id = ReadingId{id()};
        reading.session = visit.session.id;
        reading.test = TestKind::leak_down;
        reading.cylinder = number;
        reading.taken_at = now();
        reading.tag = tag;
        reading.oiled = Oiled::no;
        reading.tester = leak_down_.id;
        reading.set = pressure("5.50bar");
        const double shown = std::min(read(leak_down_.gauge, held_needle_, held), reading.set->si());
        reading.held = TypedPressure::from(Pressure::from_si(shown), units::bar, 2);
        wait_minutes(2);
        listen(visit, reading, ways, held);
        visit.readings.push_back(std::move(reading));
        wait_minutes(6);
    }
}

void Workshop::listen(Visit& visit, const Reading& reading, const std::vector<Way>& ways, double held) {
    const Day day = day_of(visit);
    for (const Way& way : ways) {
        const double flow = physics::nozzle_flow(way.area.si(), day.ambient_pa + held,
                                                 physics::shop_temperature_k, day.ambient_pa);
        const double litres = units::l_min.number(Flow::from_si(physics::volume_flow_anr(flow)));
        ExitNote note;
        note.id = ExitNoteId{id()};
        note.session = visit.session.id;
        note.cylinder = reading.cylinder;
        note.exit = way.exit;
        note.neighbour = way.neighbour;
        note.loudness = loudness_of(litres);
        note.by = way_of_listening(way.exit);
        note.tag = reading.tag;
        note.reading = reading.id;
        note.at = now();
        visit.exits.push_back(std::move(note));
    }
}

void Workshop::wet_test(Visit& visit, const Truth& truth, const std::vector<int>& cylinders,
                        const TypedVolume& oil) {
    for (const int number : cylinders) {
        Reading reading = cranked(visit, truth.at(number), &oil);
        reading.cylinder = number;
        reading.oiled = Oiled::fresh;
        reading.oil_volume = oil;
        reading.oil_name = "engine oil 10W-40";
        visit.readings.push_back(std::move(reading));
        wait_minutes(5);
    }
}

Clearance Workshop::clearance(const Visit& visit, int cylinder, ValveSide side, int valve,
                              const ClearanceRange& wanted) {
    Clearance out;
    out.id = ClearanceId{id()};
    out.session = visit.session.id;
    out.cylinder = cylinder;
    out.side = side;
    out.valve = valve;
    const double blade = 1e-5;  // feeler blades step by 0.01 mm
    const double low = wanted.low.si();
    const double drawn = low + draws_.uniform() * (wanted.high.si() - low);
    out.found = TypedLength::from(Length::from_si(std::round(drawn / blade) * blade), units::mm, 2);
    out.at = now();
    return out;
}

void Workshop::measure_clearances(Visit& visit) {
    const ValveGear& valves = engine_.valves;
    for (const int number : numbers_in_order(engine_)) {
        for (int valve = 1; valve <= valves.intake_valves; ++valve)
            visit.clearances.push_back(
                clearance(visit, number, ValveSide::intake, valve, valves.intake_clearance->value));
        for (int valve = 1; valve <= valves.exhaust_valves; ++valve)
            visit.clearances.push_back(
                clearance(visit, number, ValveSide::exhaust, valve, valves.exhaust_clearance->value));
        wait_minutes(5);
    }
}

void Workshop::mark_prepare(Visit& visit, std::vector<PrepareMark> exceptions) {
    for (std::size_t i = 0; i < Words<PrepareStep>::list.size(); ++i) {
        const auto step = static_cast<PrepareStep>(i);
        const auto other = std::ranges::find(exceptions, step, &PrepareMark::step);
        visit.session.prepare.push_back(other == exceptions.end() ? PrepareMark{step, StepState::done, ""}
                                                                  : *other);
    }
}

Note Workshop::note(const Visit& visit, NoteKind kind, std::string author, std::string text) {
    Note out;
    out.id = NoteId{id()};
    out.session = visit.session.id;
    out.kind = kind;
    out.author = std::move(author);
    out.text = std::move(text);
    out.at = now();
    return out;
}

PlanLine Workshop::plan_line(const Visit& visit, PlanOption option, int cylinder, std::string work) {
    PlanLine out;
    out.id = PlanLineId{id()};
    out.session = visit.session.id;
    out.option = option;
    out.cylinder = cylinder;
    out.work = std::move(work);
    out.order = static_cast<int>(visit.plan.size()) + 1;
    return out;
}

}  // namespace lapwing::demo

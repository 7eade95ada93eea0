// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <algorithm>
#include <array>
#include <cmath>

#include "core/calculators/pieces.h"
#include "core/findings/instruments.h"
#include "core/physics/atmosphere.h"
#include "core/physics/holding_torque.h"
#include "core/uncertainty/coverage.h"
#include "core/uncertainty/first_order.h"

namespace lapwing::calculators {
namespace {

using findings::Derived;
using findings::Dimension;

findings::Message physics_source(const char* name) {
    return {"source.physics", {std::string(name)}};
}
findings::Message published(const char* name) {
    return {"source.published", {std::string(name)}};
}

template <class Tag>
void add_units(Answer& answer, std::string_view as, const std::optional<Typed<Tag>>& value) {
    if (!value) return;
    for (const UnitEntry& entry : Unit<Tag>::all()) {
        const auto to = *Unit<Tag>::find(entry.symbol);
        if (to == value->unit()) continue;
        // Six significant digits: more than any gauge shows, and no rounding that a person could notice.
        const double number = to.number(value->value());
        const double size = std::abs(number);
        const int whole = size >= 1.0 ? static_cast<int>(std::floor(std::log10(size))) + 1 : 1;
        const int decimals = std::clamp(6 - whole, 0, 9);
        answer.lines.push_back(
            {name(as), Written{digits_from(number, decimals), std::string(entry.display)}});
    }
}

}  // namespace

Result<Answer> altitude(const Worksheet& sheet, const findings::Reference& reference) {
    const Conditions& shop = sheet.session.conditions;
    if (!shop.station_pressure && !shop.altitude) return needs("altitude, or the air pressure in the shop");
    const bool barometer = shop.station_pressure.has_value();
    const Result<double> pressure = barometer ? Result<double>(shop.station_pressure->si())
                                              : physics::standard_pressure_pa(shop.altitude->si());
    if (!pressure) return tl::unexpected(pressure.error());
    const auto height =
        barometer ? physics::standard_altitude_m(*pressure) : Result<double>(shop.altitude->si());
    if (!height) return tl::unexpected(height.error());

    const double weather = reference.assumed("weather-doubt");
    const double doubt = barometer ? reference.assumed("barometer-doubt") : weather;
    Derived air{figure(Dimension::station_pressure, *pressure, doubt * *pressure), {}};
    air.from.title = findings::Word{"from:standard_atmosphere"};
    air.from.source = published("ISO 2533:1975");
    Derived up{figure(Dimension::altitude, *height), air.from};
    Answer answer;
    if (sheet.limit) {
        const auto here = physics::limit_at_site_gauge_pa(sheet.limit->si(), *pressure);
        if (!here) return tl::unexpected(here.error());
        Derived limit{figure(Dimension::gauge_pressure, *here, doubt * *here), {}};
        limit.from.title = findings::Word{"from:limit"};
        limit.from.symbols = "limit × p / p₀";
        limit.from.inputs = {
            input("limit", "", findings::figure_of(*sheet.limit)), input("station_pressure", "p", air.figure),
            input("sea_level", "p₀", figure(Dimension::station_pressure, physics::sea_level_pa))};
        limit.from.doubts = {{findings::Word{"doubt:air_pressure"}, 1.0}};
        limit.from.source = physics_source("a reading grows with the pressure of the air drawn in");
        answer.lines.push_back({name("limit_here"), std::move(limit)});
    }
    if (barometer) {
        // The weather stands between a barometer and an altitude.
        const double both = std::hypot(doubt, weather) * *pressure;
        const auto lower = physics::standard_altitude_m(*pressure + both);
        const auto higher = physics::standard_altitude_m(*pressure - both);
        if (lower && higher) up.figure.u95 = 0.5 * (*higher - *lower);
        up.from.symbols = "h = T₀/L (1 − (p/p₀)^(R L/g))";
        up.from.inputs = {input("station_pressure", "p", air.figure)};
        up.from.doubts = findings::doubt_shares({{"weather", weather}, {"air_pressure", doubt}});
        answer.lines.push_back({name("altitude"), std::move(up)});
    } else {
        air.from.symbols = "p = p₀ (1 − L h/T₀)^(g/(R L))";
        air.from.inputs = {input("altitude", "h", findings::figure_of(*shop.altitude, Dimension::altitude))};
        air.from.doubts = {{findings::Word{"doubt:weather"}, 1.0}};
        answer.lines.push_back({name("station_pressure"), std::move(air)});
    }
    return answer;
}

namespace {

/// What was typed is known to half its last digit, whatever is meant by it.
template <class Tag>
double u_typed(const Typed<Tag>& value) {
    return 0.5 * value.step_si() / std::sqrt(3.0);
}

/// Pressure in the cylinder, angle, bore, stroke, rod.
using Holding = uncertainty::Values<5>;

double torque_nm(const Holding& of) {
    return physics::holding_torque_nm({of[2], of[3], of[4]}, of[0], of[1]);
}

}  // namespace

Result<Answer> torque(const Worksheet& sheet, const findings::Reference& reference) {
    const Engine& engine = sheet.engine;
    if (!engine.bore) return needs("bore");
    if (!engine.stroke) return needs("stroke");
    if (!engine.rod) return needs("rod");
    if (!sheet.held) return needs("pressure in the cylinder");
    if (!sheet.off_tdc) return needs("angle from top dead centre");
    const physics::SliderCrank crank{engine.bore->value.si(), engine.stroke->value.si(),
                                     engine.rod->value.si()};
    if (auto possible = physics::check(crank); !possible) return tl::unexpected(possible.error());
    if (auto possible = physics::check_holding(sheet.held->si(), sheet.off_tdc->si()); !possible)
        return tl::unexpected(possible.error());
    const Gauge& dial = sheet.tester.gauge;
    const auto instrument = findings::instrument_of(dial.full_scale.si() > 0.0 ? &dial : nullptr,
                                                    sheet.held->si(), sheet.held->step_si(), reference);
    const Holding at{sheet.held->si(), sheet.off_tdc->si(), crank.bore_m, crank.stroke_m, crank.rod_m};
    const Holding u{uncertainty::u_reading_pa(instrument.gauge, at[0]), u_typed(*sheet.off_tdc),
                    u_typed(engine.bore->value), u_typed(engine.stroke->value), u_typed(engine.rod->value)};
    std::array<double, 5> parts{};
    for (std::size_t i = 0; i < at.size(); ++i) {
        Holding more = at, less = at;
        more[i] += u[i];
        less[i] -= u[i];
        parts[i] = 0.5 * (torque_nm(more) - torque_nm(less));
    }
    const double by_engine = std::hypot(parts[2], parts[3], parts[4]);
    const double u_torque = std::hypot(parts[0], parts[1], by_engine);
    const double holding = torque_nm(at);
    Derived turn{figure(Dimension::torque, holding, uncertainty::expanded(u_torque)), {}};
    turn.from.title = findings::Word{"from:torque"};
    turn.from.symbols = "T = (p₂ − p₀) dV/dθ";
    turn.from.inputs = {
        input("in_cylinder", "p₂ − p₀", findings::figure_of(*sheet.held, uncertainty::expanded(u[0]))),
        input("off_tdc", "θ", figure(Dimension::angle, sheet.off_tdc->si(), uncertainty::expanded(u[1]))),
        input("bore", "B", findings::figure_of(engine.bore->value)),
        input("stroke", "S", findings::figure_of(engine.stroke->value)),
        input("rod", "l", findings::figure_of(engine.rod->value)),
    };
    turn.from.doubts =
        findings::doubt_shares({{"gauge", parts[0]}, {"angle", parts[1]}, {"engine", by_engine}});
    turn.from.source = physics_source("virtual work on the slider crank");
    turn.from.notes = {{"note.friction", {}}, {"note.digits", {}}};
    turn.from.notes.insert(turn.from.notes.end(), instrument.notes.begin(), instrument.notes.end());
    Answer answer;
    if (sheet.bar) {
        const auto pull = physics::force_at_bar_n(holding, sheet.bar->si());
        if (!pull) return tl::unexpected(pull.error());
        const double by_torque = u_torque / sheet.bar->si();
        const double by_bar = *pull / sheet.bar->si() * u_typed(*sheet.bar);
        Derived force{figure(Dimension::force, *pull, uncertainty::expanded(std::hypot(by_torque, by_bar))),
                      {}};
        force.from.title = findings::Word{"from:force"};
        force.from.symbols = "F = T / b";
        force.from.inputs = {input("torque", "T", turn.figure),
                             input("bar", "b", findings::figure_of(*sheet.bar))};
        force.from.doubts = findings::doubt_shares({{"torque", by_torque}, {"bar", by_bar}});
        force.from.source = turn.from.source;
        force.from.notes = {{"note.friction", {}}};
        answer.lines = {{name("torque"), std::move(turn)}, {name("force"), std::move(force)}};
    } else {
        answer.lines = {{name("torque"), std::move(turn)}};
    }
    return answer;
}

Result<Answer> units_of(const Worksheet& sheet) {
    Answer answer;
    add_units(answer, "pressure", sheet.pressure);
    add_units(answer, "length", sheet.length);
    add_units(answer, "volume", sheet.volume);
    add_units(answer, "temperature", sheet.temperature);
    add_units(answer, "torque", sheet.torque);
    add_units(answer, "flow", sheet.flow);
    if (answer.lines.empty()) return needs("a value to convert");
    return answer;
}

}  // namespace lapwing::calculators

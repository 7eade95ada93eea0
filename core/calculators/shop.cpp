// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <algorithm>
#include <cmath>

#include "core/calculators/pieces.h"
#include "core/physics/atmosphere.h"
#include "core/physics/holding_torque.h"

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

Result<Answer> altitude(const Worksheet& sheet) {
    const Conditions& shop = sheet.session.conditions;
    if (!shop.station_pressure && !shop.altitude) return needs("altitude, or the air pressure in the shop");
    Result<double> pressure = shop.station_pressure ? Result<double>(shop.station_pressure->si())
                                                    : physics::standard_pressure_pa(shop.altitude->si());
    if (!pressure) return tl::unexpected(pressure.error());
    const auto height =
        shop.station_pressure ? physics::standard_altitude_m(*pressure) : Result<double>(shop.altitude->si());
    if (!height) return tl::unexpected(height.error());

    Derived air{figure(Dimension::station_pressure, *pressure), {}};
    air.from.title = findings::Word{"from:standard_atmosphere"};
    air.from.source = published("ISO 2533:1975");
    Derived up{figure(Dimension::altitude, *height), air.from};
    if (shop.station_pressure)
        up.from.inputs = {input("station_pressure", "p", air.figure)};
    else
        air.from.inputs = {input("altitude", "h", findings::figure_of(*shop.altitude, Dimension::altitude))};
    Answer answer;
    if (sheet.limit) {
        const auto here = physics::limit_at_site_gauge_pa(sheet.limit->si(), *pressure);
        if (!here) return tl::unexpected(here.error());
        Derived limit{figure(Dimension::gauge_pressure, *here), {}};
        limit.from.title = findings::Word{"from:limit"};
        limit.from.symbols = "limit × p / p₀";
        limit.from.inputs = {
            input("limit", "", findings::figure_of(*sheet.limit)), input("station_pressure", "p", air.figure),
            input("sea_level", "p₀", figure(Dimension::station_pressure, physics::sea_level_pa))};
        limit.from.source = physics_source("a reading grows with the pressure of the air drawn in");
        answer.lines.push_back({name("limit_here"), std::move(limit)});
    }
    if (shop.station_pressure) {
        answer.lines.push_back({name("altitude"), std::move(up)});
    } else {
        answer.lines.push_back({name("station_pressure"), std::move(air)});
    }
    return answer;
}

Result<Answer> torque(const Worksheet& sheet) {
    const Engine& engine = sheet.engine;
    if (!engine.bore) return needs("bore");
    if (!engine.stroke) return needs("stroke");
    if (!engine.rod) return needs("rod");
    if (!sheet.held) return needs("pressure in the cylinder");
    if (!sheet.off_tdc) return needs("angle from top dead centre");
    const physics::SliderCrank crank{engine.bore->value.si(), engine.stroke->value.si(),
                                     engine.rod->value.si()};
    if (auto possible = physics::check(crank); !possible) return tl::unexpected(possible.error());
    const double holding = physics::holding_torque_nm(crank, sheet.held->si(), sheet.off_tdc->si());
    Derived turn{figure(Dimension::torque, holding), {}};
    turn.from.title = findings::Word{"from:torque"};
    turn.from.symbols = "T = (p₂ − p₀) dV/dθ";
    turn.from.inputs = {
        input("in_cylinder", "p₂ − p₀", findings::figure_of(*sheet.held)),
        input("off_tdc", "θ", figure(Dimension::angle, sheet.off_tdc->si())),
        input("bore", "B", findings::figure_of(engine.bore->value)),
        input("stroke", "S", findings::figure_of(engine.stroke->value)),
        input("rod", "l", findings::figure_of(engine.rod->value)),
    };
    turn.from.source = physics_source("virtual work on the slider crank");
    turn.from.notes = {{"note.friction", {}}};
    Answer answer;
    answer.lines.push_back({name("torque"), std::move(turn)});
    if (sheet.bar) {
        const auto force = physics::force_at_bar_n(holding, sheet.bar->si());
        if (!force) return tl::unexpected(force.error());
        answer.lines.push_back({name("force"), Written{digits_from(*force, 0), "N"}});
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

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/findings/case.h"
#include "core/physics/atmosphere.h"

namespace lapwing::findings {
namespace {

/// A limit scaled by air pressure; differences between gauge pressures scale the same way.
std::optional<Derived> at_site(const std::optional<TypedPressure>& limit, Dimension dimension,
                               const FactoryLimits& card, const Site& site) {
    if (!limit) return std::nullopt;
    const auto scaled = physics::limit_at_site_gauge_pa(limit->si(), site.ambient_pa);
    Figure as_typed = figure_of(*limit);
    as_typed.dimension = dimension;
    Derived out;
    if (!site.known || !scaled) {
        out.figure = as_typed;
    } else {
        out.figure = figure(dimension, *scaled, site.doubt * *scaled);
        if (site.doubt > 0.0) out.from.doubts = {{Word{"doubt:air_pressure"}, 1.0}};
    }
    out.from.title = Word{"from:limit"};
    out.from.symbols = "limit × p / p₀";
    out.from.inputs = {input("limit", "", as_typed)};
    out.from.inputs.insert(out.from.inputs.end(), site.inputs.begin(), site.inputs.end());
    out.from.inputs.push_back(
        input("sea_level", "p₀", figure(Dimension::station_pressure, physics::sea_level_pa)));
    out.from.source = source_of_card(card);
    if (!site.known) out.from.notes.push_back(say("note.altitude_unknown"));
    return out;
}

}  // namespace

Site site_of(const Engine& engine, const Session& session, const Reference& reference) {
    Site out{physics::sea_level_pa, false, 0.0, say("limits.altitude_unknown"), {}};
    // Between these a barometer may really stand; outside, it was the sea-level figure of another unit.
    const double least_pa = reference.assumed("barometer-least");
    const double most_pa = reference.assumed("barometer-most");
    if (const auto& station = session.conditions.station_pressure) {
        if (station->si() < least_pa || station->si() > most_pa) {
            out.basis = say("limits.site_refused");
            return out;
        }
        Figure shown = figure_of(*station);
        shown.dimension = Dimension::station_pressure;
        const double doubt = reference.assumed("barometer-doubt");
        shown.u95 = doubt * shown.si;
        return Site{station->si(),
                    true,
                    doubt,
                    say("limits.scaled_pressure", shown),
                    {input("station_pressure", "p", shown)}};
    }
    const auto& altitude = session.conditions.altitude ? session.conditions.altitude : engine.shop_altitude;
    if (!altitude) return out;
    const auto pressure = physics::standard_pressure_pa(altitude->si());
    if (!pressure) {
        out.basis = say("limits.site_refused");
        return out;
    }
    const Figure height = figure_of(*altitude, Dimension::altitude);
    const double doubt = reference.assumed("weather-doubt");
    const Figure air = figure(Dimension::station_pressure, *pressure, doubt * *pressure);
    return Site{*pressure,
                true,
                doubt,
                say("limits.scaled_altitude", height, air),
                {input("altitude", "h", height), input("station_pressure", "p", air)}};
}

Limits limits_at(const Engine& engine, const Site& site) {
    const FactoryLimits& card = engine.limits;
    Limits out;
    out.low = at_site(card.low, Dimension::gauge_pressure, card, site);
    out.high = at_site(card.high, Dimension::gauge_pressure, card, site);
    out.lowest = at_site(card.lowest, Dimension::gauge_pressure, card, site);
    out.difference = at_site(card.difference, Dimension::pressure_difference, card, site);
    const bool any = out.low || out.high || out.lowest || out.difference;
    out.basis.message = any ? site.basis : say("limits.none");
    return out;
}

double station_pressure_pa(const Engine& engine, const Session& session, const Reference& reference) {
    return site_of(engine, session, reference).ambient_pa;
}

}  // namespace lapwing::findings

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/odds/surface_cache.h"
#include "core/odds/where_it_leaks.h"
#include "tests/core/findings/bench.h"

namespace lapwing::odds {

/// An engine with a full card, and the odds of what is put down for it.
class Odds : public findings::Bench {
public:
    explicit Odds(int cylinders, StrokeCycle cycle = StrokeCycle::four) : Bench(cylinders, cycle) {
        engine().bore = {mm("78.0"), Origin::manual, {}};
        engine().stroke = {mm("70.0"), Origin::manual, {}};
        engine().rod = {mm("130.0"), Origin::manual, {}};
        engine().compression_ratio = {
            *TypedRatio::make(cycle == StrokeCycle::two ? "7.0" : "9.0", units::one), Origin::manual, {}};
        engine().valves.intake_closing = {*TypedAngle::make("60", units::deg), Origin::manual, {}};
        engine().valves.intake_closing_at = TimingAt::seat;
        engine().cooling = Cooling::liquid;
        engine().decompressor = Decompressor::none;
        session().conditions.cranking_speed = *TypedRotation::make("250", units::rpm);
        session().conditions.throttle = Throttle::held_open;
        session().conditions.heat = EngineHeat::cold;
        tester(TesterKind::compression_gauge, "16", "bar", "1.6");
        tester(TesterKind::leak_down, "7", "bar", "1.6");
    }

    WhereItLeaks odds(std::uint64_t seed = 1) {
        OddsOptions options;
        options.seed = seed;
        options.surfaces = &surfaces();
        auto out = where_it_leaks(dossier, visit(), reference(), options);
        if (!out) throw std::runtime_error(out.error().english);
        return std::move(*out);
    }
    CylinderOdds first() { return odds().cylinders.front(); }

    static SurfaceCache& surfaces() {
        static SurfaceCache cache;
        return cache;
    }
};

}  // namespace lapwing::odds

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/physics/cranking.h"

#include <algorithm>
#include <cmath>

#include "core/physics/cranking_setup.h"

namespace lapwing::physics {
namespace {

struct Range {
    const char* code;
    const char* what;
    double value;
    double scale;  ///< to the unit the sentence speaks
    const char* unit;
    double lowest;
    double highest;
};

Status check_ranges(const CrankingCase& of) {
    const CompressionTester& tester = of.tester;
    const Range ranges[] = {
        {"cranking.ratio", "A compression ratio", of.compression_ratio, 1, "", 1.5, 30},
        {"cranking.closing", "Intake (or port) closing after bottom dead centre", of.closing_after_bdc_rad,
         1 / degree, " degrees", 0, 150},
        {"cranking.opening", "Exhaust opening before bottom dead centre", of.opening_before_bdc_rad,
         1 / degree, " degrees", 0, 120},
        {"cranking.speed", "A cranking speed", of.speed_rad_s, 1 / per_minute, " rpm", 10, 3000},
        {"cranking.ambient", "An air pressure", of.ambient_pa, 1e-2, " hPa", 200, 1200},
        {"cranking.air", "An air temperature", of.air_k, 1, " K", 200, 400},
        {"cranking.wall", "A wall temperature", of.wall_k, 1, " K", 200, 600},
        {"cranking.fill", "A filling", of.fill, 1, "", 0.05, 1.2},
        {"cranking.heat", "A heat transfer coefficient", of.heat_w_m2k, 1, " W/(m2 K)", 0, 5000},
        {"cranking.leak", "A leak area", of.leak_m2, 1e6, " mm2", 0, 200},
        {"cranking.fitting", "A fitting volume", tester.fitting_m3, 1e6, " cm3", 0, 1000},
        {"cranking.hose", "A hose volume", tester.hose_m3, 1e6, " cm3", 0.1, 1000},
        {"cranking.gauge_volume", "A volume of the gauge alone", tester.gauge_alone_m3, 1e6, " cm3", 0.1,
         1000},
        {"cranking.check_area", "A check valve area", tester.check_area_m2, 1e6, " mm2", 0.01, 200},
        {"cranking.crack", "A cracking pressure", tester.crack_pa, 1e-3, " kPa", 0, 1000},
        {"cranking.oil", "An oil volume", of.oil_m3, 1e6, " cm3", 0, 1000},
        {"cranking.strokes", "A number of strokes", static_cast<double>(of.strokes), 1, "", 1, 1000},
    };
    // Half a unit in the twelfth digit: 150 degrees must not fail for having been turned into radians and
    // back.
    constexpr double slack = 1e-12;
    for (const Range& range : ranges) {
        const double shown = range.value * range.scale;
        if (!(shown >= range.lowest * (1 - slack) && shown <= range.highest * (1 + slack))) {
            return fail(range.code, "{} of {:.6g}{} is outside what this sum can take. Give {} to {}{}.",
                        range.what, shown, range.unit, range.lowest, range.highest, range.unit);
        }
    }
    return {};
}

double bare_clearance_m3(const CrankingCase& of) {
    return of.ratio_kind == CompressionRatioKind::geometric
               ? clearance_volume_m3(of.crank, of.compression_ratio)
               : trapped_clearance_volume_m3(of.crank, of.compression_ratio, of.closing_after_bdc_rad);
}

}  // namespace

Status check(const CrankingCase& of) {
    if (auto crank_ok = check(of.crank); !crank_ok) return crank_ok;
    if (auto ranges_ok = check_ranges(of); !ranges_ok) return ranges_ok;
    // What a hose or an adapter holds beside does not help: oil lies in the chamber.
    const double chamber_m3 = bare_clearance_m3(of);
    if (!(of.oil_m3 < 0.9 * chamber_m3)) {
        return fail(
            "cranking.oil",
            "{:.6g} cm3 of oil do not fit a chamber of {:.6g} cm3: the engine would lock on the liquid "
            "and bend a rod. Do not crank it; use less oil, or let it drain.",
            of.oil_m3 * 1e6, chamber_m3 * 1e6);
    }
    return {};
}

Status check(const CrankingAccuracy& accuracy) {
    if (accuracy.step_share >= 0.01 && accuracy.step_share <= 2.0) return {};
    return fail("cranking.accuracy", "Steps {} times as long as usual do not do. Give 0.01 to 2.",
                accuracy.step_share);
}

tl::unexpected<Error> endless() {
    return fail("cranking.no_compression",
                "The leak is so large that this cylinder builds no pressure to speak of. Give a smaller leak "
                "area or a "
                "higher cranking speed.");
}

CrankingConstants<double> constants_of(const CrankingCase& of) {
    CrankingConstants<double> out{};
    out.piston_area = of.crank.piston_area_m2();
    out.bore = of.crank.bore_m;
    out.crank = of.crank.stroke_m / 2.0;
    out.rod = of.crank.rod_m;
    out.clearance = bare_clearance_m3(of) - of.oil_m3 + of.tester.before_valve_m3();
    out.closing = of.closing_after_bdc_rad - pi;
    out.opening = pi - of.opening_before_bdc_rad;
    out.ambient = of.ambient_pa;
    out.ambient_density = of.ambient_pa / (gas_constant_air * of.air_k);
    out.air = of.air_k;
    out.wall = of.wall_k;
    out.charge = of.fill * of.ambient_pa;
    out.heat_per_rad = of.heat_w_m2k / of.speed_rad_s;
    out.leak_per_rad = of.leak_m2 / of.speed_rad_s;
    out.check_per_rad = of.tester.check_area_m2 / of.speed_rad_s;
    out.gauge_pa_per_kg = gas_constant_air * of.air_k / of.tester.behind_valve_m3();
    out.crack = of.tester.crack_pa;
    // Close to TDC the volume goes as Vc (1 + (angle / width)^2): steps must resolve that width.
    const double width =
        std::sqrt(2.0 * out.clearance / (out.piston_area * out.crank * (1.0 + out.crank / out.rod)));
    out.longest_step = std::min(step_rules::longest_rad, step_rules::share_of_top * width);
    return out;
}

Result<CrankingReading> crank(const CrankingCase& of, const CrankingAccuracy& accuracy) {
    if (auto ok = check(of); !ok) return tl::unexpected(ok.error());
    if (auto ok = check(accuracy); !ok) return tl::unexpected(ok.error());
    const CrankingConstants<double> constants = constants_of(of);

    CrankingReading reading;
    CrankingConstants<double> tight = constants;
    tight.leak_per_rad = 0.0;
    const StrokesLanes<double> dry(tight, accuracy.step_share);
    CrankingPoint<double> closed{};
    CrankingPoint<double> top{};
    closed.place(tight, tight.closing);
    top.place(tight, dry.top_theta());
    reading.polytropic_exponent =
        std::log(dry.top_pressure() / tight.charge) / std::log(closed.volume / top.volume);

    StrokesLanes<double> strokes(constants, accuracy.step_share);
    // The gauge can take air until a stroke's peak, its valve shut, just fails to lift the poppet.
    reading.limit_gauge_pa = std::max(0.0, strokes.top_pressure() - constants.crack - constants.ambient);
    Trace<double> open;
    strokes.next(&open);
    reading.peak_first_pa = open.count[0] > 0 ? strokes.top_of(open) : strokes.top_pressure();
    for (int number = 1;; ++number) {
        reading.puffs_gauge_pa.push_back(strokes.gauge_pa());
        reading.last_gauge_pa = strokes.gauge_pa();
        strokes.next();
        if (number == of.strokes) break;
    }
    constexpr double settled_within = 0.002;
    reading.settled = strokes.gauge_pa() - reading.last_gauge_pa <= settled_within * reading.last_gauge_pa;
    reading.steps = dry.steps() + strokes.steps();
    if (dry.gave_up() || strokes.gave_up()) return endless();
    return reading;
}

Result<CrankingBalance> balance(const CrankingCase& of, const CrankingAccuracy& accuracy) {
    if (auto ok = check(of); !ok) return tl::unexpected(ok.error());
    if (auto ok = check(accuracy); !ok) return tl::unexpected(ok.error());
    const CrankingConstants<double> constants = constants_of(of);
    // The whole stroke as one run with the check valve at work from the start.
    CrankingLedger<double> ledger;
    StrokeLanes<double> stroke(constants, accuracy.step_share, &ledger);
    const CrankingPoint<double> start = stroke.charge();
    CrankingPoint<double> end = start;
    const double gauge_kg = constants.ambient / constants.gauge_pa_per_kg;
    end.gauge = gauge_kg;
    stroke.run_open(end, true, pi);
    if (stroke.gave_up()) return endless();
    CrankingBalance out;
    out.leaked_kg = ledger.leaked;
    out.into_gauge_kg = end.gauge - gauge_kg;
    out.work_j = ledger.work;
    out.wall_heat_j = ledger.wall_heat;
    out.mass_error = (start.mass - end.mass - out.leaked_kg - out.into_gauge_kg) / start.mass;
    out.energy_error =
        (start.energy - end.energy - out.work_j - out.wall_heat_j - ledger.enthalpy_out) / start.energy;
    return out;
}

}  // namespace lapwing::physics

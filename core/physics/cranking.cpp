// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/physics/cranking.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>

#include "core/physics/cranking_stroke.h"

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

double gauge_mass_kg(const CrankingTerms& terms, double pressure_pa) {
    return pressure_pa * terms.gauge_m3 / (gas_constant_air * terms.air_k);
}

tl::unexpected<Error> endless() {
    return fail("cranking.no_compression",
                "The leak is so large that this cylinder builds no pressure to speak of. Give a smaller leak "
                "area or a "
                "higher cranking speed.");
}

/// Peak of a stroke whose check valve never opens.
struct DryPeak {
    double pressure_pa = 0.0;
    double angle_rad = 0.0;
    int steps = 0;
};

std::optional<DryPeak> dry_peak(const CrankingTerms& terms, const CrankingAccuracy& accuracy) {
    Stroke<cranking_state::model_size> stroke(terms, accuracy);
    OdePoint<cranking_state::model_size> end;
    stroke.run_shut(stroke.charge(), std::numeric_limits<double>::infinity(), end);
    if (stroke.gave_up()) return std::nullopt;
    return DryPeak{stroke.peak_pa(), stroke.peak_rad(), stroke.steps()};
}

}  // namespace

Status check(const CrankingCase& of) {
    if (auto crank_ok = check(of.crank); !crank_ok) return crank_ok;
    if (auto ranges_ok = check_ranges(of); !ranges_ok) return ranges_ok;
    const double chamber_m3 = bare_clearance_m3(of) + of.tester.before_valve_m3();
    if (!(of.oil_m3 < 0.9 * chamber_m3)) {
        return fail("cranking.oil",
                    "{:.6g} cm3 of oil do not fit a chamber of {:.6g} cm3: cranking would lock the engine. "
                    "Use less oil.",
                    of.oil_m3 * 1e6, chamber_m3 * 1e6);
    }
    return {};
}

CrankingTerms terms_of(const CrankingCase& of) {
    CrankingTerms terms;
    terms.crank = of.crank;
    terms.clearance_m3 = bare_clearance_m3(of) - of.oil_m3 + of.tester.before_valve_m3();
    terms.closing_rad = of.closing_after_bdc_rad - pi;
    terms.opening_rad = pi - of.opening_before_bdc_rad;
    terms.speed_rad_s = of.speed_rad_s;
    terms.ambient_pa = of.ambient_pa;
    terms.air_k = of.air_k;
    terms.wall_k = of.wall_k;
    terms.charge_pa = of.fill * of.ambient_pa;
    terms.heat_w_m2k = of.heat_w_m2k;
    terms.leak_m2 = of.leak_m2;
    terms.gauge_m3 = of.tester.behind_valve_m3();
    terms.check_area_m2 = of.tester.check_area_m2;
    terms.crack_pa = of.tester.crack_pa;
    return terms;
}

Result<CrankingReading> crank(const CrankingCase& of, const CrankingAccuracy& accuracy) {
    namespace at = cranking_state;
    if (auto ok = check(of); !ok) return tl::unexpected(ok.error());
    const CrankingTerms terms = terms_of(of);

    CrankingReading reading;
    const auto with_leak = dry_peak(terms, accuracy);
    CrankingTerms tight = terms;
    tight.leak_m2 = 0.0;
    const auto without_leak = dry_peak(tight, accuracy);
    if (!with_leak || !without_leak) return endless();
    reading.steps = with_leak->steps + without_leak->steps;
    reading.polytropic_exponent =
        std::log(without_leak->pressure_pa / terms.charge_pa) /
        std::log(terms.crank.volume_m3(terms.closing_rad, terms.clearance_m3) /
                 terms.crank.volume_m3(without_leak->angle_rad, terms.clearance_m3));
    // The gauge can take air until a stroke's peak, its valve shut, just fails to lift the poppet.
    reading.limit_gauge_pa = std::max(0.0, with_leak->pressure_pa - terms.crack_pa - terms.ambient_pa);

    // Until the valve opens a stroke runs as the one before, and it opens later every time: each stroke
    // continues from where the valve opened last.
    OdePoint<at::model_size> shut;
    double gauge_kg = gauge_mass_kg(terms, terms.ambient_pa);
    const int strokes_and_one_more = of.strokes + 1;
    for (int number = 1; number <= strokes_and_one_more; ++number) {
        Stroke<at::model_size> stroke(terms, accuracy);
        if (number == 1) shut = stroke.charge();
        const double threshold_pa = gauge_pressure_pa(terms, gauge_kg) + terms.crack_pa;
        OdePoint<at::model_size> opened;
        if (threshold_pa < with_leak->pressure_pa && stroke.run_shut(shut, threshold_pa, opened)) {
            shut = opened;
            opened.y[at::gauge_mass] = gauge_kg;
            gauge_kg = std::max(gauge_kg, stroke.run_open(opened).y[at::gauge_mass]);
        }
        if (stroke.gave_up()) return endless();
        reading.steps += stroke.steps();
        if (number == 1)
            reading.peak_first_pa = stroke.steps() > 0 ? stroke.peak_pa() : with_leak->pressure_pa;
        const double gauge_pa = std::max(0.0, gauge_pressure_pa(terms, gauge_kg) - terms.ambient_pa);
        if (number <= of.strokes) {
            reading.puffs_gauge_pa.push_back(gauge_pa);
            reading.last_gauge_pa = gauge_pa;
        } else {
            constexpr double settled_within = 0.002;
            reading.settled = gauge_pa - reading.last_gauge_pa <= settled_within * reading.last_gauge_pa;
        }
    }
    return reading;
}

Result<CrankingBalance> balance(const CrankingCase& of, const CrankingAccuracy& accuracy) {
    namespace at = cranking_state;
    if (auto ok = check(of); !ok) return tl::unexpected(ok.error());
    const CrankingTerms terms = terms_of(of);
    Stroke<at::ledger_size> stroke(terms, accuracy);
    const auto start = stroke.charge();
    const double gauge_kg = gauge_mass_kg(terms, terms.ambient_pa);
    OdePoint<at::ledger_size> end;
    if (stroke.run_shut(start, terms.ambient_pa + terms.crack_pa, end)) {
        end.y[at::gauge_mass] = gauge_kg;
        end = stroke.run_open(end);
    } else {
        end.y[at::gauge_mass] = gauge_kg;
    }
    if (stroke.gave_up()) return endless();
    CrankingBalance out;
    out.leaked_kg = end.y[at::leaked_mass];
    out.into_gauge_kg = end.y[at::gauge_mass] - gauge_kg;
    out.work_j = end.y[at::work];
    out.wall_heat_j = end.y[at::wall_heat];
    out.mass_error =
        (start.y[at::mass] - end.y[at::mass] - out.leaked_kg - out.into_gauge_kg) / start.y[at::mass];
    out.energy_error =
        (start.y[at::energy] - end.y[at::energy] - out.work_j - out.wall_heat_j - end.y[at::enthalpy_out]) /
        start.y[at::energy];
    return out;
}

}  // namespace lapwing::physics

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/uncertainty/instrument.h"

#include <algorithm>
#include <cmath>
#include <initializer_list>
#include <limits>
#include <numbers>

#include "core/uncertainty/coverage.h"

namespace lapwing::uncertainty {
namespace {

constexpr double rectangular = std::numbers::inv_sqrt3;  // half-width to standard uncertainty

double root_sum(std::initializer_list<double> parts) {
    double sum = 0.0;
    for (double part : parts)
        sum += part * part;
    return std::sqrt(sum);
}

}  // namespace

Result<AccuracyClass> en837_class(double class_number) {
    if (!(class_number >= 0.05 && class_number <= 10.0)) {
        return fail("gauge.class",
                    "Class {} is not a pressure gauge's. Give the number printed on the dial, 0.05 to 10; "
                    "1.6 and 2.5 are "
                    "usual.",
                    class_number);
    }
    const double limit = class_number / 100.0;
    return AccuracyClass{limit, limit, limit};
}

AccuracyClass asme_b40_100(AsmeGrade grade) {
    switch (grade) {
        case AsmeGrade::a:
            return {0.02, 0.01, 0.02};
        case AsmeGrade::b:
            return {0.03, 0.02, 0.03};
        case AsmeGrade::c:
            return {0.04, 0.03, 0.04};
        case AsmeGrade::d:
            break;
    }
    return {0.05, 0.05, 0.05};
}

Status check(const Gauge& gauge) {
    if (!(gauge.span_pa > 0.0 && gauge.span_pa <= 1e8)) {
        return fail("gauge.span",
                    "A gauge that reads from 0 to {:.6g} kPa cannot be right. Give its full scale.",
                    gauge.span_pa / 1e3);
    }
    for (double limit :
         {gauge.accuracy.lower_quarter, gauge.accuracy.middle_half, gauge.accuracy.upper_quarter}) {
        if (!(limit > 0.0 && limit <= 0.2)) {
            return fail("gauge.class",
                        "An error limit of {:.6g} % of span is not a gauge's. Give above 0 up to 20 %.",
                        limit * 100.0);
        }
    }
    if (!(gauge.readable_step_pa >= 0.0 && gauge.readable_step_pa <= gauge.span_pa)) {
        return fail(
            "gauge.step",
            "A readable step of {:.6g} kPa does not fit a gauge of {:.6g} kPa. Give half a graduation.",
            gauge.readable_step_pa / 1e3, gauge.span_pa / 1e3);
    }
    if (!(gauge.zero_limit_pa >= 0.0 && gauge.zero_limit_pa <= gauge.span_pa)) {
        return fail(
            "gauge.zero",
            "A zero error of {:.6g} kPa does not fit a gauge of {:.6g} kPa. Give how far the needle rests "
            "from zero.",
            gauge.zero_limit_pa / 1e3, gauge.span_pa / 1e3);
    }
    const auto& shares = gauge.shares;
    if (!(shares.offset >= 0.0 && shares.gain >= 0.0 && shares.offset + shares.gain <= 1.0)) {
        return fail("gauge.shares",
                    "Error shares of {} (offset) and {} (gain) must not be negative and make at most 1.",
                    shares.offset, shares.gain);
    }
    return {};
}

double ReadingErrors::total_pa() const {
    return root_sum({offset_pa, gain_pa, local_pa, resolution_pa});
}

ReadingErrors errors_at(const Gauge& gauge, double reading_pa) {
    const auto& limits = gauge.accuracy;
    const double position = reading_pa / gauge.span_pa;
    // What is shared along the scale cannot be larger than the best part of the scale allows.
    const double best = std::min({limits.lower_quarter, limits.middle_half, limits.upper_quarter}) *
                        gauge.span_pa * rectangular;
    const double here = limits.limit(position) * gauge.span_pa * rectangular;
    const double class_offset = std::sqrt(gauge.shares.offset) * best;
    ReadingErrors errors;
    errors.gain_pa = std::sqrt(gauge.shares.gain) * best * position;
    errors.local_pa =
        std::sqrt(std::max(0.0, here * here - class_offset * class_offset - errors.gain_pa * errors.gain_pa));
    errors.offset_pa = root_sum({class_offset, gauge.zero_limit_pa * rectangular});
    errors.resolution_pa = 0.5 * gauge.readable_step_pa * rectangular;
    return errors;
}

double u_reading_pa(const Gauge& gauge, double reading_pa) {
    return errors_at(gauge, reading_pa).total_pa();
}

double covariance_same_gauge_pa2(const Gauge& gauge, double first_pa, double second_pa) {
    const auto first = errors_at(gauge, first_pa);
    const auto second = errors_at(gauge, second_pa);
    return first.offset_pa * second.offset_pa + first.gain_pa * second.gain_pa;
}

double u_difference_same_gauge_pa(const Gauge& gauge, double first_pa, double second_pa) {
    const auto first = errors_at(gauge, first_pa);
    const auto second = errors_at(gauge, second_pa);
    return root_sum({first.gain_pa - second.gain_pa, first.local_pa, second.local_pa, first.resolution_pa,
                     second.resolution_pa});
}

double u_difference_two_gauges_pa(const Gauge& first, double first_pa, const Gauge& second,
                                  double second_pa) {
    return root_sum({u_reading_pa(first, first_pa), u_reading_pa(second, second_pa)});
}

double u_ratio_same_gauge(const Gauge& gauge, double first_pa, double second_pa) {
    const double ratio = first_pa / second_pa;
    const double by_first = u_reading_pa(gauge, first_pa) / second_pa;
    const double by_second = u_reading_pa(gauge, second_pa) * ratio / second_pa;
    const double shared =
        covariance_same_gauge_pa2(gauge, first_pa, second_pa) * ratio / (second_pa * second_pa);
    return std::sqrt(std::max(by_first * by_first + by_second * by_second - 2.0 * shared, 0.0));
}

Result<MeanOfRepeats> mean_of_repeats(const Gauge& gauge, std::span<const double> readings_pa,
                                      const Repeatability& known) {
    if (readings_pa.empty() ||
        !std::all_of(readings_pa.begin(), readings_pa.end(), [](double p) { return std::isfinite(p); })) {
        return fail("gauge.repeats",
                    "There is no mean of {} readings with one missing. Give at least one number.",
                    readings_pa.size());
    }
    const auto count = static_cast<double>(readings_pa.size());
    MeanOfRepeats out;
    for (double reading : readings_pa)
        out.mean_pa += reading / count;
    const double scatter_freedom = known.freedom + count - 1.0;
    if (scatter_freedom > 0.0) {
        double squares = known.freedom * known.standard_pa * known.standard_pa;
        for (double reading : readings_pa)
            squares += (reading - out.mean_pa) * (reading - out.mean_pa);
        out.scatter_pa = std::sqrt(squares / scatter_freedom);
    }
    // Repeats on one spot share the local error, and repeats that read alike share the rounding too.
    const double gauge_pa = u_reading_pa(gauge, out.mean_pa);
    const double by_scatter_pa = out.scatter_pa / std::sqrt(count);
    const double combined_pa = root_sum({gauge_pa, by_scatter_pa});
    out.freedom = by_scatter_pa > 0.0 ? scatter_freedom * std::pow(combined_pa / by_scatter_pa, 4)
                                      : std::numeric_limits<double>::infinity();
    out.u_pa = combined_pa * student_factor(out.freedom) / coverage_factor;
    return out;
}

}  // namespace lapwing::uncertainty

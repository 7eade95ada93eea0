// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <span>

#include "core/base/result.h"

/// Pressure gauges and what their accuracy class says of a reading. Gauge pressures in Pa, from zero to full
/// scale; every u is a standard uncertainty. Limits are taken as rectangular, so u = limit / sqrt(3) (JCGM
/// 100, 4.3.7).
namespace lapwing::uncertainty {

/// Error limits as a fraction of span, by where on the scale the needle stands.
struct AccuracyClass {
    double lower_quarter = 0.0;
    double middle_half = 0.0;
    double upper_quarter = 0.0;

    /// @param position reading over span
    [[nodiscard]] double limit(double position) const {
        if (position < 0.25) return lower_quarter;
        return position <= 0.75 ? middle_half : upper_quarter;
    }
};

/// EN 837-1: the class number is the error limit in per cent of span, the same everywhere. Fails with
/// "gauge.class" outside 0.05 to 10.
[[nodiscard]] Result<AccuracyClass> en837_class(double class_number);

enum class AsmeGrade { a, b, c, d };

/// ASME B40.100, per cent of span: A 2-1-2, B 3-2-3, C 4-3-4, D 5-5-5.
[[nodiscard]] AccuracyClass asme_b40_100(AsmeGrade grade);

/// How the class limit's variance divides: offset and gain (the latter at full scale) are shared by all
/// readings of one gauge, what is left is local to the spot on the scale and the way the needle came there.
/// Class limits say nothing of it: whoever describes a gauge assumes it (assets/reference).
struct ErrorShares {
    double offset = 0.0;
    double gain = 0.0;
};

struct Gauge {
    double span_pa = 0.0;
    AccuracyClass accuracy;
    double readable_step_pa =
        0.0;  ///< smallest step told apart: half a graduation on a dial, a digit on a display
    double zero_limit_pa = 0.0;  ///< how far off zero the needle may have rested unseen, beyond the class
    ErrorShares shares;
};

/// Fails with "gauge.span", "gauge.class", "gauge.step", "gauge.zero" or "gauge.shares".
[[nodiscard]] Status check(const Gauge& gauge);

/// Standard uncertainties of one reading, Pa, by kind.
struct ReadingErrors {
    double offset_pa = 0.0;      ///< the same in every reading of this gauge
    double gain_pa = 0.0;        ///< grows with the reading; fully correlated between readings
    double local_pa = 0.0;       ///< independent from spot to spot
    double resolution_pa = 0.0;  ///< independent; step / sqrt(12) (JCGM 100, F.2.2.1)

    [[nodiscard]] double total_pa() const;
};

/// Only for a gauge that passed `check`, as all below. The class limit holds for every reading: offset, gain
/// and local add up to limit / sqrt(3) wherever the needle stands.
[[nodiscard]] ReadingErrors errors_at(const Gauge& gauge, double reading_pa);

/// Of one reading.
[[nodiscard]] double u_reading_pa(const Gauge& gauge, double reading_pa);

/// Covariance, Pa2, of two readings on the same gauge: its offset and gain.
[[nodiscard]] double covariance_same_gauge_pa2(const Gauge& gauge, double first_pa, double second_pa);

/// Of the difference of two readings on the same gauge: the offset cancels, the gain nearly. Local errors are
/// taken as independent even on one spot, since a needle that rises stops elsewhere than one that falls.
[[nodiscard]] double u_difference_same_gauge_pa(const Gauge& gauge, double first_pa, double second_pa);

/// Of the difference of two readings on different gauges: nothing cancels.
[[nodiscard]] double u_difference_two_gauges_pa(const Gauge& first, double first_pa, const Gauge& second,
                                                double second_pa);

/// Of the ratio of two readings on the same gauge, first over second, as a standard uncertainty of the ratio
/// itself (first order): the gain cancels, the offset in part. Only for a second reading above 0.
[[nodiscard]] double u_ratio_same_gauge(const Gauge& gauge, double first_pa, double second_pa);

/// How readings of one thing scatter, as known before any of them: a standard deviation and how many degrees
/// of freedom it is worth. With none it is not used.
struct Repeatability {
    double standard_pa = 0.0;
    double freedom = 0.0;
};

struct MeanOfRepeats {
    double mean_pa = 0.0;
    double scatter_pa = 0.0;  ///< standard deviation of a single repeat, pooled
    double u_pa = 0.0;        ///< of the mean, widened for what is not known of the scatter
    double freedom = 0.0;     ///< effective degrees of freedom; infinite when the scatter does not count
};

/// Repeats of one reading on one gauge. Scatter falls with the count, the gauge's own errors do not (JCGM
/// 100, 4.2). The scatter of the repeats themselves is pooled with `known`, each by its degrees of freedom
/// (JCGM 100, H.3.6 and 4.2.4): two or three repeats alone know their scatter badly, and one reading knows
/// nothing of it: it scatters as `known` says. The interval that goes
/// with u is Student's t times it, with the effective degrees of freedom of Welch and Satterthwaite (JCGM
/// 100, G.4); u_pa is that interval over the coverage factor, so that +-2 u_pa covers what it says. One
/// reading of which nothing is known has the gauge's doubt only. Fails with "gauge.repeats" when there is
/// none or one is not a number.
[[nodiscard]] Result<MeanOfRepeats> mean_of_repeats(const Gauge& gauge, std::span<const double> readings_pa,
                                                    const Repeatability& known = {});

}  // namespace lapwing::uncertainty

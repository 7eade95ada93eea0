// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/odds/crank_surface.h"

#include <Eigen/Dense>
#include <algorithm>
#include <boost/random/sobol.hpp>
#include <cmath>

#include "core/physics/cranking_many.h"

namespace lapwing::odds {
namespace {

constexpr std::size_t axes = 6;
/// Highest degree along each axis: leak, oil, ratio, closing, heat, speed.
constexpr std::array<int, axes> usually_highest{10, 3, 3, 3, 4, 4};
/// Where the valve or port may close as late as this, the stroke that is left bends more.
constexpr double late_rad = 105.0 * physics::degree;
constexpr int highest_of_late_closing = 6;
/// Terms whose degrees, each over its highest, add up to this at most.
constexpr double usually_together = 1.1;
constexpr double together_of_late_closing = 1.2;
constexpr int runs_for_each_term = 2;

double clamped(double doubt) {
    return std::clamp(doubt, -CrankDoubts::reach, CrankDoubts::reach);
}

/// Chebyshev polynomials T_0 to T_(N-1).
template <std::size_t N>
void chebyshev(double x, std::array<double, N>& out) {
    static_assert(N >= 2);
    out[0] = 1.0;
    out[1] = x;
    for (std::size_t k = 2; k < N; ++k)
        out[k] = 2.0 * x * out[k - 1] - out[k - 2];
}

/// Leak at which the middle engine reads this share of what it reads without one.
Result<double> leak_reading(const SurfaceRange& range, double tight_pa, double share) {
    double low = 0.0;
    double high = 1e-4;
    for (int halving = 0; halving < 18; ++halving) {
        const double leak = 0.5 * (low + high);
        const auto reading = physics::crank(range.at({}, leak, 0.0));
        if (!reading) return tl::unexpected(reading.error());
        (reading->last_gauge_pa > share * tight_pa ? low : high) = leak;
    }
    return 0.5 * (low + high);
}

}  // namespace

physics::CrankingCase SurfaceRange::at(const CrankDoubts& doubts, double leak_m2, double oil_m3) const {
    physics::CrankingCase out = middle;
    out.compression_ratio =
        1.0 + (middle.compression_ratio - 1.0) * std::exp(ratio_spread * clamped(doubts.ratio));
    out.closing_after_bdc_rad += closing_spread_rad * clamped(doubts.closing);
    out.heat_w_m2k *= std::exp(heat_spread * clamped(doubts.heat));
    out.speed_rad_s *= std::exp(speed_spread * clamped(doubts.speed));
    out.leak_m2 = leak_m2;
    out.oil_m3 = oil_m3;
    return out;
}

double SurfaceRange::leak_for_speed(const CrankDoubts& doubts) const {
    return std::exp(speed_spread * clamped(doubts.speed));
}

Result<CrankSurface> CrankSurface::fit(const SurfaceRange& range) {
    CrankSurface out;
    out.range_ = range;
    const auto tight = physics::crank(range.at({}, 0.0, 0.0));
    if (!tight) return tl::unexpected(tight.error());
    const double reads_pa = std::max(tight->last_gauge_pa, 1.0);
    const auto half = leak_reading(range, reads_pa, 0.5);
    const auto dead = leak_reading(range, reads_pa, 0.03);
    if (!half || !dead) return tl::unexpected((half ? dead : half).error());
    out.largest_leak_m2_ = *dead;
    out.scale_ = {*half, std::log1p(*dead / *half), range.largest_oil_m3, 0.1 * reads_pa};

    const bool oil = range.largest_oil_m3 > 0.0;
    auto highest = usually_highest;
    if (range.middle.closing_after_bdc_rad + CrankDoubts::reach * range.closing_spread_rad > late_rad)
        highest[3] = highest_of_late_closing;
    const double together = highest == usually_highest ? usually_together : together_of_late_closing;
    Degrees degrees{};
    const auto list_terms = [&](auto& self, std::size_t axis, double spent) -> void {
        if (axis == axes) {
            out.terms_.push_back(degrees);
            return;
        }
        const int most = axis == 1 && !oil ? 0 : highest[axis];
        for (int degree = 0; degree <= most; ++degree) {
            const double now = spent + static_cast<double>(degree) / highest[axis];
            if (now > together + 1e-9) break;
            degrees[axis] = static_cast<std::uint8_t>(degree);
            self(self, axis + 1, now);
        }
        degrees[axis] = 0;
    };
    list_terms(list_terms, 0, 0.0);
    const auto of_doubts = [](const Degrees& of) { return std::array{of[2], of[3], of[4], of[5]}; };
    std::ranges::stable_sort(out.terms_, {}, of_doubts);
    for (std::size_t term = 0; term < out.terms_.size(); ++term) {
        if (term == 0 || of_doubts(out.terms_[term]) != of_doubts(out.terms_[term - 1]))
            out.groups_.push_back({term, term});
        ++out.groups_.back().end;
        const Degrees& of = out.terms_[term];
        out.place_.push_back(static_cast<std::uint8_t>(of[0] * Slice::oil_terms + of[1]));
    }

    const auto terms = static_cast<Eigen::Index>(out.terms_.size());
    const Eigen::Index runs = runs_for_each_term * terms;
    out.runs_ = static_cast<int>(runs);
    boost::random::sobol draw(axes);
    draw.discard(axes);  // its first point is the corner
    std::vector<physics::CrankingCase> cases;
    Eigen::MatrixXd basis(runs, terms);
    for (Eigen::Index run = 0; run < runs; ++run) {
        std::array<double, axes> x{};
        for (double& one : x) {
            const double u = (static_cast<double>(draw()) + 0.5) / (static_cast<double>(draw.max()) + 1.0);
            one = -std::cos(physics::pi * u);  // the polynomials' own measure: the ends are fitted as well
        }
        if (!oil) x[1] = -1.0;
        constexpr double reach = CrankDoubts::reach;
        const CrankDoubts doubts{reach * x[2], reach * x[3], reach * x[4], reach * x[5]};
        const double leak =
            *half * range.leak_for_speed(doubts) * std::expm1(0.5 * (x[0] + 1.0) * out.scale_.leak_reach);
        cases.push_back(range.at(doubts, leak, 0.5 * (x[1] + 1.0) * range.largest_oil_m3));
        std::array<std::array<double, Slice::leak_terms>, axes> powers{};
        for (std::size_t axis = 0; axis < axes; ++axis)
            chebyshev(x[axis], powers[axis]);
        for (Eigen::Index term = 0; term < terms; ++term) {
            double product = 1.0;
            for (std::size_t axis = 0; axis < axes; ++axis)
                product *= powers[axis][out.terms_[static_cast<std::size_t>(term)][axis]];
            basis(run, term) = product;
        }
    }
    const auto readings = physics::crank_many(cases);
    if (!readings) return tl::unexpected(readings.error());
    Eigen::MatrixXd wanted(runs, 2);
    for (Eigen::Index run = 0; run < runs; ++run) {
        const auto at = static_cast<std::size_t>(run);
        const double final_pa = readings->last_gauge_pa(at);
        // Where the gauge no longer moves there is a kink, which no polynomial follows and no test asks for.
        const double weight = std::clamp(final_pa / out.scale_.shift_pa, 0.01, 1.0);
        basis.row(run) *= weight;
        wanted(run, 0) = weight * std::log(readings->puff_gauge_pa(at, 0) + out.scale_.shift_pa);
        wanted(run, 1) = weight * std::log(final_pa + out.scale_.shift_pa);
    }
    // Drawn by the polynomials' measure the normal equations are well conditioned.
    const Eigen::MatrixXd fitted =
        (basis.transpose() * basis).ldlt().solve(basis.transpose() * wanted).eval();
    for (Eigen::Index term = 0; term < terms; ++term) {
        out.first_.push_back(fitted(term, 0));
        out.final_.push_back(fitted(term, 1));
    }
    return out;
}

void CrankSurface::slice(const CrankDoubts& doubts, Slice& out) const {
    out.scale_ = scale_;
    out.scale_.leak_unit_m2 *= range_.leak_for_speed(doubts);
    out.oil_used_ = range_.largest_oil_m3 > 0.0 ? Slice::oil_terms : 1;
    out.first_.fill(0.0);
    out.final_.fill(0.0);
    const std::array<double, 4> at{doubts.ratio, doubts.closing, doubts.heat, doubts.speed};
    std::array<std::array<double, highest_of_late_closing + 1>, 4> powers{};
    for (std::size_t axis = 0; axis < 4; ++axis)
        chebyshev(clamped(at[axis]) / CrankDoubts::reach, powers[axis]);
    for (const Group& group : groups_) {
        const Degrees& doubt = terms_[group.begin];
        const double product =
            powers[0][doubt[2]] * powers[1][doubt[3]] * powers[2][doubt[4]] * powers[3][doubt[5]];
        for (std::size_t term = group.begin; term < group.end; ++term) {
            const std::size_t place = place_[term];
            out.first_[place] += first_[term] * product;
            out.final_[place] += final_[term] * product;
        }
    }
    out.first_dry_ = out.at_oil(out.first_, 0.0);
    out.final_dry_ = out.at_oil(out.final_, 0.0);
}

CrankSurface::Slice::Dry CrankSurface::Slice::along_leak(double leak_m2) const {
    const double along = std::log1p(std::max(leak_m2, 0.0) / scale_.leak_unit_m2) / scale_.leak_reach;
    Dry out;
    chebyshev(2.0 * std::min(along, 1.0) - 1.0, out);
    return out;
}

CrankSurface::Slice::Dry CrankSurface::Slice::at_oil(const Wet& of, double oil_m3) const {
    std::array<double, oil_terms> oil{1.0, 0.0, 0.0, 0.0};
    if (oil_used_ > 1) chebyshev(2.0 * std::clamp(oil_m3 / scale_.largest_oil_m3, 0.0, 1.0) - 1.0, oil);
    Dry out{};
    for (std::size_t i = 0; i < out.size(); ++i)
        for (std::size_t j = 0; j < oil.size(); ++j)
            out[i] += of[i * oil.size() + j] * oil[j];
    return out;
}

double CrankSurface::Slice::pressure(const Dry& terms, const Dry& leak) const {
    double sum = 0.0;
    for (std::size_t i = 0; i < leak.size(); ++i)
        sum += terms[i] * leak[i];
    return std::max(std::exp(sum) - scale_.shift_pa, 0.0);
}

CrankSurface::Pair CrankSurface::Slice::at(double leak_m2, double oil_m3) const {
    const Dry leak = along_leak(leak_m2);
    if (oil_m3 == 0.0) return {pressure(first_dry_, leak), pressure(final_dry_, leak)};
    return {pressure(at_oil(first_, oil_m3), leak), pressure(at_oil(final_, oil_m3), leak)};
}

CrankSurface::Slice::AlongOil CrankSurface::Slice::along_oil(double leak_m2) const {
    const Dry leak = along_leak(leak_m2);
    AlongOil out;
    out.largest_oil_m3_ = oil_used_ > 1 ? scale_.largest_oil_m3 : 0.0;
    for (std::size_t i = 0; i < leak.size(); ++i)
        for (std::size_t j = 0; j < out.terms_.size(); ++j)
            out.terms_[j] += final_[i * out.terms_.size() + j] * leak[i];
    return out;
}

CrankSurface::Slice::AlongOil::Point CrankSurface::Slice::AlongOil::at(double oil_m3) const {
    if (!(largest_oil_m3_ > 0.0)) return {terms_[0], 0.0};
    const double x = 2.0 * std::clamp(oil_m3 / largest_oil_m3_, 0.0, 1.0) - 1.0;
    const double by_x = terms_[1] + terms_[2] * 4.0 * x + terms_[3] * (12.0 * x * x - 3.0);
    const bool inside = oil_m3 >= 0.0 && oil_m3 <= largest_oil_m3_;
    return {
        terms_[0] + x * terms_[1] + (2.0 * x * x - 1.0) * terms_[2] + (4.0 * x * x * x - 3.0 * x) * terms_[3],
        inside ? by_x * 2.0 / largest_oil_m3_ : 0.0};
}

double CrankSurface::Slice::final_pa(double leak_m2, double oil_m3) const {
    const Dry leak = along_leak(leak_m2);
    return pressure(oil_m3 == 0.0 ? final_dry_ : at_oil(final_, oil_m3), leak);
}

}  // namespace lapwing::odds

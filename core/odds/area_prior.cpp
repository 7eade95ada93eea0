// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/odds/area_prior.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace lapwing::odds {
namespace {

double normal_density(double x, double mean, double spread) {
    const double z = (x - mean) / spread;
    return std::exp(-0.5 * z * z) / (spread * std::sqrt(2.0 * std::numbers::pi));
}

/// Chance of a standard normal number below z.
double below(double z) {
    return 0.5 * std::erfc(-z / std::numbers::sqrt2);
}

}  // namespace

double AreaPrior::density(double log_area) const {
    return (1.0 - fault) * normal_density(log_area, sound_mean, sound_spread) +
           fault * normal_density(log_area, leaking_mean, leaking_spread);
}

double AreaPrior::fault_given(double log_area) const {
    const double leaking = fault * normal_density(log_area, leaking_mean, leaking_spread);
    const double all = density(log_area);
    // Beyond both tails only their order is left: the wider one is heavier, and the larger leak is the fault.
    if (!(all > 0.0)) return log_area > leaking_mean ? 1.0 : 0.0;
    return leaking / all;
}

AreaPrior area_prior(const Assumptions& assumptions, findings::Path path, double bore_m, double odds) {
    const std::string name(word(path));
    const double scale = bore_m / assumptions.at("area-bore");
    const double fault = assumptions.at(name + "-fault");
    AreaPrior out;
    out.fault = odds * fault / (1.0 - fault + odds * fault);
    out.sound_mean = std::log(assumptions.at(name + "-sound") * scale);
    out.sound_spread = assumptions.at(name + "-sound-spread");
    out.leaking_mean = std::log(assumptions.at(name + "-leaking") * scale);
    out.leaking_spread = assumptions.at(name + "-leaking-spread");
    return out;
}

AreaMap::AreaMap(const AreaPrior& prior) {
    const auto less = [&](double x) {
        return (1.0 - prior.fault) * below((x - prior.sound_mean) / prior.sound_spread) +
               prior.fault * below((x - prior.leaking_mean) / prior.leaking_spread);
    };
    const auto more = [&](double x) {
        return (1.0 - prior.fault) * below((prior.sound_mean - x) / prior.sound_spread) +
               prior.fault * below((prior.leaking_mean - x) / prior.leaking_spread);
    };
    const auto nodes = static_cast<std::size_t>(std::lround(2.0 * reach / step)) + 1;
    const double width = 8.0 * std::max(prior.sound_spread, prior.leaking_spread);
    double low = std::min(prior.sound_mean, prior.leaking_mean) - width;
    const double highest = std::max(prior.sound_mean, prior.leaking_mean) + width;
    double x = low;
    for (std::size_t node = 0; node < nodes; ++node) {
        const double z = -reach + step * static_cast<double>(node);
        const bool upper = z > 0.0;  // the small tail keeps its digits
        const double wanted = below(upper ? -z : z);
        double high = highest;
        for (int turn = 0; turn < 60; ++turn) {
            const double off = upper ? wanted - more(x) : less(x) - wanted;  // above 0: x too high
            (off > 0.0 ? high : low) = x;
            const double slope = prior.density(x);
            double next = slope > 0.0 ? x - off / slope : low;
            if (!(next > low && next < high)) next = 0.5 * (low + high);
            const bool close = std::abs(next - x) < 1e-10;
            x = next;
            if (close) break;
        }
        log_area_.push_back(x);
    }
    for (std::size_t node = 1; node < nodes; ++node) {
        // Rounding must not make a step of nothing, which would have no density.
        log_area_[node] = std::max(log_area_[node], log_area_[node - 1] + 1e-12);
        log_slope_.push_back(std::log((log_area_[node] - log_area_[node - 1]) / step));
    }
    for (const double log_area : log_area_)
        fault_.push_back(prior.fault_given(log_area));
    cells_a_unit_ = static_cast<double>(cells) / (most() - least());
    std::size_t node = 0;
    for (std::size_t cell = 0; cell < cells; ++cell) {
        const double begin = least() + static_cast<double>(cell) / cells_a_unit_;
        while (node + 1 < nodes && log_area_[node + 1] <= begin)
            ++node;
        // Rounding may put a place at the end of one cell into the next.
        node_of_cell_.push_back(static_cast<std::uint16_t>(node > 0 ? node - 1 : 0));
    }
}

}  // namespace lapwing::odds

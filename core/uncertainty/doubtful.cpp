// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/uncertainty/doubtful.h"

#include <cmath>

#include "core/uncertainty/coverage.h"

namespace lapwing::uncertainty {

void Doubtful::by_source(const std::string& source, double change) {
    shared_[source] += change;
}

void Doubtful::by_itself(double u, double freedom) {
    own_.push_back({u, freedom});
}

Doubtful Doubtful::through(double new_value, double derivative) const {
    Doubtful out = *this;
    out.value = new_value;
    for (auto& [source, change] : out.shared_)
        change *= derivative;
    for (Own& own : out.own_)
        own.u *= std::abs(derivative);
    return out;
}

double Doubtful::variance() const {
    double out = 0.0;
    for (const auto& [source, change] : shared_)
        out += change * change;
    for (const Own& own : own_)
        out += own.u * own.u;
    return out;
}

double Doubtful::u() const {
    const double combined = std::sqrt(variance());
    double fourth = 0.0;
    for (const Own& own : own_)
        fourth += std::pow(own.u, 4) / own.freedom;
    const double freedom =
        fourth > 0.0 ? std::pow(combined, 4) / fourth : std::numeric_limits<double>::infinity();
    return combined * student_factor(freedom) / coverage_factor;
}

double covariance(const Doubtful& one, const Doubtful& other) {
    double out = 0.0;
    for (const auto& [source, change] : one.shared_)
        if (const auto same = other.shared_.find(source); same != other.shared_.end())
            out += change * same->second;
    return out;
}

Doubtful difference(const Doubtful& of, const Doubtful& from) {
    Doubtful out = of;
    out.value -= from.value;
    for (const auto& [source, change] : from.shared_)
        out.shared_[source] -= change;
    out.own_.insert(out.own_.end(), from.own_.begin(), from.own_.end());
    return out;
}

}  // namespace lapwing::uncertainty

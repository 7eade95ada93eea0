// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <limits>
#include <map>
#include <string>
#include <vector>

/// Results that are out together: a shared gauge, a shared assumption.
namespace lapwing::uncertainty {

/// A value with what makes it doubtful, source by source. Two values that share a source are correlated
/// through it, and it cancels in their difference as far as it moves both alike: JCGM 100, 5.2 and F.1.2.3.
/// Any unit; every u is a standard uncertainty in the value's own.
class Doubtful {
public:
    double value = 0.0;

    /// The value changes by `change` when the source is out by one standard uncertainty. Of one source only
    /// the sum of what was given counts.
    void by_source(const std::string& source, double change);
    /// What no other value shares, with its degrees of freedom.
    void by_itself(double u, double freedom = std::numeric_limits<double>::infinity());

    /// What a function makes of it, to first order: its value and its derivative there.
    [[nodiscard]] Doubtful through(double new_value, double derivative) const;

    [[nodiscard]] double variance() const;
    /// Widened for what few repeats don't know of their scatter, so that +-2 u covers what it says: Student's
    /// t at the effective degrees of freedom of Welch and Satterthwaite (JCGM 100, G.4).
    [[nodiscard]] double u() const;

    friend double covariance(const Doubtful& one, const Doubtful& other);
    friend Doubtful difference(const Doubtful& of, const Doubtful& from);

private:
    struct Own {
        double u = 0.0;
        double freedom = std::numeric_limits<double>::infinity();
    };
    std::map<std::string, double> shared_;
    std::vector<Own> own_;
};

/// Of two results that have nothing but their sources in common.
[[nodiscard]] double covariance(const Doubtful& one, const Doubtful& other);
/// of - from
[[nodiscard]] Doubtful difference(const Doubtful& of, const Doubtful& from);

}  // namespace lapwing::uncertainty

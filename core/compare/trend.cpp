// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/compare/trend.h"

#include <Eigen/Dense>
#include <cmath>

#include "core/uncertainty/coverage.h"

namespace lapwing::compare {

Line line_through(std::span<const double> places, std::span<const uncertainty::Doubtful> values) {
    const auto count = static_cast<Eigen::Index>(values.size());
    const auto at = [](Eigen::Index i) { return static_cast<std::size_t>(i); };
    Eigen::MatrixXd covariance(count, count);
    Eigen::MatrixX2d design(count, 2);
    Eigen::VectorXd observed(count);
    for (Eigen::Index i = 0; i < count; ++i) {
        design(i, 0) = 1.0;
        design(i, 1) = places[at(i)];
        observed(i) = values[at(i)].value;
        for (Eigen::Index j = 0; j < count; ++j)
            covariance(i, j) = i == j ? std::pow(values[at(i)].u(), 2)
                                      : uncertainty::covariance(values[at(i)], values[at(j)]);
    }
    const Eigen::LDLT<Eigen::MatrixXd> weights(covariance);
    const Eigen::Matrix2d normal = design.transpose() * weights.solve(design);
    const Eigen::Matrix2d of_line = normal.inverse();
    const Eigen::Vector2d line = of_line * (design.transpose() * weights.solve(observed));
    Line out;
    out.per_unit = line(1);
    out.u = std::sqrt(of_line(1, 1));
    const auto freedom = static_cast<double>(count - 2);
    if (freedom < 1.0) return out;
    const Eigen::VectorXd rest = observed - design * line;
    out.misfit = rest.dot(weights.solve(rest)) / freedom;
    if (out.misfit > 1.0)
        out.u *= std::sqrt(out.misfit) * uncertainty::student_factor(freedom) / uncertainty::coverage_factor;
    return out;
}

}  // namespace lapwing::compare

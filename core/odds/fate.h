// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <boost/random/mersenne_twister.hpp>
#include <boost/random/uniform_01.hpp>
#include <cmath>

namespace lapwing::odds {

/// Whether a proposed move of a chain is kept: always where the logarithm of what it is worth changes by 0 or
/// more, else by chance. What can't be kept any more, whatever the rest of the evidence says, is given up
/// before that is worked out. The number that decides is drawn where it would be drawn anyway, so that every
/// chain goes on as it would have.
class Fate {
public:
    Fate(boost::random::mt19937_64& random, boost::random::uniform_01<double>& uniform)
        : random_(random), uniform_(uniform) {}

    /// `most`: the change comes to no more than this.
    [[nodiscard]] bool hopeless(double most) {
        if (!(most < -rounding)) return false;
        draw();
        return most + rounding < log_drawn_;
    }
    /// The least factor on exp(`others`) that leaves hope; below it `hopeless_below` decides.
    [[nodiscard]] double least_factor(double others) {
        if (others < -rounding) draw();
        return std::exp((drawn_ ? log_drawn_ : 0.0) - rounding - others);
    }
    /// A factor is under `least`, which moves where the number was not drawn yet.
    [[nodiscard]] bool hopeless_below(double factor, double others, double& least) {
        if (drawn_) return true;
        draw();
        least = least_factor(others);
        return factor < least;
    }
    [[nodiscard]] bool keeps(double change) {
        if (change >= 0.0) return true;
        draw();
        return number_ < std::exp(change);
    }

private:
    void draw() {
        if (drawn_) return;
        drawn_ = true;
        number_ = uniform_(random_);
        log_drawn_ = std::log(number_);
    }

    static constexpr double rounding = 1e-6;
    boost::random::mt19937_64& random_;
    boost::random::uniform_01<double>& uniform_;
    bool drawn_ = false;
    double number_ = 0.0, log_drawn_ = 0.0;
};

}  // namespace lapwing::odds

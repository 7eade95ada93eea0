// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <vector>

#include "core/base/result.h"
#include "core/physics/cranking.h"

/// The cranking model of one engine as a polynomial, for sums that ask it a million times.
namespace lapwing::odds {

/// What is not known of the engine, each in standard deviations of its doubt (clamped to +-`reach`).
struct CrankDoubts {
    double ratio = 0.0;    ///< compression ratio
    double closing = 0.0;  ///< intake closing
    double heat = 0.0;     ///< heat transfer
    double speed = 0.0;
    static constexpr double reach = 3.3;

    bool operator==(const CrankDoubts&) const = default;
};

/// The range that a surface covers.
struct SurfaceRange {
    physics::CrankingCase middle;  ///< leak and oil are not looked at
    double ratio_spread = 0.025;   ///< of the logarithm of (ratio - 1)
    double closing_spread_rad = 0.0;
    double heat_spread = 0.25;    ///< of the logarithm
    double speed_spread = 0.1;    ///< of the logarithm
    double largest_oil_m3 = 0.0;  ///< 0: no wet test, no oil

    /// The case that a surface stands for at one place.
    /// A leak tells less the faster the engine turns: what it is to be divided by.
    [[nodiscard]] double leak_for_speed(const CrankDoubts& doubts) const;
    [[nodiscard]] physics::CrankingCase at(const CrankDoubts& doubts, double leak_m2, double oil_m3) const;
};

/// First and final reading, gauge Pa, as Chebyshev polynomials in leak, oil and the doubts, fitted by least
/// squares to quasi-random runs of the model. Deterministic.
class CrankSurface {
public:
    struct Pair {
        double first_pa = 0.0;
        double final_pa = 0.0;
    };

    /// Doubts fixed, what is left are polynomials in leak and oil: quick to ask.
    class Slice {
    public:
        [[nodiscard]] Pair at(double leak_m2, double oil_m3) const;
        [[nodiscard]] double final_pa(double leak_m2, double oil_m3) const;

        /// A monotone measure of the final reading along oil, with its slope; leak fixed.
        class AlongOil {
        public:
            struct Point {
                double value = 0.0;
                double slope = 0.0;  ///< by m3; nothing past the ends of what was fitted
            };
            [[nodiscard]] Point at(double oil_m3) const;

        private:
            friend class Slice;
            std::array<double, 4> terms_{};
            double largest_oil_m3_ = 0.0;
        };
        [[nodiscard]] AlongOil along_oil(double leak_m2) const;

    private:
        friend class CrankSurface;
        static constexpr int leak_terms = 11;
        static constexpr int oil_terms = 4;
        struct Scale {
            double leak_unit_m2 = 1.0, leak_reach = 1.0, largest_oil_m3 = 0.0, shift_pa = 0.0;
        };
        using Dry = std::array<double, leak_terms>;
        using Wet = std::array<double, std::size_t{leak_terms} * oil_terms>;
        [[nodiscard]] Dry along_leak(double leak_m2) const;
        /// The polynomials in leak alone that are left for this much oil.
        [[nodiscard]] Dry at_oil(const Wet& of, double oil_m3) const;
        [[nodiscard]] double pressure(const Dry& terms, const Dry& leak) const;
        Scale scale_;
        int oil_used_ = 1;
        Wet first_{};
        Wet final_{};
        Dry first_dry_{};
        Dry final_dry_{};
    };

    /// Fails as the cranking model does.
    static Result<CrankSurface> fit(const SurfaceRange& range);

    void slice(const CrankDoubts& doubts, Slice& out) const;
    [[nodiscard]] const SurfaceRange& range() const { return range_; }
    /// Above this leak hardly anything is read; the surface stays at its end.
    [[nodiscard]] double largest_leak_m2() const { return largest_leak_m2_; }
    [[nodiscard]] std::size_t terms() const { return terms_.size(); }
    [[nodiscard]] int runs() const { return runs_; }

private:
    /// Degrees in leak, oil, ratio, closing, heat, speed.
    using Degrees = std::array<std::uint8_t, 6>;
    SurfaceRange range_;
    Slice::Scale scale_;
    double largest_leak_m2_ = 0.0;
    int runs_ = 0;
    std::vector<Degrees> terms_;
    std::vector<std::uint8_t> place_;  ///< of each term in a slice
    std::vector<double> first_, final_;
    /// Terms that have the doubts' degrees in common stand together.
    struct Group {
        std::size_t begin, end;
    };
    std::vector<Group> groups_;
};

}  // namespace lapwing::odds

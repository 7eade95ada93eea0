// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <algorithm>
#include <cmath>

#include "core/findings/leak_sums.h"
#include "core/physics/leakdown_law.h"

namespace lapwing::findings {
namespace {

struct Exponent {
    double n;
    double u95;
};

std::optional<Exponent> exponent_of(const HeldOfSet& one, const HeldOfSet& other) {
    const auto at = [&](double one_held, double other_held) {
        return physics::leak_exponent({one.tester, one_held}, {other.tester, other_held});
    };
    const double first = one.held.figure.si;
    const double second = other.held.figure.si;
    const auto middle = at(first, second);
    if (!middle) return std::nullopt;
    // Each held pressure is moved by its doubt against its set pressure. What both gauges' readings share is
    // counted in both: n comes out more doubtful than it is, never less.
    const auto half = [&](bool move_first) -> std::optional<double> {
        const HeldOfSet& moved = move_first ? one : other;
        const double set = moved.tester.set_gauge_pa;
        const double u = moved.leakage.figure.u95.value_or(0.0) * set;
        const auto with = [&](double step) {
            const double held = (move_first ? first : second) + step;
            return move_first ? at(held, second) : at(first, held);
        };
        const auto more = with(u);
        const auto less = with(-u);
        if (more && less) return 0.5 * std::abs(*more - *less);
        // Next to nothing lost or held on one side: the other side alone says how steep it is.
        if (more) return std::abs(*more - *middle);
        if (less) return std::abs(*less - *middle);
        return std::nullopt;
    };
    const auto first_half = half(true);
    const auto second_half = half(false);
    if (!first_half || !second_half) return std::nullopt;
    return Exponent{*middle, std::hypot(*first_half, *second_half)};
}

/// Exponents of a long narrow gap: 0.5 where little pressure drives it, 0.9 at 100 psi.
constexpr double gap_least = 0.5;
constexpr double gap_most = 0.9;

std::string_view law_code(const Exponent& exponent) {
    const double low = exponent.n - exponent.u95;
    const double high = exponent.n + exponent.u95;
    if (high < 0.0) return "law.seats";
    if (low > gap_most) return "law.opens";
    const bool hole = low <= 0.0;
    const bool gap = high >= gap_least;
    if (hole == gap) return "law.undecided";
    return hole ? "law.hole" : "law.gap";
}

}  // namespace

std::optional<Remark> leak_law(const HeldOfSet& one, const HeldOfSet& other) {
    const auto exponent = exponent_of(one, other);
    if (!exponent) return std::nullopt;
    Derivation from;
    from.title = Word{"from:leak_law"};
    from.symbols = "n = ln(A / A′) / ln(p / p′)";
    from.inputs = {input("set", "", one.set.figure), input("held", "p", one.held.figure),
                   input("other_set_pressure", "", other.set.figure),
                   input("other_held", "p′", other.held.figure)};
    from.source = say("source.physics", std::string("isentropic nozzle flow; a narrow gap between plates"));
    Remark out = remark(law_code(*exponent), figure(Dimension::number, exponent->n, exponent->u95));
    out.from = {std::move(from)};
    return out;
}

}  // namespace lapwing::findings

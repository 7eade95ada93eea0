// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <algorithm>
#include <cmath>

#include "core/base/apart.h"
#include "core/findings/case.h"

namespace lapwing::findings {
namespace {

const LeakageBand* band_of(const Reference& reference, const std::string& id) {
    const auto found = std::ranges::find(reference.leakage, id, &LeakageBand::id);
    return found == reference.leakage.end() ? nullptr : &*found;
}

Figure share(double value, std::optional<double> u95 = {}) {
    return figure(Dimension::share, value, u95);
}

struct Leaking {
    int cylinder = 0;
    double leakage = 0.0;
    double u95 = 0.0, own_u95 = 0.0;

    /// What every reading with this tester is out by together.
    [[nodiscard]] double shared_u95() const {
        return std::sqrt(std::max(0.0, u95 * u95 - own_u95 * own_u95));
    }
};

/// Of the difference: what both are out by together cancels as far as it moves both alike.
double difference_u95(const Leaking& one, const Leaking& other) {
    return std::hypot(one.own_u95, other.own_u95, one.shared_u95() - other.shared_u95());
}

struct Apart {
    Figure most, least, difference;
};

/// Rounded so that the difference is that of the two figures beside it: to whole per cents where the doubt is
/// no smaller, to tenths where that would put it on the other side of a limit.
Apart shown_apart(const Leaking& most, const Leaking& least, const std::vector<double>& limits) {
    const double difference = most.leakage - least.leakage;
    const double doubt = difference_u95(most, least);
    const auto rounded = [](double value, double step) { return step * std::round(value / step); };
    constexpr double whole = 0.01, tenth = 0.001;
    const double wholes = rounded(most.leakage, whole) - rounded(least.leakage, whole);
    const bool crosses = std::ranges::any_of(
        limits, [&](double limit) { return is_above(wholes, limit) != is_above(difference, limit); });
    const bool coarse = doubt >= 0.5 * whole && !crosses;
    const double step = coarse ? whole : tenth;
    const double up = rounded(most.leakage, step), down = rounded(least.leakage, step);
    return {share(up), share(down), share(up - down, crosses ? std::nullopt : std::optional(doubt))};
}

/// Every cylinder's leakage on the tester that the band belongs to.
/// Not those that are to be done again: held against others they would blame one for a slip.
std::vector<Leaking> on_the_bands_tester(const std::vector<CylinderFindings>& cylinders,
                                         const std::string& band) {
    std::vector<Leaking> out;
    for (const CylinderFindings& cylinder : cylinders) {
        if (!cylinder.leak_down || asks_tdc(cylinder) || does_again(cylinder, TestKind::leak_down)) continue;
        const auto& bands = cylinder.leak_down->bands;
        const auto one = std::ranges::find(bands, band, &BandVerdict::band);
        if (one != bands.end()) out.push_back({cylinder.number, one->leakage, one->u95, one->own_u95});
    }
    return out;
}

}  // namespace

std::optional<Remark> bands_say(const std::vector<BandVerdict>& verdicts, const Reference& reference) {
    int counts[4] = {};
    Derivation from;
    from.title = Word{"from:bands"};
    for (const BandVerdict& verdict : verdicts) {
        const LeakageBand* band = band_of(reference, verdict.band);
        if (!band || band->basis.kind != BasisKind::published) continue;
        ++counts[static_cast<int>(verdict.state)];
        from.notes.push_back(say("note.band", band->basis.source, share(verdict.leakage, verdict.u95),
                                 share(band->good), share(band->borderline), word_of(verdict.state)));
    }
    const int all = counts[static_cast<int>(State::good)] + counts[static_cast<int>(State::borderline)] +
                    counts[static_cast<int>(State::fault)];
    if (all == 0) return std::nullopt;
    Remark out = remark("leak.bands", all, counts[static_cast<int>(State::good)],
                        counts[static_cast<int>(State::borderline)], counts[static_cast<int>(State::fault)]);
    out.from.push_back(std::move(from));
    return out;
}

std::vector<RuleVerdict> judge_leak_spread(const Case& at, const std::vector<CylinderFindings>& cylinders) {
    std::vector<RuleVerdict> out;
    for (const LeakageBand& band : at.reference.leakage) {
        if (!band.spread_good) continue;
        const auto leaking = on_the_bands_tester(cylinders, band.id);
        if (leaking.size() < 2) continue;
        const auto [least, most] = std::ranges::minmax_element(leaking, {}, &Leaking::leakage);
        const double difference = most->leakage - least->leakage;
        RuleVerdict verdict{band.id, !is_above(difference, *band.spread_good), State::none, {}, {}};
        if (!verdict.holds) verdict.failing = {most->cylinder};
        const double allowed = band.spread_borderline.value_or(*band.spread_good);
        const bool again = !verdict.holds && !is_above(difference, allowed);
        // No cylinder is named for a difference that may be none.
        const bool unsure = !verdict.holds && difference - difference_u95(*most, *least) < *band.spread_good;
        if (unsure) verdict.failing.clear();
        const Apart apart = shown_apart(*most, *least, {*band.spread_good, allowed});
        verdict.remark = remark(verdict.holds ? "leak.spread_holds" : "leak.spread_fails", most->cylinder,
                                apart.most, least->cylinder, apart.least,
                                figure(Dimension::gauge_pressure, band.set.si()), apart.difference);
        auto& message = verdict.remark.message;
        if (unsure)
            message.code = "leak.spread_unsure";
        else if (again)
            message.code = "leak.spread_borderline";
        if (verdict.holds || unsure || again) message.args.emplace_back(share(*band.spread_good));
        if (!verdict.holds && !unsure) message.args.emplace_back(share(allowed));
        message.args.emplace_back(band.basis.source);
        Derivation from;
        from.title = Word{"from:leak_spread"};
        from.symbols = "L_max − L_min";
        for (const Leaking& one : leaking)
            from.inputs.push_back(
                input("leakage", std::to_string(one.cylinder), share(one.leakage, one.u95)));
        from.source = source_of(band.basis);
        verdict.remark.from.push_back(std::move(from));
        out.push_back(std::move(verdict));
    }
    return out;
}

}  // namespace lapwing::findings

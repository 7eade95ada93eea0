// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <algorithm>
#include <cmath>

#include "core/odds/summary.h"

/// What a test is expected to tell: mutual information between its outcome and the main path, by nested
/// Monte Carlo over the draws (D. V. Lindley, On a measure of the information provided by an experiment,
/// 1956).
namespace lapwing::odds {
namespace {

constexpr std::size_t most_draws = 400;

double entropy_bits(const std::vector<double>& chances) {
    double all = 0.0;
    for (const double chance : chances)
        all += chance;
    double out = 0.0;
    for (const double chance : chances)
        if (chance > 0.0) out -= chance / all * std::log2(chance / all);
    return out;
}

/// One cylinder's draws, thinned, with all that predictions need.
struct Thinned {
    struct One {
        std::span<const double> z;
        EngineModel::SharedState shared;
        EngineModel::Leaks leaks;
        std::size_t main;
    };
    std::vector<One> all;
    std::size_t outcomes = 0;
    double entropy = 0.0;
};

Thinned thin(const EngineModel& model, const Draws& draws, std::size_t cylinder) {
    Thinned out;
    out.outcomes = reported_paths(model.evidence(), cylinder).size() + 1;
    std::vector<double> chances(out.outcomes, 0.0);
    const std::size_t step = std::max<std::size_t>(1, draws.count(cylinder) / most_draws);
    for (std::size_t i = 0; i < draws.count(cylinder); i += step) {
        Thinned::One one{draws.z(i), {}, model.leaks(draws.z(i), cylinder), draws.main(cylinder)[i]};
        model.shared(one.z, one.shared);
        chances[one.main] += 1.0;
        out.all.push_back(std::move(one));
    }
    out.entropy = entropy_bits(chances);
    return out;
}

/// `weight(i, j)`: likelihood, were draw j true, of what draw i gave rise to.
template <class Weight>
double gain_bits(const Thinned& draws, Weight weight) {
    double left = 0.0;
    std::vector<double> chances(draws.outcomes);
    for (std::size_t i = 0; i < draws.all.size(); ++i) {
        std::ranges::fill(chances, 0.0);
        // Itself is left out, since it fits what it gave rise to better than chance would have it.
        for (std::size_t j = 0; j < draws.all.size(); ++j)
            if (j != i) chances[draws.all[j].main] += weight(i, j);
        double all = 0.0;
        for (const double chance : chances)
            all += chance;
        left += all > 1e-300 ? entropy_bits(chances) : 0.0;
    }
    return std::max(draws.entropy - left / static_cast<double>(draws.all.size()), 0.0);
}

struct Predicted {
    double mean = 0.0;
    double noise = 1.0;
};

double density(double seen, const Predicted& predicted) {
    const double off = (seen - predicted.mean) / predicted.noise;
    return std::exp(-0.5 * off * off) / predicted.noise;
}

double gain_of_reading(const EngineModel& model, const Thinned& draws, std::size_t cylinder,
                       const CrankEvidence& like, Random& random) {
    std::vector<Predicted> predicted;
    for (const auto& one : draws.all) {
        const double final =
            model.reading(one.z, one.shared, model.cylinders()[cylinder], one.leaks, like).final_pa;
        predicted.push_back({final, model.crank_noise_pa(final, like)});
    }
    std::vector<double> seen;
    for (const Predicted& one : predicted)
        seen.push_back(one.mean + one.noise * random.normal());
    return gain_bits(draws, [&](std::size_t i, std::size_t j) { return density(seen[i], predicted[j]); });
}

/// What would be heard at exits that nobody listened at yet.
class ToHear {
public:
    ToHear(const EngineModel& model, const Thinned& draws, std::size_t cylinder,
           const std::vector<ExitEvidence>& exits, Random& random)
        : chances_(draws.all.size()), heard_(draws.all.size()) {
        for (std::size_t i = 0; i < draws.all.size(); ++i) {
            const auto& one = draws.all[i];
            for (const ExitEvidence& exit : exits) {
                chances_[i].push_back(
                    model.loudness(one.z, one.shared, model.cylinders()[cylinder], one.leaks, exit));
                double u = random.uniform();
                std::size_t word = 0;
                while (word < 3 && u >= chances_[i].back()[word])
                    u -= chances_[i].back()[word++];
                heard_[i].push_back(word);
            }
        }
    }

    /// How likely it is, were draw j true, that what draw i gives rise to is heard.
    [[nodiscard]] double likelihood(std::size_t i, std::size_t j) const {
        double out = 1.0;
        for (std::size_t exit = 0; exit < heard_[i].size(); ++exit)
            out *= chances_[j][exit][heard_[i][exit]];
        return out;
    }

private:
    std::vector<std::vector<std::array<double, 4>>> chances_;
    std::vector<std::vector<std::size_t>> heard_;
};

/// What the gauge would hold. Whoever puts the air on listens as well: what would be heard comes with it.
double gain_of_leak_down(const EngineModel& model, const Thinned& draws, std::size_t cylinder,
                         const std::vector<ExitEvidence>& exits, Random& random) {
    std::vector<Predicted> predicted;
    std::vector<double> seen;
    for (const auto& one : draws.all) {
        const auto held =
            model.held(one.z, one.shared, model.cylinders()[cylinder], one.leaks, model.evidence().leak_like);
        predicted.push_back({held.shown_pa, held.noise_pa});
        seen.push_back(held.shown_pa + held.noise_pa * random.normal());
    }
    const ToHear to_hear(model, draws, cylinder, exits, random);
    return gain_bits(draws, [&](std::size_t i, std::size_t j) {
        return density(seen[i], predicted[j]) * to_hear.likelihood(i, j);
    });
}

double gain_of_listening(const EngineModel& model, const Thinned& draws, std::size_t cylinder,
                         const std::vector<ExitEvidence>& exits, Random& random) {
    const ToHear to_hear(model, draws, cylinder, exits, random);
    return gain_bits(draws, [&](std::size_t i, std::size_t j) { return to_hear.likelihood(i, j); });
}

}  // namespace

std::vector<NextTest> next_tests(const EngineModel& model, const Draws& draws, bool diesel, Random& random) {
    using findings::Action;
    std::vector<NextTest> out;
    const Evidence& evidence = model.evidence();
    for (std::size_t c = 0; c < evidence.cylinders.size(); ++c) {
        const CylinderEvidence& own = evidence.cylinders[c];
        const Thinned all = thin(model, draws, c);
        const auto add = [&](Action test, double bits) { out.push_back({test, own.number, bits}); };
        const bool lonely = evidence.compare_only && evidence.cylinders.size() == 1;
        if (evidence.cranking && !own.dry && !lonely)
            add(Action::dry, gain_of_reading(model, all, c, evidence.crank_like, random));
        // Without the air of a leak-down there is nothing to listen to.
        const bool air_on = !own.leaks.empty();
        if (!air_on) add(Action::leak_down, gain_of_leak_down(model, all, c, own.to_hear, random));
        if (air_on && !own.to_hear.empty())
            add(Action::listen, gain_of_listening(model, all, c, own.to_hear, random));
        // Leak-down comes before oil: a wet test spoils every later reading.
        if (evidence.cranking && own.dry && !own.wet && !own.leaks.empty() && !diesel) {
            CrankEvidence wet = evidence.crank_like;
            wet.seal = 1.0;
            add(Action::wet, gain_of_reading(model, all, c, wet, random));
        }
    }
    std::ranges::stable_sort(out, std::greater{}, &NextTest::gain_bits);
    return out;
}

}  // namespace lapwing::odds

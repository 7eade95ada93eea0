// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/odds/summary.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numeric>

#include "core/findings/case.h"

namespace lapwing::odds {
namespace {

using findings::Path;

double mean(std::span<const float> values) {
    return std::accumulate(values.begin(), values.end(), 0.0) / static_cast<double>(values.size());
}

template <class Number>
Interval interval(std::vector<Number> values) {
    Interval out;
    out.mean = std::accumulate(values.begin(), values.end(), 0.0) / static_cast<double>(values.size());
    const auto quantile = [&](double at) {
        const auto place =
            values.begin() + static_cast<std::ptrdiff_t>(at * static_cast<double>(values.size() - 1));
        std::ranges::nth_element(values, place);
        return static_cast<double>(*place);
    };
    out.lo = quantile(0.05);
    out.hi = quantile(0.95);
    return out;
}

/// Every so many draws, so that at most `most` are looked at.
template <class Use>
void thinned(std::size_t count, std::size_t most, Use use) {
    const std::size_t step = std::max<std::size_t>(1, (count + most - 1) / most);
    for (std::size_t i = 0; i < count; i += step)
        use(i);
}

/// What goes into the readings to expect after one repair, and what they are doubtful by: the part when
/// sound, the day, the gauge, and what is not known of all the rest.
struct Behind {
    std::vector<double> part, sound;  ///< leak areas, m2
    double rest = 0.0, now = 0.0;     ///< sums over the draws

    void add(double reading, double with_typical_part, double by_day, double noise) {
        sum_ += with_typical_part;
        squares_ += with_typical_part * with_typical_part;
        part_ += std::pow(reading - with_typical_part, 2);
        day_ += by_day * by_day;
        gauge_ += noise * noise;
    }

    [[nodiscard]] std::vector<findings::DoubtShare> doubts() const {
        const auto count = static_cast<double>(part.size());
        const double rest_of_it = std::max(squares_ - sum_ * sum_ / count, 0.0);
        const double all = rest_of_it + part_ + day_ + gauge_;
        std::vector<findings::DoubtShare> out;
        for (const auto& [name, variance] :
             {std::pair("doubt:rest_of_engine", rest_of_it), std::pair("doubt:sound_part", part_),
              std::pair("doubt:day", day_), std::pair("doubt:gauge_and_test", gauge_)})
            if (all > 0.0) out.push_back({findings::Word{name}, variance / all});
        std::ranges::stable_sort(out, std::greater{}, &findings::DoubtShare::share);
        return out;
    }

private:
    double sum_ = 0.0, squares_ = 0.0, part_ = 0.0, day_ = 0.0, gauge_ = 0.0;
};

/// The likeliest of several outcomes, the last of which is "seals well".
std::pair<std::optional<Path>, double> likeliest(const std::vector<double>& chances,
                                                 const std::vector<PathOdds>& paths) {
    const auto best = static_cast<std::size_t>(std::ranges::max_element(chances) - chances.begin());
    return {best < paths.size() ? std::optional(paths[best].path) : std::nullopt, chances[best]};
}

UnderOther under(const OtherAssumptions& other, const EngineModel& model, const Draws& draws,
                 std::size_t cylinder, const std::vector<PathOdds>& paths, double effective) {
    Assumptions changed = model.assumptions();
    for (const auto& [id, value] : other.change)
        changed.set(id, value);
    const auto& evidence = model.evidence().cylinders[cylinder];
    const auto& place = model.cylinders()[cylinder];
    std::vector<PathPlace> places = place.all;
    std::vector<AreaPrior> priors;
    const auto prior_of = [&](Path path, double odds) {
        priors.push_back(area_prior(changed, path, model.evidence().bore_m, odds));
    };
    for (std::size_t i = 0; i < places.size(); ++i)
        i < place.own.size() ? prior_of(evidence.paths[i], evidence.fault_odds[i])
                             : prior_of(Path::next_cylinder, 1.0);
    // What was touched since was drawn from the same assumptions.
    for (std::size_t k = 0; k < place.earlier.size(); ++k)
        for (std::size_t i = 0; i < evidence.paths.size(); ++i) {
            if (evidence.earlier[k].same[i]) continue;
            places.push_back(place.earlier[k].all[i]);
            prior_of(evidence.paths[i], evidence.earlier[k].fault_odds[i]);
        }
    std::vector<double> chances(paths.size() + 1, 0.0);
    double squares = 0.0, count = 0.0;
    thinned(draws.count(cylinder), 4000, [&](std::size_t draw) {
        const auto z = draws.z(draw);
        double weight = 1.0;
        for (std::size_t i = 0; i < places.size(); ++i) {
            const AreaPrior& old = model.prior(places[i]);
            if (priors[i] == old) continue;
            const double log_area = model.log_area(z, places[i]);
            const double fault = old.fault_given(log_area);
            weight *= fault * priors[i].fault / old.fault +
                      (1.0 - fault) * (1.0 - priors[i].fault) / (1.0 - old.fault);
        }
        chances[draws.main(cylinder)[draw]] += weight;
        squares += weight * weight;
        count += 1.0;
    });
    const double all = std::accumulate(chances.begin(), chances.end(), 0.0);
    // As many draws as the weights leave of those that count.
    const double left = all * all / (squares * count);
    for (double& chance : chances)
        chance /= all;
    const auto [main, chance] = likeliest(chances, paths);
    return {other.id, other.text, main, chance, std::min(effective, count) * left};
}

}  // namespace

CylinderOdds summarise(const EngineModel& model, const Draws& draws, std::size_t cylinder) {
    CylinderOdds out;
    const auto& evidence = model.evidence().cylinders[cylinder];
    out.number = evidence.number;
    out.measured = !evidence.empty() || !evidence.earlier.empty();
    const auto paths = reported_paths(model.evidence(), cylinder);
    const auto mains = draws.main(cylinder);
    std::vector<double> chances(paths.size() + 1, 0.0);
    for (const std::uint8_t main : mains)
        chances[main] += 1.0 / static_cast<double>(draws.count(cylinder));
    for (std::size_t path = 0; path < paths.size(); ++path) {
        const auto share = draws.share(cylinder, path);
        out.paths.push_back({paths[path], interval(std::vector<float>(share.begin(), share.end())),
                             chances[path], mean(draws.fault(cylinder, path))});
    }
    out.seals_well = chances.back();
    const auto area = draws.area(cylinder);
    out.leak_area_m2 = interval(std::vector<float>(area.begin(), area.end()));
    std::tie(out.main, out.main_chance) = likeliest(chances, out.paths);
    out.effective_samples = draws.effective(cylinder);
    for (const OtherAssumptions& other : model.assumptions().others) {
        out.under_others.push_back(under(other, model, draws, cylinder, out.paths, out.effective_samples));
        if (out.under_others.back().main != out.main) out.depends_on_assumptions = true;
    }
    return out;
}

std::vector<AfterRepair> after_repairs(const EngineModel& model, const Draws& draws, std::size_t cylinder,
                                       bool diesel, Random& random) {
    std::vector<AfterRepair> out;
    const Evidence& evidence = model.evidence();
    const CylinderEvidence& own = evidence.cylinders[cylinder];
    if (!evidence.cranking || diesel || (evidence.compare_only && !own.dry)) return out;
    CrankEvidence like = own.dry ? *own.dry : evidence.crank_like;
    like.first_pa.reset();
    like.other_hoses.clear();
    like.seal = 0.0;
    like.oil_put_in_m3 = 0.0;
    like.repeats = 1;
    const auto& place = model.cylinders()[cylinder];
    const double day = model.assumptions().at("day-scatter");
    const auto head = [&](std::size_t path) {
        return path >= own.paths.size() || own.paths[path] == Path::gasket ||
               own.paths[path] == Path::coolant;
    };
    std::vector<Path> repairs = own.paths;
    std::erase(repairs, Path::coolant);  // comes with the gasket
    std::vector<std::vector<double>> readings(repairs.size());
    std::vector<Behind> behind(repairs.size());
    thinned(draws.count(cylinder), 800, [&](std::size_t draw) {
        const auto z = draws.z(draw);
        EngineModel::SharedState shared;
        model.shared(z, shared);
        const auto as_it_is = model.leaks(z, cylinder);
        for (std::size_t repair = 0; repair < repairs.size(); ++repair) {
            auto leaks = as_it_is;
            auto typical = as_it_is;
            double part = 0.0, sound = 0.0;
            for (std::size_t path = 0; path < place.all.size(); ++path) {
                const bool repaired = repairs[repair] == Path::gasket
                                          ? head(path)
                                          : path < own.paths.size() && own.paths[path] == repairs[repair];
                if (!repaired) continue;
                const double before =
                    leaks.path_m2[path] * std::exp(model.static_to_cranking() * z[place.all[path].cranking]);
                const AreaPrior& prior = model.prior(place.all[path]);
                const double standing = std::exp(prior.sound_mean + prior.sound_spread * random.normal());
                const double after = standing * std::exp(model.static_to_cranking() * random.normal());
                leaks.cranking_m2 += after - before;
                if (path == 0) leaks.cranking_rings_m2 = after;
                const double middle = std::exp(prior.sound_mean);
                typical.cranking_m2 += middle - before;
                if (path == 0) typical.cranking_rings_m2 = middle;
                part += leaks.path_m2[path];
                sound += standing;
            }
            const double mean = model.reading(z, shared, place, leaks, like).final_pa;
            const double noise = model.crank_noise_pa(mean, like);
            readings[repair].push_back(mean * std::exp(day * random.normal()) + noise * random.normal());
            Behind& of = behind[repair];
            of.part.push_back(part);
            of.sound.push_back(sound);
            of.rest += as_it_is.standing_m2 - part;
            of.now += model.reading(z, shared, place, as_it_is, like).final_pa;
            of.add(mean, model.reading(z, shared, place, typical, like).final_pa, day * mean, noise);
        }
    });
    for (std::size_t repair = 0; repair < repairs.size(); ++repair) {
        const Interval range = interval(readings[repair]);
        const auto middle =
            readings[repair].begin() + static_cast<std::ptrdiff_t>(readings[repair].size() / 2);
        std::ranges::nth_element(readings[repair], middle);
        const Behind& of = behind[repair];
        const auto count = static_cast<double>(of.part.size());
        out.push_back({repairs[repair], *middle, std::max(range.lo, 0.0), range.hi,
                       repairs[repair] != Path::rings, interval(of.part), interval(of.sound), of.rest / count,
                       of.now / count, of.doubts()});
    }
    return out;
}

std::vector<findings::Message> misfits(const EngineModel& model, const Draws& draws, std::size_t cylinder) {
    const CylinderEvidence& own = model.evidence().cylinders[cylinder];
    const EngineModel::State& newest = model.cylinders()[cylinder];
    double dry = 0.0, wet = 0.0, count = 0.0;
    std::vector<double> held(own.leaks.size(), 0.0);
    thinned(draws.count(cylinder), 300, [&](std::size_t draw) {
        const auto z = draws.z(draw);
        EngineModel::SharedState shared;
        model.shared(z, shared);
        const auto leaks = model.leaks(z, cylinder);
        const auto off = [&](const CrankEvidence& read) {
            const double final = model.reading(z, shared, newest, leaks, read).final_pa;
            return (read.final_pa - final) / model.crank_noise_pa(final, read);
        };
        count += 1.0;
        if (own.dry) dry += off(*own.dry);
        if (own.wet) wet += off(*own.wet);
        for (std::size_t i = 0; i < own.leaks.size(); ++i) {
            const auto expected = model.held(z, shared, newest, leaks, own.leaks[i]);
            held[i] += (own.leaks[i].held_pa - expected.shown_pa) / expected.noise_pa;
        }
    });
    double leak = 0.0;
    for (const double one : held)
        leak = std::max(leak, std::abs(one));
    std::array tests{std::pair(std::abs(dry), TestKind::dry), std::pair(leak, TestKind::leak_down),
                     std::pair(std::abs(wet), TestKind::wet)};
    std::ranges::stable_sort(tests, std::greater{}, [](const auto& test) { return test.first; });
    const double far = model.assumptions().at("does-not-fit");
    std::vector<findings::Message> out;
    for (const auto& [off, test] : tests)
        if (off / count > far)
            out.push_back(findings::say("odds.does_not_fit", own.number, findings::word_of(test)));
    return out;
}

}  // namespace lapwing::odds

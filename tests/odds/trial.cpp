// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/odds/trial.h"

#include <algorithm>
#include <atomic>
#include <boost/math/distributions/chi_squared.hpp>
#include <chrono>
#include <cmath>
#include <numeric>
#include <stdexcept>
#include <thread>

#include "core/odds/summary.h"
#include "core/odds/surface_cache.h"

namespace lapwing::odds::trial {
namespace {

/// No chance is taken as nothing: a log score must not hang on how many draws there were.
double smoothed(double chance, std::size_t outcomes) {
    constexpr double floor = 0.002;
    return (chance + floor) / (1.0 + floor * static_cast<double>(outcomes));
}

std::size_t truth_of(const TrueCylinder& one, double seals_well_m2) {
    return one.total_m2() < seals_well_m2 ? one.paths.size() : one.largest();
}

/// Rank of the truth among about a hundred draws far enough apart to be independent.
template <class Value>
double rank(std::size_t count, double truth, Value value) {
    constexpr std::size_t wanted = 99;
    const std::size_t step = std::max<std::size_t>(1, count / wanted);
    int below = 0;
    int all = 0;
    for (std::size_t i = step / 2; i < count; i += step) {
        below += value(i) < truth ? 1 : 0;
        ++all;
    }
    return (below + 0.5) / (all + 1.0);
}

Score score_of(const EngineModel& model, const Draws& draws, const Drawn& drawn, std::size_t cylinder,
               const Baselines& baselines, std::uint64_t seed) {
    const TrueCylinder& truth = drawn.cylinders[cylinder];
    const CylinderOdds odds = summarise(model, draws, cylinder);
    Score out;
    const std::size_t outcomes = truth.paths.size() + 1;
    out.truth = truth_of(truth, seals_well_area_m2(model.assumptions()));
    const double chance = out.truth < truth.paths.size() ? odds.paths[out.truth].main : odds.seals_well;
    out.log_score = std::log(smoothed(chance, outcomes));
    const std::size_t likeliest =
        odds.main ? static_cast<std::size_t>(std::ranges::find(odds.paths, *odds.main, &PathOdds::path) -
                                             odds.paths.begin())
                  : truth.paths.size();
    out.right = likeliest == out.truth;
    out.said = odds.main_chance;
    out.effective = odds.effective_samples;
    out.few_draws = !enough_draws(odds);
    const RuleOutcome rule = rules_of_thumb(drawn, cylinder);
    out.loudest_right = rule.loudest == out.truth;
    out.loudest_log_score =
        std::log(smoothed(baselines.loudest.chance(rule.loudest_seen, out.truth), outcomes));
    out.wet_log_score = std::log(smoothed(baselines.wet.chance(rule.wet_seen, out.truth), outcomes));
    const double total = truth.total_m2();
    for (std::size_t path = 0; path < truth.paths.size(); ++path) {
        const double share = truth.area_m2[path] / total;
        out.share_inside.push_back(share >= odds.paths[path].share.lo && share <= odds.paths[path].share.hi);
        out.ranks.push_back(rank(draws.count(cylinder), share,
                                 [&](std::size_t i) { return draws.share(cylinder, path)[i]; }));
    }
    out.ranks.push_back(
        rank(draws.count(cylinder), total, [&](std::size_t i) { return draws.area(cylinder)[i]; }));
    Random random(seed);
    const auto after = after_repairs(model, draws, cylinder, false, random);
    for (std::size_t i = 0; i < after.size(); ++i) {
        const double reads = drawn.after_repair_pa[cylinder][i];
        out.after_inside.push_back(reads >= after[i].lo_pa && reads <= after[i].hi_pa);
    }
    return out;
}

}  // namespace

void HitRates::count(const std::string& seen, std::size_t truth) {
    auto& row = counts_[seen];
    row.resize(outcomes_, 0.5);
    row[truth] += 1.0;
}

double HitRates::chance(const std::string& seen, std::size_t truth) const {
    const auto row = counts_.find(seen);
    if (row == counts_.end()) return 1.0 / static_cast<double>(outcomes_);
    return row->second[truth] / std::accumulate(row->second.begin(), row->second.end(), 0.0);
}

Baselines count_baselines(const Assumptions& assumptions, const findings::Reference& reference, int engines) {
    Baselines out;
    const double seals_well = seals_well_area_m2(assumptions);
    for (int i = 0; i < engines; ++i) {
        const Drawn drawn =
            draw(assumptions, reference, {}, {}, 900'000'000ULL + static_cast<std::uint64_t>(i));
        for (std::size_t c = 0; c < drawn.cylinders.size(); ++c) {
            const std::size_t truth = truth_of(drawn.cylinders[c], seals_well);
            const RuleOutcome rule = rules_of_thumb(drawn, c);
            out.loudest.count(rule.loudest_seen, truth);
            out.wet.count(rule.wet_seen, truth);
        }
    }
    return out;
}

const std::vector<std::string>& rank_names() {
    static const std::vector<std::string> names{"rings",   "intake",        "exhaust",  "gasket",
                                                "coolant", "next cylinder", "leak area"};
    return names;
}

Result run(const Assumptions& assumptions, const findings::Reference& reference, const Baselines& baselines,
           const World& world, TestsMade which, int engines, std::uint64_t seed) {
    Result out;
    out.scores.resize(2 * static_cast<std::size_t>(engines));
    SurfaceCache surfaces;
    std::atomic<int> next{0};
    std::mutex slowest;
    std::string failed;
    const auto work = [&] {
        for (int i = next++; i < engines; i = next++) {
            // Each engine has numbers of its own, whichever thread takes it.
            const std::uint64_t own = seed * 1'000'003ULL + static_cast<std::uint64_t>(i);
            Tests tests;
            if (which != TestsMade::all) {
                std::mt19937_64 pick(own ^ 0x5bd1e995ULL);
                const auto made = [&](int of_ten) { return static_cast<int>(pick() % 10) < of_ten; };
                tests = {made(9), made(5), made(8), made(5), made(7)};
                tests.staked = which == TestsMade::then_staked;
                tests.wet = tests.wet && !tests.staked;
            }
            const Drawn drawn = draw(assumptions, reference, world, tests, own);
            const Evidence evidence =
                evidence_of(drawn.dossier, drawn.dossier.visits.front(), reference, assumptions, {});
            const auto surface = surfaces.surface(*evidence.cranking);
            if (!surface) {
                const std::lock_guard lock(slowest);
                failed = surface.error().english;
                return;
            }
            const auto begun = std::chrono::steady_clock::now();
            const EngineModel model(evidence, assumptions, {surface->get()});
            const auto draws = Draws::make(model, own, {});
            const double took =
                std::chrono::duration<double>(std::chrono::steady_clock::now() - begun).count();
            for (std::size_t c = 0; c < 2; ++c)
                out.scores[2 * static_cast<std::size_t>(i) + c] =
                    score_of(model, *draws, drawn, c, baselines, own + c);
            const std::lock_guard lock(slowest);
            out.seconds = std::max(out.seconds, took);
        }
    };
    std::thread other(work);
    work();
    other.join();
    if (!failed.empty()) throw std::runtime_error(failed);
    return out;
}

double Result::share_coverage(std::size_t path) const {
    const auto inside =
        std::ranges::count_if(scores, [&](const Score& one) { return one.share_inside[path]; });
    return static_cast<double>(inside) / static_cast<double>(scores.size());
}

double Result::least_coverage() const {
    double out = 1.0;
    for (std::size_t path = 0; path < scores.front().share_inside.size(); ++path)
        out = std::min(out, share_coverage(path));
    return out;
}

double Result::after_coverage() const {
    double inside = 0.0, all = 0.0;
    for (const Score& one : scores)
        for (const bool is : one.after_inside) {
            inside += is ? 1.0 : 0.0;
            all += 1.0;
        }
    return all > 0.0 ? inside / all : 0.0;
}

double Result::accuracy() const {
    return static_cast<double>(std::ranges::count(scores, true, &Score::right)) /
           static_cast<double>(scores.size());
}

double Result::loudest_accuracy() const {
    return static_cast<double>(std::ranges::count(scores, true, &Score::loudest_right)) /
           static_cast<double>(scores.size());
}

double Result::mean(double Score::*of) const {
    double sum = 0.0;
    for (const Score& one : scores)
        sum += one.*of;
    return sum / static_cast<double>(scores.size());
}

double Result::behind_loudest() const {
    double sum = 0.0, squares = 0.0;
    for (const Score& one : scores) {
        const double off = (one.loudest_right ? 1.0 : 0.0) - (one.right ? 1.0 : 0.0);
        sum += off;
        squares += off * off;
    }
    const auto count = static_cast<double>(scores.size());
    const double variance = squares / count - sum / count * (sum / count);
    return variance > 0.0 ? sum / count / std::sqrt(variance / count) : 0.0;
}

Result::Shown Result::shown_at_least(int percent) const {
    Shown out;
    for (const Score& one : scores)
        if (shown_percent(one.said) >= percent) {
            ++out.count;
            out.right += one.right ? 1.0 : 0.0;
        }
    if (out.count > 0) out.right /= out.count;
    return out;
}

std::vector<int> Result::rank_histogram(std::size_t name, std::size_t bins) const {
    std::vector<int> out(bins, 0);
    // One cylinder of each engine: the two share much and are not independent.
    for (std::size_t i = 0; i < scores.size(); i += 2)
        ++out[std::min(static_cast<std::size_t>(scores[i].ranks[name] * static_cast<double>(bins)),
                       bins - 1)];
    return out;
}

double Result::rank_p(std::size_t name, std::size_t bins) const {
    const auto histogram = rank_histogram(name, bins);
    const double expected = static_cast<double>(scores.size() / 2) / static_cast<double>(bins);
    double chi = 0.0;
    for (const int count : histogram)
        chi += (count - expected) * (count - expected) / expected;
    const boost::math::chi_squared of(static_cast<double>(bins - 1));
    return boost::math::cdf(boost::math::complement(of, chi));
}

std::vector<World> other_worlds() {
    std::vector<World> out;
    const auto add = [&](const char* name) -> World& {
        World world;
        world.name = name;
        out.push_back(world);
        return out.back();
    };
    add("rings at fault in 60 %").change = {{"rings-fault", 0.60}};
    add("leaks twice as large").leaks = 2.0;
    add("10 to 60 % of the oil kept").oil_kept = {0.10, 0.60};
    add("10 % of the notes one step off").notes_a_step_off = 0.10;
    add("ears twice as noisy").change = {{"hearing", 0.70}};
    add("gauge 5 % low").gauge_shows = 0.95;
    add("static to cranking 0.6").change = {{"static-to-cranking", 0.6}};
    add("laminar rings").laminar_rings = true;
    add("compression ratio 5 % off").ratio_is = 1.05;
    add("nobody listened").listened = false;
    return out;
}

}  // namespace lapwing::odds::trial

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iostream>
#include <opencv2/imgcodecs.hpp>
#include <opencv2/imgproc.hpp>

#include "tests/odds/trial.h"

/// The odds held against many drawn engines: odds_trial FOLDER [ENGINES [SEED]] writes report.md and plots,
/// and fails where something that is wanted was missed.
namespace lapwing::odds::trial {
namespace {

constexpr int bin_px = 24;
constexpr int plot_px = 160;

cv::Mat sheet(int width, int height) {
    return cv::Mat(height, width, CV_8UC3, cv::Scalar(255, 255, 255));
}

void label(cv::Mat& on, const std::string& text, int x, int y) {
    cv::putText(on, text, {x, y}, cv::FONT_HERSHEY_SIMPLEX, 0.45, cv::Scalar(40, 40, 40), 1, cv::LINE_AA);
}

/// One histogram below the other; the line is where bars should end, the band two standard deviations.
void plot_ranks(const Result& result, const std::filesystem::path& file) {
    constexpr std::size_t bins = 20;
    const auto engines = static_cast<double>(result.scores.size() / 2);
    const double expected = engines / bins;
    const double band = 2.0 * std::sqrt(expected * (1.0 - 1.0 / bins));
    const auto names = rank_names();
    cv::Mat on = sheet(160 + bin_px * static_cast<int>(bins), static_cast<int>(names.size()) * plot_px + 10);
    const auto height = [&](double count) {
        return static_cast<int>(count / (2.5 * expected) * (plot_px - 30));
    };
    for (std::size_t name = 0; name < names.size(); ++name) {
        const int floor = static_cast<int>(name + 1) * plot_px;
        label(on, names[name], 8, floor - plot_px / 2);
        cv::rectangle(on, {140, floor - height(expected + band)},
                      {140 + bin_px * static_cast<int>(bins), floor - height(expected - band)},
                      cv::Scalar(225, 225, 225), cv::FILLED);
        const auto counts = result.rank_histogram(name, bins);
        for (std::size_t bin = 0; bin < bins; ++bin) {
            const int left = 140 + bin_px * static_cast<int>(bin);
            cv::rectangle(on, {left + 2, floor - height(counts[bin])}, {left + bin_px - 2, floor},
                          cv::Scalar(150, 110, 40), cv::FILLED);
        }
        cv::line(on, {140, floor - height(expected)},
                 {140 + bin_px * static_cast<int>(bins), floor - height(expected)}, cv::Scalar(0, 0, 0));
    }
    cv::imwrite(file.string(), on);
}

/// What was said against how often it was so.
void plot_said(const Result& result, const std::filesystem::path& file) {
    constexpr int size = 420;
    constexpr int edge = 50;
    cv::Mat on = sheet(size + 2 * edge, size + 2 * edge);
    const auto at = [&](double said, double was) {
        return cv::Point(edge + static_cast<int>(said * size), edge + static_cast<int>((1.0 - was) * size));
    };
    cv::rectangle(on, at(0, 1), at(1, 0), cv::Scalar(0, 0, 0));
    cv::line(on, at(0, 0), at(1, 1), cv::Scalar(180, 180, 180));
    label(on, "said", edge + size / 2, size + edge + 30);
    label(on, "right", 4, edge + size / 2);
    for (int step = 3; step < 10; ++step) {
        double said = 0.0, right = 0.0;
        int count = 0;
        for (const Score& one : result.scores)
            if (one.said >= 0.1 * step && one.said < 0.1 * (step + 1) + (step == 9 ? 1.0 : 0.0)) {
                said += one.said;
                right += one.right ? 1.0 : 0.0;
                ++count;
            }
        if (count < 5) continue;
        said /= count;
        right /= count;
        const double error = 2.0 * std::sqrt(right * (1.0 - right) / count);
        cv::line(on, at(said, std::max(right - error, 0.0)), at(said, std::min(right + error, 1.0)),
                 cv::Scalar(150, 110, 40), 2);
        cv::circle(on, at(said, right), 5, cv::Scalar(150, 110, 40), cv::FILLED, cv::LINE_AA);
    }
    cv::imwrite(file.string(), on);
}

std::string row(const World& world, const Result& result) {
    const auto shown = result.shown_at_least(90);
    const auto few = std::ranges::count(result.scores, true, &Score::few_draws);
    std::string out = fmt::format(
        "| {} | {:.1f} | {:.1f} | {:.1f} | {:.3f} | {:.3f} | {:.3f} | {:.1f} | {:.1f} of {} | {:.1f} |",
        world.name, 100 * result.accuracy(), 100 * result.loudest_accuracy(), result.behind_loudest(),
        result.mean(&Score::log_score), result.mean(&Score::loudest_log_score),
        result.mean(&Score::wet_log_score), 100 * result.after_coverage(), 100 * shown.right, shown.count,
        100.0 * static_cast<double>(few) / static_cast<double>(result.scores.size()));
    for (std::size_t path = 0; path < result.scores.front().share_inside.size(); ++path)
        out += fmt::format(" {:.1f} |", 100 * result.share_coverage(path));
    return out + "\n";
}

/// What is asked of a world, in words where it was missed.
std::vector<std::string> missed(const World& world, const Result& result, bool as_assumed) {
    std::vector<std::string> out;
    const auto want = [&](bool good, const std::string& what) {
        if (!good) out.push_back(fmt::format("{}: {}", world.name, what));
    };
    const auto between = [&](double share, double least, double most, const std::string& what) {
        want(share >= least && share <= most, fmt::format("{} {:.1f} %, wanted {:.0f} to {:.0f} %", what,
                                                          100 * share, 100 * least, 100 * most));
    };
    for (std::size_t path = 0; path < result.scores.front().share_inside.size(); ++path)
        between(result.share_coverage(path), as_assumed ? 0.85 : 0.80, as_assumed ? 0.95 : 1.0,
                "intervals hold the share of " + rank_names()[path] + " in");
    if (as_assumed) {
        between(result.after_coverage(), 0.85, 0.95, "readings after a repair inside in");
        between(result.shown_at_least(90).right, 0.9, 1.0, "right where it showed 90 % or more in");
    }
    const double few = static_cast<double>(std::ranges::count(result.scores, true, &Score::few_draws)) /
                       static_cast<double>(result.scores.size());
    want(few < 0.03, fmt::format("unsure for want of draws in {:.1f} %, wanted under 3 %", 100 * few));
    want(result.behind_loudest() <= 2.0, "main path worse than the loudest exit");
    want(result.mean(&Score::log_score) > result.mean(&Score::loudest_log_score),
         "log score below the loudest exit's");
    want(result.mean(&Score::log_score) > result.mean(&Score::wet_log_score),
         "log score below the wet rule's");
    return out;
}

/// Shares inside their 90 % interval, world by world; the line is at 80 %, the mark at 90 %.
void plot_worlds(const std::vector<std::pair<std::string, Result>>& worlds,
                 const std::filesystem::path& file) {
    constexpr int left = 260;
    constexpr int width = 400;
    constexpr int row_px = 26;
    cv::Mat on = sheet(left + width + 20, row_px * static_cast<int>(worlds.size()) + 40);
    const auto x = [&](double share) { return left + static_cast<int>((share - 0.5) * 2.0 * width); };
    const int floor = row_px * static_cast<int>(worlds.size()) + 10;
    cv::line(on, {x(0.8), 0}, {x(0.8), floor}, cv::Scalar(60, 60, 200));
    cv::line(on, {x(0.9), 0}, {x(0.9), floor}, cv::Scalar(180, 180, 180));
    for (const double share : {0.5, 0.8, 0.9, 1.0})
        label(on, fmt::format("{:.0f}", 100 * share), x(share) - 10, floor + 20);
    for (std::size_t row = 0; row < worlds.size(); ++row) {
        const int y = row_px * static_cast<int>(row) + row_px / 2 + 4;
        label(on, worlds[row].first, 8, y + 4);
        const Result& result = worlds[row].second;
        for (std::size_t path = 0; path < result.scores.front().share_inside.size(); ++path)
            cv::circle(on, {x(std::max(result.share_coverage(path), 0.5)), y}, 4, cv::Scalar(150, 110, 40),
                       cv::FILLED, cv::LINE_AA);
    }
    cv::imwrite(file.string(), on);
}

/// So many engines as the assumptions have them, a third from each of three seeds.
std::vector<Result> run_seeds(const Assumptions& assumptions, const findings::Reference& reference,
                              const Baselines& baselines, TestsMade made, int engines, std::uint64_t seed) {
    constexpr int seeds = 3;
    std::vector<Result> out;
    for (int third = 0; third < seeds; ++third)
        out.push_back(run(assumptions, reference, baselines, {}, made,
                          engines / seeds + (third < engines % seeds ? 1 : 0),
                          seed + 1000 * static_cast<std::uint64_t>(third)));
    return out;
}

Result together(const std::vector<Result>& some) {
    Result all;
    for (const Result& one : some)
        all.scores.insert(all.scores.end(), one.scores.begin(), one.scores.end());
    return all;
}

constexpr std::size_t rank_bins = 20;

std::string rank_table(const std::vector<Result>& by_seed) {
    std::string out = "|";
    for (std::size_t seed = 0; seed < by_seed.size(); ++seed)
        out += " |";
    out += " |\n|---|";
    for (std::size_t seed = 0; seed < by_seed.size(); ++seed)
        out += "---|";
    out += "\n";
    for (std::size_t name = 0; name < rank_names().size(); ++name) {
        out += "| " + rank_names()[name] + " |";
        for (const Result& one : by_seed)
            out += fmt::format(" {:.3f} |", one.rank_p(name, rank_bins));
        out += "\n";
    }
    return out;
}

/// Holm at 0.01 over all ranks and seeds: the smallest of k stands against 0.01 / k, the next against
/// 0.01 / (k - 1), until one holds.
void not_uniform(const std::string& what, const std::vector<Result>& by_seed,
                 std::vector<std::string>& misses) {
    std::vector<std::pair<double, std::string>> all;
    for (std::size_t seed = 0; seed < by_seed.size(); ++seed)
        for (std::size_t name = 0; name < rank_names().size(); ++name)
            all.emplace_back(by_seed[seed].rank_p(name, rank_bins),
                             fmt::format("{}, seed {} of {}: ranks of {} are not uniform", what, seed + 1,
                                         by_seed.size(), rank_names()[name]));
    std::ranges::sort(all);
    for (std::size_t i = 0; i < all.size(); ++i) {
        if (all[i].first > 0.01 / static_cast<double>(all.size() - i)) return;
        misses.push_back(all[i].second);
    }
}

int write_report(const std::filesystem::path& folder, int engines, std::uint64_t seed) {
    std::filesystem::create_directories(folder);
    const auto assumptions = *built_in_assumptions();
    const auto reference = *findings::built_in_reference();
    const Baselines baselines = count_baselines(assumptions, reference, std::max(engines, 600));
    std::ofstream report(folder / "report.md");
    const auto say = [&](const std::string& text) {
        report << text << std::flush;
        std::cout << text << std::flush;
    };
    say(fmt::format(
        "# Odds held against drawn engines\n\n{} engines of two cylinders in each row, seed {}, working "
        "assumptions version {}.\n\n",
        engines, seed, assumptions.version));
    std::vector<std::string> misses;
    const auto by_seed = run_seeds(assumptions, reference, baselines, TestsMade::any_subset, engines, seed);
    const Result any = together(by_seed);
    plot_ranks(any, folder / "ranks.png");
    plot_said(any, folder / "said.png");
    say("## Ranks of the truth, any subset of evidence (ranks.png, said.png)\n\np of a third of the engines "
        "each, three seeds.\n\n" +
        rank_table(by_seed));
    not_uniform("any subset", by_seed, misses);
    const auto all_by_seed = run_seeds(assumptions, reference, baselines, TestsMade::all, engines, seed + 1);
    say("\n## Ranks of the truth, all evidence\n\n" + rank_table(all_by_seed));
    not_uniform("all evidence", all_by_seed, misses);
    const auto staked_by_seed =
        run_seeds(assumptions, reference, baselines, TestsMade::then_staked, engines, seed + 3);
    say("\n## Ranks of the truth, then staked\n\n" + rank_table(staked_by_seed));
    not_uniform("then staked", staked_by_seed, misses);
    say("\n## Worlds\n\nMain path found and loudest exit's in %, standard errors behind the loudest exit, "
        "mean log "
        "scores of the odds and of the two rules' counted hit rates, readings after a repair inside their 90 "
        "% "
        "interval in %, right in % of what is shown with 90 % or more, cylinders said to be unsure for want "
        "of effective "
        "samples in %, then shares inside their 90 % interval in % by path (worlds.png).\n\n| world | found "
        "| loudest | "
        "behind | log | "
        "log loudest | log wet | after | shown 90 % | unsure |");
    for (std::size_t path = 0; path < any.scores.front().share_inside.size(); ++path)
        say(" " + rank_names()[path] + " |");
    say("\n|---|---|---|---|---|---|---|---|---|---|---|---|---|---|---|---|\n");
    std::vector<std::pair<std::string, Result>> results;
    const auto add = [&](const World& world, Result result, bool as_assumed) {
        say(row(world, result));
        const auto more = missed(world, result, as_assumed);
        misses.insert(misses.end(), more.begin(), more.end());
        results.emplace_back(world.name, std::move(result));
    };
    add({.name = "as assumed, any subset"}, any, true);
    add({}, together(all_by_seed), true);
    add({.name = "as assumed, then staked"}, together(staked_by_seed), true);
    for (const World& world : other_worlds())
        add(world, run(assumptions, reference, baselines, world, TestsMade::all, engines, seed + 2), false);
    plot_worlds(results, folder / "worlds.png");
    say("\n## Missed\n\n");
    for (const std::string& one : misses)
        say("- " + one + "\n");
    if (misses.empty()) say("Nothing.\n");
    return misses.empty() ? 0 : 1;
}

}  // namespace
}  // namespace lapwing::odds::trial

int main(int count, char** words) {
    if (count < 2) {
        std::cerr << "odds_trial FOLDER [ENGINES [SEED]]\n";
        return 2;
    }
    return lapwing::odds::trial::write_report(words[1], count > 2 ? std::max(std::atoi(words[2]), 1) : 1000,
                                              count > 3 ? std::strtoull(words[3], nullptr, 10) : 1);
}

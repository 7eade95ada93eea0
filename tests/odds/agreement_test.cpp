// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <vector>

#include "core/odds/draws.h"
#include "core/odds/summary.h"
#include "tests/odds/world.h"

/// The chains against draws from the prior, weighed by the likelihood: no move may lean to one side. Readings
/// and ears are made blunt, so that enough of the draws count.
namespace lapwing::odds::trial {
namespace {

struct Part {
    const char* name;
    Tests tests;
    bool two_gauges = false;  ///< the second cylinder was read on testers of its own, coarse ones
    bool failed = false;      ///< the leak-down tester failed its check
};

/// Cranking readings on a coarse gauge, its check valve at its own end; air with a restrictor nobody noted.
void read_on_another(Dossier& dossier, int cylinder) {
    const FixedClock clock{Timestamp{}};
    for (const TesterKind kind : {TesterKind::compression_gauge, TesterKind::leak_down}) {
        Tester coarse = *std::ranges::find(dossier.testers, kind, &Tester::kind);
        coarse.id = TesterId::make(clock);
        coarse.gauge.full_scale = *TypedPressure::make("100", units::bar);
        coarse.gauge.accuracy = "4";
        coarse.restrictor.reset();
        if (kind == TesterKind::compression_gauge) coarse.check_valve_at = CheckValveAt::gauge_end;
        for (Reading& reading : dossier.visits.front().readings)
            if (reading.cylinder == cylinder &&
                reading.final.has_value() == (kind == TesterKind::compression_gauge))
                reading.tester = coarse.id;
        dossier.testers.push_back(std::move(coarse));
    }
}

void fail(Dossier& dossier) {
    std::ranges::find(dossier.testers, TesterKind::leak_down, &Tester::kind)->checks = {
        {TesterCheckKind::outlet_blocked, {}, CheckResult::failed, {}, {}, {}, {}}};
}

/// The cranking model of every hose.
class Surfaces {
public:
    explicit Surfaces(const Evidence& evidence) {
        for (const SurfaceRange& range : evidence.surfaces())
            fits_.push_back(*CrankSurface::fit(range));
    }
    [[nodiscard]] std::vector<const CrankSurface*> all() const {
        std::vector<const CrankSurface*> out;
        for (const CrankSurface& one : fits_)
            out.push_back(&one);
        return out;
    }

private:
    std::vector<CrankSurface> fits_;
};

class Agreement : public testing::TestWithParam<Part> {
protected:
    static Assumptions blunt() {
        Assumptions out = *built_in_assumptions();
        out.set("reading-scatter", 0.25);
        out.set("first-scatter", 0.5);
        out.set("leak-repeat", 0.8);
        out.set("hearing", 1.2);
        // Faults of joints often enough to be told from chance.
        out.set("next_cylinder-fault", 0.3);
        return out;
    }
};

/// Of a cylinder's share by path: sum of weights, of weighed values and of squares, and chances to be main.
struct Moments {
    std::vector<double> mean, square, main;
};

TEST_P(Agreement, OfSharesAndMainPaths) {
    const Assumptions assumptions = blunt();
    const auto reference = *findings::built_in_reference();
    for (const std::uint64_t engine : {3U, 8U}) {
        Drawn drawn = draw(assumptions, reference, {}, GetParam().tests, engine);
        if (GetParam().two_gauges) read_on_another(drawn.dossier, 2);
        if (GetParam().failed) fail(drawn.dossier);
        const Evidence evidence =
            evidence_of(drawn.dossier, drawn.dossier.visits.front(), reference, assumptions, {});
        const Surfaces surfaces(evidence);
        ASSERT_EQ(evidence.gauges, GetParam().two_gauges ? 2U : 1U);
        ASSERT_EQ(evidence.hoses.size(), GetParam().two_gauges ? 2U : 1U);
        const bool two_testers = GetParam().failed || (GetParam().two_gauges && GetParam().tests.leak_down);
        ASSERT_EQ(evidence.leak_testers.size(), two_testers ? 2U : 1U);
        const EngineModel model(evidence, assumptions, surfaces.all());
        const std::size_t paths = reported_paths(evidence, 0).size();
        const double seals_well = seals_well_area_m2(assumptions);

        constexpr int plain = 400'000;  ///< at least
        constexpr int most_plain = 4'000'000;
        constexpr double enough = 1000.0;
        Random random(engine);
        std::vector<double> z(model.size());
        EngineModel::SharedState shared;
        std::array<Moments, 2> plainly;
        for (auto& one : plainly)
            one = {std::vector<double>(paths), std::vector<double>(paths), std::vector<double>(paths + 1)};
        double most = -1e300;
        for (int i = 0; i < 2'000; ++i) {  // how high the likelihood goes, about
            for (double& one : z)
                one = random.normal();
            model.shared(z, shared);
            most = std::max(
                most, model.cylinder_likelihood(z, shared, 0) + model.cylinder_likelihood(z, shared, 1));
        }
        double sum = 0.0, squares = 0.0;
        for (int i = 0; i < plain || (i < most_plain && sum * sum < enough * squares); ++i) {
            for (double& one : z)
                one = random.normal();
            model.shared(z, shared);
            const double weight =
                std::exp(model.engine_likelihood(shared) + model.cylinder_likelihood(z, shared, 0) +
                         model.cylinder_likelihood(z, shared, 1) - most);
            sum += weight;
            squares += weight * weight;
            for (std::size_t c = 0; c < 2; ++c) {
                const auto leaks = model.leaks(z, c);
                std::size_t main = 0;
                for (std::size_t path = 0; path < paths; ++path) {
                    const double share = leaks.path_m2[path] / leaks.standing_m2;
                    plainly[c].mean[path] += weight * share;
                    plainly[c].square[path] += weight * share * share;
                    if (leaks.path_m2[path] > leaks.path_m2[main]) main = path;
                }
                plainly[c].main[leaks.standing_m2 < seals_well ? paths : main] += weight;
            }
        }
        const double plain_effective = sum * sum / squares;
        ASSERT_GT(plain_effective, 0.5 * enough);

        constexpr int seeds = 6;
        std::array<Moments, 2> chained;
        for (auto& one : chained)
            one = {std::vector<double>(paths), std::vector<double>(paths), std::vector<double>(paths + 1)};
        double effective = 0.0;
        for (int seed = 1; seed <= seeds; ++seed) {
            const auto draws = *Draws::make(model, static_cast<std::uint64_t>(seed), {});
            effective += std::min(draws.effective(0), draws.effective(1));
            for (std::size_t c = 0; c < 2; ++c) {
                const double each = 1.0 / (seeds * static_cast<double>(draws.count(c)));
                for (std::size_t path = 0; path < paths; ++path)
                    for (const float share : draws.share(c, path)) {
                        chained[c].mean[path] += each * share;
                        chained[c].square[path] += each * share * share;
                    }
                for (const std::uint8_t main : draws.main(c))
                    chained[c].main[main] += each;
            }
        }
        // Four standard errors; chances hang on both sides' effective draws.
        const double by_chance = 4.0 * std::sqrt(1.0 / plain_effective + 1.0 / effective);
        for (std::size_t c = 0; c < 2; ++c)
            for (std::size_t path = 0; path <= paths; ++path) {
                const double main = plainly[c].main[path] / sum;
                EXPECT_NEAR(chained[c].main[path], main, by_chance * std::sqrt(main * (1.0 - main)) + 0.004)
                    << "engine " << engine << ", cylinder " << c + 1 << ", main path " << path;
                if (path == paths) continue;
                const double mean = plainly[c].mean[path] / sum;
                const double square = plainly[c].square[path] / sum;
                const double spread = std::sqrt(std::max(square - mean * mean, 0.0));
                EXPECT_NEAR(chained[c].mean[path], mean, by_chance * spread + 0.002)
                    << "engine " << engine << ", cylinder " << c + 1 << ", path " << path;
                EXPECT_NEAR(chained[c].square[path], square, 1.5 * by_chance * spread + 0.004)
                    << "engine " << engine << ", cylinder " << c + 1 << ", path " << path;
            }
        std::printf("%s, engine %d: %.0f effective draws from the prior, %.0f of the chains\n",
                    GetParam().name, static_cast<int>(engine), plain_effective, effective);
    }
}

/// What is said of how well shares and chances are known, against how they differ from seed to seed.
TEST(Chances, AreAsWellKnownAsIsSaid) {
    const Assumptions assumptions = *built_in_assumptions();
    const auto reference = *findings::built_in_reference();
    for (const std::uint64_t engine : {2U, 5U, 9U}) {
        const Drawn drawn = draw(assumptions, reference, {}, {true, false, true, false, false}, engine);
        const Evidence evidence =
            evidence_of(drawn.dossier, drawn.dossier.visits.front(), reference, assumptions, {});
        const auto surface = *CrankSurface::fit(*evidence.cranking);
        const EngineModel model(evidence, assumptions, {&surface});
        constexpr int seeds = 12;
        std::vector<std::vector<double>> chances;
        double effective = 0.0;
        for (int seed = 1; seed <= seeds; ++seed) {
            const auto draws = *Draws::make(model, static_cast<std::uint64_t>(seed), {});
            const CylinderOdds odds = summarise(model, draws, 0);
            effective += odds.effective_samples / seeds;
            std::vector<double> all{odds.seals_well};
            for (const PathOdds& path : odds.paths)
                all.insert(all.end(), {path.main, path.fault});
            chances.push_back(std::move(all));
        }
        for (std::size_t i = 0; i < chances.front().size(); ++i) {
            double sum = 0.0, squares = 0.0;
            for (const auto& of : chances) {
                sum += of[i];
                squares += of[i] * of[i];
            }
            const double spread = std::sqrt(std::max(squares - sum * sum / seeds, 0.0) / (seeds - 1));
            // Chi-square of eleven degrees of freedom: 1.8 is passed once in some ten thousand.
            EXPECT_LE(spread, 1.8 * std::sqrt(0.25 / effective)) << "engine " << engine << ", chance " << i;
        }
    }
}

INSTANTIATE_TEST_SUITE_P(Evidence, Agreement,
                         testing::Values(Part{"dry_and_wet", {true, false, false, true, false}},
                                         Part{"exits", {false, false, false, false, true}},
                                         Part{"wet_and_air", {false, false, true, true, false}},
                                         Part{"staked", {true, false, true, false, true, true}},
                                         Part{"two_gauges", {true, false, false, true, false}, true},
                                         Part{"two_of_each", {true, false, true, false, true}, true},
                                         Part{"failed", {true, false, true, false, true}, false, true},
                                         Part{"everything", {}}),
                         [](const auto& of) { return std::string(of.param.name); });

}  // namespace
}  // namespace lapwing::odds::trial

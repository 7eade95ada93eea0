// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// Where it leaks, worked out by the product's chains against a plain importance sampler, which draws from the
// prior and weighs by the likelihood, at equal effective sample size. Prints both times and their ratio;
// fails when one is under what is wanted.

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <ctime>
#include <vector>

#include "core/odds/draws.h"
#include "core/odds/summary.h"
#include "tests/odds/world.h"

namespace {

using namespace lapwing;
using namespace lapwing::odds;

/// Of this thread, s: other programs on the machine take little from it.
double cpu_seconds() {
    timespec now{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
    return static_cast<double>(now.tv_sec) + 1e-9 * static_cast<double>(now.tv_nsec);
}

struct Cost {
    double effective = 0.0;
    double seconds = 0.0;
    [[nodiscard]] double for_effective(double wanted) const { return seconds * wanted / effective; }
};

Cost chains(const EngineModel& model) {
    const double begun = cpu_seconds();
    const auto draws = Draws::make(model, 1, {});
    Cost out;
    out.effective = draws->effective(0);
    for (std::size_t c = 1; c < model.cylinders().size(); ++c)
        out.effective = std::min(out.effective, draws->effective(c));
    out.seconds = cpu_seconds() - begun;
    return out;
}

/// Until it has `wanted` effective draws, or for `most_s`: its time grows in proportion to them. Effective
/// draws by A. Kong, A note on importance sampling using standardized weights, 1992.
Cost from_the_prior(const EngineModel& model, double wanted, double most_s) {
    Random random(1);
    std::vector<double> z(model.size());
    EngineModel::SharedState shared;
    double most = -1e300, sum = 0.0, squares = 0.0;
    Cost out;
    const double begun = cpu_seconds();
    do {
        for (int i = 0; i < 10'000; ++i) {
            for (double& one : z)
                one = random.normal();
            model.shared(z, shared);
            double log = model.engine_likelihood(shared);
            for (std::size_t c = 0; c < model.cylinders().size(); ++c)
                log += model.cylinder_likelihood(z, shared, c);
            if (log > most) {
                const double smaller = std::exp(most - log);
                sum *= smaller;
                squares *= smaller * smaller;
                most = log;
            }
            const double weight = std::exp(log - most);
            sum += weight;
            squares += weight * weight;
        }
        out.effective = sum * sum / squares;
        out.seconds = cpu_seconds() - begun;
    } while (out.effective < wanted && out.seconds < most_s);
    return out;
}

struct Case {
    const char* name;
    trial::Tests tests;
    double at_least;  ///< times as fast as the plain sampler
};

}  // namespace

int main() {
    const auto assumptions = *built_in_assumptions();
    const auto reference = *findings::built_in_reference();
    bool good = true;
    for (const Case& one :
         {Case{"two cylinders, dry readings", {true, false, false, false, false}, 0.1},
          Case{"two cylinders, dry, leak-down and exits", {true, false, true, false, true}, 10.0},
          Case{"two cylinders, everything", {}, 20.0}}) {
        const auto drawn = trial::draw(assumptions, reference, {}, one.tests, 4712);
        const Evidence evidence =
            evidence_of(drawn.dossier, drawn.dossier.visits.front(), reference, assumptions, {});
        const auto surface = *CrankSurface::fit(*evidence.cranking);
        const EngineModel model(evidence, assumptions, {&surface});
        const Cost ours = chains(model);
        const Cost plain = from_the_prior(model, ours.effective, 5.0);
        const double theirs_s = plain.for_effective(ours.effective);
        const double ratio = theirs_s / ours.seconds;
        fmt::print(
            "{}: {:.0f} effective draws in {:.2f} s; from the prior {:.3g} s{}; {:.3g} times as fast (wanted "
            "{}){}\n",
            one.name, ours.effective, ours.seconds, theirs_s,
            plain.effective < ours.effective ? fmt::format(" (by {:.0f} effective draws)", plain.effective)
                                             : "",
            ratio, one.at_least, ratio < one.at_least ? " MISSED" : "");
        good = good && ratio >= one.at_least;
    }
    return good ? 0 : 1;
}

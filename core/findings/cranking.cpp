// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <algorithm>

#include "core/findings/instruments.h"

namespace lapwing::findings {
namespace {

std::optional<Derived> mean_first(const Case& at, std::vector<const Reading*> readings, const Gauge* dial) {
    std::erase_if(readings, [](const Reading* reading) { return !reading->first; });
    if (readings.empty()) return std::nullopt;
    return mean_of(at, readings, &Reading::first, dial);
}

}  // namespace

std::optional<Cranking> cranking_of(const Case& at, TestKind test, int cylinder) {
    auto readings = counted(at, test, cylinder);
    std::erase_if(readings, [](const Reading* reading) { return !reading->final; });
    if (readings.empty()) return std::nullopt;
    const Tester* tester = tester_of(at, test, readings.back()->tester);
    const Gauge* dial = tester ? &tester->gauge : nullptr;
    Cranking out;
    out.final = mean_of(at, readings, &Reading::final, dial);
    out.scatter_u95 = scatter_u95(at, readings, &Reading::final);
    out.repeats = static_cast<int>(readings.size());
    out.tag = readings.back()->tag;
    out.oiled = readings.back()->oiled;
    for (const Reading* reading : readings)
        out.readings.push_back(reading->id);
    out.first = mean_first(at, readings, dial);
    if (out.first && out.final.figure.si > 0.0) {
        const double first = out.first->figure.si;
        const double final = out.final.figure.si;
        const auto gauge = instrument_of(dial, final, readings.back()->final->step_si(), at.reference).gauge;
        Derived share;
        share.figure =
            figure(Dimension::share, first / final,
                   with_scatter(u95_quotient(gauge, first, final), first,
                                scatter_u95(at, readings, &Reading::first), final, out.scatter_u95));
        share.from.title = Word{"from:first_share"};
        share.from.symbols = "p₁ / p";
        share.from.inputs = {input("first", "p₁", out.first->figure), input("final", "p", out.final.figure)};
        share.from.source = say("source.typed");
        out.first_share = std::move(share);
    }
    return out;
}

}  // namespace lapwing::findings

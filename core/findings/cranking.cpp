// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <algorithm>
#include <numeric>

#include "core/findings/instruments.h"
#include "core/findings/touched.h"

namespace lapwing::findings {
namespace {

/// Mean of one field of repeats, with the part of its doubt that their scatter brings.
struct Mean {
    Derived number;
    double scatter_u95 = 0.0;
};

Mean mean(const Case& at, TestKind test, const std::vector<const Reading*>& readings,
          std::optional<TypedPressure> Reading::*field, const Gauge* dial) {
    std::vector<double> values;
    for (const Reading* reading : readings)
        values.push_back((reading->*field)->si());
    const auto usual = usual_scatter(
        at, test, field, readings.front()->cylinder,
        std::accumulate(values.begin(), values.end(), 0.0) / static_cast<double>(values.size()));
    return {mean_of(at, readings, field, dial, usual), scatter_u95(values, usual)};
}

}  // namespace

Derived first_share_of(const Case& at, const Cranking& of, const Gauge* dial, double step_pa) {
    const double first = of.first->figure.si;
    const double final = of.final.figure.si;
    const auto gauge = instrument_of(dial, final, step_pa, at.reference).gauge;
    const double by_gauge = u95_quotient(gauge, first, final);
    Derived out;
    out.figure = figure(Dimension::share, first / final,
                        with_scatter(by_gauge, first, of.first_scatter_u95, final, of.scatter_u95));
    out.from.title = Word{"from:first_share"};
    out.from.symbols = "p₁ / p";
    out.from.inputs = {input("first", "p₁", of.first->figure), input("final", "p", of.final.figure)};
    out.from.doubts =
        doubt_shares({{"gauge", by_gauge},
                      {"scatter", with_scatter(0.0, first, of.first_scatter_u95, final, of.scatter_u95)}});
    out.from.source = say("source.typed");
    return out;
}

std::optional<Cranking> cranking_of(const Case& at, TestKind test, int cylinder) {
    auto readings = counted(at, test, cylinder);
    std::erase_if(readings, [](const Reading* reading) { return !reading->final; });
    if (readings.empty()) return std::nullopt;
    const Tester* tester = tester_of(at, test, readings.back()->tester);
    const Gauge* dial = tester ? &tester->gauge : nullptr;
    Cranking out;
    auto final = mean(at, test, readings, &Reading::final, dial);
    out.final = std::move(final.number);
    out.scatter_u95 = final.scatter_u95;
    out.repeats = static_cast<int>(readings.size());
    out.tag = readings.back()->tag;
    out.superseded = superseded(at, cylinder, out.tag, readings.back()->taken_at);
    out.oiled = readings.back()->oiled;
    for (const Reading* reading : readings)
        out.readings.push_back(reading->id);
    const double step_pa = readings.back()->final->step_si();
    std::erase_if(readings, [](const Reading* reading) { return !reading->first; });
    if (readings.empty()) return out;
    auto first = mean(at, test, readings, &Reading::first, dial);
    out.first = std::move(first.number);
    out.first_scatter_u95 = first.scatter_u95;
    if (out.final.figure.si > 0.0) out.first_share = first_share_of(at, out, dial, step_pa);
    return out;
}

}  // namespace lapwing::findings

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/findings/instruments.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <numeric>

#include "core/uncertainty/coverage.h"

namespace lapwing::findings {
namespace {

std::optional<uncertainty::AccuracyClass> class_of(const Gauge& dial) {
    if (dial.scheme == AccuracyScheme::en_837_1 && !dial.accuracy.empty()) {
        if (const auto made = uncertainty::en837_class(digits_value(dial.accuracy))) return *made;
    }
    if (dial.scheme == AccuracyScheme::asme_b40_100 && dial.accuracy.size() == 1) {
        const char letter = dial.accuracy.front();
        if (letter >= 'A' && letter <= 'D')
            return uncertainty::asme_b40_100(static_cast<uncertainty::AsmeGrade>(letter - 'A'));
    }
    return std::nullopt;
}

}  // namespace

Instrument instrument_of(const Gauge* dial, double reading_pa, double typed_step_pa,
                         const Reference& reference) {
    Instrument out;
    out.gauge.shares = reference.error_shares();
    const double assumed = reference.assumed("gauge-class");
    out.gauge.accuracy = {assumed, assumed, assumed};
    if (!dial) {
        out.gauge.span_pa = std::max(reference.assumed("unknown-scale") * reading_pa, 1.0);
        out.notes.push_back(say("note.tester_unknown"));
        out.gauge.readable_step_pa = std::min(typed_step_pa, out.gauge.span_pa);
        return out;
    }
    out.gauge.span_pa = dial->full_scale.si();
    out.inputs.push_back(input("full_scale", "", figure_of(dial->full_scale)));
    if (const auto known = class_of(*dial)) {
        out.gauge.accuracy = *known;
        out.inputs.push_back(input("gauge_class", "", dial->accuracy));
    } else {
        out.notes.push_back(say("note.class_unknown", figure(Dimension::share, assumed)));
    }
    const double half_division = dial->division ? 0.5 * dial->division->si() : 0.0;
    out.gauge.readable_step_pa = std::min(std::max(typed_step_pa, half_division), out.gauge.span_pa);
    if (dial->zero_at_rest)
        out.gauge.zero_limit_pa = std::min(std::abs(dial->zero_at_rest->si()), out.gauge.span_pa);
    return out;
}

uncertainty::Repeatability usual_scatter(const Case& at, TestKind test,
                                         std::optional<TypedPressure> Reading::*field, int cylinder,
                                         double level_pa) {
    const double usual = at.reference.assumed(field == &Reading::first ? "first-scatter" : "repeat-scatter");
    double freedom = at.reference.assumed("repeat-scatter-weight");
    double squares = freedom * usual * usual;
    for (const Cylinder& other : at.engine.cylinders) {
        if (other.number == cylinder) continue;
        std::vector<double> repeats;
        const auto readings = counted(at, test, other.number);
        if (wildly_apart(at, test, readings)) continue;
        for (const Reading* reading : readings)
            if (reading->*field) repeats.push_back((reading->*field)->si());
        const double mean = std::accumulate(repeats.begin(), repeats.end(), 0.0) /
                            std::max(1.0, static_cast<double>(repeats.size()));
        if (repeats.size() < 2 || !(mean > 0.0)) continue;
        for (const double value : repeats)
            squares += (value / mean - 1.0) * (value / mean - 1.0);
        freedom += static_cast<double>(repeats.size()) - 1.0;
    }
    return {level_pa * std::sqrt(squares / freedom), freedom};
}

std::vector<DoubtShare> doubt_shares(std::initializer_list<std::pair<std::string_view, double>> parts) {
    double all = 0.0;
    for (const auto& [name, u] : parts)
        all += u * u;
    std::vector<DoubtShare> out;
    constexpr double worth_a_line = 0.005;
    for (const auto& [name, u] : parts)
        if (u * u > worth_a_line * all) out.push_back({Word{"doubt:" + std::string(name)}, u * u / all});
    std::ranges::stable_sort(out, std::greater{}, &DoubtShare::share);
    return out;
}

std::vector<RangePart> range_parts(Dimension width,
                                   std::initializer_list<std::pair<std::string_view, double>> parts) {
    double widest = 0.0;
    for (const auto& [name, by] : parts)
        widest = std::max(widest, by);
    std::vector<RangePart> out;
    constexpr double worth_a_line = 0.05;
    for (const auto& [name, by] : parts)
        if (by > worth_a_line * widest)
            out.push_back({Word{"doubt:" + std::string(name)}, figure(width, by)});
    std::ranges::stable_sort(out, std::greater{}, [](const RangePart& part) { return part.width.si; });
    return out;
}

Derived mean_of(const Case& at, const std::vector<const Reading*>& readings,
                std::optional<TypedPressure> Reading::*field, const Gauge* dial,
                const uncertainty::Repeatability& usual, std::string_view scatter) {
    std::vector<double> values;
    double step = 0.0;
    for (const Reading* reading : readings) {
        values.push_back((reading->*field)->si());
        step = std::max(step, step_pa(*reading, field));
    }
    const double highest = *std::ranges::max_element(values);
    const Instrument instrument = instrument_of(dial, highest, step, at.reference);
    const auto mean = uncertainty::mean_of_repeats(instrument.gauge, values, usual);
    Derived out;
    if (values.size() == 1)
        out.figure = figure_of(*(readings.front()->*field));
    else
        out.figure = figure(Dimension::gauge_pressure, mean ? mean->mean_pa : values.front());
    if (mean) out.figure.u95 = uncertainty::expanded(mean->u_pa);
    out.from.title = Word{"from:mean"};
    out.from.symbols = values.size() > 1 ? "p = Σ p_i / n" : "";
    for (const Reading* reading : readings)
        out.from.inputs.push_back(input("reading", "p_i", figure_of(*(reading->*field))));
    out.from.inputs.insert(out.from.inputs.end(), instrument.inputs.begin(), instrument.inputs.end());
    if (mean) {
        const auto errors = uncertainty::errors_at(instrument.gauge, mean->mean_pa);
        const double by_gauge = std::hypot(errors.offset_pa, errors.gain_pa, errors.local_pa);
        out.from.doubts = doubt_shares({{"gauge", by_gauge},
                                        {"resolution", errors.resolution_pa},
                                        {scatter, scatter_u95(values, usual) / 2.0}});
    }
    out.from.source = say("source.typed");
    out.from.notes = instrument.notes;
    const bool scatters = usual.standard_pa > 0.0 && highest > 0.0;
    if (values.size() > 1) out.from.notes.push_back(say("note.mean", static_cast<int>(values.size())));
    if (scatters) {
        const Figure share = figure(Dimension::share, usual.standard_pa / highest);
        const int worth = static_cast<int>(std::lround(usual.freedom));
        out.from.notes.push_back(values.size() > 1 ? say("note.repeat_scatter", share, worth)
                                                   : say("note.one_reading", share));
    }
    return out;
}

double scatter_u95(const std::vector<double>& values, const uncertainty::Repeatability& usual) {
    // A gauge without errors leaves the scatter alone.
    uncertainty::Gauge perfect;
    perfect.span_pa = 1.0;
    perfect.accuracy = {0.0, 0.0, 0.0};
    const auto mean = uncertainty::mean_of_repeats(perfect, values, usual);
    return mean ? uncertainty::expanded(mean->u_pa) : 0.0;
}

double u95_without(const Derived& number, std::string_view doubt) {
    double left = 1.0;
    for (const DoubtShare& one : number.from.doubts)
        if (one.of.code == "doubt:" + std::string(doubt)) left -= one.share;
    return number.figure.u95.value_or(0.0) * std::sqrt(std::max(left, 0.0));
}

double with_scatter(double u95, double a, double a_scatter_u95, double b, double b_scatter_u95) {
    return std::hypot(u95, a_scatter_u95 / b, a / b * b_scatter_u95 / b);
}

double u95_difference(const uncertainty::Gauge& gauge, double a_pa, double b_pa) {
    return uncertainty::expanded(uncertainty::u_difference_same_gauge_pa(gauge, a_pa, b_pa));
}

double u95_quotient(const uncertainty::Gauge& gauge, double a_pa, double b_pa) {
    if (!(b_pa > 0.0)) return 0.0;
    return uncertainty::expanded(uncertainty::u_ratio_same_gauge(gauge, a_pa, b_pa));
}

}  // namespace lapwing::findings

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <algorithm>
#include <cmath>
#include <functional>

#include "core/calculators/pieces.h"
#include "core/findings/instruments.h"
#include "core/uncertainty/coverage.h"

namespace lapwing::calculators {
namespace {

using findings::Dimension;
using findings::ModelFacts;
using findings::ModelInputs;

/// What the model is given of this sheet, or what is still to be typed.
Result<ModelInputs> inputs_of(const Worksheet& sheet, const findings::Reference& reference) {
    const Engine& engine = sheet.engine;
    if (!engine.bore) return needs("bore");
    if (!engine.stroke) return needs("stroke");
    if (!engine.compression_ratio) return needs("compression ratio");
    return findings::model_inputs(engine, sheet.session, reference, &sheet.gauge, sheet.adapter, sheet.oil);
}

/// What the model has to say of that, or the sentence why it has nothing.
Result<ModelFacts> facts_of(const ModelInputs& inputs) {
    auto facts = findings::model_facts(inputs);
    if (facts.healthy) return facts;
    // The model's own sentence says what it refuses, in the words of the physics.
    if (facts.healthy_says.message.code == "model.above_ratio")
        return fail(
            "calculator.above_ratio",
            "No reading is worked out at a compression ratio above 14: there the model reads far over "
            "what makers print. Use the maker's figure.");
    const auto& args = facts.healthy_says.message.args;
    const auto* why = args.empty() ? nullptr : std::get_if<std::string>(&args.front());
    return tl::unexpected(Error{"calculator.refused", {}, why ? *why : "The model gives no reading."});
}

Result<ModelFacts> facts_of(const Worksheet& sheet, const findings::Reference& reference) {
    const auto inputs = inputs_of(sheet, reference);
    if (!inputs) return tl::unexpected(inputs.error());
    return facts_of(*inputs);
}

/// A healthy reading with so much taken off, least to most; `part`: what that is between.
findings::DerivedRange lowered(const findings::DerivedRange& healthy, double least, double most,
                               const findings::Derivation& loss, std::string_view title,
                               std::string_view part) {
    findings::DerivedRange out{figure(Dimension::gauge_pressure, healthy.low.si * (1.0 - most)),
                               figure(Dimension::gauge_pressure, healthy.high.si * (1.0 - least)), loss};
    out.from.title = findings::Word{"from:" + std::string(title)};
    out.from.symbols = "p (1 − loss)";
    out.from.doubts.clear();
    // Each by itself, with the rest at its middle.
    auto& parts = out.from.parts;
    parts = healthy.from.parts;
    for (findings::RangePart& one : parts)
        one.width.si *= 1.0 - 0.5 * (least + most);
    if (most > least)
        parts.push_back({findings::Word{"doubt:" + std::string(part)},
                         figure(Dimension::pressure_difference,
                                (most - least) * 0.5 * (healthy.low.si + healthy.high.si))});
    std::ranges::stable_sort(parts, std::greater{},
                             [](const findings::RangePart& one) { return one.width.si; });
    const std::vector<findings::Input> first{input("healthy_least", "p", healthy.low),
                                             input("healthy_most", "p", healthy.high),
                                             input("loss_least", "loss", figure(Dimension::share, least)),
                                             input("loss_most", "loss", figure(Dimension::share, most))};
    out.from.inputs.insert(out.from.inputs.begin(), first.begin(), first.end());
    return out;
}

/// Of one position of the throttle the range is the model's doubt; of "shut" it is that of how far that goes.
findings::DerivedRange throttle_loss(const ModelFacts& facts, bool typed) {
    findings::DerivedRange out = *facts.throttle_loss;
    if (!typed) return out;
    const double doubt = 2.0 * facts.inputs.correction_doubt * std::abs(out.low.si);
    out.low.si -= doubt;
    out.high.si += doubt;
    auto& inputs = out.from.inputs;
    inputs.erase(inputs.begin());
    inputs.front().name = findings::Word{"input:fill"};
    out.from.parts = findings::range_parts(Dimension::share, {{"model", 2.0 * doubt}});
    return out;
}

/// The reading that was typed, with what its gauge and one reading's scatter make of it.
findings::Figure typed_reading(const Worksheet& sheet, const findings::Reference& reference) {
    const Gauge& dial = sheet.gauge.gauge;
    const double reading = sheet.reading->si();
    const auto instrument = findings::instrument_of(dial.full_scale.si() > 0.0 ? &dial : nullptr, reading,
                                                    sheet.reading->step_si(), reference);
    return findings::figure_of(
        *sheet.reading, uncertainty::expanded(std::hypot(uncertainty::u_reading_pa(instrument.gauge, reading),
                                                         reference.assumed("repeat-scatter") * reading)));
}

}  // namespace

Result<Answer> turning(const Worksheet& sheet, const findings::Reference& reference) {
    auto inputs = inputs_of(sheet, reference);
    if (!inputs) return tl::unexpected(inputs.error());
    inputs->slow_speed_rad_s = sheet.slow ? sheet.slow->si() : reference.assumed("weak-battery-speed");
    inputs->throttle_fill_least =
        sheet.fill ? sheet.fill->si() : reference.assumed("closed-throttle-fill-least");
    inputs->throttle_fill_most =
        sheet.fill ? sheet.fill->si() : reference.assumed("closed-throttle-fill-most");
    auto slower = findings::cranking_case(*inputs);
    slower.speed_rad_s = *inputs->slow_speed_rad_s;
    slower.fill = *inputs->throttle_fill_least;
    if (const auto possible = physics::check(slower); !possible) return tl::unexpected(possible.error());
    auto facts = facts_of(*inputs);
    if (!facts) return tl::unexpected(facts.error());
    if (!facts->slow_loss || !facts->throttle_loss)
        return fail("calculator.turning", "The model gives no reading for that speed or throttle.");
    findings::Derived slow = *facts->slow_loss;
    slow.from.title = findings::Word{"from:speed_loss"};
    slow.from.inputs.front().name = findings::Word{"input:other_speed"};
    const double doubt = slow.figure.u95.value_or(0.0);
    const findings::DerivedRange throttle = throttle_loss(*facts, sheet.fill.has_value());
    Answer answer;
    answer.lines.push_back(
        {name("slow_reading"), lowered(*facts->healthy, slow.figure.si - doubt, slow.figure.si + doubt,
                                       slow.from, "slow_reading", "loss")});
    answer.lines.push_back({name("speed_loss"), std::move(slow)});
    answer.lines.push_back(
        {name("throttle_reading"), lowered(*facts->healthy, throttle.low.si, throttle.high.si, throttle.from,
                                           "throttle_reading", sheet.fill ? "loss" : "throttle")});
    answer.lines.push_back({name("throttle_loss"), throttle});
    answer.lines.push_back({name("healthy"), *facts->healthy});
    return answer;
}

Result<Answer> healthy(const Worksheet& sheet, const findings::Reference& reference) {
    const auto facts = facts_of(sheet, reference);
    if (!facts) return tl::unexpected(facts.error());
    Answer answer;
    answer.lines.push_back({name("healthy"), *facts->healthy});
    if (facts->healthy_first_share)
        answer.lines.push_back({name("first_share"), *facts->healthy_first_share});
    return answer;
}

Result<Answer> hose(const Worksheet& sheet, const findings::Reference& reference) {
    const auto facts = facts_of(sheet, reference);
    if (!facts) return tl::unexpected(facts.error());
    if (!facts->hose_loss)
        return fail("calculator.no_hose",
                    "With the check valve at the plug hole and no adapter the hose takes nothing off. Choose "
                    "where the check valve sits, or type an adapter's volume.");
    Answer answer;
    if (sheet.reading) {
        findings::Cranking reading;
        reading.final.figure = typed_reading(sheet, reference);
        answer.lines.push_back({name("without_hose"), findings::without_hose(reading, *facts)});
    }
    answer.lines.push_back({name("hose_loss"), *facts->hose_loss});
    findings::Derived correction{figure(Dimension::number, facts->hose_correction), facts->hose_loss->from};
    correction.from.title = findings::Word{"from:correction"};
    correction.from.symbols = "1 / (1 − loss) = p_without / p_with";
    correction.figure.u95 =
        facts->hose_loss->figure.u95.value_or(0.0) * facts->hose_correction * facts->hose_correction;
    answer.lines.push_back({name("correction"), std::move(correction)});
    return answer;
}

Result<Answer> oil(const Worksheet& sheet, const findings::Reference& reference) {
    if (sheet.engine.fuel == Fuel::diesel)
        return fail("calculator.oil_diesel",
                    "Never put oil into a diesel: its chamber is so small that oil can lock the engine.");
    if (!sheet.oil) return needs("oil put in");
    const auto facts = facts_of(sheet, reference);
    if (!facts) return tl::unexpected(facts.error());
    if (!facts->oil_rise)
        return fail("calculator.oil_locks",
                    "That much oil fills the chamber: cranking would lock the engine and can bend a rod. Use "
                    "less oil.");
    const findings::DerivedRange& rise = *facts->oil_rise;
    Answer answer;
    if (facts->oil_fill->figure.si >= reference.assumed("oil-most-of-chamber"))
        answer.notes.push_back(findings::say("pad.oil_locks", figure(Dimension::volume, facts->inputs.oil_m3),
                                             facts->oil_fill->figure));
    answer.lines.push_back({name("oil_rise"), rise});
    if (sheet.reading) {
        const findings::Figure dry = typed_reading(sheet, reference);
        const double middle = 1.0 + 0.5 * (rise.low.si + rise.high.si);
        // Independent of each other: half widths add as their squares do.
        const double by_oil = 0.5 * dry.si * (rise.high.si - rise.low.si);
        const double by_reading = dry.u95.value_or(0.0) * middle;
        const double half = std::hypot(by_oil, by_reading);
        findings::DerivedRange wet{figure(Dimension::gauge_pressure, dry.si * middle - half),
                                   figure(Dimension::gauge_pressure, dry.si * middle + half), rise.from};
        wet.from.parts = findings::range_parts(Dimension::pressure_difference,
                                               {{"oil_kept", 2.0 * by_oil}, {"reading", 2.0 * by_reading}});
        wet.from.title = findings::Word{"from:wet_reading"};
        wet.from.symbols = "p_dry (1 + rise)";
        wet.from.inputs.insert(wet.from.inputs.begin(), input("dry", "p_dry", dry));
        answer.lines.push_back({name("wet_reading"), std::move(wet)});
    }
    return answer;
}

}  // namespace lapwing::calculators

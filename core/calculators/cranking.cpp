// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <cmath>

#include "core/calculators/pieces.h"
#include "core/findings/instruments.h"
#include "core/uncertainty/coverage.h"

namespace lapwing::calculators {
namespace {

using findings::Dimension;
using findings::ModelFacts;

/// What the model has to say of this sheet, or the sentence why it has nothing.
Result<ModelFacts> facts_of(const Worksheet& sheet, const findings::Reference& reference) {
    const Engine& engine = sheet.engine;
    if (!engine.bore) return needs("bore");
    if (!engine.stroke) return needs("stroke");
    if (!engine.compression_ratio) return needs("compression ratio");
    auto facts = findings::model_facts(
        findings::model_inputs(engine, sheet.session, reference, &sheet.gauge, sheet.adapter, sheet.oil));
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

}  // namespace

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
        const Gauge& dial = sheet.gauge.gauge;
        const auto instrument =
            findings::instrument_of(dial.full_scale.si() > 0.0 ? &dial : nullptr, sheet.reading->si(),
                                    sheet.reading->step_si(), reference);
        const double scatter = reference.assumed("repeat-scatter") * sheet.reading->si();
        findings::Cranking reading;
        reading.final.figure = findings::figure_of(
            *sheet.reading, uncertainty::expanded(std::hypot(
                                uncertainty::u_reading_pa(instrument.gauge, sheet.reading->si()), scatter)));
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
        const double dry = sheet.reading->si();
        findings::DerivedRange wet{figure(Dimension::gauge_pressure, dry * (1.0 + rise.low.si)),
                                   figure(Dimension::gauge_pressure, dry * (1.0 + rise.high.si)), rise.from};
        wet.from.title = findings::Word{"from:wet_reading"};
        wet.from.symbols = "p_dry (1 + rise)";
        wet.from.inputs.insert(wet.from.inputs.begin(),
                               input("dry", "p_dry", findings::figure_of(*sheet.reading)));
        answer.lines.push_back({name("wet_reading"), std::move(wet)});
    }
    return answer;
}

}  // namespace lapwing::calculators

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <algorithm>
#include <initializer_list>
#include <nlohmann/json.hpp>
#include <stdexcept>

#include "core/findings/fill_in.h"
#include "core/findings/reference.h"
#include "core/units/typed.h"

namespace lapwing::findings {
namespace {

using nlohmann::json;

/// Thrown and caught in this file only: nlohmann throws as well.
struct Malformed : std::runtime_error {
    using std::runtime_error::runtime_error;
};

template <class Tag>
Quantity<Tag> quantity(const json& at, const char* key) {
    const auto text = at.at(key).get<std::string>();
    const auto typed = parse_quantity<Tag>(text);
    if (!typed) throw Malformed(fmt::format("{}: {}", key, typed.error().english));
    return typed->value();
}

template <class Enum>
Enum one_of(const json& value) {
    const auto text = value.get<std::string>();
    const auto found = from_word<Enum>(text);
    if (!found) throw Malformed(fmt::format("\"{}\" is not a word that is known here", text));
    return *found;
}

double share(const json& at, const char* key) {
    const double value = at.at(key).get<double>();
    if (!(value > 0.0 && value <= 1.0))
        throw Malformed(fmt::format("{}: {} is not a share between 0 and 1", key, value));
    return value;
}

Basis basis(const json& at) {
    const json& from = at.at("basis");
    Basis out{one_of<BasisKind>(from.at("kind")), from.at("source").get<std::string>(),
              from.at("comment").get<std::string>()};
    if ((out.kind == BasisKind::published) == out.source.empty())
        throw Malformed("basis: a published value names its source, any other has none");
    return out;
}

std::optional<Path> path(const json& value) {
    if (value.is_null()) return std::nullopt;
    return one_of<Path>(value);
}

SpreadRule spread_rule(const json& at) {
    SpreadRule out;
    out.id = at.at("id").get<std::string>();
    out.kind = one_of<SpreadKind>(at.at("kind"));
    out.share = share(at, "share");
    if (at.contains("at_least")) out.at_least = quantity<PressureTag>(at, "at_least");
    if (at.contains("fuel")) out.fuel = one_of<Fuel>(at.at("fuel"));
    out.gives = one_of<State>(at.at("gives"));
    out.basis = basis(at);
    return out;
}

TypicalCranking typical(const json& at) {
    TypicalCranking out;
    out.id = at.at("id").get<std::string>();
    out.fuel = one_of<Fuel>(at.at("fuel"));
    out.per_compression_ratio = at.at("per_compression_ratio").get<bool>();
    out.low = quantity<PressureTag>(at, "low");
    out.high = quantity<PressureTag>(at, "high");
    if (out.low >= out.high) throw Malformed("low is not below high");
    out.basis = basis(at);
    return out;
}

ReferenceTester tester(const json& at) {
    return {at.at("id").get<std::string>(), quantity<PressureTag>(at, "set"),
            quantity<LengthTag>(at, "restrictor"), basis(at)};
}

LeakageBand band(const json& at) {
    LeakageBand out;
    out.id = at.at("id").get<std::string>();
    out.scope = one_of<BandScope>(at.at("scope"));
    out.set = quantity<PressureTag>(at, "set");
    out.restrictor = quantity<LengthTag>(at, "restrictor");
    out.good = share(at, "good");
    out.borderline = share(at, "borderline");
    if (out.good > out.borderline) throw Malformed("good is above borderline");
    if (at.contains("spread_good")) out.spread_good = share(at, "spread_good");
    if (at.contains("spread_borderline")) out.spread_borderline = share(at, "spread_borderline");
    out.gives_state = at.at("gives_state").get<bool>();
    out.restrictor_by_bore = at.value("restrictor_by_bore", false);
    out.basis = basis(at);
    return out;
}

PrepareReason prepare_reason(const json& at) {
    PrepareReason out;
    out.step = one_of<PrepareStep>(at.at("step"));
    out.reason = at.at("reason").get<std::string>();
    out.if_not_done = at.at("if_not_done").get<std::string>();
    for (const json& test : at.at("tests"))
        out.tests.push_back(one_of<TestKind>(test));
    out.two_stroke = at.at("two_stroke").get<bool>();
    out.diesel = at.at("diesel").get<bool>();
    return out;
}

Caution caution(const json& at) {
    return {at.at("id").get<std::string>(), at.at("places").get<std::vector<std::string>>(),
            at.at("text").get<std::string>()};
}

Assumption assumption(const json& at) {
    return {at.at("id").get<std::string>(), at.at("value").get<double>(), at.at("unit").get<std::string>(),
            at.at("text").get<std::string>(), basis(at)};
}

/// Every entry of a list, an error naming which one.
template <class Read>
auto each(const json& file, const char* key, Read read) {
    std::vector<decltype(read(file))> out;
    for (const json& at : file.at(key)) {
        try {
            out.push_back(read(at));
        } catch (const std::exception& error) {
            throw Malformed(fmt::format("{}[{}]: {}", key, out.size(), error.what()));
        }
    }
    return out;
}

void whole(const Reference& reference) {
    if (std::ranges::count_if(reference.leakage, &LeakageBand::gives_state) != 1)
        throw Malformed("leakage: exactly one band gives the state");
    if (reference.testers.empty()) throw Malformed("testers: none");
    for (std::size_t i = 0; i < Words<Exit>::list.size(); ++i)
        if (std::ranges::find(reference.exits, static_cast<Exit>(i), &ExitPath::exit) ==
            reference.exits.end())
            throw Malformed(fmt::format("exits: \"{}\" is missing", Words<Exit>::list[i]));
    for (std::size_t i = 0; i < Words<PrepareStep>::list.size(); ++i)
        if (!reference.prepare_reason(static_cast<PrepareStep>(i)))
            throw Malformed(fmt::format("steps: \"{}\" is missing", Words<PrepareStep>::list[i]));
    for (const char* id : {"restrictor-cd",
                           "restrictor-diameter",
                           "restrictor-diameter-large",
                           "large-bore",
                           "gauge-class",
                           "unknown-scale",
                           "gauge-offset",
                           "gauge-gain",
                           "very-low-held",
                           "first-puff-low",
                           "first-puff-builds",
                           "first-puff-stays",
                           "neighbours-close",
                           "battery-low",
                           "slip-factor",
                           "near-limit",
                           "other-unit-apart",
                           "usual-cranking",
                           "usual-cranking-diesel",
                           "usual-set",
                           "decompressor-low",
                           "decompressor-high",
                           "drift",
                           "droop",
                           "rod-over-stroke",
                           "guessed-ratio-doubt",
                           "intake-closing",
                           "port-closing",
                           "closing-doubt",
                           "closing-known-doubt",
                           "variable-timing-doubt",
                           "lift-to-seat-least",
                           "lift-to-seat-most",
                           "cranking-speed",
                           "speed-dip",
                           "speed-dip-doubt",
                           "speed-unknown-doubt",
                           "speed-known-doubt",
                           "warm-wall",
                           "closed-throttle-fill-least",
                           "closed-throttle-fill-most",
                           "weak-battery-speed",
                           "hose-volume",
                           "valve-core-low-pressure",
                           "valve-core-tyre",
                           "oil-kept-least",
                           "oil-kept-most",
                           "tells-much",
                           "tells-some",
                           "tells-little",
                           "repair-from",
                           "small-cylinder",
                           "oil-put-in",
                           "oil-put-in-small",
                           "oil-most-of-chamber",
                           "oil-assumed-of-chamber",
                           "model-doubt",
                           "first-share-doubt",
                           "change-real",
                           "change-beyond-doubt",
                           "day-scatter",
                           "day-scatter-timed",
                           "leak-repeat",
                           "repeat-scatter",
                           "repeat-scatter-weight",
                           "first-scatter",
                           "restrictor-unknown-doubt-large",
                           "weather-doubt",
                           "barometer-doubt",
                           "still-rising",
                           "least-pulls",
                           "decompressor-closing-least",
                           "decompressor-closing-most",
                           "restrictor-doubt",
                           "restrictor-unknown-doubt",
                           "leak-law-doubt",
                           "correction-doubt",
                           "other-gauge-doubt",
                           "induction-off-doubt",
                           "weak-battery-doubt",
                           "oil-alike",
                           "leak-heat-doubt",
                           "hold-repeat",
                           "repairs-to-count",
                           "companions-apart",
                           "intake-closes-earliest",
                           "intake-closes-latest",
                           "exhaust-opens-earliest",
                           "exhaust-opens-latest",
                           "not-low-held",
                           "leaks-yet-reads",
                           "builds-nothing",
                           "beyond-chance",
                           "wet-far-above",
                           "loud-but-tight",
                           "loud-exits",
                           "silent-but-leaks",
                           "battery-least",
                           "battery-double",
                           "barometer-least",
                           "barometer-most",
                           "slip-fits",
                           "set-alike",
                           "restrictor-alike",
                           "gain-lowest",
                           "named-from",
                           "asked-from",
                           "likely-very",
                           "likely",
                           "likely-more",
                           "trend-least-days"})
        if (!reference.assumption(id)) throw Malformed(fmt::format("assumptions: \"{}\" is missing", id));
    const auto [offset, gain] = reference.error_shares();
    if (!(offset >= 0.0 && gain >= 0.0 && offset + gain <= 1.0))
        throw Malformed(
            "assumptions: gauge-offset and gauge-gain must not be negative and make at most 100 %");
}

}  // namespace

Result<Reference> read_reference(const ReferenceTexts& texts, const ReferenceTexts* own) {
    Reference out;
    const char* file = "";
    const auto open = [&](const char* name, std::string_view ReferenceTexts::*text,
                          const std::vector<WholeList>& lists = {}) {
        file = name;
        json parsed = json::parse(own ? fill_in(texts.*text, own->*text, name, lists, out.filled_in)
                                      : std::string(texts.*text));
        if (const int version = parsed.at("version").get<int>(); version != 1)
            throw Malformed(fmt::format("version {} is not known here", version));
        return parsed;
    };
    try {
        json at = open("limits.json", &ReferenceTexts::limits);
        out.spread = each(at, "spread", spread_rule);
        out.typical_cranking = each(at, "typical_cranking", typical);
        out.testers = each(at, "testers", tester);
        out.leakage = each(at, "leakage", band);
        at = open("wet.json", &ReferenceTexts::wet);
        out.wet = {share(at, "rise"), basis(at)};
        at = open("exits.json", &ReferenceTexts::exits, {{"exits", "exit"}});
        out.exits_basis = basis(at);
        out.exits = each(at, "exits", [](const json& row) {
            return ExitPath{one_of<Exit>(row.at("exit")), path(row.at("four_stroke")),
                            path(row.at("two_stroke"))};
        });
        at = open("prepare.json", &ReferenceTexts::prepare, {{"steps", "step"}});
        out.prepare = each(at, "steps", prepare_reason);
        at = open("cautions.json", &ReferenceTexts::cautions);
        out.cautions = each(at, "cautions", caution);
        at = open("assumptions.json", &ReferenceTexts::assumptions, {{"assumptions", "id"}});
        out.assumptions = each(at, "assumptions", assumption);
        file = "assets/reference";
        whole(out);
    } catch (const std::exception& error) {
        return fail("reference.malformed",
                    "The reference data in {} can't be read: {}. Put the file back as it was shipped.", file,
                    std::string(error.what()));
    }
    return out;
}

}  // namespace lapwing::findings

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/odds/assumptions.h"

#include <algorithm>
#include <cmath>
#include <nlohmann/json.hpp>
#include <stdexcept>

#include "core/findings/fill_in.h"
#include "core/units/quantity.h"

namespace lapwing::odds {
namespace {

using nlohmann::json;

/// Thrown and caught in this file only: nlohmann throws as well.
struct Malformed : std::runtime_error {
    using std::runtime_error::runtime_error;
};

double si_of(double value, const std::string& unit) {
    if (unit == "W/(m2 K)") return value;
    if (const auto found = Unit<RatioTag>::find(unit)) return found->quantity(value).si();
    if (const auto found = Unit<AreaTag>::find(unit)) return found->quantity(value).si();
    if (const auto found = Unit<LengthTag>::find(unit)) return found->quantity(value).si();
    if (const auto found = Unit<FlowTag>::find(unit)) return found->quantity(value).si();
    if (const auto found = Unit<PressureTag>::find(unit)) return found->quantity(value).si();
    throw Malformed(fmt::format("\"{}\" is not a unit that is known here", unit));
}

findings::Assumption number(const json& at) {
    const json& basis = at.at("basis");
    const auto kind = from_word<findings::BasisKind>(basis.at("kind").get<std::string>());
    if (!kind) throw Malformed("basis: not a kind that is known here");
    return {at.at("id").get<std::string>(), at.at("value").get<double>(), at.at("unit").get<std::string>(),
            at.at("text").get<std::string>(),
            findings::Basis{*kind, basis.at("source").get<std::string>(),
                            basis.at("comment").get<std::string>()}};
}

constexpr std::array needed{"area-bore",
                            "clearance-none-odds",
                            "clearance-good-odds",
                            "seals-well",
                            "ratio-known-doubt",
                            "ratio-guessed-doubt",
                            "ratio-unknown",
                            "ratio-highest",
                            "bore-unknown",
                            "stroke-unknown",
                            "heat",
                            "heat-doubt",
                            "speed-dip",
                            "speed-dip-doubt",
                            "speed-known-doubt",
                            "speed-unknown-doubt",
                            "level-doubt",
                            "cylinder-doubt",
                            "compare-only-doubt",
                            "reading-scatter",
                            "first-scatter",
                            "surface-error",
                            "day-scatter",
                            "card-range-doubt",
                            "earlier-visit-doubt",
                            "static-to-cranking",
                            "leak-repeat",
                            "oil-kept",
                            "oil-kept-spread",
                            "oil-seals",
                            "oil-seals-spread",
                            "oil-before",
                            "listener",
                            "listen-failed",
                            "hearing",
                            "slip",
                            "slip-seen",
                            "cross-talk",
                            "companion-talk",
                            "two-stroke-exhaust",
                            "masking",
                            "masking-from",
                            "listen-set",
                            "oil-of-chamber",
                            "reading-usual",
                            "held-usual",
                            "step-usual",
                            "does-not-fit"};
constexpr std::array paths{"rings",         "intake",  "exhaust",     "gasket",
                           "next_cylinder", "coolant", "decompressor"};
constexpr std::array path_numbers{"fault", "sound", "sound-spread", "leaking", "leaking-spread"};
constexpr std::array methods{"ear", "hose", "hand", "soapy-water", "bubbles"};
constexpr std::array levels{"faint", "clear", "strong"};

void whole(const Assumptions& all) {
    const auto positive = [&](const std::string& id, double below) {
        if (!all.find(id)) throw Malformed(fmt::format("\"{}\" is missing", id));
        const double value = all.at(id);
        if (!(value > 0.0 && value < below))
            throw Malformed(fmt::format("\"{}\": {} (SI) can't be right", id, value));
    };
    constexpr double no_bound = 1e9;
    for (const char* id : needed)
        positive(id, no_bound);
    for (const char* share : {"slip", "slip-seen", "oil-kept", "oil-seals", "two-stroke-exhaust",
                              "seals-well", "oil-of-chamber", "held-usual"})
        positive(share, 1.0);
    for (const char* path : paths)
        for (const char* one : path_numbers)
            positive(fmt::format("{}-{}", path, one), one == path_numbers[0] ? 1.0 : no_bound);
    for (const char* method : methods) {
        double last = 0.0;
        for (const char* level : levels) {
            const std::string id = fmt::format("{}-{}", method, level);
            positive(id, no_bound);
            if (all.at(id) <= last) throw Malformed(fmt::format("\"{}\" is not above the softer one", id));
            last = all.at(id);
        }
    }
}

}  // namespace

const findings::Assumption* Assumptions::find(std::string_view id) const {
    const auto found = std::ranges::find(numbers, id, &findings::Assumption::id);
    return found == numbers.end() ? nullptr : &*found;
}

double Assumptions::at(std::string_view id) const {
    const auto found = si_.find(id);
    return found == si_.end() ? 0.0 : found->second;
}

void Assumptions::set(std::string_view id, double si) {
    if (const auto found = si_.find(id); found != si_.end()) found->second = si;
}

Result<Assumptions> read_assumptions(std::string_view text, std::string_view own) {
    Assumptions out;
    try {
        const json file = json::parse(
            own.empty() ? std::string(text)
                        : findings::fill_in(text, own, "odds.json", {{"numbers", "id"}}, out.filled_in));
        out.version = file.at("version").get<int>();
        for (const json& at : file.at("numbers")) {
            out.numbers.push_back(number(at));
            const auto& read = out.numbers.back();
            if (!out.si_.emplace(read.id, si_of(read.value, read.unit)).second)
                throw Malformed(fmt::format("\"{}\" stands there twice", read.id));
        }
        whole(out);
        for (const json& at : file.at("other_assumptions")) {
            OtherAssumptions other{at.at("id").get<std::string>(), at.at("text").get<std::string>(), {}};
            for (const auto& [id, value] : at.at("change").items()) {
                const auto* changed = out.find(id);
                if (!changed) throw Malformed(fmt::format("{}: \"{}\" is not a number", other.id, id));
                other.change[id] = si_of(value.get<double>(), changed->unit);
            }
            out.others.push_back(std::move(other));
        }
    } catch (const std::exception& error) {
        return fail(
            "odds.malformed",
            "The working assumptions in odds.json can't be read: {}. Put the file back as it was shipped.",
            std::string(error.what()));
    }
    return out;
}

Result<Assumptions> built_in_assumptions() {
    return read_assumptions(built_in_text());
}

}  // namespace lapwing::odds

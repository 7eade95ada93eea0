// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/findings/cautions.h"

#include <algorithm>
#include <array>
#include <span>

#include "core/base/letters.h"

namespace lapwing::findings {
namespace {

/// A caution that stands everywhere is soon read nowhere.
bool concerns(const Caution& caution, const Engine& engine) {
    if (caution.id == "aircraft") return says_aircraft(engine);
    if (caution.id == "coolant-cap") return engine.cooling != Cooling::air;
    return true;
}

bool has_any(const std::string& spelt, std::span<const std::string_view> words) {
    return std::ranges::any_of(
        words, [&](std::string_view word) { return spelt.find(one_spelling(word)) != std::string::npos; });
}

}  // namespace

std::vector<const Caution*> cautions_for(const Reference& reference, std::string_view place,
                                         const Engine& engine) {
    const std::string with_fuel = fmt::format("{}, {}", place, word(engine.fuel));
    std::vector<const Caution*> out;
    for (const Caution& caution : reference.cautions)
        if (concerns(caution, engine) && std::ranges::any_of(caution.places, [&](const std::string& stands) {
                return stands == place || stands == with_fuel;
            }))
            out.push_back(&caution);
    return out;
}

bool says_aircraft(const Engine& engine) {
    constexpr std::string_view words[] = {
        "aircraft",   "airplane", "aeroplane", "aviation",  "propeller",   "helicopter",   "gyrocopter",
        "ultralight", "glider",   "flugzeug",  "flugmotor", "luftfahrt",   "hubschrauber", "ultraleicht",
        "aeronave",   "avioneta", "aviación",  "avión",     "helicóptero", "ultraligero"};
    return std::ranges::any_of(std::array{&engine.name, &engine.description, &engine.history},
                               [&](const std::string* text) { return has_any(one_spelling(*text), words); });
}

bool says_staking(std::string_view work) {
    constexpr std::string_view words[] = {"stake", "staking", "klopf", "toque", "golpe", "tap "};
    return has_any(one_spelling(work), words);
}

}  // namespace lapwing::findings

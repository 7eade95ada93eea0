// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/findings/cautions.h"

#include <algorithm>

#include "core/base/letters.h"

namespace lapwing::findings {

std::vector<const Caution*> cautions_for(const Reference& reference, std::string_view place,
                                         const Engine& engine) {
    const std::string with_fuel = fmt::format("{}, {}", place, word(engine.fuel));
    std::vector<const Caution*> out;
    for (const Caution& caution : reference.cautions)
        if (std::ranges::any_of(caution.places, [&](const std::string& stands) {
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
    for (const std::string* text : {&engine.name, &engine.description, &engine.history}) {
        const std::string spelt = one_spelling(*text);
        if (std::ranges::any_of(words, [&](std::string_view word) {
                return spelt.find(one_spelling(word)) != std::string::npos;
            }))
            return true;
    }
    return false;
}

}  // namespace lapwing::findings

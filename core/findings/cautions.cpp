// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/findings/cautions.h"

#include <algorithm>

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

}  // namespace lapwing::findings

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/findings/fill_in.h"

#include <algorithm>
#include <nlohmann/json.hpp>

namespace lapwing::findings {

using nlohmann::json;

std::string fill_in(std::string_view given, std::string_view own, const std::string& file,
                    const std::vector<WholeList>& lists, std::vector<FilledIn>& filled) {
    json there = json::parse(given, nullptr, false);
    if (!there.is_object()) return std::string(given);
    const json whole = json::parse(own);
    // A file without its version or its lists is another file, not an older one.
    for (const auto& [key, value] : whole.items())
        if (!there.contains(key) && key != "version" && !std::ranges::count(lists, key, &WholeList::key)) {
            there[key] = value;
            filled.push_back({file, key});
        }
    for (const WholeList& list : lists) {
        const auto &key = list.key, &id = list.id;  // a lambda of clang 14 takes no structured binding
        if (!there.contains(key) || !there[key].is_array()) continue;
        for (const json& entry : whole.at(key)) {
            const bool known = std::ranges::any_of(there[key], [&](const json& one) {
                return one.is_object() && one.contains(id) && one.at(id) == entry.at(id);
            });
            if (known) continue;
            there[key].push_back(entry);
            filled.push_back({file, entry.at(id).get<std::string>()});
        }
    }
    return there.dump();
}

}  // namespace lapwing::findings

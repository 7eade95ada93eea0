// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/record/place.h"

#include <fmt/format.h>

namespace lapwing::record {

std::string Place::text() const {
    if (outer == nullptr) return "the top";
    const std::string before = outer->outer == nullptr ? std::string{} : outer->text();
    if (index) return fmt::format("{}[{}]", before, *index);
    return before.empty() ? std::string(name) : fmt::format("{}.{}", before, name);
}

std::string Place::pointer() const {
    if (is_record || outer == nullptr) return {};
    std::string out = outer->pointer() + '/';
    if (index) return out + std::to_string(*index);
    for (const char c : name) {
        if (c == '~')
            out += "~0";
        else if (c == '/')
            out += "~1";
        else
            out += c;
    }
    return out;
}

}  // namespace lapwing::record

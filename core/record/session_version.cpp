// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/record/session_version.h"

#include <fmt/format.h>

#include <string_view>

#include "core/record/record.h"

namespace lapwing::record {

Status check_session_version(const std::string& version) {
    const auto point = version.find('.');
    const auto is_number = [](std::string_view part) {
        return !part.empty() && part.size() <= 6 &&
               part.find_first_not_of("0123456789") == std::string_view::npos;
    };
    if (point == std::string::npos || !is_number(std::string_view(version).substr(0, point)) ||
        !is_number(std::string_view(version).substr(point + 1)))
        return fail("record.bad_version", "\"{}\" is not a version of session files, such as 1.0.", version);
    const int major = std::stoi(version.substr(0, point));
    if (major > session_major)
        return fail("record.newer_major",
                    "This file was written by a newer Lapwing (format {}; this one reads up to {}.x). Update "
                    "Lapwing, or ask the sender for the report as PDF.",
                    version, session_major);
    if (major < session_major)
        return fail("record.bad_version", "\"{}\" is not a version of session files, such as 1.0.", version);
    return {};
}

Error of_a_newer_one(Error error, const std::string& version) {
    const bool may_be_new = error.code == "record.unknown_word" || error.code == "record.unknown_unit" ||
                            error.code == "record.other_version";
    if (!may_be_new || std::stoi(version.substr(version.find('.') + 1)) <= session_minor) return error;
    return fail("record.newer_minor",
                "This file was written by a newer Lapwing (format {}; this one knows {}) and says something "
                "that this one has no word for. Update Lapwing to read it; nothing was changed. ({})",
                version, fmt::format("{}.{}", session_major, session_minor), error.english)
        .value();
}

}  // namespace lapwing::record

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <rapidcheck.h>

#include <algorithm>
#include <string>

#include "core/findings/message.h"

namespace lapwing::findings {

/// What a message carries, in the letters of core/findings/codes.h; a count is a 'c' like a cylinder.
inline char letter_of(const Arg& arg) {
    struct Letters {
        char operator()(const Figure& figure) const {
            switch (figure.dimension) {
                case Dimension::gauge_pressure:
                    return 'p';
                case Dimension::pressure_difference:
                    return 'd';
                case Dimension::station_pressure:
                    return 'P';
                case Dimension::share:
                    return 's';
                case Dimension::altitude:
                    return 'A';
                case Dimension::voltage:
                    return 'v';
                case Dimension::length:
                    return 'L';
                case Dimension::time:
                    return 'T';
                case Dimension::number:
                    return 'r';
                case Dimension::volume:
                    return 'V';
                case Dimension::angle:
                    return 'a';
                default:
                    return '?';
            }
        }
        char operator()(int) const { return 'c'; }
        char operator()(const Word&) const { return 'w'; }
        char operator()(const CylinderList&) const { return 'l'; }
        char operator()(const std::string&) const { return 't'; }
    };
    return std::visit(Letters{}, arg);
}

inline std::string letters_of(const Message& message) {
    std::string out;
    for (const Arg& arg : message.args)
        out += letter_of(arg);
    return out;
}

/// The message is in that list of codes and carries what the list says. Inside a property.
template <class Codes>
void expect_listed_in(const Codes& list, const Message& message) {
    const auto at =
        std::ranges::find(list, message.code, [](const auto& code) { return std::string(code.code); });
    RC_ASSERT(at != list.end());
    std::string wanted(at->args);
    std::ranges::replace(wanted, 'n', 'c');
    const std::string got = letters_of(message);
    if (got != wanted) RC_FAIL(message.code + " carries " + got + ", not " + wanted);
}

}  // namespace lapwing::findings

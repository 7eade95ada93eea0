// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/model/check.h"

#include <algorithm>
#include <cstdint>

namespace lapwing::model {

void Check::id(const Uuid& uuid, std::string_view name) {
    that(!uuid.is_nil(), "model.no_id", "The {} has no {}: make it again from its own screen.", what_, name);
}

void Check::time(Timestamp at, std::string_view name) {
    // What RFC 3339 can write: the years 0000 to 9999, a day kept free at both ends for the offset.
    constexpr std::int64_t first = -62'167'219'200'000 + 86'400'000;
    constexpr std::int64_t last = 253'402'300'799'999 - 86'400'000;
    that(at.unix_ms >= first && at.unix_ms <= last && at.offset_min >= -18 * 60 && at.offset_min <= 18 * 60,
         "model.bad_time", "{} of the {} is no date of this calendar: set the phone's clock and try again.",
         name, what_);
}

void Check::text(const std::string& text, std::string_view name, std::size_t longest) {
    that(text.size() <= longest, "model.text_too_long",
         "{} in the {} is {} characters long: at most {} are kept. Shorten it.", name, what_, text.size(),
         longest);
    that(is_utf8(text), "model.text_broken",
         "{} in the {} holds characters that are not text (not UTF-8): type it again.", name, what_);
}

void Check::needed(const std::string& text, std::string_view name) {
    that(text.find_first_not_of(" \t\r\n") != std::string::npos, "model.missing",
         "The {} has no {}: give it one.", what_, name);
}

void Check::within(int value, int low, int high, std::string_view name) {
    if (value < low || value > high)
        out_of_range(name, std::to_string(value), std::to_string(low), std::to_string(high));
}

void Check::out_of_range(std::string_view name, const std::string& value, const std::string& low,
                         const std::string& high) {
    that(false, "model.out_of_range",
         "{} in the {} is {}: possible is {} to {}. Check the digits and the unit.", name, what_, value, low,
         high);
}

bool is_utf8(std::string_view text) {
    std::size_t i = 0;
    while (i < text.size()) {
        const auto lead = static_cast<std::uint8_t>(text[i]);
        const std::size_t length = lead < 0x80             ? 1
                                   : (lead & 0xe0) == 0xc0 ? 2
                                   : (lead & 0xf0) == 0xe0 ? 3
                                   : (lead & 0xf8) == 0xf0 ? 4
                                                           : 0;
        if (length == 0 || i + length > text.size()) return false;
        std::uint32_t point = length == 1 ? lead : lead & (0x7fu >> length);
        for (std::size_t k = 1; k < length; ++k) {
            const auto next = static_cast<std::uint8_t>(text[i + k]);
            if ((next & 0xc0) != 0x80) return false;
            point = point << 6 | (next & 0x3fu);
        }
        constexpr std::uint32_t least[] = {0, 0, 0x80, 0x800, 0x10000};
        if (point < least[length] || point > 0x10ffff || (point >= 0xd800 && point <= 0xdfff)) return false;
        i += length;
    }
    return true;
}

}  // namespace lapwing::model

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/base/letters.h"

#include <algorithm>
#include <span>
#include <vector>

#include "core/base/letters_table.h"

namespace lapwing {
namespace {

/// Bytes that are no UTF-8 travel above all letters.
constexpr char32_t raw_byte = 0x200000;

/// The letter that `text` begins with; takes it off.
char32_t take_letter(std::string_view& text) {
    const auto byte = [&](std::size_t at) { return static_cast<unsigned char>(text[at]); };
    const unsigned char first = byte(0);
    const std::size_t length = first < 0x80 ? 1 : first < 0xc2 ? 0 : first < 0xe0 ? 2 : first < 0xf0 ? 3 : 4;
    char32_t letter = length == 1 ? first : first & (0xffU >> (length + 1));
    bool whole = length > 0 && length <= text.size() && first < 0xf5;
    for (std::size_t at = 1; whole && at < length; ++at) {
        whole = (byte(at) & 0xc0U) == 0x80;
        letter = letter << 6U | (byte(at) & 0x3fU);
    }
    if (!whole) {
        text.remove_prefix(1);
        return raw_byte + first;
    }
    text.remove_prefix(length);
    return letter;
}

void put(std::string& out, char32_t letter) {
    const auto tail = [&](unsigned shift) { out += static_cast<char>(0x80U | (letter >> shift & 0x3fU)); };
    if (letter >= raw_byte) {
        out += static_cast<char>(letter - raw_byte);
    } else if (letter < 0x80) {
        out += static_cast<char>(letter);
    } else if (letter < 0x800) {
        out += static_cast<char>(0xc0U | letter >> 6U);
        tail(0);
    } else if (letter < 0x10000) {
        out += static_cast<char>(0xe0U | letter >> 12U);
        tail(6);
        tail(0);
    } else {
        out += static_cast<char>(0xf0U | letter >> 18U);
        tail(12);
        tail(6);
        tail(0);
    }
}

/// The last of `list` that begins at or before the letter.
template <class T>
const T* before(std::span<const T> list, char32_t letter, char32_t T::*begin) {
    const auto after = std::ranges::upper_bound(list, letter, {}, begin);
    return after == list.begin() ? nullptr : &*std::prev(after);
}

bool is_mark(char32_t letter) {
    const auto* range =
        before<letters::Range>({letters::marks, letters::mark_count}, letter, &letters::Range::first);
    return range != nullptr && letter <= range->last;
}

/// Korean syllables by the rule of the Unicode Standard, section 3.12.
bool take_syllable_apart(char32_t letter, std::u32string& out) {
    constexpr char32_t first = 0xac00, leads = 0x1100, vowels = 0x1161, tails = 0x11a7;
    if (letter < first || letter > 0xd7a3) return false;
    const char32_t index = letter - first;
    out += static_cast<char32_t>(leads + index / 588);
    out += static_cast<char32_t>(vowels + index % 588 / 28);
    if (index % 28 != 0) out += static_cast<char32_t>(tails + index % 28);
    return true;
}

void add_plain(char32_t letter, std::u32string& out) {
    if (letter < 0x80) {
        out += letter >= U'A' && letter <= U'Z' ? letter + 32 : letter;
        return;
    }
    if (take_syllable_apart(letter, out)) return;
    const auto* several =
        before<letters::Parts>({letters::parts, letters::parts_count}, letter, &letters::Parts::whole);
    if (several != nullptr && several->whole == letter) {
        for (const char32_t part : several->parts)
            if (part != 0) out += part;
        return;
    }
    const auto* run = before<letters::Run>({letters::runs, letters::run_count}, letter, &letters::Run::first);
    const bool moves = run != nullptr && letter <= run->last && (letter - run->first) % run->step == 0;
    out += moves ? static_cast<char32_t>(static_cast<std::int64_t>(letter) + run->distance) : letter;
}

}  // namespace

std::string one_spelling(std::string_view text) {
    std::u32string plain;
    while (!text.empty())
        add_plain(take_letter(text), plain);
    for (auto at = plain.begin(); at != plain.end();) {
        const auto marks_end = std::find_if_not(at, plain.end(), is_mark);
        std::sort(at, marks_end);
        at = marks_end == plain.end() ? marks_end : std::next(marks_end);
    }
    std::string out;
    for (const char32_t letter : plain)
        put(out, letter);
    return out;
}

}  // namespace lapwing

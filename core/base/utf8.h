// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <cstddef>
#include <string_view>

namespace lapwing {

/// How many of the first `most` bytes of UTF-8 make whole letters: a text cut there stays text.
constexpr std::size_t cut_between_letters(std::string_view text, std::size_t most) {
    if (text.size() <= most) return text.size();
    while (most > 0 && (static_cast<unsigned char>(text[most]) & 0xc0) == 0x80)
        --most;
    return most;
}

}  // namespace lapwing

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <array>
#include <optional>
#include <string_view>

namespace lapwing {

/// The stable words that an enumeration has in files. The order is the enumeration's own.
template <class Enum>
struct Words;

template <class Enum>
constexpr std::string_view word(Enum value) {
    return Words<Enum>::list[static_cast<std::size_t>(value)];
}

template <class Enum>
constexpr std::optional<Enum> from_word(std::string_view text) {
    for (std::size_t i = 0; i < Words<Enum>::list.size(); ++i)
        if (Words<Enum>::list[i] == text) return static_cast<Enum>(i);
    return std::nullopt;
}

/// LAPWING_WORDS(Fuel, "petrol", "diesel"): keeps an enumeration and its words side by side.
#define LAPWING_WORDS(Enum, ...)                                                     \
    template <>                                                                      \
    struct Words<Enum> {                                                             \
        static constexpr auto list = std::to_array<std::string_view>({__VA_ARGS__}); \
    }

}  // namespace lapwing

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <cstddef>
#include <cstdint>
#include <iterator>

/// The tables behind core/base/letters.h; each in the order of its letters.
namespace lapwing::letters {

/// Every `step`th letter from `first` to `last` comes to the one that stands `distance` further on.
struct Run {
    char32_t first, last;
    std::uint8_t step;
    std::int32_t distance;
};
extern const Run runs[];
extern const std::size_t run_count;

/// A letter that comes to several; zeros fill up.
struct Parts {
    char32_t whole;
    char32_t parts[4];
};
extern const Parts parts[];
extern const std::size_t parts_count;

/// Marks that stand on the letter before them.
struct Range {
    char32_t first, last;
};
extern const Range marks[];
extern const std::size_t mark_count;

}  // namespace lapwing::letters

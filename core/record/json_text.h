// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <cstddef>
#include <cstdint>
#include <string_view>
#include <vector>

#include "core/record/record.h"

namespace lapwing {

/// Numbers, texts, objects and lists: more would take too much memory before anything is known of them. What
/// this app writes takes 34 bytes a value, and stays below that number by its length.
inline constexpr std::size_t most_json_values = 500'000;
/// In one object. Looking up a name is linear: an object of millions would take hours.
inline constexpr std::size_t most_json_names = 500;

/// Looks through a text from outside before anything is built from it: whether it is JSON, not too long, too
/// deep (see record.h) or too much, and names nothing twice in one place. Takes time with the text's length
/// and no more memory than its nesting. `names` gets the number of names of each object, in the order in
/// which they begin: for who builds it, so that nothing need grow.
Status check_json_text(std::string_view text, std::size_t most_values = most_json_values,
                       std::vector<std::uint16_t>* names = nullptr);

}  // namespace lapwing

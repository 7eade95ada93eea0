// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <nlohmann/json.hpp>
#include <string_view>

#include "core/base/result.h"

namespace lapwing::record {

/// A text from outside as a tree, if `check_json_text` has nothing against it. Within a record nothing else
/// builds one: the library's own way copies all that an object holds whenever the object grows, and so takes
/// twice the memory.
[[nodiscard]] Result<nlohmann::ordered_json> json_tree(std::string_view text);

}  // namespace lapwing::record

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <algorithm>
#include <optional>
#include <vector>

#include "core/base/uuid.h"

namespace lapwing {

/// The record of that id among those of its kind; null without an id, or where it is not one of them.
template <class T>
const T* with_id(const std::vector<T>& records, const std::optional<Uuid>& id) {
    const auto found = std::ranges::find_if(records, [&](const T& one) { return id && one.id.uuid == *id; });
    return found == records.end() ? nullptr : &*found;
}

}  // namespace lapwing

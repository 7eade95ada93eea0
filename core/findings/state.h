// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/model/words.h"

namespace lapwing::findings {

enum class State { none, good, borderline, fault };

/// The worse of two states; anything measured outweighs `none`.
constexpr State worse(State a, State b) {
    return a < b ? b : a;
}

}  // namespace lapwing::findings

namespace lapwing {
LAPWING_WORDS(findings::State, "not measured", "in range", "borderline", "fault");
}  // namespace lapwing

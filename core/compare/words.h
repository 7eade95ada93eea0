// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/compare/history.h"
#include "core/compare/proof.h"
#include "core/findings/word_kinds.h"

/// What this room's enumerations are called in a Word's code: Verdict::worse is "change:worse".
namespace lapwing::findings {

template <>
struct KindName<compare::Verdict> {
    static constexpr std::string_view value = "change";
};
template <>
struct KindName<compare::Treatment> {
    static constexpr std::string_view value = "treatment";
};
template <>
struct KindName<compare::Direction> {
    static constexpr std::string_view value = "direction";
};
template <>
struct KindName<compare::Outcome> {
    static constexpr std::string_view value = "foretold";
};

}  // namespace lapwing::findings

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <optional>
#include <vector>

#include "core/findings/findings.h"

namespace lapwing::findings {

/// What stands on the pad at this moment.
struct PadEntry {
    TestKind test = TestKind::dry;
    int cylinder = 1;
    Tag tag = Tag::as_found;
    std::optional<TypedPressure> first;
    std::optional<TypedPressure> final;
    std::optional<TypedPressure> set;
    std::optional<TypedPressure> held;
    std::optional<TypedTime> hold;
    std::optional<TesterId> tester;  ///< absent: the session's tester for this test
};

struct PadJudgement {
    State state = State::none;
    std::optional<Derived> value;       ///< final or held with its uncertainty
    std::optional<Derived> leakage;     ///< leak-down and crankcase
    std::optional<OnTester> converted;  ///< leak-down: on the tester that the bands belong to
    std::optional<Derived> rise;        ///< wet: against the cylinder's dry reading
    std::vector<Remark> questions;      ///< shown beside the entry; nothing is refused
};

/// Judges an entry while it is typed, in well under a millisecond. Anything may be missing.
PadJudgement judge_entry(const Dossier& dossier, const Visit& visit, const Reference& reference,
                         const PadEntry& entry);

}  // namespace lapwing::findings

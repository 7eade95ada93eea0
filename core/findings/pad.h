// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <optional>
#include <vector>

#include "core/findings/crank_model.h"
#include "core/findings/findings.h"

namespace lapwing::findings {

/// What stands on the pad at this moment.
struct PadEntry {
    TestKind test = TestKind::dry;
    int cylinder = 1;
    Tag tag = Tag::as_found;
    std::optional<TypedPressure> first;
    std::optional<TypedPressure> final;
    std::optional<int> pulls;
    std::optional<TypedPressure> set;
    std::optional<TypedPressure> held;
    /// The digits of `final`, or in leak-down of a set pressure that was typed, as they were struck: before
    /// anyone placed a point in them. Empty: nothing typed.
    std::string struck;
    std::optional<TypedRatio> dial_loss;  ///< what `held` was worked out from
    std::optional<TypedTime> hold;
    std::optional<TypedVolume> oil_volume;  ///< wet
    std::optional<TesterId> tester;         ///< absent: the session's tester for this test
    std::string adapter;                    ///< name of one of the tester's, may be empty
};

struct PadJudgement {
    State state = State::none;
    std::optional<Derived> value;       ///< final or held with its uncertainty
    std::optional<Derived> leakage;     ///< leak-down and crankcase
    double leakage_own_u95 = 0.0;       ///< the part of its doubt that a repeat on this tester doesn't share
    std::optional<OnTester> converted;  ///< leak-down: on the tester that the bands belong to
    std::optional<Derived> leak_hole;   ///< leak-down: round hole that would leak as much
    /// The same digits in another unit, where what was typed lies far from what can be expected and this does
    /// not: perhaps it was read off the dial's other scale.
    std::optional<TypedPressure> other_unit;
    std::optional<Derived> rise;  ///< wet: against the cylinder's dry reading
    /// What the number is to be held against, before it is typed and while: factory limits here or what the
    /// model expects, first puff against final, what oil's volume explains, what the hose takes off. Each
    /// with its derivations.
    std::vector<Remark> facts;
    std::vector<Remark> questions;  ///< shown beside the entry; nothing is refused
};

/// What the cranking model is given for this entry. Cheap; make `model_facts` (milliseconds) elsewhere when
/// it differs from the inputs of the facts at hand. Digits of the reading don't change it.
ModelInputs model_inputs(const Dossier& dossier, const Visit& visit, const Reference& reference,
                         const PadEntry& entry);

/// Judges an entry while it is typed, in well under a millisecond. Anything may be missing.
/// @param model facts made from this entry's model_inputs; null: not there yet, and what rests on them is
/// left out
PadJudgement judge_entry(const Dossier& dossier, const Visit& visit, const Reference& reference,
                         const PadEntry& entry, const ModelFacts* model = nullptr);

}  // namespace lapwing::findings

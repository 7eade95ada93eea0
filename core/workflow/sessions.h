// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/workflow/command.h"

namespace lapwing::workflow {

/// What was looked at before a session, or its first cranking: a throttle that is held open is a step of
/// Prepare done.
struct Start {
    Throttle throttle = Throttle::unknown;
    EngineHeat heat = EngineHeat::unknown;

    bool operator==(const Start&) const = default;
};

/// Opens a session on `engine` ("session.open"; args: engine name, title). What stays the same from visit to
/// visit is filled in: the three testers and the shop's altitude from the engine's last session, or else the
/// altitude from its card. Weather, heat and the list of Prepare start blank: they have to be looked at anew.
Intent open_session(SessionId id, EngineId engine, std::string title, Start start = {});

/// Notes the same in a session that is open already ("session.conditions").
Intent set_start(SessionId session, Start start);

/// Stands in for the session's own fields ("session.change"). Its engine and opening time can't change.
Intent save_session(Session session);

/// Marks one step of Prepare ("session.step"; args: step, state).
Intent mark_step(SessionId session, const PrepareMark& mark);

/// Marks several steps of Prepare at once ("session.prepare"; args: how many, state).
Intent mark_steps(SessionId session, std::vector<PrepareMark> marks);

/// "session.conditions".
Intent set_conditions(SessionId session, const Conditions& conditions);

enum class TesterUse { compression, leak_down, crankcase };
/// Chooses the session's tester for one kind of test, or none ("session.tester").
Intent choose_tester(SessionId session, TesterUse use, std::optional<TesterId> tester);

/// The owner's answer to the plan ("session.answer").
Intent set_answer(SessionId session, OwnerAnswer answer);

/// Plans the day of the retest, or no retest ("session.retest").
Intent plan_retest(SessionId session, std::optional<Timestamp> day);

/// Takes a session and everything recorded in it out, undo apart ("session.delete").
Intent remove_session(SessionId session);

}  // namespace lapwing::workflow

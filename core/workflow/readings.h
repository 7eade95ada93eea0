// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <optional>
#include <span>

#include "core/model/visit.h"
#include "core/workflow/command.h"

namespace lapwing::workflow {

/// Keeps a new reading ("reading.keep"; args: test, cylinder). A nil id and a zero time are filled in; a
/// tester left out is taken from the session. `oiled` is set here: oil stays on the rings, so a wet reading
/// is fresh, and after any wet reading of the cylinder in this session, or in another one of the same hours,
/// later dry and leak-down readings are marked before. What a caller says is believed where no wet test of
/// this session tells: before, where oil came from elsewhere; no, where the oil of another session is gone.
/// Else no. What is read in a session that follows work which the plan of the one before has ticked is tagged
/// after repair, and whether its rings are oiled is unknown where oil went in before that work and nobody
/// says. Requests for this test that stand in this session or an earlier one of the engine and are carried
/// out with it are ticked. Photos of the gauge that wait for this reading (see waiting_photos) are tied to
/// it; those that read otherwise are noted as `settled`, where somebody said which holds. Refused: a session
/// or cylinder that isn't there, a reading that can't exist (model's checked).
Intent keep_reading(const Reading& reading, std::optional<ReadSettled> settled = {});

/// Whether a session may have begun within the same work: oil of its wet tests may still be on the rings.
bool of_the_same_work(const Session& session, Timestamp at);

/// The wet test of one of the other sessions whose oil may still be on the rings of this cylinder at that
/// moment; null where there is none, and where `visit` has a wet test of the cylinder before it.
const Reading* oil_of_other_session(std::span<const Visit> others, const Visit& visit, int cylinder,
                                    Timestamp at);

/// Redo: keeps `reading` in place of `replaced`, which stays in the history ("reading.redo"). Session, test
/// and cylinder are those of the replaced one.
Intent redo_reading(ReadingId replaced, const Reading& reading, std::optional<ReadSettled> settled = {});

/// What belongs to a reading that was kept without it; what is left out stays as it is.
struct Addition {
    std::optional<TypedPressure> first;
    std::optional<int> pulls;
    std::optional<TypedVolume> oil_volume;
};

/// Adds to a reading what was typed after it was kept ("reading.add"; args: test, cylinder).
Intent add_to_reading(ReadingId id, const Addition& more);

/// Takes a reading out for good, undo apart ("reading.remove"). Refused while a later reading replaces it.
/// Requests that nothing carries out any more without it are opened again in the same step.
Intent remove_reading(ReadingId id);

}  // namespace lapwing::workflow

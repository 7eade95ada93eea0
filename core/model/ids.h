// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/base/uuid.h"

namespace lapwing {

using EngineId = Id<struct EngineTag>;
using TesterId = Id<struct TesterTag>;
using SessionId = Id<struct SessionTag>;
using ReadingId = Id<struct ReadingTag>;
using ExitNoteId = Id<struct ExitNoteTag>;
using ClearanceId = Id<struct ClearanceTag>;
using AttachmentId = Id<struct AttachmentTag>;
using NoteId = Id<struct NoteTag>;
using PlanLineId = Id<struct PlanLineTag>;

}  // namespace lapwing

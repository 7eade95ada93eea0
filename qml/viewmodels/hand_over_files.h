// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <filesystem>
#include <string>

#include "core/exchange/whereabouts.h"
#include "core/findings/reference.h"
#include "core/workflow/desk.h"
#include "core/workflow/hand_over.h"
#include "qml/format/formatter.h"

namespace lapwing {

enum class HandOverKind { report, session_file, table };

/// What one file is to hold, and how it is written.
struct HandOverOrder {
    HandOverKind kind = HandOverKind::report;
    workflow::HandOver chosen;
    SessionId session;  ///< the visit that the report is of
    bool letter = false;
    bool appendix = false;  ///< report: formulas and sources too; the one in a session file always has them
    format::Formatter format;
    std::filesystem::path folder;  ///< made when missing
};

/// "Orchard V-twin 2026-03-14 As found.pdf": the engine's name without what file systems refuse, the visit's
/// day and title.
std::string hand_over_name(const Engine& engine, const Session& session, HandOverKind kind);

struct HandedOver {
    std::filesystem::path file;
    std::vector<exchange::Gap> gaps;  ///< photos and voice notes that this library no longer has
    std::vector<exchange::Whereabouts> whereabouts = {};  ///< photos in it that tell where they were taken
};

/// Writes the file and hands back where it lies. Takes long enough to be called off the UI thread.
Result<HandedOver> write_hand_over(const workflow::Desk& desk, const findings::Reference& reference,
                                   const HandOverOrder& order);

}  // namespace lapwing

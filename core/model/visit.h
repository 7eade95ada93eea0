// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <vector>

#include "core/model/engine.h"
#include "core/model/evidence.h"
#include "core/model/reading.h"
#include "core/model/session.h"
#include "core/model/tester.h"

namespace lapwing {

/// A session with everything that was recorded in it, old versions of redone readings included.
struct Visit {
    Session session;
    std::vector<Reading> readings;      ///< oldest first
    std::vector<ExitNote> exits;        ///< oldest first
    std::vector<Clearance> clearances;  ///< oldest first
    std::vector<Attachment> attachments;
    std::vector<Note> notes;
    std::vector<PlanLine> plan;

    bool operator==(const Visit&) const = default;
};

/// What became of a stored file: not there any more, or its bytes are not those that were stored.
enum class Loss { lost, damaged };
LAPWING_WORDS(Loss, "lost", "damaged");

/// A photo or voice note that a session file speaks of and doesn't hold, because it was lost where the file
/// was written. It is said rather than left out, and never keeps the rest from being handed over.
struct MissingFile {
    AttachmentId attachment;
    Loss loss = Loss::lost;

    bool operator==(const MissingFile&) const = default;
};

/// One engine with one or several visits and the testers used: what a session file carries.
struct Dossier {
    Engine engine;
    std::vector<Tester> testers;
    std::vector<Visit> visits;         ///< oldest first
    std::vector<MissingFile> missing;  ///< of a session file; a library's own dossiers have none

    bool operator==(const Dossier&) const = default;
};

/// Readings that count: those that no other reading of the same test on the same cylinder replaces. Where
/// records replace each other in a circle the newest of them stands: nothing that was recorded disappears
/// altogether. The same holds for notes and clearances.
std::vector<const Reading*> standing(const std::vector<Reading>& readings, TestKind test, int cylinder);
std::vector<const ExitNote*> standing(const std::vector<ExitNote>& exits, int cylinder);
std::vector<const Clearance*> standing(const std::vector<Clearance>& clearances, int cylinder);

/// The newest reading that counts, or null.
const Reading* latest(const std::vector<Reading>& readings, TestKind test, int cylinder);

const Tester* find_tester(const Dossier& dossier, std::optional<TesterId> id);

}  // namespace lapwing

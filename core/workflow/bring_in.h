// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <map>

#include "core/workflow/command.h"

namespace lapwing::workflow {

class Desk;

/// What bringing a dossier in would do, record by record.
struct Preview {
    std::map<RecordKind, int> added;
    std::map<RecordKind, int> same;       ///< here already, equal in every field
    std::map<RecordKind, int> different;  ///< here already and not the same: stands in the way for now
    bool new_engine = false;

    static int total(const std::map<RecordKind, int>& counts);
};

Preview preview(const Desk& desk, const Dossier& dossier);

/// Brings a dossier into the library ("dossier.bring_in"; args: engine name, records added). New ids are
/// added, equal records skipped, so that doing it twice changes nothing. Refused whole, with a sentence that
/// names the first one, when a record here has the same id and other contents.
Intent bring_in(Dossier dossier);

}  // namespace lapwing::workflow

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <vector>

#include "core/store/attachment_files.h"
#include "core/workflow/command.h"
#include "core/workflow/hand_over.h"

namespace lapwing::workflow {

/// A copy of a photo without what was noted beside it, stored under its own hash.
struct BarePhoto {
    AttachmentId id;
    std::string was;  ///< SHA-256 of the photo as it came
    store::AttachmentFiles::Kept copy;
};

/// Copies without their place of those photos of a hand-over that tell where they were taken. Those whose
/// file is gone are left out. Nothing names the copies until `keep_bare` does.
Result<std::vector<BarePhoto>> bare_photos(const Desk& desk, const HandOver& chosen);

/// Lets the copies stand in for the photos ("attachment.bare"; args: how many). The photos as they came stay
/// in the library's folder, so that undo finds them. Others get it as a later version of the same record.
Intent keep_bare(std::vector<BarePhoto> photos);

}  // namespace lapwing::workflow

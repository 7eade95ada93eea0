// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <vector>

#include "core/model/visit.h"

namespace lapwing::workflow {

/// The photos of a gauge that wait for the reading that `cylinder` (by its number) is about to get: taken at
/// that cylinder and tied to no reading, since its last reading of any test and no more than a quarter of an
/// hour before `at`. A number typed is mostly there before it is kept: the photo in between shows that very
/// needle. The pointers are into `visit`.
std::vector<const Attachment*> waiting_photos(const Visit& visit, int cylinder, Timestamp at);

}  // namespace lapwing::workflow

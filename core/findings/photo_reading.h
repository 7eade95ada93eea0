// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <optional>

#include "core/model/evidence.h"
#include "core/model/reading.h"

namespace lapwing::findings {

/// What was typed off the gauge that a photo of this reading shows: the final reading, or what was held.
std::optional<TypedPressure> typed_off_gauge(const Reading& reading);

/// Whether the photo reads otherwise than was typed by more than both uncertainties together: twice the
/// standard uncertainty of the photo's reading and half a step of the digits typed. False for a photo that
/// was not read, and where nothing was typed.
bool photo_differs(const Reading& typed, const Attachment& photo);

/// Puts what a photo reads in the place of what was typed.
void take_off_photo(Reading& reading, const TypedPressure& read);

/// It differs and nobody has decided which one holds.
bool photo_unsettled(const Reading& reading, const Attachment& photo);

}  // namespace lapwing::findings

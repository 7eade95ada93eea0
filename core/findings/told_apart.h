// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <string_view>

#include "core/findings/derivation.h"
#include "core/findings/reference.h"

/// A number and a limit that its doubt does not tell apart: because they lie close to each other, or because
/// the doubt is wide. The one is no reason to look for a better gauge, the other is. Internal to this room.
namespace lapwing::findings {

/// Whether they lie so close that even a good gauge would hardly tell them apart.
/// @param level what the gauge shows there: the limit, or for differences the highest reading; 1 for shares
bool lies_close(const Reference& reference, double distance, double level);

/// The widest part of a doubt as what makes it smaller: "narrow:gauge". Of a limit that was brought to the
/// shop's air its own doubt may be the wider one.
Word what_narrows(const Derived& number, const Figure& limit);
Word what_narrows(const std::vector<DoubtShare>& doubts);

}  // namespace lapwing::findings

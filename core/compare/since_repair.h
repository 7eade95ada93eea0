// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/compare/history.h"

namespace lapwing::compare {

/// A leak that comes back, or comes up, after a repair. Needs a repair in between; later readings worse than
/// those after it beyond doubt (one test, dry test and leak-down together, or a trend of three and more
/// visits); and no test that says the opposite.
std::optional<SinceRepair> since_repair(const Dossier& dossier, const History& history,
                                        const CylinderHistory& cylinder,
                                        const findings::Reference& reference);

}  // namespace lapwing::compare

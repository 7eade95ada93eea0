// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/model/visit.h"

namespace lapwing::demo {

/// The invented engines, the same every time.
Dossier orchard_v_twin();
Dossier harbour_six();

}  // namespace lapwing::demo

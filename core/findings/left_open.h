// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/findings/findings.h"

namespace lapwing::findings {

/// The cylinders in which air found a fault at an earlier visit and where none was put on since, by what the
/// findings ask: this visit's readings alone can't call them sound.
CylinderList faults_left_open(const Findings& findings);

}  // namespace lapwing::findings

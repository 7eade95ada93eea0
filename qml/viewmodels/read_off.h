// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/model/evidence.h"
#include "qml/format/formatter.h"

namespace lapwing {

/// As many decimals as an uncertainty of that size lets stand.
int decimals_for(double u);

/// What a photo of a gauge reads: "4.06 bar ± 0.01". It must have been read.
QString read_off(const Attachment& photo, const format::Formatter& format);

}  // namespace lapwing

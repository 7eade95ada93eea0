// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "qml/format/formatter.h"

namespace lapwing::format {

/// A sentence whose figures stand without their doubt, but with the digits that it allows: where the same
/// figures have another doubt beside it, or none of it counts.
QString bare_text(const findings::Message& message, const Formatter& format);

}  // namespace lapwing::format

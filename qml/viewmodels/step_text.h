// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include "core/workflow/command.h"
#include "qml/format/formatter.h"

namespace lapwing {

/// What a step did, in a few words: "Cylinder 2, dry test: kept".
QString step_text(const workflow::Step& step, const format::Formatter& format);

}  // namespace lapwing

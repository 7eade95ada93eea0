// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "qml/viewmodels/form_lines.h"

namespace lapwing {

/// The lines of the Engine card that make sense for this engine: a two-stroke has no valves, and only banks
/// have an angle between them.
FormLines<Engine> engine_card_lines(const Engine& engine, const format::Formatter& format);

}  // namespace lapwing

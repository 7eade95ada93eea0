// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/model/visit.h"
#include "qml/format/formatter.h"

namespace lapwing {

/// Its title; without one what was done in it, "Dry test, leak-down"; empty where nothing was.
QString session_name(const Visit& visit, const format::Formatter& format);

}  // namespace lapwing

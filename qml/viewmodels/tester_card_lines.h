// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/model/tester.h"
#include "qml/viewmodels/form_lines.h"

namespace lapwing {

/// The lines of the Tester card for this kind of tester.
FormLines<Tester> tester_card_lines(const Tester& tester, const format::Formatter& format);

}  // namespace lapwing

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/calculators/calculators.h"
#include "qml/viewmodels/form_lines.h"

namespace lapwing {

/// What one calculator asks for, as a form over its worksheet.
FormLines<calculators::Worksheet> calculator_lines(calculators::Calculator calculator,
                                                   const calculators::Worksheet& sheet,
                                                   const format::Formatter& format);

/// Its name, and what it is for in half a sentence.
QString calculator_title(calculators::Calculator calculator);
QString calculator_purpose(calculators::Calculator calculator);

}  // namespace lapwing

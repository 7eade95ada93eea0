// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/calculators/calculators.h"
#include "core/findings/case.h"

/// Internal to this room: one function a calculator, and what they share.
namespace lapwing::calculators {

Result<Answer> leakage(const Worksheet& sheet, const findings::Reference& reference);
Result<Answer> other_tester(const Worksheet& sheet, const findings::Reference& reference);
Result<Answer> law(const Worksheet& sheet, const findings::Reference& reference);
Result<Answer> restrictor(const Worksheet& sheet, const findings::Reference& reference);
Result<Answer> hose(const Worksheet& sheet, const findings::Reference& reference);
Result<Answer> oil(const Worksheet& sheet, const findings::Reference& reference);
Result<Answer> healthy(const Worksheet& sheet, const findings::Reference& reference);
Result<Answer> turning(const Worksheet& sheet, const findings::Reference& reference);
Result<Answer> altitude(const Worksheet& sheet, const findings::Reference& reference);
Result<Answer> torque(const Worksheet& sheet, const findings::Reference& reference);
Result<Answer> units_of(const Worksheet& sheet);

inline findings::Word name(std::string_view of) {
    return {"calc:" + std::string(of)};
}
using findings::figure;
using findings::input;

/// `what` in English, as the field is called.
inline auto needs(std::string_view what) {
    return fail("calculator.needs", "Still to be typed: {}.", what);
}

}  // namespace lapwing::calculators

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/model/evidence.h"
#include "qml/viewmodels/form_lines.h"

namespace lapwing {

/// The lines of a plan line's form. `currency` is that of a price that is typed without one; may be empty.
FormLines<PlanLine> plan_lines(const PlanLine& line, const Engine& engine, const QString& currency,
                               const format::Formatter& format);

/// "420 EUR": a price as a person types it, in any order; empty text is no price. Fails with "plan.price" or
/// "plan.currency".
/// @param currency of a price that is typed without one; may be empty: then it has to be typed
Result<std::optional<Money>> price_of(const QString& text, const QString& currency = {});

}  // namespace lapwing

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QVariant>

#include "core/model/tester.h"
#include "qml/format/formatter.h"

namespace lapwing {

/// Self-checks of a tester of this kind, as TesterCardForm::checks hands them out.
QVariantList tester_checks(const Tester& tester, const format::Formatter& format);

/// A self-check from what was typed into its sheet ({set, shown, hole, note}).
Result<TesterCheck> tester_check_from(const Tester& tester, const QString& kind, bool passed,
                                      const QVariantMap& typed, Timestamp at);

}  // namespace lapwing

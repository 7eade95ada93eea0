// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QVariantMap>

#include "core/odds/where_it_leaks.h"
#include "qml/format/formatter.h"

namespace lapwing {

/// One cylinder's odds for a page: {headline, verdict, shares, others, means, repairs, reasons}; `means` says
/// what `others`, that it seals well, stands for. Without a verdict
/// there are no shares, chances and repairs. `shares` are lines of a SplitBar and its legend, the largest
/// first: {path, name, label, share, mean, low, high, figure, detail, text}; `repairs` {figure, text}.
QVariantMap odds_map(const findings::CylinderFindings& rules, const odds::WhereItLeaks& leaks,
                     const odds::CylinderOdds& odds, const findings::Reference& reference,
                     const format::Formatter& format);

/// What stands over a cylinder's odds. Odds that call it sound take no fault back that an earlier visit found
/// and nobody mended.
findings::Message said_of(const findings::Findings& rules, const odds::CylinderOdds& odds,
                          const findings::Reference& reference);

/// How the odds of a cylinder are made, and what of it went in; then how each reading after a repair is.
std::vector<findings::Derivation> odds_derivations(const findings::CylinderFindings& rules,
                                                   const odds::CylinderOdds& odds,
                                                   const findings::Reference& reference,
                                                   int assumptions_version);

/// Tests that would tell something and are not among the steps already, the most telling first: {title, text,
/// page, args}.
QVariantList tests_to_settle(const odds::WhereItLeaks& leaks, const std::vector<findings::NextStep>& steps,
                             const findings::Reference& reference, const format::Formatter& format,
                             const QString& session_id);

}  // namespace lapwing

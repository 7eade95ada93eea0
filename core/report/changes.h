// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/compare/history.h"
#include "core/findings/findings.h"
#include "core/report/report.h"

/// Figures of two and more visits, as data: the same for a screen and for paper.
namespace lapwing::report {

/// One test's bores at both visits, in one scale and with the later visit's limits.
struct ChangeBores {
    Bores before;
    Bores after;
};
ChangeBores bores_of(const Engine& engine, const compare::Comparison& changes, TestKind test,
                     const findings::Findings& before, const findings::Findings& after);

/// The visits that have this test, with a line for every cylinder that has a point.
Chart chart_of(const Engine& engine, const compare::History& history, TestKind test);

}  // namespace lapwing::report

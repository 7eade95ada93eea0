// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QVariant>

#include "core/compare/proof.h"
#include "core/report/report.h"
#include "qml/format/formatter.h"

/// What pages say of two and more visits.
namespace lapwing {

/// "9.1 bar"; a converted one "9.1 bar (measured 9.4 bar)"; a dash when it was not measured.
QString measure_text(const std::optional<compare::Measure>& measure, const format::Formatter& format);

/// "+0.9 bar ± 0.7"
QString signed_text(const findings::Figure& figure, const format::Formatter& format);

/// "surely_better", "better", "same", "worse", "surely_worse", "not_comparable", "none": what ChangeMark
/// draws.
QString verdict_key(const compare::Change& change);
QString verdict_text(const compare::Change& change, const format::Formatter& format);

/// {symbol, text}; with the cylinders where not all are meant.
QVariantList reason_lines(const std::vector<compare::Reason>& reasons, const Engine& engine,
                          const format::Formatter& format);

/// What came of a prediction: {symbol, mark, figure, text, from}. Without doubts: beside it the same readings
/// have those of their own day.
QVariantMap proof_line(const compare::Proof& proof, const format::Formatter& format);

/// As BoreGlyph wants it.
QVariantMap bore_map(const report::Bore& bore);

}  // namespace lapwing

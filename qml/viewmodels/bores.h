// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>
#include <QVariantMap>

#include "core/findings/findings.h"
#include "qml/format/formatter.h"

namespace lapwing {

/// State as the components know it: "good", "borderline", "fault" or "none".
/// The key of what was measured and has no state: nothing says what it should be.
inline const QString measured_only = QStringLiteral("unjudged");
QString state_key(findings::State state);

/// State of one cylinder in one test; the cylinder's own (worst) state without a test.
findings::State state_of(const findings::CylinderFindings* cylinder, std::optional<TestKind> test);

/// One bore as the glyph wants it: {measured, value, u, limit, low, high, state}, heights as shares of the
/// glyph. Cranking tests share one scale over the engine, so that bores can be compared by eye; in leak-down
/// the height is the held part of the set pressure. Missing marks are NaN.
QVariantMap bore(const findings::Findings& findings, TestKind test, int cylinder);

/// Whether the factory limits were brought to this shop's air: only then do they differ from the card's.
bool limits_scaled(const findings::Findings& findings);

/// The test that says most about an engine at a glance: leak-down if any cylinder has one, else dry.
TestKind telling_test(const findings::Findings& findings);

/// A bore with the cylinder's number, name, place on the layout and its figure as text, for rails and tiles.
QVariantMap cylinder_item(const findings::Findings& findings, const Engine& engine, const Cylinder& cylinder,
                          TestKind test, const format::Formatter& format);

}  // namespace lapwing

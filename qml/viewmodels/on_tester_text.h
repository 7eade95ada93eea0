// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include "core/findings/findings.h"
#include "qml/format/formatter.h"

namespace lapwing {

/// What another tester would show of the same leak, between both laws, "5 % to 52 %". A wide range pretends
/// to no tenths.
QString share_on(const findings::OnTester& other, const format::Formatter& format);
/// "on a tester of 5.5 bar behind 1.02 mm"
QString name_of(const findings::OnTester& other, const format::Formatter& format);

}  // namespace lapwing

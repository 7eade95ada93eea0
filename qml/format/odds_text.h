// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/odds/where_it_leaks.h"
#include "qml/format/formatter.h"

/// Figures of the odds as text.
namespace lapwing::format {

/// A share in whole per cent: "80 %", "under 1 %".
QString share_text(double share, const Formatter& format);
/// Its 90 % interval: "66 to 90 %"; empty where all of it is "under 1 %".
QString interval_text(const odds::Interval& share, const Formatter& format);
/// A chance, rounded as odds::shown_percent has it: "95 %".
QString chance_text(double chance, const Formatter& format);
/// Both on one line: "80 %, 66 to 90 %".
QString share_line(const odds::Interval& share, const Formatter& format);
/// The reading to expect after a repair: "10.2 bar (8.9 to 11.4)".
QString reading_text(const odds::AfterRepair& after, const Formatter& format);

}  // namespace lapwing::format

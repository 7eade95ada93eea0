// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "qml/print/flow.h"
#include "qml/print/wording.h"

/// How each block of a report is laid out.
namespace lapwing::print {

void put_heading(Flow& flow, const QString& text);
/// Every block of a section; bores and worked numbers that follow each other stand side by side.
void put_blocks(Flow& flow, const Wording& wording, const std::vector<report::Block>& blocks);

void put(Flow& flow, const Wording& wording, const report::Facts& facts);
void put(Flow& flow, const Wording& wording, const report::Sentences& sentences);
void put(Flow& flow, const Wording& wording, const report::Verdicts& verdicts);
void put(Flow& flow, const Wording& wording, const std::vector<const report::Worked*>& worked);
// table_layout.cpp
void put(Flow& flow, const Wording& wording, const report::Table& table);
void put(Flow& flow, const Wording& wording, const report::Series& series);
// share_bar.cpp
void put(Flow& flow, const Wording& wording, const report::Shares& shares);
// history_chart.cpp
void put(Flow& flow, const Wording& wording, const std::vector<const report::Chart*>& charts);
// bore_strip.cpp
void put(Flow& flow, const Wording& wording, const std::vector<const report::Bores*>& strips);

/// A state's mark with its word, broken to `width`.
Pieces state_pieces(const Wording& wording, findings::State state, const Style& style, double width);

}  // namespace lapwing::print

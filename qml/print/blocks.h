// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "qml/print/flow.h"
#include "qml/print/photo_file.h"
#include "qml/print/wording.h"

/// How each block of a report is laid out.
namespace lapwing::print {

/// What blocks need beside a place to stand.
struct Means {
    const Wording& wording;
    const PhotoFile& photos;
    bool bores_explained = false;  ///< said once in a report
};

/// The sections in their order: what an owner reads across the page, what it rests on in two columns, how the
/// numbers were made in two columns of small print.
void put_sections(Flow& flow, Means& means, const std::vector<report::Section>& sections);

/// @param beside lists whose values stand below this one's, itself among them
void put(Flow& flow, const Wording& wording, const report::Facts& facts,
         const std::vector<const report::Facts*>& beside);
/// @param leading whether the last of them belongs to the block that follows
void put(Flow& flow, const Wording& wording, const report::Sentences& sentences, bool leading = false);
void put(Flow& flow, const Wording& wording, const report::Verdicts& verdicts);
// worked.cpp
void put(Flow& flow, const Wording& wording, const std::vector<const report::Worked*>& worked);
// table_layout.cpp
void put(Flow& flow, const Wording& wording, const report::Table& table);
/// @param named its name stands above already, with its chart
void put(Flow& flow, const Wording& wording, const report::Series& series, bool named);
// share_bar.cpp
void put(Flow& flow, const Wording& wording, const report::Shares& shares);
// history_chart.cpp
void put(Flow& flow, const Wording& wording, const report::Chart& chart);
// photo_row.cpp
void put(Flow& flow, const Means& means, const report::Photos& photos);
// bore_strip.cpp
void put(Flow& flow, Means& means, const std::vector<const report::Bores*>& strips);

/// A state's mark with its word, broken to `width`.
Pieces state_pieces(const Wording& wording, findings::State state, const Style& style, double width);
/// "Cylinder 3"
QString cylinder_title(const Wording& wording, int number);

}  // namespace lapwing::print

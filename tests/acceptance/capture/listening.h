// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>
#include <vector>

namespace lapwing::test {

/// Any sound file as loudness over time: the RMS of every 20 ms. ffmpeg decodes it. Empty when it can't.
std::vector<double> loudness_of(const QString& file);

/// How alike two sounds are in their rise and fall, wherever one begins in the other: the greatest
/// correlation (Pearson) over all shifts of `said` within `heard`; -1..1, 0 when one of them is silent or
/// shorter.
double likeness(const std::vector<double>& said, const std::vector<double>& heard);

}  // namespace lapwing::test

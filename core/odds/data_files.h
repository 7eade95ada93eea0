// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/findings/reference.h"

/// Which data a result rests on: every file of assets/reference, findings' and odds' alike. Handed over with
/// it, so that an old report can be worked out again with the very same files.
namespace lapwing::odds {

struct DataFile {
    std::string name;
    int version = 0;  ///< as written in it; 0: it has none
    std::string
        sha256;  ///< of its text: a number that was changed shows even where the version was not raised

    bool operator==(const DataFile&) const = default;
};

/// By name.
std::vector<DataFile> data_files(const findings::ReferenceTexts& reference, std::string_view odds);
/// As built into this program.
std::vector<DataFile> built_in_data();

/// "limits.json, version 1, sha256 ..." with the whole sum.
std::string in_full(const DataFile& file);
/// The first eight digits of the SHA-256 over all of these lines: the whole of the data, for paper.
std::string sum_of(const std::vector<DataFile>& files);

}  // namespace lapwing::odds

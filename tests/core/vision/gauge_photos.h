// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <cstddef>
#include <string>
#include <vector>

/// The synthetic photos of tests/fixtures/gauge-photos (or of another folder of the same form) and what is
/// known of them: truth.csv, explained in the README beside it.
namespace lapwing::test {

struct GaugePhoto {
    std::string file;
    double min = 0;
    double max = 0;
    double sweep_deg = 0;
    double value = 0;
    double centre_x = 0, centre_y = 0;
    double zero_x = 0, zero_y = 0;
    double full_x = 0, full_y = 0;
    std::string difficulty;  ///< easy, medium, hard
    std::string style;
    std::vector<std::string>
        conditions;  ///< what is the matter with the photo; empty where truth.csv has no such column
};

/// Throws std::runtime_error when the folder holds no truth.csv of that form.
[[nodiscard]] std::vector<GaugePhoto> gauge_photos(const std::string& folder);

[[nodiscard]] std::vector<std::byte> bytes_of(const std::string& path);

}  // namespace lapwing::test

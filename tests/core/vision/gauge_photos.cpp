// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/core/vision/gauge_photos.h"

#include <fstream>
#include <iterator>
#include <map>
#include <sstream>
#include <stdexcept>

namespace lapwing::test {
namespace {

std::vector<std::string> cells_of(const std::string& line, char between = ',') {
    std::vector<std::string> cells;
    std::stringstream rest(line);
    for (std::string cell; std::getline(rest, cell, between);)
        cells.push_back(cell);
    return cells;
}

}  // namespace

std::vector<GaugePhoto> gauge_photos(const std::string& folder) {
    std::ifstream table(folder + "/truth.csv");
    std::string line;
    if (!std::getline(table, line)) throw std::runtime_error("no truth.csv in " + folder);
    std::map<std::string, std::size_t> column;
    for (const std::string& name : cells_of(line))
        column.emplace(name, column.size());
    std::vector<GaugePhoto> photos;
    while (std::getline(table, line)) {
        const auto cells = cells_of(line);
        const auto text = [&](const char* name) { return cells.at(column.at(name)); };
        const auto number = [&](const char* name) { return std::stod(text(name)); };
        photos.push_back({text("file"),
                          number("scale_min"),
                          number("scale_max"),
                          number("angle_at_max_deg") - number("angle_at_min_deg"),
                          number("true_value"),
                          number("centre_x"),
                          number("centre_y"),
                          number("zero_x"),
                          number("zero_y"),
                          number("full_x"),
                          number("full_y"),
                          text("difficulty"),
                          text("style"),
                          {}});
        if (column.contains("conditions")) photos.back().conditions = cells_of(text("conditions"), '+');
    }
    return photos;
}

std::vector<std::byte> bytes_of(const std::string& path) {
    std::ifstream file(path, std::ios::binary);
    const std::string text((std::istreambuf_iterator<char>(file)), {});
    const auto* first = reinterpret_cast<const std::byte*>(text.data());
    return {first, first + text.size()};
}

}  // namespace lapwing::test

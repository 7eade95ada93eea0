// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "platform/cli/answer.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <nlohmann/json.hpp>

namespace lapwing::cli {
namespace {

struct AsJson {
    using Json = nlohmann::ordered_json;
    Json operator()(double value) const { return std::isfinite(value) ? Json(value) : Json(nullptr); }
    Json operator()(const Answer::Named& named) const {
        Json out = Json::object();
        for (const auto& [key, value] : named)
            out[key] = (*this)(value);
        return out;
    }
    template <class Other>
    Json operator()(const Other& value) const {
        return Json(value);
    }
};

/// How wide a text in UTF-8 shows: its characters, not its bytes.
std::size_t width_of(std::string_view text) {
    return static_cast<std::size_t>(
        std::ranges::count_if(text, [](char c) { return (static_cast<unsigned char>(c) & 0xc0) != 0x80; }));
}

}  // namespace

void Answer::add(std::string_view key, Value value, std::string_view label, std::string shown) {
    rows_.push_back({std::string(key), std::move(value), std::string(label), std::move(shown)});
}

Outcome Answer::print(bool json) const {
    if (json) {
        nlohmann::ordered_json out = nlohmann::ordered_json::object();
        for (const Row& row : rows_)
            out[row.key] = std::visit(AsJson{}, row.value);
        fmt::print("{}\n", out.dump());
        return Exit::done;
    }
    std::size_t width = 0;
    for (const Row& row : rows_)
        width = std::max(width, width_of(row.label));
    for (const Row& row : rows_)
        if (!row.label.empty())
            fmt::print("{}{}  {}\n", row.label, std::string(width - width_of(row.label), ' '), row.shown);
    for (const std::string& note : notes_)
        fmt::print("{}\n", note);
    return Exit::done;
}

std::string figure(double number, int significant) {
    if (!std::isfinite(number)) return "unknown";
    const int before_point =
        number == 0.0 ? 1 : static_cast<int>(std::floor(std::log10(std::abs(number)))) + 1;
    return fmt::format("{:.{}f}", number, std::clamp(significant - before_point, 0, 12));
}

}  // namespace lapwing::cli

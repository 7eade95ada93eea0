// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/odds/data_files.h"

#include <fmt/format.h>

#include <nlohmann/json.hpp>

#include "core/base/sha256.h"
#include "core/odds/assumptions.h"

namespace lapwing::odds {
namespace {

int version_of(std::string_view text) {
    const auto file = nlohmann::json::parse(text, nullptr, false);
    if (!file.is_object()) return 0;
    const auto version = file.find("version");
    return version != file.end() && version->is_number_integer() ? version->get<int>() : 0;
}

}  // namespace

std::vector<DataFile> data_files(const findings::ReferenceTexts& reference, std::string_view odds) {
    std::vector<DataFile> out;
    for (const auto& [name, text] :
         {std::pair("assumptions.json", reference.assumptions),
          std::pair("cautions.json", reference.cautions), std::pair("exits.json", reference.exits),
          std::pair("limits.json", reference.limits), std::pair("odds.json", odds),
          std::pair("prepare.json", reference.prepare), std::pair("wet.json", reference.wet)})
        out.push_back({name, version_of(text), sha256_hex(text)});
    return out;
}

std::vector<DataFile> built_in_data() {
    return data_files(findings::built_in_texts(), built_in_text());
}

std::string in_full(const DataFile& file) {
    return fmt::format("{}, version {}, sha256 {}", file.name, file.version, file.sha256);
}

std::string sum_of(const std::vector<DataFile>& files) {
    std::string all;
    for (const DataFile& file : files)
        all += in_full(file) + '\n';
    constexpr std::size_t digits = 8;  // enough to tell one state of the data from another
    return sha256_hex(all).substr(0, digits);
}

}  // namespace lapwing::odds

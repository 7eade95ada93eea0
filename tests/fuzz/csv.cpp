// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// The table of readings: any text in it must come back by the rules of RFC 4180.

#include "core/exchange/readings_csv.h"
#include "tests/fuzz/memory_file.h"

namespace {

/// RFC 4180, strictly: fields apart by commas, lines ended by CRLF, quotes doubled inside quotes.
std::vector<std::vector<std::string>> parse(std::string_view text) {
    using lapwing::fuzz::must;
    std::vector<std::vector<std::string>> lines{{""}};
    bool quoted = false;
    for (std::size_t i = 0; i < text.size(); ++i) {
        auto& field = lines.back().back();
        if (quoted) {
            if (text[i] != '"')
                field += text[i];
            else if (i + 1 < text.size() && text[i + 1] == '"')
                field += text[i++];
            else
                quoted = false;
        } else if (text[i] == '"') {
            must(field.empty());
            quoted = true;
        } else if (text[i] == ',') {
            lines.back().emplace_back();
        } else if (text[i] == '\r') {
            must(i + 1 < text.size() && text[++i] == '\n');
            lines.push_back({""});
        } else {
            must(text[i] != '\n');
            field += text[i];
        }
    }
    must(!quoted && lines.back() == std::vector<std::string>{""});
    lines.pop_back();
    return lines;
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace lapwing;
    const std::string text(reinterpret_cast<const char*>(data), size);
    const auto half = text.substr(0, size / 2);
    Dossier dossier;
    auto& visit = dossier.visits.emplace_back();
    visit.session.title = half;
    auto& reading = visit.readings.emplace_back();
    reading.note = text;
    reading.adapter = half;
    const auto lines = parse(exchange::readings_csv(dossier));
    fuzz::must(lines.size() == 2 && lines[0].size() == lines[1].size());
    const auto& note = lines[1].back();
    // Only what a spreadsheet would run gets a mark in front.
    fuzz::must(note == text ||
               (note == "'" + text && std::string_view("=+-@\t\r").find(text[0]) != std::string_view::npos));
    return 0;
}

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/exchange/readings_csv.h"

#include <gmock/gmock.h>
#include <rapidcheck/gtest.h>

#include "tests/core/record/drawn.h"

namespace lapwing::exchange {
namespace {

/// A strict reader of RFC 4180: CRLF ends a record, quotes only around whole cells.
std::optional<std::vector<std::vector<std::string>>> parse_csv(std::string_view text) {
    std::vector<std::vector<std::string>> rows;
    while (!text.empty()) {
        std::vector<std::string> row;
        for (;;) {
            std::string cell;
            if (text.starts_with('"')) {
                text.remove_prefix(1);
                for (;;) {
                    const auto quote = text.find('"');
                    if (quote == std::string_view::npos) return std::nullopt;
                    cell += text.substr(0, quote);
                    text.remove_prefix(quote + 1);
                    if (!text.starts_with('"')) break;
                    cell += '"';
                    text.remove_prefix(1);
                }
            } else {
                const auto end = text.find_first_of(",\r\n\"");
                if (end == std::string_view::npos || text[end] == '"' || text[end] == '\n')
                    return std::nullopt;
                cell = text.substr(0, end);
                text.remove_prefix(end);
            }
            row.push_back(cell);
            if (text.starts_with("\r\n")) {
                text.remove_prefix(2);
                break;
            }
            if (!text.starts_with(',')) return std::nullopt;
            text.remove_prefix(1);
        }
        rows.push_back(row);
    }
    return rows;
}

RC_GTEST_PROP(ReadingsCsv, IsATableWithARowForEachReading, (std::uint64_t seed)) {
    const auto dossier = test::Drawn(seed).dossier();
    const auto rows = parse_csv(readings_csv(dossier));
    RC_ASSERT(rows.has_value());
    std::size_t readings = 0;
    for (const auto& visit : dossier.visits)
        readings += visit.readings.size();
    RC_ASSERT(rows->size() == readings + 1);
    for (const auto& row : *rows) {
        RC_ASSERT(row.size() == rows->front().size());
        for (const auto& cell : row)
            RC_ASSERT(cell.empty() ||
                      std::string_view("=+@\t\r").find(cell.front()) == std::string_view::npos);
    }
}

TEST(ReadingsCsv, ShowsDigitsUnitAndSiAndMarksWhatWasRedone) {
    Dossier dossier;
    dossier.engine.cylinders = {{.number = 1, .name = "front"}};
    auto& visit = dossier.visits.emplace_back();
    visit.session.title = "=As found";
    Reading first;
    first.id.uuid = test::Drawn(1).uuid();
    first.taken_at = *parse_rfc3339("2026-03-14T09:30:00+01:00");
    first.final = *TypedPressure::make("80.0", units::psi);
    first.note = "said \"80\", twice";
    auto again = first;
    again.id.uuid = test::Drawn(2).uuid();
    again.replaces = first.id;
    visit.readings = {first, again};
    const auto rows = parse_csv(readings_csv(dossier)).value();
    const auto cell = [&](std::size_t row, std::string_view column) {
        const auto at = std::ranges::find(rows[0], column) - rows[0].begin();
        return rows[row].at(static_cast<std::size_t>(at));
    };
    EXPECT_EQ(cell(1, "session"), "'=As found");
    EXPECT_EQ(cell(1, "cylinder_name"), "front");
    EXPECT_EQ(cell(1, "taken_at"), "2026-03-14T09:30:00.000+01:00");
    EXPECT_EQ(cell(1, "final_typed"), "80.0");
    EXPECT_EQ(cell(1, "final_unit"), "psi");
    // NIST SP 811: 1 psi = 6.894757 kPa.
    EXPECT_NEAR(std::stod(cell(1, "final_pa")), 80 * 6894.757, 0.1);
    EXPECT_EQ(cell(1, "set_pa"), "");
    EXPECT_EQ(cell(1, "note"), "said \"80\", twice");
    EXPECT_EQ(cell(1, "replaced"), "yes");
    EXPECT_EQ(cell(2, "replaced"), "no");
    EXPECT_EQ(cell(2, "replaces"), first.id.text());
}

}  // namespace
}  // namespace lapwing::exchange

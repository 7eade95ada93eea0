// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "platform/cli/odds_text.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

#include "core/odds/verdict.h"
#include "qml/format/odds_text.h"

namespace lapwing::cli {
namespace {

using Row = std::array<QString, 5>;

std::vector<Row> table(const odds::CylinderOdds& of, const format::Formatter& format,
                       const findings::Reference& reference) {
    std::vector<Row> rows{{QString(), QStringLiteral("share of the leak, 90 % range"),
                           QStringLiteral("main path"), QStringLiteral("fault"),
                           QStringLiteral("dry reading after its repair, 90 % range")}};
    for (const auto* path : odds::by_share(of)) {
        const auto* after = odds::expected_after(of, *path, reference);
        QString reading = after ? format::reading_text(*after, format) : QString();
        if (after && !after->comparable_at_once) reading += QStringLiteral(", once run in");
        rows.push_back({format.text(odds::name_of(path->path)), format::share_line(path->share, format),
                        format::chance_text(path->main, format), format::chance_text(path->fault, format),
                        reading});
    }
    rows.push_back(
        {format.text(odds::outcome_word({})), {}, format::chance_text(of.seals_well, format), {}, {}});
    return rows;
}

void print(const std::vector<Row>& rows) {
    std::array<qsizetype, 5> widths{};
    for (const Row& row : rows)
        for (std::size_t i = 0; i < row.size(); ++i)
            widths[i] = std::max(widths[i], row[i].size());
    for (const Row& row : rows) {
        QString line;
        for (std::size_t i = 0; i < row.size(); ++i)
            line += row[i].leftJustified(widths[i]) + QStringLiteral("  ");
        while (line.endsWith(u' '))
            line.chop(1);
        fmt::print("      {}\n", line.toStdString());
    }
}

void print(const findings::Message& message, const format::Formatter& format) {
    fmt::print("    {}\n", format.text(message).toStdString());
}

}  // namespace

void print_odds(const findings::CylinderFindings& rules, const odds::CylinderOdds& of,
                const format::Formatter& format, const findings::Reference& reference) {
    fmt::print("  Where it leaks\n");
    print(odds::headline_of(of, reference), format);
    if (odds::has_verdict(of)) print(table(of, format, reference));
    for (const findings::Message& message : odds::said_beside(of, reference))
        print(message, format);
    if (const auto why = odds::beside_rules(rules, of)) print(*why, format);
}

void print_odds_of_engine(const odds::WhereItLeaks& leaks, const format::Formatter& format,
                          const findings::Reference& reference) {
    constexpr std::size_t most = 5;
    std::size_t told = 0;
    for (const odds::NextTest& test : odds::settling_tests(leaks, reference)) {
        const auto worth = odds::worth_of(test, reference);
        if (!worth || told == most) break;
        if (told++ == 0) fmt::print("\nWould settle it\n");
        fmt::print("    {}, cylinder {}: {}\n", format.name(test.test).toStdString(), test.cylinder,
                   format.text(*worth).toStdString());
    }
    fmt::print("\nWhat the odds rest on\n");
    for (const findings::Message& reason : leaks.reasons)
        print(reason, format);
    fmt::print("    Working assumptions version {}, seed {}.\n", leaks.assumptions_version, leaks.seed);
}

}  // namespace lapwing::cli

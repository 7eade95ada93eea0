// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/model/plan_totals.h"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>

namespace lapwing {
namespace {

constexpr std::size_t most_decimals = 4;
constexpr std::size_t most_digits = 12;
constexpr long long scale = 10'000;

/// Canonical digits in ten-thousandths.
std::optional<long long> scaled(std::string_view digits) {
    const bool negative = digits.starts_with('-');
    if (negative) digits.remove_prefix(1);
    const auto mark = digits.find('.');
    std::string all(digits.substr(0, mark));
    std::string decimals(mark == std::string_view::npos ? std::string_view{} : digits.substr(mark + 1));
    if (all.size() > most_digits || decimals.size() > most_decimals) return std::nullopt;
    decimals.resize(most_decimals, '0');
    all += decimals;
    long long out = 0;
    const auto read = std::from_chars(all.data(), all.data() + all.size(), out);
    if (read.ec != std::errc{} || read.ptr != all.data() + all.size()) return std::nullopt;
    return negative ? -out : out;
}

/// With two decimals where there are any, more only where they are needed.
std::string digits_of(long long amount) {
    const long long size = amount < 0 ? -amount : amount;
    std::string out = fmt::format("{}{}", amount < 0 ? "-" : "", size / scale);
    std::string decimals = fmt::format("{:04}", size % scale);
    while (decimals.size() > 2 && decimals.back() == '0')
        decimals.pop_back();
    return decimals == "00" ? out : out + '.' + decimals;
}

}  // namespace

PlanTotals totals_of(const std::vector<PlanLine>& plan, std::optional<PlanOption> option) {
    PlanTotals out;
    std::vector<std::pair<std::string, long long>> sums;
    for (const PlanLine* line : in_order(plan)) {
        if (option ? line->option != *option : line->option == PlanOption::leave) continue;
        ++out.lines;
        if (line->labour) out.labour_s += line->labour->si();
        if (!line->price) continue;
        const auto amount = scaled(line->price->digits);
        if (!amount) {
            ++out.left_out;
            continue;
        }
        const auto sum =
            std::ranges::find(sums, line->price->currency, &std::pair<std::string, long long>::first);
        if (sum == sums.end())
            sums.emplace_back(line->price->currency, *amount);
        else
            sum->second += *amount;
    }
    for (const auto& [currency, amount] : sums)
        out.prices.push_back({digits_of(amount), currency});
    return out;
}

std::vector<const PlanLine*> in_order(const std::vector<PlanLine>& plan) {
    std::vector<const PlanLine*> out;
    for (const PlanLine& line : plan)
        out.push_back(&line);
    std::ranges::stable_sort(out, {}, [](const PlanLine* line) { return line->order; });
    return out;
}

}  // namespace lapwing

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/units/typed.h"

#include <fast_float/fast_float.h>

namespace lapwing {

Result<std::string> canonical_digits(std::string_view digits) {
    const auto refuse = [&] {
        return fail("units.not_a_number",
                    "\"{}\" is not a number. Type digits with at most one decimal mark.",
                    std::string(digits));
    };
    constexpr std::size_t longest = 24;
    std::string_view rest = digits;
    std::string out;
    if (!rest.empty() && (rest.front() == '-' || rest.front() == '+')) {
        if (rest.front() == '-') out += '-';
        rest.remove_prefix(1);
    }
    if (rest.empty() || rest.size() > longest) return refuse();
    bool point = false;
    bool any_digit = false;
    if (rest.front() == '.' || rest.front() == ',') out += '0';
    for (const char c : rest) {
        if (c == '.' || c == ',') {
            if (point) return refuse();
            point = true;
            out += '.';
        } else if (c >= '0' && c <= '9') {
            any_digit = true;
            out += c;
        } else {
            return refuse();
        }
    }
    if (!any_digit) return refuse();
    if (out.back() == '.') out.pop_back();
    // A zero was put before a leading point: what comes out must itself be readable.
    if (out.size() - (out.front() == '-' ? 1 : 0) > longest) return refuse();
    return out;
}

double digits_value(std::string_view canonical) {
    double value = 0.0;
    fast_float::from_chars(canonical.data(), canonical.data() + canonical.size(), value);
    return value;
}

int decimals_of(std::string_view canonical) {
    const auto point = canonical.find('.');
    return point == std::string_view::npos ? 0 : static_cast<int>(canonical.size() - point - 1);
}

std::string digits_from(double value, int decimals) {
    std::string out = fmt::format("{:.{}f}", value, decimals);
    // "-0.0" is not a reading.
    if (out.front() == '-' && out.find_first_not_of("-0.") == std::string::npos) out.erase(0, 1);
    return out;
}

namespace detail {

Result<SplitQuantity> split_quantity(std::string_view text) {
    const auto end = text.find_first_not_of("+-0123456789.,");
    const std::string_view number = text.substr(0, end);
    std::string_view symbol = end == std::string_view::npos ? std::string_view{} : text.substr(end);
    while (!symbol.empty() && symbol.front() == ' ')
        symbol.remove_prefix(1);
    // "1e5psi": digits only, without an exponent. The whole text is said again, since "" would tell nothing.
    const bool exponent = symbol.size() > 1 && (symbol[0] == 'e' || symbol[0] == 'E') &&
                          std::string_view("+-0123456789").find(symbol[1]) != std::string_view::npos;
    auto digits = canonical_digits(exponent ? text : number);
    if (!digits)
        return fail("units.not_a_number",
                    "\"{}\" is not a number. Type digits with at most one decimal mark.", std::string(text));
    return SplitQuantity{std::move(*digits), symbol};
}

std::string known_units(std::span<const UnitEntry> units) {
    std::string out;
    for (const auto& unit : units) {
        if (!out.empty()) out += ", ";
        out += unit.symbol;
    }
    return out;
}

}  // namespace detail
}  // namespace lapwing

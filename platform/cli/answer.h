// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

#include "core/units/quantity.h"
#include "platform/cli/outcome.h"

namespace lapwing::cli {

/// The result of a sum: for scripts one JSON object in SI, for people a short table in their units.
class Answer {
public:
    using Named = std::vector<std::pair<std::string, double>>;
    using Value =
        std::variant<std::nullptr_t, bool, double, std::vector<double>, Named, std::vector<std::string>>;

    /// A value under its JSON key; in the table as `shown` beside `label`, or not at all without a label.
    /// What is not a finite number becomes null.
    void add(std::string_view key, Value value, std::string_view label = {}, std::string shown = {});
    /// A line below the table.
    void note(std::string text) { notes_.push_back(std::move(text)); }

    /// On standard output.
    Outcome print(bool json) const;

private:
    struct Row {
        std::string key;
        Value value;
        std::string label;
        std::string shown;
    };
    std::vector<Row> rows_;
    std::vector<std::string> notes_;
};

/// A number with so many significant digits, never in powers of ten; "unknown" for what is not finite.
std::string figure(double number, int significant = 4);

/// "61.77 psi".
template <class Tag>
std::string shown(double si, Unit<Tag> unit, int significant = 4) {
    return figure(unit.number(Quantity<Tag>::from_si(si)), significant) + ' ' + std::string(unit.display());
}

/// "61.8 psi ± 0.4": with twice its standard uncertainty.
template <class Tag>
std::string shown_with(double si, double u, Unit<Tag> unit, int significant = 4) {
    const double scale =
        unit.number(Quantity<Tag>::from_si(2.0 * u)) - unit.number(Quantity<Tag>::from_si(0.0));
    return shown(si, unit, significant) + " ± " + figure(scale, 2);
}

}  // namespace lapwing::cli

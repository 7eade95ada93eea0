// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <cmath>

#include "core/units/quantity.h"

namespace lapwing {

/// Checks that `digits` is a plain decimal number (-12, 0.50, .5, 7.) of at most 24 characters and hands back
/// its canonical spelling: decimal point, no plus sign, a zero before a leading point, no trailing point. A
/// comma is taken as the decimal mark. Trailing zeros stay: they say how finely a gauge was read.
Result<std::string> canonical_digits(std::string_view digits);

/// The number that canonical digits spell.
double digits_value(std::string_view canonical);

/// Decimals after the point.
int decimals_of(std::string_view canonical);

/// `value` rounded to `decimals` (0 to 12), as canonical digits.
std::string digits_from(double value, int decimals);

/// A quantity exactly as a person typed it: digits and unit. The SI value is derived, never stored.
template <class Tag>
class Typed {
public:
    Typed() : digits_("0") {}

    /// Fails when the digits are not a plain decimal number (canonical_digits).
    static Result<Typed> make(std::string_view digits, Unit<Tag> unit) {
        return canonical_digits(digits).map([&](std::string ok) { return Typed(std::move(ok), unit); });
    }
    /// A computed value written down with a given number of decimals.
    static Typed from(Quantity<Tag> value, Unit<Tag> unit, int decimals) {
        return Typed(digits_from(unit.number(value), decimals), unit);
    }

    [[nodiscard]] const std::string& digits() const { return digits_; }
    [[nodiscard]] Unit<Tag> unit() const { return unit_; }
    [[nodiscard]] double number() const { return digits_value(digits_); }
    [[nodiscard]] Quantity<Tag> value() const { return unit_.quantity(number()); }
    [[nodiscard]] double si() const { return value().si(); }
    /// The step of the last digit typed (0.1 for "6.4"), in SI: how finely it was written down.
    [[nodiscard]] double step_si() const {
        return unit_.quantity(std::pow(10.0, -decimals_of(digits_))).si() - unit_.quantity(0.0).si();
    }
    /// "6.4 bar", with the display symbol.
    [[nodiscard]] std::string text() const {
        return unit_.display().empty() ? digits_ : digits_ + ' ' + std::string(unit_.display());
    }

    bool operator==(const Typed&) const = default;

private:
    Typed(std::string digits, Unit<Tag> unit) : digits_(std::move(digits)), unit_(unit) {}
    std::string digits_;
    Unit<Tag> unit_;
};

using TypedPressure = Typed<PressureTag>;
using TypedLength = Typed<LengthTag>;
using TypedVolume = Typed<VolumeTag>;
using TypedTemperature = Typed<TemperatureTag>;
using TypedAngle = Typed<AngleTag>;
using TypedRotation = Typed<RotationTag>;
using TypedTime = Typed<TimeTag>;
using TypedVoltage = Typed<VoltageTag>;
using TypedRatio = Typed<RatioTag>;
using TypedUsage = Typed<UsageTag>;

namespace detail {
struct SplitQuantity {
    std::string digits;
    std::string_view symbol;
};
Result<SplitQuantity> split_quantity(std::string_view text);
std::string known_units(std::span<const UnitEntry> units);
}  // namespace detail

/// Reads "80psi", "5.5 bar", "12kgf/cm2". A missing or unknown unit is an error that lists the known ones.
template <class Tag>
Result<Typed<Tag>> parse_quantity(std::string_view text) {
    auto split = detail::split_quantity(text);
    if (!split) return tl::unexpected(split.error());
    const auto unit = Unit<Tag>::find(split->symbol);
    if (!unit)
        return fail("units.unknown", "\"{}\" needs a unit of {}: {}.", std::string(text), Tag::name,
                    detail::known_units(Unit<Tag>::all()));
    return Typed<Tag>::make(split->digits, *unit);
}

}  // namespace lapwing

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <compare>
#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>

#include "core/base/result.h"

namespace lapwing {

/// One unit of a dimension: SI value = number * factor + offset.
struct UnitEntry {
    std::string_view symbol;   ///< as written in files, in the command-line tool and in CSV headers (ASCII)
    std::string_view display;  ///< as shown to a person
    double factor;
    double offset = 0.0;
};

/// The dimensions. Each tag is a strong type of its own: a pressure can't be passed for a length.
/// Factors: NIST SP 811 (exact unless said otherwise).
struct PressureTag {
    static constexpr std::string_view name = "pressure";
    static constexpr UnitEntry units[] = {
        {"Pa", "Pa", 1.0},
        {"kPa", "kPa", 1e3},
        {"hPa", "hPa", 1e2},
        {"bar", "bar", 1e5},
        {"psi", "psi", 4.4482216152605 / 0.00064516},  // lbf / in2, both exact
        {"kgf/cm2", "kgf/cm²", 98066.5},
        {"inHg", "inHg", 3386.389},  // conventional, 32 degF
    };
};
struct LengthTag {
    static constexpr std::string_view name = "length";
    static constexpr UnitEntry units[] = {
        {"m", "m", 1.0},           {"mm", "mm", 1e-3},   {"cm", "cm", 1e-2}, {"in", "in", 0.0254},
        {"thou", "thou", 2.54e-5}, {"ft", "ft", 0.3048}, {"km", "km", 1e3},  {"mi", "mi", 1609.344},
    };
};
struct VolumeTag {
    static constexpr std::string_view name = "volume";
    static constexpr UnitEntry units[] = {
        {"m3", "m³", 1.0}, {"cm3", "cm³", 1e-6},         {"ml", "ml", 1e-6},
        {"L", "L", 1e-3},  {"in3", "in³", 1.6387064e-5},
    };
};
struct AreaTag {
    static constexpr std::string_view name = "area";
    static constexpr UnitEntry units[] = {
        {"m2", "m²", 1.0},
        {"mm2", "mm²", 1e-6},
        {"cm2", "cm²", 1e-4},
        {"in2", "in²", 6.4516e-4},
    };
};
struct TemperatureTag {
    static constexpr std::string_view name = "temperature";
    static constexpr UnitEntry units[] = {
        {"K", "K", 1.0},
        {"degC", "°C", 1.0, 273.15},
        {"degF", "°F", 5.0 / 9.0, 459.67 * 5.0 / 9.0},
    };
};
struct AngleTag {
    static constexpr std::string_view name = "angle";
    static constexpr UnitEntry units[] = {{"rad", "rad", 1.0}, {"deg", "°", 0.017453292519943295}};
};
struct RotationTag {
    static constexpr std::string_view name = "rotational speed";
    static constexpr UnitEntry units[] = {{"rad/s", "rad/s", 1.0}, {"rpm", "rpm", 0.10471975511965977}};
};
struct TimeTag {
    static constexpr std::string_view name = "time";
    static constexpr UnitEntry units[] = {{"s", "s", 1.0}, {"min", "min", 60.0}, {"h", "h", 3600.0}};
};
struct VoltageTag {
    static constexpr std::string_view name = "voltage";
    static constexpr UnitEntry units[] = {{"V", "V", 1.0}};
};
struct TorqueTag {
    static constexpr std::string_view name = "torque";
    static constexpr UnitEntry units[] = {{"N m", "N m", 1.0}, {"lbf ft", "lbf ft", 1.3558179483314004}};
};
struct FlowTag {
    static constexpr std::string_view name = "flow";
    static constexpr UnitEntry units[] = {
        {"m3/s", "m³/s", 1.0}, {"L/min", "L/min", 1e-3 / 60.0}, {"cfm", "cfm", 0.028316846592 / 60.0}};
};
/// Plain ratios: compression ratio (no unit), leakage (%), gauge class (% of span).
struct RatioTag {
    static constexpr std::string_view name = "ratio";
    static constexpr UnitEntry units[] = {{"1", "", 1.0}, {"%", "%", 0.01}};
};
/// How much an engine has run, as its owner counts it. Hours and distance don't convert into each other: only
/// digits with the same unit may be compared, which `model` takes care of.
struct UsageTag {
    static constexpr std::string_view name = "distance or hours run";
    static constexpr UnitEntry units[] = {{"km", "km", 1.0}, {"mi", "mi", 1.609344}, {"h", "h", 1.0}};
};

/// A value of one dimension, SI inside.
template <class Tag>
class Quantity {
public:
    constexpr Quantity() = default;
    static constexpr Quantity from_si(double si) { return Quantity(si); }
    [[nodiscard]] constexpr double si() const { return si_; }

    constexpr auto operator<=>(const Quantity&) const = default;
    constexpr Quantity operator+(Quantity other) const { return Quantity(si_ + other.si_); }
    constexpr Quantity operator-(Quantity other) const { return Quantity(si_ - other.si_); }
    constexpr Quantity operator-() const { return Quantity(-si_); }
    constexpr Quantity operator*(double by) const { return Quantity(si_ * by); }
    constexpr Quantity operator/(double by) const { return Quantity(si_ / by); }
    constexpr double operator/(Quantity other) const { return si_ / other.si_; }

private:
    explicit constexpr Quantity(double si) : si_(si) {}
    double si_ = 0.0;
};

/// A unit of one dimension. Default-constructed: the dimension's SI unit.
template <class Tag>
class Unit {
public:
    constexpr Unit() = default;

    /// By its file symbol, exactly; nothing for an unknown one.
    static constexpr std::optional<Unit> find(std::string_view symbol) {
        for (std::size_t i = 0; i < std::size(Tag::units); ++i)
            if (Tag::units[i].symbol == symbol) return Unit(static_cast<std::uint8_t>(i));
        return std::nullopt;
    }
    /// Every unit of the dimension, in the order that pickers show.
    static constexpr std::span<const UnitEntry> all() { return Tag::units; }

    [[nodiscard]] constexpr std::string_view symbol() const { return entry().symbol; }
    [[nodiscard]] constexpr std::string_view display() const { return entry().display; }
    [[nodiscard]] constexpr Quantity<Tag> quantity(double number) const {
        return Quantity<Tag>::from_si(number * entry().factor + entry().offset);
    }
    [[nodiscard]] constexpr double number(Quantity<Tag> quantity) const {
        return (quantity.si() - entry().offset) / entry().factor;
    }
    constexpr bool operator==(const Unit&) const = default;

private:
    explicit constexpr Unit(std::uint8_t index) : index_(index) {}
    [[nodiscard]] constexpr const UnitEntry& entry() const { return Tag::units[index_]; }
    std::uint8_t index_ = 0;
};

using Pressure = Quantity<PressureTag>;
using Length = Quantity<LengthTag>;
using Volume = Quantity<VolumeTag>;
using Area = Quantity<AreaTag>;
using Temperature = Quantity<TemperatureTag>;
using Angle = Quantity<AngleTag>;
using Rotation = Quantity<RotationTag>;
using Time = Quantity<TimeTag>;
using Voltage = Quantity<VoltageTag>;
using Torque = Quantity<TorqueTag>;
using Flow = Quantity<FlowTag>;
using Ratio = Quantity<RatioTag>;

namespace units {
inline constexpr Unit<PressureTag> pa = *Unit<PressureTag>::find("Pa");
inline constexpr Unit<PressureTag> kpa = *Unit<PressureTag>::find("kPa");
inline constexpr Unit<PressureTag> hpa = *Unit<PressureTag>::find("hPa");
inline constexpr Unit<PressureTag> bar = *Unit<PressureTag>::find("bar");
inline constexpr Unit<PressureTag> psi = *Unit<PressureTag>::find("psi");
inline constexpr Unit<PressureTag> kgf_cm2 = *Unit<PressureTag>::find("kgf/cm2");
inline constexpr Unit<PressureTag> in_hg = *Unit<PressureTag>::find("inHg");
inline constexpr Unit<LengthTag> m = *Unit<LengthTag>::find("m");
inline constexpr Unit<LengthTag> mm = *Unit<LengthTag>::find("mm");
inline constexpr Unit<LengthTag> inch = *Unit<LengthTag>::find("in");
inline constexpr Unit<LengthTag> thou = *Unit<LengthTag>::find("thou");
inline constexpr Unit<LengthTag> ft = *Unit<LengthTag>::find("ft");
inline constexpr Unit<VolumeTag> cm3 = *Unit<VolumeTag>::find("cm3");
inline constexpr Unit<VolumeTag> ml = *Unit<VolumeTag>::find("ml");
inline constexpr Unit<AreaTag> mm2 = *Unit<AreaTag>::find("mm2");
inline constexpr Unit<TemperatureTag> kelvin = *Unit<TemperatureTag>::find("K");
inline constexpr Unit<TemperatureTag> deg_c = *Unit<TemperatureTag>::find("degC");
inline constexpr Unit<AngleTag> deg = *Unit<AngleTag>::find("deg");
inline constexpr Unit<RotationTag> rpm = *Unit<RotationTag>::find("rpm");
inline constexpr Unit<TimeTag> minute = *Unit<TimeTag>::find("min");
inline constexpr Unit<VoltageTag> volt = *Unit<VoltageTag>::find("V");
inline constexpr Unit<FlowTag> l_min = *Unit<FlowTag>::find("L/min");
inline constexpr Unit<RatioTag> one = *Unit<RatioTag>::find("1");
inline constexpr Unit<RatioTag> percent = *Unit<RatioTag>::find("%");
inline constexpr Unit<UsageTag> km = *Unit<UsageTag>::find("km");
inline constexpr Unit<UsageTag> hour = *Unit<UsageTag>::find("h");
}  // namespace units

namespace literals {
constexpr Pressure operator""_bar(long double v) {
    return units::bar.quantity(static_cast<double>(v));
}
constexpr Pressure operator""_psi(long double v) {
    return units::psi.quantity(static_cast<double>(v));
}
constexpr Pressure operator""_kPa(long double v) {
    return units::kpa.quantity(static_cast<double>(v));
}
constexpr Pressure operator""_Pa(long double v) {
    return Pressure::from_si(static_cast<double>(v));
}
constexpr Length operator""_mm(long double v) {
    return units::mm.quantity(static_cast<double>(v));
}
constexpr Length operator""_m(long double v) {
    return Length::from_si(static_cast<double>(v));
}
constexpr Volume operator""_cm3(long double v) {
    return units::cm3.quantity(static_cast<double>(v));
}
constexpr Area operator""_mm2(long double v) {
    return units::mm2.quantity(static_cast<double>(v));
}
}  // namespace literals

}  // namespace lapwing

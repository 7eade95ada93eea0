// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <string_view>

#include "core/base/clock.h"
#include "core/units/typed.h"

/// Short spellings for the constants of the stories. A slip in one ends the program.
namespace lapwing::demo {

inline TypedPressure pressure(std::string_view text) {
    return parse_quantity<PressureTag>(text).value();
}
inline TypedLength length(std::string_view text) {
    return parse_quantity<LengthTag>(text).value();
}
inline TypedVolume volume(std::string_view text) {
    return parse_quantity<VolumeTag>(text).value();
}
inline TypedAngle angle(std::string_view text) {
    return parse_quantity<AngleTag>(text).value();
}
inline TypedTemperature temperature(std::string_view text) {
    return parse_quantity<TemperatureTag>(text).value();
}
inline TypedRotation rotation(std::string_view text) {
    return parse_quantity<RotationTag>(text).value();
}
inline TypedTime duration(std::string_view text) {
    return parse_quantity<TimeTag>(text).value();
}
inline TypedVoltage voltage(std::string_view text) {
    return parse_quantity<VoltageTag>(text).value();
}
inline TypedUsage usage(std::string_view text) {
    return parse_quantity<UsageTag>(text).value();
}
inline TypedRatio ratio(std::string_view digits) {
    return TypedRatio::make(digits, units::one).value();
}
inline Timestamp moment(std::string_view rfc3339) {
    return parse_rfc3339(rfc3339).value();
}

}  // namespace lapwing::demo

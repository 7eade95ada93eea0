// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "core/model/visit.h"

/// What the core says, without a language: a stable code and what the sentence needs. qml/format turns it
/// into text with the user's language, units and locale.
namespace lapwing::findings {

/// What a figure measures; decides its units and how it is written.
enum class Dimension {
    gauge_pressure,       ///< Pa above ambient
    pressure_difference,  ///< Pa between two gauge pressures
    station_pressure,     ///< Pa absolute
    share,                ///< a fraction, shown in %: leakage, spread, wet rise
    number,               ///< a bare number: compression ratio, discharge coefficient
    area,                 ///< m2
    length,               ///< m: bore, restrictor, hole, clearance
    altitude,             ///< m
    flow,                 ///< m3/s ANR
    volume,               ///< m3
    angle,                ///< rad
    temperature,          ///< K
    time,                 ///< s
    voltage,              ///< V
    speed,                ///< rad/s
    torque,               ///< N m
    force                 ///< N
};

/// One number with its uncertainty.
struct Figure {
    Dimension dimension = Dimension::number;
    double si = 0.0;
    std::optional<double> u95;  ///< half the 95 % interval, in the same SI unit; absent where none is known
    std::string digits;         ///< a value as it was typed, empty for a computed one
    std::string unit;           ///< file symbol of the unit that it was typed in

    bool operator==(const Figure&) const = default;
};

/// A word of the model or of the findings, "exit:intake" (core/findings/word_kinds.h); qml/format knows a
/// trade word for each.
struct Word {
    std::string code;

    bool operator==(const Word&) const = default;
};

/// Cylinder numbers to be written as a list: "2 and 3".
using CylinderList = std::vector<int>;

/// What a sentence needs. An int is a cylinder's number or a count; a string is a person's own text.
using Arg = std::variant<Figure, int, Word, CylinderList, std::string>;

/// One sentence. Codes: core/findings/codes.h.
struct Message {
    std::string code;
    std::vector<Arg> args;

    bool operator==(const Message&) const = default;
};

/// Figures of values as they were typed; `u95` may follow.
Figure figure_of(const TypedPressure& typed, std::optional<double> u95 = {});
Figure figure_of(const TypedLength& typed, Dimension dimension = Dimension::length);
Figure figure_of(const TypedTime& typed);
Figure figure_of(const TypedRatio& typed, Dimension dimension = Dimension::share);

}  // namespace lapwing::findings

namespace lapwing {
LAPWING_WORDS(findings::Dimension, "gauge pressure", "pressure difference", "station pressure", "share",
              "number", "area", "length", "altitude", "flow", "volume", "angle", "temperature", "time",
              "voltage", "speed", "torque", "force");
}  // namespace lapwing

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "core/base/result.h"
#include "core/findings/crank_model.h"
#include "core/findings/derivation.h"
#include "core/findings/reference.h"
#include "core/findings/word_kinds.h"
#include "core/model/visit.h"

/// Single sums for a person who has a number and wants to know what it means: the same functions that
/// findings and the command-line tool rest on, without a session.
namespace lapwing::calculators {

enum class Calculator {
    leakage,
    other_tester,
    law,
    restrictor,
    hose,
    oil,
    altitude,
    healthy,
    turning,
    torque,
    units
};

/// What is put in. Engine, shop and testers stand as they do on their cards, so that a session fills the
/// sheet by copying; each calculator looks at its own part.
struct Worksheet {
    Engine engine;
    Session session;  ///< altitude, air pressure, speed, warm or cold
    Tester gauge;     ///< compression gauge
    Tester tester;    ///< leak-down tester; a full scale of 0 is one that is not known
    std::string adapter;

    std::optional<TypedPressure> set;
    std::optional<TypedPressure> held;
    std::optional<TypedPressure> second_set;   ///< of the same leak at another set pressure
    std::optional<TypedPressure> second_held;  ///< at that one
    std::optional<TypedPressure> other_set;    ///< of the tester to convert to
    std::optional<TypedLength> other_restrictor;
    std::optional<TypedLength> hole;  ///< drilled, in the cylinder's place
    std::optional<TypedPressure> reading;
    std::optional<TypedVolume> oil;
    std::optional<TypedPressure> limit;
    std::optional<Typed<RotationTag>> slow;  ///< cranking speed to compare with
    std::optional<TypedRatio> fill;  ///< pressure at intake closing over the air's; none: throttle shut
    std::optional<TypedAngle> off_tdc;
    std::optional<TypedLength> bar;

    std::optional<TypedPressure> pressure;  ///< to be converted, as all below
    std::optional<TypedLength> length;
    std::optional<TypedVolume> volume;
    std::optional<TypedTemperature> temperature;
    std::optional<Typed<TorqueTag>> torque;
    std::optional<Typed<FlowTag>> flow;
};

/// What a leak-down tester is set to where nobody says it: 80 psi, or as round a figure in `unit`.
TypedPressure usual_set(Unit<PressureTag> unit = units::psi);

/// An empty sheet with what nearly every shop has: `set` as set pressure, to be put behind the standard
/// restrictor at 80 psi. The tester's own restrictor stays open: nobody has said that it is the standard one.
Worksheet empty_worksheet(const TypedPressure& set = usual_set());
/// Filled from a visit: engine card, shop, testers, the newest readings; `set` where no tester says it.
Worksheet worksheet_of(const Dossier& dossier, const Visit& visit, const TypedPressure& set = usual_set());

/// A value written in one unit of many: digits, and the unit's name as a person reads it.
struct Written {
    std::string digits;
    std::string unit;
};

struct Line {
    findings::Word name;  ///< "calc:leakage"; qml/format has a word for each
    std::variant<findings::Derived, findings::DerivedRange, Written> value;
};

/// The first line is the result; the others follow from the same input.
struct Answer {
    std::vector<Line> lines;
    std::vector<findings::Message> notes;
};

/// Fails with "calculator.needs" and the name of what is still to be typed, and as core/physics does where a
/// value is impossible.
Result<Answer> work_out(Calculator calculator, const Worksheet& sheet, const findings::Reference& reference);

}  // namespace lapwing::calculators

namespace lapwing {
LAPWING_WORDS(calculators::Calculator, "leakage", "other tester", "law", "restrictor", "hose", "oil",
              "altitude", "healthy", "turning", "torque", "units");
}  // namespace lapwing

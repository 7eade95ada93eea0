// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/model/ids.h"
#include "core/model/lineage.h"
#include "core/model/words.h"
#include "core/units/typed.h"

namespace lapwing {

enum class StrokeCycle { four, two };
LAPWING_WORDS(StrokeCycle, "four-stroke", "two-stroke");
enum class Fuel { petrol, diesel };
LAPWING_WORDS(Fuel, "petrol", "diesel");
enum class Arrangement { single, in_line, vee, flat, other };
LAPWING_WORDS(Arrangement, "single", "in-line", "v", "flat", "other");
enum class Cooling { unknown, air, liquid };
LAPWING_WORDS(Cooling, "unknown", "air", "liquid");
enum class Adjuster { unknown, screw, shim, hydraulic };
LAPWING_WORDS(Adjuster, "unknown", "screw", "shim", "hydraulic");
enum class Decompressor { unknown, none, manual, automatic };
LAPWING_WORDS(Decompressor, "unknown", "none", "manual", "automatic");
enum class ValveTiming { unknown, fixed, variable };
LAPWING_WORDS(ValveTiming, "unknown", "fixed", "variable");
/// Where a figure on the engine card comes from.
enum class Origin { unknown, manual, measured, guessed };
LAPWING_WORDS(Origin, "unknown", "manual", "measured", "guessed");
/// Where on the valve's lift a timing figure is quoted. Quoted at a lift, the valve closes on its seat 15 to
/// 25 degrees later.
enum class TimingAt { unknown, seat, lift_1_mm, lift_0_050_in };
LAPWING_WORDS(TimingAt, "unknown", "seat", "1 mm lift", "0.050 in lift");

/// A figure with where it comes from: "manual, page 7-12".
template <class T>
struct Sourced {
    T value{};
    Origin origin = Origin::unknown;
    std::string note;  ///< manual page, how it was measured

    bool operator==(const Sourced&) const = default;
};

/// One cylinder as the engine's maker numbers it and as it stands on the layout picture.
struct Cylinder {
    int number = 1;    ///< 1 to 99, unique in the engine, any order
    std::string name;  ///< "front", "rear", "left"; may be empty
    int bank = 0;      ///< 0 for a single bank; V and flat engines count 0 and 1
    int row = 0;       ///< on the layout picture, from the top
    int column = 0;    ///< on the layout picture, from the left

    bool operator==(const Cylinder&) const = default;
};

struct ClearanceRange {
    TypedLength low;
    TypedLength high;

    bool operator==(const ClearanceRange&) const = default;
};

struct ValveGear {
    int intake_valves = 1;  ///< per cylinder, 0 to 4 (0: two-stroke)
    int exhaust_valves = 1;
    Adjuster adjuster = Adjuster::unknown;
    std::optional<Sourced<ClearanceRange>> intake_clearance;   ///< wanted, cold
    std::optional<Sourced<ClearanceRange>> exhaust_clearance;  ///< wanted, cold
    ValveTiming timing = ValveTiming::unknown;
    std::optional<Sourced<TypedAngle>> intake_closing;  ///< after BDC
    TimingAt intake_closing_at = TimingAt::unknown;
    std::optional<Sourced<TypedAngle>> exhaust_opening;  ///< before BDC
    TimingAt exhaust_opening_at = TimingAt::unknown;

    bool operator==(const ValveGear&) const = default;
};

/// What the maker asks of a cranking test and of a leak-down test, at sea level unless the note says
/// otherwise.
struct FactoryLimits {
    std::optional<TypedPressure> low;               ///< lower end of the normal range
    std::optional<TypedPressure> high;              ///< upper end of the normal range
    std::optional<TypedPressure> lowest;            ///< lowest limit
    std::optional<TypedPressure> difference;        ///< most allowed between cylinders
    std::optional<TypedRatio> least_ratio;          ///< lowest against highest cylinder, at least
    std::optional<TypedRatio> most_leakage;         ///< on the maker's own tester
    std::optional<TypedPressure> leakage_set;       ///< set pressure of that tester
    std::optional<TypedLength> leakage_restrictor;  ///< its restrictor's diameter
    Origin origin = Origin::unknown;
    std::string note;

    bool operator==(const FactoryLimits&) const = default;
};

/// The crankcase hold test of a two-stroke.
struct CrankcaseLimits {
    std::optional<TypedPressure> set;
    std::optional<TypedTime> hold;
    std::optional<TypedPressure> end_at_least;
    Origin origin = Origin::unknown;
    std::string note;

    bool operator==(const CrankcaseLimits&) const = default;
};

struct Owner {
    std::string name;
    std::string contact;  ///< stays out of files handed over unless the sender ticks it

    bool operator==(const Owner&) const = default;
};

/// An engine and everything on its card. Make one with `checked`.
struct Engine {
    EngineId id;
    Timestamp made_at;
    std::string name;
    std::string description;  ///< maker, type, year, number: free text
    std::vector<std::string> tags;
    std::string history;  ///< what is known of its past
    Owner owner;

    StrokeCycle cycle = StrokeCycle::four;
    Fuel fuel = Fuel::petrol;
    Arrangement arrangement = Arrangement::in_line;
    std::optional<TypedAngle> bank_angle;
    Cooling cooling = Cooling::unknown;
    std::vector<Cylinder> cylinders;  ///< 1 to 16
    std::vector<int> firing_order;    ///< cylinder numbers; empty when unknown
    std::vector<TypedAngle>
        firing_intervals;  ///< crank degrees from each cylinder in the order to the next one
    std::vector<std::vector<int>> joined_intakes;  ///< groups of cylinders on one manifold
    std::vector<std::vector<int>> joined_exhausts;

    std::optional<Sourced<TypedLength>> bore;
    std::optional<Sourced<TypedLength>> stroke;
    std::optional<Sourced<TypedLength>> rod;
    std::optional<Sourced<TypedRatio>> compression_ratio;     ///< two-stroke: trapped
    std::optional<Sourced<TypedAngle>> exhaust_port_closing;  ///< two-stroke, after BDC
    ValveGear valves;
    Decompressor decompressor = Decompressor::unknown;
    std::string plug_thread;  ///< "M12x1.25"
    std::optional<TypedLength> plug_reach;
    FactoryLimits limits;
    CrankcaseLimits crankcase;
    std::optional<TypedLength> shop_altitude;

    std::string extra;  ///< fields of a newer minor version, kept as they came (a JSON object or empty)
    Lineage lineage;

    bool operator==(const Engine&) const = default;
};

/// The engine, if it can exist: 1 to 16 cylinders with unique numbers 1 to 99, a name, a firing order that
/// names each cylinder once, as many intervals as cylinders in it that add up to 720 (two-stroke 360)
/// degrees, positive bore, stroke, rod longer than half the stroke, compression ratio over 1, low limits not
/// above high ones.
Result<Engine> checked(Engine engine);

/// Cylinder with that number, or null.
const Cylinder* find_cylinder(const Engine& engine, int number);

/// The maker's cylinder order for walking through a test: by number.
std::vector<int> numbers_in_order(const Engine& engine);

/// Crankcase chambers that are held each by itself, named by their cylinders: a two-stroke of several
/// cylinders has one a cylinder. {0}: there is only one.
std::vector<int> crankcase_chambers(const Engine& engine);

/// Fills rows and columns of the layout picture from arrangement and bank: in-line in one row, V and flat in
/// two.
void lay_out(Engine& engine);

/// Even firing intervals for the engine's firing order (720 or 360 degrees shared equally).
std::vector<TypedAngle> even_intervals(const Engine& engine);

}  // namespace lapwing

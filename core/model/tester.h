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

enum class TesterKind { compression_gauge, leak_down, crankcase };
LAPWING_WORDS(TesterKind, "compression gauge", "leak-down tester", "crankcase tester");
enum class CheckValveAt { unknown, chamber_end, gauge_end };
LAPWING_WORDS(CheckValveAt, "unknown", "chamber end", "gauge end");
/// The valve core decides how much pressure is lost in opening it.
enum class CheckValveCore { unknown, low_pressure, tyre };
LAPWING_WORDS(CheckValveCore, "unknown", "low-pressure", "tyre");
enum class AdapterSeal { screwed, rubber_cone };
LAPWING_WORDS(AdapterSeal, "screwed", "rubber cone");
/// How a gauge's class is written on its dial.
enum class AccuracyScheme { unknown, en_837_1, asme_b40_100 };
LAPWING_WORDS(AccuracyScheme, "unknown", "EN 837-1", "ASME B40.100");

/// One dial: its scale and how far it can be trusted.
struct Gauge {
    TypedPressure full_scale;  ///< scales start at zero
    AccuracyScheme scheme = AccuracyScheme::unknown;
    std::string accuracy;                   ///< EN: "1.6" (% of span); ASME: "A" to "D"; empty when unknown
    std::optional<TypedPressure> division;  ///< smallest division on the scale
    std::optional<TypedPressure> zero_at_rest;  ///< what the needle shows with no pressure
    std::optional<TypedAngle> sweep;            ///< of the scale, for reading photos

    bool operator==(const Gauge&) const = default;
};

struct Adapter {
    std::string name;
    std::string thread;
    std::optional<TypedLength> reach;
    std::optional<TypedVolume> volume;  ///< added to the chamber or hose
    AdapterSeal seal = AdapterSeal::screwed;

    bool operator==(const Adapter&) const = default;
};

enum class TesterCheckKind {
    outlet_blocked,
    holds_after_cranking,
    zero_at_rest,
    drilled_hole,
    against_reference
};
LAPWING_WORDS(TesterCheckKind, "outlet blocked", "holds after cranking", "zero at rest", "drilled hole",
              "against a reference");
enum class CheckResult { passed, failed };
LAPWING_WORDS(CheckResult, "passed", "failed");

/// One self-check of a tester, kept with its date.
struct TesterCheck {
    TesterCheckKind kind = TesterCheckKind::outlet_blocked;
    Timestamp at;
    CheckResult result = CheckResult::passed;
    std::optional<TypedPressure> set;
    std::optional<TypedPressure> shown;
    std::optional<TypedLength> hole;  ///< diameter of the drilled hole
    std::string note;

    bool operator==(const TesterCheck&) const = default;
};

/// A gauge or tester of the shop. Home-made ones are normal.
struct Tester {
    TesterId id;
    Timestamp made_at;
    TesterKind kind = TesterKind::compression_gauge;
    std::string name;
    bool home_made = false;
    Gauge gauge;                        ///< leak-down: the one after the restrictor
    std::optional<Gauge> supply_gauge;  ///< leak-down with two gauges: the one before the restrictor
    // Compression gauge
    std::optional<TypedVolume> hose_volume;  ///< hose and gauge together
    CheckValveAt check_valve_at = CheckValveAt::unknown;
    CheckValveCore check_valve_core = CheckValveCore::unknown;
    std::vector<Adapter> adapters;
    // Leak-down tester
    std::optional<TypedPressure> set_pressure;
    std::optional<TypedLength> restrictor;  ///< diameter
    std::optional<TypedLength> restrictor_length;
    std::optional<TypedRatio> restrictor_cd;
    std::vector<TesterCheck> checks;
    std::string note;

    std::string extra;
    Lineage lineage;

    bool operator==(const Tester&) const = default;
};

/// The tester, if it can exist: a name, a full scale above zero, positive volumes and diameters, a known
/// accuracy class for its scheme, a set pressure within the scale.
Result<Tester> checked(Tester tester);

/// The standard whose class or grade this is ("1.6": EN 837-1, "2A": ASME B40.100); unknown for anything
/// else.
AccuracyScheme scheme_of(const std::string& accuracy);

/// Most recent check of one kind, or null.
const TesterCheck* last_check(const Tester& tester, TesterCheckKind kind);
/// A check that the tester failed and has not passed since, or null. A needle off zero of which it is known
/// how far is no reason for doubt: that is reckoned with.
const TesterCheck* failed_check(const Tester& tester);

}  // namespace lapwing

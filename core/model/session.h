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

enum class Symptom {
    power_loss,
    oil_use,
    blue_smoke,
    white_smoke,
    black_smoke,
    coolant_loss,
    hard_starting,
    noise,
    misfire,
    stood_long
};
LAPWING_WORDS(Symptom, "power loss", "oil use", "blue smoke", "white smoke", "black smoke", "coolant loss",
              "hard starting", "noise", "misfire", "stood for long");

struct Complaint {
    std::vector<Symptom> symptoms;
    std::string text;

    bool operator==(const Complaint&) const = default;
};

/// The list of Prepare (what each is for: assets/reference/prepare.json).
enum class PrepareStep {
    plug_wells_blown_out,
    turned_by_hand,
    bores_oiled,
    oil_level,
    stuck_valves,
    borescope,
    clearances_first,
    temperature_noted,
    throttle_open,
    all_plugs_out,
    ignition_grounded,
    fuel_off,
    battery,
    decompressor_off,
    breather_open,
    compressor_off
};
LAPWING_WORDS(PrepareStep, "plug wells blown out", "turned by hand", "bores oiled", "oil level",
              "stuck valves", "borescope", "clearances first", "temperature noted", "throttle open",
              "all plugs out", "ignition grounded", "fuel off", "battery", "decompressor off",
              "breather open", "compressor off");
enum class StepState { open, done, not_done, not_needed };
LAPWING_WORDS(StepState, "open", "done", "not done", "not needed");

struct PrepareMark {
    PrepareStep step = PrepareStep::plug_wells_blown_out;
    StepState state = StepState::open;
    std::string note;

    bool operator==(const PrepareMark&) const = default;
};

enum class EngineHeat { unknown, cold, warm };
LAPWING_WORDS(EngineHeat, "unknown", "cold", "warm");
enum class Throttle { unknown, held_open, closed };
LAPWING_WORDS(Throttle, "unknown", "held open", "closed");
enum class Induction { unknown, on, off };
LAPWING_WORDS(Induction, "unknown", "fitted", "taken off");
enum class CrankedBy { unknown, starter, remote_switch, kick, rope, drill };
LAPWING_WORDS(CrankedBy, "unknown", "starter", "remote switch", "kick", "rope", "drill");
enum class CrankHeldBy { unknown, gear_and_brake, second_person, bar, low_pressure };
LAPWING_WORDS(CrankHeldBy, "unknown", "gear and brake", "second person", "bar", "lower set pressure");

/// What the readings of a session can be compared under.
struct Conditions {
    std::optional<TypedLength> altitude;  ///< of the shop
    std::optional<TypedPressure>
        station_pressure;  ///< what a barometer at the shop shows; wins over altitude
    std::optional<TypedTemperature> air;
    EngineHeat heat = EngineHeat::unknown;
    std::optional<TypedTemperature> coolant;
    Throttle throttle = Throttle::unknown;
    Induction induction = Induction::unknown;
    std::optional<TypedVoltage> battery;
    CrankedBy cranked_by = CrankedBy::unknown;
    std::optional<TypedRotation> cranking_speed;
    CrankHeldBy crank_held_by = CrankHeldBy::unknown;

    bool operator==(const Conditions&) const = default;
};

enum class OwnerAnswer { none, yes, no, later };
LAPWING_WORDS(OwnerAnswer, "none", "yes", "no", "later");

/// One visit to one engine.
struct Session {
    SessionId id;
    EngineId engine;
    Timestamp opened_at;
    std::string title;  ///< "As found", "After the repair"
    std::optional<TypedUsage> usage;
    std::string job_number;
    Complaint complaint;
    Conditions conditions;
    std::vector<PrepareMark> prepare;
    std::optional<TesterId> compression_gauge;
    std::optional<TesterId> leak_down_tester;
    std::optional<TesterId> crankcase_tester;
    OwnerAnswer owner_answer = OwnerAnswer::none;
    std::optional<Timestamp> owner_answered_at;
    std::optional<Timestamp> retest_planned_for;
    std::string note;

    std::string extra;
    Lineage lineage;

    bool operator==(const Session&) const = default;
};

Result<Session> checked(Session session);

/// State of one step; open when it was never marked.
StepState step_state(const Session& session, PrepareStep step);

}  // namespace lapwing

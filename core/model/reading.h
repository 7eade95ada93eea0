// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/model/ids.h"
#include "core/model/lineage.h"
#include "core/model/session.h"
#include "core/model/words.h"
#include "core/units/typed.h"

namespace lapwing {

enum class TestKind { dry, leak_down, wet, crankcase };
LAPWING_WORDS(TestKind, "dry", "leak-down", "wet", "crankcase");
/// What came just before a reading.
enum class Tag { as_found, after_adjustment, after_staking, after_oil_soak, after_running, after_repair };
LAPWING_WORDS(Tag, "as found", "after clearance adjustment", "after staking", "after oil soak",
              "after running three minutes", "after repair");
/// Whether oil was on the rings: it stays there for every later reading.
enum class Oiled { unknown, no, before, fresh };
LAPWING_WORDS(Oiled, "unknown", "no", "before", "fresh");
enum class ReadingFrom { typed, photo };
LAPWING_WORDS(ReadingFrom, "typed", "photo");

/// One entry of the pad. Which fields are there depends on the test:
/// dry and wet: final (first puff and pulls if noted; wet also oil); leak-down: set and held; crankcase: set,
/// held (the end pressure) and hold (how long).
struct Reading {
    ReadingId id;
    SessionId session;
    TestKind test = TestKind::dry;
    int cylinder = 1;  ///< its number on the engine; in a crankcase test 0 for the engine as one
    Timestamp taken_at;
    Tag tag = Tag::as_found;
    Oiled oiled = Oiled::unknown;
    ReadingFrom from = ReadingFrom::typed;
    std::optional<TesterId> tester;
    std::string adapter;

    std::optional<TypedPressure> first;
    std::optional<TypedPressure> final;
    std::optional<int> pulls;
    CrankedBy cranked_by = CrankedBy::unknown;
    std::optional<TypedPressure> set;
    std::optional<TypedPressure> held;
    /// Leak-down with a dial that is marked in % of leakage: what it showed. `held` is then what that stands
    /// for (held_by_dial).
    std::optional<TypedRatio> dial_loss;
    std::optional<TypedTime> hold;
    std::optional<TypedVolume> oil_volume;
    std::string oil_name;

    std::optional<ReadingId> replaces;  ///< Redo: the reading that this one stands for; both are kept
    std::string note;

    std::string extra;
    Lineage lineage;

    bool operator==(const Reading&) const = default;
};

Result<Reading> checked(Reading reading);

/// The pressure that a dial in % stands for: such dials are pressure gauges with another face, 0 % at the set
/// pressure and 100 % at none. In the unit of `set`, so finely that the dial's steps stay apart.
TypedPressure held_by_dial(const TypedPressure& set, const TypedRatio& loss);

/// How finely a pressure of the reading was written down, Pa: a step of its last digit, or of the dial's
/// percent that it was worked out from.
double step_pa(const Reading& reading, std::optional<TypedPressure> Reading::*field);

enum class Exit {
    intake,
    exhaust,
    breather,
    joint,
    coolant,
    next_plug_hole,
    crank_seals,
    base_gasket,
    reed,
    decompressor,
    other
};
LAPWING_WORDS(Exit, "intake", "exhaust", "breather", "head gasket", "coolant", "next cylinder's plug hole",
              "crank seals", "base gasket", "reed", "decompressor", "other");
enum class Loudness { nothing, faint, clear, strong };
LAPWING_WORDS(Loudness, "nothing", "faint", "clear", "strong");
enum class ListenedBy { ear, hose, soapy_water, bubbles, hand };
LAPWING_WORDS(ListenedBy, "ear", "hose", "soapy water", "bubbles", "hand");

/// What was heard or felt at one exit while the air was on. "Not listened" has no note at all; `nothing`
/// means listened and heard nothing.
struct ExitNote {
    ExitNoteId id;
    SessionId session;
    int cylinder = 1;
    Exit exit = Exit::intake;
    std::optional<int> neighbour;  ///< for next_plug_hole: which cylinder's hole
    Loudness loudness = Loudness::nothing;
    ListenedBy by = ListenedBy::ear;
    Tag tag = Tag::as_found;
    std::optional<ReadingId> reading;  ///< the leak-down reading that the air was on for
    std::optional<ExitNoteId> replaces;
    Timestamp at;
    std::string note;

    std::string extra;
    Lineage lineage;

    bool operator==(const ExitNote&) const = default;
};

Result<ExitNote> checked(ExitNote note);

enum class ValveSide { intake, exhaust };
LAPWING_WORDS(ValveSide, "intake", "exhaust");

/// Clearance of one valve as found, and as left when it was adjusted.
struct Clearance {
    ClearanceId id;
    SessionId session;
    int cylinder = 1;
    ValveSide side = ValveSide::intake;
    int valve = 1;  ///< counted from 1 along the engine, 1 to 4
    std::optional<TypedLength> found;
    std::optional<TypedLength> left;
    std::optional<ClearanceId> replaces;
    Timestamp at;
    std::string note;

    std::string extra;
    Lineage lineage;

    bool operator==(const Clearance&) const = default;
};

Result<Clearance> checked(Clearance clearance);

}  // namespace lapwing

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/findings/crank_model.h"
#include "core/findings/derivation.h"
#include "core/findings/message.h"
#include "core/findings/reference.h"
#include "core/model/visit.h"

namespace lapwing::findings {

/// A cranking test (dry or wet) of one cylinder. Repeats count: `final` is the mean of the newest tag's
/// readings.
struct Cranking {
    State state = State::none;
    Derived final;                         ///< gauge_pressure
    double scatter_u95 = 0.0;              ///< the part of its doubt that repeats' scatter brings, Pa
    double first_scatter_u95 = 0.0;        ///< and of the first puff's
    int repeats = 0;                       ///< readings in the mean
    std::optional<Derived> first;          ///< gauge_pressure, first puff
    std::optional<Derived> first_share;    ///< share, first puff of final reading
    std::optional<DerivedRange> expected;  ///< by the model, where the card has no limits
    std::optional<Derived> without_hose;   ///< had nothing lain before the check valve, by the model
    std::optional<Derived> put_right;      ///< as a factory limit means it, where something stood in the way
    Tag tag = Tag::as_found;
    bool superseded = false;  ///< something was done to the cylinder since (touched.h)
    Oiled oiled = Oiled::unknown;
    std::vector<ReadingId> readings;
    std::vector<Remark> why;  ///< why it has its state
};

/// The same leak as another tester would show it, in the two example laws.
struct OnTester {
    Pressure set;
    Length restrictor;
    Derived orifice;  ///< share
    Derived laminar;  ///< share

    /// Lowest and highest that either law gives within its doubt, shares.
    [[nodiscard]] std::pair<Figure, Figure> range() const;
};

/// What one published band says of a leak.
struct BandVerdict {
    std::string band;  ///< its id in limits.json
    State state = State::none;
    double leakage = 0.0;  ///< on the band's own tester, orifice law
    double u95 = 0.0;      ///< of it
    double own_u95 = 0.0;  ///< the part of that which no other cylinder of this visit shares
};

/// A leak-down test of one cylinder.
struct LeakDown {
    State state = State::none;
    Derived set;      ///< gauge_pressure
    Derived held;     ///< gauge_pressure, mean of repeats
    Derived leakage;  ///< share of the set pressure, the mechanic's number
    int repeats = 0;
    std::vector<OnTester>
        on_testers;  ///< reference.testers in their order; the maker's own first if there is one
    std::vector<BandVerdict> bands;    ///< every published band's own verdict, each on its own tester
    std::optional<Remark> bands_say;   ///< the same in a sentence, every band in its derivation
    std::optional<Derived> leak_area;  ///< area, effective
    std::optional<Derived> leak_hole;  ///< length, round hole of that area
    std::optional<Derived> flow;       ///< flow ANR at the held pressure
    /// Set pressure and leakage of readings at another one that no single leak can explain beside these.
    std::optional<std::pair<Derived, Derived>> does_not_fit;
    std::optional<Remark> law;  ///< what readings at two set pressures say of the leak's law
    Tag tag = Tag::as_found;
    bool superseded = false;  ///< something was done to the cylinder since (touched.h)
    Oiled oiled = Oiled::unknown;
    std::vector<ReadingId> readings;
    std::vector<Remark> why;  ///< why it has its state
};

/// Has no state: oil and its volume lift the reading, so no limit is meant for it, and a rise says where the
/// leak is, not how large.
struct Wet {
    Cranking reading;
    std::optional<Derived> rise;  ///< share of the dry final reading; absent without a dry test in one state
    std::optional<DerivedRange> volume_rise;  ///< rise that the oil's mere volume explains, by the model
};

/// One exit that was listened at; the loudest standing note of each exit.
struct Heard {
    Exit exit = Exit::intake;
    std::optional<int> neighbour;
    Loudness loudness = Loudness::nothing;
    ListenedBy by = ListenedBy::ear;
    std::optional<Path> path;  ///< what the exit points at in this engine; absent when it points at nothing
};

struct Clearances {
    State state = State::none;
    bool recorded_intake = false;
    bool recorded_exhaust = false;
    bool small_intake = false;  ///< no or too little clearance, not put right
    bool small_exhaust = false;
    bool put_right_intake = false;  ///< found too small and left within its range
    bool put_right_exhaust = false;
    /// Recorded where the card has no range to hold it against: the smallest, as it is now.
    std::optional<Figure> unjudged_intake;
    std::optional<Figure> unjudged_exhaust;
    std::vector<Remark> remarks;  ///< one for each valve out of its range, or without one
};

/// `none` also stands for a reading that there is nothing to judge by, and for one that a question hangs
/// over.
struct CylinderFindings {
    int number = 1;
    State state = State::none;      ///< worst of its tests
    Message headline;               ///< the one plain sentence
    std::optional<Path> points_at;  ///< the path that the rules of thumb point at, if they agree on one
    std::optional<Cranking> dry;
    std::optional<LeakDown> leak_down;
    std::optional<Wet> wet;
    std::vector<Heard> exits;  ///< loudest first
    /// Where no exit counts any more: what was heard before the parts were touched that it may have come out
    /// at.
    std::vector<Heard> heard_earlier;
    Tag heard_earlier_tag = Tag::as_found;
    Clearances clearances;
    std::vector<Remark> rules_of_thumb;
    std::vector<Remark> contradictions;
    std::vector<Remark> questions;  ///< to be answered before any verdict
    /// What is to be done again, since readings can't all be right (misfits.h).
    std::vector<TestKind> again;
};

/// One published spread rule, held against the engine's readings.
struct RuleVerdict {
    std::string rule;  ///< its id in limits.json
    bool holds = true;
    State gives = State::none;  ///< what failing it does to a cylinder; none: it is only said
    CylinderList failing;
    Remark remark;
};

/// Factory limits as they apply at this shop.
struct Limits {
    std::optional<Derived> low, high, lowest, difference;
    Remark basis;  ///< scaled or not, and by what
};

/// The hold test of one chamber: a two-stroke has one a cylinder.
struct Crankcase {
    int cylinder = 0;  ///< 0: the engine as one
    State state = State::none;
    Derived set, end;
    std::optional<Derived> hold;
    Remark remark;
};

/// What to do next.
enum class Action {
    dry,
    leak_down,
    listen,
    wet,
    clearances,
    adjust,
    turn_once,
    crankcase,
    tester_check,
    plan
};

struct NextStep {
    Action action = Action::plan;
    std::optional<int> cylinder;
    Message reason;
};

struct Findings {
    State state = State::none;
    Message headline;                         ///< the engine as a whole
    std::vector<CylinderFindings> cylinders;  ///< by number
    Limits limits;
    std::vector<Remark> expectation;       ///< without factory limits: what the model expects, or why nothing
    std::vector<RuleVerdict> spread;       ///< of the dry test; empty below two cylinders
    std::vector<RuleVerdict> leak_spread;  ///< of the leak-down test; empty below two cylinders
    std::vector<Crankcase> crankcases;     ///< what was held as one first, then by cylinder
    std::vector<Remark> questions;         ///< about the whole engine
    std::vector<Remark> contradictions;    ///< about the whole engine
    std::vector<Remark> weakened_by;       ///< conditions and tester checks that make the readings worth less
    std::vector<NextStep> next;            ///< most worth doing first; never empty

    [[nodiscard]] const CylinderFindings* cylinder(int number) const;
    [[nodiscard]] const Crankcase* crankcase(int cylinder) const;  ///< null: not held by itself
};

struct FindingsOptions {
    /// Only readings and exits that carry this tag; absent: of each cylinder and test the newest tag's.
    std::optional<Tag> tag;
    /// Where the cranking model's facts are remembered from one call to the next; null: worked out anew.
    ModelCache* models = nullptr;
    /// False: only what states and headlines rest on. Spares the model for engines with factory limits.
    bool beside = true;
};

/// Everything that one visit's readings say. Pure: the same dossier gives the same findings. Readings of
/// other visits change no state and no verdict; what an earlier one left open is asked for and counts as
/// worth doing next. `visit` may be one of the dossier's or stand alone.
Findings find(const Dossier& dossier, const Visit& visit, const Reference& reference,
              const FindingsOptions& options = {});

/// Air pressure of the shop, Pa absolute: as noted, else by its altitude, else at sea level.
double station_pressure_pa(const Engine& engine, const Session& session, const Reference& reference);

}  // namespace lapwing::findings

namespace lapwing {
LAPWING_WORDS(findings::Action, "dry", "leak-down", "listen", "wet", "clearances", "adjust", "turn once",
              "crankcase", "tester check", "plan");
}  // namespace lapwing

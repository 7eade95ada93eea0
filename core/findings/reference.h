// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/result.h"
#include "core/findings/state.h"
#include "core/model/visit.h"
#include "core/uncertainty/instrument.h"

namespace lapwing::findings {

/// A way out of the cylinder.
enum class Path {
    rings,
    intake,
    exhaust,
    gasket,
    next_cylinder,
    coolant,
    decompressor,
    crank_seals,
    base_gasket,
    reed
};

enum class BasisKind { published, common_practice, assumption };

/// Where a value of the reference data comes from.
struct Basis {
    BasisKind kind = BasisKind::assumption;
    std::string source;   ///< name of the publication; empty for common practice and assumptions
    std::string comment;  ///< in English, for whoever wants to change the value
};

enum class SpreadKind { lowest_of_highest, below_average };

/// How far cylinders may lie apart.
struct SpreadRule {
    std::string id;
    SpreadKind kind = SpreadKind::lowest_of_highest;
    double share = 0.75;  ///< least share of the highest, or most that one may lie below the average
    std::optional<Pressure> at_least;  ///< and no cylinder under this
    std::optional<Fuel> fuel;          ///< absent: of any engine
    State gives = State::none;         ///< state of a failing cylinder; none: the rule is only shown
    Basis basis;
};

/// What makers ask of a cranking test in general, for engines without a factory range on their card.
struct TypicalCranking {
    std::string id;
    Fuel fuel = Fuel::petrol;
    bool per_compression_ratio = false;  ///< low and high are for each unit of compression ratio
    Pressure low;
    Pressure high;
    Basis basis;
};

/// Whom a band was written for.
enum class BandScope { any, maker, aircraft };

/// Leakage up to `good` is in range, up to `borderline` borderline, above it a fault.
struct LeakageBand {
    std::string id;
    BandScope scope = BandScope::any;
    Pressure set;  ///< of the tester that it belongs to
    Length restrictor;
    double good = 0.1;
    double borderline = 0.2;
    std::optional<double> spread_good;  ///< most between the best and the worst cylinder
    std::optional<double> spread_borderline;
    bool restrictor_by_bore = false;  ///< large bores are tested behind the larger restrictor
    bool gives_state = false;         ///< whether it decides a cylinder's state, or is only shown
    Basis basis;

    [[nodiscard]] State judge(double leakage) const;
};

/// A tester that readings are converted to before they are compared with published bands.
struct ReferenceTester {
    std::string id;
    Pressure set;
    Length restrictor;
    Basis basis;
};

struct ExitPath {
    Exit exit = Exit::intake;
    std::optional<Path> four_stroke;
    std::optional<Path> two_stroke;
};

struct PrepareReason {
    PrepareStep step = PrepareStep::plug_wells_blown_out;
    std::string reason;           ///< English
    std::string if_not_done;      ///< English: what it does to the readings; empty when nothing
    std::vector<TestKind> tests;  ///< that it matters to
    bool two_stroke = true;       ///< whether it makes sense on one
    bool diesel = true;
};

/// One caution and the places where it stands.
struct Caution {
    std::string id;
    std::vector<std::string> places;  ///< "dry", "leak-down", "wet", "exits", "staking", "start", "session"
    std::string text;                 ///< English
};

/// A number of this project's own or of common practice that a mechanic may want to change.
struct Assumption {
    std::string id;
    double value = 0.0;  ///< in `unit`
    std::string unit;
    std::string text;  ///< English: what it stands for
    Basis basis;
};

/// Rings are called when oil raises the reading by at least this share.
struct WetRule {
    double rise = 0.10;
    Basis basis;
};

/// Something that a file of an earlier version lacks and that was taken from this program's own.
struct FilledIn {
    std::string file;
    std::string what;  ///< id of a number, exit, step, or key of the file

    bool operator==(const FilledIn&) const = default;
};

/// Everything under assets/reference.
struct Reference {
    std::vector<SpreadRule> spread;
    std::vector<TypicalCranking> typical_cranking;
    std::vector<LeakageBand> leakage;
    std::vector<ReferenceTester> testers;
    WetRule wet;
    std::vector<ExitPath> exits;
    Basis exits_basis;
    std::vector<PrepareReason> prepare;
    std::vector<Caution> cautions;
    std::vector<Assumption> assumptions;
    std::vector<FilledIn> filled_in;

    [[nodiscard]] const LeakageBand& deciding_band() const;  ///< the one that gives the state
    [[nodiscard]] const LeakageBand* band(std::string_view id) const;
    [[nodiscard]] const SpreadRule* spread_rule(std::string_view id) const;
    /// Value in SI of an assumption that the code asks for by id; every id in use is checked on reading.
    [[nodiscard]] double assumed(std::string_view id) const;
    /// How a gauge's class error divides.
    [[nodiscard]] uncertainty::ErrorShares error_shares() const;
    [[nodiscard]] const Assumption* assumption(std::string_view id) const;
    [[nodiscard]] std::optional<Path> path_of(Exit exit, StrokeCycle cycle) const;
    [[nodiscard]] const PrepareReason* prepare_reason(PrepareStep step) const;
    [[nodiscard]] std::vector<const Caution*> cautions_at(std::string_view place) const;
};

/// The files' texts, one JSON document each.
struct ReferenceTexts {
    std::string_view limits, wet, exits, prepare, cautions, assumptions;
};

/// As built into this program from assets/reference.
ReferenceTexts built_in_texts();

/// Fails with "reference.malformed", naming file and place.
/// @param own what `texts` lack is taken from these, and named in `filled_in`; null: nothing may be missing
Result<Reference> read_reference(const ReferenceTexts& texts, const ReferenceTexts* own = nullptr);

Result<Reference> built_in_reference();

}  // namespace lapwing::findings

namespace lapwing {
LAPWING_WORDS(findings::BandScope, "any", "maker", "aircraft");
LAPWING_WORDS(findings::Path, "rings", "intake", "exhaust", "gasket", "next_cylinder", "coolant",
              "decompressor", "crank_seals", "base_gasket", "reed");
LAPWING_WORDS(findings::BasisKind, "published", "common practice", "assumption");
LAPWING_WORDS(findings::SpreadKind, "lowest of highest", "below average");
}  // namespace lapwing

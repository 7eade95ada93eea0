// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "core/base/clock.h"
#include "core/findings/derivation.h"
#include "core/findings/message.h"
#include "core/findings/reference.h"
#include "core/findings/state.h"
#include "core/report/label.h"

/// What the owner of an engine gets in the hand: content only, in no language and with nothing drawn.
/// qml/print makes pages of it.
namespace lapwing::report {

/// Somebody's own words; never translated.
struct OwnWords {
    std::string text;

    bool operator==(const OwnWords&) const = default;
};

/// A text of assets/reference, which is written in English and may have a translation.
struct ReferenceText {
    std::string english;

    bool operator==(const ReferenceText&) const = default;
};

/// "36 to 41 %": two values between which the truth lies.
struct Range {
    findings::Figure low;
    findings::Figure high;
};

/// A change, written with its sign: "−0.9 bar ± 0.7"; of two shares in points.
struct Difference {
    findings::Figure figure;
};

/// A sentence whose figures stand without their doubt, but with the digits that it allows: where the same
/// figures have another doubt beside it, or none of it counts.
struct Bare {
    findings::Message message;
};

/// One piece of text.
using Text =
    std::variant<Label, findings::Word, findings::Message, Bare, findings::Figure, Difference, Range,
                 findings::CylinderList, int, Timestamp, TypedTime, TypedUsage, OwnWords, ReferenceText>;

/// Pieces that belong on one line, to be written as a list: "starter, 250 rpm". A label that stands first
/// names the rest: "first puff: 3.1 bar".
using Line = std::vector<Text>;

/// "Job number: 114".
struct Fact {
    Text name;
    Line value;
};
struct Facts {
    std::vector<Fact> facts;
};

/// One sentence, with the state that it speaks of and the cylinder that it belongs to.
struct Sentence {
    Text text;
    std::optional<findings::State> state;
    std::optional<int> cylinder;
    std::optional<Label> part{};  ///< what it and the sentences after it speak of: a paragraph of its own
};
struct Sentences {
    std::vector<Sentence> sentences;
    bool run_on = false;  ///< read as one paragraph
};

/// An empty cell (no lines, no state) is one where nothing was noted.
struct Cell {
    std::vector<Line> lines;               ///< the first is what the cell is about, the rest say more of it
    std::optional<findings::State> state;  ///< written beside the first line as a mark with its word
    bool peers = false;                    ///< the lines are of one rank instead
};
struct Column {
    Line head;
    double width = 1.0;  ///< share of the table's width, in units of the other columns' shares
};
/// Every row has as many cells as there are columns. Rows are never taken apart unless one alone is longer
/// than a page.
struct Table {
    std::vector<Column> columns;
    std::vector<std::vector<Cell>> rows;
};

/// One cylinder's bore. Heights are shares of the drawn height, 0 at its foot and 1 at its top.
struct Bore {
    int number = 1;
    std::string name;                       ///< "front"; may be empty
    std::optional<findings::State> state;   ///< absent: measured, with nothing to judge it by
    std::optional<findings::Figure> shown;  ///< the figure written below; absent: not measured
    std::optional<double> piston;           ///< where the measured value stands
    double whisker = 0.0;                   ///< half the 95 % interval
    std::optional<double> notch;            ///< lowest limit
    std::optional<double> band_low;         ///< lower end of the normal range
    std::optional<double> band_high;
};
/// The bores of one test, all in one scale, in the order of the cylinders' numbers.
struct Bores {
    Label test;
    std::vector<Bore> bores;
    std::optional<Label> when{};  ///< before or after, of two visits
};

/// A cylinder's verdict: the one sentence that the owner reads first.
struct Verdict {
    int number = 1;
    std::string name;
    std::optional<findings::State> state;  ///< absent: measured, with nothing to judge it by
    findings::Message headline;
};
struct Verdicts {
    std::vector<Verdict> verdicts;
};

/// Where one cylinder leaks: shares of the whole with their 90 % intervals, the largest first.
struct Share {
    findings::Path path = findings::Path::rings;
    double mean = 0.0;  ///< 0 to 1, as the ends of the interval
    double low = 0.0;
    double high = 0.0;
};
struct Shares {
    int cylinder = 1;
    std::vector<Share> shares;
    std::vector<findings::Path> under_one_percent;  ///< too small to draw
};

/// A photo of the visit with what it shows and what its reading was.
struct Photo {
    std::string sha256;  ///< names its file
    std::optional<int> cylinder;
    Line title;
    std::vector<Line> lines;
};
struct Photos {
    std::vector<Photo> photos;
};

/// How one figure was made, worked through for one cylinder.
struct Worked {
    std::optional<int> cylinder;
    findings::Derivation derivation;
};

/// One quantity of every cylinder over the visits, oldest first.
struct Series {
    Label what;
    struct Visit {
        Timestamp at;
        std::string title;
    };
    struct Row {
        int number = 1;
        std::vector<std::optional<findings::Figure>> values;  ///< as many as visits
        std::vector<std::optional<findings::State>> states;   ///< as many as visits
    };
    std::vector<Visit> visits;
    std::vector<Row> rows;
};

/// One quantity of every cylinder over time, drawn: all of it in one tester's terms.
struct Chart {
    Label what{};
    findings::Dimension dimension = findings::Dimension::gauge_pressure;
    struct Visit {
        Timestamp at;
        std::string title;
        std::optional<TypedUsage> usage;  ///< what its meter read
    };
    struct Point {
        std::size_t visit = 0;
        findings::Figure value;
        bool counted = true;        ///< false: under circumstances that can't be compared
        bool after_repair = false;  ///< the line is broken before it
    };
    struct Line {
        int number = 1;
        std::string name;
        std::vector<Point> points;
    };
    std::vector<Visit> visits;  ///< oldest first
    std::vector<Line> lines;
};

using Block = std::variant<Facts, Sentences, Table, Bores, Verdicts, Worked, Series, Shares, Chart, Photos>;

struct Section {
    Label heading;
    std::vector<Block> blocks;  ///< never empty
};

/// What the report can be worked out again from; for the file's properties, where it costs an owner nothing.
struct Basis {
    std::string data;  ///< one sum of assets/reference (odds::sum_of)
    struct Odds {
        int assumptions = 0;  ///< their version
        std::uint64_t seed = 0;

        bool operator==(const Odds&) const = default;
    };
    std::optional<Odds> odds;  ///< where there are any

    bool operator==(const Basis&) const = default;
};

struct Report {
    std::string engine;       ///< its name
    std::string description;  ///< maker, type, year: own words; may be empty
    std::string session;      ///< the visit's title; may be empty
    Timestamp session_at;
    Timestamp made_at;
    std::string job_number;
    Facts head;
    std::vector<Section> sections;
    Basis basis;
};

}  // namespace lapwing::report

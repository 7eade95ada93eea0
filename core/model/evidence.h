// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/model/ids.h"
#include "core/model/lineage.h"
#include "core/model/reading.h"
#include "core/model/words.h"
#include "core/units/typed.h"

namespace lapwing {

/// What an attachment, note or plan line is tied to, within its session.
enum class TiedTo { session, cylinder, reading, exit_note, clearance, plan_line, finding, note, tester };
LAPWING_WORDS(TiedTo, "session", "cylinder", "reading", "exit", "clearance", "plan line", "finding", "note",
              "tester");

struct Tie {
    TiedTo to = TiedTo::session;
    std::optional<Uuid> record;   ///< reading, exit_note, clearance, plan_line, note, tester
    std::optional<int> cylinder;  ///< cylinder, finding
    std::string finding;          ///< finding: its code

    bool operator==(const Tie&) const = default;
};

enum class AttachmentKind { photo, voice };
LAPWING_WORDS(AttachmentKind, "photo", "voice note");
enum class PhotoOf { gauge, plug, borescope, valve, piston_crown, exit, other };
LAPWING_WORDS(PhotoOf, "gauge", "plug", "borescope", "valve", "piston crown", "exit", "other");

/// What a person made of a photo that reads otherwise than was typed.
enum class ReadSettled { as_read, as_typed, left_open, photo_only };
LAPWING_WORDS(ReadSettled, "as read", "as typed", "left open", "photo only");

/// A photo or voice note. The bytes lie in a file named by their SHA-256 and are never rewritten.
struct Attachment {
    AttachmentId id;
    SessionId session;
    AttachmentKind kind = AttachmentKind::photo;
    Tie tie;
    std::optional<PhotoOf> photo_of;
    std::string sha256;  ///< 64 lower-case hex digits
    std::string media_type;
    long long bytes = 0;
    std::optional<TypedTime> length;  ///< voice notes
    Timestamp taken_at;
    std::string caption;
    // What the needle reader made of it.
    std::optional<TypedPressure> read_value;
    std::optional<TypedPressure> read_uncertainty;
    std::optional<TypedRatio> read_confidence;  ///< absent when a person set the needle
    std::string read_refusal;
    std::optional<ReadSettled> read_settled;

    std::string extra;
    Lineage lineage;

    bool operator==(const Attachment&) const = default;
};

Result<Attachment> checked(Attachment attachment);

/// Ending of the file that holds an attachment of that media type ("jpg"); nothing for a type that is not
/// stored.
std::optional<std::string_view> file_extension(std::string_view media_type);

enum class NoteKind { note, other_cause, test_request, my_call };
LAPWING_WORDS(NoteKind, "note", "other cause", "please test this", "my call");
/// What a "please test this" can ask for besides the tests that give readings.
enum class AskedCheck { leak_hunt, clearances, staking, tester_check };
LAPWING_WORDS(AskedCheck, "leak hunt", "clearances", "staking", "tester check");
/// Where it leaks in the view of the person who writes "other cause" or "my call".
enum class Cause {
    rings,
    intake,
    exhaust,
    head_gasket,
    next_cylinder,
    coolant,
    decompressor,
    crankcase,
    seals_well,
    tester_or_method
};
LAPWING_WORDS(Cause, "rings", "intake", "exhaust", "head gasket", "next cylinder", "coolant", "decompressor",
              "crankcase", "seals well", "tester or method");

/// Something that a mechanic, learner or mentor wrote, on anything.
struct Note {
    NoteId id;
    SessionId session;
    NoteKind kind = NoteKind::note;
    Tie tie;
    std::string author;
    std::string text;
    Timestamp at;
    bool done = false;                ///< a test request that was carried out
    std::optional<TestKind> test;     ///< test requests: which one
    std::optional<AskedCheck> check;  ///< test requests: which check, instead of a test
    std::optional<Cause> cause;       ///< other cause and my call

    std::string extra;
    Lineage lineage;

    bool operator==(const Note&) const = default;
};

Result<Note> checked(Note note);

enum class PlanOption { leave, quick_fix, strip };
LAPWING_WORDS(PlanOption, "leave it", "quick fix", "strip");

struct Money {
    std::string digits;    ///< canonical digits
    std::string currency;  ///< as typed: "EUR", "£"

    bool operator==(const Money&) const = default;
};

struct PlanLine {
    PlanLineId id;
    SessionId session;
    PlanOption option = PlanOption::quick_fix;
    std::optional<int> cylinder;
    std::string work;
    std::string parts;
    std::optional<TypedTime> labour;
    std::optional<Money> price;
    std::string reason;
    std::string if_left;
    int order = 0;
    std::optional<Timestamp> done_at;
    std::optional<TypedPressure> predicted_low;  ///< reading to expect after it
    std::optional<TypedPressure> predicted_high;

    std::string extra;
    Lineage lineage;

    bool operator==(const PlanLine&) const = default;
};

Result<PlanLine> checked(PlanLine line);

}  // namespace lapwing

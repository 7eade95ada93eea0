// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/model/evidence.h"

#include <algorithm>
#include <array>

#include "core/model/check.h"

namespace lapwing {
namespace {

using model::Check;

struct MediaType {
    std::string_view name;
    std::string_view extension;
    AttachmentKind kind;
};
constexpr auto media_types = std::to_array<MediaType>({
    {"image/jpeg", "jpg", AttachmentKind::photo},
    {"audio/ogg", "opus", AttachmentKind::voice},
    {"audio/wav", "wav", AttachmentKind::voice},
    {"audio/webm", "webm", AttachmentKind::voice},
});

const MediaType* find_media_type(std::string_view name) {
    const auto found = std::ranges::find(media_types, name, &MediaType::name);
    return found == media_types.end() ? nullptr : &*found;
}

bool ties_to_record(TiedTo to) {
    return to != TiedTo::session && to != TiedTo::cylinder && to != TiedTo::finding;
}

void check_tie(Check& check, const Tie& tie) {
    check.that(tie.record.has_value() == ties_to_record(tie.to), "tie.record",
               "A tie to \"{}\" must {} a record: attach it again.", word(tie.to),
               ties_to_record(tie.to) ? "name" : "not name");
    if (tie.record) check.id(*tie.record, "record to hang on");
    const bool cylinder_allowed = tie.to == TiedTo::cylinder || tie.to == TiedTo::finding;
    check.that(!tie.cylinder || cylinder_allowed, "tie.cylinder_out_of_place",
               "A tie to \"{}\" must not name a cylinder: attach it again.", word(tie.to));
    check.that(tie.cylinder || tie.to != TiedTo::cylinder, "tie.cylinder_missing",
               "A tie to a cylinder must name it: attach it again.");
    if (tie.cylinder) check.within(*tie.cylinder, 1, 99, "Cylinder");
    check.that(tie.finding.empty() != (tie.to == TiedTo::finding), "tie.finding",
               "A finding must be named in a tie to a finding, and only there: attach it again.");
    check.text(tie.finding, "Finding", 200);
}

bool is_sha256(const std::string& text) {
    return text.size() == 64 && text.find_first_not_of("0123456789abcdef") == std::string::npos;
}

}  // namespace

std::optional<std::string_view> file_extension(std::string_view media_type) {
    const auto* type = find_media_type(media_type);
    return type ? std::optional(type->extension) : std::nullopt;
}

Result<Attachment> checked(Attachment attachment) {
    Check check(word(attachment.kind));
    check.id(attachment.id.uuid, "id");
    check.id(attachment.session.uuid, "session");
    check.time(attachment.taken_at, "Time");
    check_tie(check, attachment.tie);
    check.that(is_sha256(attachment.sha256), "attachment.bad_hash",
               "\"{}\" is not the SHA-256 of a file (64 digits 0-9 and a-f): attach the file again.",
               attachment.sha256);
    const auto* type = find_media_type(attachment.media_type);
    check.that(type != nullptr && type->kind == attachment.kind, "attachment.media_type",
               "\"{}\" is not a kind of file that a {} can be: photos are image/jpeg, voice notes audio/ogg, "
               "audio/wav or audio/webm.",
               attachment.media_type, word(attachment.kind));
    constexpr long long most_bytes = 4LL << 30;
    check.that(attachment.bytes > 0 && attachment.bytes <= most_bytes, "attachment.size",
               "The {} is {} bytes long: possible is 1 to {}. Attach the file again.", word(attachment.kind),
               attachment.bytes, most_bytes);
    check.text(attachment.caption, "Caption");
    check.within(attachment.length, 0.0, 86'400.0, "Length");

    const bool photo = attachment.kind == AttachmentKind::photo;
    check.that(photo || !attachment.photo_of, "attachment.photo_of",
               "A voice note shows nothing: leave out what the photo shows.");
    check.that(!photo || !attachment.length, "attachment.length",
               "A photo has no length in time: leave it out.");
    const bool was_read = attachment.read_value || attachment.read_uncertainty ||
                          attachment.read_confidence || !attachment.read_refusal.empty() ||
                          attachment.read_settled;
    check.that(photo || !was_read, "attachment.read", "A voice note has no needle to read: leave it out.");
    check.gauge_pressure(attachment.read_value, "Pressure read from the photo");
    check.within(attachment.read_uncertainty, 0.0, model::highest_gauge_pa, "Uncertainty of the reading");
    check.within(attachment.read_confidence, 0.0, 1.0, "Confidence of the reading");
    check.text(attachment.read_refusal, "Why the photo was not read");
    model::check_lineage(check, attachment.lineage);
    return check.done(std::move(attachment));
}

Result<Note> checked(Note note) {
    Check check("note");
    check.id(note.id.uuid, "id");
    check.id(note.session.uuid, "session");
    check.time(note.at, "Time");
    check_tie(check, note.tie);
    check.text(note.author, "Author", 500);
    check.text(note.text, "Text", 200'000);
    check.that(!note.done || note.kind == NoteKind::test_request, "note.done",
               "Only \"{}\" can be carried out: leave the tick off this note.", word(NoteKind::test_request));
    check.that(!note.test || note.kind == NoteKind::test_request, "note.test",
               "Only \"{}\" names a test: leave it out of this note.", word(NoteKind::test_request));
    check.that(!note.check || note.kind == NoteKind::test_request, "note.check",
               "Only \"{}\" names a check: leave it out of this note.", word(NoteKind::test_request));
    check.that(!note.check || !note.test, "note.check_or_test",
               "\"{}\" asks for a test or for a check: leave one of them out of this note.",
               word(NoteKind::test_request));
    check.that(!note.cause || note.kind == NoteKind::other_cause || note.kind == NoteKind::my_call,
               "note.cause", "Only \"{}\" and \"{}\" name where it leaks: leave it out of this note.",
               word(NoteKind::other_cause), word(NoteKind::my_call));
    model::check_lineage(check, note.lineage);
    return check.done(std::move(note));
}

Result<PlanLine> checked(PlanLine line) {
    Check check("plan line");
    check.id(line.id.uuid, "id");
    check.id(line.session.uuid, "session");
    if (line.cylinder) check.within(*line.cylinder, 1, 99, "Cylinder");
    check.text(line.work, "Work");
    check.text(line.parts, "Parts");
    check.within(line.labour, 0.0, 3.6e7, "Labour");
    if (line.price) {
        const auto canonical = canonical_digits(line.price->digits);
        check.that(canonical.has_value(), "plan.price",
                   "\"{}\" is not a price: type digits with at most one decimal mark.", line.price->digits);
        if (canonical) line.price->digits = *canonical;
        check.text(line.price->currency, "Currency", 20);
    }
    check.text(line.reason, "Reason");
    check.text(line.if_left, "What happens if left");
    check.within(line.order, 0, 100'000, "Place in the plan");
    if (line.done_at) check.time(*line.done_at, "Time done");
    check.gauge_pressure(line.predicted_low, "Lowest predicted reading");
    check.gauge_pressure(line.predicted_high, "Highest predicted reading");
    check.ordered(line.predicted_low, line.predicted_high, "Lowest predicted reading", "the highest");
    model::check_lineage(check, line.lineage);
    return check.done(std::move(line));
}

}  // namespace lapwing

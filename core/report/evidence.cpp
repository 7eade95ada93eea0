// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <algorithm>
#include <limits>

#include "core/model/by_id.h"
#include "core/report/pieces.h"
#include "core/report/sections.h"
#include "core/uncertainty/coverage.h"

namespace lapwing::report {

using findings::word_of;

namespace {

bool replaced(const Visit& visit, const Reading& reading) {
    return std::ranges::none_of(standing(visit.readings, reading.test, reading.cylinder),
                                [&](const Reading* one) { return one == &reading; });
}

/// What a photo or note hangs on, as far as it is one cylinder's, and in words.
struct On {
    std::optional<int> cylinder;
    Line what;
};

On on(const Visit& visit, const Tie& tie) {
    On out{tie.cylinder, {}};
    switch (tie.to) {
        case TiedTo::reading:
            if (const auto* reading = with_id(visit.readings, tie.record)) {
                if (reading->cylinder > 0) out.cylinder = reading->cylinder;
                out.what = {word_of(reading->test)};
            }
            break;
        case TiedTo::exit_note:
            if (const auto* exit = with_id(visit.exits, tie.record)) {
                if (exit->cylinder > 0) out.cylinder = exit->cylinder;
                out.what = {word_of(exit->exit)};
            }
            break;
        case TiedTo::clearance:
            if (const auto* valve = with_id(visit.clearances, tie.record)) {
                out.cylinder = valve->cylinder;
                out.what = {word_of(valve->side), valve->valve};
            }
            break;
        case TiedTo::plan_line:
            if (const auto* line = with_id(visit.plan, tie.record)) {
                out.cylinder = line->cylinder;
                out.what = {OwnWords{line->work}};
            }
            break;
        case TiedTo::note:
            if (const auto* note = with_id(visit.notes, tie.record); note && note->tie.to != TiedTo::note)
                out = on(visit, note->tie);
            break;
        case TiedTo::session:
        case TiedTo::cylinder:
            break;
        case TiedTo::finding:
        case TiedTo::tester:
            out.what = {word_of(tie.to)};
    }
    return out;
}

void add_reading(Photo& to, const Reading& reading) {
    using findings::figure_of;
    if (reading.final) to.lines.push_back({Label::typed, figure_of(*reading.final)});
    if (reading.dial_loss)
        to.lines.push_back({Label::typed, figure_of(*reading.dial_loss)});
    else if (reading.held)
        to.lines.push_back({Label::held, figure_of(*reading.held)});
    if (reading.set) to.lines.push_back({Label::set, figure_of(*reading.set)});
    if (reading.from != ReadingFrom::typed) to.lines.push_back({word_of(reading.from)});
}

/// What the needle reader saw, and what a person made of it where that was not the same.
void add_needle(Photo& to, const Attachment& photo) {
    if (photo.read_value) {
        const std::optional<double> u95 =
            photo.read_uncertainty ? std::optional(uncertainty::expanded(photo.read_uncertainty->si()))
                                   : std::nullopt;
        Line line{Label::needle_reads, findings::figure_of(*photo.read_value, u95)};
        if (!photo.read_confidence) line.emplace_back(Label::needle_by_hand);
        if (photo.read_settled) line.emplace_back(word_of(*photo.read_settled));
        to.lines.push_back(std::move(line));
    } else if (!photo.read_refusal.empty()) {
        // How to take a better one is told to who took it, not to who gets the report.
        to.lines.push_back({Label::needle_not_read});
    }
}

Photo photo_of(const Visit& visit, const Attachment& attachment) {
    On place = on(visit, attachment.tie);
    Photo out{attachment.sha256, place.cylinder, std::move(place.what), {}};
    // A gauge says itself what it is.
    if (attachment.photo_of && *attachment.photo_of != PhotoOf::gauge)
        out.title.emplace_back(word_of(*attachment.photo_of));
    if (out.title.empty()) out.title.emplace_back(word_of(AttachmentKind::photo));
    if (attachment.tie.to == TiedTo::reading)
        if (const auto* reading = with_id(visit.readings, attachment.tie.record)) add_reading(out, *reading);
    add_needle(out, attachment);
    if (!attachment.caption.empty()) out.lines.push_back({OwnWords{attachment.caption}});
    return out;
}

/// A photo of a reading that was done again shows what no longer counts.
bool shown(const Visit& visit, const Attachment& attachment) {
    if (attachment.kind != AttachmentKind::photo) return false;
    if (attachment.tie.to != TiedTo::reading) return true;
    const auto* reading = with_id(visit.readings, attachment.tie.record);
    return !reading || !replaced(visit, *reading);
}

}  // namespace

Section photos(const Visit& visit) {
    Photos photos;
    for (const Attachment& attachment : visit.attachments)
        if (shown(visit, attachment)) photos.photos.push_back(photo_of(visit, attachment));
    // By cylinder, each in the order of its tests; what belongs to none comes last.
    std::ranges::stable_sort(photos.photos, {}, [](const Photo& photo) {
        return photo.cylinder.value_or(std::numeric_limits<int>::max());
    });
    Section section{Label::photos, {}};
    const bool any = !photos.photos.empty();
    add_block(section, std::move(photos), any);
    return section;
}

Section opinions(const Visit& visit, bool appendix) {
    Table table{{{{Label::cylinder}, 1.0},
                 {{Label::on_what}, 1.6},
                 {{Label::opinion}, 2.2},
                 {{Label::in_words}, 4.4},
                 {{Label::by_whom}, 1.8}},
                {}};
    for (const Note& note : visit.notes) {
        if (note.kind == NoteKind::note && note.tie.to == TiedTo::session) continue;
        if (note.kind == NoteKind::my_call && !appendix) continue;
        On place = on(visit, note.tie);
        Line kind{word_of(note.kind)};
        if (note.cause) kind.emplace_back(word_of(*note.cause));
        if (note.test) kind.emplace_back(word_of(*note.test));
        if (note.check) kind.emplace_back(word_of(*note.check));
        if (note.done) kind.emplace_back(word_of(StepState::done));
        Cell by;
        if (!note.author.empty()) by.lines.push_back({OwnWords{note.author}});
        by.lines.push_back({note.at});
        table.rows.push_back({place.cylinder ? cell({*place.cylinder}) : Cell{},
                              place.what.empty() ? Cell{} : cell(std::move(place.what)),
                              cell(std::move(kind)), note.text.empty() ? Cell{} : cell({OwnWords{note.text}}),
                              std::move(by)});
    }
    Section section{Label::opinions, {}};
    add_block(section, table, !table.rows.empty());
    return section;
}

}  // namespace lapwing::report

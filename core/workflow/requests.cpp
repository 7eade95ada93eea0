// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/workflow/requests.h"

#include <algorithm>

#include "core/workflow/needs.h"

namespace lapwing::workflow {
namespace {

/// The cylinder that a note is about, itself or by the record that it hangs on; none for the whole engine.
Result<std::optional<int>> cylinder_of(const Now& now, const Tie& tie) {
    std::optional<RecordKind> kind;
    if (tie.to == TiedTo::reading) kind = RecordKind::reading;
    if (tie.to == TiedTo::exit_note) kind = RecordKind::exit_note;
    if (tie.to == TiedTo::clearance) kind = RecordKind::clearance;
    if (!kind || !tie.record) return tie.cylinder;
    const auto found = now.library.record(*kind, *tie.record);
    if (!found) return tl::unexpected(found.error());
    if (!*found) return tie.cylinder;
    const int cylinder = *kind == RecordKind::reading     ? std::get<Reading>(**found).cylinder
                         : *kind == RecordKind::exit_note ? std::get<ExitNote>(**found).cylinder
                                                          : std::get<Clearance>(**found).cylinder;
    return cylinder > 0 ? std::optional(cylinder) : std::nullopt;
}

}  // namespace

bool carried_out(const Note& request, std::optional<int> cylinder, const Engine& engine, const Visit& visit) {
    if (!request.test) return false;
    const bool same = request.session == visit.session.id;
    const auto measured = [&](int number) {
        return std::ranges::any_of(visit.readings, [&](const Reading& reading) {
            return reading.test == *request.test && reading.cylinder == number &&
                   (!same || reading.taken_at.unix_ms > request.at.unix_ms);
        });
    };
    if (*request.test == TestKind::crankcase) return measured(0);
    if (cylinder) return measured(*cylinder);
    return std::ranges::all_of(engine.cylinders, [&](const Cylinder& one) { return measured(one.number); });
}

Result<std::vector<Note>> ticked_by(const Now& now, Visit visit, const Reading& reading) {
    std::vector<Note> ticked;
    const auto requests = now.library.requests(visit.session.engine);
    if (!requests) return tl::unexpected(requests.error());
    if (std::ranges::none_of(*requests, [](const Note& note) { return !note.done; })) return ticked;
    const auto engine = need_engine(now, visit.session.engine);
    if (!engine) return tl::unexpected(engine.error());
    visit.readings.push_back(reading);
    for (Note note : *requests) {
        if (note.done || note.test != reading.test) continue;
        const auto asked_in = need_session(now, note.session);
        if (!asked_in) return tl::unexpected(asked_in.error());
        if (visit.session.opened_at < asked_in->opened_at) continue;
        const auto cylinder = cylinder_of(now, note.tie);
        if (!cylinder) return tl::unexpected(cylinder.error());
        if (!carried_out(note, *cylinder, *engine, visit)) continue;
        note.done = true;
        ticked.push_back(std::move(note));
    }
    return ticked;
}

}  // namespace lapwing::workflow

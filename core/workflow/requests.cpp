// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/workflow/requests.h"

#include <algorithm>

#include "core/findings/asked.h"
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

void add(Visit& visit, const Reading& reading) {
    visit.readings.push_back(reading);
}
void add(Visit& visit, const ExitNote& note) {
    visit.exits.push_back(note);
}
void add(Visit& visit, const Clearance& clearance) {
    visit.clearances.push_back(clearance);
}

// Only what was asked for ticks a request: one that a person opened again stays open until it is done again.
bool is_asked_for(const Note& request, const Reading& reading) {
    return request.test ? request.test == reading.test
                        : request.check == AskedCheck::staking && reading.tag == Tag::after_staking;
}
bool is_asked_for(const Note& request, const ExitNote& note) {
    return request.check == AskedCheck::leak_hunt ||
           (request.check == AskedCheck::staking && note.tag == Tag::after_staking);
}
bool is_asked_for(const Note& request, const Clearance&) {
    return request.check == AskedCheck::clearances;
}

template <class Record>
Result<std::vector<Note>> ticked(const Now& now, Visit visit, const Record& record) {
    std::vector<Note> out;
    const auto requests = now.library.requests(visit.session.engine);
    if (!requests) return tl::unexpected(requests.error());
    if (std::ranges::none_of(*requests, [](const Note& note) { return !note.done; })) return out;
    const auto engine = need_engine(now, visit.session.engine);
    if (!engine) return tl::unexpected(engine.error());
    add(visit, record);
    for (Note note : *requests) {
        if (note.done || !is_asked_for(note, record)) continue;
        const auto asked_in = need_session(now, note.session);
        if (!asked_in) return tl::unexpected(asked_in.error());
        if (visit.session.opened_at < asked_in->opened_at) continue;
        const auto cylinder = cylinder_of(now, note.tie);
        if (!cylinder) return tl::unexpected(cylinder.error());
        if (!findings::has_what_was_asked(note, *cylinder, *engine, visit, {})) continue;
        note.done = true;
        out.push_back(std::move(note));
    }
    return out;
}

}  // namespace

Result<std::vector<Note>> ticked_by(const Now& now, Visit visit, const Reading& reading) {
    return ticked(now, std::move(visit), reading);
}

Result<std::vector<Note>> ticked_by(const Now& now, Visit visit, const ExitNote& note) {
    return ticked(now, std::move(visit), note);
}

Result<std::vector<Note>> ticked_by(const Now& now, Visit visit, const Clearance& clearance) {
    return ticked(now, std::move(visit), clearance);
}

Result<std::vector<Note>> ticked_by_check(const Now& now, const Tester& tester) {
    std::vector<Note> out;
    const auto engines = now.library.engines();
    if (!engines) return tl::unexpected(engines.error());
    for (const auto& summary : *engines) {
        const auto requests = now.library.requests(summary.id);
        if (!requests) return tl::unexpected(requests.error());
        for (Note note : *requests) {
            if (note.done || note.check != AskedCheck::tester_check || !(note.at < tester.checks.back().at))
                continue;
            const auto session = need_session(now, note.session);
            if (!session) return tl::unexpected(session.error());
            if (!findings::is_about(note, *session, tester.id)) continue;
            note.done = true;
            out.push_back(std::move(note));
        }
    }
    return out;
}

Result<std::vector<Note>> opened_without(const Now& now, const Visit& visit, const Reading& reading) {
    std::vector<Note> opened;
    const auto requests = now.library.requests(visit.session.engine);
    if (!requests) return tl::unexpected(requests.error());
    const auto engine = need_engine(now, visit.session.engine);
    if (!engine) return tl::unexpected(engine.error());
    Visit without = visit;
    std::erase_if(without.readings, [&](const Reading& one) { return one.id == reading.id; });
    for (Note note : *requests) {
        if (!note.done || !is_asked_for(note, reading)) continue;
        const auto cylinder = cylinder_of(now, note.tie);
        if (!cylinder) return tl::unexpected(cylinder.error());
        const auto does = [&](const Visit& one) {
            return findings::has_what_was_asked(note, *cylinder, *engine, one, {});
        };
        const auto asked_in = need_session(now, note.session);
        if (!asked_in) return tl::unexpected(asked_in.error());
        if (visit.session.opened_at < asked_in->opened_at || !does(visit) || does(without)) continue;
        // Another session may have it as well.
        const auto sessions = now.library.sessions(visit.session.engine);
        if (!sessions) return tl::unexpected(sessions.error());
        bool elsewhere = false;
        for (const Session& other : *sessions) {
            if (other.id == visit.session.id || other.opened_at < asked_in->opened_at) continue;
            const auto later = need_visit(now, other.id);
            if (!later) return tl::unexpected(later.error());
            elsewhere = elsewhere || does(*later);
        }
        if (elsewhere) continue;
        note.done = false;
        opened.push_back(std::move(note));
    }
    return opened;
}

}  // namespace lapwing::workflow

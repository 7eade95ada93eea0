// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/workflow/readings.h"

#include <algorithm>
#include <cstdlib>
#include <limits>

#include "core/findings/photo_reading.h"
#include "core/workflow/needs.h"
#include "core/workflow/requests.h"
#include "core/workflow/tag_of_now.h"
#include "core/workflow/waiting_photos.h"

namespace lapwing::workflow {
namespace {

/// How long oil of a wet test is reckoned to stay on the rings, when another session was begun meanwhile.
/// Common practice, no source: until the engine has run, or overnight.
constexpr std::int64_t oil_stays_ms = std::int64_t{12} * 60 * 60 * 1000;

/// A session begun longer ago is not looked through: nobody goes on with one for weeks.
constexpr std::int64_t worked_on_ms = std::int64_t{14} * 24 * 60 * 60 * 1000;

/// The last wet test of the cylinder between these times; null where there is none.
const Reading* wet_between(const Visit& visit, int cylinder, std::int64_t from_ms, std::int64_t to_ms) {
    const Reading* last = nullptr;
    for (const Reading& earlier : visit.readings)
        if (earlier.test == TestKind::wet && earlier.cylinder == cylinder &&
            earlier.taken_at.unix_ms >= from_ms && earlier.taken_at.unix_ms <= to_ms)
            last = &earlier;
    return last;
}

/// Oil stays on the rings: a dry reading after a wet one, replaced or not, is no dry reading of an unoiled
/// bore. It does not leave them either because the next test is a session of its own.
Result<Oiled> oiled_at(const Now& now, const Visit& visit, const Reading& reading, bool taken_now) {
    if (reading.test == TestKind::wet) return Oiled::fresh;
    if (reading.test == TestKind::crankcase) return Oiled::no;
    const std::int64_t at = reading.taken_at.unix_ms;
    constexpr std::int64_t ever = std::numeric_limits<std::int64_t>::min();
    constexpr std::int64_t whenever = std::numeric_limits<std::int64_t>::max();
    // Running burns it off.
    const bool ran = reading.tag == Tag::after_running;
    if (!ran && wet_between(visit, reading.cylinder, ever, taken_now ? whenever : at)) return Oiled::before;
    // Whoever read it knows whether the engine ran since, or the bore was wiped.
    if (reading.oiled == Oiled::no) return Oiled::no;
    const auto sessions = now.library.sessions(visit.session.engine);
    if (!sessions) return tl::unexpected(sessions.error());
    for (const Session& other : *sessions) {
        if (other.id == visit.session.id || !of_the_same_work(other, reading.taken_at)) continue;
        const auto earlier = now.library.visit(other.id);
        if (!earlier) return tl::unexpected(earlier.error());
        const auto* wet =
            *earlier ? wet_between(**earlier, reading.cylinder, at - oil_stays_ms, at) : nullptr;
        // Whether work on the cylinder took it off, or brought new oil, nobody noted.
        if (!wet || ran) continue;
        const bool worked = reading.tag == Tag::after_repair &&
                            worked_on(**earlier, reading.cylinder, wet->taken_at.unix_ms, at);
        return worked && reading.oiled != Oiled::before ? Oiled::unknown : Oiled::before;
    }
    // Turned out again before the test, but not off the rings.
    if (!ran && step_state(visit.session, PrepareStep::bores_oiled) == StepState::done) return Oiled::before;
    // Oil that no wet test tells of: whoever put it in says so.
    return reading.oiled == Oiled::before ? Oiled::before : Oiled::no;
}

/// What is taken now comes after what was taken before, though the clock was set back in between.
Timestamp after_all(const Visit& visit, Timestamp now) {
    for (const auto& earlier : visit.readings)
        now.unix_ms = std::max(now.unix_ms, earlier.taken_at.unix_ms + 1);
    return now;
}

std::optional<TesterId> tester_for(TestKind test, const Session& session) {
    switch (test) {
        case TestKind::leak_down:
            return session.leak_down_tester;
        case TestKind::crankcase:
            return session.crankcase_tester;
        case TestKind::dry:
        case TestKind::wet:
            break;
    }
    return session.compression_gauge;
}

Result<Command> keep(const Now& now, const Visit& visit, std::string name, Reading reading,
                     std::optional<ReadSettled> settled) {
    const bool whole_crankcase = reading.test == TestKind::crankcase && reading.cylinder == 0;
    if (!whole_crankcase)
        if (auto there = check_cylinder(now, visit.session, reading.cylinder); !there)
            return tl::unexpected(there.error());
    const bool taken_now = reading.taken_at == Timestamp{};
    complete(reading, reading.taken_at, now);
    if (taken_now) reading.taken_at = after_all(visit, reading.taken_at);
    if (!reading.tester) reading.tester = tester_for(reading.test, visit.session);
    const auto oiled = oiled_at(now, visit, reading, taken_now);
    if (!oiled) return tl::unexpected(oiled.error());
    reading.oiled = *oiled;
    std::vector<std::string> args{std::string(word(reading.test)), std::to_string(reading.cylinder)};
    std::vector<Attachment> shown_by;
    if (taken_now)
        for (const auto* photo : waiting_photos(visit, reading.cylinder, reading.taken_at)) {
            shown_by.push_back(*photo);
            shown_by.back().tie = {TiedTo::reading, reading.id.uuid, {}, {}};
            if (settled && findings::photo_unsettled(reading, *photo)) shown_by.back().read_settled = settled;
        }
    auto command = with_ticks(put_checked(std::move(name), std::move(args), reading),
                              [&] { return ticked_by(now, visit, reading); });
    if (command)
        for (Attachment& photo : shown_by)
            command->edits.emplace_back(Put{std::move(photo)});
    return command;
}

const Reading* replacement_of(const Visit& visit, ReadingId id) {
    const auto found =
        std::ranges::find_if(visit.readings, [&](const Reading& later) { return later.replaces == id; });
    return found == visit.readings.end() ? nullptr : &*found;
}

}  // namespace

bool of_the_same_work(const Session& session, Timestamp at) {
    return std::abs(session.opened_at.unix_ms - at.unix_ms) < worked_on_ms;
}

const Reading* oil_of_other_session(std::span<const Visit> others, const Visit& visit, int cylinder,
                                    Timestamp at) {
    if (wet_between(visit, cylinder, std::numeric_limits<std::int64_t>::min(), at.unix_ms)) return nullptr;
    const Reading* last = nullptr;
    for (const Visit& other : others) {
        if (other.session.id == visit.session.id || !of_the_same_work(other.session, at)) continue;
        const auto* wet = wet_between(other, cylinder, at.unix_ms - oil_stays_ms, at.unix_ms);
        if (wet && (!last || last->taken_at < wet->taken_at)) last = wet;
    }
    return last;
}

Intent keep_reading(const Reading& reading, std::optional<ReadSettled> settled) {
    return [reading, settled](const Now& now) -> Result<Command> {
        const auto visit = need_visit(now, reading.session);
        if (!visit) return tl::unexpected(visit.error());
        Reading fresh = reading;
        fresh.replaces.reset();
        // A redo keeps the tag of what it puts right.
        if (fresh.taken_at == Timestamp{} && fresh.tag == Tag::as_found &&
            fresh.test != TestKind::crankcase) {
            const auto tag = tag_of_now(now, *visit, fresh.cylinder);
            if (!tag) return tl::unexpected(tag.error());
            fresh.tag = *tag;
        }
        return keep(now, *visit, "reading.keep", std::move(fresh), settled);
    };
}

Intent redo_reading(ReadingId replaced, const Reading& reading, std::optional<ReadSettled> settled) {
    return [replaced, reading, settled](const Now& now) -> Result<Command> {
        const auto old = need<Reading>(now, replaced.uuid);
        if (!old) return tl::unexpected(old.error());
        const auto visit = need_visit(now, old->session);
        if (!visit) return tl::unexpected(visit.error());
        if (replacement_of(*visit, replaced) != nullptr)
            return fail("reading.redone_already",
                        "This reading was redone already. Redo the one that stands in its place.");
        Reading fresh = reading;
        fresh.replaces = replaced;
        fresh.session = old->session;
        fresh.test = old->test;
        fresh.cylinder = old->cylinder;
        if (fresh.tag == Tag::as_found && old->tag == Tag::after_repair) fresh.tag = old->tag;
        return keep(now, *visit, "reading.redo", std::move(fresh), settled);
    };
}

Intent add_to_reading(ReadingId id, const Addition& more) {
    return [id, more](const Now& now) -> Result<Command> {
        auto kept = need<Reading>(now, id.uuid);
        if (!kept) return tl::unexpected(kept.error());
        if (more.first) kept->first = more.first;
        if (more.pulls) kept->pulls = more.pulls;
        if (more.oil_volume) kept->oil_volume = more.oil_volume;
        std::vector<std::string> args{std::string(word(kept->test)), std::to_string(kept->cylinder)};
        return put_checked("reading.add", std::move(args), std::move(*kept));
    };
}

Intent remove_reading(ReadingId id) {
    return [id](const Now& now) -> Result<Command> {
        const auto old = need<Reading>(now, id.uuid);
        if (!old) return tl::unexpected(old.error());
        const auto visit = need_visit(now, old->session);
        if (!visit) return tl::unexpected(visit.error());
        if (replacement_of(*visit, id) != nullptr)
            return fail("reading.redone_already",
                        "A later reading stands in for this one. Take that one out first.");
        Command command{"reading.remove",
                        {std::string(word(old->test)), std::to_string(old->cylinder)},
                        {Remove{RecordKind::reading, id.uuid}}};
        auto opened = opened_without(now, *visit, *old);
        if (!opened) return tl::unexpected(opened.error());
        for (Note& request : *opened)
            command.edits.emplace_back(Put{std::move(request)});
        return command;
    };
}

}  // namespace lapwing::workflow

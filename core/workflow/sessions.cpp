// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/workflow/sessions.h"

#include <algorithm>

#include "core/workflow/needs.h"

namespace lapwing::workflow {
namespace {

/// A session whose stored form `change` alters.
Intent change_session(SessionId id, std::string name, std::vector<std::string> args,
                      std::function<void(Session&, const Now&)> change) {
    return [id, name = std::move(name), args = std::move(args),
            change = std::move(change)](const Now& now) -> Result<Command> {
        auto session = need_session(now, id);
        if (!session) return tl::unexpected(session.error());
        change(*session, now);
        return put_checked(name, args, std::move(*session));
    };
}

/// The shop's only tester of a kind needs no choosing.
std::optional<TesterId> only_one(const std::vector<Tester>& testers, TesterKind kind) {
    std::optional<TesterId> found;
    for (const auto& tester : testers) {
        if (tester.kind != kind) continue;
        if (found) return std::nullopt;
        found = tester.id;
    }
    return found;
}

}  // namespace

static void put(std::vector<PrepareMark>& marks, const PrepareMark& mark) {
    const auto found = std::ranges::find(marks, mark.step, &PrepareMark::step);
    if (found == marks.end())
        marks.push_back(mark);
    else
        *found = mark;
}

static void put(Session& session, Start start) {
    session.conditions.heat = start.heat;
    session.conditions.throttle = start.throttle;
    if (start.throttle == Throttle::held_open)
        put(session.prepare, {PrepareStep::throttle_open, StepState::done, ""});
}

Intent open_session(SessionId id, EngineId engine_id, std::string title, Start start) {
    return [id, engine_id, title = std::move(title), start](const Now& now) -> Result<Command> {
        const auto engine = need_engine(now, engine_id);
        if (!engine) return tl::unexpected(engine.error());
        const auto earlier = now.library.sessions(engine_id);
        if (!earlier) return tl::unexpected(earlier.error());

        Session session;
        session.id = id;
        complete(session, session.opened_at, now);
        session.engine = engine_id;
        session.title = title;
        if (!earlier->empty()) {
            const Session& last = earlier->front();
            session.compression_gauge = last.compression_gauge;
            session.leak_down_tester = last.leak_down_tester;
            session.crankcase_tester = last.crankcase_tester;
            session.conditions.altitude = last.conditions.altitude;
            session.conditions.cranked_by = last.conditions.cranked_by;
        } else {
            const auto testers = now.library.testers();
            if (!testers) return tl::unexpected(testers.error());
            session.compression_gauge = only_one(*testers, TesterKind::compression_gauge);
            session.leak_down_tester = only_one(*testers, TesterKind::leak_down);
            session.crankcase_tester = only_one(*testers, TesterKind::crankcase);
        }
        if (!session.conditions.altitude) session.conditions.altitude = engine->shop_altitude;
        put(session, start);
        return put_checked("session.open", {engine->name, title}, std::move(session));
    };
}

Intent set_start(SessionId session, Start start) {
    return change_session(session, "session.conditions", {},
                          [start](Session& stored, const Now&) { put(stored, start); });
}

Intent save_session(Session session) {
    const auto id = session.id;
    const auto title = session.title;
    return change_session(id, "session.change", {title},
                          [session = std::move(session)](Session& stored, const Now&) {
                              const auto engine = stored.engine;
                              const auto opened_at = stored.opened_at;
                              stored = session;
                              stored.engine = engine;
                              stored.opened_at = opened_at;
                          });
}

Intent mark_step(SessionId session, const PrepareMark& mark) {
    return change_session(session, "session.step",
                          {std::string(word(mark.step)), std::string(word(mark.state))},
                          [mark](Session& stored, const Now&) { put(stored.prepare, mark); });
}

Intent mark_steps(SessionId session, std::vector<PrepareMark> marks) {
    const std::string state(marks.empty() ? std::string_view() : word(marks.front().state));
    // Counted first: the marks move on to the change before the other arguments are made.
    const std::string count = std::to_string(marks.size());
    return change_session(session, "session.prepare", {count, state},
                          [marks = std::move(marks)](Session& stored, const Now&) {
                              for (const auto& mark : marks)
                                  put(stored.prepare, mark);
                          });
}

Intent set_conditions(SessionId session, const Conditions& conditions) {
    return change_session(session, "session.conditions", {},
                          [conditions](Session& stored, const Now&) { stored.conditions = conditions; });
}

Intent choose_tester(SessionId session, TesterUse use, std::optional<TesterId> tester) {
    return change_session(session, "session.tester", {}, [=](Session& stored, const Now&) {
        auto& place = use == TesterUse::compression ? stored.compression_gauge
                      : use == TesterUse::leak_down ? stored.leak_down_tester
                                                    : stored.crankcase_tester;
        place = tester;
    });
}

Intent set_answer(SessionId session, OwnerAnswer answer) {
    return change_session(session, "session.answer", {std::string(word(answer))},
                          [answer](Session& stored, const Now& now) {
                              stored.owner_answer = answer;
                              stored.owner_answered_at.reset();
                              if (answer != OwnerAnswer::none) stored.owner_answered_at = now.clock.now();
                          });
}

Intent plan_retest(SessionId session, std::optional<Timestamp> day) {
    return change_session(session, "session.retest", {},
                          [day](Session& stored, const Now&) { stored.retest_planned_for = day; });
}

Intent remove_session(SessionId id) {
    return [id](const Now& now) -> Result<Command> {
        const auto session = need_session(now, id);
        if (!session) return tl::unexpected(session.error());
        auto edits = now.library.removal_of(id);
        if (!edits) return tl::unexpected(edits.error());
        return Command{"session.delete", {session->title}, std::move(*edits)};
    };
}

}  // namespace lapwing::workflow

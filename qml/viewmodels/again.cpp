// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/again.h"

#include <algorithm>

#include "qml/viewmodels/pad_fields.h"

namespace lapwing {
namespace {

bool cranked(const Visit& visit) {
    return std::ranges::any_of(visit.readings,
                               [](const Reading& reading) { return is_cranking(reading.test); });
}

bool measured(const Visit& visit, TestKind test, std::optional<int> cylinder) {
    return std::ranges::any_of(visit.readings, [&](const Reading& reading) {
        return reading.test == test && (!cylinder || reading.cylinder == *cylinder);
    });
}

/// Noted as a cranking test wants it.
bool as_wanted(const Conditions& conditions) {
    return conditions.throttle == Throttle::held_open && conditions.heat == EngineHeat::warm;
}

/// Still the same visit, though the test was begun in it: half a day.
bool of_today(const workflow::Desk& desk, const Session& session) {
    constexpr std::int64_t half_a_day_ms = 12LL * 3600 * 1000;
    return std::abs(desk.clock().now().unix_ms - session.opened_at.unix_ms) < half_a_day_ms;
}

}  // namespace

Again again(const workflow::Desk& desk, EngineId engine, SessionId from, TestKind test,
            std::optional<int> cylinder, bool other) {
    const auto sessions = desk.sessions(engine);
    const auto visit = sessions.empty() ? std::nullopt : desk.visit(sessions.front().id);
    if (!visit) return {std::nullopt, is_cranking(test)};
    const Conditions& conditions = visit->session.conditions;
    const bool begun_since = visit->session.id != from;
    const bool shut = is_cranking(test) && cranked(*visit) && conditions.throttle == Throttle::closed;
    const bool done = measured(*visit, test, cylinder);
    const bool open =
        begun_since ? !shut && (!done || of_today(desk, visit->session)) : !other && !shut && !done;
    if (!open) return {std::nullopt, is_cranking(test)};
    // Conditions are those of a whole session: once something was cranked in it, they are no longer asked
    // for.
    return {visit->session.id, is_cranking(test) && !cranked(*visit) && !as_wanted(conditions)};
}

StepPlace place_again(const workflow::Desk& desk, EngineId engine, SessionId from, TestKind test,
                      std::optional<int> cylinder) {
    const auto where = again(desk, engine, from, test, cylinder, false);
    const bool straight = where.in && !where.ask;
    StepPlace place{straight ? QStringLiteral("Pad") : QStringLiteral("Again"),
                    {{"sessionId", QString::fromStdString((straight ? *where.in : from).text())},
                     {"test", QString::fromUtf8(word(test).data())}}};
    if (cylinder) place.args["cylinder"] = *cylinder;
    return place;
}

}  // namespace lapwing

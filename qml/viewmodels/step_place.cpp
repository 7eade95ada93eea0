// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/step_place.h"

#include <QCoreApplication>
#include <algorithm>

#include "core/findings/asked.h"

namespace lapwing {
namespace {

using findings::Action;

const char* page_of(Action action) {
    switch (action) {
        case Action::dry:
        case Action::leak_down:
        case Action::wet:
        case Action::crankcase:
            return "Pad";
        case Action::listen:
            return "LeakHunt";
        case Action::clearances:
        case Action::adjust:
            return "Clearances";
        case Action::turn_once:
            return "NextTdc";
        case Action::tester_check:
            return "Testers";
        case Action::plan:
            break;
    }
    return "Plan";
}

const char* test_of(Action action) {
    switch (action) {
        case Action::dry:
            return "dry";
        case Action::wet:
            return "wet";
        case Action::crankcase:
            return "crankcase";
        default:
            return "leak-down";
    }
}

/// It was done in a later session: what is left is to hold the two side by side.
bool was_repeated(const findings::NextStep& step) {
    return step.reason.code == "next.repeated_open";
}

/// It is done on the engine's card: nothing tells which clearance is wanted.
bool looks_clearance_up(const findings::NextStep& step) {
    return step.reason.code == "next.clearance_wanted";
}

/// The tester of a leak-down is not known well enough: its card where the session names it, else where it is
/// named.
bool names_tester(const findings::NextStep& step) {
    return step.reason.code == "next.name_tester";
}

StepPlace where_tester_is_named(const QString& session_id, const workflow::Desk& desk) {
    const auto id = SessionId::parse(session_id.toStdString());
    const auto session = id ? desk.session(*id) : std::nullopt;
    if (session && session->leak_down_tester)
        return {QStringLiteral("TesterCard"),
                {{"testerId", QString::fromStdString(session->leak_down_tester->text())}}};
    return {QStringLiteral("Visit"), {{"sessionId", session_id}, {"line", QStringLiteral("leak_down")}}};
}

}  // namespace

StepPlace place_of(Action action, std::optional<int> cylinder, const QString& session_id) {
    StepPlace place{QString::fromLatin1(page_of(action)), {}};
    if (action == Action::tester_check) return place;
    place.args["sessionId"] = session_id;
    if (place.page == QLatin1String("Pad")) place.args["test"] = QString::fromLatin1(test_of(action));
    if (cylinder && action != Action::plan) place.args["cylinder"] = *cylinder;
    return place;
}

StepPlace place_of(const findings::NextStep& step, const QString& session_id, const workflow::Desk& desk) {
    if (was_repeated(step)) {
        const auto id = SessionId::parse(session_id.toStdString());
        const auto session = id ? desk.session(*id) : std::nullopt;
        if (session)
            return {QStringLiteral("Changes"),
                    {{"engineId", QString::fromStdString(session->engine.text())}, {"beforeId", session_id}}};
    }
    if (names_tester(step)) return where_tester_is_named(session_id, desk);
    // Under other conditions it belongs in a session of its own.
    if (step.reason.code.starts_with("next.repeat_"))
        return {QStringLiteral("Again"),
                {{"sessionId", session_id},
                 {"test", QString::fromLatin1(test_of(step.action))},
                 {"other", true}}};
    auto place = place_of(step.action, step.cylinder, session_id);
    // The valve that is meant.
    if (step.action == Action::clearances && step.reason.args.size() > 1) {
        const auto* valve = std::get_if<findings::Word>(&step.reason.args[1]);
        const bool exhaust = valve && *valve == findings::word_of(findings::Path::exhaust);
        const auto id = SessionId::parse(session_id.toStdString());
        const auto session = id ? desk.session(*id) : std::nullopt;
        if (session && looks_clearance_up(step))
            return {QStringLiteral("EngineCard"),
                    {{"engineId", QString::fromStdString(session->engine.text())},
                     {"line",
                      exhaust ? QStringLiteral("exhaust_clearance") : QStringLiteral("intake_clearance")}}};
        place.args["side"] = exhaust ? QStringLiteral("exhaust") : QStringLiteral("intake");
    }
    if (step.action != Action::tester_check || step.reason.args.size() < 2) return place;
    // The sentence names the tester and the check.
    const auto* name = std::get_if<std::string>(&step.reason.args[0]);
    const auto* check = std::get_if<findings::Word>(&step.reason.args[1]);
    const auto testers = desk.testers();
    const auto tester =
        std::ranges::find_if(testers, [&](const Tester& one) { return name && one.name == *name; });
    if (tester == testers.end() || !check) return place;
    return {QStringLiteral("TesterCard"),
            {{"testerId", QString::fromStdString(tester->id.text())},
             {"checkKind", QString::fromStdString(check->code).section(QLatin1Char(':'), 1)}}};
}

StepPlace place_of(AskedCheck check, const Tie& tie, std::optional<int> cylinder, const QString& session_id) {
    if (check == AskedCheck::tester_check && tie.to == TiedTo::tester && tie.record)
        return {QStringLiteral("TesterCard"), {{"testerId", QString::fromStdString(tie.record->text())}}};
    return place_of(findings::action_of(check), cylinder, session_id);
}

QString step_title(Action action, std::optional<int> cylinder, const format::Formatter& format) {
    const QString what = format.heading(action);
    return cylinder ? QCoreApplication::translate("Steps", "%1, cylinder %2").arg(what).arg(*cylinder) : what;
}

QString step_title(const findings::NextStep& step, const format::Formatter& format) {
    if (was_repeated(step)) return QCoreApplication::translate("Steps", "Before and after");
    if (names_tester(step)) return QCoreApplication::translate("Steps", "Name the tester");
    if (looks_clearance_up(step)) return QCoreApplication::translate("Steps", "Look up the clearance");
    const QString title = step_title(step.action, step.cylinder, format);
    return step.reason.code.starts_with("next.repeat_")
               ? QCoreApplication::translate("Steps", "%1, new session").arg(title)
               : title;
}

}  // namespace lapwing

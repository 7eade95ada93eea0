// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/session_model.h"

#include <algorithm>
#include <array>
#include <functional>
#include <set>
#include <string_view>
#include <tuple>

#include "core/findings/clearance_fit.h"
#include "core/odds/verdict.h"
#include "core/workflow/sessions.h"
#include "qml/viewmodels/bores.h"
#include "qml/viewmodels/my_call_model.h"
#include "qml/viewmodels/odds_evidence.h"
#include "qml/viewmodels/prepare_steps.h"
#include "qml/viewmodels/session_tile.h"

namespace lapwing {
namespace {

using findings::Action;
using findings::State;

/// Steps that are worth doing whatever was measured, so that they give nothing away. (A check of the tester
/// may be asked for because something is in doubt.)
bool says_nothing(const findings::NextStep& step) {
    static const std::array<std::string_view, 5> codes{"next.dry_all", "next.dry_one", "next.dry",
                                                       "next.crankcase", "next.crankcase_of"};
    return std::ranges::find(codes, step.reason.code) != codes.end();
}

int cylinders_with(const Visit& visit, const Engine& engine, TestKind test) {
    return static_cast<int>(std::count_if(
        engine.cylinders.begin(), engine.cylinders.end(),
        [&](const Cylinder& cylinder) { return latest(visit.readings, test, cylinder.number) != nullptr; }));
}

/// `args` with the cylinder that stands worst in test `by` and that `open` is true of, where one is in doubt.
QVariantMap at_the_doubtful(QVariantMap args, const std::optional<findings::Findings>& findings, TestKind by,
                            const std::function<bool(const findings::CylinderFindings&)>& open) {
    if (!findings) return args;
    State worst = State::good;
    for (const auto& cylinder : findings->cylinders)
        if (const State state = state_of(&cylinder, by); state > worst && open(cylinder)) {
            worst = state;
            args["cylinder"] = cylinder.number;
        }
    return args;
}

}  // namespace

void SessionModel::lookAgain() {
    refresh();
    emit refreshed();
}

void SessionModel::refresh() {
    if (!found()) return;
    steps_ = steps();
    tiles_.clear();
    explained_.clear();
    tiles_ << visitTile() << prepareTile();
    if (engine().cycle == StrokeCycle::four) tiles_ << clearancesTile();
    tiles_ << testTile(TestKind::dry) << testTile(TestKind::leak_down) << exitsTile()
           << testTile(TestKind::wet);
    if (engine().cycle == StrokeCycle::two) tiles_ << crankcaseTile();
    tiles_ << findingsTile() << planTile();
    circumstances_.clear();
    if (findings())
        for (const auto& remark : findings()->weakened_by)
            if (!remark.from.empty()) circumstances_ << explained_.remark(remark, {}, format());
}

QVariantMap SessionModel::visitTile() const {
    QStringList symptoms;
    for (const auto symptom : session().complaint.symptoms)
        symptoms << format().name(symptom);
    QStringList parts;
    if (!symptoms.isEmpty()) parts << symptoms.join(QStringLiteral(", "));
    if (!session().complaint.text.empty()) parts << QString::fromStdString(session().complaint.text);
    if (session().usage) parts << format().typed(*session().usage);
    if (!session().job_number.empty())
        parts << tr("job %1").arg(QString::fromStdString(session().job_number));
    const Conditions& now = session().conditions;
    if (now.throttle == Throttle::closed) parts << tr("throttle closed");
    if (now.throttle == Throttle::held_open) parts << tr("throttle held open");
    if (now.heat != EngineHeat::unknown) parts << format().name(now.heat);
    for (const auto& used :
         {session().compression_gauge, session().leak_down_tester, session().crankcase_tester})
        if (const auto* tester = find_tester(dossier(), used)) parts << QString::fromStdString(tester->name);
    const QString text = parts.isEmpty() ? tr("What the owner says, conditions, testers used")
                                         : format().headed(parts.join(QStringLiteral(" · ")));
    return tile("visit", tr("Complaint and conditions"), text, State::none, "Visit",
                {{"sessionId", sessionId()}});
}

QVariantMap SessionModel::prepareTile() const {
    int done = 0, not_done = 0, asked = 0;
    for (const auto& reason : reference().prepare) {
        if (!asked_of(engine(), reason)) continue;
        const auto state = step_state(session(), reason.step);
        if (state == StepState::not_needed) continue;
        ++asked;
        done += state == StepState::done;
        not_done += state == StepState::not_done;
    }
    QString text = tr("%1 of %2 done").arg(done).arg(asked);
    if (not_done > 0) text += QStringLiteral(", ") + tr("%n left out", nullptr, not_done);
    const State state = done == asked ? State::good : done + not_done > 0 ? State::borderline : State::none;
    return tile("prepare", tr("Prepare"), text, state, "Prepare", {{"sessionId", sessionId()}});
}

QVariantMap SessionModel::clearancesTile() const {
    State worst = State::none;
    std::set<std::tuple<int, ValveSide, int>> recorded, in_range;
    for (const auto& cylinder : engine().cylinders)
        for (const auto* one : standing(visit().clearances, cylinder.number)) {
            const std::tuple valve(cylinder.number, one->side, one->valve);
            const State state = findings::state_of(findings::fit_of(engine(), *one));
            recorded.insert(valve);
            worst = findings::worse(worst, state);
            if (state == State::good) in_range.insert(valve);
        }
    // Far less clearance than its siblings have is doubtful where nothing on the card judges it.
    if (findings())
        for (const auto& cylinder : findings()->cylinders)
            worst = findings::worse(worst, cylinder.clearances.state);
    const auto& valves = engine().valves;
    const auto total =
        engine().cylinders.size() * static_cast<std::size_t>(valves.intake_valves + valves.exhaust_valves);
    QString text = tr("A valve without clearance looks burnt");
    if (valves.adjuster == Adjuster::hydraulic) text = tr("Hydraulic adjusters: there is none to measure");
    if (!recorded.empty()) text = tr("%1 of %2 valves").arg(recorded.size()).arg(total);
    if (worst >= State::borderline)
        text += QStringLiteral(", ") + format().name(worst);
    else if (!in_range.empty())
        text += QStringLiteral(", ") + tr("%1 in range").arg(in_range.size());
    // What was not measured, or has nothing to hold it against, can't be in range.
    if (worst == State::good && in_range.size() < total) worst = State::none;
    auto made = tile("clearances", tr("Clearances"), text, worst, "Clearances", {{"sessionId", sessionId()}});
    if (!recorded.empty() && worst == State::none) made["state"] = measured_only;
    return made;
}

QVariantList SessionModel::bores(TestKind test) const {
    QVariantList list;
    static const findings::Findings none_yet;
    // More than six bores say nothing at this size; the words do.
    if (engine().cylinders.size() > 6) return list;
    const bool waits = verdicts_wait(*app(), visit());
    for (const auto& cylinder : engine().cylinders) {
        auto one = bore(findings() ? *findings() : none_yet, test, cylinder.number);
        if (waits && one["measured"].toBool()) one["state"] = not_judged_yet;
        list << one;
    }
    return list;
}

QVariantMap SessionModel::testTile(TestKind test) {
    const auto total = static_cast<int>(engine().cylinders.size());
    const int measured = cylinders_with(visit(), engine(), test);
    State worst = State::none;
    QStringList figures;
    if (findings())
        for (const auto& cylinder : findings()->cylinders) {
            worst = findings::worse(worst, state_of(&cylinder, test));
            const auto* derived = shownOf(cylinder, test);
            if (!derived) continue;
            const QString figure = test == TestKind::leak_down ? format().valueText(derived->figure)
                                                               : format().digits(derived->figure);
            // With some of them missing it has to be said whose it is.
            figures << (measured < total ? tr("%1: %2").arg(cylinder.number).arg(figure) : figure);
        }
    // What was not measured can't be in range.
    if (measured < total && worst == State::good) worst = State::none;
    const bool unjudged = measured > 0 && worst == State::none;
    QString text;
    QStringList said;
    if (measured == 0) {
        if (test == TestKind::wet)
            text = engine().fuel == Fuel::diesel ? tr("Never on a diesel: oil can lock it")
                                                 : tr("Last: oil stays on the rings");
        else
            text = test == TestKind::leak_down && engine().fuel != Fuel::diesel ? tr("Before any oil goes in")
                                                                                : tr("Not measured");
    } else if (total <= 6) {
        const QString unit = test == TestKind::leak_down
                                 ? QString()
                                 : QLatin1Char(' ') + format().unitOf(findings::Dimension::gauge_pressure);
        if (!figures.isEmpty()) said << figures.join(QStringLiteral(" · ")) + unit;
        if (measured < total) text = tr("%1 of %2 measured").arg(measured).arg(total);
    } else {
        text = tr("%1 of %2 measured").arg(measured).arg(total);
    }
    if (test == TestKind::dry && findings() && findings()->limits.lowest && measured > 0)
        said << (limits_scaled(*findings()) ? tr("factory limit %1 here") : tr("factory limit %1"))
                    .arg(format().valueText(findings()->limits.lowest->figure));
    const bool waits = verdicts_wait(*app(), visit());
    if (test == TestKind::dry && findings() && !waits)
        for (const auto& expected : findings()->expectation)
            if (expected.message.code == "model.healthy")
                said << tr("the model expects %1 to %2")
                            .arg(format().text(expected.message.args[0]),
                                 format().text(expected.message.args[1]));
    const char* key = test == TestKind::dry ? "dry" : test == TestKind::wet ? "wet" : "leak-down";
    if (half_typed(*app(), sessionId(), key))
        text += (text.isEmpty() ? QString() : QStringLiteral("; ")) + tr("digits typed and not kept");
    QVariantMap args{{"sessionId", sessionId()}, {"test", QString::fromLatin1(key)}};
    // Oil goes into the cylinder that read low, not into the first one of the engine.
    if (test == TestKind::wet && !waits)
        args = at_the_doubtful(std::move(args), findings(), TestKind::dry,
                               [](const auto& cylinder) { return !cylinder.wet; });
    auto made = tile(key, format().heading(test), text, worst, "Pad", args, bores(test));
    if (unjudged) made["state"] = measured_only;
    if (waits && measured > 0) made["state"] = not_judged_yet;
    made["lines"] = figuresOf(test);
    made["figures"] = said.join(QStringLiteral("; "));
    return made;
}

QVariantMap SessionModel::exitsTile() const {
    QStringList heard;
    for (const auto& cylinder : engine().cylinders) {
        QStringList here;
        for (const auto* note : standing(visit().exits, cylinder.number))
            if (note->loudness != Loudness::nothing)
                here << tr("%1 %2").arg(format().name(note->exit), format().name(note->loudness));
        if (!here.isEmpty()) heard << tr("%1: %2").arg(cylinder.number).arg(here.join(QStringLiteral(", ")));
    }
    const QString text = visit().exits.empty() ? tr("Listen where the air comes out, while it is on")
                         : heard.isEmpty()     ? tr("Listened, nothing heard")
                                               : heard.join(QStringLiteral("; "));
    QVariantMap args{{"sessionId", sessionId()}};
    if (!verdicts_wait(*app(), visit()))
        args = at_the_doubtful(std::move(args), findings(), TestKind::leak_down,
                               [](const auto& cylinder) { return cylinder.exits.empty(); });
    return tile("exits", tr("Leak hunt"), text, State::none, "LeakHunt", args);
}

QVariantMap SessionModel::findingsTile() {
    if (call_wanted(*app(), visit()))
        return tile("findings", tr("Findings"), tr("Your own call first"), State::none, "Findings",
                    {{"sessionId", sessionId()}});
    const QString text = findings() ? format().text(findings()->headline) : QString();
    auto made = tile("findings", tr("Findings"), text, findings() ? findings()->state : State::none,
                     "Findings", {{"sessionId", sessionId()}});
    addSpread(made);
    return made;
}

QVariantMap SessionModel::planTile() const {
    const auto& plan = visit().plan;
    const auto done = std::count_if(plan.begin(), plan.end(),
                                    [](const PlanLine& line) { return line.done_at.has_value(); });
    QStringList parts;
    if (plan.empty())
        parts << tr("Leave it, quick fix or strip, and what it costs");
    else
        parts << tr("%1 of %2 done").arg(done).arg(plan.size());
    if (session().owner_answer != OwnerAnswer::none)
        parts << tr("the owner says %1").arg(format().name(session().owner_answer));
    return tile("plan", format().heading(Action::plan), parts.join(QStringLiteral(", ")), State::none, "Plan",
                {{"sessionId", sessionId()}});
}

// ---- Worth doing next

std::vector<findings::NextStep> SessionModel::steps() const {
    if (!findings()) return {};
    const auto leaks = app()->odds().find(evidence_in(dossier()));
    return leaks ? odds::steps_by_worth(*findings(), *leaks, reference()) : findings()->next;
}

const findings::NextStep* SessionModel::next() const {
    if (steps_.empty()) return nullptr;
    const bool waits = verdicts_wait(*app(), visit());
    for (const auto& step : steps_)
        if (!waits || says_nothing(step)) return &step;
    return nullptr;
}

bool SessionModel::hasOthers() const {
    return found() && app()->desk().sessions(engine().id).size() > 1;
}

QString SessionModel::nextText() const {
    const auto* step = next();
    // What is to be decided stands on the findings.
    if (!step || step->action == Action::plan) return tr("Findings");
    return step_title(*step, format());
}

QString SessionModel::nextReason() const {
    // Where the odds were not worked out yet they may still know a test that tells something.
    if (next() && next()->reason.code == "next.nothing" && !app()->odds().find(evidence_in(dossier())))
        return tr("By the rules of thumb nothing is outstanding. Findings weighs all evidence together.");
    if (next()) return format().text(next()->reason);
    return findings() && call_wanted(*app(), visit())
               ? tr("Measure what you want to know, then make your own call.")
               : QString();
}

StepPlace SessionModel::nextPlace() const {
    const auto* step = next();
    if (!step || step->action == Action::plan)
        return {QStringLiteral("Findings"), {{"sessionId", sessionId()}}};
    return place_of(*step, sessionId(), app()->desk());
}

QString SessionModel::nextPage() const {
    return nextPlace().page;
}

QString SessionModel::nextCard() const {
    const auto* step = next();
    if (!step) return QStringLiteral("findings");
    switch (step->action) {
        case Action::dry:
            return QStringLiteral("dry");
        case Action::leak_down:
            return QStringLiteral("leak-down");
        case Action::wet:
            return QStringLiteral("wet");
        case Action::crankcase:
            return QStringLiteral("crankcase");
        case Action::listen:
            return QStringLiteral("listening");
        case Action::clearances:
        case Action::adjust:
            return QStringLiteral("clearances");
        case Action::turn_once:
            return QStringLiteral("tdc");
        case Action::tester_check:
            return QStringLiteral("testers");
        case Action::plan:
            break;
    }
    return QStringLiteral("findings");
}

QVariantMap SessionModel::nextArgs() const {
    return nextPlace().args;
}

QStringList SessionModel::remarks() const {
    QStringList texts;
    for (const Note& note : visit().notes)
        if (note.tie.to == TiedTo::session && note.kind == NoteKind::note)
            texts << QString::fromStdString(note.text);
    return texts;
}

QStringList SessionModel::cautions() const {
    QStringList texts;
    for (const auto* caution : reference().cautions_at("session"))
        texts << format().reference(caution->text);
    return texts;
}

void SessionModel::removeSession() {
    app()->run(workflow::remove_session(session().id), this);
}

}  // namespace lapwing

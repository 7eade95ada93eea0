// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/prepare_model.h"

#include <algorithm>

#include "core/findings/cautions.h"
#include "core/findings/prepare_word.h"
#include "core/workflow/sessions.h"
#include "qml/viewmodels/prepare_steps.h"

namespace lapwing {

void PrepareModel::refresh() {
    if (!found()) return;
    steps_.clear();
    for (const auto& reason : reference().prepare) {
        if (!asked_of(engine(), reason)) continue;
        steps_ << QVariantMap{
            {"key", QString::fromUtf8(word(reason.step).data())},
            {"name", format().headed(format().text(findings::word_of(reason.step, engine())))},
            {"reason", format().reference(reason.reason)},
            {"ifNotDone", format().reference(reason.if_not_done)},
            {"state", QString::fromUtf8(word(answer(reason.step)).data())}};
    }
}

/// Warm or cold is noted when the session says which, and not by a tick.
StepState PrepareModel::answer(PrepareStep step) const {
    const StepState marked = step_state(session(), step);
    if (step != PrepareStep::temperature_noted) return marked;
    if (session().conditions.heat != EngineHeat::unknown) return StepState::done;
    return marked == StepState::done ? StepState::open : marked;
}

QString PrepareModel::heat() const {
    return found() ? QString::fromUtf8(word(session().conditions.heat).data()) : QString();
}

QVariantList PrepareModel::heats() const {
    QVariantList out;
    for (const EngineHeat one : {EngineHeat::cold, EngineHeat::warm})
        out << QVariantMap{{"value", QString::fromUtf8(word(one).data())},
                           {"text", format().headed(format().name(one))}};
    return out;
}

void PrepareModel::noteHeat(const QString& heat) {
    const auto which = from_word<EngineHeat>(heat.toStdString());
    if (!which) return;
    Conditions conditions = session().conditions;
    conditions.heat = conditions.heat == *which ? EngineHeat::unknown : *which;
    app()->run(workflow::set_conditions(session().id, conditions), this);
}

QString PrepareModel::progress() const {
    int done = 0, asked = 0;
    for (const auto& step : steps_) {
        const auto state = step.toMap()["state"].toString();
        asked += state != QLatin1String("not needed");
        done += state == QLatin1String("done");
    }
    return tr("%1 of %2 done").arg(done).arg(asked);
}

QVariantList PrepareModel::cautions() const {
    const bool flies = findings::says_aircraft(engine());
    QVariantList here, apart;
    for (const auto* place : {"start", "adapter"})
        for (const auto* caution : reference().cautions_at(place)) {
            const bool away = caution->id == "aircraft" && !flies;
            (away ? apart : here) << QVariantMap{{"text", format().reference(caution->text)},
                                                 {"apart", away}};
        }
    return here + apart;
}

void PrepareModel::mark(const QString& step, const QString& state) {
    const auto which = from_word<PrepareStep>(step.toStdString());
    const auto how = from_word<StepState>(state.toStdString());
    if (which && how) app()->run(workflow::mark_step(session().id, PrepareMark{*which, *how, {}}), this);
}

int PrepareModel::open() const {
    return int(std::ranges::count_if(
        steps_, [](const QVariant& step) { return step.toMap()["state"] == QLatin1String("open"); }));
}

std::vector<PrepareMark> PrepareModel::rest() const {
    const auto& symptoms = session().complaint.symptoms;
    const bool stood = std::ranges::find(symptoms, Symptom::stood_long) != symptoms.end();
    std::vector<PrepareMark> marks;
    for (const auto& step : steps_) {
        if (step.toMap()["state"] != QLatin1String("open")) continue;
        const auto which = from_word<PrepareStep>(step.toMap()["key"].toString().toStdString());
        if (!which) continue;
        if (*which == PrepareStep::temperature_noted) continue;
        const bool oil = *which == PrepareStep::bores_oiled;
        if (!oil || !stood) marks.push_back({*which, oil ? StepState::not_needed : StepState::done, {}});
    }
    return marks;
}

bool PrepareModel::restToSay() const {
    return found() && open() < steps_.size() && !rest().empty();
}

void PrepareModel::restIsDone() {
    if (auto marks = rest(); !marks.empty())
        app()->run(workflow::mark_steps(session().id, std::move(marks)), this);
}

}  // namespace lapwing

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
            {"state", QString::fromUtf8(word(step_state(session(), reason.step)).data())}};
    }
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

void PrepareModel::restIsDone() {
    std::vector<PrepareMark> marks;
    for (const auto& step : steps_)
        if (step.toMap()["state"] == QLatin1String("open"))
            if (const auto which = from_word<PrepareStep>(step.toMap()["key"].toString().toStdString()))
                marks.push_back({*which, StepState::done, {}});
    if (!marks.empty()) app()->run(workflow::mark_steps(session().id, std::move(marks)), this);
}

}  // namespace lapwing

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/hit_rate_model.h"

namespace lapwing {

void HitRateModel::setApp(AppContext* app) {
    if (app_ == app) return;
    app_ = app;
    emit appChanged();
}

void HitRateModel::componentComplete() {
    connect(app_, &AppContext::changed, this, &HitRateModel::think);
    connect(app_, &AppContext::formatChanged, this, &HitRateModel::refreshed);
    think();
}

QString HitRateModel::text() const {
    if (!rate_) return {};
    const QString rate = app_->format().text(rate_->says);
    return rate_->says_apart ? rate + QLatin1Char(' ') + app_->format().text(*rate_->says_apart) : rate;
}

void HitRateModel::think() {
    if (!thinker_) thinker_ = std::make_unique<workflow::Background>();
    thinker_->ask<compare::HitRate>(
        [&desk = app_->desk(), &reference = app_->reference()](const std::stop_token& stop) {
            std::vector<compare::Proof> proofs;
            for (const auto& engines = desk.engines(); const auto& engine : engines) {
                if (stop.stop_requested()) break;
                const auto dossier = desk.dossier(engine.id);
                if (!dossier) continue;
                const auto more = compare::proofs_of(*dossier, reference);
                proofs.insert(proofs.end(), more.begin(), more.end());
            }
            return compare::hit_rate(proofs, reference);
        },
        [this](compare::HitRate rate) {
            QMetaObject::invokeMethod(
                this,
                [this, rate = std::move(rate)] {
                    rate_ = rate;
                    emit refreshed();
                },
                Qt::QueuedConnection);
        });
}

}  // namespace lapwing

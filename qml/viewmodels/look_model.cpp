// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/look_model.h"

#include <algorithm>

namespace lapwing {

LookModel::LookModel(platform::Appearance& appearance, AppSettings& settings, QObject* parent)
    : QObject(parent), appearance_(appearance), settings_(settings) {
    connect(&settings, &AppSettings::lookChanged, this, &LookModel::changed);
    appearance_.listen([this] { emit changed(); });
}

bool LookModel::dark() const {
    if (settings_.look() == QLatin1String("system")) return appearance_.dark().value_or(true);
    return settings_.look() == QLatin1String("workshop");
}

double LookModel::textScale() const {
    return std::clamp(appearance_.textScale().value_or(1.0) * settings_.textPercent() / 100.0, 1.0, 2.0);
}

bool LookModel::reducedMotion() const {
    return appearance_.reducedMotion().value_or(false);
}

}  // namespace lapwing

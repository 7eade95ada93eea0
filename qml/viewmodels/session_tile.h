// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QVariantMap>

#include "core/findings/state.h"
#include "qml/viewmodels/app_context.h"

/// Of SessionModel alone.
namespace lapwing {

/// A wide tile of the session's page, which opens `page`.
QVariantMap tile(const char* key, const QString& title, const QString& text, findings::State state,
                 const char* page, QVariantMap args, QVariantList bores = {});

/// Digits wait on a pad (its draft, as KeyedModel writes it).
bool half_typed(const AppContext& app, const QString& session, const char* test);

}  // namespace lapwing

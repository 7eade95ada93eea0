// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "platform/media/asked_permissions.h"

#include <QCoreApplication>
#include <QPermissions>

namespace lapwing::platform {
namespace {

Permissions::State meaning(Qt::PermissionStatus status) {
    switch (status) {
        case Qt::PermissionStatus::Granted:
            return Permissions::State::granted;
        case Qt::PermissionStatus::Denied:
            return Permissions::State::denied;
        case Qt::PermissionStatus::Undetermined:
            break;
    }
    return Permissions::State::not_asked;
}

QPermission qt_permission(Permission permission) {
    if (permission == Permission::camera) return QCameraPermission();
    return QMicrophonePermission();
}

}  // namespace

Permissions::State AskedPermissions::state(Permission permission) const {
    return meaning(qApp->checkPermission(qt_permission(permission)));
}

void AskedPermissions::request(Permission permission, Done done) {
    if (const auto now = state(permission); now != State::not_asked) return done(now);
    qApp->requestPermission(
        qt_permission(permission), qApp,
        [done = std::move(done)](const QPermission& answered) { done(meaning(answered.status())); });
}

}  // namespace lapwing::platform

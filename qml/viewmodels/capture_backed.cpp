// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/capture_backed.h"

namespace lapwing {
namespace {

Error denied(platform::Permission permission) {
    if (permission == platform::Permission::camera)
        return fail("camera.denied",
                    "Lapwing may not use the camera. Allow it in the system's settings; photos can be chosen "
                    "from files "
                    "all the same.")
            .value();
    return fail("microphone.denied",
                "Lapwing may not use the microphone. Allow it in the system's settings; everything else "
                "works without.")
        .value();
}

}  // namespace

void CaptureBacked::allow(platform::Permission permission, const std::function<void()>& granted) {
    app()->devices().permissions.request(
        permission, [=, guard = QPointer(this)](platform::Permissions::State answer) {
            if (!guard) return;
            guard->denied_ = answer != platform::Permissions::State::granted;
            if (guard->denied_) return guard->block(denied(permission), QStringLiteral("ready"));
            granted();
        });
}

void CaptureBacked::block(const Error& error, const QString& state) {
    blocked_ = format().text(error);
    state_ = state;
    emit stateChanged();
}

void CaptureBacked::go(const QString& state) {
    blocked_.clear();
    state_ = state;
    emit stateChanged();
}

Attachment CaptureBacked::blank() const {
    Attachment attachment;
    attachment.id = app()->desk().make_id<AttachmentId>();
    attachment.session = session().id;
    attachment.taken_at = app()->desk().clock().now();
    attachment.tie = tie();
    return attachment;
}

void CaptureBacked::openSystemSettings() {
    app()->devices().permissions.openSystemSettings();
}

}  // namespace lapwing

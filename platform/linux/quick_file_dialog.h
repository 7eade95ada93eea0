// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QQmlEngine>
#include <QUrl>
#include <QVariantMap>

#include "platform/api/file_picker.h"

namespace lapwing::platform {

/// Qt Quick's file dialog, for desktops without a portal. It is made by the app's own engine because it draws
/// itself inside the app's window.
class QuickFileDialog {
public:
    explicit QuickFileDialog(QQmlEngine& engine) : engine_(engine) {}

    void openFile(const QString& title, const QList<FileKind>& kinds, FilePicker::Picked picked);
    void saveFile(const QString& title, const QString& name, const FileKind& kind, FilePicker::Picked picked);

private:
    void show(QVariantMap properties, const QUrl& proposed, FilePicker::Picked picked);

    QQmlEngine& engine_;
};

}  // namespace lapwing::platform

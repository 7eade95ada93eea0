// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QDBusConnection>
#include <QHash>
#include <QObject>
#include <QVariantMap>

#include "platform/api/file_picker.h"

namespace lapwing::platform {

/// The desktop portal's file chooser (org.freedesktop.portal.FileChooser, freedesktop.org): the desktop's own
/// dialog, in its own process, with its bookmarks, and the only way out of a sandbox.
class PortalFileChooser final : public QObject {
    Q_OBJECT

public:
    using Chosen = FilePicker::Picked;

    explicit PortalFileChooser(QDBusConnection bus) : bus_(std::move(bus)) {}

    [[nodiscard]] bool available() const;
    void openFile(const QString& title, const QList<FileKind>& kinds, Chosen chosen);
    void saveFile(const QString& title, const QString& name, const FileKind& kind, Chosen chosen);

private slots:
    void response(uint answer, const QVariantMap& results, const QDBusMessage& message);

private:
    void ask(const QString& method, const QString& title, QVariantMap options, Chosen chosen);
    void finish(const QString& request, Result<std::optional<QString>> outcome);

    QDBusConnection bus_;
    QHash<QString, Chosen> waiting_;  ///< by the request's object path
    int asked_ = 0;
};

}  // namespace lapwing::platform

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QThreadPool>

#include "platform/linux/portal_file_chooser.h"
#include "platform/linux/quick_file_dialog.h"

namespace lapwing::platform {

/// The portal where there is one, Qt Quick's dialog where there is none.
class LinuxFilePicker final : public FilePicker {
public:
    LinuxFilePicker(QDBusConnection bus, QQmlEngine& engine) : portal_(std::move(bus)), dialog_(engine) {}

    [[nodiscard]] bool available() const override { return true; }
    void open(const QString& title, const QList<FileKind>& kinds, Picked picked) override;
    void saveCopy(const QString& title, const QString& file, const QString& name, const FileKind& kind,
                  Picked picked) override;

private:
    QThreadPool copying_;
    PortalFileChooser portal_;
    QuickFileDialog dialog_;
};

}  // namespace lapwing::platform

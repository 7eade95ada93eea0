// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <filesystem>
#include <functional>

#include "platform/api/file_picker.h"

namespace lapwing::platform {

/// Android's own file chooser (Storage Access Framework). A chosen file is a copy in the app's cache.
class AndroidFilePicker final : public FilePicker {
public:
    [[nodiscard]] bool available() const override { return true; }
    void open(const QString& title, const QList<FileKind>& kinds, Picked picked) override;
    void saveCopy(const QString& title, const QString& file, const QString& name, const FileKind& kind,
                  Picked picked) override;
};

/// Files that another program opens with the app, or shares with it. Android starts the app once only, so
/// there is no other window to hand a file to.
class AndroidReceivedFiles {
public:
    explicit AndroidReceivedFiles(const std::filesystem::path& /*library*/) {}

    [[nodiscard]] bool handOver(const QString& /*file*/) const { return false; }
    /// Calls `opened` on the main thread with each file, those that came before among them.
    void listen(std::function<void(const QString& file)> opened);
};

}  // namespace lapwing::platform

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "platform/linux/linux_file_picker.h"

#include <QCoreApplication>
#include <QFile>
#include <QFileInfo>
#include <QSaveFile>

namespace lapwing::platform {
namespace {

/// The old file at `place`, if any, stays whole until the new one is complete.
Status copyTo(const QString& place, const QString& file) {
    QFile in(file);
    if (!in.open(QIODevice::ReadOnly))
        return fail("picker.copy_read", "{} can't be read: {}", file.toStdString(),
                    in.errorString().toStdString());
    QSaveFile out(place);
    // Inside a sandbox the folder itself is not writable, only the file is.
    out.setDirectWriteFallback(true);
    bool good = out.open(QIODevice::WriteOnly);
    while (good && !in.atEnd()) {
        const QByteArray block = in.read(1 << 20);
        good = in.error() == QFileDevice::NoError && out.write(block) == block.size();
    }
    if (!good || !out.commit())
        return fail("picker.copy_write", "{} can't be written: {}. Choose another folder or make room.",
                    place.toStdString(), out.errorString().toStdString());
    return {};
}

}  // namespace

void LinuxFilePicker::open(const QString& title, const QList<FileKind>& kinds, Picked picked) {
    if (portal_.available()) return portal_.openFile(title, kinds, std::move(picked));
    dialog_.openFile(title, kinds, std::move(picked));
}

void LinuxFilePicker::saveCopy(const QString& title, const QString& file, const QString& name,
                               const FileKind& kind, Picked picked) {
    auto copy = [this, file, picked = std::move(picked)](Result<std::optional<QString>> place) {
        if (!place || !*place || QFileInfo(**place) == QFileInfo(file)) return picked(std::move(place));
        // A backup may be large: the window goes on while it is copied.
        copying_.start([file, picked, place = **place] {
            auto copied = copyTo(place, file);
            QMetaObject::invokeMethod(
                qApp,
                [picked, place, copied = std::move(copied)] {
                    if (copied)
                        picked(std::optional(place));
                    else
                        picked(tl::unexpected(copied.error()));
                },
                Qt::QueuedConnection);
        });
    };
    if (portal_.available()) return portal_.saveFile(title, name, kind, std::move(copy));
    dialog_.saveFile(title, name, kind, std::move(copy));
}

}  // namespace lapwing::platform

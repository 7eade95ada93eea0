// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "platform/linux/linux_share.h"

#include <QDBusMessage>
#include <QDBusPendingCallWatcher>
#include <QDBusPendingReply>
#include <QDesktopServices>
#include <QFileInfo>
#include <QStandardPaths>
#include <QUrl>

#include "platform/linux/session_bus.h"

namespace lapwing::platform {
namespace {

const QString fileManager = QStringLiteral("org.freedesktop.FileManager1");

Status openFolder(const QString& file) {
    const QString folder = QFileInfo(file).absolutePath();
    // Qt tries web browsers where there is no xdg-open; a browser is no place to find a file again.
    if (!QStandardPaths::findExecutable(QStringLiteral("xdg-open")).isEmpty() &&
        QDesktopServices::openUrl(QUrl::fromLocalFile(folder)))
        return {};
    return fail("share.no_file_manager", "No file manager could be opened here. The file lies at {}.",
                file.toStdString());
}

}  // namespace

Share::Way LinuxShare::way() const {
    const bool canOpen = serviceOffered(bus_, fileManager) ||
                         !QStandardPaths::findExecutable(QStringLiteral("xdg-open")).isEmpty();
    return canOpen ? Way::show_folder : Way::none;
}

void LinuxShare::share(const QString& file, const QString& /*mediaType*/, Done done) {
    if (!QFileInfo::exists(file))
        return done(fail("share.no_file", "There is no file at {}. Make it again.", file.toStdString()));
    if (!serviceOffered(bus_, fileManager)) return done(openFolder(file));

    auto call = QDBusMessage::createMethodCall(fileManager, QStringLiteral("/org/freedesktop/FileManager1"),
                                               fileManager, QStringLiteral("ShowItems"));
    call << QStringList{QUrl::fromLocalFile(QFileInfo(file).absoluteFilePath()).toString(QUrl::FullyEncoded)}
         << QString();
    auto* watcher = new QDBusPendingCallWatcher(bus_.asyncCall(call));
    QObject::connect(watcher, &QDBusPendingCallWatcher::finished, watcher,
                     [watcher, file, done = std::move(done)] {
                         watcher->deleteLater();
                         done(watcher->isError() ? openFolder(file) : Status{});
                     });
}

}  // namespace lapwing::platform

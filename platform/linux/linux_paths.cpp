// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "platform/linux/linux_paths.h"

#include <QFile>
#include <QStandardPaths>

namespace lapwing::platform {
namespace {

std::filesystem::path standardPath(QStandardPaths::StandardLocation location) {
    return QFile::encodeName(QStandardPaths::writableLocation(location)).toStdString();
}

}  // namespace

std::filesystem::path LinuxPaths::data() const {
    return data_ ? *data_ : standardPath(QStandardPaths::AppDataLocation);
}

std::filesystem::path LinuxPaths::documents() const {
    return standardPath(QStandardPaths::DocumentsLocation) / "Lapwing";
}

std::filesystem::path LinuxPaths::scratch() const {
    return standardPath(QStandardPaths::CacheLocation);
}

}  // namespace lapwing::platform

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QCoreApplication>
#include <QDir>
#include <QLibrary>

#ifdef Q_OS_IOS
#include <dlfcn.h>
#endif

#include "core/base/result.h"

namespace lapwing::platform {

/// Brings in a part of the app that lies in a library of its own (lib NAME in one of Qt's library paths, the
/// program's folder first among ours, or in ../lib/lapwing of it), and finds `function` in it. It is never
/// let go again: a thread may be in it to the very end. "part.missing" when this installation lacks it.
inline Result<QFunctionPointer> load_part(const QString& name, const char* function) {
#ifdef Q_OS_IOS
    // Linked in, and kept there by platform/phone.cmake.
    if (auto* const found = dlsym(RTLD_DEFAULT, function)) return reinterpret_cast<QFunctionPointer>(found);
#endif
    const QDir program(QCoreApplication::applicationDirPath());
    QStringList folders{program.path(), program.filePath(QStringLiteral("../lib/lapwing"))};
    folders += QCoreApplication::libraryPaths();
    QString why;
    for (const auto& folder : folders) {
        QLibrary library(QDir(folder).filePath(QStringLiteral("lib") + name));
        library.setLoadHints(QLibrary::PreventUnloadHint);
        if (const auto found = library.resolve(function)) return found;
        if (why.isEmpty()) why = library.errorString();
    }
    return fail("part.missing",
                "This installation lacks a part of Lapwing: {}. Install Lapwing anew; everything else works.",
                why.toStdString());
}

}  // namespace lapwing::platform

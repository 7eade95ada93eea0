// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>
#include <QStringList>
#include <functional>
#include <optional>

#include "core/base/result.h"

namespace lapwing::platform {

/// A kind of file to choose from: "Session files", {"*.zip"}, "application/zip".
struct FileKind {
    QString label;      ///< in the user's language
    QStringList globs;  ///< "*.pdf"
    QString mediaType;  ///< IANA media type; phones choose by this one
};

/// Lets a person choose a file. A phone gives no path to write to or keep, so the interface never speaks of
/// one: a chosen file can be read until the program ends, and what is saved is a copy that the system puts
/// where the person wants it.
class FilePicker {
public:
    /// The file, or nothing when the person changed their mind.
    using Picked = std::function<void(Result<std::optional<QString>>)>;

    virtual ~FilePicker() = default;
    [[nodiscard]] virtual bool available() const = 0;
    /// Asks for one existing file; `picked` gets an absolute path that can be read.
    virtual void open(const QString& title, const QList<FileKind>& kinds, Picked picked) = 0;
    /// Asks where a copy of `file` goes, proposes `name`, and copies it there; `picked` gets the place for
    /// showing. Like `open`, it calls back once on the calling thread, at once or later.
    virtual void saveCopy(const QString& title, const QString& file, const QString& name,
                          const FileKind& kind, Picked picked) = 0;
};

}  // namespace lapwing::platform

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>
#include <functional>

#include "core/base/result.h"

namespace lapwing::platform {

/// Hands a finished file to another program: mail, chat, a printer, a folder.
class Share {
public:
    /// What a tap can do here, so that the button's word is true.
    enum class Way {
        none,         ///< nothing: say where the file lies
        share_sheet,  ///< the system asks who is to get the file
        show_folder   ///< the folder opens with the file in it
    };
    using Done = std::function<void(Status)>;

    virtual ~Share() = default;
    [[nodiscard]] virtual Way way() const = 0;
    /// `file` is an absolute path, `mediaType` an IANA media type. `done` is called once, on the calling
    /// thread, at once or later: with an error that names the file when nothing could take it. Whether the
    /// other program did anything with it is not known.
    virtual void share(const QString& file, const QString& mediaType, Done done) = 0;
};

}  // namespace lapwing::platform

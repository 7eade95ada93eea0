// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/model/visit.h"
#include "core/workflow/desk.h"
#include "qml/format/formatter.h"

namespace lapwing {

/// How a session is called, wherever it is: "As found · 14 March 2026".
struct SessionName {
    QString name;  ///< its title; without one what was done in it, "Dry test, leak-down"; never empty
    QString when;  ///< its day; with the clock where the engine has another session of that day

    [[nodiscard]] QString line() const { return name + QStringLiteral(" · ") + when; }
};

/// @param all the engine's sessions, this one among them or not
SessionName session_name(const Visit& visit, const std::vector<Session>& all,
                         const format::Formatter& format);
/// The same where only the session was read: for one without a title its readings are looked up.
SessionName session_name(const Session& session, const std::vector<Session>& all, const workflow::Desk& desk,
                         const format::Formatter& format);

}  // namespace lapwing

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/session_name.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>

namespace lapwing {
namespace {

struct Texts {
    Q_DECLARE_TR_FUNCTIONS(SessionName)
};

QString done_in(const std::vector<Reading>& readings, const format::Formatter& format) {
    QStringList done;
    for (const TestKind test : {TestKind::dry, TestKind::leak_down, TestKind::wet, TestKind::crankcase})
        if (std::ranges::find(readings, test, &Reading::test) != readings.end())
            done << (done.isEmpty() ? format.heading(test) : format.name(test));
    return done.isEmpty() ? Texts::tr("Session, nothing measured") : done.join(QStringLiteral(", "));
}

QString when_of(const Session& session, const std::vector<Session>& all, const format::Formatter& format) {
    const QString day = format.shortDate(session.opened_at);
    const bool alone = std::ranges::none_of(all, [&](const Session& other) {
        return other.id != session.id && format.shortDate(other.opened_at) == day;
    });
    return alone ? day : format.shortDateTime(session.opened_at);
}

}  // namespace

SessionName session_name(const Visit& visit, const std::vector<Session>& all,
                         const format::Formatter& format) {
    const Session& session = visit.session;
    return {session.title.empty() ? done_in(visit.readings, format) : QString::fromStdString(session.title),
            when_of(session, all, format)};
}

SessionName session_name(const Session& session, const std::vector<Session>& all, const workflow::Desk& desk,
                         const format::Formatter& format) {
    auto visit = session.title.empty() ? desk.visit(session.id) : std::nullopt;
    if (!visit) visit = Visit{session, {}, {}, {}, {}, {}, {}};
    return session_name(*visit, all, format);
}

}  // namespace lapwing

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/session_name.h"

#include <QStringList>
#include <algorithm>

namespace lapwing {

QString session_name(const Visit& visit, const format::Formatter& format) {
    if (!visit.session.title.empty()) return QString::fromStdString(visit.session.title);
    QStringList done;
    for (const TestKind test : {TestKind::dry, TestKind::leak_down, TestKind::wet, TestKind::crankcase})
        if (std::ranges::find(visit.readings, test, &Reading::test) != visit.readings.end())
            done << (done.isEmpty() ? format.heading(test) : format.name(test));
    return done.join(QStringLiteral(", "));
}

}  // namespace lapwing

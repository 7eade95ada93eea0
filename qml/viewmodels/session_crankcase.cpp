// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// What the session's page shows of the crankcase.
#include <algorithm>
#include <utility>

#include "qml/viewmodels/bores.h"
#include "qml/viewmodels/my_call_model.h"
#include "qml/viewmodels/session_model.h"
#include "qml/viewmodels/session_tile.h"

namespace lapwing {

using findings::State;

/// What stands of the crankcase: of the engine as one, or of each chamber that was held by itself.
QVariantMap SessionModel::crankcaseTile() {
    const std::vector<findings::Crankcase> none_yet;
    const auto& held = findings() ? findings()->crankcases : none_yet;
    const bool waits = !held.empty() && verdicts_wait(*app(), visit());
    const auto chambers = crankcase_chambers(engine());
    const bool as_one = std::ranges::find(held, 0, &findings::Crankcase::cylinder) != held.end();
    const auto measured = std::ranges::count_if(
        chambers, [&](int number) { return findings() && findings()->crankcase(number); });
    State worst = State::none;
    QStringList figures, faults;
    QVariantList lines;
    for (const auto& one : held) {
        worst = findings::worse(worst, one.state);
        const QString figure =
            tr("%1 of %2").arg(format().valueText(one.end.figure), format().valueText(one.set.figure));
        const bool named = chambers.size() > 1 && one.cylinder > 0;
        figures << (named ? tr("%1: %2").arg(one.cylinder).arg(figure) : figure);
        const auto whose = [&](const QString& what) {
            return named ? tr("%1, cylinder %2").arg(what).arg(one.cylinder) : what;
        };
        lines << explained_.line({}, format().text(one.end.figure), whose(tr("end pressure")), {one.end.from})
              << explained_.line({}, format().text(one.set.figure), whose(tr("set pressure")),
                                 {one.set.from});
        if (!named || one.state >= State::borderline) faults << format().text(one.remark.message);
    }
    QString text =
        held.empty() || waits ? tr("Does the crankcase hold pressure?") : faults.join(QLatin1Char(' '));
    const bool all = as_one || std::cmp_equal(measured, chambers.size());
    if (!held.empty() && !all)
        text = tr("%1 of %2 measured").arg(measured).arg(chambers.size()) +
               (text.isEmpty() ? QString() : QStringLiteral(". ") + text);
    // What was not measured can't be in range.
    if (!all && worst == State::good) worst = State::none;
    if (half_typed(*app(), sessionId(), "crankcase"))
        text += (text.isEmpty() ? QString() : QStringLiteral("; ")) + tr("digits typed and not kept");
    auto made = tile("crankcase", format().heading(TestKind::crankcase), text, worst, "Pad",
                     {{"sessionId", sessionId()}, {"test", QStringLiteral("crankcase")}},
                     chambers.size() > 1 ? bores(TestKind::crankcase) : QVariantList());
    if (!held.empty() && worst == State::none) made["state"] = measured_only;
    if (waits) made["state"] = not_judged_yet;
    if (held.empty()) return made;
    made["figures"] = figures.join(QStringLiteral(" · "));
    made["lines"] = lines;
    return made;
}

}  // namespace lapwing

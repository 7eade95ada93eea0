// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// The figures that the session page shows, each with where it comes from.
#include "qml/viewmodels/bores.h"
#include "qml/viewmodels/my_call_model.h"
#include "qml/viewmodels/session_model.h"

namespace lapwing {

using findings::State;

const findings::Derived* SessionModel::shownOf(const findings::CylinderFindings& cylinder, TestKind test) {
    if (test == TestKind::leak_down) return cylinder.leak_down ? &cylinder.leak_down->leakage : nullptr;
    if (test == TestKind::dry) return cylinder.dry ? &cylinder.dry->final : nullptr;
    return test == TestKind::wet && cylinder.wet ? &cylinder.wet->reading.final : nullptr;
}

QVariantList SessionModel::figuresOf(TestKind test) {
    QVariantList lines;
    if (!findings()) return lines;
    const bool waits = verdicts_wait(*app(), visit());
    for (const auto& cylinder : findings()->cylinders) {
        const auto* derived = shownOf(cylinder, test);
        if (!derived) continue;
        const State state = waits ? State::none : state_of(&cylinder, test);
        lines << explained_.line(
            state == State::none ? QString() : state_key(state), format().text(derived->figure),
            test == TestKind::leak_down ? tr("leakage of cylinder %1").arg(cylinder.number)
                                        : tr("cylinder %1").arg(cylinder.number),
            {derived->from});
    }
    const bool measured = !lines.isEmpty();
    const auto& limits = findings()->limits;
    if (test == TestKind::dry && measured)
        for (const auto& [limit, text] :
             {std::pair{&limits.lowest,
                        limits_scaled(*findings()) ? tr("factory limit here") : tr("factory limit")},
              std::pair{&limits.difference, tr("most allowed between cylinders")}})
            if (*limit) lines << explained_.line({}, format().text((*limit)->figure), text, {(*limit)->from});
    if (waits) return lines;
    if (test == TestKind::dry)
        for (const auto& expected : findings()->expectation)
            if (!expected.from.empty()) lines << explained_.remark(expected, {}, format());
    const auto& spread = test == TestKind::dry ? findings()->spread : findings()->leak_spread;
    if (test != TestKind::wet)
        for (const auto& rule : spread) {
            auto line = explained_.remark(rule.remark, {}, format());
            const State shown = rule.holds ? State::good : rule.gives;
            if (shown != State::none) line["mark"] = state_key(shown);
            lines << line;
        }
    return lines;
}

void SessionModel::addSpread(QVariantMap& tile) {
    if (!findings()) return;
    // Lowest against highest: of the rule that fails, else of the first.
    const findings::RuleVerdict* told = nullptr;
    for (const auto* rules : {&findings()->spread, &findings()->leak_spread})
        for (const auto& rule : *rules)
            if (!rule.remark.from.empty() && (!told || (told->holds && !rule.holds))) told = &rule;
    if (!told) return;
    tile["figures"] = format().text(told->remark.message);
    tile["lines"] = QVariantList{explained_.remark(told->remark, {}, format())};
}

}  // namespace lapwing

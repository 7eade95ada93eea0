// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/change_lines.h"

#include <QtNumeric>

#include "core/compare/words.h"
#include "qml/format/bare_text.h"
#include "qml/format/difference_text.h"
#include "qml/viewmodels/bores.h"

namespace lapwing {

QString measure_text(const std::optional<compare::Measure>& measure, const format::Formatter& format) {
    if (!measure) return QStringLiteral("–");
    QString shown = format.valueText(measure->compared);
    if (!measure->converted) return shown;
    return QObject::tr("%1 (measured %2)").arg(shown, format.valueText(measure->as_measured));
}

QString signed_text(const findings::Figure& figure, const format::Formatter& format) {
    return format::difference_text(figure, format);
}

QString verdict_key(const compare::Change& change) {
    using compare::Verdict;
    switch (change.verdict) {
        case Verdict::better_beyond_doubt:
            return QStringLiteral("surely_better");
        case Verdict::better:
            return QStringLiteral("better");
        case Verdict::no_real_change:
            return QStringLiteral("same");
        case Verdict::worse:
            return change.beyond_doubt ? QStringLiteral("surely_worse") : QStringLiteral("worse");
        case Verdict::not_comparable:
            return QStringLiteral("not_comparable");
        case Verdict::not_measured:
            break;
    }
    return QStringLiteral("none");
}

QString verdict_text(const compare::Change& change, const format::Formatter& format) {
    if (change.verdict == compare::Verdict::worse && change.beyond_doubt)
        return QObject::tr("worse beyond doubt");
    return format.name(change.verdict);
}

QVariantList reason_lines(const std::vector<compare::Reason>& reasons, const Engine& engine,
                          const format::Formatter& format) {
    QVariantList out;
    for (const auto& reason : reasons) {
        QString text = format.text(reason.message);
        if (reason.cylinders.size() < engine.cylinders.size())
            text = format.headed(format.text(findings::Arg(reason.cylinders))) + QStringLiteral(": ") + text;
        const bool prevents = reason.treatment == compare::Treatment::prevents;
        out << QVariantMap{
            {"symbol", prevents                                            ? QStringLiteral("close")
                       : reason.treatment == compare::Treatment::corrected ? QStringLiteral("swap")
                                                                           : QStringLiteral("question")},
            {"mark", QString()},
            {"figure", QString()},
            {"text", text},
            {"from", -1}};
    }
    return out;
}

QVariantMap proof_line(const compare::Proof& proof, const format::Formatter& format) {
    using compare::Outcome;
    QStringList said;
    for (const auto& message : compare::said_of(proof))
        said << format::bare_text(message, format);
    const bool read =
        proof.outcome == Outcome::held || proof.outcome == Outcome::below || proof.outcome == Outcome::above;
    const bool tells = read && !proof.held_anyway;
    return {{"symbol", !tells                           ? QStringLiteral("question")
                       : proof.outcome == Outcome::held ? QStringLiteral("check")
                                                        : QStringLiteral("close")},
            {"mark", QString()},
            {"figure", QString()},
            {"text", said.join(u' ')},
            {"from", -1}};
}

QVariantMap bore_map(const report::Bore& bore) {
    const auto share = [](const std::optional<double>& of) { return of.value_or(qQNaN()); };
    return {{"measured", bore.piston.has_value()},
            {"value", bore.piston.value_or(0.0)},
            {"u", bore.whisker},
            {"limit", share(bore.notch)},
            {"low", share(bore.band_low)},
            {"high", share(bore.band_high)},
            {"state", state_key(bore.state.value_or(findings::State::none))}};
}

}  // namespace lapwing

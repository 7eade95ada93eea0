// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/pad_lines.h"

#include <algorithm>

#include "qml/viewmodels/bores.h"
#include "qml/viewmodels/derivation_item.h"

namespace lapwing {
namespace {

const QString compared = QStringLiteral("swap");  ///< the picture beside a figure that compares

}  // namespace

PadLines::PadLines(const findings::PadJudgement& judged, const format::Formatter& format) {
    for (const auto& question : judged.questions)
        add({}, QStringLiteral("question"), {}, format.text(question.message), question.from);
    if (judged.leakage)
        add(state_key(judged.state), {}, format.text(judged.leakage->figure), tr("leakage on this tester"),
            {judged.leakage->from});
    if (judged.converted) add_converted(*judged.converted, format);
    if (judged.leak_hole)
        add({}, QStringLiteral("gauge"), format.valueText(judged.leak_hole->figure),
            tr("hole would leak as much"), {judged.leak_hole->from});
    if (judged.value && !judged.leakage)
        add(state_key(judged.state), {}, format.text(judged.value->figure),
            judged.state == findings::State::none ? tr("give or take the gauge") : format.name(judged.state),
            {judged.value->from});
    if (judged.rise)
        add({}, compared, format.text(judged.rise->figure), tr("over the dry reading"), {judged.rise->from});
    for (const auto& fact : judged.facts)
        add({}, QStringLiteral("gauge"), {}, format.text(fact.message), fact.from);
}

void PadLines::add(const QString& mark, const QString& symbol, const QString& figure, const QString& text,
                   std::vector<findings::Derivation> from) {
    shown_ << QVariantMap{{"mark", mark}, {"symbol", symbol}, {"figure", figure}, {"text", text}};
    from_.push_back(std::move(from));
}

void PadLines::add_converted(const findings::OnTester& other, const format::Formatter& format) {
    auto from = other.orifice.figure, to = other.orifice.figure;
    from.si = std::min(other.orifice.figure.si, other.laminar.figure.si);
    to.si = std::max(other.orifice.figure.si, other.laminar.figure.si);
    const QString least = format.valueText(from), most = format.valueText(to);
    add({}, compared, least == most ? least : tr("%1 to %2").arg(least, most),
        tr("on a tester of %1 behind %2")
            .arg(format.valueText({findings::Dimension::gauge_pressure, other.set.si(), {}, {}, {}}),
                 format.valueText({findings::Dimension::length, other.restrictor.si(), {}, {}, {}})),
        {other.orifice.from, other.laminar.from});
}

QVariantList PadLines::derivation(int line, const format::Formatter& format) const {
    if (line < 0 || line >= static_cast<int>(from_.size())) return {};
    return derivation_items(from_[static_cast<std::size_t>(line)], format);
}

}  // namespace lapwing

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/pad_lines.h"

#include <algorithm>

#include "qml/viewmodels/bores.h"
#include "qml/viewmodels/derivation_item.h"
#include "qml/viewmodels/on_tester_text.h"

namespace lapwing {
namespace {

const QString compared = QStringLiteral("swap");  ///< the picture beside a figure that compares

const QString on_the_gauge = QStringLiteral("gauge");

/// No mark where there is no verdict: the dashed ring would say "not measured".
QString mark_of(findings::State state) {
    return state == findings::State::none ? QString() : state_key(state);
}

/// Alone beside the readout a rise has no words: its sign tells it from a leakage.
QString rise_text(const findings::Figure& rise, const format::Formatter& format) {
    QString text = format.text(rise);
    if (rise.si > 0.0) text.prepend(u'+');
    return text.replace(u'-', QChar(0x2212));
}

/// A limit that was not brought to this shop's air is the card's, here as anywhere.
QString text_of(const findings::Remark& fact, const format::Formatter& format) {
    const auto& [code, args] = fact.message;
    const bool limit = code == "fact.limit_lowest" || code == "fact.limit_range";
    const bool scaled = std::ranges::none_of(fact.from, [](const findings::Derivation& from) {
        return std::ranges::any_of(from.notes,
                                   [](const auto& note) { return note.code == "note.altitude_unknown"; });
    });
    if (!limit || scaled) return format.text(fact.message);
    return args.size() < 2
               ? PadLines::tr("Factory limit: %1.").arg(format.text(args[0]))
               : PadLines::tr("Factory range: %1 to %2.").arg(format.text(args[0]), format.text(args[1]));
}

}  // namespace

PadLines::PadLines(const findings::PadJudgement& judged, const format::Formatter& format, bool verdicts) {
    const auto verdict = verdicts ? judged.state : findings::State::none;
    for (const auto& question : judged.questions)
        add({}, QStringLiteral("question"), {}, format.text(question.message), question.from);
    if (judged.leakage)
        add(mark_of(verdict), on_the_gauge, format.text(judged.leakage->figure), tr("leakage on this tester"),
            {judged.leakage->from});
    if (judged.converted) add_converted(*judged.converted, format);
    if (judged.leak_hole)
        add({}, on_the_gauge, format.text(judged.leak_hole->figure), tr("hole would leak as much"),
            {judged.leak_hole->from});
    // In a wet test the verdict is the rise's, not the reading's.
    const auto reading = [&](findings::State state) {
        if (judged.value && !judged.leakage)
            add(mark_of(state), on_the_gauge, format.text(judged.value->figure),
                state == findings::State::none ? tr("give or take the gauge") : format.name(state),
                {judged.value->from});
    };
    if (judged.rise)
        add(mark_of(verdict), compared, rise_text(judged.rise->figure, format), tr("over the dry reading"),
            {judged.rise->from});
    else
        reading(verdict);
    for (const auto& fact : judged.facts) {
        // What the first puff tells is a rule of thumb; the others are figures.
        if (!verdicts && fact.message.code.starts_with("fact.first_")) continue;
        add({}, on_the_gauge, {}, text_of(fact, format), fact.from);
    }
    if (judged.rise) reading(findings::State::none);
}

void PadLines::add(const QString& mark, const QString& symbol, const QString& figure, const QString& text,
                   std::vector<findings::Derivation> from) {
    shown_ << QVariantMap{{"mark", mark}, {"symbol", symbol}, {"figure", figure}, {"text", text}};
    from_.push_back(std::move(from));
}

void PadLines::prepend(const QString& symbol, const QString& figure, const QString& text,
                       const QString& asks) {
    shown_.prepend(QVariantMap{
        {"mark", QString()}, {"symbol", symbol}, {"figure", figure}, {"text", text}, {"asks", asks}});
    from_.emplace(from_.begin());
}

void PadLines::ask(const QString& question, const QString& asks) {
    prepend(QStringLiteral("question"), {}, question, asks);
}

void PadLines::tell(const QString& figure, const QString& text) {
    prepend(on_the_gauge, figure, text);
}

void PadLines::add_converted(const findings::OnTester& other, const format::Formatter& format) {
    add({}, compared, share_on(other, format), name_of(other, format),
        {other.orifice.from, other.laminar.from});
}

QVariantList PadLines::derivation(int line, const format::Formatter& format) const {
    if (line < 0 || line >= static_cast<int>(from_.size())) return {};
    return derivation_items(from_[static_cast<std::size_t>(line)], format);
}

}  // namespace lapwing

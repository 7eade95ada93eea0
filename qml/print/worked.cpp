// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <set>

#include "qml/print/blocks.h"
#include "qml/print/styles.h"

namespace lapwing::print {
namespace {

/// Numbers that were made from the same figures share one list of them.
bool alike(const report::Worked& a, const report::Worked& b) {
    return a.cylinder == b.cylinder && a.derivation.inputs == b.derivation.inputs &&
           a.derivation.doubts == b.derivation.doubts && a.derivation.parts == b.derivation.parts &&
           a.derivation.source == b.derivation.source && a.derivation.notes == b.derivation.notes;
}

/// "set pressure p₁ = 5.50 bar ± 0.19"; once the figure was named, "p₁ = 5.50 bar ± 0.19". What stood in a
/// long list already is not written again in another one: only what is new there.
QString inputs_text(const Wording& wording, const findings::Derivation& derivation,
                    std::set<QString>& named) {
    const auto& format = wording.formatter();
    constexpr std::size_t many = 6;
    QStringList inputs;
    for (const findings::Input& input : derivation.inputs) {
        const QString name = format.text(input.name);
        const QString value = format.text(input.value);
        QString figure = input.symbol.empty()
                             ? value
                             : QString::fromStdString(input.symbol) + QStringLiteral(" = ") + value;
        figure.replace(u' ', QChar::Nbsp);
        const bool first = named.insert(name + figure).second;
        if (first || input.symbol.empty()) {
            if (first || derivation.inputs.size() <= many) inputs << name + u' ' + figure;
        } else if (derivation.inputs.size() <= many) {
            inputs << figure;
        }
    }
    return inputs.join(QStringLiteral("; "));
}

}  // namespace

void put(Flow& flow, const Wording& wording, const std::vector<const report::Worked*>& worked) {
    const auto& format = wording.formatter();
    const Style text = styles::scaled(styles::small, flow.type());
    std::set<QString> named, said;
    for (std::size_t first = 0; first < worked.size();) {
        std::size_t next = first;
        for (; next < worked.size() && alike(*worked[first], *worked[next]); ++next) {
            const findings::Derivation& from = worked[next]->derivation;
            // Its name, and its formula in words where there are any.
            QString title = format.text(from.title);
            QStringList how;
            if (const QString words = format.inWords(from); !words.isEmpty()) how << words;
            if (worked[next]->cylinder)
                title += QStringLiteral(" (%1)").arg(cylinder_title(wording, *worked[next]->cylinder));
            if (!from.symbols.empty()) how << QString::fromStdString(from.symbols);
            flow.put_with_next({{{0.0, typeset(title, how.join(u' '), text, flow.width())}}, 0.0, mm(0.3)});
        }
        const findings::Derivation& from = worked[first]->derivation;
        // What was said once holds for what follows too.
        QStringList notes;
        if (const QString source = format.text(from.source); said.insert(source).second) notes << source;
        for (const findings::Message& note : from.notes)
            if (const QString said_now = format.text(note); said.insert(said_now).second) notes << said_now;
        notes.removeAll(QString());
        QStringList numbers{inputs_text(wording, from, named)};
        // Said once for figures that are doubtful alike; what brings little is left to the app.
        constexpr double worth_ink = 0.05;
        if (const QString doubts = format.doubts(from, worth_ink); said.insert(doubts).second)
            numbers << doubts;
        numbers.removeAll(QString());
        for (const QString& line : {numbers.join(QStringLiteral("; ")), notes.join(u' ')})
            if (!line.isEmpty())
                flow.put_with_next({{{0.0, typeset(line, text, flow.width())}}, 0.0, mm(0.3)});
        flow.put({{{0.0, {gap(mm(1.4))}}}});
        first = next;
    }
}

}  // namespace lapwing::print

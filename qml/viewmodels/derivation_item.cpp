// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/derivation_item.h"

namespace lapwing {

QVariantMap derivation_item(const findings::Derivation& derivation, const format::Formatter& format) {
    QVariantList inputs;
    for (const auto& input : derivation.inputs) {
        QString name = format.text(input.name);
        if (!input.symbol.empty()) name += QStringLiteral(" ") + QString::fromStdString(input.symbol);
        inputs << QVariantMap{{"name", name}, {"value", format.text(input.value)}};
    }
    QVariantList doubts;
    for (const auto& doubt : derivation.doubts)
        doubts << QVariantMap{{"name", format.text(doubt.of)}, {"value", format.doubtShare(doubt)}};
    for (const auto& part : derivation.parts)
        doubts << QVariantMap{{"name", format.text(part.of)}, {"value", format.valueText(part.width)}};
    QStringList source{format.text(derivation.source)};
    for (const auto& note : derivation.notes)
        source << format.text(note);
    return {{"title", format.text(derivation.title)},
            {"words", format.inWords(derivation)},
            {"formula", QString::fromStdString(derivation.symbols)},
            {"inputs", inputs},
            {"doubts", doubts},
            {"doubtsTitle", format.doubtsTitle(derivation)},
            {"source", source.join(QLatin1Char('\n'))}};
}

QVariantList derivation_items(const std::vector<findings::Derivation>& derivations,
                              const format::Formatter& format) {
    QVariantList list;
    for (const auto& derivation : derivations)
        list << derivation_item(derivation, format);
    return list;
}

}  // namespace lapwing

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
    QStringList source{format.text(derivation.source)};
    for (const auto& note : derivation.notes)
        source << format.text(note);
    return {{"title", format.text(derivation.title)},
            {"formula", QString::fromStdString(derivation.symbols)},
            {"inputs", inputs},
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

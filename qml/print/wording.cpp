// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/print/wording.h"

namespace lapwing::print {
namespace {

template <class... Case>
struct Overloaded : Case... {
    using Case::operator()...;
};
template <class... Case>
Overloaded(Case...) -> Overloaded<Case...>;

}  // namespace

QString Wording::text(const report::Range& range) const {
    if (formatter_.valueText(range.low) == formatter_.valueText(range.high))
        return formatter_.valueText(range.low);
    const QString unit = formatter_.unitOf(range.low.dimension);
    const QString low = formatter_.valueText(range.low);
    // "9.0–11.5 bar"; both units where the two ends are shown in different ones
    if (!unit.isEmpty() && low.endsWith(unit) && formatter_.valueText(range.high).endsWith(unit))
        return formatter_.digits(range.low) + QChar(0x2013) + formatter_.valueText(range.high);
    return low + QStringLiteral(" – ") + formatter_.valueText(range.high);
}

QString Wording::text(const report::Text& text) const {
    return std::visit(
        Overloaded{[](report::Label label) { return text_of(label); },
                   [this](const findings::Word& word) { return formatter_.text(word); },
                   [this](const findings::Message& message) { return formatter_.text(message); },
                   [this](const findings::Figure& figure) { return formatter_.text(figure); },
                   [this](const report::Range& range) { return this->text(range); },
                   [this](const findings::CylinderList& list) { return formatter_.list(list); },
                   [this](int number) { return formatter_.locale().toString(number); },
                   [this](Timestamp at) { return formatter_.shortDate(at); },
                   [this](const TypedUsage& usage) { return formatter_.typed(usage); },
                   [](const report::OwnWords& own) { return QString::fromStdString(own.text).trimmed(); },
                   [this](const report::ReferenceText& text) { return formatter_.reference(text.english); }},
        text);
}

QString Wording::text(const report::Line& line) const {
    QString out;
    for (std::size_t i = 0; i < line.size(); ++i) {
        if (i > 0)
            out += i == 1 && std::holds_alternative<report::Label>(line.front()) ? QStringLiteral(": ")
                                                                                 : QStringLiteral(", ");
        out += text(line[i]);
    }
    return out;
}

}  // namespace lapwing::print

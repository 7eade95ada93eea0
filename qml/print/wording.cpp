// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/print/wording.h"

#include <QRegularExpression>

#include "qml/format/bare_text.h"
#include "qml/format/difference_text.h"

namespace lapwing::print {
namespace {

template <class... Case>
struct Overloaded : Case... {
    using Case::operator()...;
};
template <class... Case>
Overloaded(Case...) -> Overloaded<Case...>;

/// Kept on one line: no break between a number and its unit.
QString together(QString text) {
    return text.replace(u' ', QChar::Nbsp);
}

/// The figures of a sentence, each on one line with its unit and its doubt: "27 % ± 12".
QString figures_together(QString text) {
    static const QRegularExpression inside(
        QStringLiteral(
            "(?<=\\d) (?=[%±]|bar\\b|psi\\b|kPa\\b|hPa\\b|kgf/|inHg\\b|mm\\b|cm[³3]|min\\b|rpm\\b|V\\b)|"
            "(?<=[%±]) (?=[±\\d])|(?<=bar|psi|kPa|hPa|cm2|nHg) (?=±)"),
        QRegularExpression::UseUnicodePropertiesOption);
    return text.replace(inside, QString(QChar::Nbsp));
}

QString figure_text(const format::Formatter& formatter, const findings::Figure& figure) {
    const QString doubt = formatter.uncertainty(figure);
    const QString value = together(formatter.valueText(figure));
    return doubt.isEmpty() ? value : value + QChar(QChar::Nbsp) + together(doubt);
}

}  // namespace

QString Wording::text(const report::Range& range) const {
    if (formatter_.valueText(range.low) == formatter_.valueText(range.high))
        return formatter_.valueText(range.low);
    const QString unit = formatter_.unitOf(range.low.dimension);
    const QString low = formatter_.valueText(range.low);
    // "9.0–11.5 bar"; both units where the two ends are shown in different ones
    if (!unit.isEmpty() && low.endsWith(unit) && formatter_.valueText(range.high).endsWith(unit))
        return together(formatter_.digits(range.low) + QChar(0x2013) + formatter_.valueText(range.high));
    return together(low) + QStringLiteral(" – ") + together(formatter_.valueText(range.high));
}

QString Wording::text(const report::Text& text) const {
    return std::visit(
        Overloaded{
            [](report::Label label) { return figures_together(text_of(label)); },
            [this](const findings::Word& word) { return formatter_.text(word); },
            [this](const findings::Message& message) { return figures_together(formatter_.text(message)); },
            [this](const report::Bare& bare) {
                return figures_together(format::bare_text(bare.message, formatter_));
            },
            [this](const findings::Figure& figure) { return figure_text(formatter_, figure); },
            [this](const report::Difference& difference) {
                return together(format::difference_text(difference.figure, formatter_));
            },
            [this](const report::Range& range) { return this->text(range); },
            [this](const findings::CylinderList& list) { return formatter_.list(list); },
            [this](int number) { return formatter_.locale().toString(number); },
            [this](Timestamp at) { return together(formatter_.shortDate(at)); },
            [this](const TypedTime& time) { return together(formatter_.typed(time)); },
            [this](const TypedUsage& usage) { return together(formatter_.typed(usage)); },
            [](const report::OwnWords& own) {
                return figures_together(QString::fromStdString(own.text).trimmed());
            },
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

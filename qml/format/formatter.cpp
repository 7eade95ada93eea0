// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/format/formatter.h"

#include <QCoreApplication>
#include <QDateTime>
#include <algorithm>
#include <cmath>

#include "qml/format/tables.h"

namespace lapwing::format {
namespace {

QString text_of(std::string_view text) {
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

QDateTime where_noted(Timestamp at) {
    return QDateTime::fromMSecsSinceEpoch(at.unix_ms, Qt::OffsetFromUTC, at.offset_min * 60);
}

/// Day, month and year in the locale's own order, the month as a word: 03/04 is March to some and April to
/// others.
QString date_pattern(const QLocale& locale) {
    const QString own = locale.dateFormat(QLocale::ShortFormat);
    const qsizetype day = own.indexOf(u'd');
    const qsizetype month = own.indexOf(u'M');
    if (own.indexOf(u'y') < day) return QStringLiteral("yyyy MMM d");
    if (month < day) return QStringLiteral("MMM d, yyyy");
    // Where a day in words is an ordinal, it has its point: "14. März".
    const bool ordinal = locale.dateFormat(QLocale::LongFormat).contains(QStringLiteral("d. M"));
    return ordinal ? QStringLiteral("d. MMM yyyy") : QStringLiteral("d MMM yyyy");
}

}  // namespace

QString filled(const QString& pattern, const QStringList& args) {
    QString out;
    for (qsizetype i = 0; i < pattern.size(); ++i) {
        const bool place = pattern[i] == u'%' && i + 1 < pattern.size() && pattern[i + 1].isDigit();
        const int number = place ? pattern[i + 1].digitValue() : 0;
        if (place && number >= 1 && number <= args.size()) {
            out += args[number - 1];
            ++i;
        } else {
            out += pattern[i];
        }
    }
    return out.trimmed();
}

QString translated(const char* english, std::string_view code) {
    return QCoreApplication::translate("Findings", english, std::string(code).c_str());
}

Formatter::Formatter(Choice choice, const QLocale& locale) : choice_(choice), locale_(locale) {
    locale_.setNumberOptions(QLocale::OmitGroupSeparator | QLocale::RejectGroupSeparator);
}

bool Formatter::knowsMessage(const std::string& code) {
    return sentenceOf(code) != nullptr;
}

bool Formatter::knowsWord(const std::string& code) {
    return wordOf(code) != nullptr || titleOf(code) != nullptr;
}

QString Formatter::text(const findings::Word& word) const {
    if (const char* english = wordOf(word.code)) return translated(english, word.code);
    if (const char* english = titleOf(word.code)) return translated(english, word.code);
    // A word from a newer core: better its bare name than nothing.
    return text_of(word.code).section(u':', 1);
}

QString Formatter::list(const std::vector<int>& cylinders) const {
    QString out;
    for (std::size_t i = 0; i < cylinders.size(); ++i) {
        if (i > 0)
            out += i + 1 == cylinders.size() ? QCoreApplication::translate("Findings", " and ")
                                             : QStringLiteral(", ");
        out += QString::number(cylinders[i]);
    }
    return out;
}

QString Formatter::text(const findings::Arg& arg) const {
    struct Texts {
        const Formatter& format;
        QString operator()(const findings::Figure& figure) const { return format.text(figure); }
        QString operator()(int number) const { return QString::number(number); }
        QString operator()(const findings::Word& word) const { return format.text(word); }
        QString operator()(const findings::CylinderList& list) const {
            const char* noun = list.size() == 1 ? QT_TRANSLATE_NOOP("Findings", "cylinder %1")
                                                : QT_TRANSLATE_NOOP("Findings", "cylinders %1");
            return filled(translated(noun), {format.list(list)});
        }
        QString operator()(const std::string& text) const { return format.reference(text); }
    };
    return std::visit(Texts{*this}, arg);
}

bool Formatter::opensWithNoDifference(const findings::Message& message) const {
    if (message.args.empty()) return false;
    const auto* figure = std::get_if<findings::Figure>(&message.args.front());
    return figure && figure->dimension == findings::Dimension::pressure_difference &&
           std::ranges::none_of(digits(*figure), [](QChar digit) { return digit.digitValue() > 0; });
}

QString Formatter::text(const findings::Message& message) const {
    std::string code = opensWithNoDifference(message) ? message.code + "/alike" : message.code;
    if (!sentenceOf(code)) code = message.code;
    const char* english = sentenceOf(code);
    if (!english) return {};
    QStringList args;
    for (const findings::Arg& arg : message.args) {
        const auto* words = std::get_if<std::string>(&arg);
        args += words && tellsAnError(code) ? error(*words) : text(arg);
    }
    QString said = filled(translated(english, code), args);
    // "cylinders 2 and 3" at the beginning of a sentence
    if (!message.args.empty() && std::holds_alternative<findings::CylinderList>(message.args.front()) &&
        !said.isEmpty())
        said.front() = said.front().toUpper();
    return said;
}

bool Formatter::tellsAnError(std::string_view code) {
    return code == "model.refused" || code == "odds.no_cranking_model";
}

QStringList Formatter::lines(const findings::Derivation& derivation) const {
    QStringList out;
    out += text(derivation.title);
    if (const QString words = inWords(derivation); !words.isEmpty()) out += words;
    if (!derivation.symbols.empty()) out += text_of(derivation.symbols);
    for (const findings::Input& input : derivation.inputs) {
        const QString symbol =
            input.symbol.empty() ? QString() : text_of(input.symbol) + QStringLiteral(" = ");
        out += text(input.name) + QStringLiteral(": ") + symbol + text(input.value);
    }
    if (const QString line = doubts(derivation); !line.isEmpty()) out += line;
    if (const QString source = text(derivation.source); !source.isEmpty()) out += source;
    for (const findings::Message& note : derivation.notes)
        out += text(note);
    return out;
}

QString Formatter::inWords(const findings::Derivation& derivation) const {
    const char* words = inWordsOf(derivation.title.code);
    return words ? translated(words, derivation.title.code) : QString();
}

QString Formatter::doubtShare(const findings::DoubtShare& of) const {
    return valueText({findings::Dimension::share, std::round(of.share * 100.0) / 100.0, {}, {}, {}});
}

QString Formatter::doubt(const findings::DoubtShare& of) const {
    return text(of.of) + u' ' + doubtShare(of);
}

QString Formatter::doubtsTitle(const findings::Derivation& derivation) const {
    return text(findings::Word{derivation.parts.empty() ? "doubts" : "parts"});
}

QString Formatter::doubts(const findings::Derivation& derivation, double least) const {
    QStringList parts;
    for (const findings::DoubtShare& one : derivation.doubts)
        if (one.share >= least) parts += doubt(one);
    for (const findings::RangePart& one : derivation.parts)
        parts += text(one.of) + u' ' + valueText(one.width);
    if (parts.isEmpty()) return {};
    return doubtsTitle(derivation) + QStringLiteral(": ") + parts.join(QStringLiteral(", "));
}

QString Formatter::text(const findings::Derivation& derivation) const {
    return lines(derivation).join(u'\n');
}

QString Formatter::typedText(const std::string& digits, std::string_view unit) const {
    QString out = text_of(digits);
    out.replace(u'.', locale_.decimalPoint());
    return unit.empty() ? out : out + u' ' + text_of(unit);
}

QString Formatter::headed(const QString& words) const {
    return locale_.toUpper(words.left(1)) + words.mid(1);
}

QString Formatter::shortDate(Timestamp at) const {
    return locale_.toString(where_noted(at).date(), date_pattern(locale_));
}

QString Formatter::shortDateTime(Timestamp at) const {
    const QDateTime noted = where_noted(at);
    return locale_.toString(noted.date(), date_pattern(locale_)) + u' ' +
           locale_.toString(noted.time(), QLocale::ShortFormat);
}

QString Formatter::reference(const std::string& english) const {
    return english.empty() ? QString() : QCoreApplication::translate("Reference", english.c_str());
}

}  // namespace lapwing::format

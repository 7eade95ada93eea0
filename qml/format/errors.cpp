// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <QCoreApplication>
#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QRegularExpression>
#include <algorithm>
#include <vector>

#include "qml/format/formatter.h"
#include "qml/format/tables.h"

/// Errors in another language. The core makes their English sentences; here a sentence is taken apart by the
/// pattern that it was made from, and said again by the pattern's translation. What fits no pattern stays
/// English.
namespace lapwing::format {
namespace {

struct Pattern {
    QString code;  ///< may be empty: of several codes
    QString english;
    QRegularExpression match;
};

QRegularExpression match_of(const QString& english) {
    static const QRegularExpression place(QStringLiteral("%\\d"));
    QString out;
    qsizetype from = 0;
    for (auto at = place.globalMatch(english); at.hasNext();) {
        const auto found = at.next();
        out += QRegularExpression::escape(english.mid(from, found.capturedStart() - from)) +
               QStringLiteral("(.*?)");
        from = found.capturedEnd();
    }
    return QRegularExpression(
        QRegularExpression::anchoredPattern(out + QRegularExpression::escape(english.mid(from))),
        QRegularExpression::DotMatchesEverythingOption);
}

/// What assets/i18n/gather found in the sources; the most particular one first.
const std::vector<Pattern>& patterns() {
    static const auto all = [] {
        std::vector<Pattern> out;
        QFile file(QStringLiteral(":/i18n/errors.json"));
        if (!file.open(QIODevice::ReadOnly)) return out;
        const auto codes = QJsonDocument::fromJson(file.readAll()).object();
        for (auto code = codes.begin(); code != codes.end(); ++code)
            for (const auto& english : code.value().toArray())
                out.push_back({code.key(), english.toString(), match_of(english.toString())});
        std::ranges::stable_sort(out, std::greater{}, [](const Pattern& one) { return one.english.size(); });
        return out;
    }();
    return all;
}

class Retold {
public:
    explicit Retold(const Formatter& format) : locale_(format.locale()), choice_(format.choice()) {}

    QString operator()(const QString& code, const QString& english) const {
        // Some errors carry another one's sentence under a code of their own.
        for (const bool of_the_code : {true, false})
            for (const Pattern& pattern : patterns()) {
                const bool of_it = pattern.code == code || pattern.code.isEmpty();
                if (of_it != of_the_code) continue;
                if (const auto found = pattern.match.match(english); found.hasMatch())
                    return said(pattern, found);
            }
        return english;
    }

private:
    QString said(const Pattern& pattern, const QRegularExpressionMatch& found) const {
        QStringList args;
        for (int i = 1; i <= found.lastCapturedIndex(); ++i)
            args += part(pattern.code, found.captured(i));
        QString sentence = QCoreApplication::translate("Errors", pattern.english.toUtf8().constData());
        in_chosen_unit(sentence, args);
        return filled(sentence, args);
    }

    /// The core counts in kPa; whoever chose psi typed psi.
    void in_chosen_unit(QString& sentence, QStringList& args) const {
        if (choice_.pressure == units::kpa) return;
        for (qsizetype i = 0; i < args.size(); ++i) {
            bool is_number = false;
            const double kpa = locale_.toDouble(args[i], &is_number);
            const QString place = QStringLiteral("%%1 kPa").arg(i + 1);
            if (!is_number || !sentence.contains(place)) continue;
            constexpr int digits = 4;
            args[i] = locale_.toString(choice_.pressure.number(units::kpa.quantity(kpa)), 'g', digits) +
                      u' ' + QString::fromUtf8(choice_.pressure.display().data());
            sentence.replace(place, place.first(2));
        }
    }

    QString part(const QString& code, const QString& arg) const {
        // The core's own words have a translation; file names and what people typed have none.
        QString out = QCoreApplication::translate("Errors", arg.toUtf8().constData());
        if (out != arg) return out;
        // The error that caused this one.
        if (arg.size() > 12 && arg.contains(u' ') && arg.endsWith(u'.')) return (*this)(QString(), arg);
        static const QRegularExpression number(QStringLiteral("^-?\\d+\\.\\d+(e[+-]?\\d+)?( \\S+)?$"));
        // Versions of files have a point everywhere.
        static const QRegularExpression versioned(QStringLiteral("^(record|bag|backup|store)\\."));
        if (number.match(out).hasMatch() && !versioned.match(code).hasMatch())
            out.replace(u'.', locale_.decimalPoint());
        return out;
    }

    const QLocale& locale_;
    const Choice& choice_;
};

}  // namespace

namespace {

/// English with a decimal point has nothing to be said otherwise; hundreds of patterns are tried for nothing.
/// Whoever translates has a translation of the text that every catalogue has, even one into English itself.
bool stands_as_it_is(const Formatter& format, const std::string& sentence) {
    const QLocale& locale = format.locale();
    if (format.choice().pressure != units::kpa && sentence.find(" kPa") != std::string::npos) return false;
    const char* probe = "Still to be typed: %1.";
    const bool english = locale.language() == QLocale::English || locale.language() == QLocale::C;
    return english && locale.decimalPoint() == QLatin1String(".") &&
           QCoreApplication::translate("Errors", probe) == QLatin1String(probe);
}

}  // namespace

QString Formatter::text(const Error& error) const {
    if (stands_as_it_is(*this, error.english)) return QString::fromStdString(error.english);
    return Retold(*this)(QString::fromStdString(error.code), QString::fromStdString(error.english));
}

QString Formatter::error(const std::string& english) const {
    if (stands_as_it_is(*this, english)) return QString::fromStdString(english);
    return Retold(*this)(QString(), QString::fromStdString(english));
}

}  // namespace lapwing::format

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/app/walk/pseudo.h"

#include <QFile>
#include <QRegularExpression>
#include <QXmlStreamReader>

namespace lapwing::test {
namespace {

constexpr QChar opens(0x2039);
constexpr QChar closes(0x203a);

QString key_of(const QString& context, const QString& source, const QString& comment) {
    return context + QChar(1) + source + QChar(1) + comment;
}

/// A vowel twice, the first time with an accent: that is about two fifths more of an English text. A short
/// word gets as much from its marks.
QString stretched(const QString& plain) {
    constexpr qsizetype short_word = 6;
    const bool twice = plain.size() > short_word;
    static const QString vowels = QStringLiteral("aeiouAEIOU");
    static const QString accents = QStringLiteral("áéíóúÁÉÍÓÚ");
    QString out;
    for (const QChar c : plain) {
        const auto at = vowels.indexOf(c);
        if (at >= 0) out += accents[at];
        if (at < 0 || twice) out += at >= 0 ? c.toLower() : c;
    }
    return out;
}

}  // namespace

Pseudo::Pseudo(const QString& ts_file) {
    QFile file(ts_file);
    if (!file.open(QIODevice::ReadOnly)) return;
    QXmlStreamReader xml(&file);
    QString context, source, comment;
    while (!xml.atEnd()) {
        if (xml.readNext() == QXmlStreamReader::EndElement && xml.name() == QLatin1String("message"))
            known_.insert(key_of(context, source, comment), true);
        if (!xml.isStartElement()) continue;
        if (xml.name() == QLatin1String("name")) context = xml.readElementText();
        if (xml.name() == QLatin1String("message")) comment.clear();
        if (xml.name() == QLatin1String("source")) source = xml.readElementText();
        if (xml.name() == QLatin1String("comment")) comment = xml.readElementText();
    }
}

QString Pseudo::translate(const char* context, const char* source, const char* comment, int) const {
    const QString in = QString::fromUtf8(context), text = QString::fromUtf8(source);
    // As QTranslator does it: without the comment where there is none with it.
    if (known_.contains(key_of(in, text, QString::fromUtf8(comment))) ||
        known_.contains(key_of(in, text, QString())))
        return said(text);
    return {};
}

QString Pseudo::said(const QString& source) {
    static const QRegularExpression kept(QStringLiteral("%L?\\d+|%n|<[^>]*>|&\\w+;"));
    static const QRegularExpression point(QStringLiteral("(?<=\\d)\\.(?=\\d)"));
    QString out;
    qsizetype from = 0;
    for (auto at = kept.globalMatch(source); at.hasNext();) {
        const auto match = at.next();
        out += stretched(source.mid(from, match.capturedStart() - from)) + match.captured();
        from = match.capturedEnd();
    }
    out += stretched(source.mid(from));
    return opens + out.replace(point, QStringLiteral(",")) + closes;
}

QString unmarked(const QString& shown) {
    QString out;
    int depth = 0;
    for (const QChar c : shown) {
        if (c == opens) ++depth;
        if (depth == 0) out += c;
        if (c == closes) {
            depth = std::max(0, depth - 1);
            out += u' ';
        }
    }
    return out;
}

}  // namespace lapwing::test

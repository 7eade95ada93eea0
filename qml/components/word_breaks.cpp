// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/components/word_breaks.h"

#include <QFile>
#include <QFont>
#include <QFontMetricsF>
#include <QTextStream>
#include <algorithm>
#include <array>

namespace lapwing::components {
namespace {

/// A shorter one fits even on the smallest screen with the largest text.
constexpr qsizetype shortest = 13;
constexpr QChar soft_hyphen = QChar::SoftHyphen;

/// Most texts have no such word, and this is asked with each of their changes.
bool has_long_word(const QString& text) {
    qsizetype run = 0;
    for (const QChar c : text) {
        run = c.isLetter() || c == soft_hyphen ? run + 1 : 0;
        if (run >= shortest) return true;
    }
    return false;
}

/// What stands behind a number and must not begin a line.
constexpr std::array units{u"%",  u"bar", u"psi", u"kPa", u"hPa", u"kgf", u"inHg", u"mm",    u"cm",
                           u"km", u"m",   u"h",   u"min", u"V",   u"rpm", u"°C",   u"L/min", u"N"};

bool begins_with_unit(QStringView words) {
    return std::ranges::any_of(units, [&](QStringView unit) {
        if (!words.startsWith(unit)) return false;
        return words.size() == unit.size() || !words[unit.size()].isLetter();
    });
}

}  // namespace

QString WordBreaks::figures_together(const QString& words, const QString& space) {
    QString out;
    for (qsizetype at = 0; at < words.size(); ++at) {
        const QChar before = at > 0 ? words[at - 1] : QChar();
        const QStringView after = QStringView(words).mid(at + 1);
        const bool holds =
            words[at] == u' ' && !after.isEmpty() &&
            (before == u'±' ? after.front().isDigit() : before.isDigit() && begins_with_unit(after));
        if (holds)
            out += space;
        else
            out += words[at];
    }
    return out;
}

WordBreaks::WordBreaks(QObject* parent) : QObject(parent) {
    QFile file(QStringLiteral(":/i18n/word_breaks.txt"));
    if (!file.open(QIODevice::ReadOnly)) qFatal("The program lacks its word_breaks.txt.");
    QTextStream lines(&file);
    for (QString line = lines.readLine(); !line.isNull(); line = lines.readLine()) {
        QString word;
        QList<qsizetype> at;
        for (const QChar c : line)
            if (c == u'|')
                at << word.size();
            else
                word += c;
        if (!at.isEmpty()) breaks_.insert(word, at);
    }
}

QString WordBreaks::broken(const QString& words, const std::function<bool(const QString&)>& wide) const {
    QString out;
    out.reserve(words.size() + 8);
    qsizetype at = 0;
    while (at < words.size()) {
        qsizetype end = at;
        while (end < words.size() && words[end].isLetter())
            ++end;
        const QString word = words.mid(at, end - at);
        const auto known = word.size() >= shortest ? breaks_.constFind(word.toLower()) : breaks_.constEnd();
        if (known != breaks_.constEnd() && wide(word)) {
            qsizetype from = 0;
            for (const qsizetype to : *known) {
                out += QStringView(word).mid(from, to - from);
                out += soft_hyphen;
                from = to;
            }
            out += QStringView(word).mid(from);
        } else {
            out += word;
        }
        if (end < words.size()) out += words[end++];
        at = end;
    }
    return out;
}

void WordBreaks::fit(QQuickItem* text) const {
    const QString now = text->property("text").toString();
    if (!(text->width() > 0.0)) return;
    constexpr int no_wrap = 0, fixed_size = 0;
    const bool wraps = text->property("wrapMode").toInt() != no_wrap;
    // Styled text takes every space that it is given for one and the same.
    constexpr int styled = 4;
    const QString space =
        text->property("textFormat").toInt() == styled ? QStringLiteral("&nbsp;") : QString(QChar::Nbsp);
    QString bare = wraps ? figures_together(now, space) : now;
    bare.remove(soft_hyphen);
    QString fitted = bare;
    // In one line, or where the letters get smaller instead, nothing is broken.
    if (has_long_word(now) && wraps && text->property("fontSizeMode").toInt() == fixed_size) {
        const QFontMetricsF metrics(text->property("font").value<QFont>());
        fitted = broken(bare,
                        [&](const QString& word) { return metrics.horizontalAdvance(word) > text->width(); });
    }
    // Not by QML's own assignment, which would end the binding.
    if (fitted != now) text->setProperty("text", fitted);
}

}  // namespace lapwing::components

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/engine_search.h"

#include <QStringList>
#include <algorithm>
#include <numeric>

namespace lapwing {
namespace {

constexpr QChar tag_sign = u'#';

/// Letters that Unicode does not take apart into a plain one and a mark.
QString without_own_letters(QString text) {
    struct Letter {
        char16_t letter;
        const char* plain;
    };
    static constexpr Letter letters[] = {{u'ß', "ss"},     {u'æ', "ae"},      {u'œ', "oe"},
                                         {u'ø', "o"},      {u'\u0142', "l"},  {u'\u0111', "d"},
                                         {u'\u00f0', "d"}, {u'\u00fe', "th"}, {u'\u0131', "i"}};
    for (const auto& [letter, plain] : letters)
        text.replace(QChar(letter), QLatin1String(plain));
    return text;
}

QString bare(const QString& text) {
    QString out;
    out.reserve(text.size());
    for (const QChar letter : text.normalized(QString::NormalizationForm_KD))
        if (!letter.isMark()) out += letter;
    // Once more: what was taken apart may hold capitals ("㎪").
    return without_own_letters(out.toCaseFolded());
}

/// As German and its neighbours to the north write these letters on keyboards that lack them.
QString spelled_out(const QString& text) {
    QString out = text.normalized(QString::NormalizationForm_KC);
    out.replace(u'ä', QLatin1String("ae"));
    out.replace(u'ö', QLatin1String("oe"));
    out.replace(u'ü', QLatin1String("ue"));
    out.replace(u'ø', QLatin1String("oe"));
    out.replace(u'å', QLatin1String("aa"));
    return out;
}

QString from_utf8(const std::string& text) {
    return QString::fromStdString(text);
}

QString without_sign(QString tag) {
    while (tag.startsWith(tag_sign))
        tag.remove(0, 1);
    return tag.trimmed();
}

}  // namespace

SearchText::SearchText(const QString& text) {
    const QString folded = text.toCaseFolded();
    plain_ = bare(folded);
    spelled_ = bare(spelled_out(folded));
}

void EngineSearch::read(const std::vector<workflow::EngineSummary>& engines) const {
    if (read_.size() == engines.size()) return;
    read_.clear();
    read_.reserve(engines.size());
    for (const auto& engine : engines) {
        QString all = from_utf8(engine.name) + u'\n' + from_utf8(engine.description);
        std::vector<SearchText> tags;
        for (const auto& tag : engine.tags) {
            all += u'\n' + from_utf8(tag);
            tags.emplace_back(without_sign(from_utf8(tag)));
        }
        read_.push_back({SearchText(all), std::move(tags)});
    }
}

std::vector<std::size_t> EngineSearch::find(const std::vector<workflow::EngineSummary>& engines,
                                            const QString& text, std::size_t most) const {
    std::vector<std::size_t> found;
    const QString asked = text.simplified();
    if (asked.isEmpty()) {
        found.resize(std::min(most, engines.size()));
        std::iota(found.begin(), found.end(), std::size_t{0});
        return found;
    }
    read(engines);
    const auto take = [&](const auto& fits) {
        for (std::size_t i = 0; i < read_.size() && found.size() < most; ++i)
            if (fits(read_[i])) found.push_back(i);
    };
    if (asked.startsWith(tag_sign)) {
        const SearchText wanted(without_sign(asked));
        take([&](const Read& engine) {
            return std::ranges::any_of(engine.tags, [&](const auto& tag) { return tag.is(wanted); });
        });
        // It may not be typed to its end.
        if (found.empty())
            take([&](const Read& engine) {
                return std::ranges::any_of(engine.tags, [&](const auto& tag) { return tag.begins(wanted); });
            });
        return found;
    }
    std::vector<SearchText> words;
    for (const QString& word : asked.split(u' '))
        words.emplace_back(word);
    take([&](const Read& engine) {
        return std::ranges::all_of(words, [&](const auto& word) { return engine.all.has(word); });
    });
    return found;
}

QString EngineSearch::for_tag(const QString& tag) {
    return tag_sign + without_sign(tag);
}

}  // namespace lapwing

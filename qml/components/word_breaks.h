// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QHash>
#include <QQuickItem>
#include <functional>

namespace lapwing::components {

/// Where the long words of the app's texts may be broken (assets/i18n/word_breaks.txt), and the hyphens that
/// show it. Only a word that would not fit into its line at all gets any: large text on a small screen, in a
/// language of long words.
class WordBreaks : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON

public:
    explicit WordBreaks(QObject* parent = nullptr);

    /// Puts hyphens that only show where a line ends into the words of a Text that are wider than it, and
    /// takes them out of those that are not. Keeps numbers on one line with their units. The text's own
    /// binding stays.
    Q_INVOKABLE void fit(QQuickItem* text) const;

    /// The same for words: `wide` says whether one does not fit.
    [[nodiscard]] QString broken(const QString& words, const std::function<bool(const QString&)>& wide) const;

    /// "38 % ± 13" with spaces at which no line ends between number and unit and behind ±; one may end before
    /// ±.
    /// @param space that holds them together
    [[nodiscard]] static QString figures_together(const QString& words, const QString& space);

private:
    /// By the word in small letters: the letters before each of which a hyphen may stand.
    QHash<QString, QList<qsizetype>> breaks_;
};

}  // namespace lapwing::components

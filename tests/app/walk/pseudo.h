// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QHash>
#include <QStringList>
#include <QTranslator>

namespace lapwing::test {

/// A language that nobody speaks: every text that has a place in the .ts files is said in marks, with accents
/// and about two fifths longer. What comes without marks got round the translators.
class Pseudo : public QTranslator {
public:
    /// Knows the texts of one .ts file, whatever their translations are.
    explicit Pseudo(const QString& ts_file);

    QString translate(const char* context, const char* source, const char* comment, int n) const override;
    [[nodiscard]] bool isEmpty() const override { return known_.isEmpty(); }
    [[nodiscard]] qsizetype size() const { return known_.size(); }

    /// "%1 of %2" as "‹%1 óóf %2›": places and tags stay, a point between digits becomes a comma.
    static QString said(const QString& source);

private:
    QHash<QString, bool> known_;  ///< context, source and comment
};

/// What of a shown text stands outside the marks.
QString unmarked(const QString& shown);

}  // namespace lapwing::test

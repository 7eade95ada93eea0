// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QLocale>
#include <QObject>
#include <QStringList>
#include <QTranslator>

namespace lapwing {

/// The language that the app speaks: its texts, its number and date formats, and which way its lines run.
class Language : public QObject {
public:
    explicit Language(QObject* parent = nullptr);
    /// Back to English and the system's formats.
    ~Language() override;

    /// `wanted` is "system" or a language that there are texts in.
    void choose(const QString& wanted);

    /// Which of our languages is spoken to someone whose system prefers these, first one first.
    static QString spoken(const QString& wanted, const QStringList& preferred);
    /// Number and date formats that go with it; the system's own wherever they fit.
    static QLocale formats(const QString& wanted, const QString& spoken, const QLocale& system);

private:
    QTranslator texts_;
    QTranslator of_qt_;  ///< Qt's own few words: buttons of a file dialog
};

}  // namespace lapwing

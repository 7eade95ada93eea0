// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/app/language.h"

#include <QGuiApplication>
#include <QLibraryInfo>

namespace lapwing {
namespace {

const QString english = QStringLiteral("en");
const QString as_system = QStringLiteral("system");

}  // namespace

Language::Language(QObject* parent) : QObject(parent) {}

Language::~Language() {
    QCoreApplication::removeTranslator(&texts_);
    QCoreApplication::removeTranslator(&of_qt_);
    QLocale::setDefault(QLocale::system());
}

void Language::choose(const QString& wanted) {
    const QLocale system = QLocale::system();
    const QString language = spoken(wanted, system.uiLanguages());
    QCoreApplication::removeTranslator(&texts_);
    QCoreApplication::removeTranslator(&of_qt_);
    // English has a file too, with nothing in it but what is said of one and of many.
    if (texts_.load(QStringLiteral(":/i18n/lapwing_%1.qm").arg(language)))
        QCoreApplication::installTranslator(&texts_);
    if (language != english && of_qt_.load(QStringLiteral("qtbase_%1").arg(language),
                                           QLibraryInfo::path(QLibraryInfo::TranslationsPath)))
        QCoreApplication::installTranslator(&of_qt_);
    const QLocale locale = formats(wanted, language, system);
    QLocale::setDefault(locale);
    QGuiApplication::setLayoutDirection(locale.textDirection());
}

QString Language::spoken(const QString& wanted, const QStringList& preferred) {
    const QStringList ours{english, QStringLiteral("de"), QStringLiteral("es")};
    if (ours.contains(wanted)) return wanted;
    for (const QString& name : preferred) {
        QString language = name.section(QLatin1Char('-'), 0, 0).section(QLatin1Char('_'), 0, 0);
        if (ours.contains(language)) return language;
    }
    return english;
}

QLocale Language::formats(const QString& wanted, const QString& spoken, const QLocale& system) {
    const QLocale::Language language = QLocale(spoken).language();
    // Someone who reads English because there is nothing better still writes numbers as at home.
    if (wanted == as_system || system.language() == language) return system;
    // German in Switzerland, English in Germany: as the country writes it, where that is known.
    const QLocale here(language, system.territory());
    return here.territory() == system.territory() ? here : QLocale(spoken);
}

}  // namespace lapwing

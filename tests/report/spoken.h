// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QCoreApplication>
#include <QTranslator>
#include <stdexcept>

namespace lapwing::print {

/// While one is there, the program speaks that language with the texts that it is shipped with.
class Spoken {
public:
    explicit Spoken(const QString& language) {
        if (!texts_.load(QStringLiteral(LAPWING_TEXTS "/lapwing_%1.qm").arg(language)))
            throw std::runtime_error("no texts in " + language.toStdString());
        QCoreApplication::installTranslator(&texts_);
    }
    ~Spoken() { QCoreApplication::removeTranslator(&texts_); }
    Spoken(const Spoken&) = delete;
    Spoken& operator=(const Spoken&) = delete;

private:
    QTranslator texts_;
};

}  // namespace lapwing::print

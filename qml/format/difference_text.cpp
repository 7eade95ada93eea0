// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/format/difference_text.h"

#include <QCoreApplication>

namespace lapwing::format {
namespace {

struct Texts {
    Q_DECLARE_TR_FUNCTIONS(DifferenceText)
};

}  // namespace

QString difference_text(const findings::Figure& figure, const Formatter& format) {
    const bool of_shares = figure.dimension == findings::Dimension::share;
    const QString value =
        of_shares ? Texts::tr("%1 points").arg(format.digits(figure)) : format.valueText(figure);
    const auto whole = [](QString text) { return text.replace(u' ', QChar::Nbsp); };
    QString text = whole(value);
    if (figure.si > 0.0) text.prepend(u'+');
    if (const QString doubt = format.uncertainty(figure); !doubt.isEmpty()) text += u' ' + whole(doubt);
    return text.replace(u'-', QChar(0x2212));
}

}  // namespace lapwing::format

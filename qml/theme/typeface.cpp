// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/theme/typeface.h"

#include <QFile>
#include <QFontDatabase>
#include <QtEndian>

namespace lapwing::theme {

namespace {

// Where a system has B612 Mono installed, that font also claims the family "B612", and Qt may then draw the
// whole app in it. So the app's copies are loaded under a family name of their own. It is as long as the old
// one, which keeps the file's tables where they are.
const QString shipped_family = "B612";
const QString own_family = "LwB6";

QByteArray big_endian(const QString& text) {
    QByteArray bytes;
    for (const QChar c : text)
        bytes.append(char(c.row())).append(char(c.cell()));
    return bytes;
}

// The OpenType table directory: 12 bytes of header, then 16 a table (tag, checksum, offset, length).
QByteArray renamed(QByteArray font) {
    const int tables = font.size() < 12 ? 0 : qFromBigEndian<quint16>(font.constData() + 4);
    for (int i = 0; i < tables && font.size() >= 28 + 16 * i; ++i) {
        const char* entry = font.constData() + 12 + 16 * i;
        if (qstrncmp(entry, "name", 4) != 0) continue;
        const qsizetype start = qFromBigEndian<quint32>(entry + 8);
        const qsizetype length = qFromBigEndian<quint32>(entry + 12);
        QByteArray names = font.mid(start, length);
        names.replace(big_endian(shipped_family), big_endian(own_family));
        return font.replace(start, length, names);
    }
    return font;
}

QString load(const QString& path) {
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly)) return {};
    const int id = QFontDatabase::addApplicationFontFromData(renamed(file.readAll()));
    return id < 0 ? QString() : QFontDatabase::applicationFontFamilies(id).value(0);
}

}  // namespace

QString typeface() {
    static const QString family = [] {
        const QString regular = load(":/fonts/B612-Regular.otf");
        load(":/fonts/B612-Bold.otf");
        return regular.isEmpty() ? shipped_family : regular;
    }();
    return family;
}

}  // namespace lapwing::theme

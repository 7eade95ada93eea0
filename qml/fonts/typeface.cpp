// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/fonts/typeface.h"

#include <QFile>
#include <QFontDatabase>
#include <QtEndian>
#include <algorithm>

namespace lapwing::fonts {
namespace {

quint16 u16(const QByteArray& bytes, qsizetype at) {
    return at + 2 <= bytes.size() ? qFromBigEndian<quint16>(bytes.constData() + at) : quint16(0);
}
quint32 u32(const QByteArray& bytes, qsizetype at) {
    return at + 4 <= bytes.size() ? qFromBigEndian<quint32>(bytes.constData() + at) : 0U;
}

/// Where the table lies, or -1 (ISO/IEC 14496-22, table directory).
qsizetype find_table(const QByteArray& font, const char* tag) {
    for (int i = 0; i < u16(font, 4); ++i)
        if (const qsizetype record = 12 + 16 * i; font.mid(record, 4) == tag) return u32(font, record + 8);
    return -1;
}

/// The font under a family name of our own. A machine may have fonts that call themselves B612 as well (its
/// monospaced sister does in some distributions), Qt puts fonts of one name in one family, and which of them
/// a text then gets is chance.
QByteArray renamed(QByteArray font) {
    constexpr int family_ids[] = {1, 16};
    const qsizetype table = find_table(font, "name");
    if (table < 0) return font;
    const qsizetype strings = table + u16(font, table + 4);
    for (int i = 0; i < u16(font, table + 2); ++i) {
        const qsizetype record = table + 6 + qsizetype{12} * i;
        if (std::ranges::count(family_ids, u16(font, record + 6)) == 0) continue;
        const qsizetype at = strings + u16(font, record + 10);
        const qsizetype first_letter = font.indexOf('B', at);
        if (first_letter >= at && first_letter < at + u16(font, record + 8)) font[first_letter] = 'L';
    }
    return font;
}

/// The family's name, empty when the font could not be loaded.
QString load(const QString& path) {
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly)) return {};
    const int id = QFontDatabase::addApplicationFontFromData(renamed(file.readAll()));
    return id < 0 ? QString() : QFontDatabase::applicationFontFamilies(id).value(0);
}

}  // namespace

QString typeface() {
    static const QString family = [] {
        const QString regular = load(QStringLiteral(":/fonts/B612-Regular.ttf"));
        const QString bold = load(QStringLiteral(":/fonts/B612-Bold.ttf"));
        return regular == bold ? regular : QString();
    }();
    return family;
}

}  // namespace lapwing::fonts

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <gtest/gtest.h>

#include <QDirIterator>
#include <QFile>
#include <QGuiApplication>
#include <QRawFont>
#include <QSet>

namespace {

/// What lies outside of comments, which nobody sees drawn.
QString without_comments(const QString& source) {
    QString out;
    for (const QString& line : source.split(u'\n')) {
        const qsizetype comment = line.indexOf(QStringLiteral("//"));
        out += comment < 0 ? line : line.left(comment);
    }
    return out;
}

// A letter that the app's typeface lacks is drawn from whatever the phone has, or as an empty box.
TEST(Letters, EveryOneInSentencesSymbolsAndReferenceDataIsInTheTypeface) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    int count = 1;
    char name[] = "letters";
    char* names[] = {name, nullptr};
    const QGuiApplication application(count, names);
    const QString root = QStringLiteral(LAPWING_SOURCE_DIR "/");
    for (const char* weight : {"Regular", "Bold"}) {
        const QRawFont font(root + QStringLiteral("assets/fonts/B612-%1.ttf").arg(QLatin1String(weight)), 12);
        ASSERT_TRUE(font.isValid());
        ASSERT_FALSE(font.supportsCharacter(QChar(0x1d62)))
            << "the check can fail: B612 has no small i below";
        QSet<QChar> seen;
        for (const char* folder : {"core", "qml", "assets/reference"}) {
            QDirIterator files(root + QLatin1String(folder), {"*.cpp", "*.h", "*.qml", "*.json"}, QDir::Files,
                               QDirIterator::Subdirectories);
            while (files.hasNext()) {
                QFile file(files.next());
                ASSERT_TRUE(file.open(QIODevice::ReadOnly)) << file.fileName().toStdString();
                for (const QChar letter : without_comments(QString::fromUtf8(file.readAll()))) {
                    if (letter < QChar(0xa0)) continue;
                    seen.insert(letter);
                    EXPECT_TRUE(font.supportsCharacter(letter))
                        << QString(letter).toStdString() << " in " << file.fileName().toStdString();
                }
            }
        }
        EXPECT_TRUE(seen.contains(QChar(0x00b1))) << "the plus-minus sign of every uncertainty was not read";
    }
}

}  // namespace

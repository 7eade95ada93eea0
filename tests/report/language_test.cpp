// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/print/language.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/core/report/sample.h"
#include "tests/report/paper.h"

namespace lapwing::print {
namespace {

namespace sample = report::sample;

QByteArray bytes_of(const Paper& paper) {
    QFile file(paper.file());
    if (!file.open(QIODevice::ReadOnly)) throw std::runtime_error("no report");
    return file.readAll();
}

/// What a reader finds that follows the file from its end, as ISO 32000-1, 7.5 lays down: the last startxref
/// names a table, the table the object, the trailer the catalogue.
QByteArray catalogue_as_read(const QByteArray& pdf) {
    const auto number_after = [&](const QByteArray& word, qsizetype from) {
        static const QRegularExpression digits("\\d+");
        const auto at = pdf.indexOf(word, from);
        return at < 0 ? -1 : digits.match(QString::fromLatin1(pdf.mid(at, 60))).captured().toLongLong();
    };
    const qint64 table = number_after("startxref", pdf.lastIndexOf("startxref"));
    if (!pdf.mid(table).startsWith("xref\n")) return {};
    const QList<QByteArray> lines = pdf.mid(table).split('\n');
    const qint64 root = number_after("/Root", pdf.indexOf("trailer", table));
    if (lines[1] != QByteArray::number(root) + " 1") return {};
    EXPECT_EQ(lines[2].size(), 19);  // and its end of line: twenty
    const QByteArray object = pdf.mid(lines[2].left(10).toLongLong());
    if (!object.startsWith(QByteArray::number(root) + " 0 obj")) return {};
    return object.left(object.indexOf("endobj"));
}

TEST(Language, StandsInTheCatalogue) {
    for (const auto language : {QLocale::English, QLocale::German, QLocale::Spanish}) {
        const QLocale locale(language);
        const Paper paper(sample::orchard().report(), format::Formatter({}, locale));
        const QByteArray catalogue = catalogue_as_read(bytes_of(paper));
        EXPECT_THAT(catalogue.toStdString(),
                    testing::HasSubstr("/Lang (" + locale.bcp47Name().toStdString() + ")"));
        EXPECT_THAT(catalogue.toStdString(), testing::HasSubstr("/DisplayDocTitle true"));
        EXPECT_THAT(catalogue.toStdString(), testing::HasSubstr("/Pages"));
        // Poppler follows the update without a word on its standard error (Paper sees to that).
        EXPECT_GE(paper.pages(), 1);
        EXPECT_TRUE(paper.words().contains("Orchard V-twin"));
    }
}

TEST(Language, LeavesWhatIsNoPdfAlone) {
    for (const char* other : {"", "trailer startxref", "%PDF-1.4 trailer << /Root 3 0 R >> startxref 9"})
        EXPECT_EQ(in_language(other, "en"), other);
}

}  // namespace
}  // namespace lapwing::print

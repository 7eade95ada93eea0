// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/print/language.h"

#include <QRegularExpression>
#include <QString>
#include <optional>

namespace lapwing::print {
namespace {

/// What an update has to repeat of the file's trailer, and the catalogue's own entries.
struct Catalogue {
    QByteArray number;   ///< of its object
    QByteArray entries;  ///< between its << and >>
    QByteArray trailer;  ///< between the trailer's << and >>
    QByteArray xref;     ///< where the cross-reference table stands
};

QByteArray dictionary_at(const QByteArray& pdf, qsizetype from) {
    const qsizetype open = pdf.indexOf("<<", from);
    int depth = 0;
    for (qsizetype at = open; at >= 0 && at + 1 < pdf.size(); ++at) {
        const auto two = QByteArrayView(pdf).sliced(at, 2);
        if (two == "<<") {
            ++depth;
            ++at;
        } else if (two == ">>") {
            ++at;
            if (--depth == 0) return pdf.mid(open + 2, at - 1 - open - 2);
        }
    }
    return {};
}

std::optional<Catalogue> catalogue_of(const QByteArray& pdf) {
    Catalogue out;
    const qsizetype trailer = pdf.lastIndexOf("trailer");
    const qsizetype start = pdf.lastIndexOf("startxref");
    if (trailer < 0 || start < trailer) return std::nullopt;
    out.trailer = dictionary_at(pdf, trailer);
    out.xref = pdf.mid(start + 9, 24).simplified().split(' ').first();
    static const QRegularExpression root(QStringLiteral("/Root\\s+(\\d+)\\s+0\\s+R"));
    const auto found = root.match(QString::fromLatin1(out.trailer));
    if (!found.hasMatch()) return std::nullopt;
    out.number = found.captured(1).toLatin1();
    const qsizetype object = pdf.indexOf('\n' + out.number + " 0 obj");
    if (object < 0) return std::nullopt;
    out.entries = dictionary_at(pdf, object);
    if (!out.entries.contains("/Catalog") || out.entries.contains("/Lang")) return std::nullopt;
    return out;
}

}  // namespace

QByteArray in_language(QByteArray pdf, const QByteArray& language) {
    const auto catalogue = catalogue_of(pdf);
    if (!catalogue) return pdf;
    if (!pdf.endsWith('\n')) pdf += '\n';
    const qsizetype object = pdf.size();
    pdf += catalogue->number + " 0 obj\n<<" + catalogue->entries + "\n/Lang (" + language +
           ")\n/ViewerPreferences << /DisplayDocTitle true >>\n>>\nendobj\n";
    const qsizetype xref = pdf.size();
    // An entry is twenty bytes long, its end of line included.
    pdf += "xref\n" + catalogue->number + " 1\n" + QByteArray::number(object).rightJustified(10, '0') +
           " 00000 n \n" + "trailer\n<<" + catalogue->trailer + "\n/Prev " + catalogue->xref +
           "\n>>\nstartxref\n" + QByteArray::number(xref) + "\n%%EOF\n";
    return pdf;
}

}  // namespace lapwing::print

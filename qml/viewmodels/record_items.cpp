// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/record_items.h"

#include <QCoreApplication>

namespace lapwing {
namespace {

struct BringIn {
    Q_DECLARE_TR_FUNCTIONS(BringIn)
};

QString added(const workflow::Preview& preview) {
    QStringList parts;
    const auto say = [&](RecordKind kind, QString (*words)(int)) {
        const auto found = preview.added.find(kind);
        if (found != preview.added.end() && found->second > 0) parts << words(found->second);
    };
    say(RecordKind::session, [](int n) { return BringIn::tr("%n sessions", nullptr, n); });
    say(RecordKind::reading, [](int n) { return BringIn::tr("%n readings", nullptr, n); });
    say(RecordKind::exit_note, [](int n) { return BringIn::tr("%n exits", nullptr, n); });
    say(RecordKind::clearance, [](int n) { return BringIn::tr("%n clearances", nullptr, n); });
    say(RecordKind::attachment, [](int n) { return BringIn::tr("%n photos and voice notes", nullptr, n); });
    say(RecordKind::note, [](int n) { return BringIn::tr("%n notes", nullptr, n); });
    say(RecordKind::plan_line, [](int n) { return BringIn::tr("%n lines of the plan", nullptr, n); });
    say(RecordKind::tester, [](int n) { return BringIn::tr("%n testers", nullptr, n); });
    const QString what = parts.join(QStringLiteral(", "));
    if (preview.new_engine)
        return parts.isEmpty() ? BringIn::tr("A new engine.")
                               : BringIn::tr("A new engine with %1.").arg(what);
    return BringIn::tr("This engine is here already. New are %1.").arg(what);
}

}  // namespace

format::NameOf names_in(const workflow::Desk& desk, const format::Formatter& format) {
    return [&desk, format](const Uuid& id) {
        for (const auto kind : {RecordKind::tester, RecordKind::reading, RecordKind::note,
                                RecordKind::exit_note, RecordKind::clearance, RecordKind::plan_line})
            if (const auto record = desk.record(kind, id)) return format::title_of(format, *record);
        return QString();
    };
}

QVariantList difference_items(const format::Formatter& format, const Record& one, const Record& other,
                              const format::NameOf& name_of) {
    QVariantList list;
    const auto fields = format::differences(format, one, other, name_of);
    for (const auto& field : fields)
        list << QVariantMap{{QStringLiteral("name"), field.name},
                            {QStringLiteral("one"), field.one},
                            {QStringLiteral("other"), field.other}};
    return list;
}

QVariantMap record_item(const format::Formatter& format, const Record& record) {
    return {{QStringLiteral("title"), format::title_of(format, record)},
            {QStringLiteral("text"), format::gist_of(format, record)}};
}

QVariantMap signature_item(const workflow::SignedBy& by, const exchange::Signature& signature) {
    using Who = workflow::SignedBy::Who;
    QString mark = QStringLiteral("borderline"), title, text;
    bool owned = false;
    switch (by.who) {
        case Who::nobody:
            mark = QStringLiteral("none");
            title = BringIn::tr("Not signed");
            text = BringIn::tr(
                "Its checksums show no damage, but nobody stands for it: anyone may have changed it on "
                "the way.");
            break;
        case Who::this_library:
            mark = QStringLiteral("good");
            title = BringIn::tr("Unaltered since you handed it over");
            text = BringIn::tr("It carries the key of this library.");
            break;
        case Who::known:
            mark = QStringLiteral("good");
            title =
                BringIn::tr("Unaltered since it was handed over by %1").arg(QString::fromStdString(by.name));
            text = BringIn::tr("You gave this key its name.");
            owned = true;
            break;
        case Who::unknown:
            title = BringIn::tr("Unaltered since it was handed over; unknown key");
            text = BringIn::tr(
                "Compare the fingerprint with the sender once, by eye or by telephone. Then give the key "
                "a name, and it is known from now on.");
            owned = true;
            break;
        case Who::altered:
            mark = QStringLiteral("fault");
            title = BringIn::tr("Altered since it was handed over");
            text = BringIn::tr(
                "Something was changed, added or taken out after it was signed. Ask the sender for the "
                "file again.");
            break;
        case Who::unreadable:
            title = BringIn::tr("Its signature can't be read");
            text = BringIn::tr("It is damaged or from a newer version. Treat the file as not signed.");
            break;
    }
    return {{QStringLiteral("mark"), mark},
            {QStringLiteral("title"), title},
            {QStringLiteral("text"), text},
            {QStringLiteral("fingerprint"), QString::fromStdString(by.fingerprint)},
            {QStringLiteral("key"), owned ? QString::fromStdString(signature.public_key) : QString()},
            {QStringLiteral("named"), QString::fromStdString(by.name)}};
}

QString preview_sentence(const workflow::Preview& preview) {
    QStringList sentences;
    if (preview.total(preview.added) > 0) sentences << added(preview);
    if (const int n = preview.total(preview.newer); n > 0)
        sentences << BringIn::tr("%n records were changed and take the place of those here.", nullptr, n);
    if (const int n = preview.total(preview.conflicts); n > 0)
        sentences << BringIn::tr("%n records were changed here as well: both versions of each are kept.",
                                 nullptr, n);
    if (const int n = preview.total(preview.removed_here); n > 0)
        sentences << BringIn::tr("%n records that you took out stay out.", nullptr, n);
    return sentences.isEmpty() ? BringIn::tr("All of it is here already.") : sentences.join(QLatin1Char(' '));
}

QString gap_lines(const format::Formatter& format, const std::vector<exchange::Gap>& gaps) {
    constexpr std::size_t most = 20;
    QStringList lines;
    for (const auto& gap : gaps) {
        if (std::size_t(lines.size()) == most) break;
        const QString what = gap.kind == AttachmentKind::photo ? BringIn::tr("Photo of %1: %2. %3")
                                                               : BringIn::tr("Voice note of %1: %2. %3");
        const QString where = gap.session.empty() ? QString::fromStdString(gap.engine)
                                                  : QString::fromStdString(gap.engine + ", " + gap.session);
        lines << what.arg(
            format.shortDate(gap.taken_at), where,
            gap.loss == Loss::lost ? BringIn::tr("Its file is lost.") : BringIn::tr("Its file is damaged."));
    }
    if (gaps.size() > most) lines << BringIn::tr("and %1 more").arg(gaps.size() - most);
    return lines.join(QLatin1Char('\n'));
}

QString whereabouts_lines(const format::Formatter& format, const std::vector<exchange::Whereabouts>& photos) {
    constexpr std::size_t most = 20;
    QStringList lines;
    for (const auto& photo : photos) {
        if (std::size_t(lines.size()) == most) break;
        lines << BringIn::tr("Photo of %1: %2")
                     .arg(format.shortDate(photo.taken_at),
                          QString::fromStdString(
                              photo.session.empty() ? photo.engine : photo.engine + ", " + photo.session));
    }
    if (photos.size() > most) lines << BringIn::tr("and %1 more").arg(photos.size() - most);
    return lines.join(QLatin1Char('\n'));
}

}  // namespace lapwing

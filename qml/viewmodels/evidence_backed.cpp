// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/evidence_backed.h"

#include <QUrl>
#include <algorithm>

#include "core/findings/photo_reading.h"
#include "core/model/by_id.h"
#include "core/store/attachment_files.h"
#include "qml/format/record_words.h"
#include "qml/viewmodels/length_text.h"

namespace lapwing {

EvidenceBacked::EvidenceBacked(QObject* parent) : SessionBacked(parent) {
    connect(this, &EvidenceBacked::tieChanged, this, &EvidenceBacked::refreshed);
}

Tie EvidenceBacked::tie() const {
    Tie tie;
    tie.to = from_word<TiedTo>(to_.toStdString()).value_or(TiedTo::session);
    if (tie.to == TiedTo::cylinder || tie.to == TiedTo::finding) tie.cylinder = cylinder_;
    if (tie.to == TiedTo::finding)
        tie.finding = finding_.toStdString();
    else if (tie.to != TiedTo::session && tie.to != TiedTo::cylinder)
        tie.record = Uuid::parse(record_.toStdString());
    return tie;
}

QString EvidenceBacked::placeOf(const Tie& tie) const {
    const auto title = [&](const auto* record) {
        return record ? format::title_of(format(), *record) : format::place_of(format(), tie);
    };
    switch (tie.to) {
        case TiedTo::reading:
            return title(with_id(visit().readings, tie.record));
        case TiedTo::exit_note:
            return title(with_id(visit().exits, tie.record));
        case TiedTo::clearance:
            return title(with_id(visit().clearances, tie.record));
        case TiedTo::plan_line:
            return title(with_id(visit().plan, tie.record));
        case TiedTo::note:
            return title(with_id(visit().notes, tie.record));
        case TiedTo::tester:
            return title(with_id(dossier().testers, tie.record));
        case TiedTo::session:
        case TiedTo::cylinder:
        case TiedTo::finding:
            break;
    }
    return format::place_of(format(), tie);
}

const Attachment* EvidenceBacked::attachment(const QString& id) const {
    return with_id(visit().attachments, Uuid::parse(id.toStdString()));
}

QString EvidenceBacked::urlOf(const Attachment& attachment) const {
    const auto& files = app()->desk().files();
    if (!files.has(attachment.sha256)) return {};
    return QUrl::fromLocalFile(QString::fromStdString(files.path(attachment.sha256).string())).toString();
}

QVariantMap EvidenceBacked::itemOf(const Attachment& one) const {
    const bool photo = one.kind == AttachmentKind::photo;
    const double seconds = one.length ? one.length->si() : 0;
    const QString title =
        photo && one.photo_of ? format().heading(*one.photo_of) : format().heading(one.kind);
    QStringList detail{placeOf(one.tie), format().shortDateTime(one.taken_at)};
    if (!one.caption.empty()) detail << QString::fromStdString(one.caption);
    QString read = one.read_value ? format().typed(*one.read_value) : QString();
    if (const auto* reading = with_id(visit().readings, one.tie.record);
        reading && findings::photo_unsettled(*reading, one))
        read = tr("%1, differs from what was typed").arg(read);
    return {{"id", QString::fromStdString(one.id.text())},
            {"kind", QString::fromUtf8(word(one.kind).data())},
            {"file", urlOf(one)},
            {"title", title},
            {"detail", detail.join(QStringLiteral(" · "))},
            {"seconds", seconds},
            {"length", length_text(seconds)},
            {"reading", read}};
}

}  // namespace lapwing

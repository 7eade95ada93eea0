// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/evidence_backed.h"

#include <QUrl>
#include <algorithm>

#include "core/store/attachment_files.h"

namespace lapwing {
namespace {

template <class T>
const T* with_id(const std::vector<T>& all, const std::optional<Uuid>& id) {
    const auto found = std::ranges::find_if(all, [&](const T& one) { return one.id.uuid == id; });
    return found == all.end() ? nullptr : &*found;
}

}  // namespace

EvidenceBacked::EvidenceBacked(QObject* parent) : SessionBacked(parent) {
    connect(this, &EvidenceBacked::tieChanged, this, &EvidenceBacked::refreshed);
}

Tie EvidenceBacked::tie() const {
    Tie tie;
    tie.to = from_word<TiedTo>(to_.toStdString()).value_or(TiedTo::session);
    if (tie.to == TiedTo::cylinder)
        tie.cylinder = cylinder_;
    else if (tie.to != TiedTo::session)
        tie.record = Uuid::parse(record_.toStdString());
    return tie;
}

QString EvidenceBacked::placeOf(const Tie& tie) const {
    const auto& f = format();
    const auto of_cylinder = [](const QString& what, int number) {
        return tr("%1, cylinder %2").arg(what).arg(number);
    };
    switch (tie.to) {
        case TiedTo::cylinder:
            return tr("Cylinder %1").arg(tie.cylinder.value_or(0));
        case TiedTo::reading:
            if (const auto* reading = with_id(visit().readings, tie.record))
                return of_cylinder(f.heading(reading->test), reading->cylinder);
            break;
        case TiedTo::exit_note:
            if (const auto* note = with_id(visit().exits, tie.record))
                return of_cylinder(f.heading(note->exit), note->cylinder);
            break;
        case TiedTo::clearance:
            if (const auto* clearance = with_id(visit().clearances, tie.record))
                return of_cylinder(tr("Clearance, %1").arg(f.name(clearance->side)), clearance->cylinder);
            break;
        case TiedTo::tester:
            if (const auto* tester = with_id(dossier().testers, tie.record))
                return QString::fromStdString(tester->name);
            break;
        default:
            break;
    }
    return tie.to == TiedTo::session ? tr("Session") : f.heading(tie.to);
}

const Attachment* EvidenceBacked::attachment(const QString& id) const {
    return with_id(visit().attachments, Uuid::parse(id.toStdString()));
}

QString EvidenceBacked::urlOf(const Attachment& attachment) const {
    const auto& files = app()->desk().files();
    if (!files.has(attachment.sha256)) return {};
    return QUrl::fromLocalFile(QString::fromStdString(files.path(attachment.sha256).string())).toString();
}

}  // namespace lapwing

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/todo_model.h"

#include <algorithm>

#include "core/workflow/remarks.h"
#include "qml/viewmodels/opinion_words.h"

namespace lapwing {
namespace {

template <class T>
std::optional<int> cylinder_of(const std::vector<T>& records, const std::optional<Uuid>& id) {
    for (const auto& one : records)
        if (one.id.uuid == id && one.cylinder > 0) return one.cylinder;
    return std::nullopt;
}

}  // namespace

std::vector<const Note*> TodoModel::requests() const {
    std::vector<const Note*> list;
    for (const auto& note : visit().notes)
        if (note.kind == NoteKind::test_request) list.push_back(&note);
    std::ranges::stable_sort(list, {}, [](const Note* note) { return note->done; });
    return list;
}

std::optional<int> TodoModel::cylinderOf(const Tie& tie) const {
    switch (tie.to) {
        case TiedTo::reading:
            return cylinder_of(visit().readings, tie.record);
        case TiedTo::exit_note:
            return cylinder_of(visit().exits, tie.record);
        case TiedTo::clearance:
            return cylinder_of(visit().clearances, tie.record);
        default:
            return tie.cylinder;
    }
}

QVariantList TodoModel::todos() const {
    QVariantList list;
    for (const auto* note : requests()) {
        const auto cylinder = cylinderOf(note->tie);
        const QString place = cylinder ? tr("cylinder %1").arg(*cylinder) : placeOf(note->tie);
        QStringList detail;
        if (!note->text.empty()) detail << QString::fromStdString(note->text);
        if (!note->author.empty()) detail << tr("asked by %1").arg(QString::fromStdString(note->author));
        QVariantMap args{{"sessionId", sessionId()}};
        if (note->test) args["test"] = QString::fromUtf8(word(*note->test).data());
        if (note->test && cylinder) args["cylinder"] = *cylinder;
        list << QVariantMap{{"id", QString::fromStdString(note->id.text())},
                            {"text", format().headed(wanted_of(*note, place, format()))},
                            {"detail", detail.join(QStringLiteral(" · "))},
                            {"done", note->done},
                            {"page", note->test ? QStringLiteral("Pad") : QStringLiteral("SecondOpinion")},
                            {"args", args}};
    }
    return list;
}

int TodoModel::open() const {
    return int(std::ranges::count_if(requests(), [](const Note* note) { return !note->done; }));
}

QString TodoModel::remarksText() const {
    const auto count = [&](NoteKind kind) {
        return int(std::ranges::count(visit().notes, kind, &Note::kind));
    };
    QStringList parts;
    if (const int n = count(NoteKind::note); n > 0) parts << tr("%n notes", nullptr, n);
    if (const int n = count(NoteKind::other_cause); n > 0) parts << tr("%n other causes", nullptr, n);
    if (const int n = count(NoteKind::test_request); n > 0) parts << tr("%n tests asked for", nullptr, n);
    return parts.join(QStringLiteral(", "));
}

void TodoModel::tick(const QString& text) {
    const auto id = NoteId::parse(text.toStdString());
    const auto note = std::ranges::find_if(visit().notes, [&](const Note& one) { return one.id == id; });
    if (note == visit().notes.end()) return;
    Note changed = *note;
    changed.done = !changed.done;
    app()->run(workflow::save_note(changed), this);
}

}  // namespace lapwing

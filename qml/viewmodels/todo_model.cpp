// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/todo_model.h"

#include <algorithm>

#include "core/findings/asked.h"
#include "core/workflow/remarks.h"
#include "qml/viewmodels/again.h"
#include "qml/viewmodels/cylinder_order.h"
#include "qml/viewmodels/opinion_words.h"
#include "qml/viewmodels/step_place.h"

namespace lapwing {
namespace {

template <class T>
std::optional<int> cylinder_in(const workflow::Desk& desk, RecordKind kind, const std::optional<Uuid>& id) {
    const auto record = id ? desk.record(kind, *id) : std::nullopt;
    if (!record) return std::nullopt;
    const int cylinder = std::get<T>(*record).cylinder;
    return cylinder > 0 ? std::optional(cylinder) : std::nullopt;
}

}  // namespace

/// Those of this session, and of earlier ones what is still open or was done here: nobody looks for them in a
/// session that is over.
std::vector<Note> TodoModel::requests() const {
    std::vector<Note> list;
    const auto sessions = app()->desk().sessions(engine().id);
    for (auto& note : app()->desk().requests(engine().id)) {
        const auto asked_in = std::ranges::find(sessions, note.session, &Session::id);
        if (asked_in == sessions.end()) continue;
        const bool here = note.session == session().id;
        const bool earlier = asked_in->opened_at < session().opened_at;
        if (here ||
            (earlier && (!note.done || findings::has_what_was_asked(note, cylinderOf(note.tie), engine(),
                                                                    visit(), app()->desk().testers()))))
            list.push_back(std::move(note));
    }
    std::ranges::stable_sort(list, {}, &Note::done);
    return list;
}

void TodoModel::refresh() {
    if (found()) requests_ = requests();
}

std::optional<int> TodoModel::cylinderOf(const Tie& tie) const {
    switch (tie.to) {
        case TiedTo::reading:
            return cylinder_in<Reading>(app()->desk(), RecordKind::reading, tie.record);
        case TiedTo::exit_note:
            return cylinder_in<ExitNote>(app()->desk(), RecordKind::exit_note, tie.record);
        case TiedTo::clearance:
            return cylinder_in<Clearance>(app()->desk(), RecordKind::clearance, tie.record);
        default:
            return tie.cylinder;
    }
}

QVariantList TodoModel::todos() const {
    QVariantList list;
    for (const auto& note : requests_) {
        const auto cylinder = cylinderOf(note.tie);
        const bool whole = note.test && note.tie.to == TiedTo::session &&
                           order_of(engine(), *note.test) != std::vector<int>{0};
        const QString place = cylinder ? tr("cylinder %1").arg(*cylinder)
                              : !whole ? placeOf(note.tie)
                              : engine().cylinders.size() > 1
                                  ? tr("all cylinders")
                                  : tr("cylinder %1").arg(engine().cylinders.front().number);
        QStringList detail;
        if (!note.text.empty()) detail << QString::fromStdString(note.text);
        if (!note.author.empty()) detail << tr("asked by %1").arg(QString::fromStdString(note.author));
        const StepPlace where =
            note.check  ? place_of(*note.check, note.tie, cylinder, sessionId())
            : note.test ? place_again(app()->desk(), engine().id, session().id, *note.test, cylinder)
                        : StepPlace{QStringLiteral("SecondOpinion"),
                                    {{"sessionId", QString::fromStdString(note.session.text())}}};
        list << QVariantMap{{"id", QString::fromStdString(note.id.text())},
                            {"text", format().headed(wanted_of(note, place, format()))},
                            {"detail", detail.join(QStringLiteral(" · "))},
                            {"done", note.done},
                            {"look", !note.test && !note.check},
                            {"page", where.page},
                            {"args", where.args}};
    }
    return list;
}

int TodoModel::open() const {
    return int(std::ranges::count(requests_, false, &Note::done));
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
    const auto note = std::ranges::find_if(requests_, [&](const Note& one) { return one.id == id; });
    if (note == requests_.end()) return;
    Note changed = *note;
    changed.done = !changed.done;
    app()->run(workflow::save_note(changed), this);
}

}  // namespace lapwing

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/visit_form.h"

#include "core/workflow/sessions.h"
#include "qml/viewmodels/session_name.h"
#include "qml/viewmodels/visit_lines.h"

namespace lapwing {

bool VisitForm::read() {
    const auto id = SessionId::parse(recordId().toStdString());
    auto session = id ? app()->desk().session(*id) : std::nullopt;
    if (!session) return false;
    session_ = std::move(*session);
    testers_ = app()->desk().testers();
    const auto engine = app()->desk().engine(session_.engine);
    engine_name_ = engine ? engine->name : std::string();
    cycle_ = engine ? engine->cycle : StrokeCycle::four;
    return true;
}

void VisitForm::refresh() {
    show(visit_lines(session_, cycle_, testers_, format()).fields());
}

Status VisitForm::take(const QString& key, const FormEntry& entry) {
    Session changed = session_;
    if (auto taken = visit_lines(session_, cycle_, testers_, format()).take(key, changed, entry); !taken)
        return taken;
    auto possible = checked(std::move(changed));
    if (!possible) return tl::unexpected(possible.error());
    // Conditions and testers have commands of their own, so that Undo says what it takes back.
    const bool conditions = possible->conditions != session_.conditions;
    const auto use = changed_tester(session_, *possible);
    session_ = std::move(*possible);
    if (use)
        store(workflow::choose_tester(session_.id, *use, tester_for(session_, *use)));
    else if (conditions)
        store(workflow::set_conditions(session_.id, session_.conditions));
    else
        store(workflow::save_session(session_));
    return {};
}

bool VisitForm::concerns(const workflow::Change& change) const {
    return change.sessions.contains(session_.id) || change.engines.contains(session_.engine) ||
           change.kinds.contains(RecordKind::tester);
}

QString VisitForm::engineName() const {
    return QString::fromStdString(engine_name_);
}

QString VisitForm::visitLine() const {
    if (!found()) return {};
    return session_name(session_, app()->desk().sessions(session_.engine), app()->desk(), format()).line();
}

}  // namespace lapwing

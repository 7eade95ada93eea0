// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/plan_line_form.h"

#include <QLocale>

#include "core/workflow/remarks.h"
#include "qml/viewmodels/plan_lines.h"

namespace lapwing {

bool PlanLineForm::read() {
    const auto id = PlanLineId::parse(recordId().toStdString());
    const auto record = id ? app()->desk().record(RecordKind::plan_line, id->uuid) : std::nullopt;
    if (!record) return false;
    line_ = std::get<PlanLine>(*record);
    const auto session = app()->desk().session(line_.session);
    auto engine = session ? app()->desk().engine(session->engine) : std::nullopt;
    if (!engine) return false;
    engine_ = std::move(*engine);
    return true;
}

void PlanLineForm::refresh() {
    show(plan_lines(line_, engine_, currency(), format()).fields());
}

Status PlanLineForm::take(const QString& key, const FormEntry& entry) {
    PlanLine changed = line_;
    if (auto taken = plan_lines(line_, engine_, currency(), format()).take(key, changed, entry); !taken)
        return taken;
    auto possible = checked(std::move(changed));
    if (!possible) return tl::unexpected(possible.error());
    line_ = std::move(*possible);
    store(workflow::save_plan_line(line_));
    return {};
}

/// That of this line, else of another line of the plan, else the one of the system's region.
QString PlanLineForm::currency() const {
    if (line_.price) return QString::fromStdString(line_.price->currency);
    if (const auto visit = app()->desk().visit(line_.session))
        for (const PlanLine& other : visit->plan)
            if (other.price) return QString::fromStdString(other.price->currency);
    return QLocale::system().currencySymbol(QLocale::CurrencyIsoCode);
}

bool PlanLineForm::concerns(const workflow::Change& change) const {
    return change.sessions.contains(line_.session);
}

std::optional<workflow::Intent> PlanLineForm::removal() const {
    return workflow::remove_plan_line(line_.id);
}

}  // namespace lapwing

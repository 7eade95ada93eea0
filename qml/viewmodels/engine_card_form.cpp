// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/engine_card_form.h"

#include <algorithm>

#include "core/workflow/engines.h"
#include "qml/viewmodels/engine_card_lines.h"
#include "qml/viewmodels/engine_changes.h"
#include "qml/viewmodels/session_name.h"

namespace lapwing {

bool EngineCardForm::read() {
    const auto id = EngineId::parse(recordId().toStdString());
    auto engine = id ? app()->desk().engine(*id) : std::nullopt;
    if (!engine) return false;
    engine_ = std::move(*engine);
    sessions_ = app()->desk().sessions(*id);
    return true;
}

void EngineCardForm::refresh() {
    show(engine_card_lines(engine_, format()).fields());
}

Status EngineCardForm::take(const QString& key, const FormEntry& entry) {
    Engine changed = engine_;
    if (auto taken = engine_card_lines(engine_, format()).take(key, changed, entry); !taken) return taken;
    return keep(std::move(changed));
}

Status EngineCardForm::keep(Engine changed) {
    auto possible = checked(std::move(changed));
    if (!possible) return tl::unexpected(possible.error());
    if (*possible == engine_) return {};
    engine_ = std::move(*possible);
    store(workflow::save_engine(engine_));
    return {};
}

bool EngineCardForm::concerns(const workflow::Change& change) const {
    return change.engines.contains(engine_.id);
}

QString EngineCardForm::name() const {
    return QString::fromStdString(engine_.name);
}

QStringList EngineCardForm::tags() const {
    QStringList tags;
    for (const auto& tag : engine_.tags)
        tags << QString::fromStdString(tag);
    return tags;
}

bool EngineCardForm::banked() const {
    return engine_.arrangement == Arrangement::vee || engine_.arrangement == Arrangement::flat;
}

QString EngineCardForm::subtitle() const {
    if (!found()) return {};
    const QStringList parts{tr("%n cylinders", nullptr, static_cast<int>(engine_.cylinders.size())),
                            format().name(engine_.arrangement), format().name(engine_.cycle),
                            format().name(engine_.fuel)};
    return parts.join(QStringLiteral(" · "));
}

QVariantList EngineCardForm::cylinders() const {
    QVariantList list;
    for (std::size_t i = 0; i < engine_.cylinders.size(); ++i) {
        const Cylinder& cylinder = engine_.cylinders[i];
        list << QVariantMap{{QStringLiteral("index"), static_cast<int>(i)},
                            {QStringLiteral("number"), cylinder.number},
                            {QStringLiteral("name"), QString::fromStdString(cylinder.name)},
                            {QStringLiteral("bank"), cylinder.bank},
                            {QStringLiteral("row"), cylinder.row},
                            {QStringLiteral("column"), cylinder.column}};
    }
    return list;
}

QVariantList EngineCardForm::sessionList() const {
    QVariantList list;
    for (const Session& session : sessions_) {
        const SessionName called = session_name(session, sessions_, app()->desk(), format());
        QStringList detail{called.when};
        if (session.usage) detail << format().typed(*session.usage);
        if (session.retest_planned_for)
            detail << tr("retest planned for %1").arg(format().shortDate(*session.retest_planned_for));
        list << QVariantMap{{QStringLiteral("sessionId"), QString::fromStdString(session.id.text())},
                            {QStringLiteral("text"), called.name},
                            {QStringLiteral("detail"), detail.join(QStringLiteral(" · "))},
                            {QStringLiteral("today"), format().shortDate(session.opened_at) ==
                                                          format().shortDate(app()->desk().clock().now())}};
    }
    return list;
}

void EngineCardForm::swapCylinders(int a, int b) {
    const auto count = static_cast<int>(engine_.cylinders.size());
    if (a == b || a < 0 || b < 0 || a >= count || b >= count) return;
    Engine changed = engine_;
    swap_places(changed, static_cast<std::size_t>(a), static_cast<std::size_t>(b));
    if (auto kept = keep(std::move(changed)); !kept) app()->tell(kept.error());
}

QString EngineCardForm::changeCylinder(int index, const QString& number, const QString& name, int bank) {
    if (index < 0 || index >= static_cast<int>(engine_.cylinders.size())) return {};
    const auto at = static_cast<std::size_t>(index);
    Engine changed = engine_;
    changed.cylinders[at].name = name.trimmed().toStdString();
    if (bank != changed.cylinders[at].bank) set_bank(changed, at, bank);
    const auto kept = forms::whole(number.trimmed(), tr("Number"))
                          .and_then([&](int value) { return renumber(changed, at, value); })
                          .and_then([&] { return keep(std::move(changed)); });
    return kept ? QString() : sentence(kept.error());
}

}  // namespace lapwing

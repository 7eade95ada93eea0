// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/tester_card_form.h"

#include <algorithm>

#include "core/calculators/tester_check.h"
#include "core/workflow/testers.h"
#include "qml/viewmodels/tester_card_lines.h"
#include "qml/viewmodels/tester_checks.h"

namespace lapwing {
namespace {

/// Millimetres and inches are easily mixed up: 0.040 in are 1.02 mm.
Status check_restrictor(const TypedLength& diameter) {
    constexpr double least_mm = 0.2, most_mm = 8.0;  // from memory: testers have 0.5 to 3 mm
    const double mm = units::mm.number(diameter.value());
    if (mm >= least_mm && mm <= most_mm) return {};
    return fail(
        "tester.restrictor_unlikely",
        "A restrictor of {} is no tester's: they have about 0.5 to 3 mm (0.040 in are 1.02 mm). Look at the "
        "unit.",
        diameter.text());
}

}  // namespace

bool TesterCardForm::read() {
    const auto id = TesterId::parse(recordId().toStdString());
    auto testers = app()->desk().testers();
    const auto found = id ? std::ranges::find(testers, *id, &Tester::id) : testers.end();
    if (found == testers.end()) return false;
    tester_ = std::move(*found);
    // What can't be counted is found out when it comes to deleting.
    uses_ = app()
                ->desk()
                .look<int>([this](const store::Queries& library) { return library.uses_of(tester_.id); })
                .value_or(0);
    return true;
}

void TesterCardForm::refresh() {
    show(tester_card_lines(tester_, format()).fields());
}

Status TesterCardForm::take(const QString& key, const FormEntry& entry) {
    Tester changed = tester_;
    if (auto taken = tester_card_lines(tester_, format()).take(key, changed, entry); !taken) return taken;
    if (key == QLatin1String("restrictor") && changed.restrictor)
        if (auto likely = check_restrictor(*changed.restrictor); !likely) return likely;
    // A class names its standard by itself: the one has numbers, the other letters.
    for (Gauge* gauge : {&changed.gauge, changed.supply_gauge ? &*changed.supply_gauge : nullptr})
        if (gauge && gauge->scheme == AccuracyScheme::unknown) gauge->scheme = scheme_of(gauge->accuracy);
    auto possible = checked(std::move(changed));
    if (!possible) return tl::unexpected(possible.error());
    tester_ = std::move(*possible);
    store(workflow::save_tester(tester_));
    return {};
}

bool TesterCardForm::concerns(const workflow::Change& change) const {
    return change.kinds.contains(RecordKind::tester) || change.kinds.contains(RecordKind::session) ||
           change.kinds.contains(RecordKind::reading);
}

QString TesterCardForm::name() const {
    return QString::fromStdString(tester_.name);
}

QString TesterCardForm::kindName() const {
    if (!found()) return {};
    const QString kind = format().name(tester_.kind);
    return tester_.home_made ? tr("%1, home-made").arg(kind) : kind;
}

QString TesterCardForm::unit() const {
    const auto symbol = tester_.gauge.full_scale.unit().symbol();
    return QString::fromUtf8(symbol.data(), qsizetype(symbol.size()));
}

QVariantList TesterCardForm::checks() const {
    return found() ? tester_checks(tester_, format()) : QVariantList();
}

QVariantMap TesterCardForm::checkSays(const QString& kind, const QVariantMap& typed) const {
    const auto check = tester_check_from(tester_, kind, true, typed, {});
    const auto says = check ? calculators::check_says(tester_, *check, app()->reference()) : std::nullopt;
    if (!says) return {};
    return {{"text", format().text(says->remark.message)}, {"passes", says->passes}};
}

QString TesterCardForm::keepCheck(const QString& kind, bool passed, const QVariantMap& typed) {
    auto check = tester_check_from(tester_, kind, passed, typed, app()->desk().clock().now());
    if (!check) return sentence(check.error());
    Tester with = tester_;
    with.checks.push_back(*check);
    if (auto possible = checked(std::move(with)); !possible) return sentence(possible.error());
    tester_.checks.push_back(*check);
    store(workflow::keep_check(tester_.id, *check));
    return {};
}

}  // namespace lapwing

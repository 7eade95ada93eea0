// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/tester_list_model.h"

#include <algorithm>

#include "core/workflow/testers.h"
#include "qml/viewmodels/form_lines.h"

namespace lapwing {
namespace {

const TesterCheck* newest_check(const Tester& tester) {
    const auto newest =
        std::ranges::max_element(tester.checks, {}, [](const auto& c) { return c.at.unix_ms; });
    return newest == tester.checks.end() ? nullptr : &*newest;
}

}  // namespace

void TesterListModel::setApp(AppContext* app) {
    if (app_ == app) return;
    app_ = app;
    emit appChanged();
}

void TesterListModel::componentComplete() {
    connect(app_, &AppContext::changed, this, [this](const workflow::Change& change) {
        if (change.kinds.contains(RecordKind::tester)) reload();
    });
    connect(app_, &AppContext::formatChanged, this, &TesterListModel::reload);
    reload();
}

void TesterListModel::reload() {
    beginResetModel();
    testers_ = app_->desk().testers();
    endResetModel();
    emit refreshed();
}

QString TesterListModel::detailOf(const Tester& tester, const format::Formatter& format) {
    const TesterCheck* check = newest_check(tester);
    QStringList parts{tr("0 to %1").arg(format.typed(tester.gauge.full_scale))};
    if (tester.home_made) parts << tr("home-made");
    parts << (check ? tr("checked %1").arg(format.shortDate(check->at)) : tr("never checked"));
    return parts.join(QStringLiteral(" · "));
}

int TesterListModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : count();
}

QVariant TesterListModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || index.row() >= count()) return {};
    const Tester& tester = testers_[static_cast<std::size_t>(index.row())];
    const TesterCheck* check = newest_check(tester);
    switch (role) {
        case IdRole:
            return QString::fromStdString(tester.id.text());
        case NameRole:
            return QString::fromStdString(tester.name);
        case DetailRole: {
            return app_->format().name(tester.kind) + QStringLiteral(" · ") +
                   detailOf(tester, app_->format());
        }
        case StateRole:
            return !check                                 ? QStringLiteral("none")
                   : check->result == CheckResult::passed ? QStringLiteral("good")
                                                          : QStringLiteral("fault");
        default:
            return {};
    }
}

QHash<int, QByteArray> TesterListModel::roleNames() const {
    return {{IdRole, "testerId"}, {NameRole, "name"}, {DetailRole, "detail"}, {StateRole, "checkState"}};
}

QVariantList TesterListModel::kinds() const {
    QVariantList list;
    if (!app_) return list;
    for (const auto kind : {TesterKind::compression_gauge, TesterKind::leak_down, TesterKind::crankcase})
        list << QVariantMap{{QStringLiteral("value"), QString::fromUtf8(word(kind).data())},
                            {QStringLiteral("text"), app_->format().name(kind)}};
    return list;
}

QVariantList TesterListModel::units() const {
    QVariantList list;
    if (!app_) return list;
    for (const auto unit : forms::pressures(app_->format()))
        list << QVariantMap{{QStringLiteral("value"), QString::fromUtf8(unit.symbol().data())},
                            {QStringLiteral("text"), QString::fromUtf8(unit.display().data())}};
    return list;
}

QVariantList TesterListModel::holeUnits() const {
    QVariantList list;
    if (!app_) return list;
    for (const auto unit : forms::millimetres(app_->format()))
        list << QVariantMap{{QStringLiteral("value"), QString::fromUtf8(unit.symbol().data())},
                            {QStringLiteral("text"), QString::fromUtf8(unit.display().data())}};
    return list;
}

QString TesterListModel::add(const QString& kind, const QString& name, const QString& fullScale,
                             const QString& unit, const QString& setPressure, const QString& hole,
                             const QString& holeUnit) {
    const auto& format = app_->format();
    Tester tester;
    tester.id = app_->desk().make_id<TesterId>();
    tester.made_at = app_->desk().clock().now();
    tester.kind = from_word<TesterKind>(kind.toStdString()).value_or(TesterKind::compression_gauge);
    tester.name = name.trimmed().toStdString();
    auto scale = forms::typed<PressureTag>(fullScale.trimmed(), unit, format.choice().pressure);
    if (!scale) return format.text(scale.error());
    tester.gauge.full_scale = std::move(*scale);
    if (tester.kind != TesterKind::compression_gauge && !setPressure.trimmed().isEmpty()) {
        auto set = forms::typed<PressureTag>(setPressure.trimmed(), unit, format.choice().pressure);
        if (!set) return format.text(set.error());
        tester.set_pressure = std::move(*set);
    }
    if (tester.kind == TesterKind::leak_down && !hole.trimmed().isEmpty()) {
        auto diameter = forms::typed<LengthTag>(hole.trimmed(), holeUnit, units::mm);
        if (!diameter) return format.text(diameter.error());
        tester.restrictor = std::move(*diameter);
    }
    auto possible = checked(std::move(tester));
    if (!possible) return format.text(possible.error());
    const QString id = QString::fromStdString(possible->id.text());
    app_->run(workflow::save_tester(std::move(*possible)), this,
              [this, id](const Result<workflow::Step>& step) {
                  if (step) emit added(id);
              });
    return {};
}

}  // namespace lapwing

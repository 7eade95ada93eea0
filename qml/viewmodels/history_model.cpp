// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/history_model.h"

#include <algorithm>

#include "core/report/changes.h"
#include "qml/charts/history_plot.h"
#include "qml/viewmodels/change_lines.h"
#include "qml/viewmodels/my_call_model.h"
#include "qml/viewmodels/session_name.h"

namespace lapwing {
namespace {

QString key_of(TestKind test) {
    return QString::fromUtf8(word(test).data());
}

}  // namespace

void HistoryModel::setTest(const QString& test) {
    if (test_ == test) return;
    test_ = test;
    show();
    emit refreshed();
}

void HistoryModel::think() {
    ask<std::shared_ptr<Found>>(
        [&reference = app()->reference()](const Result<Dossier>& dossier) -> std::shared_ptr<Found> {
            if (!dossier) return nullptr;
            auto out = std::make_shared<Found>(Found{*dossier, {}});
            out->history = compare::history_of(out->dossier, reference);
            return out;
        },
        [this](std::shared_ptr<Found> found) { found_ = std::move(found); });
}

QString HistoryModel::emptyNote() const {
    if (!found_ || any() || found_->history.visits.empty()) return {};
    return tr(
        "Nothing to draw yet: from the second session with the same test on, every cylinder's readings "
        "stand here, all as one tester would show them.");
}

QVariantList HistoryModel::picks() const {
    QVariantList out{QVariantMap{{"value", 0}, {"text", tr("All")}}};
    for (const QVariant& cylinder : cylinders_) {
        const int number = cylinder.toMap()["number"].toInt();
        out << QVariantMap{{"value", number}, {"text", format().locale().toString(number)}};
    }
    return out;
}

void HistoryModel::add_cylinder(const compare::CylinderHistory& cylinder, TestKind test) {
    const compare::Series* series = cylinder.of(test);
    if (!series) return;
    const Cylinder* card = find_cylinder(found_->dossier.engine, cylinder.number);
    std::vector<Session> all;
    for (const Visit* visit : found_->history.visits)
        all.push_back(visit->session);
    QVariantList points;
    for (auto point = series->points.rbegin(); point != series->points.rend(); ++point) {
        const Visit& visit = *found_->history.visits[point->visit];
        const Session& session = visit.session;
        QStringList detail;
        if (session.usage) detail << format().typed(*session.usage);
        if (point->after_repair) detail << tr("after a repair");
        if (!point->comparable) detail << tr("not comparable with the newest");
        if (point->measure.converted)
            detail << tr("measured %1").arg(format().valueText(point->measure.as_measured));
        points << QVariantMap{{"text", session_name(visit, all, format()).line()},
                              {"figure", format().text(point->measure.compared)},
                              {"detail", detail.join(QStringLiteral(" · "))}};
    }
    cylinders_ << QVariantMap{
        {"number", cylinder.number},
        {"name", card ? QString::fromStdString(card->name) : QString()},
        {"line", cylinders_.size()},
        {"trend", series->trend && !waits() ? format().text(series->trend->says) : QString()},
        {"points", points}};
}

void HistoryModel::setAxis(const QString& axis) {
    if (axis_ == axis) return;
    axis_ = axis;
    show();
    emit refreshed();
}

void HistoryModel::draw(const report::Chart& chart) {
    const charts::Meter meter = charts::meter_of(chart);
    if (meter.drawable)
        axes_ = {QVariantMap{{"value", QStringLiteral("time")}, {"text", tr("Over the years")}},
                 QVariantMap{{"value", QStringLiteral("meter")}, {"text", tr("By the meter")}}};
    const bool by_meter = meter.drawable && axis_ == QLatin1String("meter");
    QStringList notes;
    if (!meter.drawable)
        notes << tr(
            "Note the hours or the mileage at every visit, and the readings can be drawn by them too.");
    if (by_meter && meter.unread > 0)
        notes << tr("%n visits where the meter was not read are not drawn.", nullptr, meter.unread);
    if (by_meter && meter.runs_back)
        notes << tr("The meter read less than at a visit before: it was changed, or misread.");
    axis_note_ = notes.join(u' ');
    plot_ = QVariant::fromValue(
        charts::plot_of(chart, format(), by_meter ? charts::Along::meter : charts::Along::time));
}

/// One and the same reading has a narrower ± in Findings and the report, which speak of its own day alone.
void HistoryModel::add_note_on_doubt() {
    if (!axis_note_.isEmpty()) axis_note_ += u' ';
    axis_note_ += tr(
        "Each ± here also holds what readings scatter by from one day to the next. Findings and the results "
        "in the report leave that out, so the same reading has a smaller ± there.");
}

/// A visit that the person has not called yet, while the call comes first.
bool HistoryModel::waits() const {
    if (!found_ || !app()->settings()->callFirst()) return false;
    return std::ranges::any_of(found_->dossier.visits,
                               [this](const Visit& visit) { return call_wanted(*app(), visit); });
}

void HistoryModel::show() {
    tests_.clear();
    cylinders_.clear();
    since_repair_.clear();
    reasons_.clear();
    axes_.clear();
    axis_note_.clear();
    plot_ = {};
    spoken_.clear();
    if (!found_) return;
    const Engine& engine = found_->dossier.engine;
    std::optional<TestKind> shown;
    for (const TestKind test : {TestKind::leak_down, TestKind::dry, TestKind::wet, TestKind::crankcase}) {
        if (report::chart_of(engine, found_->history, test).visits.size() < 2) continue;
        tests_ << QVariantMap{{"value", key_of(test)}, {"text", format().heading(test)}};
        if (!shown || key_of(test) == test_) shown = test;
    }
    if (!shown) return;
    test_ = key_of(*shown);
    const report::Chart chart = report::chart_of(engine, found_->history, *shown);
    draw(chart);
    if (*shown == TestKind::dry || *shown == TestKind::wet) add_note_on_doubt();
    spoken_ =
        tr("%1 over %n visits; the list below says the same.", nullptr, static_cast<int>(chart.visits.size()))
            .arg(format().heading(*shown));
    for (const auto& cylinder : found_->history.cylinders) {
        add_cylinder(cylinder, *shown);
        if (!cylinder.since_repair || waits()) continue;
        QVariantList evidence;
        for (const auto& message : cylinder.since_repair->evidence)
            evidence << format().text(message);
        since_repair_ << QVariantMap{{"number", cylinder.number},
                                     {"text", format().text(cylinder.since_repair->message)},
                                     {"evidence", evidence}};
    }
    reasons_ = reason_lines(found_->history.reasons, engine, format());
}

}  // namespace lapwing

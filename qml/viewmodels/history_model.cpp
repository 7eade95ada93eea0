// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/history_model.h"

#include <algorithm>

#include "core/report/changes.h"
#include "qml/charts/history_plot.h"
#include "qml/viewmodels/change_lines.h"

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
    QVariantList points;
    for (auto point = series->points.rbegin(); point != series->points.rend(); ++point) {
        const Session& session = found_->history.visits[point->visit]->session;
        QStringList detail;
        if (session.usage) detail << format().typed(*session.usage);
        if (point->after_repair) detail << tr("after a repair");
        if (!point->comparable) detail << tr("not comparable with the newest");
        if (point->measure.converted)
            detail << tr("measured %1").arg(format().valueText(point->measure.as_measured));
        points << QVariantMap{{"text", visit_text(session, format())},
                              {"figure", format().text(point->measure.compared)},
                              {"detail", detail.join(QStringLiteral(" · "))}};
    }
    cylinders_ << QVariantMap{{"number", cylinder.number},
                              {"name", card ? QString::fromStdString(card->name) : QString()},
                              {"line", cylinders_.size()},
                              {"trend", series->trend ? format().text(series->trend->says) : QString()},
                              {"points", points}};
}

void HistoryModel::show() {
    tests_.clear();
    cylinders_.clear();
    since_repair_.clear();
    reasons_.clear();
    plot_ = {};
    spoken_.clear();
    if (!found_) return;
    const Engine& engine = found_->dossier.engine;
    std::optional<TestKind> shown;
    for (const TestKind test : {TestKind::leak_down, TestKind::dry, TestKind::wet}) {
        if (report::chart_of(engine, found_->history, test).visits.size() < 2) continue;
        tests_ << QVariantMap{{"value", key_of(test)}, {"text", format().heading(test)}};
        if (!shown || key_of(test) == test_) shown = test;
    }
    if (!shown) return;
    test_ = key_of(*shown);
    const report::Chart chart = report::chart_of(engine, found_->history, *shown);
    plot_ = QVariant::fromValue(charts::plot_of(chart, format()));
    spoken_ = tr("%1 of %2 cylinders over %3 visits; the list below says the same.")
                  .arg(format().heading(*shown))
                  .arg(chart.lines.size())
                  .arg(chart.visits.size());
    for (const auto& cylinder : found_->history.cylinders) {
        add_cylinder(cylinder, *shown);
        if (!cylinder.since_repair) continue;
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

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QVariant>

#include "core/compare/history.h"
#include "core/report/report.h"
#include "qml/viewmodels/history_backed.h"

namespace lapwing {

/// Every cylinder of an engine over its visits: one test's drawing, and the same as a list.
class HistoryModel : public lapwing::HistoryBacked {
    Q_OBJECT
    QML_ELEMENT
    /// There is something to draw: two visits with readings of one test.
    Q_PROPERTY(bool any READ any NOTIFY refreshed)
    /// Why there is nothing to draw, for an engine that was tested once; empty otherwise.
    Q_PROPERTY(QString emptyNote READ emptyNote NOTIFY refreshed)
    /// {value, text}
    Q_PROPERTY(QVariantList tests READ tests NOTIFY refreshed)
    Q_PROPERTY(QString test READ test WRITE setTest NOTIFY refreshed)
    Q_PROPERTY(QVariant plot READ plot NOTIFY refreshed)
    /// What the drawing shows, in one sentence.
    Q_PROPERTY(QString spoken READ spoken NOTIFY refreshed)
    /// {number, name, line, trend, points: [{text, figure, detail}]}
    Q_PROPERTY(QVariantList cylinders READ cylinders NOTIFY refreshed)
    /// Which line may stand out: {value, text}, all (0) first
    Q_PROPERTY(QVariantList picks READ picks NOTIFY refreshed)
    /// {number, text, evidence: [text]}
    Q_PROPERTY(QVariantList sinceRepair READ sinceRepair NOTIFY refreshed)
    Q_PROPERTY(QVariantList reasons READ reasons NOTIFY refreshed)
    /// What the drawing may run along, {value, text}: empty when the meter was not read twice
    Q_PROPERTY(QVariantList axes READ axes NOTIFY refreshed)
    /// "time" or "meter"
    Q_PROPERTY(QString axis READ axis WRITE setAxis NOTIFY refreshed)
    /// What is missing from the axis that is shown, or why there is no choice.
    Q_PROPERTY(QString axisNote READ axisNote NOTIFY refreshed)

public:
    using HistoryBacked::HistoryBacked;

    [[nodiscard]] bool any() const { return !tests_.isEmpty(); }
    [[nodiscard]] QString emptyNote() const;
    [[nodiscard]] QVariantList tests() const { return tests_; }
    [[nodiscard]] QString test() const { return test_; }
    void setTest(const QString& test);
    [[nodiscard]] QVariant plot() const { return plot_; }
    [[nodiscard]] QString spoken() const { return spoken_; }
    [[nodiscard]] QVariantList cylinders() const { return cylinders_; }
    [[nodiscard]] QVariantList picks() const;
    [[nodiscard]] QVariantList sinceRepair() const { return since_repair_; }
    [[nodiscard]] QVariantList reasons() const { return reasons_; }
    [[nodiscard]] QVariantList axes() const { return axes_; }
    [[nodiscard]] QString axis() const { return axis_; }
    void setAxis(const QString& axis);
    [[nodiscard]] QString axisNote() const { return axis_note_; }

protected:
    void think() override;
    void show() override;

private:
    struct Found {
        Dossier dossier;  ///< that the history points into
        compare::History history;
    };
    void add_cylinder(const compare::CylinderHistory& cylinder, TestKind test);
    /// Which axes there are, and the drawing along the one that is chosen.
    [[nodiscard]] bool waits() const;
    void draw(const report::Chart& chart);
    void add_note_on_doubt();

    QString test_;
    QString axis_ = QStringLiteral("time");
    QVariantList axes_;
    QString axis_note_;
    std::shared_ptr<Found> found_;
    QVariantList tests_, cylinders_, since_repair_, reasons_;
    QVariant plot_;
    QString spoken_;
};

}  // namespace lapwing

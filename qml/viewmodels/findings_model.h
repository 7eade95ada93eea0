// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QVariantList>

#include "core/compare/history.h"
#include "qml/viewmodels/explained_lines.h"
#include "qml/viewmodels/odds_backed.h"
#include "qml/viewmodels/step_place.h"

namespace lapwing {

/// The findings page: a plain sentence per cylinder first, then where it leaks, figures, rules of thumb,
/// questions; the engine as a whole; what to do next; and how each number was made.
class FindingsModel : public lapwing::OddsBacked {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(bool ready READ ready NOTIFY refreshed)
    Q_PROPERTY(QString headline READ headline NOTIFY refreshed)
    Q_PROPERTY(QString state READ state NOTIFY refreshed)
    Q_PROPERTY(QVariantList cylinders READ cylinders NOTIFY refreshed)
    Q_PROPERTY(QVariantList engineLines READ engineLines NOTIFY refreshed)
    Q_PROPERTY(QVariantList weakenedBy READ weakenedBy NOTIFY refreshed)
    Q_PROPERTY(QVariantList testersMissing READ testersMissing NOTIFY refreshed)
    Q_PROPERTY(QVariantList nextSteps READ nextSteps NOTIFY refreshed)
    Q_PROPERTY(QVariantList settling READ settling NOTIFY refreshed)
    Q_PROPERTY(QVariantList calls READ calls NOTIFY refreshed)
    Q_PROPERTY(QStringList oddsRestOn READ oddsRestOn NOTIFY refreshed)
    Q_PROPERTY(QString nextText READ nextText NOTIFY refreshed)
    Q_PROPERTY(QString nextPage READ nextPage NOTIFY refreshed)
    Q_PROPERTY(QVariantMap nextArgs READ nextArgs NOTIFY refreshed)

public:
    using OddsBacked::OddsBacked;

    [[nodiscard]] bool ready() const { return findings().has_value(); }
    [[nodiscard]] QString headline() const;
    [[nodiscard]] QString state() const;
    /// {number, name, state, headline, sinceRepair, figures, rules, questions, contradictions, exits, odds};
    /// each line is {mark, figure, text, from} with `from` an index for derivation(). `odds` as odds_map has
    /// it; empty until they are there and for a cylinder with nothing measured. `sinceRepair` is empty, or
    /// what comes back since a repair and the lines that say why.
    [[nodiscard]] QVariantList cylinders() const { return cylinders_; }
    [[nodiscard]] QVariantList engineLines() const { return engine_lines_; }
    [[nodiscard]] QVariantList weakenedBy() const { return weakened_by_; }
    /// {text, line}: tests whose tester nobody named; `line` is the one of the visit's page where it is
    /// named.
    [[nodiscard]] QVariantList testersMissing() const { return testers_missing_; }
    /// {title, text, page, args}
    [[nodiscard]] QVariantList nextSteps() const;
    /// {number, calls: {text, detail}, finding, same: whether one of the calls names what the findings do;
    /// absent where they don't come down on one} of the cylinders that were called before the findings were
    /// seen; after them, with number 0, what was called of the engine and other causes named since.
    [[nodiscard]] QVariantList calls() const;
    /// Tests beside those steps that would tell where it leaks, as tests_to_settle has them.
    [[nodiscard]] QVariantList settling() const;
    /// What the odds of the whole engine rest on, with the version of the working assumptions.
    [[nodiscard]] QStringList oddsRestOn() const;
    // The next test while one is outstanding, else the plan.
    [[nodiscard]] QString nextText() const;
    [[nodiscard]] QString nextPage() const { return nextPlace().page; }
    [[nodiscard]] QVariantMap nextArgs() const { return nextPlace().args; }

    Q_INVOKABLE QVariantList derivation(int from) const;

protected:
    void refresh() override;
    void sessionRead() override;

private:
    /// Looks at the engine's other visits, off the UI thread.
    void lookBack();
    QVariantList sinceRepairOf(int cylinder);
    QVariantMap line(const QString& mark, const QString& figure, const QString& text,
                     std::vector<findings::Derivation> from);
    QVariantMap remark(const findings::Remark& remark, const QString& symbol);
    QVariantList remarks(const std::vector<findings::Remark>& list, const QString& symbol);
    [[nodiscard]] StepPlace nextPlace() const;
    /// Those of the rules, by what the odds say of them once they are there.
    [[nodiscard]] std::vector<findings::NextStep> steps() const;
    QVariantList figuresOf(const findings::CylinderFindings& cylinder);

    QVariantList cylinders_;
    QVariantList engine_lines_;
    QVariantList weakened_by_;
    QVariantList testers_missing_;
    ExplainedLines explained_;
    std::vector<compare::CylinderSince> since_repair_;
    std::unique_ptr<workflow::Background> historian_;
};

}  // namespace lapwing

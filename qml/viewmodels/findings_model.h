// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QVariantList>

#include "qml/viewmodels/session_backed.h"

namespace lapwing {

/// The findings page: a plain sentence per cylinder first, then figures, rules of thumb, questions; the
/// engine as a whole; and how each number was made.
class FindingsModel : public lapwing::SessionBacked {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(bool ready READ ready NOTIFY refreshed)
    Q_PROPERTY(QString headline READ headline NOTIFY refreshed)
    Q_PROPERTY(QString state READ state NOTIFY refreshed)
    Q_PROPERTY(QVariantList cylinders READ cylinders NOTIFY refreshed)
    Q_PROPERTY(QVariantList engineLines READ engineLines NOTIFY refreshed)
    Q_PROPERTY(QVariantList weakenedBy READ weakenedBy NOTIFY refreshed)
    Q_PROPERTY(QVariantList nextSteps READ nextSteps NOTIFY refreshed)

public:
    using SessionBacked::SessionBacked;

    [[nodiscard]] bool ready() const { return findings().has_value(); }
    [[nodiscard]] QString headline() const;
    [[nodiscard]] QString state() const;
    /// {number, name, state, headline, figures, rules, questions, contradictions, exits}; each line is
    /// {mark, figure, text, from} with `from` an index for derivation().
    [[nodiscard]] QVariantList cylinders() const { return cylinders_; }
    [[nodiscard]] QVariantList engineLines() const { return engine_lines_; }
    [[nodiscard]] QVariantList weakenedBy() const { return weakened_by_; }
    [[nodiscard]] QVariantList nextSteps() const;

    Q_INVOKABLE QVariantList derivation(int from) const;

protected:
    void refresh() override;

private:
    QVariantMap line(const QString& mark, const QString& figure, const QString& text,
                     std::vector<findings::Derivation> from);
    QVariantMap remark(const findings::Remark& remark, const QString& symbol);
    QVariantList remarks(const std::vector<findings::Remark>& list, const QString& symbol);
    QVariantList figuresOf(const findings::CylinderFindings& cylinder);

    QVariantList cylinders_;
    QVariantList engine_lines_;
    QVariantList weakened_by_;
    std::vector<std::vector<findings::Derivation>> derivations_;
};

}  // namespace lapwing

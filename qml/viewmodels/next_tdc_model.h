// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QVariantList>
#include <optional>

#include "core/calculators/calculators.h"
#include "qml/viewmodels/session_backed.h"

namespace lapwing {

/// Next TDC: how far to turn from one cylinder's compression TDC to the others', and what the air will push
/// with.
class NextTdcModel : public lapwing::SessionBacked {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(int from READ from WRITE setFrom NOTIFY refreshed)
    Q_PROPERTY(int target READ target WRITE setTarget NOTIFY refreshed)
    Q_PROPERTY(QVariantList choices READ choices NOTIFY refreshed)
    Q_PROPERTY(QString turnText READ turnText NOTIFY refreshed)
    Q_PROPERTY(QString problem READ problem NOTIFY refreshed)
    Q_PROPERTY(QString missingLine READ missingLine NOTIFY refreshed)
    Q_PROPERTY(QVariantList torqueLines READ torqueLines NOTIFY refreshed)
    Q_PROPERTY(QStringList cautions READ cautions NOTIFY refreshed)
    Q_PROPERTY(QStringList whichTdc READ whichTdc NOTIFY refreshed)

public:
    using SessionBacked::SessionBacked;

    /// The cylinder that stands at its compression TDC now: the last one turned to from here or measured with
    /// air, unless chosen; the first one before that, which nothing tells.
    [[nodiscard]] int from() const;
    void setFrom(int cylinder);
    [[nodiscard]] int target() const;
    void setTarget(int cylinder);
    /// {number, name, turn: "270°", next: bool} in firing order from `from`
    [[nodiscard]] QVariantList choices() const;
    [[nodiscard]] QString turnText() const;
    /// Why no angle can be given, and what to do; empty when it can.
    [[nodiscard]] QString problem() const;
    /// The line of the engine card that the angle hangs on.
    [[nodiscard]] QString missingLine() const;
    /// {figure, text, from: place of its derivation, -1 for none}
    [[nodiscard]] QVariantList torqueLines() const;
    [[nodiscard]] QStringList cautions() const;
    /// How the right TDC is known: its heading, and the words.
    [[nodiscard]] QStringList whichTdc() const;
    /// The crank was turned to `target`.
    Q_INVOKABLE void turned();
    /// How a torque line's figures are made.
    Q_INVOKABLE QVariantList derivation(int from) const;

protected:
    [[nodiscard]] bool wantsFindings() const override { return false; }

private:
    [[nodiscard]] QString draftKey() const;
    /// Where the crank was left, as far as anything here tells.
    [[nodiscard]] std::optional<int> lastKnown() const;
    /// What this tester's air does to the crank so many degrees from TDC.
    [[nodiscard]] Result<calculators::Answer> holding(const std::string& degrees) const;

    int from_ = 0;
    int target_ = 0;
};

/// Crank degrees in the running direction from one cylinder's compression TDC to another's.
Result<double> turn_between(const Engine& engine, int from, int to);

/// The cylinder after this one in the firing order; 0 when the order is not known.
int next_in_firing_order(const Engine& engine, int cylinder);

}  // namespace lapwing

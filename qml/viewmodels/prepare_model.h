// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QVariantList>
#include <vector>

#include "qml/viewmodels/session_backed.h"

namespace lapwing {

/// The list of Prepare: each step with its reason. A list, not a gate; what was not done is recorded too.
class PrepareModel : public lapwing::SessionBacked {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QVariantList steps READ steps NOTIFY refreshed)
    Q_PROPERTY(QString progress READ progress NOTIFY refreshed)
    Q_PROPERTY(int open READ open NOTIFY refreshed)
    Q_PROPERTY(bool restToSay READ restToSay NOTIFY refreshed)
    Q_PROPERTY(QString heat READ heat NOTIFY refreshed)
    Q_PROPERTY(QVariantList heats READ heats NOTIFY refreshed)
    Q_PROPERTY(QVariantList cautions READ cautions NOTIFY refreshed)

public:
    using SessionBacked::SessionBacked;

    /// {key, name, reason, ifNotDone, state: "open" | "done" | "not done" | "not needed", note}
    [[nodiscard]] QVariantList steps() const { return steps_; }
    [[nodiscard]] QString progress() const;
    [[nodiscard]] int open() const;  ///< steps without an answer
    /// {text, apart}; `apart` is one that this engine's card gives no reason for: folded, below the others.
    [[nodiscard]] QVariantList cautions() const;

    /// "cold", "warm" or "unknown": what answers the step "temperature noted".
    [[nodiscard]] QString heat() const;
    [[nodiscard]] QVariantList heats() const;  ///< {value, text}
    /// Notes it; what is noted already is taken away.
    Q_INVOKABLE void noteHeat(const QString& heat);

    Q_INVOKABLE void mark(const QString& step, const QString& state);
    /// Whether some steps are answered and `restIsDone` has others left to answer.
    [[nodiscard]] bool restToSay() const;
    /// All that is still open is done, but for two. Warm or cold stays open until somebody says which. Oil in
    /// the bores that nobody ticked would spoil dry readings on paper: of an engine that did not stand it is
    /// not needed, of one that did it stays open.
    Q_INVOKABLE void restIsDone();

protected:
    void refresh() override;
    [[nodiscard]] bool wantsFindings() const override { return false; }

private:
    [[nodiscard]] StepState answer(PrepareStep step) const;
    [[nodiscard]] std::vector<PrepareMark> rest() const;

    QVariantList steps_;
};

}  // namespace lapwing

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "qml/viewmodels/card_form.h"

namespace lapwing {

/// One line of the plan: what is done, on which cylinder, parts, hours, price, why, what happens if it is
/// left, and the reading to expect.
class PlanLineForm : public lapwing::CardForm {
    Q_OBJECT
    QML_ELEMENT

public:
    using CardForm::CardForm;

protected:
    bool read() override;
    void refresh() override;
    Status take(const QString& key, const FormEntry& entry) override;
    [[nodiscard]] bool concerns(const workflow::Change& change) const override;
    [[nodiscard]] QString draftRoom() const override { return QStringLiteral("plan/") + recordId(); }
    [[nodiscard]] std::optional<workflow::Intent> removal() const override;

private:
    [[nodiscard]] QString currency() const;

    PlanLine line_;
    Engine engine_;
};

}  // namespace lapwing

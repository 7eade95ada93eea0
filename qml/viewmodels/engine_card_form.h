// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/workflow/engines.h"
#include "qml/viewmodels/card_form.h"

namespace lapwing {

/// The Engine card: its lines, the layout picture and the engine's sessions.
class EngineCardForm : public lapwing::CardForm {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString name READ name NOTIFY reset)
    Q_PROPERTY(QString subtitle READ subtitle NOTIFY reset)
    Q_PROPERTY(QStringList tags READ tags NOTIFY reset)
    Q_PROPERTY(bool banked READ banked NOTIFY reset)
    Q_PROPERTY(QVariantList cylinders READ cylinders NOTIFY reset)
    Q_PROPERTY(QVariantList visits READ sessionList NOTIFY reset)

public:
    using CardForm::CardForm;

    [[nodiscard]] QString name() const;
    [[nodiscard]] QString subtitle() const;  ///< "4 cylinders, in-line, petrol"
    [[nodiscard]] QStringList tags() const;
    [[nodiscard]] bool banked() const;  ///< V or flat
    /// The layout picture: {index, number, name, bank, row, column} of every cylinder.
    [[nodiscard]] QVariantList cylinders() const;
    /// Newest first: {sessionId, text, detail}.
    [[nodiscard]] QVariantList sessionList() const;

    /// Two cylinders change places on the layout picture.
    Q_INVOKABLE void swapCylinders(int a, int b);
    /// Takes number, name and bank of one cylinder. Empty when taken, or what is wrong.
    Q_INVOKABLE QString changeCylinder(int index, const QString& number, const QString& name, int bank);

protected:
    bool read() override;
    void refresh() override;
    Status take(const QString& key, const FormEntry& entry) override;
    [[nodiscard]] bool concerns(const workflow::Change& change) const override;
    [[nodiscard]] QString draftRoom() const override { return QStringLiteral("engine/") + recordId(); }
    /// With all its sessions; Undo brings everything back.
    [[nodiscard]] std::optional<workflow::Intent> removal() const override {
        return workflow::remove_engine(engine_.id);
    }

private:
    Status keep(Engine changed);

    Engine engine_;
    std::vector<Session> sessions_;
};

}  // namespace lapwing

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/workflow/testers.h"
#include "qml/viewmodels/card_form.h"

namespace lapwing {

/// The Tester card, line by line, and its self-checks.
class TesterCardForm : public lapwing::CardForm {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString name READ name NOTIFY reset)
    Q_PROPERTY(QString kindName READ kindName NOTIFY reset)
    Q_PROPERTY(QVariantList checks READ checks NOTIFY reset)
    Q_PROPERTY(QString unit READ unit NOTIFY reset)
    Q_PROPERTY(int uses READ uses NOTIFY reset)

public:
    using CardForm::CardForm;

    [[nodiscard]] QString name() const;
    [[nodiscard]] QString kindName() const;
    /// Self-checks that this kind of tester has, as maps: kind, title, instruction, last (a sentence), state
    /// ("good", "fault" or "none"), asks (a list of "set", "shown", "hole").
    [[nodiscard]] QVariantList checks() const;
    /// File symbol of the unit that the dial is written in.
    [[nodiscard]] QString unit() const;

    /// Sessions and readings that were taken with it: while there are any it can't be deleted.
    [[nodiscard]] int uses() const { return uses_; }

    /// What such figures come to: {text, passes}; empty while there is nothing to say.
    Q_INVOKABLE QVariantMap checkSays(const QString& kind, const QVariantMap& typed) const;
    /// Records one self-check: {set, shown, hole, note} as typed, pressures in the dial's unit, the hole in
    /// mm. Empty when it was taken, or what is wrong.
    Q_INVOKABLE QString keepCheck(const QString& kind, bool passed, const QVariantMap& typed);

protected:
    bool read() override;
    void refresh() override;
    Status take(const QString& key, const FormEntry& entry) override;
    [[nodiscard]] bool concerns(const workflow::Change& change) const override;
    [[nodiscard]] QString draftRoom() const override { return QStringLiteral("tester/") + recordId(); }
    /// Refused while a session names it.
    [[nodiscard]] std::optional<workflow::Intent> removal() const override {
        return workflow::remove_tester(tester_.id);
    }

private:
    Tester tester_;
    int uses_ = 0;
};

}  // namespace lapwing

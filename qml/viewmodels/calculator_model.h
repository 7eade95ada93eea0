// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/calculators/calculators.h"
#include "qml/viewmodels/card_form.h"

namespace lapwing {

/// The calculators there are.
class CalculatorList : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QVariantList calculators READ calculators CONSTANT)

public:
    using QObject::QObject;

    /// {calculator, title, text}
    [[nodiscard]] QVariantList calculators() const;
};

/// One calculator: a form over its worksheet, and what comes out. `recordId` is the calculator's word. Opened
/// from a session, or for an engine, the sheet is filled from it; what was typed is kept and laid over it the
/// next time.
class CalculatorModel : public lapwing::CardForm {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString sessionId READ sessionId WRITE setSessionId NOTIFY sessionIdChanged)
    Q_PROPERTY(QString engineId READ engineId WRITE setEngineId NOTIFY sessionIdChanged)
    Q_PROPERTY(QString title READ title NOTIFY reset)
    Q_PROPERTY(QString purpose READ purpose NOTIFY reset)
    Q_PROPERTY(QVariantList results READ results NOTIFY reset)
    Q_PROPERTY(QString problem READ problem NOTIFY reset)
    Q_PROPERTY(QStringList cautions READ cautions NOTIFY reset)
    Q_PROPERTY(bool attachable READ attachable NOTIFY reset)

public:
    using CardForm::CardForm;

    [[nodiscard]] QString sessionId() const { return session_id_; }
    void setSessionId(const QString& id);
    /// Without a session: the engine whose card fills the sheet; empty for none.
    [[nodiscard]] QString engineId() const { return engine_id_; }
    void setEngineId(const QString& id);
    [[nodiscard]] QString title() const;
    [[nodiscard]] QString purpose() const;
    /// {name, value, doubt, from}: the first is the result; `from` is an index for derivation(), -1 for none.
    [[nodiscard]] QVariantList results() const;
    /// What is still to be typed or can't be; empty when there is a result.
    [[nodiscard]] QString problem() const;
    [[nodiscard]] QStringList cautions() const;
    [[nodiscard]] bool attachable() const { return !session_id_.isEmpty() && answer_.has_value(); }

    Q_INVOKABLE QVariantList derivation(int from) const;
    /// Keeps the result in the session as a remark, with what went in written out.
    Q_INVOKABLE void attach();
    /// Forgets what was typed here.
    Q_INVOKABLE void startAgain();

signals:
    void sessionIdChanged();
    void attached();

protected:
    bool read() override;
    void refresh() override;
    Status take(const QString& key, const FormEntry& entry) override;
    [[nodiscard]] bool concerns(const workflow::Change&) const override { return false; }
    [[nodiscard]] QString draftRoom() const override;

private:
    [[nodiscard]] QString keptKey(const QString& key) const { return QStringLiteral("kept/") + key; }
    void layKeptOver();
    [[nodiscard]] QString valueOf(const calculators::Line& line) const;
    [[nodiscard]] QString remark() const;

    QString session_id_;
    QString engine_id_;
    calculators::Calculator calculator_ = calculators::Calculator::leakage;
    calculators::Worksheet sheet_;
    Result<calculators::Answer> answer_;
};

}  // namespace lapwing

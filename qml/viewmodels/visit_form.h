// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "qml/viewmodels/card_form.h"

namespace lapwing {

/// What a session says about the visit itself: complaint, conditions, how it was cranked, testers used.
class VisitForm : public lapwing::CardForm {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString engineName READ engineName NOTIFY reset)
    Q_PROPERTY(QString visitLine READ visitLine NOTIFY reset)

public:
    using CardForm::CardForm;

    [[nodiscard]] QString engineName() const;
    [[nodiscard]] QString visitLine() const;  ///< "As found · 14 March 2026"

protected:
    bool read() override;
    void refresh() override;
    Status take(const QString& key, const FormEntry& entry) override;
    [[nodiscard]] bool concerns(const workflow::Change& change) const override;
    [[nodiscard]] QString draftRoom() const override { return QStringLiteral("visit/") + recordId(); }

private:
    Session session_;
    std::string engine_name_;
    StrokeCycle cycle_ = StrokeCycle::four;
    std::vector<Tester> testers_;
};

}  // namespace lapwing

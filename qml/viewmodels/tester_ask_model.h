// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/workflow/sessions.h"
#include "qml/viewmodels/session_backed.h"

namespace lapwing {

/// "Which gauge?": asked once of an engine and a kind of tester, before the first reading, while the session
/// names none.
class TesterAskModel : public lapwing::SessionBacked {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString test MEMBER test_ NOTIFY testChanged REQUIRED)
    Q_PROPERTY(bool wanted READ wanted NOTIFY refreshed)
    Q_PROPERTY(QString kind READ kind NOTIFY refreshed)
    Q_PROPERTY(QVariantList choices READ choices NOTIFY refreshed)

public:
    using SessionBacked::SessionBacked;

    [[nodiscard]] bool wanted() const;
    [[nodiscard]] QString kind() const;          ///< of the tester that this test takes
    [[nodiscard]] QVariantList choices() const;  ///< {value, text, detail} of the shop's testers of that kind

    Q_INVOKABLE void choose(const QString& testerId);
    /// It is not asked again.
    Q_INVOKABLE void notNow();

signals:
    void testChanged();

protected:
    [[nodiscard]] bool wantsFindings() const override { return false; }

private:
    [[nodiscard]] workflow::TesterUse use() const;
    [[nodiscard]] TesterKind wantedKind() const;
    [[nodiscard]] QString key() const;

    QString test_;
};

}  // namespace lapwing

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "qml/viewmodels/session_backed.h"

namespace lapwing {

/// What photos and voice notes of one thing have in common: the thing they hang on. Pages hand it on as
/// `to` (the model's word, "reading"), `record`, `cylinder` and `finding`; without `to` it is the whole
/// session.
class EvidenceBacked : public lapwing::SessionBacked {
    Q_OBJECT
    QML_ANONYMOUS
    Q_PROPERTY(QString to MEMBER to_ NOTIFY tieChanged)
    Q_PROPERTY(QString record MEMBER record_ NOTIFY tieChanged)
    Q_PROPERTY(int cylinder MEMBER cylinder_ NOTIFY tieChanged)
    Q_PROPERTY(QString finding MEMBER finding_ NOTIFY tieChanged)
    Q_PROPERTY(QString place READ place NOTIFY refreshed)

public:
    explicit EvidenceBacked(QObject* parent = nullptr);

    /// "Dry test, cylinder 2"
    [[nodiscard]] QString place() const { return placeOf(tie()); }

signals:
    void tieChanged();

protected:
    [[nodiscard]] bool wantsFindings() const override { return false; }
    [[nodiscard]] Tie tie() const;
    [[nodiscard]] QString placeOf(const Tie& tie) const;
    [[nodiscard]] const Attachment* attachment(const QString& id) const;
    /// The stored file as the screen's pictures name it; empty when it is gone.
    [[nodiscard]] QString urlOf(const Attachment& attachment) const;
    /// {id, kind: "photo" or "voice note", file, title, detail, seconds, length, reading}; `file` is empty
    /// when it is missing.
    [[nodiscard]] QVariantMap itemOf(const Attachment& attachment) const;

private:
    QString to_;
    QString record_;
    int cylinder_ = 0;
    QString finding_;
};

}  // namespace lapwing

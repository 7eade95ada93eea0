// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QStringList>
#include <QVariantList>
#include <set>

#include "qml/viewmodels/hand_over_files.h"
#include "qml/viewmodels/session_backed.h"

namespace lapwing {

/// Hand over: the report for the owner, the session file for the mentor, the readings as a table.
class HandOverModel : public lapwing::SessionBacked {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QVariantList visits READ visits NOTIFY refreshed)
    Q_PROPERTY(bool withOwner READ withOwner WRITE setWithOwner NOTIFY refreshed)
    Q_PROPERTY(bool appendix MEMBER appendix_ NOTIFY appendixChanged)
    Q_PROPERTY(bool busy READ busy NOTIFY busyChanged)
    Q_PROPERTY(QVariantList made READ made NOTIFY madeChanged)
    Q_PROPERTY(bool canShare READ canShare NOTIFY refreshed)
    Q_PROPERTY(QString shareText READ shareText NOTIFY refreshed)
    Q_PROPERTY(QString fingerprint READ fingerprint NOTIFY madeChanged)
    Q_PROPERTY(bool beforeCall READ beforeCall NOTIFY refreshed)

public:
    using SessionBacked::SessionBacked;

    /// {id, title, date, chosen}, newest first
    [[nodiscard]] QVariantList visits() const;
    [[nodiscard]] bool withOwner() const { return with_owner_; }
    void setWithOwner(bool with);
    [[nodiscard]] bool busy() const { return busy_; }
    /// Files written since the page opened: {kind, name, place, path, gaps: what is not in it, or empty;
    /// whereabouts: photos in it that tell where they were taken, or empty}
    [[nodiscard]] QVariantList made() const { return made_; }
    [[nodiscard]] bool canShare() const;
    [[nodiscard]] QString shareText() const;
    /// Of the key that session files are signed with; empty before the first one.
    [[nodiscard]] QString fingerprint() const;
    /// The person's own call comes first, and a report would show the findings.
    [[nodiscard]] bool beforeCall() const;

    Q_INVOKABLE void toggleVisit(const QString& id);
    /// Writes "report", "session" or "table" into the documents folder, off the UI thread.
    Q_INVOKABLE void make(const QString& kind);
    /// Lets copies without their place stand in for photos that tell where they were taken, and writes the
    /// session file anew.
    Q_INVOKABLE void takePlacesOff();
    Q_INVOKABLE void share(int made);
    Q_INVOKABLE void saveCopy(int made);

signals:
    void appendixChanged();
    void busyChanged();
    void madeChanged();

protected:
    [[nodiscard]] bool wantsFindings() const override { return false; }

private:
    [[nodiscard]] bool chosen(SessionId id) const;
    [[nodiscard]] workflow::HandOver chosenVisits() const;
    void setBusy(bool busy);
    void finish(HandOverKind kind, const Result<HandedOver>& written);

    std::set<SessionId> left_out_;
    bool appendix_ = false;  ///< the report, with formulas and sources
    bool with_owner_ = false;
    bool busy_ = false;
    QVariantList made_;
    workflow::Background writer_;
};

}  // namespace lapwing

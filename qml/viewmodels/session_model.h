// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QVariantList>

#include "qml/viewmodels/session_backed.h"
#include "qml/viewmodels/step_place.h"

namespace lapwing {

/// The session page: a tile a test with how far it is and what it shows, and what is worth doing next.
class SessionModel : public lapwing::SessionBacked {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QVariantList tiles READ tiles NOTIFY refreshed)
    Q_PROPERTY(QString nextText READ nextText NOTIFY refreshed)
    Q_PROPERTY(QString nextReason READ nextReason NOTIFY refreshed)
    Q_PROPERTY(QString nextPage READ nextPage NOTIFY refreshed)
    Q_PROPERTY(QVariantMap nextArgs READ nextArgs NOTIFY refreshed)
    Q_PROPERTY(QString nextCard READ nextCard NOTIFY refreshed)
    Q_PROPERTY(QStringList cautions READ cautions NOTIFY refreshed)
    Q_PROPERTY(QStringList remarks READ remarks NOTIFY refreshed)
    Q_PROPERTY(QStringList circumstances READ circumstances NOTIFY refreshed)

public:
    using SessionBacked::SessionBacked;

    /// {key, title, text, state, bores, page, args}
    [[nodiscard]] QVariantList tiles() const { return tiles_; }
    [[nodiscard]] QString nextText() const;
    [[nodiscard]] QString nextReason() const;
    [[nodiscard]] QString nextPage() const;
    [[nodiscard]] QVariantMap nextArgs() const;
    /// Id of the How to card of what is worth doing next.
    [[nodiscard]] QString nextCard() const;
    [[nodiscard]] QStringList cautions() const;
    /// Notes on the session itself, oldest first.
    [[nodiscard]] QStringList remarks() const;
    /// What throttle, battery, cold, hose and valve core do to the readings, with its size.
    [[nodiscard]] QStringList circumstances() const;

    Q_INVOKABLE void removeSession();

    /// Odds may have become known while another page was on top.
    Q_INVOKABLE void lookAgain();

protected:
    void refresh() override;

private:
    [[nodiscard]] QVariantMap visitTile() const;
    [[nodiscard]] QVariantMap prepareTile() const;
    [[nodiscard]] QVariantMap clearancesTile() const;
    [[nodiscard]] QVariantMap testTile(TestKind test) const;
    [[nodiscard]] QVariantMap exitsTile() const;
    [[nodiscard]] QVariantMap crankcaseTile() const;
    [[nodiscard]] QVariantMap findingsTile() const;
    [[nodiscard]] QVariantMap planTile() const;
    [[nodiscard]] QVariantList bores(TestKind test) const;
    [[nodiscard]] const findings::NextStep* next() const;
    [[nodiscard]] StepPlace nextPlace() const;
    /// As the findings page has it: the most telling test first where the odds are known already.
    [[nodiscard]] std::vector<findings::NextStep> steps() const;

    QVariantList tiles_;
    std::vector<findings::NextStep> steps_;
};

}  // namespace lapwing

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QVariantList>

#include "qml/viewmodels/explained_lines.h"
#include "qml/viewmodels/session_backed.h"
#include "qml/viewmodels/step_place.h"

namespace lapwing {

/// The session page: a tile a test with how far it is and what it shows, and what is worth doing next.
class SessionModel : public lapwing::SessionBacked {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QVariantList tiles READ tiles NOTIFY refreshed)
    /// Whether there is another session of this engine to hold it against.
    Q_PROPERTY(bool hasOthers READ hasOthers NOTIFY refreshed)
    Q_PROPERTY(QString nextText READ nextText NOTIFY refreshed)
    Q_PROPERTY(QString nextReason READ nextReason NOTIFY refreshed)
    Q_PROPERTY(QString nextPage READ nextPage NOTIFY refreshed)
    Q_PROPERTY(QVariantMap nextArgs READ nextArgs NOTIFY refreshed)
    Q_PROPERTY(QString nextCard READ nextCard NOTIFY refreshed)
    Q_PROPERTY(QStringList cautions READ cautions NOTIFY refreshed)
    Q_PROPERTY(QStringList remarks READ remarks NOTIFY refreshed)
    Q_PROPERTY(QVariantList circumstances READ circumstances NOTIFY refreshed)

public:
    using SessionBacked::SessionBacked;

    /// {key, title, text, state, bores, page, args, figures: what was measured, in a line, lines: the same
    /// one by one, {mark, figure, text, from}, each with what derivation() tells of it}
    [[nodiscard]] QVariantList tiles() const { return tiles_; }
    [[nodiscard]] bool hasOthers() const;
    [[nodiscard]] QString nextText() const;
    [[nodiscard]] QString nextReason() const;
    [[nodiscard]] QString nextPage() const;
    [[nodiscard]] QVariantMap nextArgs() const;
    /// Id of the How to card of what is worth doing next.
    [[nodiscard]] QString nextCard() const;
    [[nodiscard]] QStringList cautions() const;
    /// Notes on the session itself, oldest first.
    [[nodiscard]] QStringList remarks() const;
    /// What throttle, battery, cold, hose and valve core do to the readings, with its size: lines as those of
    /// a tile.
    [[nodiscard]] QVariantList circumstances() const { return circumstances_; }
    Q_INVOKABLE QVariantList derivation(int from) const { return explained_.derivation(from, format()); }

    Q_INVOKABLE void removeSession();

    /// Odds may have become known while another page was on top.
    Q_INVOKABLE void lookAgain();

protected:
    void refresh() override;

private:
    [[nodiscard]] QVariantMap visitTile() const;
    [[nodiscard]] QVariantMap prepareTile() const;
    [[nodiscard]] QVariantMap clearancesTile() const;
    [[nodiscard]] QVariantMap testTile(TestKind test);
    /// What was measured in that test, and what it is held against.
    QVariantList figuresOf(TestKind test);
    /// The figure that stands for a cylinder in a test; null where it wasn't measured.
    static const findings::Derived* shownOf(const findings::CylinderFindings& cylinder, TestKind test);
    void addSpread(QVariantMap& tile);
    [[nodiscard]] QVariantMap exitsTile() const;
    [[nodiscard]] QVariantMap crankcaseTile();
    [[nodiscard]] QVariantMap findingsTile();
    [[nodiscard]] QVariantMap planTile() const;
    [[nodiscard]] QVariantList bores(TestKind test) const;
    [[nodiscard]] const findings::NextStep* next() const;
    [[nodiscard]] StepPlace nextPlace() const;
    /// As the findings page has it: the most telling test first where the odds are known already.
    [[nodiscard]] std::vector<findings::NextStep> steps() const;

    QVariantList tiles_;
    QVariantList circumstances_;
    ExplainedLines explained_;
    std::vector<findings::NextStep> steps_;
};

}  // namespace lapwing

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/odds/where_it_leaks.h"
#include "qml/viewmodels/session_backed.h"

namespace lapwing {

/// A page of one session that shows where it leaks. The odds take up to a second or so: they are worked out
/// on a thread of their own, given up when the evidence changes again, and arrive after the findings.
class OddsBacked : public lapwing::SessionBacked {
    Q_OBJECT
    QML_ANONYMOUS
    /// "none" (nothing was measured), "working", "ready" or "failed" (`oddsTrouble` says why).
    Q_PROPERTY(QString oddsState READ oddsState NOTIFY refreshed)
    Q_PROPERTY(QString oddsTrouble READ oddsTrouble NOTIFY refreshed)

public:
    using SessionBacked::SessionBacked;

    [[nodiscard]] QString oddsState() const;
    [[nodiscard]] QString oddsTrouble() const;

protected:
    /// The odds of the evidence as it is now; null while they are being worked out.
    [[nodiscard]] const odds::WhereItLeaks* leaks() const;
    /// Of one cylinder, where something was measured on it.
    [[nodiscard]] const odds::CylinderOdds* leaks(int cylinder) const;
    void sessionRead() override;

private:
    void workOut();
    void deliver(int asked, Result<odds::WhereItLeaks> result);

    Dossier evidence_;  ///< what the odds were asked for; plan, notes and the owner's answer left out
    int asked_ = 0;     ///< counts the questions: an answer to an older one is not shown
    std::optional<Result<std::shared_ptr<const odds::WhereItLeaks>>> odds_;
    std::unique_ptr<workflow::Background> thinker_;
};

}  // namespace lapwing

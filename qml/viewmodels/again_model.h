// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/workflow/sessions.h"
#include "qml/viewmodels/again.h"
#include "qml/viewmodels/session_backed.h"

namespace lapwing {

/// "Before you test": throttle and heat are looked at, and the test goes into a session of its own, or into
/// the one that is open for it already.
class AgainModel : public lapwing::SessionBacked {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString test READ test WRITE setTest NOTIFY testChanged REQUIRED)
    Q_PROPERTY(int cylinder MEMBER cylinder_ NOTIFY testChanged)
    /// The test under other conditions than this session's, whatever was measured in it.
    Q_PROPERTY(bool other MEMBER other_ NOTIFY testChanged)
    Q_PROPERTY(QString title READ title NOTIFY refreshed)
    Q_PROPERTY(QString why READ why NOTIFY refreshed)
    Q_PROPERTY(bool asksThrottle READ asksThrottle NOTIFY refreshed)
    Q_PROPERTY(bool asksHeat READ asksHeat NOTIFY refreshed)
    Q_PROPERTY(bool throttleOpen READ throttleOpen WRITE setThrottleOpen NOTIFY refreshed)
    Q_PROPERTY(bool warm READ warm WRITE setWarm NOTIFY refreshed)
    Q_PROPERTY(QString throttleBefore READ throttleBefore NOTIFY refreshed)
    Q_PROPERTY(QString heatBefore READ heatBefore NOTIFY refreshed)
    Q_PROPERTY(QString startText READ startText NOTIFY refreshed)

public:
    using SessionBacked::SessionBacked;

    [[nodiscard]] QString test() const { return QString::fromUtf8(word(test_).data()); }
    void setTest(const QString& word);
    [[nodiscard]] QString title() const;
    [[nodiscard]] QString why() const;
    [[nodiscard]] bool asksThrottle() const;
    [[nodiscard]] bool asksHeat() const;
    [[nodiscard]] bool throttleOpen() const { return start_.throttle == Throttle::held_open; }
    void setThrottleOpen(bool open);
    [[nodiscard]] bool warm() const { return start_.heat == EngineHeat::warm; }
    void setWarm(bool warm);
    /// How it stood in the session before: "before: closed"; empty when nobody noted it.
    [[nodiscard]] QString throttleBefore() const;
    [[nodiscard]] QString heatBefore() const;
    [[nodiscard]] QString startText() const;

    /// Opens the session, or notes the conditions in the one that is open; `started` follows once it is
    /// stored. Digits typed for this test and not kept go along.
    Q_INVOKABLE void start();

signals:
    void testChanged();
    void started(const QString& sessionId);

protected:
    void refresh() override;
    [[nodiscard]] bool wantsFindings() const override { return false; }

private:
    [[nodiscard]] QString before(const QString& name) const;
    void takeDigitsTo(SessionId session);

    TestKind test_ = TestKind::dry;
    int cylinder_ = 0;
    bool other_ = false;
    Again where_;
    std::optional<Session> open_;  ///< the one that is open for it
    workflow::Start start_;
    bool looked_ = false;
    bool starting_ = false;
};

}  // namespace lapwing

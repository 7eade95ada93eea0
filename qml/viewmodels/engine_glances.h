// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QHash>
#include <QObject>
#include <QThreadPool>
#include <QVariant>
#include <vector>

#include "core/findings/findings.h"
#include "core/workflow/desk.h"

namespace lapwing {

/// What a card of the list says of an engine's cylinders: of each what was last measured of it, whichever
/// visit that was at. A new visit's first reading makes no fault of an earlier one forgotten.
struct EngineGlance {
    /// What one visit says of one cylinder that no later one has measured again, or of the engine as a whole.
    struct Word {
        SessionId session;
        int cylinder = 0;  ///< 0: the engine as a whole
        findings::State state = findings::State::none;
    };

    QVariantList bores;  ///< for BoreRow, with "earlier" and "session"; empty above six cylinders
    QString line;        ///< "14 in range, 2 fault"; empty up to six
    QString state = QStringLiteral("none");
    bool earlier = false;              ///< the state is that of an earlier visit than the newest measured one
    std::optional<SessionId> session;  ///< that newest one; without it nothing was looked into
    std::vector<Word> words;           ///< what the state is the worst of
    std::vector<SessionId> sessions;   ///< every visit that something here is from

    /// Of an engine whose readings were not looked into.
    static EngineGlance blank(int cylinders);
    /// The same without what those sessions say: bores as they were measured, and nothing of what they mean.
    [[nodiscard]] EngineGlance without(const std::vector<SessionId>& hidden, const QString& key,
                                       int cylinders) const;
};

/// Works glances out off the UI thread, one engine after the other, and keeps them until told that something
/// changed.
class EngineGlances : public QObject {
    Q_OBJECT

public:
    EngineGlances(const workflow::Desk& desk, const findings::Reference& reference, QObject* parent);
    ~EngineGlances() override;

    /// What is known; a blank one until `ready` says otherwise.
    EngineGlance of(const workflow::EngineSummary& summary);
    void forget(const workflow::Change& change);

signals:
    void ready(const QString& engineId);

private:
    void ask(const workflow::EngineSummary& summary, const QString& id);

    const workflow::Desk& desk_;
    const findings::Reference& reference_;
    QHash<QString, EngineGlance> known_;
    QHash<QString, int> asked_;  ///< id to the change count when it was asked for
    int changes_ = 0;            ///< an answer from before a change is dropped
    QThreadPool pool_;
};

}  // namespace lapwing

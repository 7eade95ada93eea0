// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QHash>
#include <QObject>
#include <QThreadPool>
#include <QVariant>

#include "core/findings/findings.h"
#include "core/workflow/desk.h"

namespace lapwing {

/// What a card of the list says of an engine's cylinders, from the last session in which something was
/// measured.
struct EngineGlance {
    QVariantList bores;  ///< for BoreRow; empty above six cylinders
    QString line;        ///< "14 in range, 2 fault"; empty up to six
    QString state = QStringLiteral("none");
    SessionId session;                        ///< the one that it is from
    QString before = QStringLiteral("none");  ///< state of the one before that

    /// Of an engine whose readings were not looked into.
    static EngineGlance blank(int cylinders);
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

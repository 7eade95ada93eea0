// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QVariantList>

#include "qml/viewmodels/session_backed.h"

namespace lapwing {

/// Whether verdicts on this visit are kept back: the person wants to call before they see any, no call of
/// theirs is committed yet, and they did not skip it.
bool verdicts_wait(const AppContext& app, const Visit& visit);
/// The same, and there is something to judge.
bool call_wanted(const AppContext& app, const Visit& visit);
/// Notes that a report with the findings was written before the call; the call will say so.
void note_report_before_call(AppContext& app, const Session& session);

/// State of what was measured and must not be judged yet, for the components.
inline const QString not_judged_yet = QStringLiteral("waiting");

/// "My call": where each measured cylinder leaks in the person's own view, committed before the findings are
/// shown. What is chosen and not yet committed survives; a committed call stands.
class MyCallModel : public lapwing::SessionBacked {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(bool wanted READ wanted NOTIFY refreshed)
    Q_PROPERTY(bool complete READ complete NOTIFY refreshed)
    Q_PROPERTY(bool reported READ reported NOTIFY refreshed)
    Q_PROPERTY(QVariantList cylinders READ cylinders NOTIFY refreshed)
    Q_PROPERTY(QVariantList causes READ causes NOTIFY refreshed)

public:
    using SessionBacked::SessionBacked;

    [[nodiscard]] bool wanted() const;    ///< see call_wanted
    [[nodiscard]] bool complete() const;  ///< every measured cylinder has its call
    [[nodiscard]] bool reported() const;  ///< a report was written before the call
    /// {number, measured: what was read and heard there, without a verdict, causes, text} of those that were
    /// measured.
    [[nodiscard]] QVariantList cylinders() const;
    [[nodiscard]] QVariantList causes() const;  ///< {value, text}

    /// Adds the cause or takes it away again; a cylinder that seals well has no other.
    Q_INVOKABLE void choose(int cylinder, const QString& cause);
    Q_INVOKABLE void write(int cylinder, const QString& text);
    /// No Undo is offered: a call that could be changed once the findings are seen would be worth nothing.
    Q_INVOKABLE void commit();
    /// Shows the findings of this session without a call.
    Q_INVOKABLE void skip();

protected:
    void refresh() override;
    [[nodiscard]] bool wantsFindings() const override { return false; }

private:
    struct Call {
        QStringList causes;
        QString text;
    };
    [[nodiscard]] std::vector<int> measured() const;
    [[nodiscard]] QString measuredAt(int cylinder) const;
    void keep();

    QMap<int, Call> calls_;
    bool skipped_ = false;
    bool read_ = false;
    bool committing_ = false;
};

}  // namespace lapwing

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QVariantList>

#include "qml/viewmodels/evidence_backed.h"

namespace lapwing {

/// A session as a mentor reads it: what weakens it first, then every reading, exit and clearance with its
/// photos, voice notes and remarks; and what the mentor adds. Nothing that was measured can be changed here.
class SecondOpinionModel : public lapwing::EvidenceBacked {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QVariantList first READ first NOTIFY refreshed)
    Q_PROPERTY(QVariantList sections READ sections NOTIFY refreshed)
    Q_PROPERTY(QVariantList causes READ causes NOTIFY refreshed)
    Q_PROPERTY(QVariantList tests READ tests NOTIFY refreshed)

public:
    using EvidenceBacked::EvidenceBacked;

    /// {mark, text}: testers and their checks, repeats, steps of Prepare that were not done or not marked.
    [[nodiscard]] QVariantList first() const { return first_; }
    /// {title, state, things}: the session, each cylinder, the plan, the testers. A thing is {key, title,
    /// text, detail, replaced, to, record, cylinder, finding, photos, voices, notes}: photos and voices as
    /// EvidenceModel lists them, notes as note_item does, each with its own `voices`.
    [[nodiscard]] QVariantList sections() const { return sections_; }
    [[nodiscard]] QVariantList causes() const;  ///< {value, text}
    [[nodiscard]] QVariantList tests() const;   ///< {value, text}

    /// Keeps a note: {id (of one that is changed), to, record, cylinder, finding (its thing's), kind, text,
    /// test, cause}. `noteKept` follows the commit; `speak` is handed on with it.
    Q_INVOKABLE void keepNote(const QVariantMap& note, bool speak);
    Q_INVOKABLE void removeNote(const QString& id);

signals:
    void noteKept(const QString& id, bool speak);

protected:
    void refresh() override;
    [[nodiscard]] bool wantsFindings() const override { return true; }

private:
    struct Thing {
        QString title, text, detail;
        Tie tie;
        bool replaced = false;
    };

    void listFirst();
    void listTesters();
    void listRepeats();
    void listSteps();
    void say(const QString& mark, const QString& text);

    [[nodiscard]] QVariantMap item(const Thing& thing) const;
    [[nodiscard]] QVariantMap section(const QString& title, const QString& state,
                                      const std::vector<Thing>& things) const;
    [[nodiscard]] QVariantMap sessionSection() const;
    [[nodiscard]] QVariantMap cylinderSection(const Cylinder& cylinder) const;
    [[nodiscard]] std::vector<Thing> readingsOf(int cylinder) const;
    template <class T>
    [[nodiscard]] Thing thingOf(const T& record, TiedTo to) const;
    [[nodiscard]] std::vector<const Tester*> testersUsed() const;

    QVariantList first_;
    QVariantList sections_;
};

}  // namespace lapwing

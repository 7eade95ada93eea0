// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QVariantList>
#include <memory>
#include <set>

#include "qml/viewmodels/evidence_backed.h"
#include "qml/viewmodels/odds_backed.h"

namespace lapwing {

/// The odds of a session beside what another model shows of it.
class OddsBeside final : public lapwing::OddsBacked {
public:
    using OddsBacked::leaks;
    using OddsBacked::OddsBacked;

protected:
    [[nodiscard]] bool wantsFindings() const override { return false; }
};

/// A session as a mentor reads it: what weakens it first, then every reading, exit and clearance with its
/// photos, voice notes and remarks, the findings and the odds that the mechanic saw; and what the mentor
/// adds. Nothing that was measured can be changed here.
class SecondOpinionModel : public lapwing::EvidenceBacked {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QVariantList first READ first NOTIFY refreshed)
    Q_PROPERTY(QVariantList sections READ sections NOTIFY refreshed)
    Q_PROPERTY(QVariantList causes READ causes NOTIFY refreshed)
    Q_PROPERTY(QVariantList tests READ tests NOTIFY refreshed)

public:
    explicit SecondOpinionModel(QObject* parent = nullptr);

    /// {mark, text}: testers and their checks, repeats, steps of Prepare that were not done or not marked.
    [[nodiscard]] QVariantList first() const { return first_; }
    /// {title, state, things}: the session, each cylinder, the plan, the testers, where it leaks. A thing is
    /// {key, title, text, detail, replaced, to, record, cylinder, finding, photos, voices, notes}: photos and
    /// voices as EvidenceModel lists them, notes as note_item does, each with its own `voices`.
    [[nodiscard]] QVariantList sections() const { return sections_; }
    [[nodiscard]] QVariantList causes() const;  ///< {value, text}
    [[nodiscard]] QVariantList tests() const;   ///< {value, text}

    /// Keeps a note: {id (of one that is changed), to, record, cylinder, finding (its thing's), kind, text,
    /// test, cause}. `noteKept` follows the commit; `speak` is handed on with it.
    Q_INVOKABLE void keepNote(const QVariantMap& note, bool speak);
    Q_INVOKABLE void removeNote(const QString& id);

    void componentComplete() override;

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
        bool headline = false;  ///< of a finding: remarks on what is no longer found come here
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
    [[nodiscard]] QVariantMap oddsSection() const;
    [[nodiscard]] std::vector<Thing> oddsOf(const findings::CylinderFindings& cylinder) const;
    [[nodiscard]] bool hangsOn(const Tie& tie, const Thing& thing) const;
    void addContradictions(std::vector<Thing>& things, int cylinder,
                           const std::vector<findings::Remark>& contradictions) const;
    void listFound();
    [[nodiscard]] std::vector<Thing> readingsOf(int cylinder) const;
    template <class T>
    [[nodiscard]] Thing thingOf(const T& record, TiedTo to) const;
    [[nodiscard]] std::vector<const Tester*> testersUsed() const;

    std::unique_ptr<OddsBeside> odds_;
    /// Contradictions and lines of odds that are shown now, by cylinder (0: the engine as a whole).
    std::set<std::pair<int, std::string>> found_;
    QVariantList first_;
    QVariantList sections_;
};

}  // namespace lapwing

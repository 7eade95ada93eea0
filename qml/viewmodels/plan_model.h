// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <set>
#include <string>

#include "core/compare/proof.h"
#include "core/workflow/proposals.h"
#include "qml/viewmodels/odds_backed.h"

namespace lapwing {

/// What is to be done: lines in the order of work, what they come to, the owner's answer, the retest; and
/// what findings and odds propose.
class PlanModel : public lapwing::OddsBacked {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QVariantList lines READ lines NOTIFY linesChanged)
    Q_PROPERTY(QVariantList totals READ totals NOTIFY totalsChanged)
    Q_PROPERTY(QVariantList proposals READ proposals NOTIFY proposalsChanged)
    Q_PROPERTY(bool proposing READ proposing NOTIFY refreshed)
    Q_PROPERTY(QStringList cautions READ cautions NOTIFY refreshed)
    /// Work is ticked and nothing was measured since: "later" (another visit), "here" (a quick fix of today,
    /// seen in this session); else empty.
    Q_PROPERTY(QString testAgain READ testAgain NOTIFY refreshed)
    /// The session that first tested what was ticked here; empty where none did.
    Q_PROPERTY(QString retestedIn READ retestedIn NOTIFY refreshed)
    Q_PROPERTY(QString answer READ answer NOTIFY refreshed)
    Q_PROPERTY(QString answeredAt READ answeredAt NOTIFY refreshed)
    Q_PROPERTY(QString retest READ retest NOTIFY refreshed)

public:
    using OddsBacked::OddsBacked;

    /// {id, option, title, work, details [text], expected, from, proofs, done, doneText, first, last}; `from`
    /// as in `proposals`; `proofs` says what came of the reading to expect, once the work is done
    [[nodiscard]] QVariantList lines() const { return lines_; }
    /// {name, value}
    [[nodiscard]] QVariantList totals() const { return totals_; }
    /// {title, work, reason, expected, from}, by the index that takeOver() takes; `from` derives the reading
    /// to expect, and is empty where nothing does. What the plan has already is left out.
    [[nodiscard]] QVariantList proposals() const { return proposals_; }
    /// Whether proposals are still being worked out.
    [[nodiscard]] bool proposing() const;
    [[nodiscard]] QStringList cautions() const;
    [[nodiscard]] QString testAgain() const;
    [[nodiscard]] QString retestedIn() const;
    [[nodiscard]] QString answer() const;
    [[nodiscard]] QString answeredAt() const;
    [[nodiscard]] QString retest() const;

    Q_INVOKABLE void takeOver(int proposal);
    /// Makes an empty line; added() tells its id when it is there.
    Q_INVOKABLE void addLine();
    Q_INVOKABLE void tick(const QString& id, bool done);
    Q_INVOKABLE void move(const QString& id, bool up);
    /// A word of OwnerAnswer.
    Q_INVOKABLE void setAnswer(const QString& word);
    /// The day so many months from now; none for 0.
    Q_INVOKABLE void retestInMonths(int months);
    /// A day as typed. Empty when it was taken, or the sentence that says what is wrong.
    Q_INVOKABLE QString retestOn(const QString& day);

signals:
    void added(const QString& id);
    // Only when they did: a list that is made anew under a finger loses the touch.
    void linesChanged();
    void totalsChanged();
    void proposalsChanged();

protected:
    void refresh() override;
    void sessionRead() override;

private:
    /// A proposal as it would stand in the plan, with how its reading to expect is made.
    struct Offer {
        PlanLine line;
        std::vector<findings::Derivation> from;
    };
    [[nodiscard]] std::vector<Offer> offers() const;
    [[nodiscard]] PlanLine lineOf(const workflow::Proposal& proposal) const;
    [[nodiscard]] QVariantMap proposalMap(const Offer& offer) const;
    [[nodiscard]] QVariantList fromOf(const PlanLine& line, const std::vector<Offer>& offers) const;
    [[nodiscard]] bool planned(const PlanLine& line, const std::set<std::string>& proposed) const;
    [[nodiscard]] QVariantList linesNow(const std::vector<Offer>& offers) const;
    [[nodiscard]] QVariantList totalsNow() const;
    [[nodiscard]] QVariantList proofsOf(const PlanLine& line) const;
    void prove();
    QVariantList proposalsNow(const std::vector<Offer>& offers);
    void planRetest(const QDate& day);

    QVariantList lines_;
    QVariantList totals_;
    QVariantList proposals_;
    std::vector<PlanLine> proposed_;
    /// What was read after work that is ticked here.
    struct Since {
        std::vector<compare::Proof> proofs;
        bool any = false;               ///< since the newest of it
        std::optional<SessionId> next;  ///< the first other session with readings since the first of it
    };
    static Since since_of(const Dossier& history, const Visit& visit, const findings::Reference& reference);
    Since since_;
    bool looked_ = false;  ///< `since_` is known
    std::unique_ptr<workflow::Background> prover_;
};

}  // namespace lapwing

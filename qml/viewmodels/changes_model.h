// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QHash>
#include <QVariant>

#include "core/compare/proof.h"
#include "qml/viewmodels/history_backed.h"

namespace lapwing {

/// Before and after: two visits to one engine, to be chosen, or two states within a visit that has several
/// ("as found", "after clearance adjustment"); the last two to begin with. A side goes by its session's id,
/// with the tag behind it where the visit has several.
class ChangesModel : public lapwing::HistoryBacked {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString beforeId READ beforeId WRITE setBeforeId NOTIFY refreshed)
    Q_PROPERTY(QString afterId READ afterId WRITE setAfterId NOTIFY refreshed)
    /// The session that the later side belongs to, whichever of its states that is.
    Q_PROPERTY(QString afterSessionId READ afterSessionId NOTIFY refreshed)
    Q_PROPERTY(QString beforeText READ beforeText NOTIFY refreshed)
    Q_PROPERTY(QString afterText READ afterText NOTIFY refreshed)
    /// Why there is nothing to compare; empty when there is.
    Q_PROPERTY(QString nothing READ nothing NOTIFY refreshed)
    /// {value, text, detail}, newest first
    Q_PROPERTY(QVariantList choices READ choices NOTIFY refreshed)
    Q_PROPERTY(bool comparable READ comparable NOTIFY refreshed)
    /// {symbol, text}
    Q_PROPERTY(QVariantList reasons READ reasons NOTIFY refreshed)
    /// {number, name, tests: [{test, title, before, after (bores), beforeText, afterText, difference, verdict
    /// (key), word, from}], proofs: what was foretold of work in between, and what came of it}
    Q_PROPERTY(QVariantList cylinders READ cylinders NOTIFY refreshed)

public:
    using HistoryBacked::HistoryBacked;

    [[nodiscard]] QString beforeId() const { return before_; }
    void setBeforeId(const QString& id);
    [[nodiscard]] QString afterId() const { return after_; }
    void setAfterId(const QString& id);
    [[nodiscard]] QString afterSessionId() const { return session_of(after_); }
    [[nodiscard]] QString beforeText() const { return text_of(before_); }
    [[nodiscard]] QString afterText() const { return text_of(after_); }
    [[nodiscard]] QString nothing() const;
    [[nodiscard]] QVariantList choices() const;
    [[nodiscard]] bool comparable() const { return found_.changes.comparable(); }
    [[nodiscard]] QVariantList reasons() const { return reasons_; }
    [[nodiscard]] QVariantList cylinders() const { return cylinders_; }

    Q_INVOKABLE QVariantList derivation(int from) const;

protected:
    void think() override;
    void show() override;

private:
    struct Choice {
        QString value;
        Session session;
        std::optional<Tag> tag;
        std::vector<Reading> readings;  ///< a session without a title is called by them
    };
    /// What was worked out, with all that is shown of it.
    struct Found {
        Engine engine;
        std::vector<Choice> choices;  ///< oldest first
        QString before, after;
        compare::Comparison changes;
        std::vector<compare::Proof> proofs;
        findings::Findings then, now;
    };
    static std::vector<Choice> choices_of(const Dossier& dossier);
    static Found look(const Result<Dossier>& dossier, const QString& before, const QString& after,
                      const findings::Reference& reference);
    [[nodiscard]] QVariantMap test_item(const compare::Change& change, TestKind test, std::size_t row);
    [[nodiscard]] QVariantList proofs_for(int cylinder) const;
    void name_choices();
    [[nodiscard]] QString text_of(const QString& value) const { return names_.value(value); }
    [[nodiscard]] static QString session_of(const QString& side) { return side.section(u'/', 0, 0); }
    [[nodiscard]] bool waits(const QString& side) const;

    QString before_, after_;
    Found found_;
    QHash<QString, QString> names_;  ///< of the choices
    QVariantList reasons_, cylinders_;
    bool before_waits_ = false, after_waits_ = false;
    std::vector<findings::Derivation> derivations_;
};

}  // namespace lapwing

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QVariantList>

#include "qml/viewmodels/session_backed.h"

namespace lapwing {

/// The exits of one cylinder while the air is on: where it comes out and how loud.
class LeakHuntModel : public lapwing::SessionBacked {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(int cylinder READ cylinder WRITE setCylinder NOTIFY refreshed)
    Q_PROPERTY(QVariantList cylinders READ cylinders NOTIFY refreshed)
    Q_PROPERTY(QString heldLine READ heldLine NOTIFY refreshed)
    Q_PROPERTY(bool explained READ explained NOTIFY refreshed)
    Q_PROPERTY(QVariantList exits READ exits NOTIFY refreshed)
    Q_PROPERTY(QVariantList loudnesses READ loudnesses NOTIFY refreshed)
    Q_PROPERTY(QVariantList methods READ methods NOTIFY refreshed)
    Q_PROPERTY(QString method READ method WRITE setMethod NOTIFY refreshed)
    Q_PROPERTY(bool staked READ staked WRITE setStaked NOTIFY refreshed)
    Q_PROPERTY(bool canStake READ canStake NOTIFY refreshed)
    Q_PROPERTY(QVariantList questions READ questions NOTIFY refreshed)
    Q_PROPERTY(QString doneText READ doneText NOTIFY refreshed)
    Q_PROPERTY(int nextCylinder READ nextCylinder NOTIFY refreshed)
    Q_PROPERTY(QStringList cautions READ cautions NOTIFY refreshed)
    Q_PROPERTY(QStringList stakingCautions READ stakingCautions NOTIFY refreshed)
    Q_PROPERTY(QString tag READ tagWord NOTIFY refreshed)

public:
    using SessionBacked::SessionBacked;

    [[nodiscard]] int cylinder() const;
    void setCylinder(int number);
    [[nodiscard]] QVariantList cylinders() const;
    /// "held 3.50 of 5.5 bar, leakage 36 %"
    [[nodiscard]] QString heldLine() const;
    /// Whether there is a leakage to tell the origin of.
    [[nodiscard]] bool explained() const { return leakDown() != nullptr; }
    Q_INVOKABLE QVariantList derivation() const;  ///< of the leakage
    /// {key, neighbour, name, hint, loudness, by, record, photos, voices} with loudness "" for not listened
    [[nodiscard]] QVariantList exits() const;
    [[nodiscard]] QVariantList loudnesses() const;
    [[nodiscard]] QVariantList methods() const;
    [[nodiscard]] QString method() const;
    void setMethod(const QString& word);
    [[nodiscard]] bool staked() const { return staked_; }
    void setStaked(bool staked);
    [[nodiscard]] bool canStake() const { return engine().cycle == StrokeCycle::four; }
    /// {text, page: where it is answered, or empty, action: the button's word}
    [[nodiscard]] QVariantList questions() const;
    [[nodiscard]] QString doneText() const;
    /// The next cylinder without a leak-down reading, in firing order; 0 when there is none.
    [[nodiscard]] int nextCylinder() const;
    [[nodiscard]] QStringList cautions() const;
    [[nodiscard]] QStringList stakingCautions() const;
    [[nodiscard]] QString tagWord() const;

    /// Notes how loud it is; the same loudness again takes the note back to "not listened".
    Q_INVOKABLE void note(const QString& exit, int neighbour, const QString& loudness);

private:
    [[nodiscard]] const ExitNote* standingNote(Exit exit, std::optional<int> neighbour) const;
    [[nodiscard]] ExitNoteId firstOf(const ExitNote& note) const;
    [[nodiscard]] int attached(AttachmentKind kind, ExitNoteId note) const;
    [[nodiscard]] const Reading* airOn() const;
    /// What the findings make of this cylinder's leak-down where the reading with the air on counts; else
    /// null.
    [[nodiscard]] const findings::LeakDown* leakDown() const;
    [[nodiscard]] Tag tag() const;

    int cylinder_ = 0;
    ListenedBy by_ = ListenedBy::ear;
    bool staked_ = false;
};

}  // namespace lapwing

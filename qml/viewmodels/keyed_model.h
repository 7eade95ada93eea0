// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QVariantList>
#include <functional>
#include <map>

#include "qml/viewmodels/keyed_entries.h"
#include "qml/viewmodels/session_backed.h"

namespace lapwing {

/// What every pad of digits has in common: cylinders to choose from, fields of which one has the focus, keys,
/// a draft that is kept with every key, and Keep, which moves on at once and gives its tick after the commit.
class KeyedModel : public lapwing::SessionBacked {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("each pad is a class of its own")
    Q_PROPERTY(QVariantList cylinders READ cylinders NOTIFY railChanged)
    Q_PROPERTY(int currentIndex READ currentIndex NOTIFY railChanged)
    Q_PROPERTY(int cylinder READ cylinder NOTIFY railChanged)
    Q_PROPERTY(QVariantList fields READ fields NOTIFY entryChanged)
    Q_PROPERTY(QString field READ field NOTIFY entryChanged)
    Q_PROPERTY(QString caption READ caption NOTIFY entryChanged)
    Q_PROPERTY(QString typed READ typed NOTIFY entryChanged)
    Q_PROPERTY(QString placeholder READ placeholder NOTIFY entryChanged)
    Q_PROPERTY(QString unit READ unit NOTIFY entryChanged)
    Q_PROPERTY(bool decimals READ decimals NOTIFY entryChanged)
    Q_PROPERTY(QVariantList lines READ lines NOTIFY entryChanged)
    Q_PROPERTY(QString keepText READ keepText NOTIFY entryChanged)
    Q_PROPERTY(QString lastKept READ lastKept NOTIFY lastKeptChanged)

public:
    using SessionBacked::SessionBacked;

    [[nodiscard]] QVariantList cylinders() const { return rail_; }
    [[nodiscard]] int currentIndex() const;
    [[nodiscard]] int cylinder() const { return cylinder_; }
    /// {key, label, value, stepper}
    [[nodiscard]] virtual QVariantList fields() const = 0;
    [[nodiscard]] QString field() const { return field_; }
    [[nodiscard]] virtual QString caption() const = 0;
    [[nodiscard]] virtual QString typed() const;
    [[nodiscard]] virtual QString placeholder() const = 0;
    [[nodiscard]] virtual QString unit() const = 0;
    [[nodiscard]] virtual bool decimals() const { return true; }
    /// What the digits would mean: {mark, symbol, figure, text}
    [[nodiscard]] virtual QVariantList lines() const = 0;
    [[nodiscard]] virtual QString keepText() const = 0;
    [[nodiscard]] QString lastKept() const { return last_kept_; }

    Q_INVOKABLE void press(const QString& character);
    Q_INVOKABLE void backspace();
    Q_INVOKABLE void clear();
    Q_INVOKABLE void focusField(const QString& key);
    Q_INVOKABLE void choose(int index);
    Q_INVOKABLE virtual void chooseCylinder(int number);
    /// One more or less in a field with a stepper.
    Q_INVOKABLE virtual void step(const QString&, int) {}
    /// Stores what stands on the pad and moves on; with nothing typed, only moves on.
    Q_INVOKABLE virtual void keep() = 0;
    /// Takes back one step (by its number); the head says so.
    Q_INVOKABLE void undo(qint64 step);
    /// How the number of that line was made, for the "Where does this come from" sheet.
    Q_INVOKABLE virtual QVariantList derivation(int line) const = 0;

signals:
    void railChanged();
    void entryChanged();
    /// The commit is done: this is the tick.
    void kept(int cylinder);
    void lastKeptChanged();
    /// Nothing left to do on this pad.
    void finished();

protected:
    /// Names what is typed into: a cylinder, a valve of a cylinder.
    [[nodiscard]] virtual QString place() const = 0;
    virtual void goTo(const QString& place) = 0;
    /// The field that has the focus on arrival.
    [[nodiscard]] virtual QString mainField() const = 0;
    [[nodiscard]] virtual bool takes(int cylinder) const;
    [[nodiscard]] virtual QVariantList rail() const = 0;
    /// Works out anew what the digits would mean.
    virtual void judge() {}

    [[nodiscard]] virtual QString draftKey() const = 0;
    /// The record with that id is in the library: its draft is spent.
    [[nodiscard]] virtual bool recorded(const Uuid& id) const = 0;
    /// Where the pad stands, beside the entries.
    virtual void writeDraft(QJsonObject& draft) const;
    virtual void readDraft(const QJsonObject& draft);

    void refresh() override;
    void moveTo(int cylinder);
    void edited();
    void changed();  ///< edited, and kept as a draft
    void buildRail();
    void saveDraft();

    [[nodiscard]] const KeyedEntry& entry() const { return entries_.at(place()); }
    KeyedEntry& entry();
    [[nodiscard]] QString localized(QString digits) const;
    /// To be called where one comes back to a field: its digits are replaced by the next one that is typed;
    /// backspace edits them.
    void comeBack();
    /// Takes the entry off the pad and runs the command that stores it. With the commit `said` becomes the
    /// tick's words and `then` is called; if it fails, what was typed comes back. It does so too when that is
    /// undone: once `stands` says no, which is asked with every change.
    void store(workflow::Intent intent, const QString& said, std::function<void()> then,
               std::function<bool()> stands);
    /// The same for an entry whose record bears its id.
    void store(workflow::Intent intent, const QString& said, std::function<void()> then = {});
    /// What was kept last is taken out on purpose: it does not come back as a draft.
    void forgetKept();
    [[nodiscard]] const Uuid& lastKeptId() const { return last_kept_entry_.id; }
    [[nodiscard]] bool onItsWay(int cylinder) const { return on_their_way_.contains(cylinder); }

    /// Called when the entry kept last was undone and stands on the pad again.
    virtual void takenBack() {}

    int cylinder_ = 0;
    QString field_;
    KeyedEntries entries_;

private:
    void takeBack();

    bool draft_read_ = false;
    QVariantList rail_;
    int shown_cylinder_ = -1;
    QString last_kept_;
    KeyedEntry last_kept_entry_;  ///< as it was typed
    QString last_kept_place_;
    std::function<bool()> last_kept_stands_;
    std::map<int, int> on_their_way_;  ///< keeps not committed yet, by cylinder
};

}  // namespace lapwing

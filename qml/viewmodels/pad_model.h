// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QHash>
#include <QVariantList>
#include <map>

#include "core/findings/pad.h"
#include "qml/format/typed_entry.h"
#include "qml/viewmodels/session_backed.h"

namespace lapwing {

/// The pad: digits for one field of one cylinder at a time, what they would mean, and Keep.
///
/// What is typed belongs to its cylinder and survives the end of the process as a draft; a draft carries the
/// id that its reading will get, so that a draft whose reading was committed is known to be spent.
class PadModel : public lapwing::SessionBacked {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString test READ test WRITE setTest NOTIFY testChanged REQUIRED)
    Q_PROPERTY(QString title READ title NOTIFY refreshed)
    Q_PROPERTY(QString subtitle READ subtitle NOTIFY refreshed)
    Q_PROPERTY(QVariantList cylinders READ cylinders NOTIFY railChanged)
    Q_PROPERTY(int currentIndex READ currentIndex NOTIFY railChanged)
    Q_PROPERTY(int cylinder READ cylinder NOTIFY railChanged)
    Q_PROPERTY(QString caption READ caption NOTIFY entryChanged)
    Q_PROPERTY(QVariantList fields READ fields NOTIFY entryChanged)
    Q_PROPERTY(QString field READ field NOTIFY entryChanged)
    Q_PROPERTY(QString typed READ typed NOTIFY entryChanged)
    Q_PROPERTY(QString placeholder READ placeholder NOTIFY entryChanged)
    Q_PROPERTY(bool pointPlaced READ pointPlaced NOTIFY entryChanged)
    Q_PROPERTY(QString unit READ unit NOTIFY entryChanged)
    Q_PROPERTY(bool decimals READ decimals NOTIFY entryChanged)
    Q_PROPERTY(QVariantList lines READ lines NOTIFY entryChanged)
    Q_PROPERTY(QString keepText READ keepText NOTIFY entryChanged)
    Q_PROPERTY(bool empty READ empty NOTIFY entryChanged)
    Q_PROPERTY(bool questioned READ questioned NOTIFY entryChanged)
    Q_PROPERTY(bool redoing READ redoing NOTIFY entryChanged)
    Q_PROPERTY(QVariantList history READ history NOTIFY railChanged)
    Q_PROPERTY(QString lastKept READ lastKept NOTIFY kept)
    Q_PROPERTY(QStringList cautions READ cautions NOTIFY refreshed)
    Q_PROPERTY(QString tag READ tag WRITE setTag NOTIFY entryChanged)
    Q_PROPERTY(QVariantList tags READ tags NOTIFY refreshed)
    Q_PROPERTY(QString pressureUnit READ pressureUnitSymbol WRITE setPressureUnit NOTIFY entryChanged)
    Q_PROPERTY(QStringList pressureUnits READ pressureUnits CONSTANT)
    Q_PROPERTY(bool refused READ refused NOTIFY refreshed)

public:
    using SessionBacked::SessionBacked;

    [[nodiscard]] QString test() const;
    void setTest(const QString& word);

    [[nodiscard]] QString title() const;
    [[nodiscard]] QString subtitle() const;
    [[nodiscard]] QVariantList cylinders() const { return rail_; }
    [[nodiscard]] int currentIndex() const;
    [[nodiscard]] int cylinder() const { return current_; }
    [[nodiscard]] QString caption() const;
    [[nodiscard]] QVariantList fields() const;
    [[nodiscard]] QString field() const { return field_; }
    [[nodiscard]] QString typed() const;
    [[nodiscard]] QString placeholder() const;
    [[nodiscard]] bool pointPlaced() const;
    [[nodiscard]] QString unit() const;
    [[nodiscard]] bool decimals() const;
    [[nodiscard]] QVariantList lines() const { return lines_; }
    [[nodiscard]] QString keepText() const;
    [[nodiscard]] bool empty() const;
    [[nodiscard]] bool questioned() const { return questioned_; }
    [[nodiscard]] bool redoing() const;
    [[nodiscard]] QVariantList history() const;
    [[nodiscard]] QString lastKept() const { return last_kept_; }
    [[nodiscard]] QStringList cautions() const;
    [[nodiscard]] QString tag() const;
    void setTag(const QString& word);
    [[nodiscard]] QVariantList tags() const;
    [[nodiscard]] QString pressureUnitSymbol() const;
    void setPressureUnit(const QString& symbol);
    [[nodiscard]] QStringList pressureUnits() const;
    /// No wet test on a diesel.
    [[nodiscard]] bool refused() const;

    Q_INVOKABLE void press(const QString& character);
    Q_INVOKABLE void backspace();
    Q_INVOKABLE void clear();
    Q_INVOKABLE void dropPoint();  ///< takes the placed decimal point away again
    Q_INVOKABLE void focusField(const QString& key);
    Q_INVOKABLE void step(const QString& key, int by);
    Q_INVOKABLE void choose(int index);
    Q_INVOKABLE void chooseCylinder(int number);
    /// Stores what stands on the pad and moves on; with nothing typed, only moves on.
    Q_INVOKABLE void keep();
    Q_INVOKABLE void startRedo(const QString& readingId);
    Q_INVOKABLE void cancelRedo();
    Q_INVOKABLE void remove(const QString& readingId);
    /// How the number of that line was made, for the "Where does this come from" sheet.
    Q_INVOKABLE QVariantList derivation(int line) const;

signals:
    void testChanged();
    void railChanged();
    void entryChanged();
    /// The commit is done: this is the tick.
    void kept(int cylinder);
    /// Leak-down: the air is on, open this cylinder's exits.
    void listenTo(int cylinder);
    /// Nothing left to do on this pad.
    void finished();

protected:
    void refresh() override;

private:
    /// What is typed for one cylinder and not kept yet.
    struct Entry {
        QHash<QString, QString> text;  ///< raw, by field
        bool plain = false;            ///< the placed decimal point was taken away
        ReadingId id;                  ///< that the reading will get
        std::optional<ReadingId> redo;
    };

    [[nodiscard]] bool cranking() const { return test_ == TestKind::dry || test_ == TestKind::wet; }
    [[nodiscard]] QString mainField() const;
    [[nodiscard]] QString fieldCaption() const;
    [[nodiscard]] const Tester* tester() const;
    [[nodiscard]] Unit<PressureTag> pressureUnit() const;
    [[nodiscard]] double fullScale() const;
    [[nodiscard]] const Entry& entry() const;
    Entry& entry();
    [[nodiscard]] format::Entry placed(const QString& field) const;
    [[nodiscard]] std::optional<TypedPressure> pressure(const QString& field) const;
    [[nodiscard]] QString carried(const QString& field) const;
    [[nodiscard]] std::vector<int> order() const;
    [[nodiscard]] int nextOf(int cylinder) const;
    [[nodiscard]] bool measured(int cylinder) const;
    [[nodiscard]] findings::PadEntry padEntry() const;
    [[nodiscard]] std::optional<Reading> reading() const;
    [[nodiscard]] QString draftKey() const;
    void edited();
    void judge();
    void buildRail();
    void moveTo(int cylinder);
    void saveDraft();
    void loadDraft();

    TestKind test_ = TestKind::dry;
    Tag tag_ = Tag::as_found;
    int current_ = 0;
    QString field_;
    std::map<int, Entry> entries_;
    std::optional<Unit<PressureTag>> chosen_unit_;
    bool draft_loaded_ = false;

    QVariantList rail_;
    QVariantList lines_;
    std::vector<std::vector<findings::Derivation>> derivations_;
    bool questioned_ = false;
    QString last_kept_;
    std::map<int, int> pending_;  ///< keeps on their way to the disk, by cylinder
};

}  // namespace lapwing

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/workflow/readings.h"
#include "qml/viewmodels/keyed_model.h"
#include "qml/viewmodels/pad_fields.h"
#include "qml/viewmodels/pad_lines.h"

namespace lapwing {

/// The pad of one test: cylinder by cylinder, what is typed (PadFields), what that would mean (PadLines),
/// Keep.
class PadModel : public lapwing::KeyedModel {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString test READ test WRITE setTest NOTIFY testChanged REQUIRED)
    Q_PROPERTY(QString title READ title NOTIFY refreshed)
    Q_PROPERTY(QString subtitle READ subtitle NOTIFY refreshed)
    Q_PROPERTY(bool pointPlaced READ pointPlaced NOTIFY entryChanged)
    Q_PROPERTY(bool empty READ empty NOTIFY entryChanged)
    Q_PROPERTY(bool redoing READ redoing NOTIFY entryChanged)
    Q_PROPERTY(QVariantList history READ history NOTIFY entryChanged)
    Q_PROPERTY(QStringList cautions READ cautions NOTIFY refreshed)
    Q_PROPERTY(QString tag READ tag WRITE setTag NOTIFY entryChanged)
    Q_PROPERTY(QVariantList tags READ tags NOTIFY refreshed)
    Q_PROPERTY(QString pressureUnit READ pressureUnitSymbol WRITE setPressureUnit NOTIFY entryChanged)
    Q_PROPERTY(QStringList pressureUnits READ pressureUnits NOTIFY refreshed)
    Q_PROPERTY(bool refused READ refused NOTIFY refreshed)
    Q_PROPERTY(QString oilAmount READ oilAmount NOTIFY refreshed)
    Q_PROPERTY(QString oddRepeat READ oddRepeat NOTIFY entryChanged)
    Q_PROPERTY(bool oilBetween READ oilBetween NOTIFY entryChanged)
    Q_PROPERTY(QString earlierOil READ earlierOil NOTIFY entryChanged)
    Q_PROPERTY(QString otherUnit READ otherUnit NOTIFY entryChanged)
    Q_PROPERTY(QVariantList unitChoices READ unitChoices NOTIFY entryChanged)
    Q_PROPERTY(QString photoReads READ photoReads NOTIFY entryChanged)
    Q_PROPERTY(QVariantList photoChoices READ photoChoices NOTIFY entryChanged)

public:
    using KeyedModel::KeyedModel;

    [[nodiscard]] QString test() const;
    void setTest(const QString& word);

    [[nodiscard]] QString title() const;
    [[nodiscard]] QString subtitle() const;
    [[nodiscard]] QVariantList fields() const override;
    [[nodiscard]] QString caption() const override;
    [[nodiscard]] QString typed() const override;
    [[nodiscard]] QString placeholder() const override;
    [[nodiscard]] QString unit() const override;
    [[nodiscard]] bool decimals() const override { return field_ != pad_field::pulls; }
    [[nodiscard]] QVariantList lines() const override { return lines_.shown(); }
    [[nodiscard]] QString keepText() const override;
    [[nodiscard]] bool pointPlaced() const;
    [[nodiscard]] bool empty() const { return typedFields().empty(); }
    [[nodiscard]] bool redoing() const { return entry().redo.has_value(); }
    /// {id, text, about, replaced, asOne} of this cylinder's readings, oldest first.
    [[nodiscard]] QVariantList history() const;
    [[nodiscard]] QStringList cautions() const;
    [[nodiscard]] QString tag() const;
    void setTag(const QString& word);
    [[nodiscard]] QVariantList tags() const;
    [[nodiscard]] QString pressureUnitSymbol() const;  ///< "%" where the dial shows leakage
    void setPressureUnit(const QString& symbol);
    [[nodiscard]] QStringList pressureUnits() const;  ///< what dials are marked in, leak-down's "%" among it
    /// No wet test on a diesel.
    [[nodiscard]] bool refused() const;
    /// Wet test: how much oil a cylinder of this size takes; empty in other tests.
    [[nodiscard]] QString oilAmount() const;
    /// Set when what is typed is further from the reading that stands than gauges and scatter explain.
    [[nodiscard]] QString oddRepeat() const { return odd_repeat_; }
    /// A wet test of this cylinder lies between the readings that stand and what is typed.
    [[nodiscard]] bool oilBetween() const { return oil_between_; }

    /// Which wet test of another session may have left its oil on these rings, while nobody has said in this
    /// session whether the engine ran since; else empty.
    [[nodiscard]] QString earlierOil() const;

    /// "You typed 150. 15.0 bar would be unusual ...": the digits would be likely in another unit; empty
    /// where they would not, or it was said which holds.
    [[nodiscard]] QString otherUnit() const;
    [[nodiscard]] QVariantList unitChoices() const;  ///< {value, text}: the other unit first

    /// "You typed 4.6 bar, the photo reads 4.06 bar ± 0.01": a photo of this gauge was taken in between, and
    /// nobody has said which holds; else empty.
    [[nodiscard]] QString photoReads() const;
    [[nodiscard]] QVariantList photoChoices() const;  ///< {value, text}: ways to settle that

    /// Types how long the crankcase held, in minutes to a tenth.
    Q_INVOKABLE void enterHold(int seconds);
    Q_INVOKABLE void dropPoint();  ///< takes the placed decimal point away again
    Q_INVOKABLE void step(const QString& key, int by) override;
    Q_INVOKABLE void keep() override;
    /// Keeps it beside the reading that stands, however far apart they are.
    Q_INVOKABLE void keepRepeat();
    /// The same where oil went in since: it is not counted with what was read before the oil.
    Q_INVOKABLE void keepOiled();
    /// Says what came of the oil of that wet test, and keeps: the engine "ran", the bore was "wiped", or it
    /// "stays".
    Q_INVOKABLE void settleOil(const QString& way);
    /// Takes the digits in the other unit ("other"), or leaves them as they stand, and keeps what is typed.
    Q_INVOKABLE void settleUnit(const QString& way);
    /// Says which of the two holds and keeps it; "left open" keeps what was typed with the difference.
    Q_INVOKABLE void settlePhoto(const QString& way);
    Q_INVOKABLE void startRedo(const QString& readingId);
    Q_INVOKABLE void cancelRedo();
    Q_INVOKABLE void remove(const QString& readingId);
    Q_INVOKABLE QVariantList derivation(int line) const override;

signals:
    void testChanged();
    /// Leak-down: the air is on, open this cylinder's exits.
    void listenTo(int cylinder);
    /// A repeat far from what stands is not kept before it was asked whether conditions were changed.
    void repeatAsked();
    /// Another session's wet test left oil: nothing is kept before it was asked whether it is gone.
    void oilAsked();
    /// The digits look like those of another unit: nothing is kept before it was asked which it is.
    void unitAsked();
    /// A photo in between reads otherwise: nothing is kept before it was asked, once, which one holds.
    void photoAsked();

protected:
    void refresh() override {
        history_.reset();
        if (found()) readOthers();
        KeyedModel::refresh();
    }
    /// What was said of the oil goes with the reading that it was said for.
    void takenBack() override {
        engine_ran_ = false;
        oil_said_.reset();
    }
    [[nodiscard]] QString place() const override { return QString::number(cylinder_); }
    void goTo(const QString& place) override { moveTo(place.toInt()); }
    [[nodiscard]] QString mainField() const override { return pad_field::main_of(test_); }
    [[nodiscard]] bool takes(int cylinder) const override;
    [[nodiscard]] QVariantList rail() const override;
    void judge() override;
    [[nodiscard]] QString draftKey() const override;
    [[nodiscard]] bool recorded(const Uuid& id) const override;
    void writeDraft(QJsonObject& draft) const override;
    void readDraft(const QJsonObject& draft) override;

private:
    [[nodiscard]] QVariantList earlierReadings() const;
    void readOthers();

    [[nodiscard]] const Tester* tester() const;
    [[nodiscard]] Unit<PressureTag> pressureUnit() const;
    /// Leak-down: the dial after the restrictor is marked in % of leakage.
    [[nodiscard]] bool dialInPercent() const;
    /// The last reading of this test with the tester in use: in this session, else in the engine's others.
    [[nodiscard]] const Reading* lastWithTester() const;
    [[nodiscard]] bool typesPercent() const { return dialInPercent() && field_ == pad_field::held; }
    [[nodiscard]] PadFields typedFields() const;
    [[nodiscard]] QString fieldCaption() const;
    const findings::ModelFacts* modelFacts(const findings::PadEntry& entry);
    [[nodiscard]] bool measured(int cylinder) const;
    [[nodiscard]] int nextOf(int cylinder) const;
    /// A reading of this cylinder that counts is kept already.
    [[nodiscard]] bool stands() const;
    [[nodiscard]] bool setLacks() const;
    [[nodiscard]] bool holdLacks() const;
    [[nodiscard]] bool oilLacks() const;
    /// True when something has to be typed first: goes there, and a line says what.
    [[nodiscard]] bool lacking();
    void tellLacking();
    void tellKept();
    [[nodiscard]] format::Formatter inGaugeUnit() const;
    /// Crankcase: set pressure or minutes were typed, but not what was left in the end.
    [[nodiscard]] bool endLacks() const;
    /// What is typed beside an empty main field, for the reading that stands: oil, first puff, pulls.
    [[nodiscard]] workflow::Addition addition() const;
    [[nodiscard]] bool adds() const;
    void keepAddition();
    [[nodiscard]] bool oilCameBetween() const;
    [[nodiscard]] const Reading* oilOfOtherSession() const;
    /// What was said in this session of the oil of another one: true, it is gone.
    [[nodiscard]] std::optional<bool> oilGone() const;
    [[nodiscard]] bool countedIn(const Reading& reading) const;
    [[nodiscard]] QString apartFromStanding(const findings::PadJudgement& judged) const;
    void keepAll(Oiled oiled = Oiled::unknown);
    /// The photo of this gauge that waits for the reading and reads otherwise than the digits; null where
    /// none does, or it was said already which of them holds.
    [[nodiscard]] const Attachment* otherwise() const;
    /// What the photo waiting for this reading shows, where the digits were taken off it.
    [[nodiscard]] std::optional<TypedPressure> takenOff() const;
    /// The photo and the digits as they stand.
    [[nodiscard]] QString takenFrom(const Attachment& photo) const;
    /// The field that the question for another unit is about, and what is typed there.
    [[nodiscard]] QString unitField() const;
    [[nodiscard]] QString unitQuestion() const;
    [[nodiscard]] QString inOtherUnit() const;  ///< "150 psi (10.3 bar)"
    [[nodiscard]] QString inThisUnit() const;   ///< "15.0 bar"
    [[nodiscard]] QString asStruck() const;
    /// Place and digits as they stand, to know later whether something else was typed.
    [[nodiscard]] QString asTyped() const {
        return place() + QLatin1Char(' ') + typedFields().digits(mainField());
    }
    /// Shows the photo that waits for this reading, if any was read.
    [[nodiscard]] const Attachment* waitingPhoto() const;
    /// Figure, and the rest of the sentence.
    [[nodiscard]] std::pair<QString, QString> oilToPutIn() const;

    TestKind test_ = TestKind::dry;
    Tag tag_ = Tag::as_found;
    std::optional<Unit<PressureTag>> chosen_unit_;
    std::optional<bool> chosen_percent_;
    PadLines lines_;
    bool questioned_ = false;
    QString odd_repeat_;
    bool oil_between_ = false;
    std::optional<TypedPressure> other_unit_;  ///< what is typed, where it looks like that unit's
    QString unit_settled_;                     ///< as struck when it was said that the unit holds
    QString photo_asked_;                      ///< as typed when it was asked which holds: once
    QString photo_taken_;                      ///< the photo that the digits were taken off, and the digits
    std::optional<ReadSettled> photo_settled_;
    QString lacking_;                               ///< the field that was asked for when Keep was pressed
    bool engine_ran_ = false;                       ///< since the other session's wet tests, as it was said
    std::optional<std::pair<int, bool>> oil_said_;  ///< of which cylinder, and whether it is gone
    std::optional<int> oil_asked_;                  ///< the cylinder whose oil was asked for: once
    std::optional<findings::ModelFacts> expected_;
    std::optional<findings::ModelInputs> asked_;  ///< the model is working on these
    std::unique_ptr<workflow::Background> modeller_;
    /// The engine's other sessions that may still matter: the newest one, and those of the last days.
    std::vector<Visit> others_;
    SessionId others_of_;
    mutable std::optional<QVariantList> history_;  ///< of history_of_, until the records change
    mutable int history_of_ = 0;
};

}  // namespace lapwing

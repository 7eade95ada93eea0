// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QTimer>
#include <QVariantList>

#include "core/vision/needle.h"
#include "qml/viewmodels/evidence_backed.h"

namespace lapwing {

/// Reads the needle on one photo of a gauge, off the UI thread, and holds it against what was typed.
class NeedleModel : public lapwing::EvidenceBacked {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString photoId READ photoId WRITE setPhotoId NOTIFY photoChanged)
    Q_PROPERTY(QString test MEMBER test_ NOTIFY photoChanged)
    Q_PROPERTY(QString state READ state NOTIFY changed)
    Q_PROPERTY(QString line READ line NOTIFY changed)
    Q_PROPERTY(QString why READ why NOTIFY changed)
    Q_PROPERTY(bool differs READ differs NOTIFY changed)
    Q_PROPERTY(QVariantList choices READ choices NOTIFY changed)
    Q_PROPERTY(QString settled READ settled NOTIFY changed)
    Q_PROPERTY(QString ring READ ring NOTIFY changed)
    Q_PROPERTY(QString needle READ needle NOTIFY changed)
    Q_PROPERTY(bool adjustable READ adjustable NOTIFY changed)
    Q_PROPERTY(QVariantList offers READ offers NOTIFY changed)
    Q_PROPERTY(QString again READ again NOTIFY changed)

public:
    explicit NeedleModel(QObject* parent = nullptr);

    [[nodiscard]] QString photoId() const { return photo_id_; }
    void setPhotoId(const QString& id);

    /// "" (nothing to read here), "reading", "read", "refused"
    [[nodiscard]] QString state() const;
    /// "Reads 6.4 bar ± 0.1, you typed 6.4 bar"
    [[nodiscard]] QString line() const;
    /// Why it was not read, and what to do.
    [[nodiscard]] QString why() const { return why_; }
    /// From what was typed, by more than both uncertainties.
    [[nodiscard]] bool differs() const;
    [[nodiscard]] QVariantList choices() const;  ///< {value, text}: ways to settle it
    [[nodiscard]] QString settled() const;
    /// Scale and needle as LineDrawing draws them: 1000 is the width of the picture.
    [[nodiscard]] QString ring() const;
    [[nodiscard]] QString needle() const;
    [[nodiscard]] bool adjustable() const { return seen_ && !seen_->refused(); }
    /// {value: the test, text: "Keep 6.4 bar as a reading: dry test"}, where the photo came first: of the
    /// test whose pad it was taken from, or each that it can be of.
    [[nodiscard]] QVariantList offers() const;
    /// Offers to read it anew where the gauge's range was corrected since; else empty.
    [[nodiscard]] QString again() const;

    Q_INVOKABLE void settle(const QString& word);
    /// Turns the needle by hand; what it reads then counts.
    Q_INVOKABLE void turn(double degrees);
    /// Keeps what the photo reads as a new reading, marked as read from the photo, and ties the photo to it.
    Q_INVOKABLE void keepAsReading(const QString& test);
    Q_INVOKABLE void readAgain();

signals:
    void photoChanged();
    void changed();

protected:
    void refresh() override;

private:
    [[nodiscard]] const Attachment* photo() const { return attachment(photo_id_); }
    [[nodiscard]] const Reading* reading() const;
    /// What a person typed, though the photo stands in for it by now; null where the number came off the
    /// photo.
    [[nodiscard]] const Reading* typedReading() const;
    [[nodiscard]] const Tester* tester() const;
    /// The set pressure of the leak-down as it stood last.
    [[nodiscard]] std::optional<TypedPressure> setPressure() const;
    void look();
    void take(const vision::NeedleReading& seen);
    void store(double value, double u, std::optional<double> confidence);
    [[nodiscard]] QString plane(double radius, double from_deg, double to_deg) const;
    [[nodiscard]] QString plane(double radius, double deg) const;

    QString photo_id_;
    QString test_;
    QString looked_at_;  ///< photo and range that were looked at, so that each is looked at once
    QString why_;
    bool looking_ = false;
    std::optional<vision::NeedleReading> seen_;
    QSizeF size_;  ///< px
    double full_scale_ = 0;
    Unit<PressureTag> unit_ = units::bar;
    QTimer rest_;  ///< stores an adjusted needle when the hand rests
};

}  // namespace lapwing

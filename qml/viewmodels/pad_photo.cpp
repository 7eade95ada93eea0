// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// A photo of the gauge that was taken while its number stands on the pad: what it reads is held against the
// digits before they are kept.
#include <algorithm>
#include <array>

#include "core/findings/photo_reading.h"
#include "core/workflow/waiting_photos.h"
#include "qml/format/record_words.h"
#include "qml/viewmodels/pad_model.h"
#include "qml/viewmodels/read_off.h"

namespace lapwing {

const Attachment* PadModel::waitingPhoto() const {
    const Attachment* newest = nullptr;
    for (const auto* photo : workflow::waiting_photos(visit(), cylinder_, app()->desk().clock().now()))
        if (photo->read_value && (!newest || photo->taken_at.unix_ms >= newest->taken_at.unix_ms))
            newest = photo;
    return newest;
}

const Attachment* PadModel::otherwise() const {
    if (!found() || empty() || (photo_settled_ && photo_asked_ == asTyped())) return nullptr;
    const auto* photo = waitingPhoto();
    return photo && findings::photo_differs(typedFields().reading(cylinder_, tag_), *photo) ? photo : nullptr;
}

std::optional<TypedPressure> PadModel::takenOff() const {
    // Another photo since, or other digits: then they are typed as far as anybody knows.
    const auto* photo = waitingPhoto();
    return photo && photo_taken_ == takenFrom(*photo) ? photo->read_value : std::nullopt;
}

QString PadModel::takenFrom(const Attachment& photo) const {
    return QString::fromStdString(photo.id.text()) + QLatin1Char(' ') + asTyped();
}

QString PadModel::photoReads() const {
    const auto* photo = otherwise();
    if (!photo) return {};
    const QString typed = format::typed_off_gauge(format(), typedFields().reading(cylinder_, tag_));
    return tr("You typed %1, the photo reads %2.").arg(typed, read_off(*photo, format()));
}

QVariantList PadModel::photoChoices() const {
    const auto* photo = otherwise();
    if (!photo) return {};
    const QString typed = format::typed_off_gauge(format(), typedFields().reading(cylinder_, tag_));
    const auto choice = [](ReadSettled way, const QString& text) {
        return QVariantMap{{"value", QString::fromUtf8(word(way).data())}, {"text", text}};
    };
    return {choice(ReadSettled::as_read,
                   tr("Keep %1 as the photo reads").arg(format().typed(*photo->read_value))),
            choice(ReadSettled::as_typed, tr("Keep %1 as typed").arg(typed)),
            choice(ReadSettled::left_open, tr("Keep as typed, leave open which holds"))};
}

void PadModel::settlePhoto(const QString& text) {
    const auto way = from_word<ReadSettled>(text.toStdString());
    const auto* photo = otherwise();
    if (!way || !photo) return;
    if (*way == ReadSettled::as_read) {
        // The pad's unit may be another one than the gauge's in the photo.
        const auto unit = pressureUnit();
        const auto& read = *photo->read_value;
        const double u = photo->read_uncertainty ? unit.number(photo->read_uncertainty->value()) : 0.0;
        QString digits = QString::fromStdString(
            read.unit() == unit ? read.digits()
                                : TypedPressure::from(read.value(), unit, decimals_for(u)).digits());
        if (const auto set = typedFields().pressure(pad_field::set); dialInPercent() && set)
            digits = QString::fromStdString(
                TypedRatio::from(Ratio::from_si(1.0 - read.si() / set->si()), units::percent, 1).digits());
        // With its point none is placed.
        if (!digits.contains(QLatin1Char('.'))) digits += QLatin1Char('.');
        entry().text[mainField()] = digits;
        entry().next_replaces = false;
        photo_taken_ = takenFrom(*photo);
    } else {
        photo_settled_ = way;
        photo_asked_ = asTyped();
    }
    changed();
    keep();
}

}  // namespace lapwing

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// Digits that look like those of the dial's other scale: 150 that would be 15.0 bar, and were read as psi.
#include "qml/viewmodels/pad_model.h"

namespace lapwing {

QString PadModel::unitField() const {
    return is_cranking(test_) ? pad_field::final_reading : pad_field::set;
}

QString PadModel::asStruck() const {
    return place() + QLatin1Char(' ') + entry().typed(unitField()) + QLatin1Char(' ') + pressureUnitSymbol();
}

QString PadModel::inThisUnit() const {
    const auto value = typedFields().pressure(unitField());
    return value ? format().typed(*value) : QString();
}

QString PadModel::inOtherUnit() const {
    if (!other_unit_) return {};
    const auto unit = pressureUnit();
    const TypedPressure here =
        TypedPressure::from(other_unit_->value(), unit, format::decimalsOfGauge(typedFields().full_scale()));
    return format().typed(*other_unit_) + QStringLiteral(" (") + format().typed(here) + QLatin1Char(')');
}

QString PadModel::unitQuestion() const {
    return tr("%1, or %2?").arg(inThisUnit(), inOtherUnit());
}

QString PadModel::otherUnit() const {
    if (!other_unit_) return {};
    const QString struck = localized(entry().typed(unitField()));
    return tr("You typed %1. %2 would be unusual here, %3 not.").arg(struck, inThisUnit(), inOtherUnit());
}

QVariantList PadModel::unitChoices() const {
    if (!other_unit_) return {};
    return {QVariantMap{{"value", QStringLiteral("other")}, {"text", tr("It is %1").arg(inOtherUnit())}},
            QVariantMap{{"value", QStringLiteral("as shown")}, {"text", tr("It is %1").arg(inThisUnit())}}};
}

void PadModel::settleUnit(const QString& way) {
    if (!other_unit_) return;
    if (way == QLatin1String("other"))
        chosen_unit_ = other_unit_->unit();
    else
        unit_settled_ = asStruck();
    changed();
    if (!empty()) keep();
}

}  // namespace lapwing

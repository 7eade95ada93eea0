// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>
#include <QStringView>

#include "core/units/typed.h"

/// What a person types on the pad.
namespace lapwing::format {

/// Typed digits as they will be taken, and whether the decimal point was put there by the app: then it is
/// shown as such and one touch takes it away again.
struct Entry {
    QString digits;  ///< canonical (decimal point), empty when nothing was typed
    bool pointPlaced = false;

    bool operator==(const Entry&) const = default;
};

/// Places the decimal point of an all-digit entry by the gauge's range: on a gauge of 0 to 16 bar "92"
/// is 9.2, on one of 0 to 300 psi it is 92. An entry with its own point or comma stays as it is, and so does
/// one that fits the scale as typed when the gauge can't be read more finely.
///
/// @param typed     digits so far, with at most one decimal comma or point
/// @param fullScale of the gauge, in the entry's unit
/// @param decimals  how finely this gauge is read, in the entry's unit (decimalsOfGauge)
Entry placePoint(QStringView typed, double fullScale, int decimals);

/// Decimals that a gauge of that full scale (in the entry's unit) is read to: a hundredth of the scale or the
/// smallest division's own, whichever is known.
int decimalsOfGauge(double fullScale, std::optional<double> division = {});

/// "088" is 88; the nought of "0.88" stays.
QString withoutNoughts(QString digits);

}  // namespace lapwing::format

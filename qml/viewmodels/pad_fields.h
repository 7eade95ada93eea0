// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>
#include <vector>

#include "core/findings/pad.h"
#include "qml/format/typed_entry.h"
#include "qml/viewmodels/keyed_entries.h"

namespace lapwing {

/// The fields of the pad, by the keys that drafts and pages know.
namespace pad_field {
inline const QString first = QStringLiteral("first");
inline const QString final_reading = QStringLiteral("final");
inline const QString pulls = QStringLiteral("pulls");
inline const QString oil = QStringLiteral("oil");
inline const QString set = QStringLiteral("set");
inline const QString held = QStringLiteral("held");
inline const QString hold = QStringLiteral("hold");

bool is_pressure(const QString& field);
std::vector<QString> of(TestKind test);
/// The one that makes a reading: final or held.
QString main_of(TestKind test);
}  // namespace pad_field

constexpr bool is_cranking(TestKind test) {
    return test == TestKind::dry || test == TestKind::wet;
}

/// What is typed for one cylinder as the values that it stands for: where the decimal point goes, what is
/// carried over from the reading before, what the core gets to judge and to keep. A view for the moment: what
/// it was made of has to outlive it.
class PadFields {
public:
    PadFields(TestKind test, Fuel fuel, const Visit& visit, const Tester* tester, Unit<PressureTag> unit,
              bool dial_in_percent, const KeyedEntry& entry)
        : test_(test),
          fuel_(fuel),
          visit_(visit),
          tester_(tester),
          unit_(unit),
          dial_in_percent_(dial_in_percent),
          entry_(entry) {}

    /// Digits as they will be taken, and whether the app placed their point.
    [[nodiscard]] format::Entry placed(const QString& field) const;
    /// What stands in a field that was not typed: from the last reading of this session, or the tester.
    [[nodiscard]] QString carried(const QString& field) const;
    /// What counts: typed, else carried.
    [[nodiscard]] QString digits(const QString& field) const;
    [[nodiscard]] std::optional<TypedPressure> pressure(const QString& field) const;
    [[nodiscard]] bool empty() const { return entry_.typed(pad_field::main_of(test_)).isEmpty(); }

    /// For the judgement while typing.
    [[nodiscard]] findings::PadEntry pad_entry(int cylinder, Tag tag) const;
    /// For Keep: the reading without what only the session knows.
    [[nodiscard]] Reading reading(int cylinder, Tag tag) const;

    /// Of the gauge, or of one that is usual for the test; in the entry's unit.
    [[nodiscard]] double full_scale() const;

private:
    [[nodiscard]] std::optional<TypedPressure> typed_pressure(const QString& field) const;
    /// What is typed off a dial that is marked in % of leakage.
    [[nodiscard]] std::optional<TypedRatio> dial_loss() const;

    TestKind test_;
    Fuel fuel_;
    const Visit& visit_;
    const Tester* tester_;
    Unit<PressureTag> unit_;
    bool dial_in_percent_;  ///< leak-down: `held` is typed as the leakage that the dial shows
    const KeyedEntry& entry_;
};

}  // namespace lapwing

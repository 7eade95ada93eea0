// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/findings/case.h"
#include "core/physics/leakdown.h"

/// Leak-down arithmetic on typed readings, for findings and pad alike. Internal to this room.
namespace lapwing::findings {

/// The tester that a reading was taken with, what is not known of it (null: nothing) assumed.
physics::TesterPneumatics pneumatics(const Case& at, const Tester* tester, double set_pa);

/// Alike enough to count as repeats: the regulator is never set twice to the same needle's width.
bool same_set_pressure(double one_pa, double other_pa);

/// Set and held, with the 95 % uncertainty of their quotient and what stands behind it.
struct HeldOfSet {
    physics::TesterPneumatics tester;
    Derived set;
    Derived held;
    Derived leakage;
    bool restrictor_known = false;
    double restrictor_doubt = 0.0;  ///< of its effective area, standard, as a share
};

/// What repeats' scatter adds to the doubt of set and held, 95 %, Pa.
struct Scatter {
    double set_u95 = 0.0, held_u95 = 0.0;
};

/// Nothing where set is missing or zero, or held lies above set: the pad asks about those.
std::optional<HeldOfSet> held_of_set(const Case& at, const Tester* tester, const Derived& set,
                                     const Derived& held, double typed_step_pa, const Scatter& scatter = {});

/// The same leak on another tester, at the shop's own air pressure.
std::optional<OnTester> on_tester(const HeldOfSet& shown, Pressure set, Length restrictor);

/// Leakage alone on another tester, orifice law; absent where the sums fail.
std::optional<double> leakage_on(const HeldOfSet& shown, Pressure set, Length restrictor);

/// How large the leak is. Empty where it is larger than the tester can tell.
struct LeakSizes {
    std::optional<Derived> area;  ///< effective
    std::optional<Derived> hole;  ///< diameter of the round hole of that area
    std::optional<Derived> flow;  ///< ANR, at the held pressure
};
LeakSizes leak_sizes(const HeldOfSet& shown);

/// What readings at two set pressures of one tester (null: not known) say of the leak's law; nothing where
/// the pressures are too alike, or nothing was lost or held.
std::optional<Remark> leak_law(const Case& at, const Tester* tester, const HeldOfSet& one,
                               const HeldOfSet& other);

/// State and reasons: the maker's own limit on the maker's tester, else the trade's band.
State judge_leak(const Case& at, const HeldOfSet& shown, const std::vector<OnTester>& testers,
                 std::vector<Remark>& why);

/// The maker's own tester, where the card names a set pressure.
std::optional<OnTester> on_makers_tester(const Case& at, const HeldOfSet& shown);

}  // namespace lapwing::findings

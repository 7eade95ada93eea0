// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <optional>
#include <vector>

#include "core/findings/case.h"
#include "core/physics/leakdown.h"
#include "core/uncertainty/instrument.h"

/// Leak-down arithmetic on typed readings, for findings and pad alike, and for the rooms that stand on them.
namespace lapwing::findings {

/// The tester that a reading was taken with, what is not known of it (null: nothing) assumed.
physics::TesterPneumatics pneumatics(const Case& at, const Tester* tester, double set_pa);

/// Alike enough to count as repeats: the regulator is never set twice to the same needle's width.
bool same_set_pressure(double one_pa, double other_pa, const Reference& reference);
/// A cylinder's repeats at one set pressure: the newest, or the newest `other` one.
std::vector<const Reading*> at_one_set_pressure(const Case& at, int cylinder, bool other);

/// Set and held, with the 95 % uncertainty of their quotient and what stands behind it.
struct HeldOfSet {
    physics::TesterPneumatics tester;
    Derived set;
    Derived held;
    Derived leakage;
    bool restrictor_known = false;
    double restrictor_doubt = 0.0;  ///< of its effective area, standard, as a share
    double own_u95 = 0.0;           ///< of the leakage: what other readings with this tester don't share
    double scatter_pa = 0.0;        ///< of held, standard: the leak from one reading to the next
};

/// Set and held pressures of repeats at one set pressure, mean against mean. Readings have both and aren't
/// empty. Nothing where set is zero, or held lies above set: the pad asks about those.
std::optional<HeldOfSet> held_of_set(const Case& at, const Tester* tester,
                                     const std::vector<const Reading*>& readings);

/// What each reading held of its set pressure.
std::vector<double> shares_held(const std::vector<const Reading*>& readings);

/// What the share held scatters by, before this cylinder's own repeats are looked at: as much as a leak's
/// area usually changes from one reading to the next, pooled with what the visit's other cylinders show.
uncertainty::Repeatability usual_leak_scatter(const Case& at, const HeldOfSet& of, int cylinder);

/// How far the leakage moves when the leak's area grows by a small share of itself, over that share. 0 where
/// nothing is lost or nothing held: there the needle stands at an end of the scale whatever the leak does.
double leakage_by_area(const physics::TesterPneumatics& tester, double held_pa);

/// Doubt of the effective area of that tester's restrictor (null: nothing known), standard, as a share of it.
double restrictor_doubt(const Case& at, const Tester* tester);
/// How far the area reaches to either side, as a factor: two standard uncertainties.
double restrictor_reach(double restrictor_doubt);

/// The same leak on another tester, at the shop's own air pressure.
std::optional<OnTester> on_tester(const Case& at, const HeldOfSet& shown, Pressure set, Length restrictor);

/// Leakage alone on another tester, orifice law; absent where the sums fail.
struct LeakageOn {
    double leakage = 0.0;
    double u95 = 0.0;
    double own_u95 = 0.0;  ///< the part of it that other readings with this tester don't share
};
std::optional<LeakageOn> leakage_on(const HeldOfSet& shown, Pressure set, Length restrictor);

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

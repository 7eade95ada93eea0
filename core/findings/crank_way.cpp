// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/findings/crank_way.h"

#include "core/physics/atmosphere.h"

namespace lapwing::findings {

std::optional<double> ModelRuns::reading_pa(const physics::CrankingCase& of) {
    const std::vector<double> key{of.crank.bore_m,
                                  of.crank.stroke_m,
                                  of.crank.rod_m,
                                  of.compression_ratio,
                                  of.ratio_kind == physics::CompressionRatioKind::trapped ? 1.0 : 0.0,
                                  of.closing_after_bdc_rad,
                                  of.speed_rad_s,
                                  of.air_k,
                                  of.wall_k,
                                  of.tester.fitting_m3,
                                  of.tester.hose_m3,
                                  of.tester.check_valve == physics::CheckValvePlace::gauge ? 1.0 : 0.0,
                                  of.tester.crack_pa,
                                  static_cast<double>(of.strokes)};
    const auto known = done_.find(key);
    if (known != done_.end()) return known->second;
    const auto run = physics::crank(of);
    return done_[key] = run ? std::optional(run->last_gauge_pa) : std::nullopt;
}

CrankWay::CrankWay(const ModelInputs& from, const ModelInputs& to, ModelRuns& runs)
    : has_model_(from.silence == ModelSilence::none && to.silence == ModelSilence::none), runs_(runs) {
    if (!has_model_) return;
    here_ = cranking_case(from);
    there_ = cranking_case(to);
    // As everywhere: at the speed that counts, near top dead centre.
    here_.speed_rad_s *= from.speed_dip;
    there_.speed_rad_s *= to.speed_dip;
    here_.ambient_pa = there_.ambient_pa = physics::sea_level_pa;
}

template <class Change>
std::optional<double> CrankWay::factor(Change change) {
    if (!has_model_) return std::nullopt;
    physics::CrankingCase changed = here_;
    change(changed);
    const auto before = runs_.reading_pa(here_);
    const auto after = runs_.reading_pa(changed);
    if (!before || !after || !(*before > 0.0)) return std::nullopt;
    here_ = changed;
    return *after / *before;
}

std::optional<double> CrankWay::tester() {
    return factor([&](physics::CrankingCase& of) { of.tester = there_.tester; });
}

std::optional<double> CrankWay::heat() {
    return factor([&](physics::CrankingCase& of) { of.wall_k = there_.wall_k; });
}

std::optional<double> CrankWay::speed() {
    return factor([&](physics::CrankingCase& of) { of.speed_rad_s = there_.speed_rad_s; });
}

std::optional<double> CrankWay::pulls(int was, int is) {
    if (!has_model_) return std::nullopt;
    here_.strokes = was;
    return factor([&](physics::CrankingCase& of) { of.strokes = is; });
}

CrankedBy cranked_by(const Session& session, const Reading& reading) {
    return reading.cranked_by != CrankedBy::unknown ? reading.cranked_by : session.conditions.cranked_by;
}

bool may_be_turned_alike(CrankedBy one, CrankedBy other) {
    const auto starter = [](CrankedBy by) {
        return by == CrankedBy::starter || by == CrankedBy::remote_switch;
    };
    return one == CrankedBy::unknown || other == CrankedBy::unknown || one == other ||
           (starter(one) && starter(other));
}

OnRings oil_on_rings(const Visit& visit, const Reading& reading) {
    if (reading.oiled == Oiled::before || reading.oiled == Oiled::fresh || reading.tag == Tag::after_oil_soak)
        return OnRings::oiled;
    // Running burns it off.
    if (reading.tag == Tag::after_running)
        return reading.oiled == Oiled::no ? OnRings::dry : OnRings::unknown;
    for (const Reading& other : visit.readings)
        if (other.test == TestKind::wet && other.cylinder == reading.cylinder &&
            other.taken_at.unix_ms < reading.taken_at.unix_ms)
            return OnRings::oiled;
    return reading.oiled == Oiled::no ? OnRings::dry : OnRings::unknown;
}

}  // namespace lapwing::findings

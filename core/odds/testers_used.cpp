// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/odds/testers_used.h"

#include <algorithm>
#include <cmath>

#include "core/findings/crank_model.h"
#include "core/findings/leak_sums.h"
#include "core/odds/evidence_parts.h"
#include "core/physics/leakdown.h"

namespace lapwing::odds {

std::size_t TestersUsed::gauge(const Tester* gauge) {
    const std::size_t place = place_among(gauges_, gauge);
    out_.gauges = gauges_.size();
    return place;
}

std::size_t TestersUsed::hose(const Tester* gauge, const std::string& adapter) {
    auto with = out_.cranking->middle;
    with.tester = findings::cranking_case(
                      findings::model_inputs(whole_, at_.visit.session, at_.reference, gauge, adapter))
                      .tester;
    if (std::ranges::find(out_.hoses, with.tester) == out_.hoses.end() && !physics::check(with)) return 0;
    return place_among(out_.hoses, with.tester);
}

std::size_t TestersUsed::curve(double set_pa, const Tester* tester, bool failed) {
    LeakCurve wanted;
    wanted.tester = place_among(leak_testers_, {tester, failed});
    if (wanted.tester == out_.leak_testers.size())
        out_.leak_testers.push_back(
            failed ? LeakTester{.air_doubt = assumptions_.at("listen-failed")}
                   : LeakTester{.restrictor_doubt = 0.5 * std::log(findings::restrictor_reach(
                                                              findings::restrictor_doubt(at_, tester)))});
    wanted.set_pa = set_pa;
    wanted.ambient_pa = at_.site.ambient_pa;
    const double diameter = tester && tester->restrictor
                                ? tester->restrictor->si()
                                : findings::usual_restrictor_m(at_.engine, at_.reference);
    const double cd = tester && tester->restrictor_cd ? tester->restrictor_cd->si()
                                                      : at_.reference.assumed("restrictor-cd");
    wanted.restrictor_m2 = cd * physics::circle_area_m2(diameter);
    return place_among(out_.curves, wanted);
}

}  // namespace lapwing::odds

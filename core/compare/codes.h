// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <array>

#include "core/findings/codes.h"

/// Every message code that comparing visits can say, in the letters of core/findings/codes.h.
namespace lapwing::compare::codes {

inline constexpr auto all = std::to_array<findings::codes::Code>({
    // Converted, and said: then, now, by how much.
    {"compare.air_pressure", "PP"},
    {"compare.gauge", "tts"},
    {"compare.adapter", "s"},
    {"compare.heat", "wws"},
    {"compare.speed", "nns"},
    {"compare.pulls", "nns"},
    {"compare.tester", "tt"},
    {"compare.set_pressure", "pp"},
    {"compare.hold", "TT"},
    // Not converted; the doubt is wider for it.
    {"compare.gauge_as_it_is", "tts"},
    {"compare.induction", "s"},
    {"compare.battery", "s"},
    {"compare.heat_leak", "s"},
    {"compare.restrictor_unknown", "t"},
    {"compare.crankcase_tester", "tt"},
    // Not noted: taken as alike.
    {"compare.altitude_unknown", ""},
    {"compare.heat_unknown", ""},
    {"compare.throttle_unknown", ""},
    {"compare.speed_unknown", ""},
    {"compare.tester_unknown", "w"},
    {"compare.oil_unknown", ""},
    {"compare.oil_amount_unknown", ""},
    {"compare.hold_unknown", ""},
    // Not comparable.
    {"compare.oil_earlier", ""},
    {"compare.oil_later", ""},
    {"compare.oil_amount", "VV"},
    {"compare.heat_no_model", "ww"},
    {"compare.throttle", ""},
    {"compare.cranked_by", "ww"},
    {"compare.decompressor", ""},
    {"compare.tdc", ""},
    {"compare.emptied", ""},
    // The whole, and how a difference was made.
    {"compare.alike", ""},
    {"compare.note_cancels", ""},
    {"compare.note_nothing_cancels", ""},
    {"compare.note_day", "s"},
    // History: what is to be said of a cylinder since its repair.
    {"history.coming_back", "cw"},
    {"history.new_leak", "cw"},
    {"history.worse_since_repair", "c"},
    // The evidence: after the repair, now.
    {"history.leakage_worse", "ss"},
    {"history.reading_worse", "pp"},
    {"history.leakage_fits", "ss"},
    {"history.reading_fits", "pp"},
    {"history.together", ""},
    {"history.louder", "www"},
    {"history.heard_now", "ww"},
    {"history.oil_lifts", "s"},
    {"history.same_as_before", "w"},
    {"history.trend_agrees", "n"},
    // Trends.
    {"history.trend_undecided", "n"},
    {"history.trend_steady", "n"},
    {"history.trend_better_pressure", "dn"},
    {"history.trend_worse_pressure", "dn"},
    {"history.trend_better_leakage", "sn"},
    {"history.trend_worse_leakage", "sn"},
    // Plan to proof: reading, predicted low and high.
    {"proof.held", "cppp"},
    {"proof.below", "cppp"},
    {"proof.above", "cppp"},
    {"proof.not_measured", "cpp"},
    {"proof.not_comparable", "cppp"},
    {"proof.several", "cpp"},
    {"proof.converted", "p"},
    {"proof.held_anyway", "cp"},
    {"proof.apart", "n"},
    {"proof.too_few", "nn"},
    {"proof.hit_rate", "nnss"},
});

}  // namespace lapwing::compare::codes

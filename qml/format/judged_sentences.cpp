// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <QtGlobal>
#include <unordered_map>

#include "qml/format/tables.h"

/// Limits as they apply, why a test has its state, and how far the cylinders lie apart.
namespace lapwing::format {
namespace {

#define SAY(code, english) \
    { code, QT_TRANSLATE_NOOP("Findings", english) }

const std::unordered_map<std::string_view, const char*> sentences = {
    SAY("limits.none", "The engine card has no factory limits."),
    SAY("limits.scaled_pressure", "Factory limits are scaled to the shop's air pressure, %1."),
    SAY("limits.scaled_altitude", "Factory limits are scaled to the shop's altitude, %1 (air pressure %2)."),
    SAY("limits.altitude_unknown",
        "The shop's altitude is not known: factory limits are taken as they stand, for sea level."),
    SAY("limits.site_refused",
        "The altitude or air pressure noted can't be right: factory limits are taken as they stand, for sea "
        "level."),

    SAY("why.all_in_range", "%1: in range, by every figure that a reading is judged by here."),
    SAY("why.in_range", "%1 is within the normal range, which begins at %2."),
    SAY("why.above_lowest", "%1 is above the lowest limit of %2."),
    SAY("why.below_low", "%1 is below the normal range, which begins at %2."),
    SAY("why.below_lowest", "%1 is below the lowest limit of %2."),
    SAY("why.close_to_lowest",
        "%1 is so close to the lowest limit of %2 that gauge and repeats can't tell them apart."),
    SAY("why.unsure_of_lowest",
        "%1 may really be above or below the lowest limit of %2: ±%3 is left open. To know it better: "
        "%4."),
    SAY("why.above_high", "%1 is above the normal range, which ends at %2."),
    SAY("why.below_typical",
        "No factory range on the card. Makers ask for about %2 to %3 of such an engine; this is %1."),
    SAY("why.far_below_typical",
        "No factory range on the card. Makers ask for about %2 to %3 of such an engine; this is %1, far "
        "below "
        "that."),
    SAY("why.within_typical",
        "No factory range on the card. Makers ask for about %2 to %3 of such an engine; %1 reaches that."),
    SAY("why.within_expected", "No factory figure; the model expects %2 to %3, and %1 is within that."),
    SAY("why.below_expected",
        "No factory figure; the model expects %2 to %3, and %1 is below that. With the model's doubt that is "
        "no "
        "proof of a fault."),
    SAY("why.above_expected",
        "No factory figure; the model expects %2 to %3, and %1 is above that: oil or carbon in the chamber, "
        "or a "
        "figure on the card that is not right?"),
    SAY("why.put_right",
        "%1 as read. At full throttle, warm and well cranked, with no hose before the check valve, it would "
        "be "
        "about %2: this is held against the limit."),
    SAY("why.put_right_hose",
        "%1 as read, about %2 without what the hose takes off: this is held against the limit."),
    SAY("why.put_right_close",
        "%1 is so close to the lowest limit of %2 that it can't be told apart: put right what stood in the "
        "way, "
        "then test again."),
    SAY("why.lowered_throttle",
        "The throttle was closed, and how much that took off can't be worked out: hold it open, then test "
        "again."),
    SAY("why.lowered_hose",
        "The gauge's check valve sits behind the hose, and how much that took off can't be worked out: use a "
        "gauge "
        "whose check valve sits at the plug hole."),
    SAY("why.throttle_closed",
        "The throttle was closed: the reading is not held against what is expected of an open one."),
    SAY("why.decompressor", "The decompressor was at work: the reading is not held against any limit."),
    SAY("why.leak_band",
        "On a tester set to %4 it would show %1. Up to %2 seals well, up to %3 is wear, more is work."),
    SAY("why.leak_other_set",
        "Set to %1 it held %2: leakage %3. Another set pressure is no repeat and is not counted into the "
        "figure above."),
    SAY("why.leak_maker", "Leakage %1 on the maker's tester; the maker allows %2."),
    SAY("leak.bands",
        "Published bands, each on its own tester: %1. In range by %2, borderline by %3, fault by %4."),
    SAY("leak.spread_holds",
        "On a tester of %5 cylinder %1 would show %2, the most, and cylinder %3 the least, %4: %6 apart; %7 "
        "is "
        "allowed (%8)."),
    SAY("leak.spread_borderline",
        "On a tester of %5 cylinder %1 would show %2, the most, and cylinder %3 the least, %4: %6 apart; "
        "above "
        "%7 look again, above %8 it is a fault (%9)."),
    SAY("leak.spread_unsure",
        "On a tester of %5 cylinder %1 would show %2, the most, and cylinder %3 the least, %4: %6 apart. %7 "
        "is "
        "allowed (%8): these readings can't tell on which side of that they lie."),
    SAY("leak.spread_fails",
        "On a tester of %5 cylinder %1 would show %2, the most, and cylinder %3 the least, %4: %6 apart, "
        "more "
        "than the %7 allowed (%8)."),
    SAY("why.leak_close", "%1 is so close to the maker's %2 that the gauges can't tell them apart."),
    SAY("why.leak_close_to_band",
        "%1 is so close to the band's edge of %2 that the gauges can't tell them apart."),
    SAY("why.leak_unsure",
        "%1 may really be above or below the maker's %2: the gauges leave ±%3 open. To know it better: "
        "%4."),
    SAY("why.leak_unsure_of_band",
        "%1 may really be above or below %2: the gauges leave ±%3 open. To know it better: %4."),

    SAY("why.leak_tester_unknown",
        "With the tester's restrictor unknown it may as well be under %1: no fault before the tester is "
        "known."),

    SAY("spread.ratio_holds", "The lowest cylinder has %1 of the highest; at least %2 is asked (%3)."),
    SAY("spread.ratio_fails", "Too far below the highest: %1. The lowest has %2; at least %3 is asked (%4)."),
    SAY("spread.ratio_look_again",
        "Look again at %1: the lowest has %2 of the highest. A stricter rule asks for at least %3; by itself "
        "it "
        "calls for another look, never a fault (%4)."),
    SAY("spread.ratio_under", "Below %2: %1 (%3)."),
    SAY("spread.average_holds", "No cylinder lies %1 below the average of %2 (%3)."),
    SAY("spread.average_fails", "%2 or more below the average of %3: %1 (%4)."),
    SAY("spread.difference_holds", "The cylinders differ by %1; the engine's own limit is %2."),
    SAY("spread.difference_holds/alike",
        "The cylinders read the same; the engine's own limit for the difference is %2."),
    SAY("spread.difference_fails",
        "Too far below the highest: %1. The difference is %2; the engine's own limit is %3."),
    SAY("spread.difference_close",
        "Too far below the highest as read: %1. The difference is %2, so close to the limit of %3 that gauge "
        "and "
        "repeats can't tell them apart."),
    SAY("spread.difference_unsure",
        "Too far below the highest as read: %1. The difference is %2, but may really be more or less than "
        "the "
        "limit of %3: ±%4 is left open. To know it better: %5."),
    SAY("spread.difference_lowered",
        "The cylinders differ by %1 as read; the engine's own limit is %2. What stood in the way of the "
        "readings "
        "made the difference smaller too: put it right, then test again."),
    SAY("spread.own_ratio_holds", "The lowest cylinder has %1 of the highest; the maker asks at least %2."),
    SAY("spread.own_ratio_fails",
        "Too far below the highest: %1. The lowest has %2; the maker asks at least %3."),
    SAY("spread.within_gauge",
        "The cylinders differ by %1: less than the uncertainty of %2 that gauge and repeats bring. As far as "
        "these "
        "readings can tell they are alike."),
    SAY("spread.within_gauge/alike", "The cylinders read the same."),
};

#undef SAY

}  // namespace

const char* judgedSentenceOf(std::string_view code) {
    const auto at = sentences.find(code);
    return at == sentences.end() ? nullptr : at->second;
}

}  // namespace lapwing::format

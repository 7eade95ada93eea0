// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <QtGlobal>
#include <unordered_map>

#include "qml/format/tables.h"

namespace lapwing::format {
namespace {

#define SAY(code, english) \
    { code, QT_TRANSLATE_NOOP("Findings", english) }

const std::unordered_map<std::string_view, const char*> sentences = {
    SAY("compare.air_pressure",
        "Air pressure %1 before, %2 after: the earlier readings are converted to the later air."),
    SAY("compare.gauge",
        "Gauge \"%1\" before, \"%2\" after: the earlier readings are converted by %3 for hose and check "
        "valve. "
        "The errors of two gauges don't cancel."),
    SAY("compare.adapter", "Another adapter: the earlier readings are converted by %1 for its volume."),
    SAY("compare.heat",
        "Engine %1 before, %2 after: the earlier readings are converted by %3, as the model expects."),
    SAY("compare.speed",
        "Cranked at %1 rpm before, %2 rpm after: the earlier readings are converted by %3, as the model "
        "expects."),
    SAY("compare.pulls",
        "%1 pulls before, %2 after: the earlier readings are converted by %3, as the model expects."),
    SAY("compare.tester",
        "Leak-down tester \"%1\" before, \"%2\" after: the earlier leak is shown as the later tester would "
        "show "
        "it. The errors of two testers don't cancel."),
    SAY("compare.set_pressure",
        "Set to %1 before, %2 after: the earlier leak is shown as it would be at the later set pressure."),
    SAY("compare.hold",
        "Held for %1 before, for %2 after: the earlier crankcase reading is shown as it would be after the "
        "later time."),
    SAY("compare.crankcase_tester",
        "Crankcase tester \"%1\" before, \"%2\" after: the errors of two gauges don't cancel."),
    SAY("compare.hold_unknown",
        "How long the crankcase was held isn't noted for both tests: taken as the same."),
    SAY("compare.emptied",
        "A crankcase was empty before the end of the hold, so how fast it leaked isn't known: not "
        "comparable. Read again after a shorter time."),
    SAY("compare.gauge_as_it_is",
        "Gauge \"%1\" before, \"%2\" after: what their hoses do to a reading isn't known. Not converted; %3 "
        "more "
        "doubt is allowed for it."),
    SAY("compare.induction",
        "The induction was taken off at one of the two visits. Not converted; %1 more doubt is allowed for "
        "it."),
    SAY("compare.battery",
        "The battery was flat at one of the two visits and the cranking speed isn't noted. Not converted; %1 "
        "more doubt is allowed for it."),
    SAY("compare.heat_leak",
        "Engine warm at one visit, cold at the other: gaps and oil change with it. Not converted; %1 of the "
        "leakage is allowed as doubt."),
    SAY("compare.restrictor_unknown",
        "The restrictor of \"%1\" isn't on its card: the conversion is doubtful by it."),
    SAY("compare.altitude_unknown",
        "The shop's altitude isn't noted for both visits: the air pressure is taken as the same."),
    SAY("compare.heat_unknown", "Warm or cold isn't noted for both visits: taken as alike."),
    SAY("compare.throttle_unknown",
        "Whether the throttle was held open isn't noted for both visits: taken as alike."),
    SAY("compare.speed_unknown", "The cranking speed isn't noted for both visits: taken as alike."),
    SAY("compare.tester_unknown",
        "Which tester was used for the %1 isn't noted for both visits: an error of the gauge does not cancel "
        "out."),
    SAY("compare.oil_unknown",
        "Whether oil from the assembly was still on the rings isn't noted: if it was, the reading after the "
        "repair flatters. Test again after running in."),
    SAY("compare.oil_amount_unknown",
        "How much oil went in isn't noted for both wet tests: taken as the same."),
    SAY("compare.oil_earlier",
        "Oil was on the rings at the earlier of the two visits, and none is noted at the later one: not "
        "comparable."),
    SAY("compare.oil_later",
        "Oil was on the rings at the later of the two visits, and none is noted at the earlier one: not "
        "comparable. "
        "Oil of a wet test or of the assembly lifts a reading; let the engine run, then test again."),
    SAY("compare.oil_amount", "Wet tests with %1 and with %2 of oil: not comparable."),
    SAY("compare.heat_no_model",
        "Engine %1 before, %2 after, and the engine card lacks what a conversion needs: not comparable. Test "
        "again cold against cold or warm against warm."),
    SAY("compare.throttle", "The throttle was closed at one of the two visits: not comparable."),
    SAY("compare.cranked_by",
        "Cranked by %1 before, by %2 after, and the cranking speed isn't noted for both: not comparable."),
    SAY("compare.decompressor", "The decompressor was at work at one of the two visits: not comparable."),
    SAY("compare.tdc",
        "Perhaps the wrong TDC at one of the two visits: not comparable. Turn the crank one full turn and "
        "test "
        "again."),
    SAY("compare.alike", "Nothing stands in the way: testers, shop and circumstances were alike."),
    SAY("compare.note_cancels",
        "One and the same gauge: its zero error cancels in the difference, its gain nearly."),
    SAY("compare.note_nothing_cancels",
        "Two gauges: an error of one does not cancel out against the other's."),
    SAY("compare.note_day", "From one day to the next readings scatter by %1 beside the gauge."),

    SAY("history.coming_back", "Cylinder %1: the leak at %2 is coming back."),
    SAY("history.new_leak", "Cylinder %1: a leak at %2 has come up since the repair."),
    SAY("history.worse_since_repair",
        "Cylinder %1 has lost beyond doubt since the repair, and nothing says yet where. Listen at its "
        "exits."),
    SAY("history.leakage_worse", "Leakage %1 after the repair, %2 now: worse beyond doubt."),
    SAY("history.reading_worse", "Dry reading %1 after the repair, %2 now: worse beyond doubt."),
    SAY("history.leakage_fits", "Leakage %1 after the repair, %2 now: more."),
    SAY("history.reading_fits", "Dry reading %1 after the repair, %2 now: lower."),
    SAY("history.together", "Dry test and leak-down together: worse beyond doubt."),
    SAY("history.louder", "Air at %1: %2 after the repair, %3 now."),
    SAY("history.heard_now", "Air at %1: %2 now."),
    SAY("history.oil_lifts", "Oil lifts the reading by %1, more than its volume explains."),
    SAY("history.same_as_before", "Before the repair the signs pointed at %1 too."),
    SAY("history.trend_agrees", "%1 readings since the repair go down beyond doubt."),
    SAY("history.trend_undecided", "%1 readings: too few to tell a trend."),
    SAY("history.trend_steady", "%1 readings, no trend beyond their doubt."),
    SAY("history.trend_better_pressure", "Rising by %1 a year over %2 readings."),
    SAY("history.trend_worse_pressure", "Falling by %1 a year over %2 readings."),
    SAY("history.trend_better_leakage", "Leakage changes by %1 a year over %2 readings: better."),
    SAY("history.trend_worse_leakage", "Leakage changes by %1 a year over %2 readings: worse."),

    SAY("proof.held", "Cylinder %1 reads %2 after the work; %3 to %4 was predicted: it held."),
    SAY("proof.below", "Cylinder %1 reads %2 after the work, less than the %3 to %4 predicted."),
    SAY("proof.above", "Cylinder %1 reads %2 after the work, more than the %3 to %4 predicted."),
    SAY("proof.not_measured", "Cylinder %1: %2 to %3 was predicted. Test it again to see whether it holds."),
    SAY("proof.not_comparable",
        "Cylinder %1 reads %2 after the work, but not under circumstances that %3 to %4 was predicted for."),
    SAY("proof.several",
        "Cylinder %1: %2 to %3 was predicted for this work alone, but more was done before the next test."),
    SAY("proof.converted",
        "%1 was read; here it is converted to the tester and the conditions of the visit that predicted it."),
    SAY("proof.held_anyway",
        "Cylinder %1 read %2 before the work, which lies in the predicted range too: without any repair it "
        "would have held. So it says nothing of how good predictions are and is not counted among them."),
    SAY("proof.apart",
        "Left out of this count because they would have held without any repair, which says nothing about "
        "the "
        "assumptions: %1."),
    SAY("proof.too_few", "Repairs with a prediction so far: %1. How many held is said once there are %2."),
    SAY("proof.hit_rate",
        "%1 of %2 predictions held; 9 of 10 are meant to. By chance alone the true share lies between %3 and "
        "%4."),
};

const std::unordered_map<std::string_view, const char*> words = {
    SAY("change:not measured", "not measured twice"),
    SAY("change:better beyond doubt", "better beyond doubt"),
    SAY("change:better", "better"),
    SAY("change:no real change", "no real change"),
    SAY("change:worse", "worse"),
    SAY("change:not comparable", "not comparable"),
    SAY("treatment:corrected", "converted"),
    SAY("treatment:allowed for", "doubt allowed for it"),
    SAY("treatment:not noted", "not noted"),
    SAY("treatment:not comparable", "not comparable"),
    SAY("direction:undecided", "undecided"),
    SAY("direction:steady", "no trend"),
    SAY("direction:better", "better"),
    SAY("direction:worse", "worse"),
    SAY("foretold:held", "held"),
    SAY("foretold:below", "reads less"),
    SAY("foretold:above", "reads more"),
    SAY("foretold:not measured", "not tested yet"),
    SAY("foretold:not comparable", "not comparable"),
    SAY("foretold:several repairs", "several repairs at once"),
    SAY("input:before", "before"),
    SAY("input:after", "after"),
    SAY("input:before_as_measured", "before, as measured"),
};

#undef SAY

}  // namespace

const char* compareSentenceOf(std::string_view code) {
    const auto at = sentences.find(code);
    return at == sentences.end() ? nullptr : at->second;
}

const char* compareWordOf(std::string_view code) {
    const auto at = words.find(code);
    return at == words.end() ? nullptr : at->second;
}

}  // namespace lapwing::format

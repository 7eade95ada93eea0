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
    SAY("cylinder.not_measured", "Cylinder %1: not measured."),
    SAY("cylinder.seals_well", "Cylinder %1 seals well."),
    SAY("cylinder.reads_in_range", "Cylinder %1 reads %2: in range."),
    SAY("cylinder.reads_no_limit", "Cylinder %1 reads %2. There is no factory limit to hold it against."),
    SAY("cylinder.reads_as_expected",
        "Cylinder %1 reads %2, as expected of one that seals well. There is no factory figure."),
    SAY("cylinder.reads_below_expected",
        "Cylinder %1 reads %2, less than expected: borderline. There is no factory figure."),
    SAY("cylinder.reads_decompressor",
        "Cylinder %1 reads %2 with the decompressor at work: that only compares cylinders."),
    SAY("cylinder.reads_borderline", "Cylinder %1 reads %2: borderline."),
    SAY("cylinder.reads_low", "Cylinder %1 reads %2: too low. A leak-down test shows where it leaks."),
    SAY("cylinder.below_limit",
        "Cylinder %1 reads %2: below the factory limit of %3. A leak-down test shows where it leaks."),
    SAY("cylinder.below_limit_points_at",
        "Cylinder %1 reads %2: below the factory limit of %3, and the signs point at %4."),
    SAY("cylinder.far_below_usual",
        "Cylinder %1 reads %2: far below what makers ask of such an engine. A leak-down test shows where it "
        "leaks."),
    SAY("cylinder.shut_in_range", "Cylinder %1 reads %2 with the throttle shut: in range all the same."),
    SAY("cylinder.shut_low",
        "Cylinder %1 reads %2 with the throttle shut: too low even so. Repeat with the throttle wide open to "
        "be sure."),
    SAY("cylinder.shut_no_verdict",
        "Cylinder %1 reads %2 with the throttle shut, which lowers it: no verdict before it is repeated with "
        "the throttle wide open."),
    SAY("cylinder.low_points_at", "Cylinder %1 reads %2: too low, and the signs point at %3."),
    SAY("cylinder.low_adjust_first",
        "Cylinder %1 reads %2: too low, but %3 had too little clearance. Adjust first, then test again."),
    SAY("cylinder.wear", "Cylinder %1 loses %2: wear, not yet a fault."),
    SAY("cylinder.leaks_unheard", "Cylinder %1 leaks %2. Listen where the air comes out."),
    SAY("cylinder.leaks_at", "Cylinder %1 leaks %2, most of it at %3 as far as the ear can tell."),
    SAY("cylinder.leaks_at_joint",
        "Cylinder %1 leaks %2, most of it at the joint to cylinder %3 as far as the ear can tell."),
    SAY("cylinder.leaks_clearance_first",
        "Cylinder %1 leaks %2 and the air points at %3. Check its clearance before any verdict: a valve "
        "without clearance looks burnt."),
    SAY("cylinder.leaks_adjust_first",
        "Cylinder %1 leaks %2 at %3, which had too little clearance. Adjust first, then test again."),
    SAY("cylinder.ask_tdc",
        "Cylinder %1: perhaps the wrong TDC. Turn the crank one full turn and test again before any "
        "verdict."),
    SAY("cylinder.ask_decompressor",
        "Cylinder %1 reads %2: decompressor, not proof of a leak. Do a leak-down test."),
    SAY("cylinder.seals_but_reads_low",
        "Cylinder %1 seals well (leakage %3) yet reads only %2. Look at valve timing, throttle, starter "
        "speed "
        "and hose."),
    SAY("cylinder.leaks_but_reads_well",
        "Cylinder %1 reads %2, in range, yet leaks %3. Test again and listen where the air comes out."),
    SAY("cylinder.joint_with",
        "Cylinder %1 and its neighbour %2 are both low: look at the joint between them."),
    SAY("cylinder.wet_only", "Cylinder %1 has a wet test only: nothing to compare it with."),

    SAY("engine.not_measured", "Nothing measured yet."),
    SAY("engine.seals_well", "Every cylinder seals well."),
    SAY("engine.in_range", "Every cylinder is in range."),
    SAY("engine.no_limit",
        "Measured, but there is nothing to judge the readings by. Put the factory limits on the engine "
        "card."),
    SAY("engine.decompressor",
        "With the decompressor at work the readings only compare cylinders. A leak-down test tells how each "
        "one "
        "seals."),
    SAY("engine.throttle_shut",
        "The throttle was shut, which lowers every reading. Repeat the dry test with the throttle wide open, "
        "warm, before any verdict."),
    SAY("engine.fault", "Fault at %1."),
    SAY("engine.borderline", "Borderline: %1. No fault."),
    SAY("engine.not_all_measured", "%1 of %2 cylinders measured, no fault so far."),
    SAY("engine.questions_first", "A question about %1 comes before any verdict."),
    SAY("engine.low_but_seals",
        "Every cylinder seals well yet reads low: look at valve timing, throttle, starter speed and hose."),
    SAY("engine.joint", "Cylinders %1 and %2 are both low: look at the joint between them."),
    SAY("engine.low_everywhere",
        "Every cylinder reads low. Before blaming them all: throttle held open, starter speed, gauge and "
        "hose, "
        "valve timing."),
    SAY("engine.crankcase", "The crankcase does not hold its pressure."),

    SAY("limits.none", "The engine card has no factory limits."),
    SAY("limits.scaled_pressure", "Factory limits are scaled to the shop's air pressure, %1."),
    SAY("limits.scaled_altitude", "Factory limits are scaled to the shop's altitude, %1 (air pressure %2)."),
    SAY("limits.altitude_unknown",
        "The shop's altitude is not known: factory limits are taken as they stand, for sea level."),
    SAY("limits.site_refused",
        "The altitude or air pressure noted can't be right: factory limits are taken as they stand, for sea "
        "level."),

    SAY("why.in_range", "%1 is within the normal range, which begins at %2."),
    SAY("why.above_lowest", "%1 is above the lowest limit of %2."),
    SAY("why.below_low", "%1 is below the normal range, which begins at %2."),
    SAY("why.below_lowest", "%1 is below the lowest limit of %2."),
    SAY("why.close_to_lowest",
        "%1 is so close to the lowest limit of %2 that gauge and repeats can't tell them apart."),
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
        "%1 as read. With what stood in the way of the reading taken off it, that is about %2: this is held "
        "against "
        "the limit."),
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
    SAY("why.decompressor",
        "The decompressor was at work: the reading compares cylinders only and is not held against any "
        "limit."),
    SAY("why.leak_band",
        "On the 80 psi tester it would show %1. Up to %2 seals well, up to %3 is wear, more is work."),
    SAY("why.leak_maker", "Leakage %1 on the maker's tester; the maker allows %2."),
    SAY("leak.bands",
        "Of %1 published bands, each on its own tester: %2 say in range, %3 borderline, %4 fault."),
    SAY("leak.spread_holds",
        "On a tester of %5 cylinder %1 would show %2, the most, and cylinder %3 %4, the least: %6 apart; %7 "
        "is "
        "allowed (%8)."),
    SAY("leak.spread_borderline",
        "On a tester of %5 cylinder %1 would show %2, the most, and cylinder %3 %4, the least: %6 apart; "
        "above "
        "%7 look again, above %8 it is a fault (%9)."),
    SAY("leak.spread_fails",
        "On a tester of %5 cylinder %1 would show %2, the most, and cylinder %3 %4, the least: %6 apart, "
        "more "
        "than the %7 allowed (%8)."),
    SAY("why.leak_close", "%1 is so close to the maker's %2 that the gauges can't tell them apart."),
    SAY("why.leak_close_to_band",
        "%1 is so close to the band's edge of %2 that the gauges can't tell them apart."),

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

    SAY("thumb.wet_rings", "Oil raised the reading by %1, %2 or more: rings."),
    SAY("thumb.wet_no_rise",
        "Oil raised the reading by %1, less than %2: valves, a broken ring or the head gasket."),
    SAY("thumb.wet_no_rise_two_stroke",
        "Oil raised the reading by %1, less than %2: a broken ring or the head gasket."),
    SAY("thumb.wet_within_gauge", "Gauge and repeats can't tell this rise from %1 with certainty."),
    SAY("thumb.wet_volume_explains", "The rise says little: the volume of the oil alone explains up to %1."),
    SAY("thumb.loudest_exit", "Loudest exit: %1 (%2). That means %3."),
    SAY("thumb.loudest_exit_joint",
        "Loudest exit: plug hole of cylinder %1 (%2). That means the joint to cylinder %1."),
    SAY("thumb.ring_air_normal",
        "Loudest exit: %1 (%2). Some air past the rings is normal; this cylinder seals well."),
    SAY("thumb.loudest_exit_no_path", "Loudest exit: %1 (%2). In this engine it names no single path."),
    SAY("thumb.exits_tie", "%1 and %2 are equally loud: no single path stands out."),
    SAY("thumb.nothing_heard",
        "Air is lost, yet nothing was heard at any exit. Try hose, hand and soapy water."),
    SAY("thumb.gasket_or_crack", "A gasket sign may also be a crack in head or block."),
    SAY("thumb.first_puff_rings", "First puff low (%1 of what it should reach), then it builds up: rings."),
    SAY("thumb.first_puff_valves",
        "First puff low (%1 of what it should reach) and it does not build up: valves."),
    SAY("thumb.first_puff_low_two_stroke",
        "First puff low (%1 of what it should reach): rings or head gasket."),
    SAY("thumb.joint", "Cylinders %1 and %2 are neighbours and both low: the joint between them."),

    SAY("contra.rules_disagree", "Two rules of thumb disagree: one says %1, the other %2."),
    SAY("contra.low_but_seals",
        "It reads low (%1) yet seals well (leakage %2): look at valve timing, throttle, starter speed and "
        "hose."),
    SAY("contra.leaks_but_reads_well",
        "It reads %1, in range, yet leaks %2: a leak that only shows at rest, a wrong TDC, or a leaking "
        "adapter."),

    SAY("contra.photo_differs",
        "The photo of the %1 reads %3, and %2 was typed: look at the photo and settle it."),

    SAY("question.tdc",
        "Air at intake and exhaust with very little held: is cylinder %1 at the TDC between exhaust and "
        "intake, "
        "both valves open? Turn the crank one full turn and test again."),
    SAY("question.very_low_first",
        "Cylinder %1 held %2, and %3 when it was tested again. Both can't be right: %2 looks like the wrong "
        "TDC and is not counted. If %3 was the wrong one, delete it or test again."),
    SAY("question.very_low_last",
        "Cylinder %1 held %3, and then only %2. Both can't be right: %2 looks like the wrong TDC and is not "
        "counted until it is settled. Turn the crank one full turn and test again; delete the wrong one."),
    SAY("question.clearance_wanted",
        "Is %3 enough for %2 of cylinder %1? The engine's manual says. Put the wanted range on the engine "
        "card, "
        "under the valves: no verdict on a valve before it is known."),
    SAY("question.earlier_fault",
        "At an earlier visit a leak-down test found a fault at %1, and none was done there since: what this "
        "visit reads does not take that back."),
    SAY("question.clearance",
        "The clearance of %2 in cylinder %1 is not recorded. No verdict on a valve before it is."),
    SAY("question.decompressor",
        "The decompressor of cylinder %1 was at work: a low reading is no proof of a leak. Do a leak-down "
        "test."),
    SAY("question.decompressor_unknown",
        "Has this engine a decompressor? With one at work, cylinders read %2 to %3, as cylinder %1 does. A "
        "leak-down test settles it."),
    SAY("question.oil_before_leak_down",
        "Oil went into cylinder %1 before its leak-down test: oiled rings leak less than they will."),
    SAY("question.wet_on_diesel",
        "Oil was put into a diesel: the reading is not judged. The chamber is small and oil can lock it."),
    SAY("question.wet_without_dry", "Cylinder %1 has a wet test but no dry one: the rise is not known."),
    SAY("question.above_high",
        "Cylinder %1 reads %2, above the normal range: oil or carbon in the chamber, or the wrong gauge or "
        "limits?"),
    SAY("question.companion",
        "Cylinders %1 and %2 stand at top dead centre together. Air in the plug hole of %2 means the joint "
        "only if "
        "its valves are shut: turn %2 away from overlap or look at its rockers."),
    SAY("clearance.none", "Cylinder %1, %2 %3: no clearance. The valve is held open: adjust first."),
    SAY("clearance.too_small", "Cylinder %1, %2 %3: %4, less than the least of %5. Adjust first."),
    SAY("clearance.no_range",
        "Cylinder %1, %2 %3: %4 found, and nothing to hold it against. Put the wanted clearance from the "
        "engine's manual on the engine card, under the valves."),
    SAY("clearance.too_large",
        "Cylinder %1, %2 %3: %4, more than the most of %5: noise, but the valve seats."),
    SAY("clearance.adjusted",
        "Cylinder %1, %2 %3: was too small and is put right. Readings from before don't count for this "
        "valve."),

    SAY("weak.step", "Not done: %1. %2"),
    SAY("weak.steps_open", "Steps of Prepare that were not marked either way: %1."),
    SAY("weak.throttle_closed", "The throttle was closed: every cylinder reads low."),
    SAY("weak.throttle_closed_by",
        "The throttle was closed: every cylinder reads low, by %1 to %2 as the model has it."),
    SAY("weak.battery_by",
        "The battery showed %1: a slow starter makes every cylinder read low, by about %2 as the model has "
        "it."),
    SAY("weak.cold_by", "The engine was cold: it reads about %1 lower than warm, as the model has it."),
    SAY("weak.hose",
        "The volume before the check valve takes about %1 off every reading. It is put back before a factory "
        "limit "
        "judges them; its doubt stays."),
    SAY("weak.tyre_core",
        "A tyre-valve core opens late and takes about %1 off every reading, as the model has it."),
    SAY("weak.battery", "The battery showed %1: a slow starter makes every cylinder read low."),
    SAY("weak.drift_lower",
        "Cylinder %1 read %2 lower when it was measured again at the end: the battery may have been tiring, "
        "and cylinders measured late may read too low."),
    SAY("weak.drift_higher",
        "Cylinder %1 read %2 higher when it was measured again at the end: the engine may have warmed up, "
        "and cylinders measured late may read too high."),
    SAY("weak.heat_unknown", "Cold or warm is not noted: a cold engine reads about 10 % lower."),
    SAY("weak.tester_unknown", "Which gauge was used for the %1 is not noted: its uncertainty is assumed."),
    SAY("weak.self_check_missing", "%1: the self-check \"%2\" was never done."),
    SAY("weak.self_check_failed",
        "%1: the self-check \"%2\" failed. Put the tester right before blaming the engine."),
    SAY("weak.class_unknown", "%1: the gauge's class is not known; %2 of its full scale is assumed."),
    SAY("weak.one_gauge", "%1 has one gauge: the regulator may sag under flow without being seen."),
    SAY("weak.restrictor_unknown", "%1: the restrictor is not known; %2 is assumed."),

    SAY("weak.still_rising",
        "Cylinder %1 was read after %2 pulls, when a gauge like this shows about %3 of what it comes to."),
    SAY("weak.few_pulls", "Cylinder %1 was read after %2 pulls; makers read after %3 or more."),

    SAY("law.hole", "At two set pressures it leaks like a hole (exponent %1)."),
    SAY("law.gap", "At two set pressures it leaks like a narrow gap (exponent %1)."),
    SAY("law.seats", "The higher set pressure seats the leak: its area gets smaller (exponent %1)."),
    SAY("law.opens", "The higher set pressure opens the leak further: its area grows (exponent %1)."),
    SAY("law.between",
        "At two set pressures it leaks neither like a hole nor like a narrow gap (exponent %1)."),
    SAY("law.undecided",
        "Two set pressures, but the gauges can't tell a hole from a narrow gap (exponent %1)."),

    SAY("crankcase.holds", "The crankcase holds: %1 after %3, at least %2 is asked."),
    SAY("crankcase.holds_no_time",
        "The crankcase ended at %1, at least %2 is asked; how long it was held is not noted."),
    SAY("crankcase.loses",
        "The crankcase fell to %1; at least %2 is asked. Crank seals, base gasket, reed or rotary valve."),
    SAY("crankcase.close", "The crankcase ended at %1, so close to %2 that the gauge can't tell them apart."),
    SAY("crankcase.too_short", "The crankcase was held for %1 only; the maker asks for %2."),
    SAY("crankcase.no_limit", "The crankcase went from %1 to %2; the card has no limit for it."),

    SAY("next.dry_all", "Start with the dry test: it is quick and shows which cylinder to look at."),
    SAY("next.dry", "Cylinder %1 has no dry reading yet: the others can't be compared with it."),
    SAY("next.leak_down_low",
        "Cylinder %1 is not in range: a leak-down test shows how much it leaks and where."),
    SAY("next.leak_down_decompressor", "Leak-down test of cylinder %1: it does not mind the decompressor."),
    SAY("next.leak_down_all",
        "Leak-down test of every cylinder: if they seal well, the cause lies elsewhere."),
    SAY("next.listen", "Listen at cylinder %1's exits with the air on: where it comes out names the leak."),
    SAY("next.wet", "Wet test of cylinder %1, last of all: it tells rings from the rest."),
    SAY("next.clearances",
        "Check the valve clearances of cylinder %1: a valve without clearance looks burnt."),
    SAY("next.clearance_wanted",
        "Look up the clearance wanted for cylinder %1 in the engine's manual and put it on the engine card: "
        "what was found can't be judged without it."),
    SAY("next.adjust", "Adjust the valve clearance of cylinder %1, then test it again."),
    SAY("next.retest_adjusted", "The clearance of cylinder %1 was put right: test it again."),
    SAY("next.turn_once",
        "Turn the crank one full turn and test cylinder %1 again: it may stand at the wrong TDC."),
    SAY("next.crankcase", "Crankcase hold test: seals, base gasket and reed show in no other test."),
    SAY("next.repeat_open",
        "Repeat the dry test with the throttle held wide open, as a session of its own: it was shut, which "
        "lowers every reading."),
    SAY("next.repeat_open_warm",
        "Repeat the dry test warm and with the throttle held wide open, as a session of its own: cold and "
        "shut "
        "lower every reading."),
    SAY("next.repeat_warm",
        "If the engine runs, repeat the dry test warm, as a session of its own: cold lowers every reading."),
    SAY("next.earlier_leak",
        "Cylinder %1 leaked %2 at an earlier visit, and no air was put on it since: do its leak-down test."),
    SAY("next.earlier_leak_down",
        "An earlier visit asked for a leak-down test of cylinder %1; it was not done since."),
    SAY("next.earlier_listen",
        "An earlier visit found cylinder %1 leaking and nobody listened where: do it with the air on."),
    SAY("next.earlier_turn_once",
        "An earlier visit left open whether cylinder %1 stood at the right TDC: test it again."),
    SAY("next.earlier_clearances",
        "An earlier visit asked for the valve clearances of cylinder %1; they are not recorded since."),
    SAY("next.earlier_adjust",
        "An earlier visit found too little valve clearance at cylinder %1; nothing is recorded since."),
    SAY("next.earlier_request",
        "Somebody asked for this test at an earlier visit, and it is still to do: %1."),
    SAY("next.earlier_request_of",
        "Somebody asked for this test of cylinder %1 at an earlier visit, and it is still to do: %2."),
    SAY("next.tester_check", "Check \"%1\" first: %2."),
    SAY("next.plan", "No test is outstanding: read the findings and decide."),
    SAY("next.planned", "No test is outstanding; what to do about it is noted with this visit."),
    SAY("next.watch",
        "No test is outstanding and nothing is a fault yet. Measure again later: what counts is whether it "
        "grows."),
    SAY("next.nothing", "Nothing outstanding."),

    SAY("pad.negative", "Below zero? Look at the needle at rest."),
    SAY("pad.zero",
        "Nothing at all? Is the gauge screwed in and its check valve fitted, and was the engine cranked?"),
    SAY("pad.wet_below_dry",
        "Wet %1, but dry %2: oil can't lower a reading. Test again, or look for a slip of the finger."),
    SAY("pad.over_scale", "%1 is over the gauge's scale of %2. Is the decimal point right?"),
    SAY("pad.held_over_set", "Held %1 is over the set %2. Were the two swapped?"),
    SAY("pad.no_set", "Type the set pressure too: leakage needs both."),
    SAY("pad.set_differs", "Set %1; this tester is usually set to %2. Is that meant?"),
    SAY("pad.first_over_final", "First puff %1 is over the final reading %2. Were the two swapped?"),
    SAY("pad.slip_high", "%1 is far above what to expect here (about %2). Is the decimal point right?"),
    SAY("pad.slip_low", "%1 is far below what to expect here (about %2). Is the decimal point right?"),
    SAY("pad.very_low_held",
        "Very little held. Is it the right TDC? If air comes at intake and exhaust, turn the crank one full "
        "turn."),
    SAY("pad.within_gauge", "A fall of %1 is within the gauge's own error."),
    SAY("check.zero", "The needle stands at zero."),
    SAY("check.zero_off",
        "The needle stands %1 off zero. Kept with this check, it counts in the doubt of every reading."),
    SAY("check.reference_within", "%1 apart; this gauge's class allows %2."),
    SAY("check.reference_off",
        "%1 apart, more than the %2 that this gauge's class allows: trust its readings less, or replace it."),
    SAY("check.outlet_holds", "It holds: %1 lost."),
    SAY("check.outlet_leaks",
        "%1 lost with the outlet closed: the tester itself would show %2 leakage on a cylinder that seals "
        "well."),
    SAY("check.restrictor",
        "By this hole the restrictor is one of %1. Type it on the card: readings are converted with it."),
    SAY("check.restrictor_as_card", "By this hole the restrictor is one of %1; the card says %2: they fit."),
    SAY("check.restrictor_off",
        "By this hole the restrictor is one of %1; the card says %2. Readings are converted with the card's: "
        "put it "
        "right there."),
    SAY("pad.oil_locks",
        "%1 of oil fills %2 of this chamber: that can lock the engine and bend a rod. Put in less, and turn "
        "the "
        "engine by hand before it is cranked."),
    SAY("pad.diesel_wet", "No oil into a diesel: it can lock the engine and bend a rod."),

    SAY("fact.limit_range", "Factory range here: %1 to %2."),
    SAY("fact.limit_lowest", "Factory limit here: %1."),
    SAY("fact.first_usual", "First puff %1 of the final reading: as in a cylinder that seals well."),
    SAY("fact.first_slow",
        "First puff only %1 of the final reading: it builds up slowly, as leaking rings do."),
    SAY("fact.first_stays", "First puff %1 of the final reading already: it hardly builds up."),
    SAY("fact.oil_volume", "The volume of %1 of oil alone explains a rise of %2 to %3."),
    SAY("fact.still_rising",
        "After %1 pulls a cylinder that seals well shows about %2 of what this gauge comes to: crank on "
        "until "
        "the "
        "needle stands."),
    SAY("fact.few_pulls", "Only %1 pulls: makers read after %2 or more. Crank on until the needle stands."),
    SAY("fact.without_hose",
        "The volume before the check valve takes off about %1: without it this would be about %2."),

    SAY("model.healthy", "No factory figure; the model expects %1 to %2 of a cylinder that seals well."),
    SAY("model.above_ratio",
        "No expectation: at a compression ratio of %1, above 14, the model reads far over what makers print. "
        "Use the maker's figure."),
    SAY("model.refused", "The model gives no expectation. %1"),
    SAY("model.decompressor",
        "The decompressor is at work: readings compare cylinders only, nothing else is expected of them."),
    SAY("model.released",
        "With a working decompressor such an engine reads about %1 to %2 when nothing leaks. This is no "
        "limit."),
    SAY("model.induction_off",
        "The induction was taken off: nothing throttles the air, and the reading stands as with the throttle "
        "held "
        "open."),
    SAY("model.missing_one",
        "No factory figure, and to expect one the model needs from the engine card: %1."),
    SAY("model.missing_two",
        "No factory figure, and to expect one the model needs from the engine card: %1 and %2."),
    SAY("model.missing_three",
        "No factory figure, and to expect one the model needs from the engine card: %1, %2 and %3."),

    SAY("source.typed", "From the readings."),
    SAY("source.published", "Published: %1."),
    SAY("source.common_practice", "Common practice of the trade, no published source."),
    SAY("source.assumption", "A working assumption of this app. %1"),
    SAY("source.physics", "Physics: %1."),
    SAY("source.card", "Engine card (%1) %2"),

    SAY("note.mean", "Mean of %1 readings; all of them count."),
    SAY("note.repeat_scatter",
        "Few repeats know their scatter badly: a usual one of %1 counts with it, as %2 further repeats."),
    SAY("note.one_reading", "One reading: a scatter of %1 is assumed."),
    SAY("note.leak_repeat", "One reading: the leak's area is assumed to vary by %1."),
    SAY("note.put_right", "Readings put right first for what stood in their way, as limits mean them."),
    SAY("note.digits", "Sizes and angles are taken as exact to half the last digit typed."),
    SAY("note.class_unknown", "The gauge's class is not known: %1 of its full scale is assumed."),
    SAY("note.tester_unknown", "Which gauge it was is not noted: its error is assumed."),
    SAY("note.restrictor_unknown", "The tester's restrictor is not known: %1 is assumed."),
    SAY("note.cd_assumed",
        "The restrictor's discharge coefficient is taken from the working assumptions unless the tester has "
        "its own."),
    SAY("note.droop", "One gauge: the regulator may sag by up to %1 of the set pressure under flow."),
    SAY("note.hot", "On a hot engine the leak comes out about 11 % too small."),
    SAY("note.law_range",
        "Hole and narrow gap are two example laws, not bounds: pressure can also seat a ring or open a "
        "gasket."),
    SAY("note.altitude_unknown", "The shop's altitude is not known: not scaled."),
    SAY("note.wide_open", "Nothing was held: the leak is larger than this tester can tell."),
    SAY("note.none_lost", "Nothing was lost that this gauge could show."),
    SAY("note.rod_guessed", "The rod's length is not on the card: %1 strokes are assumed."),
    SAY("note.ratio_guessed", "The compression ratio is guessed: it may be out by %1."),
    SAY("note.closing_assumed",
        "The intake closing is not on the card: %1 after bottom dead centre is assumed, %2 to either side."),
    SAY("note.port_closing_assumed",
        "The exhaust port's closing is not on the card: %1 after bottom dead centre is assumed, %2 to either "
        "side."),
    SAY("note.closing_at_lift",
        "The closing is given at a lift: on its seat the valve closes %1 to %2 later."),
    SAY("note.closing_lift_unknown",
        "Whether the closing is meant at the seat or at a lift is not on the card: from a lift it would be "
        "%1 to "
        "%2 later."),
    SAY("note.timing_variable", "Variable valve timing: the closing may lie %1 to either side."),
    SAY("note.speed_assumed", "The cranking speed is not noted: it is assumed, and may be out by %1."),
    SAY("note.heat_unknown", "Cold or warm is not noted: taken as cold."),
    SAY("note.gauge_assumed",
        "Which gauge it was is not noted: hose and gauge of %1 behind a check valve at the plug hole are "
        "assumed."),
    SAY("note.hose_assumed", "The volume of hose and gauge is not on the tester's card: %1 is assumed."),
    SAY("note.valve_place_assumed",
        "Where the check valve sits is not on the tester's card: the plug hole is assumed."),
    SAY("note.oil_assumed", "How much oil went in is not noted: %1 is assumed."),
    SAY("note.friction", "Friction holds the crank in part; it is left out."),
    SAY("note.model_doubt", "The model itself may be out by %1: not yet counted on real engines."),
    SAY("note.restrictor_doubt", "The effective area of the tester's restrictor may be out by %1."),
    SAY("note.band", "%1: %5 at %2. In range up to %3, a fault above %4."),
    SAY("note.speed_dip",
        "The starter slows down where the gas pushes back: %1 of the mean speed is reckoned with."),
    SAY("note.model_leaves_out", "Left out: waves in the ports, oil mist, crevices."),
};

#undef SAY

}  // namespace

const char* sentenceOf(std::string_view code) {
    const auto at = sentences.find(code);
    if (at != sentences.end()) return at->second;
    for (const auto of_others : {oddsSentenceOf, planSentenceOf, compareSentenceOf})
        if (const char* english = of_others(code)) return english;
    return nullptr;
}

}  // namespace lapwing::format

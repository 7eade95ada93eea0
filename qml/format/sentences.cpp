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
    SAY("cylinder.earlier_fault",
        "Cylinder %1 reads well now, but leaked when air was last on it. Put air on it again before it is "
        "called sound."),
    SAY("cylinder.seals_well", "Cylinder %1 seals well."),
    SAY("cylinder.reads_in_range", "Cylinder %1 reads %2: in range."),
    SAY("cylinder.reads_alike",
        "Cylinder %1 reads %2, like the others. There is no limit to hold it against."),
    SAY("cylinder.alike_but_low",
        "Cylinder %1 reads %2, like the others, but less than makers ask at least: borderline. There is no "
        "limit "
        "of this engine to hold it against."),
    SAY("cylinder.reads_no_limit", "Cylinder %1 reads %2. There is no factory limit to hold it against."),
    SAY("cylinder.reads_as_expected",
        "Cylinder %1 reads %2, as expected of one that seals well. There is no factory figure."),
    SAY("cylinder.reads_below_expected",
        "Cylinder %1 reads %2, less than expected: borderline. There is no factory figure."),
    SAY("cylinder.reads_decompressor",
        "Cylinder %1 reads %2 with the decompressor at work: no limit holds for that."),
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
    SAY("cylinder.low_clearance_first",
        "Cylinder %1 reads %2: too low, but %3 has far less clearance than its siblings. Check and adjust "
        "first, then test again."),
    SAY("cylinder.reads_above",
        "Cylinder %1 reads %2, above the factory range that ends at %3: oil, fuel or carbon in it, or the "
        "wrong "
        "gauge or limits."),
    SAY("cylinder.seals_reads_above",
        "Cylinder %1 seals well (leakage %3) and reads %2, above the factory range: oil, fuel or carbon in "
        "it, or "
        "the wrong gauge or limits."),
    SAY("cylinder.seals_reads_borderline",
        "Cylinder %1 seals well (leakage %3); its dry reading of %2 is borderline."),
    SAY("cylinder.seals_but_builds_nothing",
        "Cylinder %1 seals well (leakage %3) yet built up %2, more than once. See whether its valves move, "
        "and "
        "check adapter, hose and valve core."),
    SAY("cylinder.little_but_at",
        "Cylinder %1 loses only %2, yet some of it comes out at %3, where none may: gasket or crack."),
    SAY("cylinder.little_and_trace_at",
        "Cylinder %1 loses only %2, but a trace of air was noticed at %3, where none may come out. Look "
        "again."),
    SAY("cylinder.air_at",
        "Cylinder %1: air comes out at %2, where none may: gasket or crack. A leak-down test tells how "
        "much."),
    SAY("cylinder.trace_at",
        "Cylinder %1: a trace of air was noticed at %2, where none may come out. A leak-down test tells how "
        "much."),
    SAY("cylinder.wear", "Cylinder %1 loses %2: wear, not yet a fault."),
    SAY("cylinder.leaks_unheard", "Cylinder %1 leaks %2. Listen where the air comes out."),
    SAY("cylinder.leaks_silent",
        "Cylinder %1 leaks %2, and nothing was heard where it was listened for. Listen again where it is "
        "quiet, "
        "at every exit."),
    SAY("cylinder.leaks_tie", "Cylinder %1 leaks %2, equally loud at two exits: %3 and %4."),
    SAY("cylinder.leaks_no_path",
        "Cylinder %1 leaks %2, loudest at an exit (%3) that names no part. Listen at the others too."),
    SAY("cylinder.leaks_tester_first",
        "Cylinder %1 leaks %2: a fault if the tester is as assumed, perhaps none. Name the tester and its "
        "restrictor first."),
    SAY("cylinder.leaks_at", "Cylinder %1 leaks %2, most of it at %3 as far as the ear can tell."),
    SAY("cylinder.leaks_at_joint",
        "Cylinder %1 leaks %2, most of it at the joint to cylinder %3 as far as the ear can tell."),
    SAY("cylinder.leaks_joint_or_valve",
        "Cylinder %1 leaks %2, and air comes out of the plug hole of cylinder %3: through the joint, or past "
        "a valve. Listen at intake and exhaust too."),
    SAY("cylinder.leaks_clearance_first",
        "Cylinder %1 leaks %2 and the air points at %3. Check its clearance before any verdict: a valve "
        "without clearance looks burnt."),
    SAY("cylinder.leaks_adjust_first",
        "Cylinder %1 leaks %2 at %3, which had too little clearance. Adjust first, then test again."),
    SAY("cylinder.retest_leak",
        "Cylinder %1 leaked %2 before %3 was put right: without clearance a valve stands open. Test it again "
        "and listen again before any verdict."),
    SAY("cylinder.retest_dry",
        "Cylinder %1 read %2 before %3 was put right: without clearance a valve stands open. Test it again "
        "before any verdict."),
    SAY("cylinder.ask_tdc",
        "Cylinder %1: perhaps the wrong TDC. Turn the crank one full turn and test again before any "
        "verdict."),
    SAY("cylinder.does_not_fit",
        "Cylinder %1: its readings don't fit together. Do the %2 again before any verdict."),
    SAY("cylinder.low_but_unfit",
        "Cylinder %1 reads %2: too low. Why is open, since what else was read does not fit together: do the "
        "%3 again first."),
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
    SAY("engine.wet_only", "Wet tests only so far: nothing to compare them with."),
    SAY("engine.seals_well", "Every cylinder seals well."),
    SAY("engine.in_range", "Every cylinder is in range."),
    SAY("engine.alike", "The cylinders read alike. What this engine should read is not on its card."),
    SAY("engine.alike_but_low",
        "The cylinders read alike, but less than makers ask at least. Worn alike, or something lowers them "
        "all: "
        "speed, throttle, gauge, valve timing. A leak-down tells."),
    SAY("engine.no_limit",
        "Measured, but there is nothing to judge the readings by. Put the factory limits on the engine "
        "card."),
    SAY("engine.decompressor",
        "With the decompressor at work the readings say little by themselves. A leak-down test tells how "
        "each "
        "one "
        "seals."),
    SAY("engine.throttle_shut",
        "The throttle was shut, which lowers every reading. Repeat the dry test with the throttle wide open, "
        "warm, before any verdict."),
    SAY("engine.fault", "Fault at %1."),
    SAY("engine.borderline", "Borderline: %1. No fault."),
    SAY("engine.borderline_tester_first",
        "Borderline: %1. Which tester it was decides whether that is a fault: name it."),
    SAY("engine.not_all_measured", "%1 of %2 cylinders measured, no fault so far."),
    SAY("engine.questions_first", "A question about %1 comes before any verdict."),
    SAY("engine.low_but_seals",
        "Every cylinder seals well yet reads low: look at valve timing, throttle, starter speed and hose."),
    SAY("engine.joint", "Cylinders %1 and %2 are both low: look at the joint between them."),
    SAY("engine.low_everywhere",
        "Every cylinder reads low. Before blaming them all: throttle held open, starter speed, gauge and "
        "hose, "
        "valve timing."),
    SAY("engine.low_everywhere_diesel",
        "Every cylinder reads low. Before blaming them all: air filter, starter speed, gauge and hose, valve "
        "timing."),
    SAY("engine.low_but_seals_diesel",
        "Every cylinder seals well yet reads low: look at valve timing, air filter, starter speed and hose."),
    SAY("engine.crankcase", "The crankcase does not hold its pressure."),
    SAY("engine.crankcase_of", "The crankcase of %1 does not hold its pressure."),

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
    SAY("thumb.gasket_too",
        "Air also at: %1 (%2). None may come out there, however little: gasket or crack."),
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

    SAY("misfit.held_nothing",
        "Cylinder %1 held nothing of %2. A hole that large is rarely a leak: is the adapter tight, the hose "
        "on, the "
        "right TDC found?"),
    SAY("misfit.built_nothing",
        "Cylinder %1 built up nothing while cranking (%2), yet it holds air (leakage %3). Look at adapter, "
        "hose and "
        "valve core, and whether its valves move."),
    SAY("misfit.wet_below_dry",
        "Cylinder %1 read less with oil in it (%3) than dry (%2). Oil can't do that: one of the two readings "
        "is not "
        "right."),
    SAY("misfit.wet_far_above",
        "Cylinder %1 read %2 dry and %3 with oil in it. Oil alone can't do that much: one of the two "
        "readings is not "
        "right."),
    SAY("misfit.loud_but_tight",
        "Cylinder %1 loses only %2, yet air was heard strongly at several exits. Both can't be right."),
    SAY("misfit.silent_but_leaks",
        "Cylinder %1 loses %2, yet nothing was heard at any exit. So much air must come out somewhere: look "
        "at "
        "adapter and hose."),
    SAY("contra.set_pressures",
        "Set to %1 it leaks %2, set to %3 only %4: no single leak does both. Do the leak-down again at one "
        "set "
        "pressure."),
    SAY("misfit.dry_apart",
        "Cylinder %1 read %2 and %3 in the same dry test: further apart than any gauge or starter scatters. "
        "Do "
        "it again: two readings that agree count."),
    SAY("misfit.held_apart",
        "Cylinder %1 held %2 and %3 of the same set pressure. Turn the engine twice by hand and do it again: "
        "two "
        "readings that agree count."),
    SAY("contra.photo_differs",
        "The photo of the %1 reads %3, and %2 was typed: look at the photo and settle it."),

    SAY("question.tdc",
        "Air at intake and exhaust with very little held: is cylinder %1 at the TDC between exhaust and "
        "intake, "
        "both valves open? Turn the crank one full turn and test again."),
    SAY("question.tdc_held",
        "Cylinder %1 held only %2 of %3: did it stand at its TDC on compression, and did the crank stay "
        "there? Turn "
        "the crank one full turn and test again."),
    SAY("question.over_set",
        "Cylinder %1 held %2 of %3, more than was set: that can't be, and it is not counted. Test again, and "
        "delete the wrong one."),
    SAY("question.after_oil",
        "Cylinder %1, %2: %3 was read after oil had gone in. It is kept, and not counted with what was read "
        "before the oil."),
    SAY("question.odd_one",
        "Cylinder %1: %3 lies far from the other readings of its %2 and is left out. Strike it out if it was "
        "a "
        "slip."),
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
    SAY("question.clearance_siblings",
        "Cylinder %1, %2 %3: %4, its siblings about %5. Check and adjust it first, the engine's manual says "
        "how much: no verdict on the valve before that."),
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
    SAY("question.wet_other_state",
        "Cylinder %1: the dry test was done in the state \"%2\", the wet test in \"%3\". More than the oil "
        "has changed in between: the rise says nothing of the rings."),
    SAY("question.heard_earlier",
        "Cylinder %1 was listened to in the state \"%2\". A part that the air may have come from was touched "
        "since: what was heard does not count for what leaks now. Listen again."),
    SAY("question.above_high",
        "Cylinder %1 reads %2, above the normal range: oil or carbon in the chamber, or the wrong gauge or "
        "limits?"),
    SAY("question.companion",
        "Cylinders %1 and %2 stand at top dead centre together. Air in the plug hole of %2 means the joint "
        "only if "
        "its valves are shut: turn %2 away from overlap or look at its rockers."),
    SAY("question.neighbour_open",
        "While cylinder %1 stands at its TDC, cylinder %2 has its valves open on one side. What leaks past "
        "%3 "
        "of cylinder %1 can come out of the plug hole of %2 through the manifold: listen at that valve's "
        "exit "
        "before calling it the joint."),
    SAY("question.neighbour_may_be_open",
        "While cylinder %1 stands at its TDC, the valves of cylinder %2 may not be shut: look at its "
        "rockers. "
        "What leaks past %3 of cylinder %1 can then come out of the plug hole of %2 through the manifold: "
        "listen at that valve's exit before calling it the joint."),
    SAY("clearance.none", "Cylinder %1, %2 %3: no clearance. The valve is held open: adjust first."),
    SAY("clearance.too_small", "Cylinder %1, %2 %3: %4, less than the least of %5. Adjust first."),
    SAY("clearance.no_range",
        "Cylinder %1, %2 %3: %4. The engine card has no wanted clearance to hold it against."),
    SAY("clearance.siblings",
        "Cylinder %1, %2 %3: %4, far less than the %5 of its siblings. Check and adjust it first; the "
        "engine's manual says how much."),
    SAY("clearance.too_large",
        "Cylinder %1, %2 %3: %4, more than the most of %5: noise, but the valve seats."),
    SAY("clearance.adjusted",
        "Cylinder %1, %2 %3: was too small and is put right. Readings from before don't count for this "
        "valve."),

    SAY("crankcase.holds", "The crankcase holds: %1 after %3, at least %2 is asked."),
    SAY("crankcase.holds_no_time",
        "The crankcase ended at %1, at least %2 is asked; how long it was held is not noted."),
    SAY("crankcase.loses",
        "The crankcase fell to %1; at least %2 is asked. Crank seals, base gasket, reed or rotary valve."),
    SAY("crankcase.close", "The crankcase ended at %1, so close to %2 that the gauge can't tell them apart."),
    SAY("crankcase.unsure",
        "The crankcase ended at %1, which may really be above or below the %2 asked: the gauge leaves "
        "±%3 open. To know it better: %4."),
    SAY("crankcase.too_short", "The crankcase was held for %1 only; the maker asks for %2."),
    SAY("crankcase.no_limit",
        "The crankcase went from %1 to %2, nobody noted in how long; the card has no limit for it. The "
        "engine's manual has one."),
    SAY("crankcase.no_limit_timed",
        "The crankcase went from %1 to %2 in %3; the card has no limit for it. The engine's manual has one."),
    SAY("chamber.holds", "The crankcase of cylinder %1 holds: %2 after %4, at least %3 is asked."),
    SAY("chamber.holds_no_time",
        "The crankcase of cylinder %1 ended at %2, at least %3 is asked; how long it was held is not noted."),
    SAY("chamber.loses",
        "The crankcase of cylinder %1 fell to %2; at least %3 is asked. Its crank seals, also those towards "
        "its neighbours, base gasket, reed or rotary valve."),
    SAY("chamber.close",
        "The crankcase of cylinder %1 ended at %2, so close to %3 that the gauge can't tell them apart."),
    SAY("chamber.unsure",
        "The crankcase of cylinder %1 ended at %2, which may really be above or below the %3 asked: the "
        "gauge "
        "leaves ±%4 open. To know it better: %5."),
    SAY("chamber.too_short", "The crankcase of cylinder %1 was held for %2 only; the maker asks for %3."),
    SAY("chamber.no_limit",
        "The crankcase of cylinder %1 went from %2 to %3, nobody noted in how long; the card has no limit "
        "for it. The engine's manual has one."),
    SAY("chamber.no_limit_timed",
        "The crankcase of cylinder %1 went from %2 to %3 in %4; the card has no limit for it. The engine's "
        "manual has one."),
};

#undef SAY

}  // namespace

const char* sentenceOf(std::string_view code) {
    const auto at = sentences.find(code);
    if (at != sentences.end()) return at->second;
    for (const auto of_others : {judgedSentenceOf, nextSentenceOf, numberSentenceOf, oddsSentenceOf,
                                 planSentenceOf, compareSentenceOf})
        if (const char* english = of_others(code)) return english;
    return nullptr;
}

}  // namespace lapwing::format

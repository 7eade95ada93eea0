// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <QtGlobal>
#include <unordered_map>

#include "qml/format/tables.h"

/// What is worth doing next, and why.
namespace lapwing::format {
namespace {

#define SAY(code, english) \
    { code, QT_TRANSLATE_NOOP("Findings", english) }

const std::unordered_map<std::string_view, const char*> sentences = {
    SAY("next.dry_all", "Start with the dry test: it is quick and shows where to look further."),
    SAY("next.dry_one", "Start with the dry test: it is quick and shows whether to look further."),
    SAY("next.dry_after_wet",
        "Dry test once the engine has run and the oil is off its rings: the wet readings have nothing to be "
        "compared with."),
    SAY("next.reads_above",
        "A reading lies above the factory range: hold the gauge against another one and look up the limits; "
        "then "
        "look for oil, fuel or carbon in the cylinder."),
    SAY("next.dry", "Cylinder %1 has no dry reading yet: the others can't be compared with it."),
    SAY("next.leak_down_low",
        "Cylinder %1 is not in range: a leak-down test shows how much it leaks and where."),
    SAY("next.leak_down_decompressor", "Leak-down test of cylinder %1: it does not mind the decompressor."),
    SAY("next.leak_down_all",
        "Leak-down test of every cylinder: if they seal well, the cause lies elsewhere."),
    SAY("next.leak_down_unjudged",
        "Nothing on the engine card judges the dry readings: a leak-down test tells how well each cylinder "
        "seals, or put the factory limits on the card."),
    SAY("next.listen", "Listen at cylinder %1's exits with the air on: where it comes out names the leak."),
    SAY("next.listen_again",
        "Listen at cylinder %1's exits again: what was heard in the state \"%2\" does not count for a part "
        "that was touched since."),
    SAY("next.listen_valves",
        "Listen at intake and exhaust of cylinder %1: the air in the plug hole of %2 may have leaked past a "
        "valve."),
    SAY("next.watch_trace",
        "Put the air on cylinder %1 again and watch for a minute (%2): a trace that goes on is a leak, one "
        "that "
        "stops was air caught there."),
    SAY("next.coolant_sure",
        "Cylinder %1, before the head comes off: let the engine cool, have the cooling system put under "
        "pressure "
        "and the coolant tested for exhaust gas."),
    SAY("next.gasket_sure",
        "Cylinder %1, before the head comes off: make sure of %2 by listening once more, with soapy water "
        "where it "
        "reaches, and check the head bolts by the engine's manual."),
    SAY("next.wet", "Wet test of cylinder %1, last of all: it tells rings from the rest."),
    SAY("next.clearances",
        "Check the valve clearances of cylinder %1, beginning with %2: a valve without clearance looks "
        "burnt."),
    SAY("next.clearance_wanted",
        "Look up in the engine's manual the clearance wanted for %2, and put it on the engine card: what "
        "was found at cylinder %1 can't be judged without it."),
    SAY("next.clearance_siblings",
        "Check the valve clearance of cylinder %1, far less than at the others, adjust it by the engine's "
        "manual and test again."),
    SAY("next.adjust", "Adjust the valve clearance of cylinder %1, then test it again."),
    SAY("next.lifter",
        "Leak-down test of cylinder %1 again: a hydraulic lifter that is pumped up or stuck holds its valve "
        "open. "
        "Take the air off, let it bleed down for some minutes, turn the engine twice by hand, then test "
        "again before the head comes "
        "off."),
    SAY("next.after_oil",
        "Leak-down test of cylinder %1 again after the engine has run: oil on its rings lifted this one."),
    SAY("next.retest_adjusted", "The clearance of cylinder %1 was changed: test it again."),
    SAY("next.dry_before",
        "Dry test of cylinder %1 again: its reading is from the state \"%2\", and something was done since."),
    SAY("next.leak_down_before",
        "Leak-down test of cylinder %1 again: its reading is from the state \"%2\", and something was done "
        "since."),
    SAY("next.turn_once",
        "Turn the crank one full turn and test cylinder %1 again: it may stand at the wrong TDC."),
    SAY("next.again", "Do the %2 of cylinder %1 again: its readings don't fit together."),
    SAY("next.crankcase", "Crankcase hold test: seals, base gasket and reed show in no other test."),
    SAY("next.crankcase_of", "Crankcase hold test of cylinder %1: its chamber is held by itself."),
    SAY("next.repeat_open",
        "Repeat the dry test with the throttle held wide open, as a session of its own: it was shut, which "
        "lowers every reading."),
    SAY("next.repeated_open",
        "The throttle was shut here. The dry test was done again with the throttle held open, in a later "
        "session: hold the two side by side."),
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
    SAY("next.request", "Somebody asked for this, and it is still to do: %1."),
    SAY("next.request_of", "Somebody asked for this at cylinder %1, and it is still to do: %2."),
    SAY("next.earlier_request", "Somebody asked for this at an earlier visit, and it is still to do: %1."),
    SAY("next.earlier_request_of",
        "Somebody asked for this at cylinder %1 at an earlier visit, and it is still to do: %2."),
    SAY("next.name_tester",
        "Name the leak-down tester and its restrictor: without them nobody can tell a fault from a cylinder "
        "that seals well."),
    SAY("next.crankcase_limit",
        "Look up in the engine's manual what the crankcase must hold and for how long, and put it on the "
        "engine card."),
    SAY("next.tester_check", "Check \"%1\" first: %2."),
    SAY("next.tester_failed",
        "\"%1\" failed its check (%2): put it right or take another one, then read again what was read on "
        "it."),
    SAY("next.plan", "No test is outstanding: read the findings and decide."),
    SAY("next.planned", "No test is outstanding. What to do about it stands in the plan."),
    SAY("next.retest", "Work in the plan is ticked: test again. Only that shows whether it helped."),
    SAY("next.watch",
        "No test is outstanding and nothing is a fault yet. Measure again later: what counts is whether it "
        "grows."),
    SAY("next.nothing", "Nothing outstanding."),
};

#undef SAY

}  // namespace

const char* nextSentenceOf(std::string_view code) {
    const auto at = sentences.find(code);
    return at == sentences.end() ? nullptr : at->second;
}

}  // namespace lapwing::format

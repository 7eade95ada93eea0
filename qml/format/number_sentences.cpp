// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <QtGlobal>
#include <unordered_map>

#include "qml/format/tables.h"

/// What is said of a number: while it is typed, where it comes from, what it rests on, what weakens it, and
/// what a tester's check says of all of them.
namespace lapwing::format {
namespace {

#define SAY(code, english) \
    { code, QT_TRANSLATE_NOOP("Findings", english) }

const std::unordered_map<std::string_view, const char*> sentences = {
    SAY("weak.step", "Not done: %1. %2"),
    SAY("weak.steps_open", "Steps of Prepare that readings hang on and that were not marked either way: %1."),
    SAY("weak.bores_oiled",
        "The bores were oiled before the tests: oiled rings seal better than dry ones, so worn rings may "
        "pass as "
        "sound. Once it has run, test it again."),
    SAY("weak.throttle_closed", "The throttle was closed: every cylinder reads low."),
    SAY("weak.throttle_closed_by",
        "The throttle was closed: every cylinder reads low, by %1 to %2 as the model has it."),
    SAY("weak.battery_by",
        "The battery showed %1: a slow starter makes every cylinder read low, by about %2 as the model has "
        "it."),
    SAY("weak.slow_cranking",
        "The engine was cranked at %1 rpm: under some %2 rpm every cylinder reads low. Charge the battery, "
        "or see "
        "to the starter, and repeat."),
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
    SAY("weak.gauges_differ",
        "The cylinders were read on different gauges: what lies between them may be the gauges' own errors. "
        "Read all of them on one."),
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
    SAY("pad.much_oil",
        "%1 is a lot of oil: more than %2 in a cylinder can lock the engine and bend a rod. Is it meant?"),
    SAY("pad.crankcase_high",
        "Set %1 is too much for most crankcases: above %2 seals are pushed out of their seats. Only the few "
        "psi "
        "that the engine's manual names."),
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
    SAY("model.decompressor", "The decompressor is at work: nothing is expected of the readings."),
    SAY("model.released",
        "With a working decompressor such an engine reads about %1 to %2 when nothing leaks. This is no "
        "limit."),
    SAY("model.induction_off",
        "The induction was taken off: nothing throttles the air, and the reading stands as with the throttle "
        "held "
        "open."),
    SAY("model.missing_one", "No factory figure. To work one out, the model needs from the engine card: %1."),
    SAY("model.missing_two",
        "No factory figure. To work one out, the model needs from the engine card: %1 and %2."),
    SAY("model.missing_three",
        "No factory figure. To work one out, the model needs from the engine card: %1, %2 and %3."),
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
    SAY("note.leak_moves",
        "The leak itself is never quite the same twice, and the needle moves with it: by about %1 here, most "
        "where about half is lost. That part of the ± is not the gauge's."),
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

const char* numberSentenceOf(std::string_view code) {
    const auto at = sentences.find(code);
    return at == sentences.end() ? nullptr : at->second;
}

}  // namespace lapwing::format

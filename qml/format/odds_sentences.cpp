// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <QtGlobal>
#include <unordered_map>

#include "qml/format/tables.h"

/// Sentences of core/odds/codes.h.
namespace lapwing::format {
namespace {

#define SAY(code, english) \
    { code, QT_TRANSLATE_NOOP("Findings", english) }

const std::unordered_map<std::string_view, const char*> sentences = {
    SAY("odds.wet_below_dry",
        "Cylinder %1 read less with oil in it (%3) than dry (%2): the wet reading is left out of the odds."),
    SAY("odds.wet_far_above",
        "Cylinder %1 read %3 with oil in it and %2 dry: the wet reading is left out of the odds."),
    SAY("odds.dry_apart",
        "Cylinder %1: its dry readings are too far apart; they and its wet ones are left out of the odds."),
    SAY("odds.held_apart",
        "Cylinder %1: its leak-down readings are too far apart; they and what was heard are left out of the "
        "odds."),
    SAY("odds.held_nothing",
        "Cylinder %1 held nothing of %2: the leak-down and what was heard are left out of the odds."),
    SAY("odds.built_nothing",
        "Cylinder %1 built up nothing and yet held air: its dry and wet readings are left out of the odds."),
    SAY("odds.loud_but_tight",
        "Cylinder %1 loses only %2, yet air was heard strongly at several exits: the leak-down and what was "
        "heard "
        "are left out of the odds."),
    SAY("odds.silent_but_leaks",
        "Cylinder %1 loses %2, yet nothing was heard at any exit: the leak-down and what was heard are left "
        "out of "
        "the odds."),
    SAY("odds.does_not_fit",
        "The %2 of cylinder %1 lies far off everything that its other readings allow. Do that test again."),

    SAY("odds.nothing_measured",
        "Nothing was measured on cylinder %1: nothing but the assumptions would speak."),
    SAY("odds.nothing_left",
        "All that was read of cylinder %1 is from testers that failed their checks: nothing but the "
        "assumptions would speak."),
    SAY("odds.tdc_first",
        "Cylinder %1: first settle whether it stood at the right TDC. Until then its leak-down and what was "
        "heard "
        "are left out of the odds."),
    SAY("odds.clearance_siblings",
        "Cylinder %1, %2: clearance %3, its siblings about %4. Check and adjust it first: no verdict before "
        "that."),
    SAY("odds.clearance_first",
        "Cylinder %1: the clearance of %2 is not known to be right. No strip-down for it before that: a "
        "valve without "
        "clearance looks burnt."),
    SAY("odds.retest_adjusted",
        "Cylinder %1: all that was read and heard is from before %2 was put right. No odds of what leaks now "
        "before it is tested and listened to again."),
    SAY("odds.not_listened_since",
        "Nobody has listened at cylinder %1 since a part was touched that air was heard from: what was heard "
        "before says nothing of it as it is."),
    SAY("odds.not_listened",
        "Nobody listened at cylinder %1 while the air was on: without that, numbers alone say little about "
        "where "
        "it leaks."),
    SAY("odds.no_air",
        "No air was put on cylinder %1: cranking readings alone say little about where it leaks. Do a "
        "leak-down "
        "and listen at every exit."),
    SAY("odds.unsure_numbers",
        "Cylinder %1: unsure. The working out did not settle well enough to show odds."),
    SAY("odds.tester_failed",
        "What was read on \"%1\" is left out of the odds, since it failed its check (%2). Put it right or "
        "take "
        "another, and read again."),
    SAY("odds.heard_failed",
        "\"%1\" failed its check: what was heard with its air tells the odds where air comes out, not how "
        "much."),
    SAY("odds.level_unknown",
        "Here the odds can only compare cylinders, and there is no other to hold cylinder %1 against: its "
        "reading tells them nothing of a leak. A leak-down test tells."),
    SAY("odds.alike_only",
        "Cylinder %1 reads like the others, and here the odds can only compare cylinders: that tells them "
        "nothing of a leak. A leak-down test tells."),
    SAY("odds.alike_only_several",
        "%1 read alike, and here the odds can only compare cylinders: that tells them nothing of a leak. A "
        "leak-down test tells."),
    SAY("odds.low_everywhere",
        "Cylinder %1 reads low like all the others: something that all of them share is likelier than a leak "
        "in each. No odds before a leak-down test."),
    SAY("odds.low_everywhere_several",
        "%1 all read low: something that they share is likelier than a leak in each. No odds before a "
        "leak-down test."),
    SAY("odds.heard_points",
        "What was heard at cylinder %1 points at %2. How loud it sounds does not tell how much leaks, nor "
        "whether that is too much: put the air on again and note what the gauge holds."),
    SAY("odds.heard_fault",
        "What was heard at cylinder %1 points at %2, where no air may come out. How much leaks there was "
        "not read: put the air on again and note what the gauge holds."),
    SAY("odds.heard_only",
        "Cylinder %1 was listened to, but nothing was read there. What is heard does not tell how much "
        "leaks: put the air on again and note what the gauge holds."),
    SAY("odds.earlier_state_apart",
        "Cylinder %1: earlier readings that tell nothing of its state \"%2\" are kept apart."),
    SAY("odds.earlier_state_shared",
        "Cylinder %1: of the parts that were not touched before \"%2\", earlier readings tell as well. "
        "Touched "
        "parts count as new ones: what they were tells nothing of what they are."),
    SAY("odds.earlier_state_ran",
        "Cylinder %1: cranking readings from before it ran are left out; it was colder then."),
    SAY("odds.depends_on_assumptions",
        "Cylinder %1: under the app's assumptions the likeliest answer is: %2. That depends on them; with "
        "others it would be: %3."),
    SAY("odds.fresh_hone",
        "If cylinder %1 gets new rings: in a fresh hone they read low until they have run in. Don't compare "
        "before that."),
    SAY("odds.companion",
        "Air from cylinder %1 came out at the plug hole of %2, which stands on overlap at the same time. A "
        "leaking "
        "valve does that through a joined manifold as well as the joint between the two."),
    SAY("odds.neighbour_open",
        "Air from cylinder %1 came out at the plug hole of %2, whose valves may be open then. A leaking "
        "valve "
        "does that through a joined manifold as well; here it counts as the joint between the two."),
    SAY("odds.decompressor",
        "A decompressor was at work: cranking readings are not used for the odds, only air and what was "
        "heard."),
    SAY("odds.compare_only_ratio",
        "Above a compression ratio of %1 cranking readings are not held against what a sound cylinder "
        "reads."),
    SAY("odds.compare_only_data",
        "The engine card lacks: %1. Cranking readings are not held against what a sound cylinder reads."),
    SAY("odds.compare_only_data_two",
        "The engine card lacks: %1, %2. Cranking readings are not held against what a sound cylinder reads."),
    SAY("odds.compare_only_data_three",
        "The engine card lacks: %1, %2, %3. Cranking readings are not held against what a sound cylinder "
        "reads."),
    SAY("odds.compare_only_throttle",
        "The throttle was closed: cranking readings are not held against what a sound cylinder reads."),
    SAY("odds.no_expectation",
        "No reading to expect after a repair of cylinder %1: what is known allows one as low as today's. The "
        "engine card's compression ratio and factory limits, and a dry test with the throttle open, would "
        "narrow it."),
    SAY("odds.no_cranking_model", "Cranking readings are not used for the odds. %1"),
    SAY("odds.working_assumptions",
        "Odds under the app's working assumptions; not yet counted on real engines."),

    SAY("odds.main", "Cylinder %1 leaks mostly at %2: odds %3."),
    SAY("odds.main_clearance",
        "Cylinder %1 leaks mostly at %2: odds %3. Check its clearance before any verdict on it."),
    SAY("odds.main_unheard",
        "Cylinder %1: the likeliest so far is %2, odds %3. That rests on pressures and on how often each "
        "part "
        "is at fault: listening at every exit can turn it round."),
    SAY("odds.seals_but", "Cylinder %1 leaks little, yet there is likely a fault at %2: odds %3."),
    SAY("odds.likely_seals_but", "Cylinder %1 leaks little, yet there is a fault at %2: %3."),
    SAY("odds.seals", "Cylinder %1 seals well: odds %2."),
    SAY("odds.open", "Cylinder %1: no clear answer yet. The likeliest are %2 (%3) and %4 (%5)."),
    SAY("odds.likely_main", "Cylinder %1 leaks mostly at %2: %3."),
    SAY("odds.likely_main_clearance",
        "Cylinder %1 leaks mostly at %2: %3. Check its clearance before any verdict on it."),
    SAY("odds.likely_seals", "Cylinder %1 seals well: %2."),
    SAY("odds.likely_sound", "%1 seal well: %2."),
    SAY("odds.likely_main_several", "%1 leak mostly at %2: %3."),
    SAY("odds.leak_or_sound_several",
        "%1 may leak at %2, or they may still be sound: the readings do not settle it."),
    SAY("odds.turned_by_listening", "Nobody listened there: that can turn it round."),
    SAY("odds.turned_by_listening_or", "Nobody listened there, and another answer is possible: %1."),
    SAY("odds.turned_by_listening_again",
        "Nobody has listened there since a part was touched: that can turn it round."),
    SAY("odds.turned_by_air", "No leak-down was done there: one can turn this round."),
    SAY("odds.turned_by_air_or", "No leak-down was done there, and another answer is possible: %1."),
    SAY("odds.turned_by_rule", "A rule of thumb names another answer: %1."),
    SAY("odds.turned_by_assumptions", "With other assumptions the answer would be: %1."),
    SAY("odds.repair_of", "cylinder %1, %2"),
    SAY("odds.leaks_or_sound",
        "Cylinder %1 may leak at %2, or it may still be sound: the readings do not settle it."),
    SAY("odds.likely_open", "Cylinder %1: no clear answer yet. The likeliest are %2 and %3."),
    SAY("odds.no_verdict",
        "Cylinder %1: what was measured does not fit together. No odds before that is "
        "settled."),

    SAY("odds.seals_means",
        "Sealing well means here: it would lose less than %1 on a tester set to %2 behind a restrictor of "
        "%3. "
        "A leak-down that comes out near that edge can lower these odds, good as it is."),

    SAY("odds.thumb_differs",
        "Cylinder %1: the rules of thumb name %2, the odds %3. A rule looks at one sign alone; the odds "
        "weigh "
        "every reading with its doubt, how loud each exit was, and how often each part is at fault."),
    SAY("odds.thumbs_disagree",
        "Cylinder %1: the rules of thumb disagree with each other. All evidence together makes this the "
        "likeliest "
        "answer: %2."),

    SAY("odds.tells_much", "It would tell much about where the leak is."),
    SAY("odds.tells_some", "It would tell something about where the leak is."),
    SAY("odds.tells_little", "It would tell a little about where the leak is."),
    SAY("odds.leak_down_tells",
        "A leak-down test of cylinder %1, listening at every exit, would tell %2 about where the leak is."),
    SAY("odds.listening_tells",
        "Listening at every exit of cylinder %1 would tell %2 about where the leak is."),
    SAY("odds.dry_tells", "A dry test of cylinder %1 would tell %2 about where the leak is."),
    SAY("odds.read_as_well",
        "Put the air on cylinder %1 once more and note what the gauge holds: it was listened to, and nothing "
        "was read."),
    SAY("odds.wet_tells", "A wet test of cylinder %1 would tell %2 about where the leak is."),
};

#undef SAY

}  // namespace

const char* oddsSentenceOf(std::string_view code) {
    const auto at = sentences.find(code);
    return at == sentences.end() ? nullptr : at->second;
}

}  // namespace lapwing::format

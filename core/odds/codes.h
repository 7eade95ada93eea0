// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <array>

#include "core/findings/codes.h"

/// Every message code that the odds can say, in the letters of core/findings/codes.h.
namespace lapwing::odds::codes {

inline constexpr auto all = std::to_array<findings::codes::Code>({
    // Contradictions: evidence that cannot all be right. What is named here was left out of the odds.
    {"odds.wet_below_dry", "cpp"},  // dry, wet
    {"odds.wet_far_above", "cpp"},  // dry, wet
    {"odds.built_nothing", "c"},
    {"odds.dry_apart", "c"},
    {"odds.held_apart", "c"},
    {"odds.held_nothing", "cp"},      // set
    {"odds.loud_but_tight", "cs"},    // leakage
    {"odds.silent_but_leaks", "cs"},  // leakage
    {"odds.does_not_fit", "cw"},      // a test far off everything that the others allow
    // Why the odds are what they are.
    {"odds.nothing_measured", "c"},
    {"odds.nothing_left", "c"},           // the testers of all that was measured failed their checks
    {"odds.tdc_first", "c"},              // wrong-TDC question: leak-down and exits left out
    {"odds.clearance_siblings", "cwLL"},  // a valve's clearance far below its siblings': no verdict before
    {"odds.clearance_first", "cw"},  // no strip-down verdict on that valve before its clearance is recorded
    {"odds.retest_adjusted", "cw"},  // that valve was put right after all that was read and heard
    {"odds.not_listened", "c"},
    {"odds.not_listened_since", "c"},  // since parts were touched that the air was heard at
    {"odds.no_air", "c"},              // cranking readings only
    {"odds.unsure_numbers", "c"},      // too few effective samples
    {"odds.tester_failed", "tw"},      // its readings were left out; the check that it failed
    {"odds.heard_failed", "t"},        // with the air of such a tester: it tells where, not how much
    // What was read or heard tells nothing of how much leaks: no verdict.
    {"odds.level_unknown", "c"},   // one cylinder read, and nothing says how high it should read
    {"odds.alike_only", "c"},      // the same of several that read alike
    {"odds.low_everywhere", "c"},  // all read low: one cause is likelier than a leak in each
    {"odds.heard_points", "cw"},   // listened to and not read; the path that it points at
    {"odds.heard_fault", "cw"},    // the same of a path that lets nothing out when sound
    {"odds.heard_only", "c"},      // the same where it points at none
    {"odds.alike_only_several", "l"},
    {"odds.low_everywhere_several", "l"},
    {"odds.earlier_state_apart", "cw"},      // readings of another state were not used; the state that was
    {"odds.earlier_state_shared", "cw"},     // they were, of what was not touched before this state
    {"odds.earlier_state_ran", "c"},         // cranking readings from before it ran were not
    {"odds.depends_on_assumptions", "cww"},  // under these, under another set
    {"odds.fresh_hone", "c"},                // reading after new rings not comparable at first
    {"odds.companion", "cc"},
    {"odds.neighbour_open", "cc"},     // its valves may be open, which the odds know of companions only
    {"odds.decompressor", ""},         // cranking readings compare cylinders only: not used
    {"odds.compare_only_ratio", "n"},  // above that compression ratio
    {"odds.compare_only_data", "w"},   // what is missing of bore, stroke and ratio
    {"odds.compare_only_data_two", "ww"},
    {"odds.compare_only_data_three", "www"},
    {"odds.no_expectation", "c"},  // no reading to expect after a repair
    {"odds.compare_only_throttle", ""},
    {"odds.no_cranking_model", "t"},   // the model's own sentence
    {"odds.working_assumptions", ""},  // not yet counted on real engines
    // The one plain sentence (verdict.h).
    {"odds.main", "cws"},            // likeliest path, its chance
    {"odds.main_clearance", "cws"},  // the same of a valve whose clearance is not recorded
    {"odds.main_unheard", "cws"},    // the same where nobody listened; stands behind that
    {"odds.seals", "cs"},
    {"odds.seals_but", "cws"},  // where it is likely at fault all the same, how likely
    {"odds.open", "cwsws"},     // the two likeliest outcomes, none above one half
    {"odds.no_verdict", "c"},
    // The same for who reads no odds: how likely it is in words.
    {"odds.likely_main", "cww"},            // likeliest path, how likely
    {"odds.likely_main_clearance", "cww"},  // of a valve whose clearance is not recorded
    {"odds.likely_seals", "cw"},
    {"odds.likely_seals_but", "cww"},
    {"odds.likely_sound", "lw"},
    {"odds.likely_main_several", "lww"},
    {"odds.leak_or_sound_several", "lw"},
    {"odds.turned_by_listening", ""},      // one of these behind it
    {"odds.turned_by_listening_or", "w"},  // another answer
    {"odds.turned_by_listening_again", ""},
    {"odds.turned_by_air", ""},
    {"odds.turned_by_air_or", "w"},
    {"odds.turned_by_rule", "w"},
    {"odds.turned_by_assumptions", "w"},
    {"odds.repair_of", "cw"},
    {"odds.leaks_or_sound", "cw"},  // likeliest path; that it seals well is not much less likely
    {"odds.likely_open", "cww"},    // the two likeliest outcomes
    {"odds.seals_means", "spL"},    // less than that, on a tester of that set pressure and restrictor
    // Beside the rules of thumb.
    {"odds.thumb_differs", "cww"},   // what the rules name, what the odds name
    {"odds.thumbs_disagree", "cw"},  // what the odds name
    // What a test is expected to tell.
    {"odds.tells_much", ""},
    {"odds.tells_some", ""},
    {"odds.tells_little", ""},
    // The same with the test's name; how much.
    {"odds.leak_down_tells", "cw"},
    {"odds.listening_tells", "cw"},
    {"odds.dry_tells", "cw"},
    {"odds.wet_tells", "cw"},
    {"odds.read_as_well", "c"},  // the leak-down of a cylinder that was listened to
});

}  // namespace lapwing::odds::codes

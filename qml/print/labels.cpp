// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <QCoreApplication>

#include "qml/print/wording.h"

namespace lapwing::print {
namespace {

/// No default: the compiler names a label that has no text.
const char* english(report::Label label) {
    using report::Label;
    switch (label) {
        case Label::in_short:
            return QT_TRANSLATE_NOOP("Report", "In short");
        case Label::where_it_leaks:
            return QT_TRANSLATE_NOOP("Report", "Where it leaks");
        case Label::worth_doing_next:
            return QT_TRANSLATE_NOOP("Report", "Worth doing next");
        case Label::cautions:
            return QT_TRANSLATE_NOOP("Report", "Cautions");
        case Label::work_done:
            return QT_TRANSLATE_NOOP("Report", "What was done");
        case Label::plan:
            return QT_TRANSLATE_NOOP("Report", "Plan");
        case Label::complaint:
            return QT_TRANSLATE_NOOP("Report", "Complaint");
        case Label::readings:
            return QT_TRANSLATE_NOOP("Report", "Readings");
        case Label::limits:
            return QT_TRANSLATE_NOOP("Report", "Factory limits at this shop");
        case Label::clearances:
            return QT_TRANSLATE_NOOP("Report", "Clearances");
        case Label::photos:
            return QT_TRANSLATE_NOOP("Report", "Photos");
        case Label::opinions:
            return QT_TRANSLATE_NOOP("Report", "Notes and second opinions");
        case Label::typed:
            return QT_TRANSLATE_NOOP("Report", "Typed");
        case Label::needle_by_hand:
            return QT_TRANSLATE_NOOP("Report", "needle set by hand");
        case Label::needle_reads:
            return QT_TRANSLATE_NOOP("Report", "The needle reads");
        case Label::needle_not_read:
            return QT_TRANSLATE_NOOP("Report", "Needle not read");
        case Label::on_what:
            return QT_TRANSLATE_NOOP("Report", "On");
        case Label::opinion:
            return QT_TRANSLATE_NOOP("Report", "Opinion");
        case Label::in_words:
            return QT_TRANSLATE_NOOP("Report", "In words");
        case Label::by_whom:
            return QT_TRANSLATE_NOOP("Report", "By");
        case Label::photo_missing:
            return QT_TRANSLATE_NOOP("Report", "This photo is not stored here.");
        case Label::exits:
            return QT_TRANSLATE_NOOP("Report", "Where air was heard or felt");
        case Label::crankcase:
            return QT_TRANSLATE_NOOP("Report", "Crankcase hold test");
        case Label::why:
            return QT_TRANSLATE_NOOP("Report", "What the readings say");
        case Label::questions:
            return QT_TRANSLATE_NOOP("Report", "To be answered before any verdict");
        case Label::contradictions:
            return QT_TRANSLATE_NOOP("Report", "Contradictions");
        case Label::weakened:
            return QT_TRANSLATE_NOOP("Report", "What makes these readings worth less");
        case Label::remarks:
            return QT_TRANSLATE_NOOP("Report", "Remarks");
        case Label::before_after:
            return QT_TRANSLATE_NOOP("Report", "Before and after");
        case Label::before:
            return QT_TRANSLATE_NOOP("Report", "Before");
        case Label::after:
            return QT_TRANSLATE_NOOP("Report", "After");
        case Label::change:
            return QT_TRANSLATE_NOOP("Report", "Change");
        case Label::as_measured:
            return QT_TRANSLATE_NOOP("Report", "as measured");
        case Label::verdict:
            return QT_TRANSLATE_NOOP("Report", "Verdict");
        case Label::test:
            return QT_TRANSLATE_NOOP("Report", "Test");
        case Label::earlier_visits:
            return QT_TRANSLATE_NOOP("Report", "History");
        case Label::conditions:
            return QT_TRANSLATE_NOOP("Report", "Conditions");
        case Label::not_done:
            return QT_TRANSLATE_NOOP("Report", "Not done in Prepare");
        case Label::testers:
            return QT_TRANSLATE_NOOP("Report", "Testers");
        case Label::engine:
            return QT_TRANSLATE_NOOP("Report", "Engine");
        case Label::uncertainty:
            return QT_TRANSLATE_NOOP("Report", "How sure the numbers are");
        case Label::worked:
            return QT_TRANSLATE_NOOP("Report", "Where the numbers come from");
        case Label::sources:
            return QT_TRANSLATE_NOOP("Report", "Sources");
        case Label::published_in:
            return QT_TRANSLATE_NOOP("Report", "Rules published in");
        case Label::owner:
            return QT_TRANSLATE_NOOP("Report", "Owner");
        case Label::contact:
            return QT_TRANSLATE_NOOP("Report", "Contact");
        case Label::job_number:
            return QT_TRANSLATE_NOOP("Report", "Job number");
        case Label::usage:
            return QT_TRANSLATE_NOOP("Report", "Run so far");
        case Label::made:
            return QT_TRANSLATE_NOOP("Report", "Report made");
        case Label::symptoms:
            return QT_TRANSLATE_NOOP("Report", "Symptoms");
        case Label::in_their_words:
            return QT_TRANSLATE_NOOP("Report", "In the owner's words");
        case Label::note:
            return QT_TRANSLATE_NOOP("Report", "Note");
        case Label::planned_retest:
            return QT_TRANSLATE_NOOP("Report", "Retest planned");
        case Label::owner_answer:
            return QT_TRANSLATE_NOOP("Report", "Owner's answer");
        case Label::dry_test:
            return QT_TRANSLATE_NOOP("Report", "Dry test");
        case Label::leak_down:
            return QT_TRANSLATE_NOOP("Report", "Leak-down");
        case Label::wet_test:
            return QT_TRANSLATE_NOOP("Report", "Wet test");
        case Label::cylinder:
            return QT_TRANSLATE_NOOP("Report", "Cylinder");
        case Label::first_puff:
            return QT_TRANSLATE_NOOP("Report", "First puff");
        case Label::repeats:
            return QT_TRANSLATE_NOOP("Report", "Repeats");
        case Label::too_far_below:
            return QT_TRANSLATE_NOOP("Report", "Too far below the highest");
        case Label::held:
            return QT_TRANSLATE_NOOP("Report", "held");
        case Label::set:
            return QT_TRANSLATE_NOOP("Report", "set");
        case Label::same_leak:
            return QT_TRANSLATE_NOOP("Report", "Same leak at");
        case Label::rise:
            return QT_TRANSLATE_NOOP("Report", "Rise");
        case Label::without_hose:
            return QT_TRANSLATE_NOOP("Report", "Without the hose");
        case Label::oil_volume_explains:
            return QT_TRANSLATE_NOOP("Report", "Oil's volume alone");
        case Label::valve:
            return QT_TRANSLATE_NOOP("Report", "Valve");
        case Label::left:
            return QT_TRANSLATE_NOOP("Report", "Left at");
        case Label::wanted:
            return QT_TRANSLATE_NOOP("Report", "Wanted, cold");
        case Label::range:
            return QT_TRANSLATE_NOOP("Report", "Normal range");
        case Label::lowest:
            return QT_TRANSLATE_NOOP("Report", "Lowest limit");
        case Label::difference:
            return QT_TRANSLATE_NOOP("Report", "Most difference");
        case Label::least_ratio:
            return QT_TRANSLATE_NOOP("Report", "Lowest of highest, at least");
        case Label::most_leakage:
            return QT_TRANSLATE_NOOP("Report", "Most leakage");
        case Label::basis:
            return QT_TRANSLATE_NOOP("Report", "How they were set");
        case Label::origin:
            return QT_TRANSLATE_NOOP("Report", "From");
        case Label::source:
            return QT_TRANSLATE_NOOP("Report", "Taken from");
        case Label::points_at:
            return QT_TRANSLATE_NOOP("Report", "Points at");
        case Label::hold_time:
            return QT_TRANSLATE_NOOP("Report", "Held for");
        case Label::end_pressure:
            return QT_TRANSLATE_NOOP("Report", "End pressure");
        case Label::altitude:
            return QT_TRANSLATE_NOOP("Report", "Altitude");
        case Label::station_pressure:
            return QT_TRANSLATE_NOOP("Report", "Air pressure");
        case Label::air:
            return QT_TRANSLATE_NOOP("Report", "Air");
        case Label::engine_heat:
            return QT_TRANSLATE_NOOP("Report", "Engine");
        case Label::coolant:
            return QT_TRANSLATE_NOOP("Report", "Coolant");
        case Label::throttle:
            return QT_TRANSLATE_NOOP("Report", "Throttle");
        case Label::induction:
            return QT_TRANSLATE_NOOP("Report", "Induction");
        case Label::battery:
            return QT_TRANSLATE_NOOP("Report", "Battery");
        case Label::cranked_by:
            return QT_TRANSLATE_NOOP("Report", "Cranked by");
        case Label::cranking_speed:
            return QT_TRANSLATE_NOOP("Report", "Cranking speed");
        case Label::crank_held_by:
            return QT_TRANSLATE_NOOP("Report", "Crank held by");
        case Label::step:
            return QT_TRANSLATE_NOOP("Report", "Step");
        case Label::if_not_done:
            return QT_TRANSLATE_NOOP("Report", "What it does to the readings");
        case Label::not_marked:
            return QT_TRANSLATE_NOOP("Report", "Neither done nor crossed out");
        case Label::tester:
            return QT_TRANSLATE_NOOP("Report", "Tester");
        case Label::scale:
            return QT_TRANSLATE_NOOP("Report", "Scale");
        case Label::accuracy_class:
            return QT_TRANSLATE_NOOP("Report", "Class");
        case Label::details:
            return QT_TRANSLATE_NOOP("Report", "Details");
        case Label::last_checks:
            return QT_TRANSLATE_NOOP("Report", "Last checks");
        case Label::division:
            return QT_TRANSLATE_NOOP("Report", "Division");
        case Label::hose_volume:
            return QT_TRANSLATE_NOOP("Report", "Hose and gauge");
        case Label::check_valve:
            return QT_TRANSLATE_NOOP("Report", "Check valve at");
        case Label::valve_core:
            return QT_TRANSLATE_NOOP("Report", "Valve core");
        case Label::set_pressure:
            return QT_TRANSLATE_NOOP("Report", "Set pressure");
        case Label::restrictor:
            return QT_TRANSLATE_NOOP("Report", "Restrictor");
        case Label::option:
            return QT_TRANSLATE_NOOP("Report", "Choice");
        case Label::work:
            return QT_TRANSLATE_NOOP("Report", "Work and parts");
        case Label::price:
            return QT_TRANSLATE_NOOP("Report", "Price and hours");
        case Label::if_left:
            return QT_TRANSLATE_NOOP("Report", "If left");
        case Label::comes_to:
            return QT_TRANSLATE_NOOP("Report", "Comes to");
        case Label::quick_fixes:
            return QT_TRANSLATE_NOOP("Report", "Quick fixes");
        case Label::strip:
            return QT_TRANSLATE_NOOP("Report", "Strip");
        case Label::expected_after:
            return QT_TRANSLATE_NOOP("Report", "Expected after repair");
        case Label::once_run_in:
            return QT_TRANSLATE_NOOP("Report", "once run in");
        case Label::under_one_percent:
            return QT_TRANSLATE_NOOP("Report", "Under 1 % each");
        case Label::assumptions_version:
            return QT_TRANSLATE_NOOP("Report", "Assumptions, version · sum of all data");
        case Label::seed:
            return QT_TRANSLATE_NOOP("Report", "Odds, seed");
        case Label::expected:
            return QT_TRANSLATE_NOOP("Report", "Reading to expect");
        case Label::description:
            return QT_TRANSLATE_NOOP("Report", "Description");
        case Label::history:
            return QT_TRANSLATE_NOOP("Report", "Its past");
        case Label::cycle:
            return QT_TRANSLATE_NOOP("Report", "Cycle");
        case Label::fuel:
            return QT_TRANSLATE_NOOP("Report", "Fuel");
        case Label::arrangement:
            return QT_TRANSLATE_NOOP("Report", "Cylinders");
        case Label::bank_angle:
            return QT_TRANSLATE_NOOP("Report", "Bank angle");
        case Label::cooling:
            return QT_TRANSLATE_NOOP("Report", "Cooling");
        case Label::firing_order:
            return QT_TRANSLATE_NOOP("Report", "Firing order");
        case Label::bore:
            return QT_TRANSLATE_NOOP("Report", "Bore");
        case Label::stroke:
            return QT_TRANSLATE_NOOP("Report", "Stroke");
        case Label::rod:
            return QT_TRANSLATE_NOOP("Report", "Rod");
        case Label::compression_ratio:
            return QT_TRANSLATE_NOOP("Report", "Compression ratio");
        case Label::port_closing:
            return QT_TRANSLATE_NOOP("Report", "Exhaust port closes");
        case Label::valves_per_cylinder:
            return QT_TRANSLATE_NOOP("Report", "Valves per cylinder");
        case Label::intake_clearance:
            return QT_TRANSLATE_NOOP("Report", "Intake clearance");
        case Label::exhaust_clearance:
            return QT_TRANSLATE_NOOP("Report", "Exhaust clearance");
        case Label::adjusters:
            return QT_TRANSLATE_NOOP("Report", "Adjusters");
        case Label::valve_timing:
            return QT_TRANSLATE_NOOP("Report", "Valve timing");
        case Label::intake_closing:
            return QT_TRANSLATE_NOOP("Report", "Intake closes after BDC");
        case Label::exhaust_opening:
            return QT_TRANSLATE_NOOP("Report", "Exhaust opens before BDC");
        case Label::decompressor:
            return QT_TRANSLATE_NOOP("Report", "Decompressor");
        case Label::plug_thread:
            return QT_TRANSLATE_NOOP("Report", "Plug thread");
        case Label::plug_reach:
            return QT_TRANSLATE_NOOP("Report", "Plug reach");
        case Label::home_made:
            return QT_TRANSLATE_NOOP("Report", "Home-made");
        case Label::not_checked:
            return QT_TRANSLATE_NOOP("Report", "Never checked");
        case Label::class_unknown:
            return QT_TRANSLATE_NOOP("Report", "Unknown");
        case Label::every_step_marked:
            return QT_TRANSLATE_NOOP("Report", "Every step of Prepare was done or not needed.");
        case Label::no_readings:
            return QT_TRANSLATE_NOOP("Report", "Nothing was measured in this session.");
        case Label::sealing_test:
            return QT_TRANSLATE_NOOP("Report", "Sealing test");
        case Label::uncertainty_mark:
            return QT_TRANSLATE_NOOP("Report", "uncertainty");
        case Label::page_of:
            return QT_TRANSLATE_NOOP("Report", "Page %1 of %2");
        case Label::how_bores:
            return QT_TRANSLATE_NOOP("Report",
                                     "Dry and wet test: the piston line stands at the final reading, all in "
                                     "one scale. Leak-down: it stands at the part of the set pressure that "
                                     "the cylinder held; the figure is what it lost.");
        case Label::how_interval:
            return QT_TRANSLATE_NOOP("Report",
                                     "The figure behind ± is half of the 95 % interval: of twenty such "
                                     "readings nineteen lie within it. It counts the gauge's class and "
                                     "scale, how finely it was read and how repeats scatter.");
        case Label::how_shared:
            return QT_TRANSLATE_NOOP("Report",
                                     "All readings of one gauge share most of its error, so cylinders can be "
                                     "compared more closely than either can be held against a limit.");
        case Label::how_states:
            return QT_TRANSLATE_NOOP(
                "Report",
                "A verdict follows the figure as read; one that passes the maker's limit by less "
                "than its own uncertainty is called borderline. A reading that a hose, a closed "
                "throttle, a "
                "cold engine or a weak battery lowered is put right first.");
        case Label::how_same_leak:
            return QT_TRANSLATE_NOOP("Report",
                                     "Percentages of testers with different set pressures can't be compared "
                                     "as they stand. \"Same leak at\" is what another tester would show on "
                                     "the same leak, from an orifice-like leak to a long narrow gap.");
        case Label::how_oil_range:
            return QT_TRANSLATE_NOOP("Report",
                                     "\"Oil's volume alone\" is a range because nobody knows how much of the "
                                     "oil stayed in the chamber. What gauge, scatter and engine add to the "
                                     "doubt is not in it.");
        case Label::how_odds:
            return QT_TRANSLATE_NOOP(
                "Report",
                "Odds say how likely it is that a cylinder leaks more than a sound one, and "
                "mostly there. A bar shows how what it leaks, much or little, is shared, each part filled as "
                "far "
                "as it is sure. Beside each share stands the range that holds it in nine "
                "cases of ten. A range expected after a repair holds the reading as "
                "often. Odds are rounded to 5 % and never shown above 95 %.");
        case Label::how_likely:
            return QT_TRANSLATE_NOOP("Report",
                                     "How likely each is rests on the app's working assumptions; it was not "
                                     "yet counted on real engines.");
        case Label::for_the_mechanic:
            return QT_TRANSLATE_NOOP("Report", "For the mechanic:");
        case Label::how_expected:
            return QT_TRANSLATE_NOOP("Report",
                                     "After a repair the reading is expected within its range in nine cases "
                                     "of ten.");
        case Label::rules_of_thumb:
            return QT_TRANSLATE_NOOP("Report", "Rules of thumb");
        case Label::how_rules:
            return QT_TRANSLATE_NOOP("Report",
                                     "Rules of thumb stand here in their own words, each with its own "
                                     "verdict. They can disagree.");
        case Label::how_sources:
            return QT_TRANSLATE_NOOP("Report",
                                     "Where limits and engine data come from stands beside them. The "
                                     "report with its appendix for a mentor names the source of every "
                                     "rule and formula and shows how each number was made.");
        case Label::how_chart:
            return QT_TRANSLATE_NOOP(
                "Report",
                "A number at a line's end is its cylinder; a whisker is the 95 % doubt. A dry test's whisker "
                "also holds what readings scatter by from one day to the next, which the ± in the tables "
                "leaves out, so it is longer. A line breaks where a repair lies between. Open marks can't be "
                "compared "
                "with the rest. All in the newest visit's terms.");
    }
    return "";
}

}  // namespace

QString text_of(report::Label label) {
    return QCoreApplication::translate("Report", english(label));
}

}  // namespace lapwing::print

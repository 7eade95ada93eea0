// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <QtGlobal>
#include <unordered_map>

#include "qml/format/tables.h"

/// Sentences of core/workflow/proposal_codes.h. They become a person's own words when they are taken into the
/// plan.
namespace lapwing::format {
namespace {

#define SAY(code, english) \
    { code, QT_TRANSLATE_NOOP("Findings", english) }

const std::unordered_map<std::string_view, const char*> sentences = {
    SAY("propose.check_clearance", "Check the clearance of %1, then test again."),
    SAY("propose.adjust_clearance", "Adjust the clearance of %1, then test again."),
    SAY("propose.test_adjusted", "The clearance of %1 was changed: test again."),
    SAY("propose.listen",
        "Put the air on again and listen at every exit: where it comes out names the leak."),
    SAY("propose.run_it", "Run it until it is warm, then test again."),
    SAY("propose.repeat_open", "Repeat the dry test warm, with the throttle held wide open."),
    SAY("propose.soak", "Leave penetrating oil in the bore overnight, run it, then test again."),
    SAY("propose.stake", "Stake %1 lightly on its seat, then test again."),
    SAY("propose.head_bolts", "Check the head bolts by the engine's manual, then test again."),
    SAY("propose.decompressor", "Adjust the decompressor so that it closes, then test again."),
    SAY("propose.low_but_seals", "Check valve timing, throttle, starter speed and hose, then test again."),
    SAY("propose.low_but_seals_diesel",
        "Check valve timing, air filter, starter speed and hose, then test again."),
    SAY("propose.valve", "Head off: grind or renew %1, cut and lap its seat."),
    SAY("propose.rings",
        "Cylinder off or piston out: measure the bore, new rings. Hone an iron bore; a plated bore must not "
        "be honed: as its manual says."),
    SAY("propose.rings_two_stroke",
        "Cylinder off: measure bore and piston, new rings. Hone an iron bore; a plated bore must not be "
        "honed: as its manual says."),
    SAY("propose.gasket", "Head off: look for cracks, measure head and block for flatness, new head gasket."),
    SAY("propose.crankcase", "Renew what lets the crankcase leak: crank seals, base gasket, reed."),
    SAY("propose.crankcase_soap",
        "Crankcase under its test pressure again: soapy water on crank seals, base gasket and intake. "
        "Bubbles "
        "show where it leaks."),
    SAY("propose.name_tester",
        "Name the leak-down tester and its restrictor, then look at the findings again."),
    SAY("propose.watch", "Leave it and measure again later."),

    SAY("because.odds", "Cylinder %1, %2: %3 at fault, under the app's working assumptions."),
    SAY("because.joint", "The joint of %1: %2 at fault, under the app's working assumptions."),
    SAY("because.rules", "The rules of thumb point at %2 of cylinder %1."),

    SAY("left.valve", "The seat burns further and the leak grows."),
    SAY("left.exhaust_valve",
        "Hot gas cuts the leak larger: the seat goes next, and a piece of the valve can break off."),
    SAY("left.rings_diesel",
        "Power and oil go on getting worse, slowly, and it starts ever harder in the cold."),
    SAY("left.rings", "Power and oil go on getting worse, slowly; oil fouls the plug."),
    SAY("left.gasket",
        "Hot gas cuts into head and block; what is a gasket now becomes a head to be machined."),
    SAY("left.coolant",
        "Gas drives out the coolant and the engine overheats; coolant in a cylinder can bend its rod."),
    SAY("left.decompressor", "It starts badly and its readings tell nothing."),
    SAY("left.crankcase", "False air makes it run lean: it can seize."),
    SAY("left.wear", "Normal wear goes on; nothing is lost by waiting as long as it does not grow."),
};

#undef SAY

}  // namespace

const char* planSentenceOf(std::string_view code) {
    const auto at = sentences.find(code);
    return at == sentences.end() ? nullptr : at->second;
}

}  // namespace lapwing::format

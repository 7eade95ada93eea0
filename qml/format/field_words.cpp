// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <QtGlobal>
#include <unordered_map>

#include "qml/format/tables.h"

namespace lapwing::format {
namespace {

#define SAY(path, english) \
    { path, QT_TRANSLATE_NOOP("Findings", english) }

/// The names that a person reads for the fields of records, as core/record/fields.h calls them. Where a last
/// name alone would mean two things, the whole path stands here.
const std::unordered_map<std::string_view, const char*> names = {
    SAY("made_at", "Added"),
    SAY("name", "Name"),
    SAY("description", "Description"),
    SAY("tags", "Tags"),
    SAY("history", "History"),
    SAY("owner.name", "Owner"),
    SAY("contact", "Owner's contact"),
    SAY("cycle", "Strokes"),
    SAY("fuel", "Fuel"),
    SAY("arrangement", "Arrangement"),
    SAY("bank_angle", "Angle between the banks"),
    SAY("cooling", "Cooling"),
    SAY("cylinders", "Cylinders"),
    SAY("firing_order", "Firing order"),
    SAY("firing_intervals", "Firing intervals"),
    SAY("joined_intakes", "Joined intakes"),
    SAY("joined_exhausts", "Joined exhausts"),
    SAY("bore", "Bore"),
    SAY("stroke", "Stroke"),
    SAY("rod", "Rod"),
    SAY("compression_ratio", "Compression ratio"),
    SAY("exhaust_port_closing", "Exhaust port closing"),
    SAY("intake_valves", "Intake valves per cylinder"),
    SAY("exhaust_valves", "Exhaust valves per cylinder"),
    SAY("adjuster", "Adjusters"),
    SAY("intake_clearance", "Intake clearance"),
    SAY("exhaust_clearance", "Exhaust clearance"),
    SAY("timing", "Valve timing"),
    SAY("intake_closing", "Intake closing"),
    SAY("intake_closing_at", "Intake closing counted"),
    SAY("exhaust_opening", "Exhaust opening"),
    SAY("exhaust_opening_at", "Exhaust opening counted"),
    SAY("decompressor", "Decompressor"),
    SAY("plug_thread", "Plug thread"),
    SAY("plug_reach", "Plug reach"),
    SAY("limits.low", "Factory range from"),
    SAY("limits.high", "Factory range to"),
    SAY("limits.lowest", "Factory limit"),
    SAY("limits.difference", "Most between cylinders"),
    SAY("limits.least_ratio", "Lowest of highest, at least"),
    SAY("limits.most_leakage", "Most leakage"),
    SAY("limits.leakage_set", "Set pressure of the maker's tester"),
    SAY("limits.leakage_restrictor", "Restrictor of the maker's tester"),
    SAY("limits.origin", "Source of the limits"),
    SAY("limits.note", "Note on the limits"),
    SAY("crankcase.set", "Crankcase set pressure"),
    SAY("crankcase.hold", "Crankcase hold time"),
    SAY("crankcase.end_at_least", "Crankcase end pressure, at least"),
    SAY("crankcase.origin", "Source of the crankcase figures"),
    SAY("crankcase.note", "Note on the crankcase figures"),
    SAY("shop_altitude", "Shop altitude"),

    SAY("kind", "Kind"),
    SAY("home_made", "Home-made"),
    SAY("full_scale", "Full scale"),
    SAY("scheme", "Class by"),
    SAY("accuracy", "Class"),
    SAY("division", "Smallest division"),
    SAY("zero_at_rest", "Needle at rest"),
    SAY("sweep", "Sweep of the scale"),
    SAY("supply_gauge", "Gauge before the restrictor"),
    SAY("hose_volume", "Volume of hose and gauge"),
    SAY("check_valve_at", "Check valve at"),
    SAY("check_valve_core", "Check valve core"),
    SAY("adapters", "Adapters"),
    SAY("set_pressure", "Set pressure"),
    SAY("restrictor", "Restrictor"),
    SAY("restrictor_length", "Length of the restrictor"),
    SAY("restrictor_cd", "Discharge coefficient"),
    SAY("checks", "Checks"),

    SAY("opened_at", "Opened"),
    SAY("title", "Title"),
    SAY("usage", "Mileage or hours"),
    SAY("job_number", "Job number"),
    SAY("symptoms", "Symptoms"),
    SAY("complaint.text", "Complaint"),
    SAY("altitude", "Altitude"),
    SAY("station_pressure", "Air pressure at the shop"),
    SAY("air", "Air"),
    SAY("heat", "Engine"),
    SAY("coolant", "Coolant"),
    SAY("throttle", "Throttle"),
    SAY("induction", "Induction"),
    SAY("battery", "Battery"),
    SAY("cranked_by", "Cranked by"),
    SAY("cranking_speed", "Cranking speed"),
    SAY("crank_held_by", "Crank held by"),
    SAY("prepare", "Prepare"),
    SAY("compression_gauge", "Compression gauge"),
    SAY("leak_down_tester", "Leak-down tester"),
    SAY("crankcase_tester", "Crankcase tester"),
    SAY("owner_answer", "Owner's answer"),
    SAY("owner_answered_at", "Owner answered"),
    SAY("retest_planned_for", "Retest planned for"),

    SAY("test", "Test"),
    SAY("cylinder", "Cylinder"),
    SAY("taken_at", "Taken"),
    SAY("tag", "What came just before"),
    SAY("oiled", "Oil on the rings"),
    SAY("from", "Where it is from"),
    SAY("tester", "Tester"),
    SAY("adapter", "Adapter"),
    SAY("first", "First puff"),
    SAY("final", "Final reading"),
    SAY("pulls", "Pulls"),
    SAY("set", "Set"),
    SAY("held", "Held"),
    SAY("hold", "Hold time"),
    SAY("oil_volume", "Oil put in"),
    SAY("oil_name", "Oil"),
    SAY("replaces", "Stands in place of"),
    SAY("note", "Note"),

    SAY("exit", "Exit"),
    SAY("neighbour", "Neighbour"),
    SAY("loudness", "How loud"),
    SAY("by", "Listened by"),
    SAY("reading", "Reading"),
    SAY("at", "When"),
    SAY("side", "Valve"),
    SAY("valve", "Valve number"),
    SAY("found", "Found"),
    SAY("left", "Left"),

    SAY("tie", "Belongs to"),
    SAY("photo_of", "Shows"),
    SAY("sha256", "File"),
    SAY("media_type", "Kind of file"),
    SAY("bytes", "Bytes"),
    SAY("length", "Length"),
    SAY("caption", "Caption"),
    SAY("read_value", "Read from the photo"),
    SAY("read_uncertainty", "Uncertainty of that"),
    SAY("read_confidence", "Confidence of that"),
    SAY("read_refusal", "Why it was not read"),
    SAY("read_settled", "What holds"),

    SAY("author", "Written by"),
    SAY("text", "Text"),
    SAY("done", "Done"),
    SAY("cause", "Where it leaks"),

    SAY("option", "Choice"),
    SAY("work", "Work"),
    SAY("parts", "Parts"),
    SAY("labour", "Hours"),
    SAY("price", "Price"),
    SAY("reason", "Reason"),
    SAY("if_left", "If left"),
    SAY("order", "Place in the plan"),
    SAY("done_at", "Done on"),
    SAY("predicted_low", "Reading to expect from"),
    SAY("predicted_high", "Reading to expect to"),
};

#undef SAY

}  // namespace

const char* fieldOf(std::string_view path) {
    const auto at = names.find(path);
    return at == names.end() ? nullptr : at->second;
}

}  // namespace lapwing::format

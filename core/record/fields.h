// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <concepts>
#include <optional>
#include <string>
#include <type_traits>
#include <vector>

#include "core/model/visit.h"

/// The one description of every stored struct: `fields(visitor, value)` calls `visitor("name", value.member)`
/// for each field, in the order in which files hold them. The reader, the writer and the check of the
/// published schema all walk it, so a field can't be written and not read.
///
/// `extra` is not among them: it carries what this version doesn't know. Renaming a field here breaks
/// files; assets/schema/session-1.schema.json names the same fields, which a test compares.
namespace lapwing::record {

/// T, const or not: the writer walks const values, the reader fills others.
template <class U, class T>
concept As = std::same_as<std::remove_const_t<U>, T>;

/// How a quantity stands in a file: the digits as typed and the file symbol of their unit.
struct DigitsAndUnit {
    std::string digits;
    std::string unit;
};
void fields(auto& visit, As<DigitsAndUnit> auto& pair) {
    visit("digits", pair.digits);
    visit("unit", pair.unit);
}

// What records are made of

template <class T>
void fields(auto& visit, const Sourced<T>& sourced) {
    visit("value", sourced.value);
    visit("origin", sourced.origin);
    visit("note", sourced.note);
}
template <class T>
void fields(auto& visit, Sourced<T>& sourced) {
    visit("value", sourced.value);
    visit("origin", sourced.origin);
    visit("note", sourced.note);
}

void fields(auto& visit, As<Cylinder> auto& cylinder) {
    visit("number", cylinder.number);
    visit("name", cylinder.name);
    visit("bank", cylinder.bank);
    visit("row", cylinder.row);
    visit("column", cylinder.column);
}

void fields(auto& visit, As<ClearanceRange> auto& range) {
    visit("low", range.low);
    visit("high", range.high);
}

void fields(auto& visit, As<ValveGear> auto& valves) {
    visit("intake_valves", valves.intake_valves);
    visit("exhaust_valves", valves.exhaust_valves);
    visit("adjuster", valves.adjuster);
    visit("intake_clearance", valves.intake_clearance);
    visit("exhaust_clearance", valves.exhaust_clearance);
    visit("timing", valves.timing);
    visit("intake_closing", valves.intake_closing);
    visit("intake_closing_at", valves.intake_closing_at);
    visit("exhaust_opening", valves.exhaust_opening);
    visit("exhaust_opening_at", valves.exhaust_opening_at);
}

void fields(auto& visit, As<FactoryLimits> auto& limits) {
    visit("low", limits.low);
    visit("high", limits.high);
    visit("lowest", limits.lowest);
    visit("difference", limits.difference);
    visit("least_ratio", limits.least_ratio);
    visit("most_leakage", limits.most_leakage);
    visit("leakage_set", limits.leakage_set);
    visit("leakage_restrictor", limits.leakage_restrictor);
    visit("origin", limits.origin);
    visit("note", limits.note);
}

void fields(auto& visit, As<CrankcaseLimits> auto& limits) {
    visit("set", limits.set);
    visit("hold", limits.hold);
    visit("end_at_least", limits.end_at_least);
    visit("origin", limits.origin);
    visit("note", limits.note);
}

void fields(auto& visit, As<Owner> auto& owner) {
    visit("name", owner.name);
    visit("contact", owner.contact);
}

void fields(auto& visit, As<Gauge> auto& gauge) {
    visit("full_scale", gauge.full_scale);
    visit("scheme", gauge.scheme);
    visit("accuracy", gauge.accuracy);
    visit("division", gauge.division);
    visit("zero_at_rest", gauge.zero_at_rest);
    visit("sweep", gauge.sweep);
}

void fields(auto& visit, As<Adapter> auto& adapter) {
    visit("name", adapter.name);
    visit("thread", adapter.thread);
    visit("reach", adapter.reach);
    visit("volume", adapter.volume);
    visit("seal", adapter.seal);
}

void fields(auto& visit, As<TesterCheck> auto& check) {
    visit("kind", check.kind);
    visit("at", check.at);
    visit("result", check.result);
    visit("set", check.set);
    visit("shown", check.shown);
    visit("hole", check.hole);
    visit("note", check.note);
}

void fields(auto& visit, As<Complaint> auto& complaint) {
    visit("symptoms", complaint.symptoms);
    visit("text", complaint.text);
}

void fields(auto& visit, As<PrepareMark> auto& mark) {
    visit("step", mark.step);
    visit("state", mark.state);
    visit("note", mark.note);
}

void fields(auto& visit, As<Conditions> auto& conditions) {
    visit("altitude", conditions.altitude);
    visit("station_pressure", conditions.station_pressure);
    visit("air", conditions.air);
    visit("heat", conditions.heat);
    visit("coolant", conditions.coolant);
    visit("throttle", conditions.throttle);
    visit("induction", conditions.induction);
    visit("battery", conditions.battery);
    visit("cranked_by", conditions.cranked_by);
    visit("cranking_speed", conditions.cranking_speed);
    visit("crank_held_by", conditions.crank_held_by);
}

void fields(auto& visit, As<Tie> auto& tie) {
    visit("to", tie.to);
    visit("record", tie.record);
    visit("cylinder", tie.cylinder);
    visit("finding", tie.finding);
}

void fields(auto& visit, As<Money> auto& money) {
    visit("digits", money.digits);
    visit("currency", money.currency);
}

void fields(auto& visit, As<Revision> auto& revision) {
    visit("library", revision.library);
    visit("at", revision.at);
}

/// Stands in a record's own object.
void fields(auto& visit, As<Lineage> auto& lineage) {
    visit("revisions", lineage.revisions);
    visit("other_versions", lineage.other_versions);
}

// Records

void fields(auto& visit, As<Engine> auto& engine) {
    visit("id", engine.id);
    visit("made_at", engine.made_at);
    visit("name", engine.name);
    visit("description", engine.description);
    visit("tags", engine.tags);
    visit("history", engine.history);
    visit("owner", engine.owner);
    visit("cycle", engine.cycle);
    visit("fuel", engine.fuel);
    visit("arrangement", engine.arrangement);
    visit("bank_angle", engine.bank_angle);
    visit("cooling", engine.cooling);
    visit("cylinders", engine.cylinders);
    visit("firing_order", engine.firing_order);
    visit("firing_intervals", engine.firing_intervals);
    visit("joined_intakes", engine.joined_intakes);
    visit("joined_exhausts", engine.joined_exhausts);
    visit("bore", engine.bore);
    visit("stroke", engine.stroke);
    visit("rod", engine.rod);
    visit("compression_ratio", engine.compression_ratio);
    visit("exhaust_port_closing", engine.exhaust_port_closing);
    visit("valves", engine.valves);
    visit("decompressor", engine.decompressor);
    visit("plug_thread", engine.plug_thread);
    visit("plug_reach", engine.plug_reach);
    visit("limits", engine.limits);
    visit("crankcase", engine.crankcase);
    visit("shop_altitude", engine.shop_altitude);
    fields(visit, engine.lineage);
}

void fields(auto& visit, As<Tester> auto& tester) {
    visit("id", tester.id);
    visit("made_at", tester.made_at);
    visit("kind", tester.kind);
    visit("name", tester.name);
    visit("home_made", tester.home_made);
    visit("gauge", tester.gauge);
    visit("supply_gauge", tester.supply_gauge);
    visit("hose_volume", tester.hose_volume);
    visit("check_valve_at", tester.check_valve_at);
    visit("check_valve_core", tester.check_valve_core);
    visit("adapters", tester.adapters);
    visit("set_pressure", tester.set_pressure);
    visit("restrictor", tester.restrictor);
    visit("restrictor_length", tester.restrictor_length);
    visit("restrictor_cd", tester.restrictor_cd);
    visit("checks", tester.checks);
    visit("note", tester.note);
    fields(visit, tester.lineage);
}

void fields(auto& visit, As<Session> auto& session) {
    visit("id", session.id);
    visit("engine", session.engine);
    visit("opened_at", session.opened_at);
    visit("title", session.title);
    visit("usage", session.usage);
    visit("job_number", session.job_number);
    visit("complaint", session.complaint);
    visit("conditions", session.conditions);
    visit("prepare", session.prepare);
    visit("compression_gauge", session.compression_gauge);
    visit("leak_down_tester", session.leak_down_tester);
    visit("crankcase_tester", session.crankcase_tester);
    visit("owner_answer", session.owner_answer);
    visit("owner_answered_at", session.owner_answered_at);
    visit("retest_planned_for", session.retest_planned_for);
    visit("note", session.note);
    fields(visit, session.lineage);
}

void fields(auto& visit, As<Reading> auto& reading) {
    visit("id", reading.id);
    visit("session", reading.session);
    visit("test", reading.test);
    visit("cylinder", reading.cylinder);
    visit("taken_at", reading.taken_at);
    visit("tag", reading.tag);
    visit("oiled", reading.oiled);
    visit("from", reading.from);
    visit("tester", reading.tester);
    visit("adapter", reading.adapter);
    visit("first", reading.first);
    visit("final", reading.final);
    visit("pulls", reading.pulls);
    visit("cranked_by", reading.cranked_by);
    visit("set", reading.set);
    visit("held", reading.held);
    visit("dial_loss", reading.dial_loss);
    visit("hold", reading.hold);
    visit("oil_volume", reading.oil_volume);
    visit("oil_name", reading.oil_name);
    visit("replaces", reading.replaces);
    visit("note", reading.note);
    fields(visit, reading.lineage);
}

void fields(auto& visit, As<ExitNote> auto& note) {
    visit("id", note.id);
    visit("session", note.session);
    visit("cylinder", note.cylinder);
    visit("exit", note.exit);
    visit("neighbour", note.neighbour);
    visit("loudness", note.loudness);
    visit("by", note.by);
    visit("tag", note.tag);
    visit("reading", note.reading);
    visit("replaces", note.replaces);
    visit("at", note.at);
    visit("note", note.note);
    fields(visit, note.lineage);
}

void fields(auto& visit, As<Clearance> auto& clearance) {
    visit("id", clearance.id);
    visit("session", clearance.session);
    visit("cylinder", clearance.cylinder);
    visit("side", clearance.side);
    visit("valve", clearance.valve);
    visit("found", clearance.found);
    visit("left", clearance.left);
    visit("replaces", clearance.replaces);
    visit("at", clearance.at);
    visit("note", clearance.note);
    fields(visit, clearance.lineage);
}

void fields(auto& visit, As<Attachment> auto& attachment) {
    visit("id", attachment.id);
    visit("session", attachment.session);
    visit("kind", attachment.kind);
    visit("tie", attachment.tie);
    visit("photo_of", attachment.photo_of);
    visit("sha256", attachment.sha256);
    visit("media_type", attachment.media_type);
    visit("bytes", attachment.bytes);
    visit("length", attachment.length);
    visit("taken_at", attachment.taken_at);
    visit("caption", attachment.caption);
    visit("read_value", attachment.read_value);
    visit("read_uncertainty", attachment.read_uncertainty);
    visit("read_confidence", attachment.read_confidence);
    visit("read_refusal", attachment.read_refusal);
    visit("read_settled", attachment.read_settled);
    fields(visit, attachment.lineage);
}

void fields(auto& visit, As<Note> auto& note) {
    visit("id", note.id);
    visit("session", note.session);
    visit("kind", note.kind);
    visit("tie", note.tie);
    visit("author", note.author);
    visit("text", note.text);
    visit("at", note.at);
    visit("done", note.done);
    visit("test", note.test);
    visit("check", note.check);
    visit("cause", note.cause);
    fields(visit, note.lineage);
}

void fields(auto& visit, As<PlanLine> auto& line) {
    visit("id", line.id);
    visit("session", line.session);
    visit("option", line.option);
    visit("cylinder", line.cylinder);
    visit("work", line.work);
    visit("parts", line.parts);
    visit("labour", line.labour);
    visit("price", line.price);
    visit("reason", line.reason);
    visit("if_left", line.if_left);
    visit("order", line.order);
    visit("done_at", line.done_at);
    visit("predicted_low", line.predicted_low);
    visit("predicted_high", line.predicted_high);
    fields(visit, line.lineage);
}

void fields(auto& visit, As<Visit> auto& whole) {
    visit("session", whole.session);
    visit("readings", whole.readings);
    visit("exits", whole.exits);
    visit("clearances", whole.clearances);
    visit("attachments", whole.attachments);
    visit("notes", whole.notes);
    visit("plan", whole.plan);
}

void fields(auto& visit, As<MissingFile> auto& missing) {
    visit("attachment", missing.attachment);
    visit("loss", missing.loss);
}

void fields(auto& visit, As<Dossier> auto& dossier) {
    visit("engine", dossier.engine);
    visit("testers", dossier.testers);
    visit("visits", dossier.visits);
    visit("missing", dossier.missing);
}

/// Records carry `extra`.
template <class T>
concept CarriesExtra = requires(T& value) {
    value.extra;
};

/// Fields of these types are left out of a file when they are empty and may be missing from one; all others
/// are always there.
template <class T>
inline constexpr bool may_be_missing = false;
template <class T>
inline constexpr bool may_be_missing<std::optional<T>> = true;
template <class T>
inline constexpr bool may_be_missing<std::vector<T>> = true;
template <>
inline constexpr bool may_be_missing<std::string> = true;

}  // namespace lapwing::record

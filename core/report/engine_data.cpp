// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <algorithm>
#include <utility>

#include "core/report/pieces.h"
#include "core/report/sections.h"

namespace lapwing::report {

using findings::Dimension;

namespace {

/// A limit's own doubt is that of the air pressure it was scaled by: a mentor's, while an owner meets three
/// doubts of one figure.
Text limit_of(const findings::Derived& derived, bool appendix) {
    if (appendix) return derived.figure;
    return Range{derived.figure, derived.figure};  // with the digits that its doubt allows
}

void add_derived(Facts& to, Label name, const std::optional<findings::Derived>& derived, bool appendix) {
    if (derived) add(to, name, {limit_of(*derived, appendix)});
}

Line origin_of(const FactoryLimits& limits) {
    Line line;
    if (limits.origin != Origin::unknown) line.emplace_back(findings::word_of(limits.origin));
    if (!limits.note.empty()) line.emplace_back(OwnWords{limits.note});
    return line;
}

/// "at 80 psi, 1.016 mm": which tester the maker's figure belongs to.
Line most_leakage(const FactoryLimits& limits) {
    Line line;
    if (limits.most_leakage) line.emplace_back(as_typed(Dimension::share, *limits.most_leakage));
    if (limits.most_leakage && limits.leakage_set)
        line.emplace_back(as_typed(Dimension::gauge_pressure, *limits.leakage_set));
    if (limits.most_leakage && limits.leakage_restrictor)
        line.emplace_back(as_typed(Dimension::length, *limits.leakage_restrictor));
    return line;
}

/// The card's facts, those with a source of their own kept together under it: "manual, page 3" is said once.
class Card {
public:
    Facts plain;

    template <class T>
    void add(Label name, Line value, const Sourced<T>& sourced) {
        const Line origin = with_origin({}, sourced);
        if (origin.empty()) return report::add(plain, name, std::move(value));
        const Key key{sourced.origin, sourced.note};
        auto group = std::ranges::find(groups_, key, &Group::key);
        if (group == groups_.end()) group = groups_.insert(groups_.end(), {key, origin, {}});
        report::add(group->facts, name, std::move(value));
    }
    template <class Tag>
    void add(Label name, Dimension dimension, const std::optional<Sourced<Typed<Tag>>>& sourced) {
        if (sourced) add(name, {as_typed(dimension, sourced->value)}, *sourced);
    }

    [[nodiscard]] std::vector<Block> blocks() const {
        std::vector<Block> out;
        if (!plain.facts.empty()) out.emplace_back(plain);
        for (const Group& group : groups_) {
            out.emplace_back(Facts{{{Label::source, group.origin}}});
            out.emplace_back(group.facts);
        }
        return out;
    }

private:
    using Key = std::pair<Origin, std::string>;
    struct Group {
        Key key;
        Line origin;
        Facts facts;
    };
    std::vector<Group> groups_;
};

void add_clearance(Card& to, Label name, const std::optional<Sourced<ClearanceRange>>& wanted) {
    if (wanted)
        to.add(name,
               {Range{as_typed(Dimension::length, wanted->value.low),
                      as_typed(Dimension::length, wanted->value.high)}},
               *wanted);
}

void add_timing(Card& to, Label name, const std::optional<Sourced<TypedAngle>>& angle, TimingAt at) {
    if (!angle) return;
    Line line{as_typed(Dimension::angle, angle->value)};
    if (at != TimingAt::unknown) line.emplace_back(findings::word_of(at));
    to.add(name, std::move(line), *angle);
}

void add_valves(Card& to, const ValveGear& valves) {
    if (valves.intake_valves + valves.exhaust_valves > 0)
        add(to.plain, Label::valves_per_cylinder, {valves.intake_valves + valves.exhaust_valves});
    add_known(to.plain, Label::adjusters, valves.adjuster);
    add_clearance(to, Label::intake_clearance, valves.intake_clearance);
    add_clearance(to, Label::exhaust_clearance, valves.exhaust_clearance);
    add_known(to.plain, Label::valve_timing, valves.timing);
    add_timing(to, Label::intake_closing, valves.intake_closing, valves.intake_closing_at);
    add_timing(to, Label::exhaust_opening, valves.exhaust_opening, valves.exhaust_opening_at);
}

}  // namespace

Section limits(const Engine& engine, const findings::Findings& found, bool appendix) {
    Facts facts;
    const findings::Limits& here = found.limits;
    if (here.low && here.high) {
        add(facts, Label::range, {Range{here.low->figure, here.high->figure}});
    } else {
        add_derived(facts, Label::range, here.low, appendix);
        add_derived(facts, Label::range, here.high, appendix);
    }
    add_derived(facts, Label::lowest, here.lowest, appendix);
    add_derived(facts, Label::difference, here.difference, appendix);
    add(facts, Label::most_leakage, most_leakage(engine.limits));
    if (engine.limits.least_ratio)
        add(facts, Label::least_ratio, {as_typed(Dimension::share, *engine.limits.least_ratio)});
    add(facts, Label::basis, {here.basis.message});
    if (facts.facts.size() > 1) add(facts, Label::origin, origin_of(engine.limits));
    return {Label::limits, {std::move(facts)}};
}

Section engine_data(const Engine& engine) {
    Card card;
    Facts& facts = card.plain;
    add_words(facts, Label::description, engine.description);
    add(facts, Label::cycle, {findings::word_of(engine.cycle)});
    add(facts, Label::fuel, {findings::word_of(engine.fuel)});
    add(facts, Label::arrangement,
        {static_cast<int>(engine.cylinders.size()), findings::word_of(engine.arrangement)});
    add(facts, Label::bank_angle, Dimension::angle, engine.bank_angle);
    add_known(facts, Label::cooling, engine.cooling);
    if (!engine.firing_order.empty()) {
        Line order;
        for (int number : engine.firing_order)
            order.emplace_back(number);
        add(facts, Label::firing_order, std::move(order));
    }
    card.add(Label::bore, Dimension::length, engine.bore);
    card.add(Label::stroke, Dimension::length, engine.stroke);
    card.add(Label::rod, Dimension::length, engine.rod);
    card.add(Label::compression_ratio, Dimension::number, engine.compression_ratio);
    card.add(Label::port_closing, Dimension::angle, engine.exhaust_port_closing);
    add_valves(card, engine.valves);
    add_known(facts, Label::decompressor, engine.decompressor);
    add_words(facts, Label::plug_thread, engine.plug_thread);
    add(facts, Label::plug_reach, Dimension::length, engine.plug_reach);
    add_words(facts, Label::history, engine.history);
    return {Label::engine, card.blocks()};
}

}  // namespace lapwing::report

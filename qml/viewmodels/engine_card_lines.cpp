// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/engine_card_lines.h"

#include <QCoreApplication>
#include <algorithm>

#include "core/base/apart.h"
#include "qml/viewmodels/engine_changes.h"

namespace lapwing {
namespace {

struct Texts {
    Q_DECLARE_TR_FUNCTIONS(EngineCard)
};

using Lines = FormLines<Engine>;
using Kind = FormField::Kind;

const UnitList<AngleTag> degrees{units::deg};
const UnitList<RatioTag> plain{units::one};
const UnitList<RatioTag> percent{units::percent};

bool has_banks(const Engine& engine) {
    return engine.arrangement == Arrangement::vee || engine.arrangement == Arrangement::flat;
}

void add_identity(Lines& lines, const Engine& engine) {
    lines.section(Texts::tr("Name and owner"));
    lines.text(
        "name", Texts::tr("Name"), [](auto& e) -> auto& { return e.name; });
    lines.text(
        "description", Texts::tr("Maker, type, year, number"), [](auto& e) -> auto& { return e.description; },
        Kind::long_text);
    auto tags = lines.line("tags", Texts::tr("Tags"), Kind::text);
    tags.text = tags.shown = tags_text(engine.tags);
    tags.hint = Texts::tr("Words to find it by, with commas between them.");
    lines.special(tags, [](Engine& e, const FormEntry& entry) -> Status {
        e.tags = tags_from(entry.text);
        return {};
    });
    lines.text(
        "owner", Texts::tr("Owner"), [](auto& e) -> auto& { return e.owner.name; });
    lines.text(
        "contact", Texts::tr("Owner's contact"), [](auto& e) -> auto& { return e.owner.contact; });
    lines.hint(Texts::tr("Stays out of files that you hand over unless you tick it there."));
    lines.text(
        "history", Texts::tr("History"), [](auto& e) -> auto& { return e.history; }, Kind::long_text);
    lines.hint(Texts::tr("What is known of its past: overhauls, overheating, how long it stood."));
}

void add_make_up(Lines& lines, const Engine& engine, const format::Formatter& format) {
    lines.section(Texts::tr("Make-up"));
    auto cycle = lines.line("cycle", Texts::tr("Cycle"), Kind::choice);
    for (const auto option : {StrokeCycle::four, StrokeCycle::two}) {
        cycle.options << QString::fromLatin1(word(option).data());
        cycle.optionNames << format.name(option);
    }
    cycle.chosen << QString::fromLatin1(word(engine.cycle).data());
    cycle.shown = format.name(engine.cycle);
    cycle.hint = Texts::tr("A rotary engine is not supported: its chambers seal in another way.");
    lines.special(cycle, [label = cycle.label](Engine& e, const FormEntry& entry) -> Status {
        const auto chosen = entry.chosen.isEmpty()
                                ? std::nullopt
                                : from_word<StrokeCycle>(entry.chosen.front().toStdString());
        if (!chosen) return forms::choose_one(label);
        set_cycle(e, *chosen);
        return {};
    });
    lines.choice<Fuel>(
        "fuel", Texts::tr("Fuel"), [](auto& e) -> auto& { return e.fuel; });
    lines.choice<Cooling>(
        "cooling", Texts::tr("Cooling"), [](auto& e) -> auto& { return e.cooling; });
    auto arrangement = lines.line("arrangement", Texts::tr("Arrangement"), Kind::choice);
    for (const auto option : Lines::all<Arrangement>()) {
        arrangement.options << QString::fromLatin1(word(option).data());
        arrangement.optionNames << format.name(option);
    }
    arrangement.chosen << QString::fromLatin1(word(engine.arrangement).data());
    arrangement.shown = format.name(engine.arrangement);
    lines.special(arrangement, [label = arrangement.label](Engine& e, const FormEntry& entry) -> Status {
        const auto chosen = entry.chosen.isEmpty()
                                ? std::nullopt
                                : from_word<Arrangement>(entry.chosen.front().toStdString());
        if (!chosen) return forms::choose_one(label);
        set_arrangement(e, *chosen);
        return {};
    });
    if (has_banks(engine))
        lines.quantity(
            "bank_angle", Texts::tr("Angle between the banks"), degrees,
            [](auto& e) -> auto& { return e.bank_angle; });
    auto count = lines.line("count", Texts::tr("Number of cylinders"), Kind::number);
    count.text = count.shown = QString::number(engine.cylinders.size());
    count.hint = Texts::tr("1 to 16. Cylinders that stay keep their numbers.");
    lines.special(count, [label = count.label](Engine& e, const FormEntry& entry) -> Status {
        return forms::whole(entry.text, label).and_then([&](int n) { return set_count(e, n); });
    });
}

/// "153624" as it is cast on many engines: where no number has two digits every digit is one.
QString in_single_digits(const QString& order, const Engine& engine) {
    const QString digits = order.trimmed();
    const bool together =
        digits.size() > 1 && std::ranges::all_of(digits, [](QChar one) { return one.isDigit(); });
    if (!together ||
        std::ranges::any_of(engine.cylinders, [](const Cylinder& one) { return one.number > 9; }))
        return order;
    QStringList apart;
    for (const QChar digit : digits)
        apart << QString(digit);
    return apart.join(QLatin1Char('-'));
}

void add_firing(Lines& lines, const Engine& engine, const format::Formatter& format) {
    lines.section(Texts::tr("Firing and manifolds"));
    auto order = lines.line("order", Texts::tr("Firing order"), Kind::text);
    order.text = order.shown = numbers_text(engine.firing_order);
    order.hint = Texts::tr("As in 1-3-4-2. It tells which cylinder's TDC comes next.");
    lines.special(order, [](Engine& e, const FormEntry& entry) -> Status {
        return forms::numbers(in_single_digits(entry.text, e)).map([&](std::vector<int> numbers) {
            set_order(e, std::move(numbers));
        });
    });
    auto intervals = lines.line("intervals", Texts::tr("Firing intervals"), Kind::text);
    intervals.text = intervals_text(engine, format);
    intervals.shown = engine.firing_intervals.empty() ? QString() : intervals.text + QStringLiteral("°");
    intervals.hint =
        Texts::tr("Crank degrees from each cylinder to the next one, as in 270-450, or \"even\".");
    lines.special(intervals, [](Engine& e, const FormEntry& entry) { return set_intervals(e, entry.text); });
    const auto joined = [&](const char* key, const QString& label, auto member) {
        auto field = lines.line(key, label, Kind::text);
        field.text = field.shown = groups_text(member(engine));
        field.hint = Texts::tr("Cylinders on one manifold, as in 1-2, 3-4. Sound carries between them.");
        lines.special(field, [member](Engine& e, const FormEntry& entry) -> Status {
            return groups_from(entry.text).map([&](const std::vector<std::vector<int>>& groups) {
                member(e) = groups;
            });
        });
    };
    joined(
        "intakes", Texts::tr("Joined intakes"), [](auto& e) -> auto& { return e.joined_intakes; });
    joined(
        "exhausts", Texts::tr("Joined exhausts"), [](auto& e) -> auto& { return e.joined_exhausts; });
}

void add_dimensions(Lines& lines, const Engine& engine, const format::Formatter& format) {
    lines.section(Texts::tr("Dimensions"));
    const auto mm = forms::millimetres(format);
    lines.sourced(
        "bore", Texts::tr("Bore"), mm, [](auto& e) -> auto& { return e.bore; });
    lines.sourced(
        "stroke", Texts::tr("Stroke"), mm, [](auto& e) -> auto& { return e.stroke; });
    lines.sourced(
        "rod", Texts::tr("Rod length"), mm, [](auto& e) -> auto& { return e.rod; });
    lines.hint(Texts::tr("From centre to centre."));
    lines.sourced(
        "ratio", Texts::tr("Compression ratio"), plain, [](auto& e) -> auto& { return e.compression_ratio; });
    const bool two = engine.cycle == StrokeCycle::two;
    lines.hint(two ? Texts::tr("Trapped: from the closing of the exhaust port. For 7.2:1 type 7.2.")
                   : Texts::tr("For 9.2:1 type 9.2."));
    if (two)
        lines.sourced(
            "port_closing", Texts::tr("Exhaust port closes, after BDC"), degrees,
            [](auto& e) -> auto& { return e.exhaust_port_closing; });
}

void add_clearance(Lines& lines, const Engine& engine, const format::Formatter& format, const char* key,
                   const QString& label, std::optional<Sourced<ClearanceRange>> ValveGear::*side) {
    const auto list = forms::clearances(format);
    auto field = lines.quantity_line(QString::fromLatin1(key), label, list);
    field.hasOrigin = true;
    field.hint = Texts::tr("Wanted when cold, as in 0.15-0.20.");
    if (const auto& known = engine.valves.*side) {
        lines.show(field, known->value.low);
        const QString low = forms::digits(known->value.low.digits(), format);
        const QString high = forms::digits(known->value.high.digits(), format);
        const bool one = low == high;
        field.text = one ? low : low + QLatin1Char('-') + high;
        field.shown = (one ? QString() : low + QString(QChar(0x2013))) + format.typed(known->value.high);
        lines.show_origin(field, known->origin, known->note);
    }
    lines.special(field, [side, unit = list.front()](Engine& e, const FormEntry& entry) -> Status {
        auto range = clearance_from(entry, unit);
        if (!range) return tl::unexpected(range.error());
        // Asked about once: 2.5 is more often 0.25 than a wide clearance (common practice, no source).
        constexpr double wide_m = 1.0e-3;
        if (*range && is_above((*range)->value.high.si(), wide_m) && !entry.again) {
            const TypedLength& wide = (*range)->value.high;
            return fail("form.clearance_wide",
                        "{} {} is a very wide clearance: is the point right? Keep it once more if it is.",
                        wide.digits(), wide.unit().symbol());
        }
        e.valves.*side = std::move(*range);
        return {};
    });
}

void add_valves(Lines& lines, const Engine& engine, const format::Formatter& format) {
    lines.section(Texts::tr("Valves"));
    lines.number(
        "intake_valves", Texts::tr("Intake valves per cylinder"),
        [](auto& e) -> auto& { return e.valves.intake_valves; });
    lines.number(
        "exhaust_valves", Texts::tr("Exhaust valves per cylinder"),
        [](auto& e) -> auto& { return e.valves.exhaust_valves; });
    lines.choice<Adjuster>(
        "adjuster", Texts::tr("Adjuster"), [](auto& e) -> auto& { return e.valves.adjuster; });
    add_clearance(lines, engine, format, "intake_clearance", Texts::tr("Intake clearance"),
                  &ValveGear::intake_clearance);
    add_clearance(lines, engine, format, "exhaust_clearance", Texts::tr("Exhaust clearance"),
                  &ValveGear::exhaust_clearance);
    lines.choice<ValveTiming>(
        "timing", Texts::tr("Valve timing"), [](auto& e) -> auto& { return e.valves.timing; });
    lines.sourced(
        "closing", Texts::tr("Intake closes, after BDC"), degrees,
        [](auto& e) -> auto& { return e.valves.intake_closing; });
    lines.hint(Texts::tr("A cranking reading hangs on it. Leave it empty if you don't know."));
    lines.choice<TimingAt>(
        "closing_at", Texts::tr("Intake closing is quoted at"),
        [](auto& e) -> auto& { return e.valves.intake_closing_at; });
    lines.hint(Texts::tr("Quoted at a lift, the valve closes on its seat 15 to 25 degrees later."));
    lines.sourced(
        "opening", Texts::tr("Exhaust opens, before BDC"), degrees,
        [](auto& e) -> auto& { return e.valves.exhaust_opening; });
    lines.choice<TimingAt>(
        "opening_at", Texts::tr("Exhaust opening is quoted at"),
        [](auto& e) -> auto& { return e.valves.exhaust_opening_at; });
}

/// Where the adapter goes: a diesel has no spark plug.
void add_plug(Lines& lines, const Engine& engine, const format::Formatter& format) {
    const bool diesel = engine.fuel == Fuel::diesel;
    lines.section(diesel ? Texts::tr("Injector, glow plug, decompressor")
                         : Texts::tr("Plug and decompressor"));
    lines.text(
        "plug_thread", diesel ? Texts::tr("Thread of injector or glow plug") : Texts::tr("Plug thread"),
        [](auto& e) -> auto& { return e.plug_thread; });
    lines.hint(Texts::tr("As in M14x1.25."));
    lines.quantity(
        "plug_reach", diesel ? Texts::tr("Reach of injector or glow plug") : Texts::tr("Plug reach"),
        forms::millimetres(format), [](auto& e) -> auto& { return e.plug_reach; });
    lines.choice<Decompressor>(
        "decompressor", Texts::tr("Decompressor"), [](auto& e) -> auto& { return e.decompressor; });
    lines.hint(Texts::tr("With one, a low cranking reading is no proof of a leak."));
}

void add_limits(Lines& lines, const Engine& engine, const format::Formatter& format) {
    lines.section(Texts::tr("Factory limits"));
    const auto bars = forms::pressures(format);
    lines.quantity(
        "low", Texts::tr("Normal range from"), bars, [](auto& e) -> auto& { return e.limits.low; });
    lines.quantity(
        "high", Texts::tr("Normal range to"), bars, [](auto& e) -> auto& { return e.limits.high; });
    lines.quantity(
        "lowest", Texts::tr("Lowest limit"), bars, [](auto& e) -> auto& { return e.limits.lowest; });
    // A single has no other cylinder to differ from; what was typed all the same stays in sight.
    const bool several = engine.cylinders.size() > 1;
    if (several || engine.limits.difference)
        lines.quantity(
            "difference", Texts::tr("Most difference between cylinders"), bars,
            [](auto& e) -> auto& { return e.limits.difference; });
    if (several || engine.limits.least_ratio)
        lines.quantity(
            "least_ratio", Texts::tr("Lowest against highest cylinder, at least"), percent,
            [](auto& e) -> auto& { return e.limits.least_ratio; });
    lines.quantity(
        "most_leakage", Texts::tr("Most leakage"), percent,
        [](auto& e) -> auto& { return e.limits.most_leakage; });
    lines.hint(Texts::tr("On the maker's own leak-down tester."));
    lines.quantity(
        "leakage_set", Texts::tr("Set pressure of that tester"), bars,
        [](auto& e) -> auto& { return e.limits.leakage_set; });
    lines.quantity(
        "leakage_restrictor", Texts::tr("Restrictor of that tester"), forms::millimetres(format),
        [](auto& e) -> auto& { return e.limits.leakage_restrictor; });
    lines.choice<Origin>(
        "limits_origin", Texts::tr("Where the limits come from"),
        [](auto& e) -> auto& { return e.limits.origin; });
    lines.text(
        "limits_note", Texts::tr("Page or source"), [](auto& e) -> auto& { return e.limits.note; });
}

void add_crankcase(Lines& lines, const format::Formatter& format) {
    lines.section(Texts::tr("Crankcase test"));
    const auto bars = forms::pressures(format);
    lines.quantity(
        "case_set", Texts::tr("Set pressure"), bars, [](auto& e) -> auto& { return e.crankcase.set; });
    lines.quantity(
        "case_hold", Texts::tr("To be held for"), UnitList<TimeTag>{units::minute, Unit<TimeTag>()},
        [](auto& e) -> auto& { return e.crankcase.hold; });
    lines.quantity(
        "case_end", Texts::tr("End pressure, at least"), bars,
        [](auto& e) -> auto& { return e.crankcase.end_at_least; });
    lines.choice<Origin>(
        "case_origin", Texts::tr("Where these limits come from"),
        [](auto& e) -> auto& { return e.crankcase.origin; });
    lines.text(
        "case_note", Texts::tr("Page or source"), [](auto& e) -> auto& { return e.crankcase.note; });
}

}  // namespace

FormLines<Engine> engine_card_lines(const Engine& engine, const format::Formatter& format) {
    Lines lines(engine, format);
    add_identity(lines, engine);
    add_make_up(lines, engine, format);
    add_firing(lines, engine, format);
    add_dimensions(lines, engine, format);
    if (engine.cycle == StrokeCycle::four) add_valves(lines, engine, format);
    add_plug(lines, engine, format);
    add_limits(lines, engine, format);
    if (engine.cycle == StrokeCycle::two) add_crankcase(lines, format);
    lines.section(Texts::tr("Shop"));
    lines.quantity(
        "altitude", Texts::tr("Altitude"), forms::altitudes(format),
        [](auto& e) -> auto& { return e.shop_altitude; });
    lines.hint(Texts::tr("Above sea level. Factory limits are scaled to it."));
    return lines;
}

}  // namespace lapwing

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/engine_changes.h"

#include <QCoreApplication>
#include <QRegularExpression>
#include <algorithm>
#include <cmath>

#include "qml/viewmodels/form_lines.h"

namespace lapwing {
namespace {

struct Texts {
    Q_DECLARE_TR_FUNCTIONS(EngineCard)
};

constexpr int most_cylinders = 16;

int bank_count(Arrangement arrangement) {
    return arrangement == Arrangement::vee || arrangement == Arrangement::flat ? 2 : 1;
}

void spread_over_banks(Engine& engine) {
    const int banks = bank_count(engine.arrangement);
    const std::size_t half = (engine.cylinders.size() + 1) / 2;
    for (std::size_t i = 0; i < engine.cylinders.size(); ++i)
        engine.cylinders[i].bank = banks == 2 && i >= half ? 1 : 0;
    lay_out(engine);
}

int lowest_free_number(const Engine& engine) {
    int number = 1;
    while (find_cylinder(engine, number))
        ++number;
    return number;
}

int end_of_row(const Engine& engine, int row) {
    int column = 0;
    for (const auto& cylinder : engine.cylinders)
        if (cylinder.row == row) column = std::max(column, cylinder.column + 1);
    return column;
}

/// Where a new cylinder goes on the picture: at the end of the shorter row.
void place_last(const Engine& engine, Cylinder& added) {
    const bool two = bank_count(engine.arrangement) == 2;
    added.row = added.bank = two && end_of_row(engine, 1) < end_of_row(engine, 0) ? 1 : 0;
    added.column = end_of_row(engine, added.row);
}

void forget_missing(const Engine& engine, std::vector<std::vector<int>>& groups) {
    for (auto& group : groups)
        std::erase_if(group, [&](int number) { return !find_cylinder(engine, number); });
    std::erase_if(groups, [](const auto& group) { return group.size() < 2; });
}

void drop_what_no_longer_fits(Engine& engine) {
    std::vector<int> fired = engine.firing_order;
    std::ranges::sort(fired);
    if (fired != numbers_in_order(engine)) {
        engine.firing_order.clear();
        engine.firing_intervals.clear();
    }
    forget_missing(engine, engine.joined_intakes);
    forget_missing(engine, engine.joined_exhausts);
}

}  // namespace

Result<Engine> new_engine(const QString& name, int count, Arrangement arrangement) {
    Engine engine;
    engine.name = name.trimmed().toStdString();
    engine.arrangement = arrangement;
    if (auto counted = set_count(engine, count); !counted) return tl::unexpected(counted.error());
    spread_over_banks(engine);
    return engine;
}

Status set_count(Engine& engine, int count) {
    if (count < 1 || count > most_cylinders)
        return fail("form.cylinder_count", "{} cylinders are not possible here: type a number from 1 to 16.",
                    count);
    const auto wanted = static_cast<std::size_t>(count);
    if (wanted < engine.cylinders.size()) engine.cylinders.resize(wanted);
    while (engine.cylinders.size() < wanted) {
        Cylinder added;
        added.number = lowest_free_number(engine);
        place_last(engine, added);
        engine.cylinders.push_back(std::move(added));
    }
    drop_what_no_longer_fits(engine);
    return {};
}

void set_arrangement(Engine& engine, Arrangement arrangement) {
    const bool other_banks = bank_count(engine.arrangement) != bank_count(arrangement);
    engine.arrangement = arrangement;
    if (bank_count(arrangement) == 1) engine.bank_angle.reset();
    if (other_banks) spread_over_banks(engine);
}

void set_cycle(Engine& engine, StrokeCycle cycle) {
    if (engine.cycle == cycle) return;
    engine.cycle = cycle;
    engine.firing_intervals.clear();
    const int valves = cycle == StrokeCycle::four ? 1 : 0;
    engine.valves.intake_valves = engine.valves.exhaust_valves = valves;
}

void set_order(Engine& engine, std::vector<int> order) {
    if (order != engine.firing_order) engine.firing_intervals.clear();
    engine.firing_order = std::move(order);
}

Status set_intervals(Engine& engine, const QString& text) {
    const QString word = text.trimmed().toLower();
    if (word.isEmpty()) {
        engine.firing_intervals.clear();
        return {};
    }
    if (engine.firing_order.empty())
        return fail("form.order_first", "The intervals belong to the firing order: type the order first.");
    if (word == QLatin1String("even") || word == Texts::tr("even").toLower()) {
        engine.firing_intervals = even_intervals(engine);
        return {};
    }
    static const QRegularExpression between(QStringLiteral("[\\s;/°\u2013-]+"));
    std::vector<TypedAngle> intervals;
    for (const QString& part : word.split(between, Qt::SkipEmptyParts)) {
        auto angle = TypedAngle::make(part.toStdString(), units::deg);
        if (!angle)
            return fail("form.intervals",
                        "\"{}\" is no number of degrees: type \"even\", or degrees with a dash between them, "
                        "such as 270-450.",
                        part.toStdString());
        intervals.push_back(std::move(*angle));
    }
    engine.firing_intervals = std::move(intervals);
    return {};
}

Status renumber(Engine& engine, std::size_t index, int number) {
    const int before = engine.cylinders[index].number;
    if (before == number) return {};
    if (find_cylinder(engine, number))
        return fail("engine.number_twice", "Two cylinders have the number {}: give one of them another.",
                    number);
    engine.cylinders[index].number = number;
    std::ranges::replace(engine.firing_order, before, number);
    for (auto* groups : {&engine.joined_intakes, &engine.joined_exhausts})
        for (auto& group : *groups)
            std::ranges::replace(group, before, number);
    return {};
}

void set_bank(Engine& engine, std::size_t index, int bank) {
    Cylinder& cylinder = engine.cylinders[index];
    const int column = end_of_row(engine, bank);
    cylinder.bank = cylinder.row = bank;
    cylinder.column = column;
}

void swap_places(Engine& engine, std::size_t a, std::size_t b) {
    std::swap(engine.cylinders[a].row, engine.cylinders[b].row);
    std::swap(engine.cylinders[a].column, engine.cylinders[b].column);
    std::swap(engine.cylinders[a].bank, engine.cylinders[b].bank);
}

QString numbers_text(const std::vector<int>& numbers) {
    QStringList parts;
    for (const int number : numbers)
        parts << QString::number(number);
    return parts.join(QLatin1Char('-'));
}

QString intervals_text(const Engine& engine, const format::Formatter& format) {
    if (engine.firing_intervals.empty()) return {};
    QStringList parts;
    for (const auto& interval : engine.firing_intervals)
        parts << forms::digits(interval.digits(), format);
    return parts.join(QLatin1Char('-'));
}

QString groups_text(const std::vector<std::vector<int>>& groups) {
    QStringList parts;
    for (const auto& group : groups)
        parts << numbers_text(group);
    return parts.join(QStringLiteral(", "));
}

Result<std::vector<std::vector<int>>> groups_from(const QString& text) {
    std::vector<std::vector<int>> groups;
    static const QRegularExpression between(QStringLiteral("[,;]"));
    for (const QString& part : text.split(between, Qt::SkipEmptyParts)) {
        auto group = forms::numbers(part);
        if (!group) return tl::unexpected(group.error());
        groups.push_back(std::move(*group));
    }
    return groups;
}

QString tags_text(const std::vector<std::string>& tags) {
    QStringList parts;
    for (const auto& tag : tags)
        parts << QString::fromStdString(tag);
    return parts.join(QStringLiteral(", "));
}

std::vector<std::string> tags_from(const QString& text) {
    std::vector<std::string> tags;
    for (const QString& part : text.split(QLatin1Char(','), Qt::SkipEmptyParts)) {
        std::string tag = part.trimmed().toStdString();
        if (!tag.empty() && std::ranges::find(tags, tag) == tags.end()) tags.push_back(std::move(tag));
    }
    return tags;
}

Result<std::optional<Sourced<ClearanceRange>>> clearance_from(const FormEntry& entry,
                                                              Unit<LengthTag> otherwise) {
    static const QRegularExpression between(QStringLiteral("[\\s\u2013-]+"));
    if (const QString typed = entry.text.trimmed(); typed.size() > 1 && typed.front() == QLatin1Char('-'))
        return fail("form.clearance_negative",
                    "\"{}\" begins with a minus: a clearance is 0 or more. Type it without.",
                    typed.toStdString());
    const QStringList ends = entry.text.split(between, Qt::SkipEmptyParts);
    if (ends.isEmpty()) return std::nullopt;
    if (ends.size() > 2)
        return fail("form.clearance_range",
                    "\"{}\" is no range: type two figures with a dash between them, such as "
                    "0.15-0.20, or one.",
                    entry.text.toStdString());
    auto low = forms::typed<LengthTag>(ends.front(), entry.unit, otherwise);
    if (!low) return tl::unexpected(low.error());
    auto high = forms::typed<LengthTag>(ends.back(), entry.unit, otherwise);
    if (!high) return tl::unexpected(high.error());
    return Sourced<ClearanceRange>{
        {std::move(*low), std::move(*high)}, forms::origin_of(entry.origin), entry.originNote.toStdString()};
}

}  // namespace lapwing

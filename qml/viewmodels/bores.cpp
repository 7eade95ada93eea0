// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/bores.h"

#include <QtNumeric>
#include <algorithm>

#include "core/findings/released.h"

namespace lapwing {
namespace {

using namespace findings;

const Cranking* cranking_of(const CylinderFindings& cylinder, TestKind test) {
    if (test == TestKind::dry) return cylinder.dry ? &*cylinder.dry : nullptr;
    if (test == TestKind::wet) return cylinder.wet ? &cylinder.wet->reading : nullptr;
    return nullptr;
}

/// Top of the glyph: a tenth over the highest mark or reading, the same for all cylinders and both tests.
double cranking_top_pa(const Findings& findings) {
    double top = 0.0;
    for (const auto& cylinder : findings.cylinders)
        for (const auto test : {TestKind::dry, TestKind::wet})
            if (const auto* reading = cranking_of(cylinder, test))
                top = std::max(top, reading->final.figure.si);
    // One cylinder alone has nothing beside it: against itself it would always stand full. 12 bar: a usual
    // petrol engine's (common practice, no source).
    constexpr double usual_pa = 12e5;
    if (findings.cylinders.size() == 1) top = std::max(top, usual_pa / 1.1);
    for (const auto* limit : {&findings.limits.high, &findings.limits.lowest})
        if (*limit) top = std::max(top, (*limit)->figure.si);
    return top * 1.1;
}

double share(const std::optional<Derived>& mark, double top) {
    return mark && top > 0.0 ? mark->figure.si / top : qQNaN();
}

}  // namespace

QString state_key(State state) {
    switch (state) {
        case State::good:
            return QStringLiteral("good");
        case State::borderline:
            return QStringLiteral("borderline");
        case State::fault:
            return QStringLiteral("fault");
        case State::none:
            break;
    }
    return QStringLiteral("none");
}

State state_of(const CylinderFindings* cylinder, std::optional<TestKind> test) {
    if (!cylinder) return State::none;
    if (!test) return cylinder->state;
    switch (*test) {
        case TestKind::dry:
            return cylinder->dry ? cylinder->dry->state : State::none;
        case TestKind::leak_down:
            return cylinder->leak_down ? cylinder->leak_down->state : State::none;
        case TestKind::wet:  // has none
        case TestKind::crankcase:
            break;
    }
    return State::none;
}

namespace {

QVariantMap bore_of(const Findings& findings, TestKind test, int number) {
    QVariantMap map{{"measured", false}, {"value", 0.0},   {"u", 0.0},
                    {"limit", qQNaN()},  {"low", qQNaN()}, {"high", qQNaN()}};
    const auto* cylinder = findings.cylinder(number);
    map["state"] = state_key(state_of(cylinder, test));
    if (test == TestKind::leak_down) {
        if (cylinder && cylinder->leak_down) {
            const auto& leakage = cylinder->leak_down->leakage.figure;
            map["measured"] = true;
            map["value"] = std::clamp(1.0 - leakage.si, 0.0, 1.0);
            map["u"] = leakage.u95.value_or(0.0);
        }
        return map;
    }
    if (test == TestKind::crankcase) {
        const auto* held = findings.crankcase(number);
        if (!held || !(held->set.figure.si > 0.0)) return map;
        const double set = held->set.figure.si;
        map["state"] = state_key(held->state);
        map["measured"] = true;
        map["value"] = std::clamp(held->end.figure.si / set, 0.0, 1.0);
        map["u"] = held->end.figure.u95.value_or(0.0) / set;
        return map;
    }
    const double top = cranking_top_pa(findings);
    if (!held_against_no_limit(findings)) {
        map["limit"] = share(findings.limits.lowest, top);
        map["low"] = share(findings.limits.low, top);
        map["high"] = share(findings.limits.high, top);
    }
    if (const auto* reading = cylinder ? cranking_of(*cylinder, test) : nullptr; reading && top > 0.0) {
        map["measured"] = true;
        map["value"] = std::clamp(reading->final.figure.si / top, 0.0, 1.0);
        map["u"] = reading->final.figure.u95.value_or(0.0) / top;
    }
    return map;
}

}  // namespace

QVariantMap bore(const Findings& findings, TestKind test, int number) {
    QVariantMap map = bore_of(findings, test, number);
    if (map["measured"].toBool() && map["state"] == state_key(State::none)) map["state"] = measured_only;
    return map;
}

bool limits_scaled(const Findings& findings) {
    return std::string_view(findings.limits.basis.message.code).starts_with("limits.scaled");
}

TestKind telling_test(const Findings& findings) {
    const bool leak_down = std::any_of(findings.cylinders.begin(), findings.cylinders.end(),
                                       [](const auto& cylinder) { return cylinder.leak_down.has_value(); });
    return leak_down ? TestKind::leak_down : TestKind::dry;
}

QVariantMap cylinder_item(const Findings& findings, const Engine&, const Cylinder& cylinder, TestKind test,
                          const format::Formatter& format) {
    QVariantMap map = bore(findings, test, cylinder.number);
    map["number"] = cylinder.number;
    map["name"] = QString::fromStdString(cylinder.name);
    map["row"] = cylinder.row;
    map["column"] = cylinder.column;
    const auto* found = findings.cylinder(cylinder.number);
    QString figure;
    if (found && test == TestKind::leak_down && found->leak_down)
        figure = format.valueText(found->leak_down->leakage.figure);
    else if (const auto* held = test == TestKind::crankcase ? findings.crankcase(cylinder.number) : nullptr)
        figure = format.digits(held->end.figure);
    else if (const auto* reading = found ? cranking_of(*found, test) : nullptr)
        figure = format.digits(reading->final.figure);
    map["figure"] = figure;
    return map;
}

}  // namespace lapwing

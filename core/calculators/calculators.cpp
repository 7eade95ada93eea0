// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/calculators/calculators.h"

#include "core/calculators/pieces.h"

namespace lapwing::calculators {
namespace {

void add_readings(Worksheet& sheet, const Visit& visit) {
    for (const Reading& reading : visit.readings) {
        if (reading.test == TestKind::leak_down && reading.held) {
            sheet.held = reading.held;
            if (reading.set) sheet.set = reading.set;
        }
        if (reading.test == TestKind::dry && reading.final) {
            sheet.reading = reading.final;
            sheet.adapter = reading.adapter;
        }
        if (reading.test == TestKind::wet && reading.oil_volume) sheet.oil = reading.oil_volume;
    }
}

}  // namespace

TypedPressure usual_set(Unit<PressureTag> unit) {
    return unit == units::psi
               ? *TypedPressure::make("80", units::psi)
               : TypedPressure::from(units::bar.quantity(5.5), unit, unit == units::bar ? 1 : 0);
}

Worksheet empty_worksheet(const TypedPressure& set) {
    Worksheet sheet;
    sheet.engine.cylinders.emplace_back();
    sheet.engine.decompressor = Decompressor::none;
    sheet.engine.valves.intake_closing_at = TimingAt::seat;
    sheet.gauge.check_valve_at = CheckValveAt::chamber_end;
    sheet.set = set;
    sheet.other_set = usual_set();
    sheet.other_restrictor = *TypedLength::make("0.040", units::inch);
    return sheet;
}

Worksheet worksheet_of(const Dossier& dossier, const Visit& visit, const TypedPressure& set) {
    Worksheet sheet = empty_worksheet(set);
    sheet.engine = dossier.engine;
    sheet.session = visit.session;
    // Whoever asks for a sum wants it for the bare cylinder.
    sheet.engine.decompressor = Decompressor::none;
    if (const Tester* gauge = find_tester(dossier, visit.session.compression_gauge)) sheet.gauge = *gauge;
    if (const Tester* tester = find_tester(dossier, visit.session.leak_down_tester)) {
        sheet.tester = *tester;
        if (tester->set_pressure) sheet.set = tester->set_pressure;
    }
    if (!sheet.session.conditions.altitude) sheet.session.conditions.altitude = sheet.engine.shop_altitude;
    const FactoryLimits& limits = sheet.engine.limits;
    sheet.limit = limits.lowest ? limits.lowest : limits.low;
    if (limits.leakage_set) sheet.other_set = limits.leakage_set;
    if (limits.leakage_restrictor) sheet.other_restrictor = limits.leakage_restrictor;
    add_readings(sheet, visit);
    return sheet;
}

Result<Answer> work_out(Calculator calculator, const Worksheet& sheet, const findings::Reference& reference) {
    switch (calculator) {
        case Calculator::leakage:
            return leakage(sheet, reference);
        case Calculator::other_tester:
            return other_tester(sheet, reference);
        case Calculator::law:
            return law(sheet, reference);
        case Calculator::restrictor:
            return restrictor(sheet, reference);
        case Calculator::hose:
            return hose(sheet, reference);
        case Calculator::oil:
            return oil(sheet, reference);
        case Calculator::altitude:
            return altitude(sheet, reference);
        case Calculator::healthy:
            return healthy(sheet, reference);
        case Calculator::turning:
            return turning(sheet, reference);
        case Calculator::torque:
            return torque(sheet, reference);
        case Calculator::units:
            return units_of(sheet);
    }
    return needs("which sum");
}

}  // namespace lapwing::calculators

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/workflow/exits.h"
#include "core/workflow/readings.h"
#include "tests/viewmodels/shop.h"

namespace lapwing {

/// A session of a small engine with a full card, and what is measured in it.
struct MeasuredVisit {
    explicit MeasuredVisit(int cylinders = 2) {
        Engine card = shop.add_engine(QStringLiteral("Orchard"), cylinders);
        card.bore = {TypedLength::make("78.0", units::mm).value(), Origin::manual, {}};
        card.stroke = {TypedLength::make("70.0", units::mm).value(), Origin::manual, {}};
        card.compression_ratio = {TypedRatio::make("9.0", units::one).value(), Origin::manual, {}};
        card.limits.lowest = bar("8.0");
        card.valves.exhaust_clearance = {
            {TypedLength::make("0.15", units::mm).value(), TypedLength::make("0.25", units::mm).value()},
            Origin::manual,
            {}};
        shop.desk->run(workflow::save_engine(card));
        shop.settle();
        session = shop.open_session(card, "As found");
    }
    static TypedPressure bar(const char* digits) { return TypedPressure::make(digits, units::bar).value(); }

    void dry(int cylinder, const char* digits) {
        Reading reading;
        reading.session = session;
        reading.test = TestKind::dry;
        reading.cylinder = cylinder;
        reading.final = bar(digits);
        shop.desk->run(workflow::keep_reading(reading));
    }
    void leak(int cylinder, const char* set, const char* held) {
        Reading reading;
        reading.session = session;
        reading.test = TestKind::leak_down;
        reading.cylinder = cylinder;
        reading.set = bar(set);
        reading.held = bar(held);
        shop.desk->run(workflow::keep_reading(reading));
    }
    void hear(int cylinder, Exit exit, Loudness loudness) {
        ExitNote note;
        note.session = session;
        note.cylinder = cylinder;
        note.exit = exit;
        note.loudness = loudness;
        shop.desk->run(workflow::keep_exit(note));
    }
    /// The first cylinder is sound, the second leaks at the exhaust.
    void burnt_valve() {
        dry(1, "9.8");
        dry(2, "6.1");
        leak(1, "5.5", "5.2");
        leak(2, "5.5", "3.2");
        hear(2, Exit::exhaust, Loudness::strong);
        for (const Exit quiet : {Exit::intake, Exit::breather})
            hear(2, quiet, Loudness::nothing);
        shop.settle();
    }
    Visit stored() const { return shop.desk->visit(session).value(); }

    Shop shop;
    SessionId session;
};

}  // namespace lapwing

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/app/harness/stock.h"

#include <cstdio>

#include "core/store/attachment_files.h"
#include "core/workflow/clearances.h"
#include "core/workflow/engines.h"
#include "core/workflow/exits.h"
#include "core/workflow/plan.h"
#include "core/workflow/readings.h"
#include "core/workflow/remarks.h"
#include "core/workflow/sessions.h"
#include "core/workflow/testers.h"

namespace lapwing::test {
namespace {

TypedPressure bar(double value) {
    char digits[16];
    std::snprintf(digits, sizeof digits, "%.1f", value);
    return *TypedPressure::make(digits, units::bar);
}

TypedLength mm(const std::string& digits) {
    return *TypedLength::make(digits, units::mm);
}

}  // namespace

workflow::Step Stock::run(workflow::Intent intent) {
    std::optional<Result<workflow::Step>> result;
    desk_.run(std::move(intent), [&](Result<workflow::Step> step) { result = std::move(step); });
    desk_.flush();
    if (!result || !*result) throw std::runtime_error(result ? result->error().english : "no answer");
    return **result;
}

EngineId Stock::engine(const std::string& name, int cylinders) {
    Engine engine;
    engine.id = desk_.make_id<EngineId>();
    engine.name = name;
    engine.tags = {"spring", "water-cooled"};
    engine.owner.name = "Owner of " + name;
    engine.arrangement = cylinders == 1   ? Arrangement::single
                         : cylinders > 8  ? Arrangement::vee
                         : cylinders == 2 ? Arrangement::vee
                                          : Arrangement::in_line;
    const bool banks = engine.arrangement == Arrangement::vee;
    for (int number = 1; number <= cylinders; ++number) {
        Cylinder cylinder;
        cylinder.number = number;
        const int at = number - 1;
        cylinder.bank = banks ? at % 2 : 0;
        cylinder.row = banks ? at % 2 : 0;
        cylinder.column = banks ? at / 2 : at;
        if (cylinders == 2) cylinder.name = number == 1 ? "front" : "rear";
        engine.cylinders.push_back(cylinder);
        engine.firing_order.push_back(number);
    }
    engine.bore = Sourced<TypedLength>{mm("86"), Origin::manual, "page 3"};
    engine.stroke = Sourced<TypedLength>{mm("86"), Origin::manual, "page 3"};
    engine.valves.adjuster = Adjuster::screw;
    engine.valves.intake_clearance = Sourced<ClearanceRange>{{mm("0.15"), mm("0.20")}, Origin::manual, ""};
    engine.limits.low = bar(9.0);
    engine.limits.high = bar(12.0);
    engine.limits.lowest = bar(7.5);
    run(workflow::save_engine(engine));
    return engine.id;
}

SessionId Stock::session(EngineId engine, const std::string& title) {
    const auto id = desk_.make_id<SessionId>();
    run(workflow::open_session(id, engine, title));
    return id;
}

TesterId Stock::tester(TesterKind kind, const std::string& name, const std::string& scale) {
    Tester tester;
    tester.id = desk_.make_id<TesterId>();
    tester.kind = kind;
    tester.name = name;
    tester.gauge.full_scale = *TypedPressure::make(scale, units::bar);
    if (kind == TesterKind::leak_down) tester.set_pressure = bar(5.5);
    run(workflow::save_tester(tester));
    return tester.id;
}

void Stock::readings(SessionId session, int cylinders) {
    const auto add = [&](TestKind test, int cylinder) {
        Reading reading;
        reading.id = desk_.make_id<ReadingId>();
        reading.session = session;
        reading.test = test;
        reading.cylinder = cylinder;
        return reading;
    };
    for (int number = 1; number <= cylinders; ++number) {
        const bool bad = number == cylinders;
        auto dry = add(TestKind::dry, number);
        dry.final = bar(bad ? 6.1 : 10.2 - 0.1 * (number % 3));
        dry.first = bar(bad ? 2.5 : 6.4);
        dry.pulls = 6;
        run(workflow::keep_reading(dry));
        auto leak = add(TestKind::leak_down, number);
        leak.set = bar(5.5);
        leak.held = bar(bad ? 3.0 : 5.0);
        run(workflow::keep_reading(leak));
        ExitNote note;
        note.id = desk_.make_id<ExitNoteId>();
        note.session = session;
        note.cylinder = number;
        note.exit = bad ? Exit::exhaust : Exit::breather;
        note.loudness = bad ? Loudness::strong : Loudness::faint;
        note.reading = leak.id;
        run(workflow::keep_exit(note));
    }
    auto wet = add(TestKind::wet, cylinders);
    wet.final = bar(6.2);
    wet.oil_volume = *TypedVolume::make("15", units::ml);
    run(workflow::keep_reading(wet));
}

void Stock::clearance(SessionId session, int cylinder, const std::string& found) {
    Clearance clearance;
    clearance.id = desk_.make_id<ClearanceId>();
    clearance.session = session;
    clearance.cylinder = cylinder;
    clearance.found = mm(found);
    run(workflow::keep_clearance(clearance));
}

PlanLineId Stock::plan_line(SessionId session, PlanOption option, const std::string& work) {
    PlanLine line;
    line.id = desk_.make_id<PlanLineId>();
    line.session = session;
    line.option = option;
    line.cylinder = 1;
    line.work = work;
    line.parts = "Valve set, gasket set";
    line.labour = *TypedTime::make("6", *Unit<TimeTag>::find("h"));
    line.price = Money{"420", "EUR"};
    line.reason = "Air at the exhaust with the clearance in range.";
    line.if_left = "The seat burns away and the head is lost.";
    line.predicted_low = bar(9.0);
    line.predicted_high = bar(10.2);
    run(workflow::add_plan_line(line));
    return line.id;
}

AttachmentId Stock::attachment(SessionId session, AttachmentKind kind, std::string_view bytes) {
    const auto kept =
        desk_.files().keep({reinterpret_cast<const unsigned char*>(bytes.data()), bytes.size()});
    if (!kept) throw std::runtime_error(kept.error().english);
    Attachment one;
    one.id = desk_.make_id<AttachmentId>();
    one.session = session;
    one.kind = kind;
    one.sha256 = kept->sha256;
    one.bytes = kept->bytes;
    one.taken_at = desk_.clock().now();
    const bool photo = kind == AttachmentKind::photo;
    one.media_type = photo ? "image/jpeg" : "audio/wav";
    if (photo) one.photo_of = PhotoOf::plug;
    if (!photo) one.length = TypedTime::make("12.4", Unit<TimeTag>{}).value();
    run(workflow::save_attachment(one));
    return one.id;
}

}  // namespace lapwing::test

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <gtest/gtest.h>

#include <algorithm>
#include <deque>
#include <string>

#include "core/compare/history.h"
#include "core/compare/proof.h"

namespace lapwing::compare {

inline constexpr double bar = 1e5;       // NIST SP 811
inline constexpr double psi = 6894.757;  // NIST SP 811
inline constexpr double day_ms = 86'400'000.0;

/// One engine over the years: 70 x 65 mm, rod 125 mm, compression ratio 9, intake closing 65 degrees after
/// BDC at the seat, one gauge of 0 to 16 bar and one leak-down tester with two gauges of 0 to 10 bar, all EN
/// 837-1 class 1.6. Invented.
class Years {
public:
    explicit Years(int cylinders = 1) {
        Engine& engine = dossier.engine;
        engine.id = EngineId::make(clock_);
        engine.name = "Bench engine";
        for (int number = 1; number <= cylinders; ++number)
            engine.cylinders.push_back({number, "", 0, 0, number - 1});
        engine.bore = Sourced<TypedLength>{of<LengthTag>("70mm"), {}, {}};
        engine.stroke = Sourced<TypedLength>{of<LengthTag>("65mm"), {}, {}};
        engine.rod = Sourced<TypedLength>{of<LengthTag>("125mm"), {}, {}};
        engine.compression_ratio =
            Sourced<TypedRatio>{*TypedRatio::make("9", units::one), Origin::manual, {}};
        engine.valves.intake_closing = Sourced<TypedAngle>{of<AngleTag>("65deg"), {}, {}};
        engine.valves.intake_closing_at = TimingAt::seat;
        gauge = add_tester(TesterKind::compression_gauge, "16bar").id;
        Tester& tester = add_tester(TesterKind::leak_down, "10bar");
        tester.supply_gauge = tester.gauge;
        tester.restrictor = of<LengthTag>("1.016mm");
        leak_down = tester.id;
    }

    template <class Tag>
    static Typed<Tag> of(const std::string& text) {
        return parse_quantity<Tag>(text).value();
    }

    Tester& add_tester(TesterKind kind, const std::string& scale) {
        Tester tester;
        tester.id = TesterId::make(clock_);
        tester.kind = kind;
        tester.name = "Bench tester " + std::to_string(dossier.testers.size() + 1);
        tester.gauge.full_scale = of<PressureTag>(scale);
        tester.gauge.scheme = AccuracyScheme::en_837_1;
        tester.gauge.accuracy = "1.6";
        tester.hose_volume = of<VolumeTag>("12cm3");
        tester.check_valve_at = CheckValveAt::chamber_end;
        dossier.testers.push_back(tester);
        return dossier.testers.back();
    }
    Tester& tester(TesterId id) { return *std::ranges::find(dossier.testers, id, &Tester::id); }

    /// The next visit, so many days after the one before. References to earlier ones stay good.
    Visit& open(int days = 365) {
        clock_.move_by(std::chrono::milliseconds(static_cast<long long>(days * day_ms)));
        dossier.visits.reserve(32);
        dossier.visits.emplace_back();
        Session& session = dossier.visits.back().session;
        session.id = SessionId::make(clock_);
        session.engine = dossier.engine.id;
        session.opened_at = clock_.now();
        session.compression_gauge = gauge;
        session.leak_down_tester = leak_down;
        Conditions& at = session.conditions;
        at.station_pressure = of<PressureTag>("1013.25hPa");
        at.heat = EngineHeat::warm;
        at.throttle = Throttle::held_open;
        at.induction = Induction::on;
        at.cranked_by = CrankedBy::starter;
        at.cranking_speed = of<RotationTag>("250rpm");
        return dossier.visits.back();
    }
    Reading& add(Visit& visit, TestKind test, int cylinder, Tag tag) {
        clock_.move_by(std::chrono::seconds(60));
        Reading reading;
        reading.id = ReadingId::make(clock_);
        reading.session = visit.session.id;
        reading.test = test;
        reading.cylinder = cylinder;
        reading.tag = tag;
        reading.taken_at = clock_.now();
        reading.oiled = test == TestKind::wet ? Oiled::fresh : Oiled::no;
        visit.readings.push_back(reading);
        return visit.readings.back();
    }
    Reading& dry(Visit& visit, const std::string& final, int cylinder = 1, Tag tag = Tag::as_found) {
        Reading& out = add(visit, TestKind::dry, cylinder, tag);
        out.final = of<PressureTag>(final);
        return out;
    }
    Reading& wet(Visit& visit, const std::string& final, const std::string& oil, int cylinder = 1) {
        Reading& out = add(visit, TestKind::wet, cylinder, Tag::as_found);
        out.final = of<PressureTag>(final);
        if (!oil.empty()) out.oil_volume = of<VolumeTag>(oil);
        return out;
    }
    Reading& leak(Visit& visit, const std::string& set, const std::string& held, int cylinder = 1,
                  Tag tag = Tag::as_found) {
        Reading& out = add(visit, TestKind::leak_down, cylinder, tag);
        out.set = of<PressureTag>(set);
        out.held = of<PressureTag>(held);
        return out;
    }
    void hear(Visit& visit, Exit exit, Loudness loudness, int cylinder = 1, Tag tag = Tag::as_found) {
        ExitNote note;
        note.id = ExitNoteId::make(clock_);
        note.session = visit.session.id;
        note.cylinder = cylinder;
        note.exit = exit;
        note.loudness = loudness;
        note.tag = tag;
        note.at = clock_.now();
        visit.exits.push_back(note);
    }
    PlanLine& done(Visit& visit, int cylinder, int days_later = 1) {
        PlanLine line;
        line.id = PlanLineId::make(clock_);
        line.session = visit.session.id;
        line.option = PlanOption::strip;
        line.cylinder = cylinder;
        line.work = "Rings new";
        line.done_at = visit.session.opened_at;
        line.done_at->unix_ms += static_cast<std::int64_t>(days_later * day_ms);
        visit.plan.push_back(line);
        return visit.plan.back();
    }

    [[nodiscard]] Comparison compare(std::size_t before = 0, std::size_t after = 1) const {
        return lapwing::compare::compare(dossier, {&dossier.visits[before], {}}, {&dossier.visits[after], {}},
                                         reference());
    }
    static const findings::Reference& reference() {
        static const findings::Reference built_in = findings::built_in_reference().value();
        return built_in;
    }

    Dossier dossier;
    TesterId gauge, leak_down;

private:
    FixedClock clock_{Timestamp{1'700'000'000'000, 60}};
};

inline const Reason* reason(const std::vector<Reason>& reasons, std::string_view code) {
    const auto at =
        std::ranges::find_if(reasons, [&](const Reason& one) { return one.message.code == code; });
    return at == reasons.end() ? nullptr : &*at;
}

}  // namespace lapwing::compare

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <gtest/gtest.h>

#include <algorithm>
#include <string>
#include <vector>

#include "core/findings/findings.h"
#include "core/findings/pad.h"

namespace lapwing::findings {

/// An engine on the bench: readings are put down one after the other.
class Bench {
public:
    explicit Bench(int cylinders, StrokeCycle cycle = StrokeCycle::four) {
        engine().name = "Bench engine";
        engine().cycle = cycle;
        engine().valves.adjuster = Adjuster::screw;
        for (int number = 1; number <= cylinders; ++number) {
            Cylinder cylinder;
            cylinder.number = number;
            cylinder.column = number - 1;
            engine().cylinders.push_back(cylinder);
        }
        dossier.visits.resize(1);
        // Sea level, so that limits stand as they are typed.
        session().conditions.station_pressure = pressure("1013.25", "hPa");
    }

    Engine& engine() { return dossier.engine; }
    Visit& visit() { return dossier.visits.front(); }
    Session& session() { return visit().session; }

    static TypedPressure pressure(const std::string& digits, const std::string& unit) {
        return *TypedPressure::make(digits, *Unit<PressureTag>::find(unit));
    }
    static TypedLength mm(const std::string& digits) { return *TypedLength::make(digits, units::mm); }

    Reading& add(TestKind test, int cylinder) {
        Reading reading;
        reading.id = ReadingId::make(clock_);
        reading.test = test;
        reading.cylinder = cylinder;
        clock_.move_by(std::chrono::seconds(60));
        reading.taken_at = clock_.now();
        visit().readings.push_back(reading);
        return visit().readings.back();
    }
    Reading& dry(int cylinder, const std::string& digits, const std::string& unit = "psi") {
        Reading& reading = add(TestKind::dry, cylinder);
        reading.final = pressure(digits, unit);
        return reading;
    }
    Bench& dry_all(const std::vector<std::string>& digits, const std::string& unit = "psi") {
        for (std::size_t i = 0; i < digits.size(); ++i)
            dry(static_cast<int>(i) + 1, digits[i], unit);
        return *this;
    }
    Reading& wet(int cylinder, const std::string& digits, const std::string& unit = "psi") {
        Reading& reading = add(TestKind::wet, cylinder);
        reading.final = pressure(digits, unit);
        reading.oiled = Oiled::fresh;
        return reading;
    }
    Reading& leak(int cylinder, const std::string& set, const std::string& held,
                  const std::string& unit = "psi") {
        Reading& reading = add(TestKind::leak_down, cylinder);
        reading.set = pressure(set, unit);
        reading.held = pressure(held, unit);
        reading.oiled = Oiled::no;
        return reading;
    }
    void hear(int cylinder, Exit exit, Loudness loudness, std::optional<int> neighbour = {}) {
        ExitNote note;
        note.id = ExitNoteId::make(clock_);
        note.cylinder = cylinder;
        note.exit = exit;
        note.loudness = loudness;
        note.neighbour = neighbour;
        visit().exits.push_back(note);
    }
    Clearance& clearance(int cylinder, ValveSide side, const std::string& found) {
        Clearance note;
        note.id = ClearanceId::make(clock_);
        note.cylinder = cylinder;
        note.side = side;
        note.found = mm(found);
        visit().clearances.push_back(note);
        return visit().clearances.back();
    }
    void wanted_clearances() {
        engine().valves.intake_clearance = Sourced<ClearanceRange>{{mm("0.08"), mm("0.12")}, {}, {}};
        engine().valves.exhaust_clearance = Sourced<ClearanceRange>{{mm("0.13"), mm("0.17")}, {}, {}};
    }
    Tester& tester(TesterKind kind, const std::string& scale, const std::string& unit,
                   const std::string& en_class) {
        Tester tester;
        tester.id = TesterId::make(clock_);
        tester.kind = kind;
        tester.name = "Bench gauge";
        tester.gauge.full_scale = pressure(scale, unit);
        if (!en_class.empty()) {
            tester.gauge.scheme = AccuracyScheme::en_837_1;
            tester.gauge.accuracy = en_class;
        }
        dossier.testers.push_back(tester);
        (kind == TesterKind::leak_down ? session().leak_down_tester : session().compression_gauge) =
            tester.id;
        return dossier.testers.back();
    }

    [[nodiscard]] Findings find() { return findings::find(dossier, visit(), reference()); }
    [[nodiscard]] PadJudgement judge(const PadEntry& entry) {
        return judge_entry(dossier, visit(), reference(), entry);
    }

    static const Reference& reference() {
        static const Reference built_in = built_in_reference().value();
        return built_in;
    }

    Dossier dossier;

private:
    FixedClock clock_{Timestamp{1'773'480'600'000, 60}};
};

inline bool says(const std::vector<Remark>& remarks, std::string_view code) {
    return std::ranges::any_of(remarks, [&](const Remark& remark) { return remark.message.code == code; });
}

inline const RuleVerdict& verdict(const Findings& findings, std::string_view rule) {
    const auto at = std::ranges::find(findings.spread, rule, &RuleVerdict::rule);
    if (at == findings.spread.end()) throw std::runtime_error("no verdict of " + std::string(rule));
    return *at;
}

inline bool next_is(const Findings& findings, Action action, std::optional<int> cylinder) {
    return std::ranges::any_of(findings.next, [&](const NextStep& step) {
        return step.action == action && step.cylinder == cylinder;
    });
}

}  // namespace lapwing::findings

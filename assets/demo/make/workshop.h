// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "core/base/clock.h"
#include "core/model/visit.h"
#include "core/physics/cranking.h"
#include "core/physics/leakdown.h"
#include "core/uncertainty/instrument.h"
#include "core/uncertainty/monte_carlo.h"

namespace lapwing::demo {

/// One way out of a cylinder that nobody sees: its effective area with the piston at rest.
struct Way {
    Exit exit = Exit::breather;  ///< the breather is the rings' exit
    Area area;
    std::optional<int> neighbour;
};
/// By cylinder number.
using Truth = std::map<int, std::vector<Way>>;

/// The air of a day and the engine's heat.
struct Day {
    double ambient_pa = 0.0;
    double air_k = 0.0;
    double wall_k = 0.0;
};

/// What the mechanic of a story does: tests an engine whose true leaks are known on testers whose errors are
/// drawn once, by this project's own cranking and leak-down models, and writes down what the needle shows.
class Workshop {
public:
    Workshop(std::uint64_t seed, const Engine& engine);

    void set_clock(Timestamp at) { clock_.move_to(at); }
    void wait_minutes(int minutes) { clock_.move_by(std::chrono::minutes(minutes)); }
    [[nodiscard]] Timestamp now() const { return clock_.now(); }
    /// A UUID version 7 of the clock's time, counted up so that ids of one moment keep their order (RFC 9562,
    /// 6.2); the rest is drawn, the same every time.
    Uuid id();

    Tester compression_gauge(std::string name, Adapter adapter);
    Tester leak_down_tester(std::string name);

    /// A visit that opens now, on both testers.
    Visit open(const Tester& gauge, const Tester& leak_down, std::string title);

    /// Every cylinder once, then the first one again.
    void dry_test(Visit& visit, const Truth& truth, Tag tag);
    /// Every cylinder with the air on, and a walk round its exits.
    void leak_down_test(Visit& visit, const Truth& truth, Tag tag);
    void wet_test(Visit& visit, const Truth& truth, const std::vector<int>& cylinders,
                  const TypedVolume& oil);
    /// Every valve's clearance as found, drawn within its wanted range.
    void measure_clearances(Visit& visit);
    void mark_prepare(Visit& visit, std::vector<PrepareMark> exceptions);

    Note note(const Visit& visit, NoteKind kind, std::string author, std::string text);
    PlanLine plan_line(const Visit& visit, PlanOption option, int cylinder, std::string work);

private:
    struct Needle {  ///< errors of one gauge in units of its own uncertainties
        double offset = 0.0;
        double gain = 0.0;
    };
    /// What the needle shows, read to half a division.
    double read(const Gauge& gauge, const Needle& needle, double true_pa);
    Reading cranked(const Visit& visit, const std::vector<Way>& ways, const TypedVolume* oil);
    [[nodiscard]] double held_pa(const Visit& visit, double area_m2) const;
    void listen(Visit& visit, const Reading& reading, const std::vector<Way>& ways, double held_pa);
    [[nodiscard]] Day day_of(const Visit& visit) const;
    Clearance clearance(const Visit& visit, int cylinder, ValveSide side, int valve,
                        const ClearanceRange& wanted);

    const Engine& engine_;
    FixedClock clock_{Timestamp{}};
    unsigned ids_made_ = 0;
    uncertainty::Draws id_draws_;
    uncertainty::Draws draws_;
    Tester gauge_;
    Tester leak_down_;
    Needle gauge_needle_;
    Needle held_needle_;
};

}  // namespace lapwing::demo

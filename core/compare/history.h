// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <optional>
#include <vector>

#include "core/compare/compare.h"

/// Every cylinder over the visits to its engine.
namespace lapwing::compare {

/// One test at one visit, in the terms of the newest visit that has this test of this cylinder.
struct Point {
    std::size_t visit = 0;  ///< place in History::visits
    Measure measure;
    bool comparable = true;     ///< false: shown, but no part of a trend
    bool after_repair = false;  ///< a repair of this cylinder lies between this point and the one before
};

enum class Direction { undecided, steady, better, worse };

/// How a test's readings go since the last repair.
struct Trend {
    Direction direction = Direction::undecided;
    findings::Figure per_year;  ///< pressure_difference or share, with its doubt
    int points = 0;
    bool beyond_doubt = false;
    findings::Message says;
};

struct Series {
    TestKind test = TestKind::dry;
    std::vector<Point> points;   ///< oldest first, never empty
    std::optional<Trend> trend;  ///< absent below two comparable readings since the last repair
};

/// What the readings since a repair say together, and why.
struct SinceRepair {
    findings::Message message;           ///< history.coming_back and its like
    std::optional<findings::Path> path;  ///< that the signs agree on
    std::vector<findings::Message> evidence;
};

struct CylinderHistory {
    int number = 1;
    std::vector<Series> series;  ///< in the order of compared_tests, where there is any
    std::optional<SinceRepair> since_repair;

    [[nodiscard]] const Series* of(TestKind test) const;
};

struct History {
    std::vector<const Visit*> visits;  ///< oldest first; the dossier's own
    std::vector<CylinderHistory> cylinders;
    std::vector<Reason> reasons;  ///< what was converted, allowed for, or stands in the way

    [[nodiscard]] const CylinderHistory* cylinder(int number) const;
};

/// Pure. Points into the dossier, which has to outlive it. With `until`, one of the dossier's visits: as it
/// stood then, that visit and those before it.
History history_of(const Dossier& dossier, const findings::Reference& reference,
                   const Visit* until = nullptr);

/// What one visit's readings say of the repairs before it, by cylinder: a later visit changes nothing in it.
struct CylinderSince {
    int cylinder = 1;
    SinceRepair since;
};
std::vector<CylinderSince> since_repair_at(const Dossier& dossier, const Visit& visit,
                                           const findings::Reference& reference);

/// Whether that cylinder was worked on between two visits: a line of a plan that was ticked as done (a
/// whole-engine one counts for all), or readings tagged "after repair" at the later one.
bool repaired_between(const Dossier& dossier, const Visit& earlier, const Visit& later, int cylinder);

}  // namespace lapwing::compare

namespace lapwing {
LAPWING_WORDS(compare::Direction, "undecided", "steady", "better", "worse");
}  // namespace lapwing

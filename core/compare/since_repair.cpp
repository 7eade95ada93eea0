// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/compare/since_repair.h"

#include <algorithm>
#include <cmath>

#include "core/base/apart.h"
#include "core/findings/case.h"

namespace lapwing::compare {
namespace {

using findings::CylinderFindings;
using findings::Heard;
using findings::Path;
using findings::say;

struct Stretch {
    const Visit* before = nullptr;  ///< newest visit before the repair; may be null
    const Visit* repaired = nullptr;
    const Visit* now = nullptr;
};

/// The visits around the last repair of a cylinder that was measured again later.
std::optional<Stretch> last_stretch(const History& history, const CylinderHistory& cylinder) {
    std::optional<std::size_t> first, last;
    for (const Series& series : cylinder.series) {
        if (series.test == TestKind::crankcase) continue;  // says nothing of how the cylinder seals
        for (const Point& point : series.points) {
            if (point.after_repair && (!first || point.visit > *first)) first = point.visit;
            last = std::max(last.value_or(0), point.visit);
        }
    }
    if (!first || *first >= *last) return std::nullopt;
    Stretch out{nullptr, history.visits[*first], history.visits[*last]};
    for (const Series& series : cylinder.series)
        for (const Point& point : series.points)
            if (series.test != TestKind::crankcase && point.visit < *first)
                out.before = history.visits[point.visit];
    return out;
}

bool good(const Change* change) {
    return change && (change->verdict == Verdict::better || change->verdict == Verdict::better_beyond_doubt);
}
bool surely_worse(const Change* change) {
    return change && change->verdict == Verdict::worse && change->beyond_doubt;
}

/// Dry test and leak-down taken together: independent tests of one cylinder (Stouffer's sum, 1949).
bool worse_together(const Change* dry, const Change* leak, const findings::Reference& reference) {
    double sum = 0.0;
    for (const Change* change : {dry, leak}) {
        if (!change || !change->difference || change->verdict == Verdict::not_comparable) return false;
        sum += change->difference->figure.si / change->u * (change == dry ? -1.0 : 1.0);
    }
    return sum / std::sqrt(2.0) > reference.assumed("change-beyond-doubt");
}
bool trend_worse(const CylinderHistory& cylinder, TestKind test) {
    const Series* series = cylinder.of(test);
    return series && series->trend && series->trend->points > 2 &&
           series->trend->direction == Direction::worse && series->trend->beyond_doubt;
}

/// Where the signs of one visit point, with the sentences that say so.
class Signs {
public:
    Signs(const CylinderFindings& then, const CylinderFindings& now, const findings::Reference& reference)
        : reference_(reference) {
        listen(then, now);
        oil(now);
    }
    [[nodiscard]] std::optional<Path> path() const { return disagree_ ? std::nullopt : path_; }
    [[nodiscard]] const std::vector<findings::Message>& evidence() const { return evidence_; }

private:
    void point_at(Path path) {
        disagree_ = disagree_ || (path_ && *path_ != path);
        path_ = path;
    }

    /// Louder than after the repair; without a note from then, the one exit that stands out.
    void listen(const CylinderFindings& then, const CylinderFindings& now) {
        for (const Heard& heard : now.exits) {
            if (!heard.path || heard.loudness == Loudness::nothing) continue;
            const auto same = std::ranges::find_if(then.exits, [&](const Heard& other) {
                return other.exit == heard.exit && other.neighbour == heard.neighbour && other.by == heard.by;
            });
            if (same != then.exits.end()) {
                if (heard.loudness <= same->loudness) continue;
                evidence_.push_back(say("history.louder", findings::word_of(heard.exit),
                                        findings::word_of(same->loudness),
                                        findings::word_of(heard.loudness)));
                point_at(*heard.path);
            } else if (&heard == findings::loudest(now) && heard.loudness >= Loudness::clear) {
                evidence_.push_back(say("history.heard_now", findings::word_of(heard.exit),
                                        findings::word_of(heard.loudness)));
                point_at(*heard.path);
            }
        }
    }

    void oil(const CylinderFindings& now) {
        if (!now.wet || !now.wet->rise || is_below(now.wet->rise->figure.si, reference_.wet.rise)) return;
        const auto& volume = now.wet->volume_rise;
        if (volume && now.wet->rise->figure.si <= volume->high.si) return;
        evidence_.push_back(say("history.oil_lifts", now.wet->rise->figure));
        point_at(Path::rings);
    }

    const findings::Reference& reference_;
    std::optional<Path> path_;
    bool disagree_ = false;
    std::vector<findings::Message> evidence_;
};

std::optional<Path> pointed_at(const CylinderFindings& cylinder) {
    if (cylinder.points_at) return cylinder.points_at;
    const Heard* heard = findings::loudest(cylinder);
    return heard ? heard->path : std::nullopt;
}

void add_reading(SinceRepair& out, const Change* change, bool leak_down) {
    if (!change || !change->difference || change->verdict == Verdict::not_comparable) return;
    const auto& was = change->before->compared;
    const auto& is = change->after->compared;
    if (surely_worse(change))
        out.evidence.push_back(say(leak_down ? "history.leakage_worse" : "history.reading_worse", was, is));
    else if ((is.si > was.si) == leak_down)
        out.evidence.push_back(say(leak_down ? "history.leakage_fits" : "history.reading_fits", was, is));
}

}  // namespace

std::optional<SinceRepair> since_repair(const Dossier& dossier, const History& history,
                                        const CylinderHistory& cylinder,
                                        const findings::Reference& reference) {
    const auto stretch = last_stretch(history, cylinder);
    if (!stretch) return std::nullopt;
    const Comparison all = compare(dossier, {stretch->repaired, {}}, {stretch->now, {}}, reference);
    const auto changes = std::ranges::find(all.cylinders, cylinder.number, &CylinderChange::number);
    if (changes == all.cylinders.end()) return std::nullopt;
    const Change* dry = changes->of(TestKind::dry);
    const Change* leak = changes->of(TestKind::leak_down);
    if (good(dry) || good(leak)) return std::nullopt;
    const bool by_trend = trend_worse(cylinder, TestKind::dry) || trend_worse(cylinder, TestKind::leak_down);
    const bool by_one = surely_worse(dry) || surely_worse(leak);
    const bool together = worse_together(dry, leak, reference);
    if (!by_one && !together && !by_trend) return std::nullopt;

    const auto found_at = [&](const Visit& visit) {
        // With the model beside it: what the volume of oil explains is no sign.
        return *findings::find(dossier, visit, reference).cylinder(cylinder.number);
    };
    SinceRepair out;
    add_reading(out, leak, true);
    add_reading(out, dry, false);
    if (together && !by_one) out.evidence.push_back(say("history.together"));
    for (const TestKind test : {TestKind::leak_down, TestKind::dry})
        if (trend_worse(cylinder, test))
            out.evidence.push_back(say("history.trend_agrees", cylinder.of(test)->trend->points));
    const Signs signs(found_at(*stretch->repaired), found_at(*stretch->now), reference);
    out.path = signs.path();
    out.evidence.insert(out.evidence.end(), signs.evidence().begin(), signs.evidence().end());
    const auto before = stretch->before ? pointed_at(found_at(*stretch->before)) : std::nullopt;
    if (!out.path) {
        out.message = say("history.worse_since_repair", cylinder.number);
    } else if (before == out.path) {
        out.evidence.push_back(say("history.same_as_before", findings::word_of(*out.path)));
        out.message = say("history.coming_back", cylinder.number, findings::word_of(*out.path));
    } else {
        out.message = say("history.new_leak", cylinder.number, findings::word_of(*out.path));
    }
    return out;
}

}  // namespace lapwing::compare

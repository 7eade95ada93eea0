// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <algorithm>

#include "core/findings/asked.h"
#include "core/findings/case.h"
#include "core/findings/left_open.h"

/// A visit that settles nothing does not close what the one before left open; what was asked for at this one
/// is open as well.
namespace lapwing::findings {
namespace {

/// Newest first.
std::vector<const Visit*> earlier_visits(const Case& at) {
    std::vector<const Visit*> out;
    for (const Visit& visit : at.dossier.visits)
        if (visit.session.id != at.visit.session.id && visit.session.opened_at < at.visit.session.opened_at)
            out.push_back(&visit);
    std::ranges::stable_sort(out, [](const Visit* one, const Visit* other) {
        return other->session.opened_at < one->session.opened_at;
    });
    return out;
}

/// The cylinder that a note is about, itself or by the record that it hangs on.
std::optional<int> cylinder_of(const Visit& visit, const Tie& tie) {
    if (tie.cylinder) return tie.cylinder;
    std::optional<int> found;
    const auto look = [&](const auto& records) {
        for (const auto& record : records)
            if (record.id.uuid == tie.record && record.cylinder > 0) found = record.cylinder;
    };
    if (tie.to == TiedTo::reading) look(visit.readings);
    if (tie.to == TiedTo::exit_note) look(visit.exits);
    if (tie.to == TiedTo::clearance) look(visit.clearances);
    return found;
}

class Earlier {
public:
    Earlier(const Case& at, const Findings& now) : at_(at), now_(now), visits_(earlier_visits(at)) {}

    LeftOpen take() {
        for (const Note& note : at_.visit.notes)
            add_own_request(note);
        for (std::size_t i = 0; i < visits_.size(); ++i)
            add_requests(i);
        for (const CylinderFindings& cylinder : now_.cylinders)
            if (!cylinder.leak_down) add_fault(cylinder.number);
        const auto newest = std::ranges::find_if(visits_, has_readings);
        if (newest != visits_.end())
            for (const NextStep& step : found_in(**newest).next)
                if (step.cylinder) add_step(step.action, *step.cylinder);
        return std::move(out_);
    }

private:
    static bool has_readings(const Visit* visit) { return !visit->readings.empty(); }

    /// What that visit said by itself.
    [[nodiscard]] Findings found_in(const Visit& visit) const {
        // A dossier without visits: what that one's own past left open is asked here.
        const Dossier alone{at_.engine, at_.dossier.testers, {}, {}};
        return find(alone, visit, at_.reference, {{}, at_.options.models, false});
    }

    void add(Action action, std::optional<int> cylinder, Message reason) {
        const bool there = std::ranges::any_of(out_.steps, [&](const NextStep& step) {
            return step.action == action && step.cylinder == cylinder;
        });
        if (!there) out_.steps.push_back({action, cylinder, std::move(reason)});
    }

    /// What somebody asked for at this very visit: a mentor's wish comes back with the session file.
    void add_own_request(const Note& note) {
        if (note.kind != NoteKind::test_request || note.done || !(note.test || note.check)) return;
        const auto action = note.test ? action_of(*note.test) : action_of(*note.check);
        const auto cylinder = cylinder_of(at_.visit, note.tie);
        if (has_what_was_asked(note, cylinder, at_.engine, at_.visit, at_.dossier.testers)) return;
        const Word what = note.test ? word_of(*note.test) : word_of(*note.check);
        add(action, cylinder, cylinder ? say("next.request_of", *cylinder, what) : say("next.request", what));
    }

    /// The test or check that somebody asked for, unless it was done since.
    void add_requests(std::size_t visit) {
        for (const Note& note : visits_[visit]->notes) {
            if (note.kind != NoteKind::test_request || note.done || !(note.test || note.check)) continue;
            const auto action = note.test ? action_of(*note.test) : action_of(*note.check);
            const auto cylinder = cylinder_of(*visits_[visit], note.tie);
            const auto answers = [&](const Visit& later) {
                return has_what_was_asked(note, cylinder, at_.engine, later, at_.dossier.testers);
            };
            if (answers(at_.visit) ||
                std::any_of(visits_.begin(), visits_.begin() + static_cast<std::ptrdiff_t>(visit),
                            [&](const Visit* later) { return answers(*later); }))
                continue;
            const Word what = note.test ? word_of(*note.test) : word_of(*note.check);
            add(action, cylinder,
                cylinder ? say("next.earlier_request_of", *cylinder, what)
                         : say("next.earlier_request", what));
        }
    }

    /// A cylinder that leaked when air was last on it.
    void add_fault(int cylinder) {
        for (const Visit* visit : visits_) {
            if (standing(visit->readings, TestKind::leak_down, cylinder).empty()) continue;
            const Findings then = found_in(*visit);
            const CylinderFindings* one = then.cylinder(cylinder);
            if (one && one->leak_down && one->leak_down->state == State::fault) {
                out_.faults.push_back(cylinder);
                add(Action::leak_down, cylinder,
                    say("next.earlier_leak", cylinder, one->leak_down->leakage.figure));
            }
            return;
        }
    }

    /// A step that the newest earlier visit still asked for, unless this visit took it.
    void add_step(Action action, int number) {
        const CylinderFindings* cylinder = now_.cylinder(number);
        if (!cylinder) return;
        const Clearances& clearances = cylinder->clearances;
        const bool recorded = clearances.recorded_intake || clearances.recorded_exhaust;
        switch (action) {
            case Action::leak_down:
                if (!cylinder->leak_down) add(action, number, say("next.earlier_leak_down", number));
                break;
            case Action::turn_once:
                if (!cylinder->leak_down) add(action, number, say("next.earlier_turn_once", number));
                break;
            case Action::listen:
                if (cylinder->exits.empty()) add(action, number, say("next.earlier_listen", number));
                break;
            case Action::clearances:
                if (!recorded) add(action, number, say("next.earlier_clearances", number));
                break;
            case Action::adjust:
                if (!recorded) add(action, number, say("next.earlier_adjust", number));
                break;
            default:
                break;
        }
    }

    const Case& at_;
    const Findings& now_;
    std::vector<const Visit*> visits_;
    LeftOpen out_;
};

}  // namespace

LeftOpen left_open_earlier(const Case& at, const Findings& findings) {
    return Earlier(at, findings).take();
}

CylinderList faults_left_open(const Findings& findings) {
    for (const Remark& question : findings.questions)
        if (question.message.code == "question.earlier_fault")
            return std::get<CylinderList>(question.message.args.at(0));
    return {};
}

}  // namespace lapwing::findings

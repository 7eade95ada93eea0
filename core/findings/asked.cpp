// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/findings/asked.h"

#include <algorithm>

namespace lapwing::findings {
namespace {

class Answer {
public:
    Answer(const Note& request, const Engine& engine, const Visit& visit)
        : request_(request), engine_(engine), visit_(visit) {}

    [[nodiscard]] bool test(std::optional<int> cylinder) const {
        // Older visits held the engine as one.
        if (*request_.test == TestKind::crankcase && measured(0)) return true;
        return each(cylinder, [&](int number) { return measured(number); });
    }

    [[nodiscard]] bool check(std::optional<int> cylinder, const std::vector<Tester>& testers) const {
        switch (*request_.check) {
            case AskedCheck::leak_hunt:
                return each(cylinder, [&](int number) { return listened(number, {}); });
            case AskedCheck::clearances:
                return each(cylinder, [&](int number) { return clearances(number); });
            case AskedCheck::staking:
                return cylinder ? staked(*cylinder)
                                : std::ranges::any_of(engine_.cylinders, [&](const Cylinder& one) {
                                      return staked(one.number);
                                  });
            case AskedCheck::tester_check:
                return std::ranges::any_of(testers, [&](const Tester& tester) {
                    return is_about(request_, visit_.session, tester.id) &&
                           std::ranges::any_of(tester.checks,
                                               [&](const TesterCheck& one) { return request_.at < one.at; });
                });
        }
        return false;
    }

private:
    template <class Has>
    bool each(std::optional<int> cylinder, Has has) const {
        if (cylinder) return has(*cylinder);
        return std::ranges::all_of(engine_.cylinders, [&](const Cylinder& one) { return has(one.number); });
    }

    [[nodiscard]] bool counts(Timestamp at) const {
        return request_.session != visit_.session.id || at.unix_ms > request_.at.unix_ms;
    }

    [[nodiscard]] bool measured(int number) const {
        return std::ranges::any_of(visit_.readings, [&](const Reading& reading) {
            return reading.test == *request_.test && reading.cylinder == number && counts(reading.taken_at);
        });
    }

    [[nodiscard]] bool listened(int number, std::optional<Tag> tag) const {
        return std::ranges::any_of(visit_.exits, [&](const ExitNote& note) {
            return note.cylinder == number && counts(note.at) && (!tag || note.tag == *tag);
        });
    }

    [[nodiscard]] bool clearances(int number) const {
        const auto recorded = [&](ValveSide side) {
            return std::ranges::any_of(visit_.clearances, [&](const Clearance& one) {
                return one.cylinder == number && one.side == side && counts(one.at);
            });
        };
        const ValveGear& valves = engine_.valves;
        return (valves.intake_valves == 0 || recorded(ValveSide::intake)) &&
               (valves.exhaust_valves == 0 || recorded(ValveSide::exhaust));
    }

    [[nodiscard]] bool staked(int number) const {
        return listened(number, Tag::after_staking) ||
               std::ranges::any_of(visit_.readings, [&](const Reading& reading) {
                   return reading.cylinder == number && reading.tag == Tag::after_staking &&
                          counts(reading.taken_at);
               });
    }

    const Note& request_;
    const Engine& engine_;
    const Visit& visit_;
};

}  // namespace

Action action_of(TestKind test) {
    switch (test) {
        case TestKind::dry:
            return Action::dry;
        case TestKind::leak_down:
            return Action::leak_down;
        case TestKind::wet:
            return Action::wet;
        case TestKind::crankcase:
            break;
    }
    return Action::crankcase;
}

Action action_of(AskedCheck check) {
    switch (check) {
        case AskedCheck::leak_hunt:
        case AskedCheck::staking:  // done where one listens
            return Action::listen;
        case AskedCheck::clearances:
            return Action::clearances;
        case AskedCheck::tester_check:
            break;
    }
    return Action::tester_check;
}

bool is_about(const Note& request, const Session& session, TesterId tester) {
    if (request.tie.to == TiedTo::tester && request.tie.record) return *request.tie.record == tester.uuid;
    return session.compression_gauge == tester || session.leak_down_tester == tester ||
           session.crankcase_tester == tester;
}

bool has_what_was_asked(const Note& request, std::optional<int> cylinder, const Engine& engine,
                        const Visit& visit, const std::vector<Tester>& testers) {
    const Answer answer(request, engine, visit);
    if (request.test) return answer.test(cylinder);
    return request.check && answer.check(cylinder, testers);
}

}  // namespace lapwing::findings

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/findings/cautions.h"

#include <algorithm>
#include <set>

#include "core/report/pieces.h"
#include "core/report/sections.h"

namespace lapwing::report {

using findings::Action;

namespace {

/// Where the cautions of an action stand in assets/reference.
std::string_view place_of(Action action) {
    switch (action) {
        case Action::dry:
            return "dry";
        case Action::wet:
            return "wet";
        case Action::leak_down:
        case Action::turn_once:
            return "leak-down";
        case Action::listen:
            return "exits";
        case Action::plan:
            return "plan";
        case Action::crankcase:
            return "crankcase";
        case Action::clearances:
        case Action::adjust:
        case Action::tester_check:
            break;
    }
    return "session";
}

}  // namespace

Section cautions(const findings::Findings& found, const std::vector<findings::NextStep>& steps,
                 const Engine& engine, const findings::Reference& reference, bool appendix) {
    std::vector<std::string_view> places;
    const auto is_test = [](const findings::NextStep& step) { return step.action != Action::plan; };
    // Whoever does the tests has their cautions on the app's pages; an owner has no use for how to aim a plug
    // hole, but is told that there is something to know.
    if (appendix)
        for (const findings::NextStep& step : steps)
            places.push_back(place_of(step.action));
    else if (std::ranges::any_of(steps, is_test))
        places.emplace_back("report-test");
    if (found.state == findings::State::fault) places.emplace_back("report-fault");
    places.emplace_back("findings");
    places.emplace_back("plan");
    Sentences sentences;
    std::set<std::string> said;
    for (std::string_view place : places)
        for (const findings::Caution* caution : cautions_for(reference, place, engine))
            if (said.insert(caution->id).second)
                sentences.sentences.push_back({ReferenceText{caution->text}, std::nullopt, std::nullopt});
    Section section{Label::cautions, {}};
    add_block(section, sentences, !sentences.sentences.empty());
    return section;
}

}  // namespace lapwing::report

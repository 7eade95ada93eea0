// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/odds/verdict.h"

#include <algorithm>
#include <cmath>

#include "core/findings/case.h"
#include "core/physics/leakdown.h"

namespace lapwing::odds {
namespace {

using findings::Message;
using findings::say;

bool clearance_first(const CylinderOdds& cylinder) {
    return cylinder.main && std::ranges::any_of(cylinder.reasons, [&](const Message& reason) {
               return reason.code == "odds.clearance_first" && reason.args.size() == 2 &&
                      std::get<findings::Word>(reason.args[1]) == findings::word_of(*cylinder.main);
           });
}

/// Why nobody can know where it leaks: no air, or nobody listened to it; null where somebody did.
const Message* unheard(const CylinderOdds& cylinder) {
    const auto why = std::ranges::find_if(cylinder.reasons, [](const Message& reason) {
        return reason.code == "odds.not_listened" || reason.code == "odds.not_listened_since" ||
               reason.code == "odds.no_air";
    });
    return why == cylinder.reasons.end() ? nullptr : &*why;
}

/// The likeliest outcome beside the main one.
std::pair<std::optional<findings::Path>, double> runner_up(const CylinderOdds& cylinder) {
    std::pair<std::optional<findings::Path>, double> best{std::nullopt, -1.0};
    if (cylinder.main) best.second = cylinder.seals_well;
    for (const PathOdds& path : cylinder.paths)
        if (path.path != cylinder.main && path.main > best.second) best = {path.path, path.main};
    return best;
}

/// Little is lost, and yet some of it where none may: the likeliest fault of those parts, null where none is.
const PathOdds* likely_fault(const CylinderOdds& cylinder, const findings::Reference& reference) {
    const PathOdds* out = nullptr;
    for (const PathOdds& path : cylinder.paths)
        if (findings::may_not_leak(path.path) && path.fault >= reference.assumed("named-from") &&
            (!out || path.fault > out->fault))
            out = &path;
    return out;
}

/// What the odds come to, once there is nothing before a verdict.
Message likeliest_of(const CylinderOdds& cylinder, const findings::Reference& reference) {
    const int number = cylinder.number;
    const findings::Figure chance = shown_chance(cylinder.main_chance);
    if (cylinder.main_chance < reference.assumed("named-from")) {
        const auto [other, other_chance] = runner_up(cylinder);
        return say("odds.open", number, outcome_word(cylinder.main), chance, outcome_word(other),
                   shown_chance(other_chance));
    }
    if (!cylinder.main) {
        if (const PathOdds* at_fault = likely_fault(cylinder, reference))
            return say("odds.seals_but", number, outcome_word(at_fault->path), shown_chance(at_fault->fault));
        return say("odds.seals", number, chance);
    }
    const char* code = unheard(cylinder)           ? "odds.main_unheard"
                       : clearance_first(cylinder) ? "odds.main_clearance"
                                                   : "odds.main";
    return say(code, number, outcome_word(cylinder.main), chance);
}

}  // namespace

bool says(const std::vector<Message>& messages, std::string_view code) {
    return std::ranges::find(messages, code, &Message::code) != messages.end();
}

bool has_verdict(const CylinderOdds& cylinder) {
    return cylinder.measured && !cylinder.unsure;
}

findings::Figure shown_chance(double chance) {
    return findings::figure(findings::Dimension::share, shown_percent(chance) / 100.0);
}

findings::Figure shown_share(double share) {
    return findings::figure(findings::Dimension::share, std::round(100.0 * share) / 100.0);
}

findings::Word outcome_word(std::optional<findings::Path> path) {
    return path ? findings::word_of(*path) : findings::Word{"outcome:seals_well"};
}

Interval shown_interval(const Interval& share) {
    return {share.mean, std::min(share.lo, share.mean), std::max(share.hi, share.mean)};
}

double drawn_share(const Interval& share) {
    return shown_interval(share).lo;
}

bool worth_repairing(const PathOdds& path, const findings::Reference& reference) {
    return path.fault >= reference.assumed("repair-from");
}

const AfterRepair* expected_after(const CylinderOdds& cylinder, const PathOdds& path,
                                  const findings::Reference& reference) {
    if (!worth_repairing(path, reference)) return nullptr;
    using findings::Path;
    const Path repair =
        path.path == Path::coolant || path.path == Path::next_cylinder ? Path::gasket : path.path;
    const auto found = std::ranges::find(cylinder.expected_after, repair, &AfterRepair::repair);
    return found == cylinder.expected_after.end() ? nullptr : &*found;
}

std::vector<const PathOdds*> by_share(const CylinderOdds& cylinder) {
    std::vector<const PathOdds*> out;
    for (const PathOdds& path : cylinder.paths)
        out.push_back(&path);
    std::ranges::stable_sort(out, std::greater{}, [](const PathOdds* path) { return path->share.mean; });
    return out;
}

findings::Word name_of(findings::Path path) {
    return findings::Word{"leak:" + std::string(word(path))};
}

Message headline_of(const CylinderOdds& cylinder, const findings::Reference& reference) {
    const int number = cylinder.number;
    if (!cylinder.measured)
        return say(
            says(cylinder.reasons, "odds.nothing_left") ? "odds.nothing_left" : "odds.nothing_measured",
            number);
    if (says(cylinder.reasons, "odds.tdc_first")) return say("odds.tdc_first", number);
    const auto reason = [&](std::initializer_list<const char*> codes) -> const Message* {
        for (const char* code : codes)
            if (const auto said = std::ranges::find(cylinder.reasons, code, &Message::code);
                said != cylinder.reasons.end())
                return &*said;
        return nullptr;
    };
    if (const Message* first = reason({"odds.clearance_siblings", "odds.retest_adjusted"})) return *first;
    if (!cylinder.contradictions.empty()) return say("odds.no_verdict", number);
    if (const Message* little = reason({"odds.level_unknown", "odds.alike_only", "odds.low_everywhere",
                                        "odds.heard_points", "odds.heard_fault", "odds.heard_only"}))
        return *little;
    if (cylinder.unsure) return say("odds.unsure_numbers", number);
    const Message likeliest = likeliest_of(cylinder, reference);
    const Message* why = unheard(cylinder);
    return why && likeliest.code != "odds.seals" && likeliest.code != "odds.seals_but" ? *why : likeliest;
}

findings::Word likelihood_word(double chance, const findings::Reference& reference) {
    for (const auto& [least, word] :
         {std::pair{"likely-very", "likely:very"}, std::pair{"likely", "likely:likely"},
          std::pair{"likely-more", "likely:more"}})
        if (chance >= reference.assumed(least)) return findings::Word{word};
    return findings::Word{"likely:even"};
}

Message in_words(const CylinderOdds& cylinder, const findings::Reference& reference) {
    Message said = headline_of(cylinder, reference);
    if (const Message* why = unheard(cylinder); why && said == *why) said = likeliest_of(cylinder, reference);
    const int number = cylinder.number;
    if (said.code == "odds.seals_but")
        return say("odds.likely_seals_but", number, said.args[1],
                   likelihood_word(std::get<findings::Figure>(said.args[2]).si, reference));
    const findings::Word main = outcome_word(cylinder.main);
    const findings::Word how = likelihood_word(shown_chance(cylinder.main_chance).si, reference);
    if (said.code == "odds.open")
        return say("odds.likely_open", number, main, outcome_word(runner_up(cylinder).first));
    const bool of_leak =
        said.code == "odds.main" || said.code == "odds.main_clearance" || said.code == "odds.main_unheard";
    if (!of_leak && said.code != "odds.seals") return said;
    const auto [other, other_chance] = runner_up(cylinder);
    if (cylinder.main_chance < reference.assumed("likely")) {
        if (!cylinder.main && other) return say("odds.leaks_or_sound", number, outcome_word(other));
        if (said.code != "odds.main_clearance" && of_leak && !other)
            return say("odds.leaks_or_sound", number, main);
    }
    if (!of_leak) return say("odds.likely_seals", number, how);
    return say(said.code == "odds.main_clearance" ? "odds.likely_main_clearance" : "odds.likely_main", number,
               main, how);
}

std::optional<Message> turned_by(const CylinderOdds& cylinder, const std::optional<findings::Path>& points_at,
                                 const findings::Reference& reference) {
    const Message said = in_words(cylinder, reference);
    // Questions come before any answer, and a sound cylinder turns little.
    const auto answers = {"odds.likely_main", "odds.likely_main_clearance", "odds.likely_open",
                          "odds.leaks_or_sound"};
    if (std::ranges::none_of(answers, [&](std::string_view code) { return said.code == code; }))
        return std::nullopt;
    const auto named = [&](const findings::Arg& word) {
        return std::ranges::find(said.args, word) != said.args.end() ||
               (said.code == "odds.leaks_or_sound" && word == findings::Arg(outcome_word(std::nullopt)));
    };
    std::optional<Message> other;
    if (points_at && !named(outcome_word(points_at)))
        other = say("odds.turned_by_rule", outcome_word(points_at));
    for (const Message& reason : cylinder.reasons)
        if (reason.code == "odds.depends_on_assumptions" && !other && !named(reason.args.back()))
            other = {"odds.turned_by_assumptions", {reason.args.back()}};
    const Message* why = unheard(cylinder);
    if (!why) return other;
    const bool air = why->code == "odds.no_air";
    if (other) return Message{air ? "odds.turned_by_air_or" : "odds.turned_by_listening_or", other->args};
    return say(air                                ? "odds.turned_by_air"
               : why->code == "odds.not_listened" ? "odds.turned_by_listening"
                                                  : "odds.turned_by_listening_again");
}

bool said_in_words(const Message& reason) {
    for (const char* code :
         {"odds.main_unheard", "odds.open", "odds.main", "odds.main_clearance", "odds.seals", "odds.no_air",
          "odds.not_listened", "odds.not_listened_since", "odds.depends_on_assumptions"})
        if (reason.code == code) return true;
    return false;
}

std::vector<Message> said_beside(const CylinderOdds& cylinder, const findings::Reference& reference) {
    const Message headline = headline_of(cylinder, reference);
    const bool clearance_said = headline.code == "odds.main_clearance";
    std::vector<Message> out;
    if (const Message* why = unheard(cylinder); why && headline == *why)
        out.push_back(likeliest_of(cylinder, reference));
    // Nobody asks what a repair of a cylinder would bring that most likely seals well.
    const auto untold = [&](const Message& message) {
        return message.code == "odds.no_expectation" && !cylinder.main;
    };
    for (const auto* messages : {&cylinder.contradictions, &cylinder.reasons})
        for (const Message& message : *messages) {
            const bool said =
                message == headline || (clearance_said && message.code == "odds.clearance_first" &&
                                        message.args.at(1) == headline.args.at(1));
            if (!said && !untold(message)) out.push_back(message);
        }
    return out;
}

Message seals_means(const Assumptions& assumptions) {
    using findings::Dimension;
    using findings::figure;
    return say("odds.seals_means", figure(Dimension::share, assumptions.at("seals-well")),
               figure(Dimension::gauge_pressure, assumptions.at("listen-set")),
               figure(Dimension::length, physics::TesterPneumatics{}.restrictor_diameter_m));
}

std::optional<Message> beside_rules(const findings::CylinderFindings& rules, const CylinderOdds& cylinder) {
    if (!has_verdict(cylinder)) return std::nullopt;
    const auto disagree = std::ranges::any_of(rules.contradictions, [](const findings::Remark& remark) {
        return remark.message.code == "contra.rules_disagree";
    });
    if (disagree) return say("odds.thumbs_disagree", cylinder.number, outcome_word(cylinder.main));
    if (!rules.points_at || rules.points_at == cylinder.main) return std::nullopt;
    return say("odds.thumb_differs", cylinder.number, findings::word_of(*rules.points_at),
               outcome_word(cylinder.main));
}

}  // namespace lapwing::odds

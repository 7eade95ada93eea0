// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/report/owner_leaks.h"

#include <algorithm>
#include <cmath>

#include "core/findings/case.h"
#include "core/findings/findings.h"
#include "core/odds/verdict.h"
#include "core/report/pieces.h"

namespace lapwing::report {
namespace {

using findings::Message;

/// In the order of what is worth knowing first.
enum class Rank { leaks, unclear, sound };

/// What is said of one cylinder, or of several in the same words.
struct Said {
    Rank rank = Rank::unclear;
    double leak_m2 = 0.0;  ///< the largest of them
    findings::CylinderList cylinders;
    Message sentence;
    std::optional<Message> turned_by;
};

/// The sentence for several cylinders in place of the same one for each; null where there is none.
const char* for_several(std::string_view code) {
    return code == "odds.likely_seals"     ? "odds.likely_sound"
           : code == "odds.likely_main"    ? "odds.likely_main_several"
           : code == "odds.leaks_or_sound" ? "odds.leak_or_sound_several"
           : code == "odds.alike_only"     ? "odds.alike_only_several"
           : code == "odds.low_everywhere" ? "odds.low_everywhere_several"
                                           : nullptr;
}

bool same_words(const Said& one, const Said& other) {
    return one.sentence.code == other.sentence.code && for_several(one.sentence.code) &&
           std::equal(one.sentence.args.begin() + 1, one.sentence.args.end(), other.sentence.args.begin() + 1,
                      other.sentence.args.end()) &&
           one.turned_by == other.turned_by;
}

Said said_of(const odds::CylinderOdds& odds, const findings::Findings& found,
             const findings::Reference& reference) {
    Said out{Rank::unclear, odds.leak_area_m2.mean, {odds.number}, odds::in_words(odds, reference), {}};
    if (left_open(odds, found, reference)) {
        out.sentence = findings::say("cylinder.earlier_fault", odds.number);
        return out;
    }
    const auto* rules = found.cylinder(odds.number);
    out.turned_by = odds::turned_by(odds, rules ? rules->points_at : std::nullopt, reference);
    if (out.sentence.code.starts_with("odds.likely_main")) out.rank = Rank::leaks;
    if (out.sentence.code == "odds.likely_seals") out.rank = Rank::sound;
    return out;
}

/// Sound cylinders that read the same, and such that may be sound and read the same as they do, are not told
/// apart: all of them are as sure as the least sure one.
void join_the_sound(std::vector<Said>& all, const findings::Findings& found, const odds::WhereItLeaks& leaks,
                    const findings::Reference& reference) {
    const auto sound = [](const Said& said) { return said.sentence.code == "odds.likely_seals"; };
    const auto maybe = [](const Said& said) {
        const auto& args = said.sentence.args;
        const findings::Arg sealing = odds::outcome_word(std::nullopt);
        return said.sentence.code == "odds.leaks_or_sound" ||
               (said.sentence.code == "odds.likely_open" && std::ranges::find(args, sealing) != args.end());
    };
    const auto alike = [&](const Said& one, const Said& other) {
        const auto* a = found.cylinder(one.cylinders.front());
        const auto* b = found.cylinder(other.cylinders.front());
        return a && b && (reads_alike(*a, *b) || (sound(one) && reads_alike(*b, *a)));
    };
    std::vector<bool> joined(all.size());
    for (std::size_t first = 0; first < all.size(); ++first) {
        if (!sound(all[first]) || joined[first]) continue;
        std::vector<std::size_t> group{first};
        joined[first] = true;
        // Whoever reads the same as a sound one of the group belongs to it; only sound ones bring others in.
        for (std::size_t at = 0; at < group.size(); ++at)
            for (std::size_t other = 0; sound(all[group[at]]) && other < all.size(); ++other)
                if (!joined[other] && (sound(all[other]) || maybe(all[other])) &&
                    alike(all[other], all[group[at]])) {
                    joined[other] = true;
                    group.push_back(other);
                }
        double least = 1.0;
        for (const std::size_t at : group)
            least = std::min(least, leaks.cylinder(all[at].cylinders.front())->seals_well);
        const auto how = odds::likelihood_word(odds::shown_chance(least).si, reference);
        for (const std::size_t at : group) {
            const int number = all[at].cylinders.front();
            all[at] = {Rank::sound, 0.0, {number}, findings::say("odds.likely_seals", number, how), {}};
        }
    }
}

std::vector<Said> gathered(std::vector<Said> all) {
    std::vector<Said> out;
    for (Said& said : all) {
        const auto same =
            std::ranges::find_if(out, [&](const Said& other) { return same_words(said, other); });
        if (same == out.end()) {
            out.push_back(std::move(said));
            continue;
        }
        same->cylinders.push_back(said.cylinders.front());
        same->leak_m2 = std::max(same->leak_m2, said.leak_m2);
    }
    std::ranges::stable_sort(out, [](const Said& one, const Said& other) {
        if (one.rank != other.rank) return one.rank < other.rank;
        return one.rank == Rank::leaks && one.leak_m2 > other.leak_m2;
    });
    return out;
}

Sentences paragraph_of(const Said& said) {
    Sentences out{{}, true};
    if (said.cylinders.size() == 1)
        out.sentences.push_back({said.sentence, std::nullopt, said.cylinders.front()});
    else {
        Message several = said.sentence;
        several.code = for_several(several.code);
        several.args.front() = said.cylinders;
        out.sentences.push_back({std::move(several), std::nullopt, std::nullopt});
    }
    if (said.turned_by) out.sentences.push_back({*said.turned_by, std::nullopt, std::nullopt});
    return out;
}

/// What a mechanic asks, and no owner. That rings must run in stands with the reading to expect.
Sentences for_the_mechanic(const odds::WhereItLeaks& leaks, const findings::Reference& reference) {
    Sentences out{{{Label::for_the_mechanic, std::nullopt, std::nullopt}}, true};
    for (const odds::CylinderOdds& odds : leaks.cylinders)
        if (odds.measured)
            for (Message& message : odds::said_beside(odds, reference))
                if (!odds::said_in_words(message) && message.code != "odds.fresh_hone")
                    out.sentences.push_back({std::move(message), std::nullopt, std::nullopt});
    for (const Message& reason : leaks.reasons)
        if (reason.code != "odds.working_assumptions")
            out.sentences.push_back({reason, std::nullopt, std::nullopt});
    if (out.sentences.size() == 1) out.sentences.clear();
    return out;
}

bool same_within_doubt(const findings::Figure& one, const findings::Figure& other) {
    return std::abs(one.si - other.si) <= std::max(one.u95.value_or(0.0), other.u95.value_or(0.0));
}

}  // namespace

bool reads_alike(const findings::CylinderFindings& one, const findings::CylinderFindings& other) {
    if (one.state != other.state || one.dry.has_value() != other.dry.has_value() ||
        one.wet.has_value() != other.wet.has_value() ||
        one.leak_down.has_value() != other.leak_down.has_value())
        return false;
    if (one.dry && !same_within_doubt(one.dry->final.figure, other.dry->final.figure)) return false;
    if (one.wet && !same_within_doubt(one.wet->reading.final.figure, other.wet->reading.final.figure))
        return false;
    if (one.leak_down && !same_within_doubt(one.leak_down->leakage.figure, other.leak_down->leakage.figure))
        return false;
    return std::ranges::all_of(one.exits, [&](const findings::Heard& heard) {
        return heard.loudness == Loudness::nothing ||
               std::ranges::any_of(other.exits, [&](const findings::Heard& there) {
                   return there.exit == heard.exit && there.loudness >= heard.loudness;
               });
    });
}

std::vector<Block> leaks_for_owner(const findings::Findings& found, const odds::WhereItLeaks& leaks,
                                   const findings::Reference& reference) {
    std::vector<Said> all;
    Facts repairs;
    for (const odds::CylinderOdds& odds : leaks.cylinders) {
        if (!odds.measured) continue;
        all.push_back(said_of(odds, found, reference));
        if (all.back().rank == Rank::leaks) add_repairs(repairs, odds, reference, true);
    }
    std::vector<Block> out;
    if (all.empty()) return out;
    join_the_sound(all, found, leaks, reference);
    for (const Said& said : gathered(std::move(all)))
        out.emplace_back(paragraph_of(said));
    const bool expected = !repairs.facts.empty();
    if (expected) out.emplace_back(std::move(repairs));
    if (Sentences more = for_the_mechanic(leaks, reference); !more.sentences.empty())
        out.emplace_back(std::move(more));
    Sentences about{{{Label::how_likely, std::nullopt, std::nullopt}}, true};
    if (expected) about.sentences.push_back({Label::how_expected, std::nullopt, std::nullopt});
    out.emplace_back(std::move(about));
    return out;
}

}  // namespace lapwing::report

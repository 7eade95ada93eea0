// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/compare/compare.h"

#include <algorithm>
#include <nlohmann/json.hpp>
#include <sstream>

#include "core/compare/words.h"
#include "core/record/merge.h"
#include "platform/cli/changes_text.h"
#include "platform/cli/dossier_file.h"
#include "platform/cli/file_units.h"
#include "platform/cli/verbs.h"

namespace lapwing::cli {
namespace {

using Json = nlohmann::ordered_json;
using compare::Change;

/// Two visits of one dossier, by their places.
struct Chosen {
    Dossier dossier;
    std::size_t before = 0;
    std::size_t after = 0;
};

/// "1 3" of so many visits.
std::optional<std::pair<std::size_t, std::size_t>> read_pair(Arguments& arguments, std::size_t of_before,
                                                             std::size_t of_after) {
    std::istringstream words(arguments.text("--visits"));
    std::size_t before = 0;
    std::size_t after = 0;
    if (words >> before >> after && words.eof() && before >= 1 && before <= of_before && after >= 1 &&
        after <= of_after)
        return std::pair{before - 1, after - 1};
    arguments.complain("--visits",
                       fmt::format("\"{}\" must be two visits, 1 to {} and 1 to {}, 1 for the oldest.",
                                   arguments.text("--visits"), of_before, of_after));
    return std::nullopt;
}

tl::expected<Chosen, Failure> choose_of_one(Arguments& arguments) {
    auto dossier = read_dossier(arguments.operand(0));
    if (!dossier) return tl::unexpected(dossier.error());
    const std::size_t visits = dossier->visits.size();
    if (visits < 2)
        return tl::unexpected(Failure{
            Exit::refused, "The file holds fewer than two visits: name the file of the other visit too."});
    Chosen out{std::move(*dossier), visits - 2, visits - 1};
    if (arguments.has("--visits")) {
        const auto pair = read_pair(arguments, visits, visits);
        if (!pair) return tl::unexpected(*arguments.wrong());
        std::tie(out.before, out.after) = *pair;
    }
    return out;
}

tl::expected<Chosen, Failure> choose_of_two(Arguments& arguments) {
    auto one = read_dossier(arguments.operand(0));
    if (!one) return tl::unexpected(one.error());
    auto other = read_dossier(arguments.operand(1));
    if (!other) return tl::unexpected(other.error());
    if (one->visits.empty() || other->visits.empty())
        return tl::unexpected(Failure{
            Exit::refused, "One of the files holds an engine without any visit: ask for its readings."});
    std::size_t before = one->visits.size() - 1;
    std::size_t after = other->visits.size() - 1;
    if (arguments.has("--visits")) {
        const auto pair = read_pair(arguments, one->visits.size(), other->visits.size());
        if (!pair) return tl::unexpected(*arguments.wrong());
        std::tie(before, after) = *pair;
    }
    const SessionId first = one->visits[before].session.id;
    const SessionId second = other->visits[after].session.id;
    one->engine = without_owner(one->engine);
    other->engine = without_owner(other->engine);
    auto merged = merge(*one, *other);
    if (!merged) return refused(merged.error());
    const auto place = [&](const SessionId& id) {
        return static_cast<std::size_t>(
            std::ranges::find_if(merged->visits, [&](const Visit& visit) { return visit.session.id == id; }) -
            merged->visits.begin());
    };
    const std::size_t then = place(first);
    const std::size_t now = place(second);
    return Chosen{std::move(*merged), then, now};
}

Json json_of(const Change* change) {
    if (!change) return nullptr;
    const auto value = [](const std::optional<compare::Measure>& of, bool as_measured) -> Json {
        if (!of) return nullptr;
        return as_measured ? of->as_measured.si : of->compared.si;
    };
    return {{"before", value(change->before, false)},
            {"after", value(change->after, false)},
            {"difference", change->difference ? Json(change->difference->figure.si) : Json(nullptr)},
            {"u", change->difference ? Json(change->u) : Json(nullptr)},
            {"verdict", word(change->verdict)},
            {"beyond_doubt", change->beyond_doubt},
            {"before_as_measured", value(change->before, true)}};
}

void print_json(const compare::Comparison& found, const format::Formatter& format) {
    Json out;
    out["cylinders"] = Json::array();
    for (const auto& cylinder : found.cylinders)
        out["cylinders"].push_back({{"number", cylinder.number},
                                    {"dry", json_of(cylinder.of(TestKind::dry))},
                                    {"wet", json_of(cylinder.of(TestKind::wet))},
                                    {"leakdown", json_of(cylinder.of(TestKind::leak_down))},
                                    {"crankcase", json_of(cylinder.of(TestKind::crankcase))}});
    Json reasons = Json::array();
    for (const auto& reason : found.reasons) {
        Json tests = Json::array();
        for (const TestKind test : reason.tests)
            tests.push_back(word(test));
        reasons.push_back({{"code", reason.message.code},
                           {"text", format.text(reason.message).toStdString()},
                           {"treatment", word(reason.treatment)},
                           {"tests", std::move(tests)},
                           {"cylinders", reason.cylinders}});
    }
    out["comparable"] = {{"ok", found.comparable()}, {"reasons", std::move(reasons)}};
    fmt::print("{}\n", out.dump());
}

void print_text(const compare::Comparison& found, const Chosen& of, const format::Formatter& format) {
    const auto title = [&](std::size_t at) {
        const Session& session = of.dossier.visits[at].session;
        return fmt::format("{} ({})", session.title, to_rfc3339(session.opened_at).substr(0, 10));
    };
    fmt::print("{}: {} against {}\n", of.dossier.engine.name, title(of.before), title(of.after));
    if (found.reasons.empty())
        fmt::print("{}\n", format.text(findings::Message{"compare.alike", {}}).toStdString());
    for (const auto& reason : found.reasons)
        fmt::print("- {}\n", text_of(reason, of.dossier.engine, format));
    for (const auto& cylinder : found.cylinders) {
        fmt::print("\nCylinder {}\n", cylinder.number);
        bool any = false;
        for (const TestKind test : compare::compared_tests) {
            const Change* change = cylinder.of(test);
            if (!change) continue;
            any = true;
            fmt::print("  {:<10} {}\n", word(test), text_of(*change, format));
        }
        if (!any) fmt::print("  not measured\n");
    }
    fmt::print("\n± is about 95 %.\n");
}

Outcome run(Arguments& arguments) {
    auto chosen = arguments.operands() == 1 ? choose_of_one(arguments) : choose_of_two(arguments);
    if (!chosen) return tl::unexpected(chosen.error());
    if (chosen->before == chosen->after)
        return wrong_use("Both are one and the same visit: choose two with --visits, 1 for the oldest.");
    const auto reference = findings::built_in_reference();
    if (!reference) return tl::unexpected(Failure{Exit::internal, reference.error().english});
    const Visit& after = chosen->dossier.visits[chosen->after];
    const auto found = compare::compare(chosen->dossier, {&chosen->dossier.visits[chosen->before], {}},
                                        {&after, {}}, *reference);
    const format::Formatter format(units_of(after));
    if (arguments.json())
        print_json(found, format);
    else
        print_text(found, *chosen, format);
    return Exit::done;
}

}  // namespace

Verb compare_verb() {
    return {
        "compare",
        "before and after: two visits to one engine",
        {"BEFORE", "[AFTER]"},
        {{"--visits", "BEFORE AFTER",
          "which visit of each file, 1 for the oldest; default the newest of each, or the last two of one "
          "file"},
         json_option},
        "BEFORE and AFTER are session files or their session.json; with one file both visits are its own. "
        "Earlier readings are put into the later visit's terms (tester, set pressure, air pressure, engine "
        "heat, speed, pulls) as far as that can be done; the reasons say what was converted, what more doubt "
        "was allowed for, what isn't noted, and what can't be compared.\n"
        "Keys: cylinders (number, dry, wet, leakdown, crankcase, each null or before, after, difference, u, "
        "verdict, "
        "beyond_doubt, before_as_measured), comparable (ok, reasons: code, text, treatment, tests, "
        "cylinders). dry, wet and crankcase (at the end of the hold) in Pa, leakdown as a share of the set "
        "pressure; difference is after less "
        "before and u one standard uncertainty of it, in which a shared gauge's error cancels as far as it "
        "does. Verdicts: better beyond doubt (over 3 u), better (over 2 u), no real change, worse (over 2 "
        "u), not comparable, not measured.",
        run};
}

}  // namespace lapwing::cli

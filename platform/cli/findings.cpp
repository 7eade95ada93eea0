// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/findings/findings.h"

#include <nlohmann/json.hpp>

#include "platform/cli/dossier_file.h"
#include "platform/cli/file_units.h"
#include "platform/cli/verbs.h"

namespace lapwing::cli {
namespace {

using Json = nlohmann::ordered_json;

class Sentences {
public:
    explicit Sentences(format::Choice choice) : format_(choice) {}

    [[nodiscard]] std::string of(const findings::Message& message) const {
        return format_.text(message).toStdString();
    }
    [[nodiscard]] std::string name(findings::State state) const { return format_.name(state).toStdString(); }

    [[nodiscard]] Json json(const std::vector<findings::Remark>& remarks) const {
        Json out = Json::array();
        for (const auto& remark : remarks)
            out.push_back({{"code", remark.message.code}, {"text", of(remark.message)}});
        return out;
    }
    void print(const char* heading, const std::vector<findings::Remark>& remarks) const {
        if (remarks.empty()) return;
        fmt::print("  {}\n", heading);
        for (const auto& remark : remarks)
            fmt::print("    {}\n", of(remark.message));
    }

private:
    format::Formatter format_;
};

Json cylinder_json(const findings::CylinderFindings& cylinder, const Sentences& say) {
    Json out;
    out["number"] = cylinder.number;
    out["state"] = word(cylinder.state);
    out["headline"] = say.of(cylinder.headline);
    out["points_at"] = cylinder.points_at ? Json(word(*cylinder.points_at)) : Json(nullptr);
    out["rules_of_thumb"] = say.json(cylinder.rules_of_thumb);
    out["contradictions"] = say.json(cylinder.contradictions);
    out["questions"] = say.json(cylinder.questions);
    return out;
}

void print_json(const findings::Findings& found, const Dossier& dossier, std::size_t at,
                const Sentences& say) {
    const Session& session = dossier.visits[at].session;
    Json out;
    out["visit"] = {{"number", at + 1},
                    {"of", dossier.visits.size()},
                    {"title", session.title},
                    {"opened_at", to_rfc3339(session.opened_at)}};
    out["cylinders"] = Json::array();
    for (const auto& cylinder : found.cylinders)
        out["cylinders"].push_back(cylinder_json(cylinder, say));
    Json spread = Json::array();
    for (const auto& rule : found.spread)
        spread.push_back({{"rule", rule.rule}, {"holds", rule.holds}, {"text", say.of(rule.remark.message)}});
    out["engine"] = {{"state", word(found.state)},
                     {"headline", say.of(found.headline)},
                     {"spread", std::move(spread)},
                     {"contradictions", say.json(found.contradictions)},
                     {"questions", say.json(found.questions)},
                     {"weakened_by", say.json(found.weakened_by)}};
    out["next_tests"] = Json::array();
    for (const auto& step : found.next)
        out["next_tests"].push_back({{"test", word(step.action)},
                                     {"cylinder", step.cylinder ? Json(*step.cylinder) : Json(nullptr)},
                                     {"reason", say.of(step.reason)}});
    fmt::print("{}\n", out.dump());
}

void print_text(const findings::Findings& found, const Dossier& dossier, std::size_t at,
                const Sentences& say) {
    const Session& session = dossier.visits[at].session;
    fmt::print("{}, visit {} of {}: {}, {}\n{}\n", dossier.engine.name, at + 1, dossier.visits.size(),
               session.title, to_rfc3339(session.opened_at).substr(0, 10), say.of(found.headline));
    for (const auto& cylinder : found.cylinders) {
        fmt::print("\nCylinder {}: {}\n  {}\n", cylinder.number, say.name(cylinder.state),
                   say.of(cylinder.headline));
        say.print("Rules of thumb", cylinder.rules_of_thumb);
        say.print("Contradictions", cylinder.contradictions);
        say.print("Before any verdict", cylinder.questions);
        say.print("Clearances", cylinder.clearances.remarks);
    }
    fmt::print("\nEngine as a whole: {}\n", say.name(found.state));
    for (const auto& expected : found.expectation)
        fmt::print("    {}\n", say.of(expected.message));
    for (const auto& rule : found.spread)
        fmt::print("    {}\n", say.of(rule.remark.message));
    say.print("Contradictions", found.contradictions);
    say.print("Before any verdict", found.questions);
    say.print("Makes the readings worth less", found.weakened_by);
    fmt::print("\nWorth doing next\n");
    for (const auto& step : found.next)
        fmt::print("    {}\n", say.of(step.reason));
}

Outcome run(Arguments& arguments) {
    arguments.count("--seed", 0, 2'147'483'647, 0);
    const auto dossier = read_dossier(arguments.operand(0));
    if (!dossier) return tl::unexpected(dossier.error());
    const auto at = read_visit(arguments, *dossier);
    if (!at) return tl::unexpected(at.error());
    const auto reference = findings::built_in_reference();
    if (!reference) return tl::unexpected(Failure{Exit::internal, reference.error().english});

    const Visit& visit = dossier->visits[*at];
    const Sentences say(units_of(visit));
    const auto found = findings::find(*dossier, visit, *reference);
    (arguments.json() ? print_json : print_text)(found, *dossier, *at, say);
    return Exit::done;
}

}  // namespace

Verb findings_verb() {
    return {
        "findings",
        "what the readings of a session file say",
        {"FILE"},
        {visit_option,
         {"--seed", "NUMBER",
          "for sums that draw random numbers; this version has none, so it changes nothing"},
         json_option},
        "FILE is a session file or a session.json. Pressures are shown in the unit that they were typed in.\n"
        "Keys: visit, cylinders (number, state, headline, points_at, rules_of_thumb, contradictions, "
        "questions), "
        "engine (state, headline, spread, contradictions, questions, weakened_by), next_tests (test, "
        "cylinder, "
        "reason). Shares of the leak, probabilities, readings to expect after a repair and the gain of a "
        "next test "
        "are not computed by this version and have no keys.",
        run};
}

}  // namespace lapwing::cli

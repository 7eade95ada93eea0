// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/findings/findings.h"

#include <algorithm>
#include <filesystem>
#include <map>
#include <nlohmann/json.hpp>

#include "core/base/atomic_file.h"
#include "core/compare/history.h"
#include "core/odds/data_files.h"
#include "core/odds/derivations.h"
#include "core/odds/verdict.h"
#include "platform/cli/dossier_file.h"
#include "platform/cli/file_units.h"
#include "platform/cli/odds_text.h"
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
    [[nodiscard]] std::string of(const findings::Word& word) const {
        return format_.text(word).toStdString();
    }
    [[nodiscard]] std::string of(const findings::Input& input) const {
        return (format_.text(input.name) + QStringLiteral(": ") + format_.text(input.value)).toStdString();
    }
    [[nodiscard]] std::string in_words(const findings::Derivation& from) const {
        return format_.inWords(from).toStdString();
    }
    [[nodiscard]] std::string name(findings::State state) const { return format_.name(state).toStdString(); }
    [[nodiscard]] const format::Formatter& format() const { return format_; }

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

/// What findings and odds rest on.
struct Basis {
    findings::Reference reference;
    odds::Assumptions assumptions;
    std::vector<odds::DataFile> files;
};

/// What the odds say about themselves (core/odds/codes.h).
Json texts(const std::vector<findings::Message>& messages, const Sentences& say) {
    Json out = Json::array();
    for (const auto& message : messages)
        out.push_back({{"code", message.code}, {"text", say.of(message)}});
    return out;
}

bool tested(const findings::CylinderFindings& cylinder) {
    return cylinder.dry || cylinder.leak_down || cylinder.wet;
}

/// "input:part_least": what stands behind the colon.
std::string key_of(const findings::Word& word) {
    return word.code.substr(word.code.find(':') + 1);
}

/// "Where does this come from": figures in SI.
Json derivation_json(const findings::Derivation& from, const Sentences& say) {
    Json inputs = Json::array();
    for (const findings::Input& input : from.inputs) {
        const auto* figure = std::get_if<findings::Figure>(&input.value);
        const auto* name = std::get_if<findings::Word>(&input.value);
        const auto* count = std::get_if<int>(&input.value);
        inputs.push_back({{"name", key_of(input.name)},
                          {"symbol", input.symbol},
                          {"value", figure  ? Json(figure->si)
                                    : name  ? Json(key_of(*name))
                                    : count ? Json(*count)
                                            : Json(nullptr)},
                          {"text", say.of(input)}});
    }
    Json shares = Json::object();
    for (const findings::DoubtShare& doubt : from.doubts)
        shares[key_of(doubt.of)] = doubt.share;
    Json widths = Json::object();
    for (const findings::RangePart& part : from.parts)
        widths[key_of(part.of)] = part.width.si;
    return {{"formula", from.symbols},        {"formula_in_words", say.in_words(from)},
            {"inputs", std::move(inputs)},    {"doubt_share", std::move(shares)},
            {"width", std::move(widths)},     {"source", say.of(from.source)},
            {"notes", texts(from.notes, say)}};
}

Json after_json(int cylinder, const odds::AfterRepair& after, const Sentences& say) {
    const findings::Derivation from = odds::after_repair_from(cylinder, after);
    Json shares = Json::object();
    for (const findings::DoubtShare& doubt : from.doubts)
        shares[key_of(doubt.of)] = doubt.share;
    return {{"value", after.value_pa},
            {"lo", after.lo_pa},
            {"hi", after.hi_pa},
            {"comparable_at_once", after.comparable_at_once},
            {"doubt_share", std::move(shares)},
            {"derivation", derivation_json(from, say)}};
}

/// Where shares and odds come from: the same for all of a cylinder's.
Json odds_from_json(const findings::CylinderFindings& rules, const odds::WhereItLeaks& leaks,
                    const std::vector<odds::DataFile>& data, const Sentences& say) {
    Json out = derivation_json(odds::shares_from(rules, leaks.assumptions_version), say);
    out["assumptions_version"] = leaks.assumptions_version;
    out["reference_sum"] = odds::sum_of(data);
    return out;
}

Json filled_json(const Basis& basis) {
    Json out = Json::array();
    for (const auto* list : {&basis.reference.filled_in, &basis.assumptions.filled_in})
        for (const findings::FilledIn& one : *list)
            out.push_back({{"file", one.file}, {"what", one.what}});
    return out;
}

void add_odds(Json& out, const odds::CylinderOdds& of, StrokeCycle cycle, const Sentences& say,
              const findings::Reference& reference) {
    using findings::Path;
    Json share, main, fault;
    const auto put = [&](Path path, const odds::PathOdds& odds) {
        const std::string key(word(path));
        share[key] = {{"mean", odds.share.mean}, {"lo", odds.share.lo}, {"hi", odds.share.hi}};
        main[key] = odds.main;
        fault[key] = odds.fault;
    };
    // A path that this engine does not have carries nothing: its keys are there all the same.
    const std::vector<Path> always = cycle == StrokeCycle::four
                                         ? std::vector{Path::rings,  Path::intake,        Path::exhaust,
                                                       Path::gasket, Path::next_cylinder, Path::coolant}
                                         : std::vector{Path::rings, Path::gasket, Path::decompressor};
    for (const Path path : always)
        put(path, odds::PathOdds{path, {}, 0.0, 0.0});
    for (const odds::PathOdds& path : of.paths)
        put(path.path, path);
    main["seals_well"] = of.seals_well;
    out["path_share"] = std::move(share);
    out["main_path_probability"] = std::move(main);
    out["fault_probability"] = std::move(fault);
    out["depends_on_assumptions"] = of.depends_on_assumptions;
    // With the odds held back nothing is told that rests on them.
    Json others = Json::array();
    for (const odds::UnderOther& other : has_verdict(of) ? of.under_others : std::vector<odds::UnderOther>{})
        others.push_back({{"assumptions", other.id},
                          {"main_path", other.main ? Json(word(*other.main)) : Json("seals_well")},
                          {"probability", other.chance}});
    out["under_other_assumptions"] = std::move(others);
    Json after = Json::object();
    for (const odds::AfterRepair& repair : of.expected_after)
        after[std::string(word(repair.repair))] = after_json(of.number, repair, say);
    out["expected_after"] = std::move(after);
    out["unsure"] = !has_verdict(of);
    out["effective_samples"] = of.effective_samples;
    out["odds_headline"] = say.of(odds::headline_of(of, reference));
    out["reasons"] = texts(of.reasons, say);
    for (auto& contradiction : texts(of.contradictions, say))
        out["contradictions"].push_back(std::move(contradiction));
}

using Since = std::vector<compare::CylinderSince>;

const compare::SinceRepair* since_repair(const Since& since, int cylinder) {
    const auto found = std::ranges::find(since, cylinder, &compare::CylinderSince::cylinder);
    return found == since.end() ? nullptr : &found->since;
}

Json since_json(const compare::SinceRepair* since, const Sentences& say) {
    if (!since) return nullptr;
    return {{"code", since->message.code},
            {"text", say.of(since->message)},
            {"path", since->path ? Json(word(*since->path)) : Json(nullptr)},
            {"evidence", texts(since->evidence, say)}};
}

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

void print_json(const findings::Findings& found, const odds::WhereItLeaks& leaks, const Since& since,
                const Dossier& dossier, std::size_t at, const Basis& basis, const Sentences& say) {
    const std::vector<odds::DataFile>& data = basis.files;
    const Session& session = dossier.visits[at].session;
    Json out;
    out["visit"] = {{"number", at + 1},
                    {"of", dossier.visits.size()},
                    {"title", session.title},
                    {"opened_at", to_rfc3339(session.opened_at)}};
    out["cylinders"] = Json::array();
    for (const auto& cylinder : found.cylinders) {
        out["cylinders"].push_back(cylinder_json(cylinder, say));
        out["cylinders"].back()["since_repair"] = since_json(since_repair(since, cylinder.number), say);
        if (const auto* of = leaks.cylinder(cylinder.number)) {
            add_odds(out["cylinders"].back(), *of, dossier.engine.cycle, say, basis.reference);
            out["cylinders"].back()["odds_derivation"] = odds_from_json(cylinder, leaks, data, say);
        }
    }
    Json spread = Json::array();
    for (const auto* rules : {&found.spread, &found.leak_spread})
        for (const auto& rule : *rules)
            spread.push_back(
                {{"rule", rule.rule}, {"holds", rule.holds}, {"text", say.of(rule.remark.message)}});
    out["engine"] = {{"state", word(found.state)},
                     {"headline", say.of(found.headline)},
                     {"spread", std::move(spread)},
                     {"contradictions", say.json(found.contradictions)},
                     {"questions", say.json(found.questions)},
                     {"weakened_by", say.json(found.weakened_by)}};
    out["engine"]["crankcase"] = Json::array();
    for (const findings::Crankcase& held : found.crankcases)
        out["engine"]["crankcase"].push_back(
            {{"cylinder", held.cylinder > 0 ? Json(held.cylinder) : Json(nullptr)},
             {"state", word(held.state)},
             {"set", held.set.figure.si},
             {"end", held.end.figure.si},
             {"hold", held.hold ? Json(held.hold->figure.si) : Json(nullptr)},
             {"text", say.of(held.remark.message)}});
    out["engine"]["reasons"] = texts(leaks.reasons, say);
    out["engine"]["assumptions_version"] = leaks.assumptions_version;
    for (const odds::DataFile& file : data)
        out["engine"]["reference_data"][file.name] = {{"version", file.version}, {"sha256", file.sha256}};
    out["engine"]["reference_sum"] = odds::sum_of(data);
    out["engine"]["filled_in"] = filled_json(basis);
    out["engine"]["seed"] = leaks.seed;
    // Steps in the order that the work goes, then tests that would tell something as well.
    out["next_tests"] = Json::array();
    for (const auto& step : found.next) {
        const auto told = std::ranges::find_if(leaks.next_tests, [&](const odds::NextTest& test) {
            return test.test == step.action && test.cylinder == step.cylinder;
        });
        out["next_tests"].push_back(
            {{"test", word(step.action)},
             {"cylinder", step.cylinder ? Json(*step.cylinder) : Json(nullptr)},
             {"reason", say.of(step.reason)},
             {"gain_bits", told == leaks.next_tests.end() ? Json(nullptr) : Json(told->gain_bits)}});
    }
    for (const odds::NextTest& test : leaks.next_tests) {
        const bool listed = std::ranges::any_of(found.next, [&](const findings::NextStep& step) {
            return test.test == step.action && test.cylinder == step.cylinder;
        });
        if (!listed)
            out["next_tests"].push_back({{"test", word(test.test)},
                                         {"cylinder", test.cylinder},
                                         {"reason", nullptr},
                                         {"gain_bits", test.gain_bits}});
    }
    fmt::print("{}\n", out.dump());
}

void print_text(const findings::Findings& found, const odds::WhereItLeaks& leaks, const Since& since,
                const Dossier& dossier, std::size_t at, const Basis& basis, const Sentences& say) {
    const findings::Reference& reference = basis.reference;
    const Session& session = dossier.visits[at].session;
    fmt::print("{}, visit {} of {}: {}, {}\n{}\n", dossier.engine.name, at + 1, dossier.visits.size(),
               session.title, to_rfc3339(session.opened_at).substr(0, 10), say.of(found.headline));
    for (const auto& cylinder : found.cylinders) {
        fmt::print("\nCylinder {}: {}\n  {}\n", cylinder.number,
                   tested(cylinder) && cylinder.state == findings::State::none ? "no verdict"
                                                                               : say.name(cylinder.state),
                   say.of(cylinder.headline));
        if (const auto* back = since_repair(since, cylinder.number)) {
            fmt::print("  {}\n", say.of(back->message));
            for (const auto& evidence : back->evidence)
                fmt::print("    {}\n", say.of(evidence));
        }
        say.print("Rules of thumb", cylinder.rules_of_thumb);
        say.print("Contradictions", cylinder.contradictions);
        say.print("Before any verdict", cylinder.questions);
        say.print("Clearances", cylinder.clearances.remarks);
        if (const auto* of = leaks.cylinder(cylinder.number); of && of->measured)
            print_odds(cylinder, *of, say.format(), reference);
    }
    fmt::print("\nEngine as a whole: {}\n", say.name(found.state));
    for (const auto& expected : found.expectation)
        fmt::print("    {}\n", say.of(expected.message));
    for (const auto* rules : {&found.spread, &found.leak_spread})
        for (const auto& rule : *rules)
            fmt::print("    {}\n", say.of(rule.remark.message));
    for (const findings::Crankcase& held : found.crankcases)
        fmt::print("    {}\n", say.of(held.remark.message));
    say.print("Contradictions", found.contradictions);
    say.print("Before any verdict", found.questions);
    say.print("Makes the readings worth less", found.weakened_by);
    fmt::print("\nWorth doing next\n");
    for (const auto& step : found.next)
        fmt::print("    {}\n", say.of(step.reason));
    print_odds_of_engine(leaks, say.format(), reference);
    for (const auto* list : {&reference.filled_in, &basis.assumptions.filled_in})
        for (const findings::FilledIn& one : *list)
            fmt::print("    {}: \"{}\" is missing there and was taken from this program.\n", one.file,
                       one.what);
}

tl::expected<std::string, Failure> text_of(const std::filesystem::path& name, const char* what) {
    constexpr std::size_t longest = std::size_t{16} << 20U;
    auto text = read_file(name, longest);
    if (!text)
        return tl::unexpected(
            Failure{Exit::refused, fmt::format("{} can't be read. Give the {}.", name.string(), what)});
    return std::move(*text);
}

/// This program's own, or that of files: an old report is worked out again with what it was made under.
tl::expected<Basis, Failure> read_basis(Arguments& arguments) {
    findings::ReferenceTexts texts = findings::built_in_texts();
    std::map<std::string, std::string> given;  // what the texts point into
    if (arguments.has("--reference")) {
        const std::filesystem::path folder = arguments.text("--reference");
        for (const auto& [name, text] :
             {std::pair("limits.json", &texts.limits), std::pair("wet.json", &texts.wet),
              std::pair("exits.json", &texts.exits), std::pair("prepare.json", &texts.prepare),
              std::pair("cautions.json", &texts.cautions),
              std::pair("assumptions.json", &texts.assumptions)}) {
            auto read = text_of(folder / name, "folder of reference data");
            if (!read) return tl::unexpected(read.error());
            *text = given[name] = std::move(*read);
        }
    }
    std::string odds(odds::built_in_text());
    if (arguments.has("--assumptions")) {
        auto read = text_of(arguments.text("--assumptions"), "file of working assumptions");
        if (!read) return tl::unexpected(read.error());
        odds = std::move(*read);
    }
    // A file of an earlier version lacks what this program has learned to ask since.
    const findings::ReferenceTexts own = findings::built_in_texts();
    auto reference = findings::read_reference(texts, &own);
    if (!reference) return refused(reference.error());
    auto assumptions = odds::read_assumptions(odds, odds::built_in_text());
    if (!assumptions) return refused(assumptions.error());
    return Basis{std::move(*reference), std::move(*assumptions), odds::data_files(texts, odds)};
}

Outcome run(Arguments& arguments) {
    const int seed = arguments.count("--seed", 0, 2'147'483'647, 0);
    const auto dossier = read_dossier(arguments.operand(0));
    if (!dossier) return tl::unexpected(dossier.error());
    const auto at = read_visit(arguments, *dossier);
    if (!at) return tl::unexpected(at.error());
    const auto basis = read_basis(arguments);
    if (!basis) return tl::unexpected(basis.error());
    const auto& reference = basis->reference;

    const Visit& visit = dossier->visits[*at];
    const Sentences say(units_of(visit));
    auto found = findings::find(*dossier, visit, reference);
    odds::OddsOptions options;
    options.assumptions = &basis->assumptions;
    options.seed = static_cast<std::uint64_t>(seed);
    const auto leaks = odds::where_it_leaks(*dossier, visit, reference, options);
    if (!leaks) return refused(leaks.error());
    found.next = odds::steps_by_worth(found, *leaks, reference);
    const Since since = compare::since_repair_at(*dossier, visit, reference);
    if (arguments.json())
        print_json(found, *leaks, since, *dossier, *at, *basis, say);
    else
        print_text(found, *leaks, since, *dossier, *at, *basis, say);
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
          "of the random numbers behind the odds; the same seed gives the same odds; default 0"},
         {"--assumptions", "FILE",
          "working assumptions in the form of assets/reference/odds.json, to work out an old report again; "
          "what an older file lacks is taken from this program and named; default this program's own"},
         {"--reference", "FOLDER",
          "the other files of assets/reference, for the same; default this program's own"},
         json_option},
        "FILE is a session file or a session.json. Pressures are shown in the unit that they were typed in.\n"
        "Keys: visit, cylinders (number, state, headline, points_at, since_repair, rules_of_thumb, "
        "contradictions, questions, path_share {path: {mean, lo, hi}}, main_path_probability {path, "
        "seals_well}, "
        "fault_probability, depends_on_assumptions, under_other_assumptions, expected_after {repair: {value, "
        "lo, hi, comparable_at_once, doubt_share {rest_of_engine, sound_part, day, gauge_and_test}, "
        "derivation "
        "{formula, formula_in_words, inputs: name, symbol, value, text; source, notes}}}, unsure (true: the "
        "odds are held back, odds_headline says why; shares and probabilities are then no verdict), "
        "effective_samples, odds_headline, reasons, odds_derivation {as derivation; assumptions_version, "
        "reference_sum}: where shares and odds come from), engine (state, headline, spread, "
        "contradictions, "
        "questions, weakened_by, crankcase (cylinder: null where it was held as one; state, set, end, hold, "
        "text), reasons, assumptions_version, reference_data {file: {version, sha256}}, "
        "reference_sum, filled_in (file, what: missing in the files given and taken from this program), "
        "seed), next_tests (test, cylinder, reason, "
        "gain_bits). Odds are worked out under working assumptions that were not yet counted on real "
        "engines.",
        run};
}

}  // namespace lapwing::cli

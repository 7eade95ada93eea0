// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/compare/history.h"

#include <nlohmann/json.hpp>

#include "core/compare/words.h"
#include "platform/cli/changes_text.h"
#include "platform/cli/dossier_file.h"
#include "platform/cli/file_units.h"
#include "platform/cli/verbs.h"

namespace lapwing::cli {
namespace {

using Json = nlohmann::ordered_json;
using compare::History;

std::string day_of(const Session& session) {
    return to_rfc3339(session.opened_at).substr(0, 10);
}

Json json_of(const findings::Message& message, const format::Formatter& format) {
    return {{"code", message.code}, {"text", format.text(message).toStdString()}};
}

Json json_of(const compare::Series* series, const format::Formatter& format) {
    if (!series) return nullptr;
    Json points = Json::array();
    for (const compare::Point& point : series->points)
        points.push_back({{"visit", point.visit + 1},
                          {"value", point.measure.compared.si},
                          {"u", point.measure.compared.u95.value_or(0.0) / 2.0},
                          {"as_measured", point.measure.as_measured.si},
                          {"comparable", point.comparable},
                          {"after_repair", point.after_repair}});
    Json trend = nullptr;
    if (series->trend)
        trend = {
            {"direction", word(series->trend->direction)},
            {"per_year", series->trend->per_year.si},
            {"u", series->trend->per_year.u95 ? Json(*series->trend->per_year.u95 / 2.0) : Json(nullptr)},
            {"points", series->trend->points},
            {"text", format.text(series->trend->says).toStdString()}};
    return {{"points", std::move(points)}, {"trend", std::move(trend)}};
}

void print_json(const History& history, const format::Formatter& format) {
    Json out;
    out["visits"] = Json::array();
    for (const Visit* visit : history.visits)
        out["visits"].push_back(
            {{"title", visit->session.title},
             {"opened_at", to_rfc3339(visit->session.opened_at)},
             {"usage", visit->session.usage ? Json(visit->session.usage->text()) : Json(nullptr)}});
    out["cylinders"] = Json::array();
    for (const auto& cylinder : history.cylinders) {
        Json since = nullptr;
        if (cylinder.since_repair) {
            since = json_of(cylinder.since_repair->message, format);
            since["path"] =
                cylinder.since_repair->path ? Json(word(*cylinder.since_repair->path)) : Json(nullptr);
            since["evidence"] = Json::array();
            for (const auto& evidence : cylinder.since_repair->evidence)
                since["evidence"].push_back(json_of(evidence, format));
        }
        out["cylinders"].push_back({{"number", cylinder.number},
                                    {"dry", json_of(cylinder.of(TestKind::dry), format)},
                                    {"wet", json_of(cylinder.of(TestKind::wet), format)},
                                    {"leakdown", json_of(cylinder.of(TestKind::leak_down), format)},
                                    {"crankcase", json_of(cylinder.of(TestKind::crankcase), format)},
                                    {"since_repair", std::move(since)}});
    }
    out["reasons"] = Json::array();
    for (const auto& reason : history.reasons) {
        out["reasons"].push_back(json_of(reason.message, format));
        out["reasons"].back()["treatment"] = word(reason.treatment);
        out["reasons"].back()["cylinders"] = reason.cylinders;
    }
    fmt::print("{}\n", out.dump());
}

void print_text(const History& history, const Engine& engine, const format::Formatter& format) {
    fmt::print("{}: {} visits\n", engine.name, history.visits.size());
    for (const auto& reason : history.reasons)
        fmt::print("- {}\n", text_of(reason, engine, format));
    for (const auto& cylinder : history.cylinders) {
        fmt::print("\nCylinder {}\n", cylinder.number);
        if (cylinder.since_repair) {
            fmt::print("  {}\n", format.text(cylinder.since_repair->message).toStdString());
            for (const auto& evidence : cylinder.since_repair->evidence)
                fmt::print("    {}\n", format.text(evidence).toStdString());
        }
        for (const auto& series : cylinder.series) {
            fmt::print("  {}\n", format.heading(series.test).toStdString());
            for (const compare::Point& point : series.points) {
                const Session& session = history.visits[point.visit]->session;
                fmt::print(
                    "    {}  {:<9}  {}{}{}\n", day_of(session), session.usage ? session.usage->text() : "",
                    format.text(point.measure.compared).toStdString(),
                    point.after_repair ? "  after a repair" : "", point.comparable ? "" : "  not comparable");
            }
            if (series.trend) fmt::print("    {}\n", format.text(series.trend->says).toStdString());
        }
    }
}

Outcome run(Arguments& arguments) {
    const auto dossier = read_dossier(arguments.operand(0));
    if (!dossier) return tl::unexpected(dossier.error());
    const auto reference = findings::built_in_reference();
    if (!reference) return tl::unexpected(Failure{Exit::internal, reference.error().english});
    if (dossier->visits.empty())
        return tl::unexpected(
            Failure{Exit::refused, "The file holds an engine without any visit: ask for its readings."});
    const History history = compare::history_of(*dossier, *reference);
    const format::Formatter format(units_of(*history.visits.back()));
    if (arguments.json())
        print_json(history, format);
    else
        print_text(history, dossier->engine, format);
    return Exit::done;
}

}  // namespace

Verb history_verb() {
    return {
        "history",
        "every cylinder over the visits of a session file",
        {"FILE"},
        {json_option},
        "Readings are shown as the newest visit's tester would have shown them under its circumstances. A "
        "trend counts from the last repair on; two readings make none unless they differ beyond doubt. Their "
        "± is larger than in findings: it holds "
        "what differs from one day to the next.\n"
        "Keys: visits (title, opened_at, usage), cylinders (number, dry, wet, leakdown, crankcase, each null "
        "or points "
        "(visit, value, u, as_measured, comparable, after_repair) and trend (direction, per_year, u, points, "
        "text); since_repair null or code, text, path, evidence), reasons (code, text, treatment, "
        "cylinders). dry, wet and crankcase (at the end of the hold) in Pa, leakdown as a share of the set "
        "pressure; u is one standard "
        "uncertainty.",
        run};
}

}  // namespace lapwing::cli

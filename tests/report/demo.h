// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QTemporaryDir>
#include <map>
#include <stdexcept>
#include <string>
#include <tuple>

#include "core/exchange/session_file.h"
#include "core/odds/where_it_leaks.h"
#include "core/report/make_report.h"

/// Every visit of the demo, as the app hands it over: with its odds.
namespace lapwing::print::demo {

struct VisitOf {
    const char* file;
    std::size_t visit;
};

inline constexpr VisitOf visits[] = {
    {"orchard-v-twin", 0}, {"orchard-v-twin", 1}, {"orchard-v-twin", 2}, {"harbour-six", 0}};

inline std::string name_of(const VisitOf& of) {
    return (of.file[0] == 'o' ? "Orchard" : "Harbour") + std::to_string(of.visit + 1);
}

inline report::Report made_report_of(const VisitOf& of, bool appendix) {
    QTemporaryDir scratch;
    const auto incoming = exchange::read_session_file(std::string(LAPWING_DEMO) + '/' + of.file + ".lapwing",
                                                      scratch.path().toStdString());
    if (!incoming) throw std::runtime_error(incoming.error().english);
    const Dossier& dossier = incoming->dossier;
    const Visit& visit = dossier.visits.at(of.visit);
    const auto reference = findings::built_in_reference();
    if (!reference) throw std::runtime_error(reference.error().english);
    report::Options options;
    options.made_at = visit.session.opened_at;
    options.appendix = appendix;
    const auto leaks = odds::where_it_leaks(dossier, visit, *reference);
    if (!leaks) throw std::runtime_error(leaks.error().english);
    options.leaks = &*leaks;
    return report::make_report(dossier, visit, findings::find(dossier, visit, *reference), *reference,
                               options);
}

/// The odds take their time: each report is made once.
inline const report::Report& report_of(const VisitOf& of, bool appendix) {
    static std::map<std::tuple<std::string, std::size_t, bool>, report::Report> made;
    const std::tuple key{std::string(of.file), of.visit, appendix};
    auto at = made.find(key);
    if (at == made.end()) at = made.emplace(key, made_report_of(of, appendix)).first;
    return at->second;
}

}  // namespace lapwing::print::demo

// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <nlohmann/json.hpp>

#include "core/exchange/session_file.h"
#include "platform/cli/dossier_file.h"
#include "platform/cli/verbs.h"

namespace lapwing::cli {
namespace {

Outcome run(Arguments& arguments) {
    const std::string& file = arguments.operand(0);
    const auto incoming = exchange::read_session_file(file, scratch_folder());
    std::vector<Error> problems;
    if (!incoming) {
        problems = exchange::check_file(file, scratch_folder());
        if (problems.empty()) problems.push_back(incoming.error());
        if (exchange::is_structural(problems.front())) return refused(problems.front());
    }
    const char* signature = !incoming ? "not looked at" : !incoming->signature ? "none" : "not verified";
    if (arguments.json()) {
        nlohmann::ordered_json out;
        out["ok"] = problems.empty();
        out["problems"] = nlohmann::ordered_json::array();
        for (const Error& problem : problems)
            out["problems"].push_back(problem.english);
        out["signature"] = {{"state", signature}, {"fingerprint", nullptr}};
        fmt::print("{}\n", out.dump());
    } else if (problems.empty()) {
        const Dossier& dossier = incoming->dossier;
        fmt::print("In order: {}, {} {}. Signature: {}.\n", dossier.engine.name, dossier.visits.size(),
                   dossier.visits.size() == 1 ? "visit" : "visits", signature);
    } else {
        for (const Error& problem : problems)
            fmt::print("{}\n", problem.english);
    }
    return problems.empty() ? Exit::done : Exit::no;
}

}  // namespace

Verb check_verb() {
    return {
        "check",
        "verifies a session file: bag, checksums, contents",
        {"FILE"},
        {json_option},
        "Ends with 0 when the file is in order, 1 when it is a session file with faults, 3 when it is none "
        "or can't "
        "be trusted at all. Keys: ok, problems, signature with state (none, not verified, not looked at) and "
        "fingerprint. Signatures are told of and not verified by this version: fingerprint is null.",
        run};
}

}  // namespace lapwing::cli

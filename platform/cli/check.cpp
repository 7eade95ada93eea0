// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <nlohmann/json.hpp>

#include "core/exchange/session_file.h"
#include "platform/cli/dossier_file.h"
#include "platform/cli/verbs.h"

namespace lapwing::cli {
namespace {

/// The states are stable words for scripts; the sentence is for people.
struct Said {
    const char* state;
    const char* sentence;
};
Said said_of(exchange::SignatureState state) {
    switch (state) {
        case exchange::SignatureState::unaltered:
            return {"unaltered", "unaltered since it was handed over by the holder of this key"};
        case exchange::SignatureState::altered:
            return {"altered", "altered since it was signed"};
        case exchange::SignatureState::unreadable:
            return {"unreadable", "there is one, and it can't be read"};
        case exchange::SignatureState::not_signed:
            break;
    }
    return {"not signed", "not signed"};
}

Outcome run(Arguments& arguments) {
    const std::string& file = arguments.operand(0);
    const auto checked = exchange::check_session_file(file, scratch_folder());
    if (!checked.problems.empty() && exchange::is_structural(checked.problems.front()))
        return refused(checked.problems.front());
    const auto said = said_of(checked.signature.state);
    const auto fingerprint = exchange::fingerprint(checked.signature.public_key);
    std::vector<std::string> problems;
    for (const Error& problem : checked.problems)
        problems.push_back(problem.english);
    if (problems.empty() && checked.signature.state == exchange::SignatureState::altered)
        problems.emplace_back(
            "The file was changed after it was signed, and packed again. Ask the sender for the original "
            "file.");
    std::vector<std::string> missing;
    for (const auto& gap : checked.gaps)
        missing.push_back(exchange::text_of(gap));
    if (arguments.json()) {
        nlohmann::ordered_json out;
        out["ok"] = problems.empty();
        out["problems"] = problems;
        out["missing"] = missing;
        out["whereabouts"] = checked.whereabouts;
        out["signature"] = {{"state", said.state}, {"fingerprint", nullptr}};
        if (!fingerprint.empty()) out["signature"]["fingerprint"] = fingerprint;
        fmt::print("{}\n", out.dump());
    } else {
        for (const auto& problem : problems)
            fmt::print("{}\n", problem);
        if (problems.empty()) fmt::print("In order: {}.\n", checked.engine);
        if (!missing.empty())
            fmt::print("The file itself says that it lacks what its sender no longer had:\n");
        for (const auto& one : missing)
            fmt::print("  {}\n", one);
        if (!checked.whereabouts.empty()) fmt::print("These photos tell where they were taken:\n");
        for (const auto& one : checked.whereabouts)
            fmt::print("  {}\n", one);
        fmt::print("Signature: {}{}{}.\n", said.sentence, fingerprint.empty() ? "" : ", ", fingerprint);
    }
    return problems.empty() ? Exit::done : Exit::no;
}

}  // namespace

Verb check_verb() {
    return {
        "check",
        "verifies a session file: bag, checksums, contents, signature",
        {"FILE"},
        {json_option},
        "Ends with 0 when the file is in order, 1 when it is a session file with faults or was altered after "
        "it was signed, 3 when it is none or can't be trusted at all. Keys: ok, problems, missing (photos "
        "and "
        "voice notes that the sender had lost and the file lists: no fault of its own), whereabouts (photos "
        "whose own tags tell where they were taken: nor is that), signature with state "
        "(unaltered, altered, not signed, unreadable) and fingerprint, a key's short form to compare by eye; "
        "null without a key. A file that is not signed is in order.",
        run};
}

}  // namespace lapwing::cli

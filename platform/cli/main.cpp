// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <sodium.h>

#include <cstdio>
#include <exception>
#include <string>
#include <vector>

#include "platform/cli/verbs.h"

namespace lapwing::cli {

std::vector<Verb> all_verbs() {
    return {sums_leak(),   sums_law(),   sums_crank(),    sums_healthy(), sums_turning(),
            sums_oil(),    sums_hose(),  sums_altitude(), sums_torque(),  sums_unit(),
            needle_verb(), check_verb(), findings_verb(), compare_verb(), history_verb(),
            report_verb(), csv_verb(),   demo_verb(),     merge_verb()};
}

namespace {

/// How many of the words make the verb's name; 0 when it is another verb.
std::size_t words_of(const Verb& verb, const std::vector<std::string>& words) {
    const auto space = verb.name.find(' ');
    if (words.empty() || words[0] != verb.name.substr(0, space)) return 0;
    if (space == std::string_view::npos) return 1;
    return words.size() > 1 && words[1] == verb.name.substr(space + 1) ? 2 : 0;
}

bool asks_for_help(const std::vector<std::string>& words) {
    for (const std::string& word : words) {
        if (word == "--") return false;
        if (word == "--help" || word == "-h") return true;
    }
    return false;
}

std::string overview() {
    std::string out =
        "usage: lapwing-cli VERB ...\n\n"
        "Sums and session files of engine cylinder sealing tests, without a screen.\n\n";
    for (const Verb& verb : all_verbs())
        out += fmt::format("  {:<14}  {}\n", verb.name, verb.does);
    out +=
        "\nEvery verb has its own --help. --version says which version this is.\n"
        "Quantities carry their unit: 80psi, 5.5bar, 98kPa, 1013hPa, 12kgf/cm2, 70mm, 2.76in, 12cm3, "
        "0.4mm2,\n"
        "240m, 790ft, 20degC, 300rpm, 50deg. A pressure is a gauge pressure unless the help says otherwise.\n"
        "Exit codes: 0 done, 1 the answer is no, 2 wrong use, 3 input refused, 4 internal error.\n";
    return out;
}

Outcome run(const std::vector<std::string>& words) {
    if (words.empty()) return wrong_use("Say what to do: lapwing-cli --help lists the verbs.");
    for (const Verb& verb : all_verbs()) {
        const std::size_t named = words_of(verb, words);
        if (named == 0) continue;
        const std::vector<std::string> rest(words.begin() + static_cast<std::ptrdiff_t>(named), words.end());
        if (asks_for_help(rest)) {
            fmt::print("{}", help_of(verb));
            return Exit::done;
        }
        auto arguments = Arguments::parse(verb, rest);
        if (!arguments) return tl::unexpected(arguments.error());
        auto outcome = verb.run(*arguments);
        if (!outcome && outcome.error().exit == Exit::refused)
            outcome.error().sentence = arguments->as_typed(outcome.error().sentence);
        return outcome;
    }
    if (asks_for_help(words)) {
        fmt::print("{}", overview());
        return Exit::done;
    }
    if (words[0] == "--version") {
        fmt::print("lapwing-cli {}\n", LAPWING_VERSION);
        return Exit::done;
    }
    std::string known;
    for (const Verb& verb : all_verbs())
        known += (known.empty() ? "" : ", ") + std::string(verb.name);
    const bool half = words[0] == "sums";
    if (half && words.size() == 1) return wrong_use(fmt::format("Say which sum; known are {}.", known));
    const std::string said = half ? words[0] + ' ' + words[1] : words[0];
    return wrong_use(fmt::format("\"{}\" is no verb; known are {}.", said, known));
}

}  // namespace
}  // namespace lapwing::cli

int main(int count, char** words) {
    using namespace lapwing::cli;
    Outcome outcome;
    try {
        outcome = sodium_init() < 0
                      ? tl::unexpected(Failure{Exit::internal, "The checksums' library did not start."})
                      : run({words + 1, words + count});
    } catch (const std::exception& error) {
        outcome = tl::unexpected(
            Failure{Exit::internal, fmt::format("Something went wrong inside ({}).", error.what())});
    }
    // What could not be written was not done.
    if (std::fflush(stdout) != 0 && outcome)
        outcome = tl::unexpected(Failure{Exit::wrong_use, "Standard output can't be written to."});
    if (outcome) return static_cast<int>(*outcome);
    fmt::print(stderr, "lapwing-cli: {}\n", outcome.error().sentence);
    return static_cast<int>(outcome.error().exit);
}

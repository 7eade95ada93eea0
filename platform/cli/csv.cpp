// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/exchange/readings_csv.h"
#include "platform/cli/dossier_file.h"
#include "platform/cli/verbs.h"

namespace lapwing::cli {
namespace {

Outcome run(Arguments& arguments) {
    const auto dossier = read_dossier(arguments.operand(0));
    if (!dossier) return tl::unexpected(dossier.error());
    return write_output(arguments.text("-o"), exchange::readings_csv(*dossier));
}

}  // namespace

Verb csv_verb() {
    return {
        "csv",
        "the readings of a session file as a table",
        {"FILE"},
        {{"-o", "OUT.csv", "where to", true}},
        "FILE is a session file or a session.json. Digits and unit as typed stand beside the value in SI.",
        run};
}

}  // namespace lapwing::cli
